//! A person's own keys, kept between runs in one small file.

use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use thiserror::Error;

use crate::store::{self, StoreError};
use crate::view::Keys;
use crate::view::keys::KeysError;

/// Name of the file.
const FILE: &str = "keys.json";

/// Why kept keys cannot be used.
#[derive(Debug, Error)]
pub enum KeptKeysError {
    /// The file cannot be read.
    #[error("{}", super::store_error(.0).what)]
    Store(#[from] StoreError),
    /// It holds something else.
    #[error("{} cannot be used: {source}", path.display())]
    Damaged {
        /// The file.
        path: PathBuf,
        /// What is wrong with it.
        source: KeysError,
    },
}

/// The folder of the person at this machine; none where the system names none.
pub fn folder() -> Option<PathBuf> {
    store::data_folder()
}

/// The keys that are kept in a folder; the usual ones where none are.
///
/// # Errors
/// A file that cannot be read or that holds no keys.
pub fn read(folder: &Path) -> Result<Keys, KeptKeysError> {
    let path = folder.join(FILE);
    let bytes = match store::read_within(&path, Keys::MOST_BYTES) {
        Ok(bytes) => bytes,
        Err(StoreError::Read { source, .. }) if source.kind() == ErrorKind::NotFound => return Ok(Keys::default()),
        Err(error) => return Err(error.into()),
    };
    Keys::from_json(&bytes).map_err(|source| KeptKeysError::Damaged { path, source })
}

/// Keeps keys in a folder, which is made where it is not there; the file is written whole or not at all.
///
/// # Errors
/// A folder that cannot be made, or a file that cannot be written.
pub fn write(folder: &Path, keys: &Keys) -> Result<(), StoreError> {
    store::make_folder(folder)?;
    store::write_whole(&folder.join(FILE), keys.to_json().as_bytes())
}
