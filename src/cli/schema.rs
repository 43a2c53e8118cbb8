//! `lashwright schema NAME`

use crate::document;
use crate::job::Failure;

use super::Answer;

/// Prints the schema of one JSON document.
pub(super) fn run(name: &str) -> Answer {
    let Some(schema) = document::schema(name) else {
        return Err(Failure::input(format!(
            "error: there is no document named `{name}`.\nDocuments with a schema: {}.",
            document::SCHEMAS.join(", ")
        )));
    };
    serde_json::to_string_pretty(&schema).map_err(|error| Failure::other(format!("error: {error}.")))
}
