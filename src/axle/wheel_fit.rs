//! Putting the wheel on its carrier.
//!
//! Source: expansion and its limit as in `bearing::fit`; how crooked a tight wheel is drawn on is our own definition.

use super::assembly::WheelSeat;
use super::design::Axle;
use super::truth::Truth;
use crate::bearing::fit;

/// How a wheel is put on and its bolts are drawn up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WheelFitting {
    /// Temperature of the wheel when it is put on, °C; the carrier is at 20 °C.
    pub wheel_c: f64,
    /// Whether wheel and seat were cleaned.
    pub clean: bool,
    /// Whether the bolts are drawn up crosswise.
    pub crosswise: bool,
}

/// Temperature of the shop and of cold parts, °C.
pub const ROOM_C: f64 = 20.0;

/// How the wheel sits then. A wheel warm enough to clear its register drops home; one that is tight is drawn on by its
/// bolts and stays crooked, less so crosswise. Bolts are still to be torqued.
pub fn seat_wheel(axle: &Axle, truth: &Truth, fitting: WheelFitting) -> WheelSeat {
    let growth_mm = fit::growth_mm(
        axle.register().diameter_mm,
        fit::EXPANSION_GEAR_STEEL_PER_K,
        fitting.wheel_c - ROOM_C,
    );
    let left_mm = truth.wheel_fit.interference_mm - growth_mm;
    // What is left of the interference draws crooked in proportion; a loose or warm wheel not at all.
    let share = if truth.wheel_fit.interference_mm > 0.0 && left_mm > 0.0 {
        (left_mm / truth.wheel_fit.interference_mm).clamp(0.0, 1.0)
    } else {
        0.0
    };
    let pattern = if fitting.crosswise {
        truth.wheel_fit.crossed_share
    } else {
        1.0
    };
    WheelSeat {
        dirty: !fitting.clean,
        tilt_mm: truth.wheel_fit.cold_tilt_mm * share * pattern,
        bolted: false,
    }
}

/// Whether a wheel made that hot is scrap: above its limit case-hardened teeth begin to soften.
pub fn overheated(axle: &Axle, wheel_c: f64) -> bool {
    wheel_c > axle.register().limit_c
}
