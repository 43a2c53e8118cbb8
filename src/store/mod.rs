//! Bytes to and from the disk: reading within limits, writing whole files or nothing.

mod file;

pub use file::{StoreError, read_within, write_whole};
