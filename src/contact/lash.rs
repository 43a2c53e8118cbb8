//! Lash over one pitch, of the motions of both flanks.
//!
//! Source: our own definition: the play of both flanks at each roll, at the wheel's outer pitch radius. For small moves
//! it has the slopes of the handbooks, 2 tan α sin δ / cos β (`tests/outside`).

use crate::gear::Side;

use super::motion::Envelope;
use super::prepared::Prepared;
use super::result::Lash;

/// Lash over one pitch: j0 + (D_drive(φ) + D_coast(φ + 2ψ j0/d_e2)) d_e2/2.
pub(super) fn of(prepared: &Prepared, drive: Option<&Envelope>, coast: Option<&Envelope>) -> Option<Lash> {
    let design = prepared.gears.design();
    let radius = 0.5 * design.wheel_outer_pitch_diameter_mm;
    let (low, mean, high) = drive?.sum(coast?, lead(prepared));
    Some(Lash {
        min_mm: design.lash_mm + low * radius,
        mean_mm: design.lash_mm + mean * radius,
        max_mm: design.lash_mm + high * radius,
    })
}

/// How much further the coast flank's roll is taken: the pinion's tooth is thinner by the designed lash.
pub(super) fn lead(prepared: &Prepared) -> f64 {
    let design = prepared.gears.design();
    prepared.flank(Side::Drive).toward * design.lash_mm / (0.5 * design.wheel_outer_pitch_diameter_mm)
}
