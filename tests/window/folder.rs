//! Where tests keep attempts.

use std::path::{Path, PathBuf};

/// An empty folder that is taken away at the end.
pub(crate) struct Folder(PathBuf);

impl Folder {
    pub(crate) fn new(name: &str) -> Self {
        let path = std::env::temp_dir().join(format!("lashwright-window-{name}-{}", std::process::id()));
        std::fs::create_dir_all(&path).expect("a folder");
        Self(path)
    }

    pub(crate) fn path(&self) -> &Path {
        &self.0
    }

    /// What lies in it, by name.
    pub(crate) fn files(&self) -> Vec<PathBuf> {
        let mut files: Vec<PathBuf> = std::fs::read_dir(&self.0)
            .expect("a folder")
            .map(|entry| entry.expect("an entry").path())
            .collect();
        files.sort();
        files
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        // If it cannot be taken away, the system's own cleaning does it.
        drop(std::fs::remove_dir_all(&self.0));
    }
}
