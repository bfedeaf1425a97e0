//! The home that is built in, so that the program shows something wherever it starts.

/// Its file.
pub const HOME: &str = include_str!("../../../examples/two-storey/home.ron");

/// The picture that its file names, if there is one.
#[must_use]
pub fn picture(path: &str) -> Option<&'static [u8]> {
    match path {
        "plans/basement.png" => {
            Some(include_bytes!("../../../examples/two-storey/plans/basement.png"))
        }
        "plans/ground.png" => Some(include_bytes!("../../../examples/two-storey/plans/ground.png")),
        "plans/upper.png" => Some(include_bytes!("../../../examples/two-storey/plans/upper.png")),
        _ => None,
    }
}
