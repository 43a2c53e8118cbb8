//! A table over spacer length or nut torque: as text, as documents, as comma-separated values.

use crate::document::preload::PreloadDocument;
use crate::job::{Failure, json, supports};
use crate::report::preload::{self as pages, Conditions, Over, Preload};

use super::case;
use super::request::{Request, Sweep, check};
use super::solve::solve;

/// The table for people.
///
/// # Errors
/// As for a case; also a table without rows or with more than [`super::MOST_ROWS`].
pub fn text(request: &Request, sweep: &Sweep) -> Result<String, Failure> {
    Ok(pages::table(&rows(request, sweep)?, sweep.over))
}

/// The table as one JSON list of documents.
///
/// # Errors
/// As [`text`].
pub fn documents(request: &Request, sweep: &Sweep) -> Result<String, Failure> {
    let rows = rows(request, sweep)?;
    json::pretty(&rows.iter().map(case::of).collect::<Vec<PreloadDocument>>())
}

/// The table as comma-separated values.
///
/// # Errors
/// As [`text`].
pub fn csv(request: &Request, sweep: &Sweep) -> Result<String, Failure> {
    Ok(pages::csv(&rows(request, sweep)?))
}

/// Each row stands for a spacer and nut of its own, tightened for the first time.
fn rows(request: &Request, sweep: &Sweep) -> Result<Vec<Preload>, Failure> {
    let found = supports::find(&request.support)?;
    let conditions = check(&found, request, Some(sweep))?;
    sweep
        .values()
        .into_iter()
        .map(|value| {
            let row = match sweep.over {
                Over::Spacer => Conditions {
                    spacer_mm: value,
                    ..conditions
                },
                Over::NutTorque => Conditions {
                    nut_torque_nm: value,
                    ..conditions
                },
            };
            solve(&found, row)
        })
        .collect()
}
