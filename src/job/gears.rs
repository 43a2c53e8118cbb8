//! The list of gear sets that ship with the program.

use crate::document::gears::GearSetRow;
use crate::report::gears;

use super::{Failure, gear_sets, json};

/// One line a gear set.
///
/// # Errors
/// As for a file; a test reads them all.
pub fn text() -> Result<String, Failure> {
    Ok(gears::list(&rows()?))
}

/// As one JSON list.
///
/// # Errors
/// As for a file; a test reads them all.
pub fn document() -> Result<String, Failure> {
    json::pretty(&rows()?)
}

fn rows() -> Result<Vec<GearSetRow>, Failure> {
    Ok(gear_sets::embedded()?
        .iter()
        .map(|found| GearSetRow::new(&found.source, &found.design))
        .collect())
}
