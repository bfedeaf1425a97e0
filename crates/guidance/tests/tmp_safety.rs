#![allow(warnings, clippy::all)]
mod black_box {
    #[path = "../../../../../tests/it/black_box/dice.rs"]
    pub(crate) mod dice;
    #[path = "../../../../../tests/it/black_box/house.rs"]
    pub(crate) mod house;
    #[path = "../../../../../tests/it/black_box/draw.rs"]
    pub(crate) mod draw;
    #[path = "../../../../../tests/it/black_box/shrink.rs"]
    pub(crate) mod shrink;
    #[path = "../../../../../tests/it/black_box/impact.rs"]
    pub(crate) mod impact;
    #[path = "../../../../../tests/it/black_box/flow.rs"]
    pub(crate) mod flow;
}
#[path = "../../../tests/it/safety.rs"]
mod safety;
