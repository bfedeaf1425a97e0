//! A photo taken at an angle, put straight: from the four corners of something that is a rectangle.

mod corners;
mod homography;
mod rectify;

pub use corners::{BadCorners, Corners};
pub use homography::Homography;
pub use rectify::{Known, Margin, Straightened, straighten};
