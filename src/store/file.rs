//! One file at a time.

use std::fs::File;
use std::io::{Read as _, Write as _};
use std::path::{Path, PathBuf};

use thiserror::Error;

/// Why a file could not be read or written.
#[derive(Debug, Error)]
pub enum StoreError {
    /// It cannot be opened or read.
    #[error("cannot read {}: {source}. Check the name and that you may read it", path.display())]
    Read {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
    /// It is larger than any file of its kind.
    #[error("{} has more than {limit} bytes, the most that is read. Check that this is the right file", path.display())]
    TooLarge {
        /// The file.
        path: PathBuf,
        /// Most bytes.
        limit: usize,
    },
    /// There is a file already that is never written over.
    #[error("{} is there already. Give another name, or move it away", path.display())]
    Exists {
        /// The file.
        path: PathBuf,
    },
    /// Another program is writing it.
    #[error("{} is being written by another Lashwright. Close that one first", path.display())]
    Locked {
        /// The file.
        path: PathBuf,
    },
    /// Another program made it longer or shorter since it was opened.
    #[error("another program changed it: {}", path.display())]
    Changed {
        /// The file.
        path: PathBuf,
    },
    /// It cannot be written.
    #[error("cannot write {}: {source}. Check that the folder is there, that you may write to it and that the disk is not full", path.display())]
    Write {
        /// The file.
        path: PathBuf,
        /// What the system says.
        source: std::io::Error,
    },
}

/// The bytes of a file, at most `limit` of them.
///
/// # Errors
/// [`StoreError::Read`] and [`StoreError::TooLarge`]; never reads more than `limit` + 1 bytes, whatever the file claims
/// to be.
#[expect(clippy::disallowed_methods, reason = "this floor is the one that opens files")]
pub fn read_within(path: &Path, limit: usize) -> Result<Vec<u8>, StoreError> {
    let fail = |source| StoreError::Read {
        path: path.to_owned(),
        source,
    };
    let mut bytes = Vec::new();
    let most = u64::try_from(limit).unwrap_or(u64::MAX).saturating_add(1);
    File::open(path)
        .map_err(fail)?
        .take(most)
        .read_to_end(&mut bytes)
        .map_err(fail)?;
    if bytes.len() > limit {
        return Err(StoreError::TooLarge {
            path: path.to_owned(),
            limit,
        });
    }
    Ok(bytes)
}

/// Writes a file whole or not at all: into a new file beside it, synced, then renamed over it.
///
/// # Errors
/// [`StoreError::Write`]; the file that was there before is then still there, and nothing half-written is left behind.
#[expect(clippy::disallowed_methods, reason = "this floor is the one that writes files")]
pub fn write_whole(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    let fail = |source| StoreError::Write {
        path: path.to_owned(),
        source,
    };
    let name = path
        .file_name()
        .ok_or_else(|| fail(std::io::Error::from(std::io::ErrorKind::IsADirectory)))?;
    let mut beside = name.to_owned();
    beside.push(format!(".{}.part", std::process::id()));
    let beside = path.with_file_name(beside);
    let written = (|| {
        let mut file = File::create(&beside)?;
        file.write_all(bytes)?;
        file.sync_all()?;
        std::fs::rename(&beside, path)
    })();
    written.map_err(|source| {
        // Whether there is something to take away does not matter any more.
        drop(std::fs::remove_file(&beside));
        fail(source)
    })
}
