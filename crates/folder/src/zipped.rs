//! A home as one zip, to be sent.

mod fault;
mod packing;
mod unpacking;

pub use fault::ZipFault;
pub use packing::{pack, pack_into};
pub use unpacking::{Limits, Unpacked, unpack, unpack_within};
