//! Checking files of any of our kinds.

use super::{Failure, gear_sets};

/// Checks a file and says in one line what it is.
///
/// # Errors
/// Everything that is wrong with it.
pub fn check(source: &str) -> Result<String, Failure> {
    let found = gear_sets::find(source)?;
    let design = &found.design;
    Ok(format!(
        "{}: gear set \"{}\", {} to {} teeth: no problem found",
        found.source, design.name, design.wheel_teeth, design.pinion_teeth
    ))
}
