//! How the person at this machine wants the window: read once, kept when it has changed.

use std::path::PathBuf;

use crate::job::kept::choices as kept_choices;
use crate::view::Choices;
use crate::words::say;

/// What was kept last, and where.
#[derive(Debug, Default)]
pub(super) struct ChoiceDesk {
    kept: Choices,
    folder: Option<PathBuf>,
    /// Why what was kept cannot be used.
    said: Option<String>,
    /// What could not be kept is not tried again until something else is chosen.
    failed: Option<Choices>,
}

impl ChoiceDesk {
    /// Those that are kept in a folder. Where they cannot be used, the usual ones, and it is said: the next choice is written
    /// over them.
    pub(super) fn kept_in(folder: Option<PathBuf>) -> Self {
        let kept = folder.as_deref().map(kept_choices::read);
        let damaged = kept.as_ref().is_some_and(Result::is_err);
        Self {
            kept: kept.and_then(Result::ok).unwrap_or_default(),
            folder,
            said: damaged.then(|| say!("notices-usual-choices")),
            failed: None,
        }
    }

    pub(super) fn said(&self) -> Option<&str> {
        self.said.as_deref()
    }

    pub(super) fn kept(&self) -> &Choices {
        &self.kept
    }

    /// Keeps what is chosen now, if that is something else. A folder that cannot be written is no reason to stop anybody:
    /// keys and attempts, which are kept there too, say so.
    pub(super) fn keep(&mut self, now: &Choices) {
        let Some(folder) = &self.folder else {
            return;
        };
        if self.kept == *now || self.failed.as_ref() == Some(now) {
            return;
        }
        match kept_choices::write(folder, now) {
            Ok(()) => self.kept = now.clone(),
            Err(_) => self.failed = Some(now.clone()),
        }
    }
}
