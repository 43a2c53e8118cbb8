//! One case: as text, as a document, as a chart.

use std::path::Path;

use crate::document::preload::PreloadDocument;
use crate::drawing::{Theme, svg};
use crate::job::{Failure, json, supports};
use crate::report::preload::{self as pages, Preload};
use crate::store;
use crate::words::{self, say};

use super::request::{Request, check};
use super::solve::solve;

/// Computes one case.
///
/// # Errors
/// Everything that is wrong with the file, or with the request, all at once.
pub fn preload(request: &Request) -> Result<Preload, Failure> {
    let found = supports::find(&request.support)?;
    let conditions = check(&found, request, None)?;
    solve(&found, conditions)
}

/// One case for people.
///
/// # Errors
/// As [`preload`].
pub fn text(request: &Request) -> Result<String, Failure> {
    Ok(pages::text(&preload(request)?, request.nut_torque_nm.is_none()))
}

/// One case as a JSON document.
///
/// # Errors
/// As [`preload`].
pub fn document(request: &Request) -> Result<String, Failure> {
    json::pretty(&of(&preload(request)?))
}

/// Draws the chart of a case and writes it as an SVG file, whole or not at all.
///
/// # Errors
/// As [`preload`]; a support that could not be solved somewhere on the chart, a file that cannot be written.
pub fn picture(request: &Request, file: &Path) -> Result<(), Failure> {
    let picture = pages::picture(&preload(request)?).map_err(|error| {
        Failure::went_wrong(say!("preload-unsolved-picture", why = words::error::root(error).line()))
    })?;
    Ok(store::write_whole(file, svg::write(&picture, Theme::Paper).as_bytes())?)
}

/// The document of a case.
pub(super) fn of(case: &Preload) -> PreloadDocument {
    let state = &case.state;
    PreloadDocument {
        support: case.source.clone(),
        spacer_length_mm: case.conditions.spacer_mm,
        nut_torque_nm: case.conditions.nut_torque_nm,
        turn_rpm: case.conditions.turn_rpm,
        temperature_c: case.conditions.temperature_c,
        clamp_n: state.clamp_n,
        spacer_n: state.spacer_n,
        preload_n: state.preload_n,
        play_um: 1.0e3 * state.play_mm,
        spacer_loaded_length_mm: state.spacer_loaded_length_mm,
        head_deflection_um: 1.0e3 * state.head_deflection_mm,
        tail_deflection_um: 1.0e3 * state.tail_deflection_mm,
        pinion_shift_um: 1.0e3 * state.pinion_shift_mm,
        oil_viscosity_mm2_s: case.running.viscosity_mm2_s,
        rolling_torque_nm: (&case.rolling).into(),
        breakaway_nm: (&case.breakaway).into(),
        note: words::simulated(),
    }
}
