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
    /// Bytes of all acknowledged lines: what is kept when a line cannot be written to its end.
    length: u64,
    /// Whether a line that failed may have left a part of itself after them.
    torn: bool,
}

impl JournalFile {
    /// Makes a new file that begins with these lines. When it returns they are on the disk.
    ///
    /// # Errors
    /// [`StoreError::Exists`] where there is one already, [`StoreError::Locked`] where another program is writing that one:
    /// an attempt is never written over. [`StoreError::Write`]; no file is then left behind.
    pub fn create(path: &Path, lines: &str) -> Result<Self, StoreError> {
        let file = OpenOptions::new()
            .read(true)
            .append(true)
            .create_new(true)
            .open(path)
            .map_err(|source| {
                if source.kind() == std::io::ErrorKind::AlreadyExists {
                    there_already(path)
                } else {
                    write_failed(path, source)
                }
            })?;
        let mut journal = Self {
            file,
            path: path.to_owned(),
            length: 0,
            torn: false,
        };
        journal.lock()?;
        let begun = journal
            .append(lines)
            .and_then(|()| keep_name(path).map_err(|source| write_failed(path, source)));
        if let Err(error) = begun {
            // Whether it can be taken away or not, the first failure is the one to tell.
            drop(std::fs::remove_file(path));
            return Err(error);
        }
        Ok(journal)
    }

    /// Opens a file to go on with it: the file and its bytes, at most `limit`. What it ends in may be torn: read it, and
    /// [`JournalFile::cut_to`] its whole lines before adding to them.
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
            length: 0,
            torn: false,
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
        journal.length = u64::try_from(bytes.len()).unwrap_or(u64::MAX);
        Ok((journal, bytes))
    }

    /// Cuts a torn end off: `whole` bytes stay.
    ///
    /// # Errors
    /// [`StoreError::Write`], also for more bytes than there are: a file is never made longer with nothing.
    pub fn cut_to(&mut self, whole: usize) -> Result<(), StoreError> {
        let length = u64::try_from(whole).unwrap_or(u64::MAX);
        if length > self.length {
            return Err(write_failed(
                &self.path,
                std::io::Error::from(std::io::ErrorKind::InvalidInput),
            ));
        }
        self.keep(length).map_err(|source| write_failed(&self.path, source))?;
        self.length = length;
        self.torn = false;
        Ok(())
    }

    /// Adds whole lines. When it returns they are on the disk.
    ///
    /// # Errors
    /// [`StoreError::Write`]; the lines are then taken off again, so that a full disk leaves no torn line before those that
    /// are written once there is room. Should even that fail, it is done before anything else is written.
    /// [`StoreError::Changed`]: a file that another program made longer or shorter meanwhile is left as it is.
    pub fn append(&mut self, lines: &str) -> Result<(), StoreError> {
        let added = u64::try_from(lines.len()).unwrap_or(u64::MAX);
        self.at_its_end()?;
        let written = self
            .file
            .write_all(lines.as_bytes())
            .and_then(|()| self.file.sync_data());
        if let Err(source) = written {
            // What the first failure says is what matters; `at_its_end` tries again.
            self.torn = self.keep(self.length).is_err();
            return Err(write_failed(&self.path, source));
        }
        self.length = self.length.saturating_add(added);
        Ok(())
    }

    /// Sees to it that the file ends after the acknowledged lines: takes off what a failure of ours left, and refuses a file
    /// that somebody else made longer or shorter meanwhile.
    fn at_its_end(&mut self) -> Result<(), StoreError> {
        if self.torn {
            self.keep(self.length)
                .map_err(|source| write_failed(&self.path, source))?;
            self.torn = false;
        }
        let there = self
            .file
            .metadata()
            .map_err(|source| write_failed(&self.path, source))?;
        if there.len() == self.length {
            Ok(())
        } else {
            Err(StoreError::Changed {
                path: self.path.clone(),
            })
        }
    }

    /// Keeps this many bytes.
    fn keep(&self, length: u64) -> std::io::Result<()> {
        self.file.set_len(length)?;
        self.file.sync_all()
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

/// Why a file that is there is not made: another program may be writing it.
#[expect(clippy::disallowed_methods, reason = "this floor is the one that opens files")]
fn there_already(path: &Path) -> StoreError {
    let path = path.to_owned();
    // A lock that is got here goes with the file at the end of this function; one that cannot be asked for is nobody's.
    match File::open(&path).map(|file| file.try_lock()) {
        Ok(Err(TryLockError::WouldBlock)) => StoreError::Locked { path },
        _ => StoreError::Exists { path },
    }
}

/// Sees to it that the name of a new file lasts too.
#[expect(clippy::disallowed_methods, reason = "this floor is the one that opens files")]
fn keep_name(path: &Path) -> std::io::Result<()> {
    let Some(folder) = path.parent() else {
        return Ok(());
    };
    let folder = if folder.as_os_str().is_empty() {
        Path::new(".")
    } else {
        folder
    };
    File::open(folder)?.sync_all()
}

fn write_failed(path: &Path, source: std::io::Error) -> StoreError {
    StoreError::Write {
        path: path.to_owned(),
        source,
    }
}
