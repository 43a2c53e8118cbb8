//! All operations with their fields.

use crate::bench::Operation;
use crate::report::operations;

use super::{Failure, json};

/// All of them as one JSON Schema.
///
/// # Errors
/// Only where it cannot be written as JSON, which is a fault of the program.
pub fn schema() -> Result<String, Failure> {
    json::pretty(&Operation::schema())
}

/// The same as a list for people: name, what it does, fields with their kinds and limits.
pub fn text() -> String {
    operations::list(&Operation::schema())
}
