//! Lines of text that are given to a command, in a file or on standard input.

use std::convert::Infallible;
use std::io::{BufRead, Read as _};
use std::path::Path;

use crate::report::problem::problem_text;
use crate::store;
use crate::text::{Limits, decode};
use crate::words::say;

use super::Failure;

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
    let text = decode::<Infallible>(&bytes, LIMITS).map_err(|problems| {
        Failure::input(problem_text(
            &path.display().to_string(),
            &String::from_utf8_lossy(&bytes),
            &problems,
        ))
    })?;
    Ok(text.lines().map(str::to_owned).collect())
}

/// The lines of a reader, each as soon as it is there, without their ends. Never holds more of a line than `most` bytes and
/// its end, whatever comes; the first failure is the last item.
///
/// # Errors
/// Each item: a line longer than `most` bytes or that is no text; a reader that cannot be read.
pub fn lines_within(mut reader: impl BufRead, most: usize) -> impl Iterator<Item = Result<String, Failure>> {
    let mut failed = false;
    std::iter::from_fn(move || {
        if failed {
            return None;
        }
        let line = next_line(&mut reader, most).transpose();
        failed = matches!(line, Some(Err(_)));
        line
    })
}

fn next_line(reader: &mut impl BufRead, most: usize) -> Result<Option<String>, Failure> {
    // Room for the two bytes of a line end.
    let room = u64::try_from(most).unwrap_or(u64::MAX).saturating_add(2);
    let mut bytes = Vec::new();
    reader
        .take(room)
        .read_until(b'\n', &mut bytes)
        .map_err(|error| Failure::went_wrong(say!("files-cannot-read-input", why = error.to_string())))?;
    if bytes.is_empty() {
        return Ok(None);
    }
    if bytes.pop_if(|b| *b == b'\n').is_some() {
        bytes.pop_if(|b| *b == b'\r');
    }
    if bytes.len() > most {
        return Err(too_long(most));
    }
    String::from_utf8(bytes)
        .map(Some)
        .map_err(|error| Failure::bad_input(say!("files-line-not-text", why = error.utf8_error().to_string())))
}

/// What is said of a line that is too long.
pub(super) fn too_long(most: usize) -> Failure {
    Failure::bad_input(say!("files-line-too-long", most = most))
}
