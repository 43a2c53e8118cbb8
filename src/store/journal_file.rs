//! A file that only grows: each line is on the disk before it is acknowledged.

use std::fs::{File, OpenOptions, TryLockError};
use std::io::{Read as _, Seek as _, SeekFrom, Write as _};
use std::path::{Path, PathBuf};

use super::StoreError;

/// An open journal file. It is locked for as long as it is open: no other program writes it meanwhile.
#[derive(Debug)]
pub struct JournalFile {
    file: File,
    path: PathBuf,
}

impl JournalFile {
    /// Makes a new file.
    ///
    /// # Errors
    /// [`StoreError::Exists`] where there is one already: an attempt is never written over; [`StoreError::Write`],
    /// [`StoreError::Locked`].
    #[expect(clippy::disallowed_methods, reason = "this floor is the one that writes files")]
    pub fn create(path: &Path) -> Result<Self, StoreError> {
        let file = OpenOptions::new()
            .read(true)
            .append(true)
            .create_new(true)
            .open(path)
            .map_err(|source| {
                if source.kind() == std::io::ErrorKind::AlreadyExists {
                    StoreError::Exists { path: path.to_owned() }
                } else {
                    write_failed(path, source)
                }
            })?;
        let journal = Self {
            file,
            path: path.to_owned(),
        };
        journal.lock()?;
        // The name itself must last too.
        if let Some(folder) = path.parent() {
            let folder = if folder.as_os_str().is_empty() {
                Path::new(".")
            } else {
                folder
            };
            File::open(folder)
                .and_then(|f| f.sync_all())
                .map_err(|source| write_failed(path, source))?;
        }
        Ok(journal)
    }

    /// Opens a file to go on with it: the file and its bytes, at most `limit`.
    ///
    /// # Errors
    /// [`StoreError::Read`], [`StoreError::TooLarge`], [`StoreError::Locked`].
    pub fn open(path: &Path, limit: usize) -> Result<(Self, Vec<u8>), StoreError> {
        let fail = |source| StoreError::Read {
            path: path.to_owned(),
            source,
        };
        let file = OpenOptions::new().read(true).append(true).open(path).map_err(fail)?;
        let mut journal = Self {
            file,
            path: path.to_owned(),
        };
        journal.lock()?;
        let mut bytes = Vec::new();
        let most = u64::try_from(limit).unwrap_or(u64::MAX).saturating_add(1);
        journal.file.seek(SeekFrom::Start(0)).map_err(fail)?;
        (&journal.file).take(most).read_to_end(&mut bytes).map_err(fail)?;
        if bytes.len() > limit {
            return Err(StoreError::TooLarge {
                path: path.to_owned(),
                limit,
            });
        }
        Ok((journal, bytes))
    }

    /// Cuts a torn end off: `whole` bytes stay.
    ///
    /// # Errors
    /// [`StoreError::Write`].
    pub fn cut_to(&mut self, whole: usize) -> Result<(), StoreError> {
        let length = u64::try_from(whole).unwrap_or(u64::MAX);
        self.file
            .set_len(length)
            .and_then(|()| self.file.sync_all())
            .map_err(|source| write_failed(&self.path, source))
    }

    /// Adds whole lines. When it returns they are on the disk.
    ///
    /// # Errors
    /// [`StoreError::Write`]; then at most a part of the lines stands at the end, and is dropped when the file is read.
    pub fn append(&mut self, lines: &str) -> Result<(), StoreError> {
        self.file
            .write_all(lines.as_bytes())
            .and_then(|()| self.file.sync_data())
            .map_err(|source| write_failed(&self.path, source))
    }

    fn lock(&self) -> Result<(), StoreError> {
        self.file.try_lock().map_err(|error| match error {
            TryLockError::WouldBlock => StoreError::Locked {
                path: self.path.clone(),
            },
            TryLockError::Error(source) => write_failed(&self.path, source),
        })
    }
}

fn write_failed(path: &Path, source: std::io::Error) -> StoreError {
    StoreError::Write {
        path: path.to_owned(),
        source,
    }
}
