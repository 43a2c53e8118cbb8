//! The folder in which a person's own attempts and keys are kept.

use std::env;
use std::path::{Path, PathBuf};

use super::StoreError;

/// Where data of the person at this machine belong: below `XDG_DATA_HOME`, or below `HOME` where the XDG base directory
/// specification puts data. None where neither says an absolute path. The folder need not be there.
pub fn data_folder() -> Option<PathBuf> {
    let absolute = |name: &str, below: &str| {
        let path = PathBuf::from(env::var_os(name)?);
        path.is_absolute().then(|| path.join(below))
    };
    absolute("XDG_DATA_HOME", "")
        .or_else(|| absolute("HOME", ".local/share"))
        .map(|data| data.join("lashwright"))
}

/// Where attempts of the person at this machine belong.
pub fn attempts_folder() -> Option<PathBuf> {
    data_folder().map(|data| data.join("attempts"))
}

/// Makes a folder and those above it, where they are not there.
///
/// # Errors
/// [`StoreError::Write`].
pub fn make_folder(path: &Path) -> Result<(), StoreError> {
    std::fs::create_dir_all(path).map_err(|source| StoreError::Write {
        path: path.to_owned(),
        source,
    })
}

/// Files with this ending in a folder, by name; none where there is no such folder or it cannot be read.
pub fn files_in(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let entries = std::fs::read_dir(folder).into_iter().flatten().flatten();
    let mut found: Vec<PathBuf> = entries
        .map(|entry| entry.path())
        .filter(|path| path.extension().is_some_and(|e| e == ending) && path.is_file())
        .collect();
    found.sort();
    found
}
