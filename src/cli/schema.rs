//! `lashwright schema NAME`

use crate::document;
use crate::job::Failure;

use crate::words::say;

use super::Answer;

/// Prints the schema of one JSON document.
pub(super) fn run(name: &str) -> Answer {
    let Some(schema) = document::schema(name) else {
        return Err(Failure::bad_input(say!(
            "files-no-schema",
            name = name,
            names = document::SCHEMAS.join(", ")
        )));
    };
    serde_json::to_string_pretty(&schema).map_err(Failure::of_program)
}
