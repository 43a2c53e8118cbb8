//! The keys of the person at this machine: read once, kept when they have changed.

use std::path::PathBuf;

use crate::job::kept::keys as kept_keys;
use crate::view::{Action, KeyName, KeyTaken, Keys};
use crate::words::say;

/// Keys, and where they are kept.
#[derive(Debug, Default)]
pub(super) struct KeyDesk {
    keys: Keys,
    folder: Option<PathBuf>,
    /// Whether they differ from those that are kept.
    changed: bool,
    said: Option<String>,
}

impl KeyDesk {
    /// Those that are kept in a folder. Where they cannot be used, the usual ones, and it is said why.
    pub(super) fn kept_in(folder: Option<PathBuf>) -> Self {
        let mut desk = Self {
            folder,
            ..Self::default()
        };
        match desk.folder.as_deref().map(kept_keys::read) {
            Some(Ok(keys)) => desk.keys = keys,
            Some(Err(error)) => {
                desk.said = Some(say!("notices-usual-keys", error = error.to_string()));
            }
            None => {}
        }
        desk
    }

    pub(super) fn keys(&self) -> &Keys {
        &self.keys
    }

    pub(super) fn said(&self) -> Option<&str> {
        self.said.as_deref()
    }

    pub(super) fn set(&mut self, action: Action, key: Option<KeyName>) -> Result<(), KeyTaken> {
        self.keys.set(action, key)?;
        self.changed = true;
        Ok(())
    }

    pub(super) fn usual(&mut self) {
        self.keys = Keys::default();
        self.changed = true;
    }

    pub(super) fn changed(&self) -> bool {
        self.changed
    }

    /// Keeps them, or says why it cannot be done.
    pub(super) fn keep(&mut self) {
        self.changed = false;
        self.said = match &self.folder {
            Some(folder) => kept_keys::write(folder, &self.keys)
                .err()
                .map(|error| say!("notices-keys-not-kept", error = error.to_string())),
            None => Some(say!("notices-keys-no-folder")),
        };
    }
}
