//! Why points of the outcome were lost.

use super::shared::{asked_for, count, counted, missing, nut};
use crate::exercise::score::reason::{OutcomeReason, PinionTorqueWay};
use crate::exercise::{DepthFrom, Window};
use crate::gear::Side;
use crate::quantity::{number, signed};

#[expect(clippy::too_many_lines, reason = "one arm a reason")]
pub(super) fn words(reason: &OutcomeReason) -> String {
    match reason {
        OutcomeReason::BlanketVerdict { sound_parts } => format!(
            "{sound_parts} sound parts were condemned: a verdict on everything tells nobody anything. Condemn what the \
             evidence shows."
        ),
        OutcomeReason::NotTogether {
            operation,
            missing: what,
            counted: lost,
        } => {
            let lost: Vec<&str> = lost.iter().map(|c| counted(*c)).collect();
            format!(
                "{}: there is no judging {}.",
                missing(*operation, *what),
                lost.join(", ")
            )
        }
        OutcomeReason::TeethApart { operation } => {
            format!("At hand-over, operation {operation}, the teeth did not meet as gears.")
        }
        OutcomeReason::Depth {
            off_mm,
            from,
            full_mm,
            zero_mm,
            shim_mm,
        } => format!(
            "The pinion stands {} mm too {} {} (full marks within {} mm, none from {} mm): make the depth shim {} mm {}.",
            number(off_mm.abs(), 3),
            if *off_mm > 0.0 { "shallow" } else { "deep" },
            match from {
                DepthFrom::Best => "for the best that this axle can be set to",
                DepthFrom::Found => "for where it ran before",
            },
            number(*full_mm, 3),
            number(*zero_mm, 3),
            number(shim_mm.abs(), 2),
            thicker(*shim_mm)
        ),
        OutcomeReason::NoDepthPrints { wheel_axial_mm } => format!(
            "With the ring gear {} mm from its place no depth leaves a print on the drive flank: set lash first.",
            signed(*wheel_axial_mm, 3)
        ),
        OutcomeReason::Lash {
            reads_mm,
            full_mm,
            zero_mm,
            away_mm,
        } => format!(
            "Lash at the tightest place is {} mm in the card's reading (full marks from {} to {} mm, none {} mm outside): \
             move the ring gear {} mm {} the pinion, as much out of one side as into the other.",
            number(*reads_mm, 3),
            number(full_mm.low, 3),
            number(full_mm.high, 3),
            number(*zero_mm, 3),
            number(away_mm.abs(), 2),
            if *away_mm > 0.0 { "away from" } else { "toward" }
        ),
        OutcomeReason::LashSpread {
            spread_mm,
            full_mm,
            zero_mm,
        } => format!(
            "Lash differs by {} mm around the ring gear (full marks up to {} mm, none from {} mm): clean the seat, warm the \
             ring gear, draw the bolts up crosswise, and read its runout.",
            number(*spread_mm, 3),
            number(*full_mm, 3),
            number(*zero_mm, 3)
        ),
        OutcomeReason::FaceRunout {
            runout_mm,
            full_mm,
            zero_mm,
        } => format!(
            "The ring gear's face runs out by {} mm (full marks up to {} mm, none from {} mm): look for a chip on its seat \
             and fit it warm.",
            number(*runout_mm, 3),
            number(*full_mm, 3),
            number(*zero_mm, 3)
        ),
        OutcomeReason::PinionTorque {
            felt_nm,
            full_nm,
            zero_nm,
            way,
        } => format!(
            "Settled, the pinion alone turns with {}: {}.",
            torque(*felt_nm, *full_nm, *zero_nm),
            torque_way(*way)
        ),
        OutcomeReason::SideTorque {
            felt_nm,
            full_nm,
            zero_nm,
        } => format!(
            "The side bearings add {}: {} both sides by the same amount, so that the ring gear stays where it is.",
            torque(*felt_nm, *full_nm, *zero_nm),
            if *felt_nm < full_nm.low { "tighten" } else { "ease" }
        ),
        OutcomeReason::NutTorque(stands) => nut(stands),
        OutcomeReason::NoPrints { operation } => {
            format!("At hand-over, operation {operation}, there was no print.")
        }
        OutcomeReason::NoPrintOnFlank { flank: side } => format!(
            "The {} flank shows no print: 0 % of it is marked. Set depth and lash first.",
            flank(*side)
        ),
        OutcomeReason::EdgeContact { flank: side, share } => format!(
            "On the {} flank an edge touches over {} % of the roll: bring the height right by depth before anything else.",
            flank(*side),
            number(100.0 * share, 0)
        ),
        OutcomeReason::PrintOff {
            flank: side,
            off: [along, up],
            full: [full_along, full_up],
            zero,
        } => format!(
            "The {} print lies {} along and {} up from the approval print (full marks within {} along and {} up, none from \
             {}): height on both flanks first, by depth; length is the second witness.",
            flank(*side),
            signed(*along, 2),
            signed(*up, 2),
            number(*full_along, 2),
            number(*full_up, 2),
            number(*zero, 2)
        ),
        OutcomeReason::ValueNotWritten { asked } => format!(
            "The card asks for {}, and 0 values of it were written down.",
            asked_for(*asked)
        ),
        OutcomeReason::ValueOfNothing { operation, noted } => format!(
            "Operation {operation} wrote {} down, but what it speaks of is not together.",
            number(*noted, 3)
        ),
        OutcomeReason::ValueOff {
            asked,
            noted,
            truth,
            full,
            zero,
        } => format!(
            "Written down for {} was {}, true is {} (full marks within {}, none from {}): look for the error in how the \
             instrument was laid on before you look for it in the axle.",
            asked_for(*asked),
            number(*noted, 3),
            number(*truth, 3),
            number(*full, 3),
            number(*zero, 3)
        ),
        OutcomeReason::Pack {
            size_mm,
            pieces,
            wanted_mm,
            full_mm,
            zero_mm,
            most_pieces,
        } => format!(
            "The pack is {} mm of {} (wanted {} mm, full marks within {} mm, none from {}, of {most_pieces} at most): \
             measure each piece, a label is a claim.",
            number(*size_mm, 3),
            count(*pieces, "piece", "pieces"),
            number(*wanted_mm, 3),
            number(*full_mm, 3),
            number(*zero_mm, 3)
        ),
        OutcomeReason::Plates { right, all, full_from } => format!(
            "{right} of {all} plates were judged right; full marks from {} on: height on both flanks first, with the chart of \
             the set that is written on the plate.",
            number(*full_from, 0)
        ),
    }
}

fn flank(side: Side) -> &'static str {
    match side {
        Side::Drive => "drive",
        Side::Coast => "coast",
    }
}

/// What becomes of shims.
fn thicker(mm: f64) -> &'static str {
    if mm > 0.0 { "thicker" } else { "thinner" }
}

fn torque(felt_nm: f64, full: Window, zero: Window) -> String {
    format!(
        "{} N·m (full marks from {} to {} N·m, none from {} N·m down or {} N·m up)",
        number(felt_nm, 2),
        number(full.low, 2),
        number(full.high, 2),
        number(zero.low, 2),
        number(zero.high, 2)
    )
}

fn torque_way(way: PinionTorqueWay) -> String {
    match way {
        PinionTorqueWay::TurnNutOn {} => "turn the nut on, by half of what is missing each time".to_owned(),
        PinionTorqueWay::NewSleeve {} => "fit a new sleeve and stop earlier: backing off leaves no preload".to_owned(),
        PinionTorqueWay::SpacerShims { thicker_mm } => format!(
            "make the spacer shims about {} mm {}",
            number(thicker_mm.abs(), 3),
            thicker(thicker_mm)
        ),
    }
}
