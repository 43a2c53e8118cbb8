//! Saving a picture that somebody else drew.

use std::path::Path;

use super::Failure;
use crate::store;

/// Writes the bytes of a picture into a file, whole or not at all.
///
/// # Errors
/// The file cannot be written.
pub fn save(path: &Path, bytes: &[u8]) -> Result<(), Failure> {
    Ok(store::write_whole(path, bytes)?)
}
