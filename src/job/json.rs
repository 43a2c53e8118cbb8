//! Documents as JSON. What cannot be written so is a fault of the program.

use serde::Serialize;
use serde_json::Value;

use super::Failure;

/// For a reader who also has eyes: one key a line.
pub(super) fn pretty(of: &impl Serialize) -> Result<String, Failure> {
    serde_json::to_string_pretty(of).map_err(Failure::of_program)
}

/// One line, without its end.
pub(super) fn line(of: &impl Serialize) -> Result<String, Failure> {
    serde_json::to_string(of).map_err(Failure::of_program)
}

/// As a value of JSON.
pub(super) fn value(of: &impl Serialize) -> Result<Value, Failure> {
    serde_json::to_value(of).map_err(Failure::of_program)
}
