//! The debrief of a finished attempt as a file.

use std::path::{Path, absolute};

use crate::exercise::Attempt;
use crate::report::debrief;
use crate::store;
use crate::words::{self, say};

use super::Failure;

/// Where a debrief is to be written. What else is read or written beside it must not be the same file.
///
/// # Errors
/// A file that is already needed for something else.
pub fn target_is_free(page: &Path, others: &[&Path]) -> Result<(), Failure> {
    let same = |other: &&&Path| absolute(page).is_ok_and(|page| absolute(other).is_ok_and(|other| page == other));
    match others.iter().find(same) {
        Some(other) => Err(Failure::bad_input(say!(
            "pages-over-other-file",
            path = other.display().to_string()
        ))),
        None => Ok(()),
    }
}

/// Writes the debrief of an attempt into a file, whole or not at all. `name` is that of the exercise on the command line;
/// `journal` says how the journal came out that it was recomputed from.
///
/// # Errors
/// An attempt that is not finished, and a file that cannot be written.
pub fn write(attempt: &Attempt, name: &str, journal: Option<&str>, file: &Path) -> Result<(), Failure> {
    Ok(store::write_whole(file, page(attempt, name, journal)?.as_bytes())?)
}

/// The page.
///
/// # Errors
/// An attempt that is not finished.
pub fn page(attempt: &Attempt, name: &str, journal: Option<&str>) -> Result<String, Failure> {
    debrief::page(attempt, name, journal)
        .map_err(|error| Failure::bad_input(say!("pages-no-debrief", why = words::error::exercise(&error).line())))
}
