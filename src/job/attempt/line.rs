//! Operations as lines of JSON.

use crate::bench::Operation;
use crate::job::{Failure, text_file};
use crate::words::{self, say};

/// Longest line that names an operation, bytes: its texts and lists are limited, and this is many times what they take.
pub const LONGEST_LINE: usize = 64 * 1024;

/// The operation that a line of JSON names.
///
/// # Errors
/// A line that is too long or no operation.
pub fn operation_of(line: &str) -> Result<Operation, Failure> {
    if line.len() > LONGEST_LINE {
        return Err(text_file::too_long(LONGEST_LINE));
    }
    Operation::from_json(line).map_err(|error| {
        Failure::bad_input(say!(
            "card-operation-wrong",
            why = words::error::operation(&error).line()
        ))
    })
}
