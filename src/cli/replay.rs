//! `lashwright replay JOURNAL`

use std::path::Path;

use crate::job::Failure;
use crate::job::attempt::replay::{document, replay, replay_debrief, text};

/// Does everything in a journal again.
pub(super) fn run(file: &Path, debrief: Option<&Path>, json: bool) -> Result<String, Failure> {
    let found = match debrief {
        Some(page) => replay_debrief(file, page)?,
        None => replay(file)?,
    };
    if json { document(&found) } else { Ok(text(&found)) }
}
