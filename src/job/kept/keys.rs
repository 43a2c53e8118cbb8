//! A person's own keys, kept between runs in one small file.

use std::fmt;
use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use crate::job::store_error;
use crate::store::{self, StoreError};
use crate::view::Keys;
use crate::view::keys::KeysError;
use crate::words::say;

/// Name of the file.
const FILE: &str = "keys.json";

/// Why kept keys cannot be used.
#[derive(Debug)]
pub enum KeptKeysError {
    /// The file cannot be read or written.
    Store(StoreError),
    /// It holds something else.
    Damaged {
        /// The file.
        path: PathBuf,
        /// What is wrong with it.
        source: KeysError,
    },
}

impl fmt::Display for KeptKeysError {
    /// Without its last full stop, as errors are told within a sentence.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let text = match self {
            Self::Store(error) => store_error(error).what,
            Self::Damaged { path, source } => say!(
                "files-keys-damaged",
                path = path.display().to_string(),
                why = source.to_string()
            ),
        };
        f.write_str(text.trim_end_matches('.'))
    }
}

impl std::error::Error for KeptKeysError {
    fn source(&self) -> Option<&(dyn std::error::Error + 'static)> {
        match self {
            Self::Store(error) => Some(error),
            Self::Damaged { source, .. } => Some(source),
        }
    }
}

impl From<StoreError> for KeptKeysError {
    fn from(error: StoreError) -> Self {
        Self::Store(error)
    }
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
pub fn write(folder: &Path, keys: &Keys) -> Result<(), KeptKeysError> {
    store::make_folder(folder)?;
    Ok(store::write_whole(&folder.join(FILE), keys.to_json().as_bytes())?)
}
