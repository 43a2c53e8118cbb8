//! Text files of lines that are given to a command.

use std::path::Path;

use crate::store;
use crate::text::{Limits, decode};

use super::{Failure, problem_text};

/// How large such a file may be.
const LIMITS: Limits = Limits {
    bytes: 16 * 1024 * 1024,
};

/// The lines of a file.
///
/// # Errors
/// A file that cannot be read, is too large or no text.
pub fn read_lines(path: &Path) -> Result<Vec<String>, Failure> {
    let bytes = store::read_within(path, LIMITS.bytes)?;
    let text = decode(&bytes, LIMITS).map_err(|problems| {
        Failure::input(problem_text(
            &path.display().to_string(),
            &String::from_utf8_lossy(&bytes),
            &problems,
        ))
    })?;
    Ok(text.lines().map(str::to_owned).collect())
}
