//! All exercises that ship with the program.

use crate::document::attempt::ExerciseRow;
use crate::job::{Failure, json, scenarios};
use crate::report::attempt as pages;

/// One line an exercise.
///
/// # Errors
/// As for a file; a test reads them all.
pub fn text() -> Result<String, Failure> {
    Ok(pages::list(&rows()?))
}

/// As one JSON list.
///
/// # Errors
/// As for a file; a test reads them all.
pub fn document() -> Result<String, Failure> {
    json::pretty(&rows()?)
}

fn rows() -> Result<Vec<ExerciseRow>, Failure> {
    Ok(scenarios::embedded()?
        .iter()
        .map(|found| ExerciseRow::new(&found.source, found.exercise.scenario()))
        .collect())
}
