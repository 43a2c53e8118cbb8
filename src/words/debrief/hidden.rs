//! The trade's words for hidden sizes and numbers, where each shows, and what it does.

use crate::axle::{Member, Moves};
use crate::exercise::debrief::{HiddenNumber, HiddenSize, NumberUnit, Shift};
use crate::exercise::{Factor, FaultKind};
use crate::quantity::{degrees, number};

/// Name of a member of the chain.
pub const fn member(member: Member) -> &'static str {
    match member {
        Member::HousingDepth => "Depth of the housing",
        Member::CartridgeFace => "Face that the cartridge bolts to",
        Member::CartridgeDepth => "Depth of the cartridge",
        Member::ShoulderDistance => "Between the shoulders of the pinion's cups",
        Member::HeadBearingStand => "Stand of the head bearing",
        Member::TailBearingStand => "Stand of the tail bearing",
        Member::SetUpHeadStand => "Stand of the set-up head bearing",
        Member::SetUpTailStand => "Stand of the set-up tail bearing",
        Member::PinionMark => "Where this pinion runs best (its true mark)",
        Member::SpacerLength => "Free length of the spacer",
        Member::Offset => "Offset of the two axes",
        Member::Squareness => "Squareness of the pinion's bore",
        Member::ToothSideSeat => "Seat in the case, tooth side",
        Member::BackSideSeat => "Seat in the case, behind the ring gear",
        Member::CarrierToothSide => "Carrier, from its seat to the tooth-side cone",
        Member::CarrierBackSide => "Carrier, from its seat to the cone behind",
        Member::ToothBearingStand => "Stand of the side bearing, tooth side",
        Member::BackBearingStand => "Stand of the side bearing behind the ring gear",
        Member::WheelThickness => "Ring gear, from its seat to its teeth",
        Member::WheelFaceRunout => "Face runout of the ring gear's seat",
        Member::WheelRadialRunout => "Radial runout of the ring gear",
        Member::WheelSeatChip => "Runout that a chip under the ring gear makes",
        Member::PinionRunout => "Radial runout of the pinion",
        Member::CapFloat => "How far the ring gear floats while the caps are not torqued",
        Member::CapMismatch => "What caps changed round do to the ring gear",
        Member::HeadConeGap => "Gap behind the head cone, as it came",
        Member::HeadCupGap => "Gap behind the head cup, as it came",
        Member::TailCupGap => "Gap behind the tail cup, as it came",
        Member::HeadShim | Member::CupShim | Member::CartridgeShim => "Depth shim",
        Member::SpacerShims => "Shims beside the spacer",
        Member::ToothSideShim | Member::BackSideShim => "Side shims",
        Member::ToothSideAdjuster | Member::BackSideAdjuster => "Side adjuster",
        Member::WheelTilt => "Ring gear drawn on crookedly",
        Member::CaseSpreader => "Case held open",
    }
}

const BY_DEPTH: &str = "Arbor and gauge, as part of the pinion's depth; then the height of both prints.";
const BY_PRELOAD: &str = "Rotating torque and end play: the spacer's shims make up for it.";
const BY_BOTH: &str = "In depth and in preload at once: gauge, print and rotating torque.";
const BY_SIDES: &str = "In lash and side preload: the side setting makes up for it.";
const GAP: &str = "A 0.04 mm (0.0015 in) leaf behind the ring, and the sound of the press when it is home.";

/// Where a member shows.
pub const fn found_by(member: Member) -> &'static str {
    match member {
        Member::HousingDepth | Member::CartridgeFace | Member::CartridgeDepth | Member::SetUpHeadStand => BY_DEPTH,
        Member::ShoulderDistance | Member::TailBearingStand | Member::SetUpTailStand | Member::SpacerLength => {
            BY_PRELOAD
        }
        Member::HeadBearingStand => BY_BOTH,
        Member::PinionMark => "The mark etched on its head, as far as it is right; then the height of both prints.",
        Member::Offset => {
            "Nothing on this bench measures it: drive and coast prints that stay at opposite ends tell of it."
        }
        Member::Squareness => "Nothing on this bench measures it: prints that no depth brings right tell of it.",
        Member::ToothSideSeat
        | Member::BackSideSeat
        | Member::CarrierToothSide
        | Member::CarrierBackSide
        | Member::ToothBearingStand
        | Member::BackBearingStand
        | Member::WheelThickness => BY_SIDES,
        Member::WheelFaceRunout => "Dial on the back of the ring gear; lash that differs around it.",
        Member::WheelRadialRunout => "Dial across the teeth; lash that differs around the ring gear.",
        Member::WheelSeatChip => "Dial on the back of the ring gear; gone once the seat is cleaned.",
        Member::PinionRunout => "Dial at the pinion; lash that differs with the pinion's turn.",
        Member::CapFloat => "Lash before and after the caps are torqued.",
        Member::CapMismatch => "The marks on caps and case; a carrier that binds.",
        Member::HeadConeGap | Member::HeadCupGap | Member::TailCupGap => GAP,
        Member::HeadShim
        | Member::CupShim
        | Member::CartridgeShim
        | Member::SpacerShims
        | Member::ToothSideShim
        | Member::BackSideShim => "Micrometer.",
        Member::ToothSideAdjuster | Member::BackSideAdjuster => "Notches.",
        Member::WheelTilt => "Dial on its back.",
        Member::CaseSpreader => "Dial on the case.",
    }
}

/// A hidden number beside the chain.
pub const fn factor(factor: Factor) -> &'static str {
    match factor {
        Factor::MarkErrorMm => "Error of the etched mark",
        Factor::SleeveYield => "Force at which the sleeve yields",
        Factor::SleeveHardening => "Rise of that force while it is crushed",
        Factor::NutFriction => "Friction of the pinion nut",
        Factor::NutScatter => "Scatter of that friction, one tightening to the next",
        Factor::HeadFriction => "Friction of the head bearing",
        Factor::TailFriction => "Friction of the tail bearing",
        Factor::SideFriction => "Friction of the side bearings",
        Factor::SealDrag => "Drag of the seal",
        Factor::CaseStiffness => "Stiffness of the case",
        Factor::ThreadSlackMm => "Slack in the adjusters' threads",
        Factor::WheelInterferenceMm => "Interference of the ring gear on its register",
        Factor::HeadConePressN => "Force that moves the head cone on",
        Factor::HeadCupPressN => "Force that moves the head cup on",
        Factor::TailCupPressN => "Force that moves the tail cup on",
    }
}

/// Its value with its unit.
pub fn factor_value(hidden: &HiddenNumber) -> String {
    match hidden.unit {
        NumberUnit::Times => format!("{}\u{a0}times the drawing\u{2019}s", number(hidden.value, 2)),
        NumberUnit::Millimeter => format!("{}\u{a0}mm", number(hidden.value, 3)),
        NumberUnit::Kilonewton => format!("{}\u{a0}kN", number(hidden.value, 1)),
        NumberUnit::Percent => format!("{}\u{a0}%", number(hidden.value, 1)),
    }
}

/// Something that may be wrong.
pub const fn fault(kind: &FaultKind) -> &'static str {
    match kind {
        FaultKind::Size(of, _) => member(*of),
        FaultKind::MismatchedGears { .. } => "Pinion and ring gear that were not lapped together",
        FaultKind::SwappedCaps => "Bearing caps in each other's place",
        FaultKind::ChipUnderWheel => "A chip between ring gear and carrier",
        FaultKind::WornFlanks { .. } => "Teeth worn by running",
    }
}

/// What a size does to the axle.
pub fn shifts(size: &HiddenSize) -> String {
    let told = size.shifts.iter().filter(|shift| shift.by.abs() > 1.0e-9);
    told.map(shift).collect::<Vec<_>>().join(", ")
}

fn shift(shift: &Shift) -> String {
    let mm = format!("{}\u{a0}mm", number(shift.by.abs(), 3));
    let way = |less: &'static str, more: &'static str| if shift.by < 0.0 { less } else { more };
    match shift.moves {
        Moves::PinionAxial => format!("pinion {mm} {}", way("deeper", "shallower")),
        Moves::WheelAxial => format!("ring gear {mm} {}", way("toward the pinion", "away")),
        Moves::Offset => format!("offset {mm} {}", way("less", "more")),
        Moves::ShaftAngle => format!(
            "shaft angle {}\u{b0} {}",
            number(degrees(shift.by.abs()), 3),
            way("closed", "opened")
        ),
        Moves::ZeroPreloadLength => format!("spacer may be {mm} {}", way("shorter", "longer")),
        Moves::SpacerLength => format!("spacer {mm} {}", way("shorter", "longer")),
        Moves::ToothStack => format!("tooth-side stack {mm} {}", way("shorter", "longer")),
        Moves::BackStack => format!("stack behind {mm} {}", way("shorter", "longer")),
        Moves::WheelAcross => format!("ring gear {mm} along the pinion"),
        Moves::WheelFace | Moves::WheelRadial | Moves::PinionRadial => "lash varies around the turn".to_owned(),
    }
}
