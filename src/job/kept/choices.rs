//! How a person wants the window, kept between runs in one small file.

use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use crate::store::{self, StoreError};
use crate::view::Choices;
use crate::view::choices::ChoicesError;

/// Name of the file.
const FILE: &str = "choices.json";

/// Why kept choices cannot be used.
#[derive(Debug)]
pub enum KeptChoicesError {
    /// The file cannot be read.
    Store(StoreError),
    /// It holds something else.
    Damaged {
        /// The file.
        path: PathBuf,
        /// What is wrong with it.
        source: ChoicesError,
    },
}

/// The choices that are kept in a folder; the usual ones where none are.
///
/// # Errors
/// A file that cannot be read or that holds no choices.
pub fn read(folder: &Path) -> Result<Choices, KeptChoicesError> {
    let path = folder.join(FILE);
    let bytes = match store::read_within(&path, Choices::MOST_BYTES) {
        Ok(bytes) => bytes,
        Err(StoreError::Read { source, .. }) if source.kind() == ErrorKind::NotFound => return Ok(Choices::default()),
        Err(error) => return Err(KeptChoicesError::Store(error)),
    };
    Choices::from_json(&bytes).map_err(|source| KeptChoicesError::Damaged { path, source })
}

/// Keeps choices in a folder, which is made where it is not there; the file is written whole or not at all.
///
/// # Errors
/// A folder that cannot be made, or a file that cannot be written.
pub fn write(folder: &Path, choices: &Choices) -> Result<(), StoreError> {
    store::make_folder(folder)?;
    store::write_whole(&folder.join(FILE), choices.to_json().as_bytes())
}
