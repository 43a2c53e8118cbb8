//! The trade's words for hidden sizes and numbers, where each shows, and what it does.

use crate::axle::{Member, Moves};
use crate::exercise::debrief::{HiddenNumber, HiddenSize, NumberUnit, Shift};
use crate::exercise::{Factor, FaultKind};
use crate::quantity::{degrees, number};
use crate::words::say;

use super::amount::both;

/// Name of a member of the chain.
pub fn member(member: Member) -> String {
    match member {
        Member::HousingDepth => say!("hidden-housing-depth"),
        Member::CartridgeFace => say!("hidden-cartridge-face"),
        Member::CartridgeDepth => say!("hidden-cartridge-depth"),
        Member::ShoulderDistance => say!("hidden-shoulder-distance"),
        Member::HeadBearingStand => say!("hidden-head-stand"),
        Member::TailBearingStand => say!("hidden-tail-stand"),
        Member::SetUpHeadStand => say!("hidden-set-up-head-stand"),
        Member::SetUpTailStand => say!("hidden-set-up-tail-stand"),
        Member::PinionMark => say!("hidden-pinion-mark"),
        Member::SpacerLength => say!("hidden-spacer-length"),
        Member::Offset => say!("hidden-offset"),
        Member::Squareness => say!("hidden-squareness"),
        Member::ToothSideSeat => say!("hidden-tooth-side-seat"),
        Member::BackSideSeat => say!("hidden-back-side-seat"),
        Member::CarrierToothSide => say!("hidden-carrier-tooth-side"),
        Member::CarrierBackSide => say!("hidden-carrier-back-side"),
        Member::ToothBearingStand => say!("hidden-tooth-bearing-stand"),
        Member::BackBearingStand => say!("hidden-back-bearing-stand"),
        Member::WheelThickness => say!("hidden-ring-gear-thickness"),
        Member::WheelFaceRunout => say!("hidden-seat-runout"),
        Member::WheelRadialRunout => say!("hidden-radial-runout"),
        Member::WheelSeatChip => say!("hidden-seat-chip"),
        Member::PinionRunout => say!("hidden-pinion-runout"),
        Member::CapFloat => say!("hidden-cap-float"),
        Member::CapMismatch => say!("hidden-cap-mismatch"),
        Member::HeadConeGap => say!("hidden-head-cone-gap"),
        Member::HeadCupGap => say!("hidden-head-cup-gap"),
        Member::TailCupGap => say!("hidden-tail-cup-gap"),
        Member::HeadShim | Member::CupShim | Member::CartridgeShim => say!("hidden-depth-shim"),
        Member::SpacerShims => say!("hidden-spacer-shims"),
        Member::ToothSideShim | Member::BackSideShim => say!("hidden-side-shims"),
        Member::ToothSideAdjuster | Member::BackSideAdjuster => say!("hidden-side-adjuster"),
        Member::WheelTilt => say!("hidden-tilt"),
        Member::CaseSpreader => say!("hidden-spreader"),
    }
}

/// Where a member shows.
pub fn found_by(member: Member) -> String {
    match member {
        Member::HousingDepth | Member::CartridgeFace | Member::CartridgeDepth | Member::SetUpHeadStand => {
            say!("hidden-by-depth")
        }
        Member::ShoulderDistance | Member::TailBearingStand | Member::SetUpTailStand | Member::SpacerLength => {
            say!("hidden-by-preload")
        }
        Member::HeadBearingStand => say!("hidden-by-both"),
        Member::PinionMark => say!("hidden-by-mark"),
        Member::Offset => say!("hidden-by-offset"),
        Member::Squareness => say!("hidden-by-squareness"),
        Member::ToothSideSeat
        | Member::BackSideSeat
        | Member::CarrierToothSide
        | Member::CarrierBackSide
        | Member::ToothBearingStand
        | Member::BackBearingStand
        | Member::WheelThickness => say!("hidden-by-sides"),
        Member::WheelFaceRunout => say!("hidden-by-face-runout"),
        Member::WheelRadialRunout => say!("hidden-by-radial-runout"),
        Member::WheelSeatChip => say!("hidden-by-chip"),
        Member::PinionRunout => say!("hidden-by-pinion-runout"),
        Member::CapFloat => say!("hidden-by-cap-float"),
        Member::CapMismatch => say!("hidden-by-caps"),
        Member::HeadConeGap | Member::HeadCupGap | Member::TailCupGap => say!("hidden-by-gap"),
        Member::HeadShim
        | Member::CupShim
        | Member::CartridgeShim
        | Member::SpacerShims
        | Member::ToothSideShim
        | Member::BackSideShim => say!("hidden-by-micrometer"),
        Member::ToothSideAdjuster | Member::BackSideAdjuster => say!("hidden-by-notches"),
        Member::WheelTilt => say!("hidden-by-tilt"),
        Member::CaseSpreader => say!("hidden-by-spreader"),
    }
}

/// A hidden number beside the chain.
pub fn factor(factor: Factor) -> String {
    match factor {
        Factor::MarkErrorMm => say!("hidden-factor-mark-error"),
        Factor::SleeveYield => say!("hidden-factor-yield"),
        Factor::SleeveHardening => say!("hidden-factor-hardening"),
        Factor::NutFriction => say!("hidden-factor-nut-friction"),
        Factor::NutScatter => say!("hidden-factor-nut-scatter"),
        Factor::HeadFriction => say!("hidden-factor-head-friction"),
        Factor::TailFriction => say!("hidden-factor-tail-friction"),
        Factor::SideFriction => say!("hidden-factor-side-friction"),
        Factor::SealDrag => say!("hidden-factor-seal-drag"),
        Factor::CaseStiffness => say!("hidden-factor-stiffness"),
        Factor::ThreadSlackMm => say!("hidden-factor-thread-slack"),
        Factor::WheelInterferenceMm => say!("hidden-factor-interference"),
        Factor::HeadConePressN => say!("hidden-factor-head-cone-press"),
        Factor::HeadCupPressN => say!("hidden-factor-head-cup-press"),
        Factor::TailCupPressN => say!("hidden-factor-tail-cup-press"),
    }
}

/// Its value with its unit.
pub fn factor_value(hidden: &HiddenNumber) -> String {
    match hidden.unit {
        NumberUnit::Times => say!("hidden-value-times", value = number(hidden.value, 2)),
        NumberUnit::Millimeter => say!("hidden-value-mm", value = number(hidden.value, 3)),
        NumberUnit::Kilonewton => say!("hidden-value-kn", value = number(hidden.value, 1)),
        NumberUnit::Percent => say!("hidden-value-percent", value = number(hidden.value, 1)),
    }
}

/// Something that may be wrong.
pub fn fault(kind: &FaultKind) -> String {
    match kind {
        FaultKind::Size(of, _) => member(*of),
        FaultKind::MismatchedGears { .. } => say!("hidden-fault-mismatched"),
        FaultKind::SwappedCaps => say!("hidden-fault-caps"),
        FaultKind::ChipUnderWheel => say!("hidden-fault-chip"),
        FaultKind::WornFlanks { .. } => say!("hidden-fault-worn"),
    }
}

/// What a size does to the axle.
pub fn shifts(size: &HiddenSize) -> String {
    let told = size.shifts.iter().filter(|shift| shift.by.abs() > 1.0e-9);
    told.map(shift).collect::<Vec<_>>().join(", ")
}

fn shift(shift: &Shift) -> String {
    let mm = both(shift.by.abs());
    match (shift.moves, shift.by < 0.0) {
        (Moves::PinionAxial, true) => say!("hidden-shift-pinion-deeper", by = mm),
        (Moves::PinionAxial, false) => say!("hidden-shift-pinion-shallower", by = mm),
        (Moves::WheelAxial, true) => say!("hidden-shift-ring-gear-toward", by = mm),
        (Moves::WheelAxial, false) => say!("hidden-shift-ring-gear-away", by = mm),
        (Moves::Offset, true) => say!("hidden-shift-offset-less", by = mm),
        (Moves::Offset, false) => say!("hidden-shift-offset-more", by = mm),
        (Moves::ShaftAngle, true) => say!("hidden-shift-angle-closed", by = number(degrees(shift.by.abs()), 3)),
        (Moves::ShaftAngle, false) => say!("hidden-shift-angle-opened", by = number(degrees(shift.by.abs()), 3)),
        (Moves::ZeroPreloadLength, true) => say!("hidden-shift-room-shorter", by = mm),
        (Moves::ZeroPreloadLength, false) => say!("hidden-shift-room-longer", by = mm),
        (Moves::SpacerLength, true) => say!("hidden-shift-spacer-shorter", by = mm),
        (Moves::SpacerLength, false) => say!("hidden-shift-spacer-longer", by = mm),
        (Moves::ToothStack, true) => say!("hidden-shift-tooth-stack-shorter", by = mm),
        (Moves::ToothStack, false) => say!("hidden-shift-tooth-stack-longer", by = mm),
        (Moves::BackStack, true) => say!("hidden-shift-back-stack-shorter", by = mm),
        (Moves::BackStack, false) => say!("hidden-shift-back-stack-longer", by = mm),
        (Moves::WheelAcross, _) => say!("hidden-shift-across", by = mm),
        (Moves::WheelFace | Moves::WheelRadial | Moves::PinionRadial, _) => say!("hidden-shift-varies"),
    }
}
