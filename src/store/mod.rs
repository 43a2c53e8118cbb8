//! Bytes to and from the disk: reading within limits, writing whole files or nothing, journals that only grow.

mod file;
mod journal_file;

pub use file::{StoreError, read_within, write_whole};
pub use journal_file::JournalFile;
