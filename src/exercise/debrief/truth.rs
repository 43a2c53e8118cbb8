//! What is true of a quantity at hand-over.

use crate::bench::{Measurand, StemChoice};
use crate::exercise::attempt::Attempt;
use crate::exercise::outcome::Outcome;

/// As an instrument without error would show it, its stem laid so; torques settled.
pub(super) fn true_now(attempt: &Attempt, outcome: &Outcome, what: Measurand, stem: StemChoice) -> Option<f64> {
    match what {
        Measurand::RollingTorque {} => Some(outcome.pinion_torque_nm? + outcome.side_torque_nm.unwrap_or(0.0)),
        Measurand::PinionEndPlay {} => outcome.pinion_play_mm,
        _ => attempt.bench().true_reading(what, stem),
    }
}
