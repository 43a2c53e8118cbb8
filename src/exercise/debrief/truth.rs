//! What is true of a quantity, as an instrument without error would show it.

use crate::axle::{Turning, resistance, side_resistance_nm};
use crate::bench::{Measurand, Ring, StemChoice};
use crate::exercise::attempt::Attempt;
use crate::exercise::history::nut_torque_nm;
use crate::exercise::outcome::Outcome;

/// What is true of a quantity at hand-over, torques settled.
pub(super) fn true_now(attempt: &Attempt, outcome: &Outcome, what: Measurand, stem: StemChoice) -> Option<f64> {
    match what {
        Measurand::RollingTorque {} => Some(outcome.pinion_torque_nm? + outcome.side_torque_nm.unwrap_or(0.0)),
        Measurand::PinionEndPlay {} => outcome.pinion_play_mm,
        _ => true_then(attempt, what, stem),
    }
}

/// What is true of a quantity in a state, as an instrument without error would show it. None for what is not together and
/// for what is no single number.
pub(super) fn true_then(attempt: &Attempt, what: Measurand, stem: StemChoice) -> Option<f64> {
    let bench = attempt.bench();
    let (axle, truth, built, assembly) = (&bench.setting().axle, bench.truth(), bench.built(), bench.assembly());
    let gears = axle.gears();
    let torque = |turning| resistance(axle, truth, built, turning).map(|r| r.total_nm);
    match what {
        Measurand::Lash { tooth } => {
            let play_mm = bench.mean_play_mm(tooth)?;
            Some(stem.stem().travel_mm(play_mm, gears.outer_pitch_radius_mm, gears))
        }
        Measurand::WheelFaceRunout {} => {
            assembly.wheel?;
            let lever = gears.outer_pitch_radius_mm / gears.wheel_mean_radius_mm;
            Some(2.0 * lever * built.runout.wheel_face_amplitude_mm())
        }
        Measurand::WheelRadialRunout {} => {
            assembly.wheel?;
            Some(2.0 * built.runout.wheel_radial_amplitude_mm())
        }
        Measurand::PinionRunout {} => {
            built.pinion?;
            Some(2.0 * built.runout.pinion_radial_amplitude_mm())
        }
        Measurand::NutTorque {} => nut_torque_nm(bench),
        Measurand::BreakawayTorque {} => torque(Turning::STARTED),
        Measurand::RollingTorque {} => torque(Turning::BY_HAND),
        Measurand::CarrierTorque {} => {
            let alone = built.side.is_some() && built.placement.is_none();
            alone.then(|| side_resistance_nm(axle, truth, built, Turning::BY_HAND))
        }
        Measurand::PinionDepth {} => built.pinion?.head_distance_mm,
        Measurand::PinionEndPlay {} => Some(built.pinion?.play_mm),
        Measurand::CarrierEndPlay {} => Some(built.side?.play_mm),
        Measurand::CaseSpread {} => Some(assembly.spreader_mm + built.side.map_or(0.0, |s| s.case_spread_mm)),
        Measurand::SeatGap { ring } => {
            let seating = &assembly.seating;
            Some(match ring {
                Ring::HeadCone => seating.head_cone.gap_mm,
                Ring::HeadCup => seating.head_cup.gap_mm,
                Ring::TailCup => seating.tail_cup.gap_mm,
            })
        }
        Measurand::ShimPiece { .. }
        | Measurand::ShimPack { .. }
        | Measurand::WheelTemperature {}
        | Measurand::Print {}
        | Measurand::Plate { .. }
        | Measurand::MatchNumbers {} => None,
    }
}
