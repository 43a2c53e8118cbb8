//! Finding and reading gear sets: a file, or one that ships with the program.

use std::path::Path;

use crate::catalogue;
use crate::gear::Design;
use crate::store;
use crate::text::{Limits, decode};

use super::{Failure, problem_text};

/// A gear set with the name under which it was found.
#[derive(Debug, Clone, PartialEq)]
pub struct FoundGearSet {
    /// File name, or the name of the embedded set.
    pub source: String,
    /// As designed.
    pub design: Design,
}

/// The gear set `source`: the name of an embedded set, or a file.
///
/// # Errors
/// No such set and no such file, or everything that is wrong with the file.
pub fn find(source: &str) -> Result<FoundGearSet, Failure> {
    if let Some(embedded) = catalogue::gear_set(source) {
        return read(source, embedded.text.as_bytes());
    }
    let path = Path::new(source);
    if !path.exists() && !source.contains(['/', '\\', '.'])
        || !path.exists() && path.extension().is_none_or(|e| e != "toml")
    {
        let names: Vec<&str> = catalogue::GEAR_SETS.iter().map(|e| e.name).collect();
        return Err(Failure::input(format!(
            "error: there is no gear set and no file named `{source}`.\nGear sets that ship with the program:\n  {}",
            names.join("\n  ")
        )));
    }
    read(source, &store::read_within(path, Limits::HAND_WRITTEN.bytes)?)
}

/// All embedded gear sets.
///
/// # Errors
/// As for a file; a test reads them all, so that this does not happen to people.
pub fn embedded() -> Result<Vec<FoundGearSet>, Failure> {
    catalogue::GEAR_SETS
        .iter()
        .map(|e| read(e.name, e.text.as_bytes()))
        .collect()
}

/// Reads a gear set from the bytes of a file shown to people as `source`.
///
/// # Errors
/// Everything that is wrong with the text.
pub fn read(source: &str, bytes: &[u8]) -> Result<FoundGearSet, Failure> {
    let text = decode(bytes, Limits::HAND_WRITTEN)
        .map_err(|problems| Failure::input(problem_text(source, &String::from_utf8_lossy(bytes), &problems)))?;
    let design = Design::from_toml(text).map_err(|problems| Failure::input(problem_text(source, text, &problems)))?;
    Ok(FoundGearSet {
        source: source.to_owned(),
        design,
    })
}
