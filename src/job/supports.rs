//! Finding and reading pinion supports: a file, or one that ships with the program.

use std::path::Path;

use crate::bearing::{Support, SupportProblem};
use crate::catalogue;
use crate::report::problem::problem_text;
use crate::store;
use crate::text::{Limits, decode};
use crate::words::say;

use super::Failure;
use super::gear_sets::listed;

/// A pinion support with the name under which it was found.
#[derive(Debug, Clone, PartialEq)]
pub struct FoundSupport {
    /// File name, or the name of the embedded support.
    pub source: String,
    /// As made.
    pub support: Support,
}

/// The support `source`: the name of an embedded one, or a file.
///
/// # Errors
/// No such support and no such file, or everything that is wrong with the file.
pub fn find(source: &str) -> Result<FoundSupport, Failure> {
    if let Some(embedded) = catalogue::support(source) {
        return read(source, embedded.text.as_bytes());
    }
    let path = Path::new(source);
    if !path.exists() && path.extension().is_none_or(|e| e != "toml") {
        return Err(Failure::bad_input(say!(
            "files-no-support",
            name = source,
            names = listed(&names())
        )));
    }
    read(source, &store::read_within(path, Limits::HAND_WRITTEN.bytes)?)
}

/// Names of the embedded supports, from light to heavy.
pub fn names() -> Vec<&'static str> {
    catalogue::SUPPORTS.iter().map(|e| e.name).collect()
}

/// All embedded supports.
///
/// # Errors
/// As for a file; a test reads them all, so that this does not happen to people.
pub fn embedded() -> Result<Vec<FoundSupport>, Failure> {
    catalogue::SUPPORTS
        .iter()
        .map(|e| read(e.name, e.text.as_bytes()))
        .collect()
}

/// Reads a support from the bytes of a file shown to people as `source`.
///
/// # Errors
/// Everything that is wrong with the text.
pub fn read(source: &str, bytes: &[u8]) -> Result<FoundSupport, Failure> {
    let text = decode::<SupportProblem>(bytes, Limits::HAND_WRITTEN)
        .map_err(|problems| Failure::input(problem_text(source, &String::from_utf8_lossy(bytes), &problems)))?;
    let support = Support::from_toml(text).map_err(|problems| Failure::input(problem_text(source, text, &problems)))?;
    Ok(FoundSupport {
        source: source.to_owned(),
        support,
    })
}
