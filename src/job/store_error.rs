//! What the disk does not let happen, in words.

use crate::store::StoreError;
use crate::words::problem::Told;
use crate::words::say;

/// Why a file could not be read or written.
pub fn store_error(of: &StoreError) -> Told {
    match of {
        StoreError::Read { path, source } => Told::new(
            say!(
                "error-store-read",
                path = path.display().to_string(),
                source = source.to_string()
            ),
            say!("error-store-read-cure"),
        ),
        StoreError::TooLarge { path, limit } => Told::new(
            say!(
                "error-store-too-large",
                path = path.display().to_string(),
                limit = *limit
            ),
            say!("error-store-too-large-cure"),
        ),
        StoreError::Exists { path } => Told::new(
            say!("error-store-exists", path = path.display().to_string()),
            say!("error-store-exists-cure"),
        ),
        StoreError::Locked { path } => Told::new(
            say!("error-store-locked", path = path.display().to_string()),
            say!("error-store-locked-cure"),
        ),
        StoreError::Write { path, source } => Told::new(
            say!(
                "error-store-write",
                path = path.display().to_string(),
                source = source.to_string()
            ),
            say!("error-store-write-cure"),
        ),
        StoreError::Changed { path } => Told::new(
            say!("error-store-changed", path = path.display().to_string()),
            say!("error-store-changed-cure"),
        ),
    }
}
