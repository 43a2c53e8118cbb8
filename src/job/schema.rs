//! Schemas of what is printed as JSON.

use crate::document;
use crate::words::say;

use super::{Failure, json};

/// The schema of one JSON document.
///
/// # Errors
/// A name that no document has.
pub fn schema(name: &str) -> Result<String, Failure> {
    let Some(schema) = document::schema(name) else {
        return Err(Failure::bad_input(say!(
            "files-no-schema",
            name = name,
            names = document::SCHEMAS.join(", ")
        )));
    };
    json::pretty(&schema)
}
