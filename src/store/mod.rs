//! Bytes to and from the disk: reading within limits, writing whole files or nothing, journals that only grow.

mod data_folder;
mod file;
mod journal_file;

pub use data_folder::{attempts_folder, data_folder, documents_folder, files_in, make_folder};
pub use file::{StoreError, read_within, write_whole};
pub use journal_file::JournalFile;
