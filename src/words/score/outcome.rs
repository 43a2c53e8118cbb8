//! Why points of the outcome were lost.

use super::shared::{asked_for, counted, flank, missing, nut, thicker};
use crate::exercise::score::reason::{OutcomeReason, PinionTorqueWay};
use crate::exercise::{AskedFor, DepthFrom, Window};
use crate::quantity::number;
use crate::words::debrief::amount::{both, both_torque};
use crate::words::debrief::print;
use crate::words::say;

#[expect(clippy::too_many_lines, reason = "one arm a reason")]
pub(super) fn words(reason: &OutcomeReason) -> String {
    match reason {
        OutcomeReason::BlanketVerdict { sound_parts } => say!("score-blanket", count = *sound_parts),
        OutcomeReason::NotTogether {
            operation,
            missing: what,
            counted: lost,
        } => {
            let lost: Vec<String> = lost.iter().map(|c| counted(*c)).collect();
            say!(
                "score-not-together",
                missing = missing(*operation, *what),
                counted = lost.join(", ")
            )
        }
        OutcomeReason::TeethApart { operation } => say!("score-teeth-apart", operation = *operation),
        OutcomeReason::Depth {
            off_mm,
            from,
            full_mm,
            zero_mm,
            shim_mm,
        } => say!(
            "score-depth",
            off = both(off_mm.abs()),
            way = if *off_mm > 0.0 { "shallow" } else { "deep" },
            from = match from {
                DepthFrom::Best => "best",
                DepthFrom::Found => "found",
            },
            full = both(*full_mm),
            zero = both(*zero_mm),
            shim = both(shim_mm.abs()),
            shim_way = thicker(*shim_mm)
        ),
        OutcomeReason::NoDepthPrints { wheel_axial_mm } => say!(
            "score-depth-no-print",
            off = both(wheel_axial_mm.abs()),
            way = away(*wheel_axial_mm)
        ),
        OutcomeReason::Lash {
            reads_mm,
            full_mm,
            zero_mm,
            away_mm,
        } => say!(
            "score-lash",
            reads = both(*reads_mm),
            low = both(full_mm.low),
            high = both(full_mm.high),
            zero = both(*zero_mm),
            by = both(away_mm.abs()),
            way = away(*away_mm)
        ),
        OutcomeReason::LashSpread {
            spread_mm,
            full_mm,
            zero_mm,
        } => say!(
            "score-spread",
            spread = both(*spread_mm),
            full = both(*full_mm),
            zero = both(*zero_mm)
        ),
        OutcomeReason::FaceRunout {
            runout_mm,
            full_mm,
            zero_mm,
        } => say!(
            "score-runout",
            runout = both(*runout_mm),
            full = both(*full_mm),
            zero = both(*zero_mm)
        ),
        OutcomeReason::PinionTorque {
            felt_nm,
            full_nm,
            zero_nm,
            way,
        } => say!(
            "score-pinion-torque",
            felt = both_torque(*felt_nm),
            full = torques(*full_nm),
            zero = torques(*zero_nm),
            cure = cure(*way)
        ),
        OutcomeReason::SideTorque {
            felt_nm,
            full_nm,
            zero_nm,
        } => {
            let (felt, full, zero) = (both_torque(*felt_nm), torques(*full_nm), torques(*zero_nm));
            if *felt_nm < full_nm.low {
                say!("score-side-torque-low", felt = felt, full = full, zero = zero)
            } else {
                say!("score-side-torque-high", felt = felt, full = full, zero = zero)
            }
        }
        OutcomeReason::NutTorque(stands) => nut(stands),
        OutcomeReason::NoPrints { operation } => say!("score-no-prints", operation = *operation),
        OutcomeReason::NoPrintOnFlank { flank: side } => say!("score-no-print-on-flank", flank = flank(*side)),
        OutcomeReason::EdgeContact { flank: side, share } => say!(
            "score-edge-contact",
            flank = flank(*side),
            share = number(100.0 * share, 0)
        ),
        OutcomeReason::PrintOff {
            flank: side,
            off,
            full: [full_along, full_up],
            zero,
        } => say!(
            "score-print-off",
            flank = flank(*side),
            off = print::off(*off, [0.0; 2]),
            full_along = number(*full_along, 2),
            full_up = number(*full_up, 2),
            zero = number(*zero, 2)
        ),
        OutcomeReason::ValueNotWritten { asked } => say!("score-value-not-written", quantity = asked_for(*asked)),
        OutcomeReason::ValueOfNothing { operation, noted } => say!(
            "score-value-of-nothing",
            operation = *operation,
            value = number(*noted, 3)
        ),
        OutcomeReason::ValueOff {
            asked,
            noted,
            truth,
            full,
            zero,
        } => say!(
            "score-value-off",
            quantity = asked_for(*asked),
            noted = value(*asked, *noted),
            truth = value(*asked, *truth),
            full = value(*asked, *full),
            zero = value(*asked, *zero)
        ),
        OutcomeReason::Pack {
            size_mm,
            pieces,
            wanted_mm,
            full_mm,
            zero_mm,
            most_pieces,
        } => say!(
            "score-pack",
            size = both(*size_mm),
            pieces = *pieces,
            wanted = both(*wanted_mm),
            full = both(*full_mm),
            zero = both(*zero_mm),
            most_pieces = *most_pieces
        ),
        OutcomeReason::Plates { right, all, full_from } => say!(
            "score-plates",
            right = *right,
            all = *all,
            full_from = number(*full_from, 0)
        ),
    }
}

/// Which way the ring gear stands or goes, as messages choose by it.
fn away(mm: f64) -> &'static str {
    if mm > 0.0 { "away" } else { "toward" }
}

/// A window of torques felt by hand.
fn torques(window: Window) -> String {
    say!(
        "score-range",
        low = both_torque(window.low),
        high = both_torque(window.high)
    )
}

/// A value that was asked for, with its units.
fn value(asked: AskedFor, value: f64) -> String {
    match asked {
        AskedFor::RollingTorque => both_torque(value),
        AskedFor::Lash | AskedFor::PinionDepth | AskedFor::PinionEndPlay | AskedFor::WheelFaceRunout => both(value),
    }
}

/// What brings the pinion's torque into its window, as a sentence.
fn cure(way: PinionTorqueWay) -> String {
    match way {
        PinionTorqueWay::TurnNutOn {} => say!("score-cure-turn-nut"),
        PinionTorqueWay::NewSleeve {} => say!("score-cure-new-spacer"),
        PinionTorqueWay::SpacerShims { thicker_mm } => say!(
            "score-cure-spacer-shims",
            by = both(thicker_mm.abs()),
            way = thicker(thicker_mm)
        ),
    }
}
