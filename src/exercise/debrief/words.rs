//! The trade's words for hidden sizes, and where each of them shows.

use crate::axle::Member;
use crate::bench::{Ring, ShimPlace, StemChoice};
use crate::exercise::scenario::Factor;

const DEPTH: &[&str] = &["pinion_depth", "print"];
const PRELOAD: &[&str] = &["rolling_torque", "pinion_end_play"];
const DEPTH_AND_PRELOAD: &[&str] = &["pinion_depth", "print", "rolling_torque", "pinion_end_play"];
const SIDES: &[&str] = &["lash", "carrier_end_play"];

/// Name of a member, where it shows, and the quantities that show it.
pub(super) fn member(member: Member, cartridge: bool) -> (&'static str, &'static str, &'static [&'static str]) {
    const BY_DEPTH: &str = "Arbor and gauge, as part of the pinion's depth; then the height of both prints.";
    const BY_PRELOAD: &str = "Rolling torque and end play: the spacer's shims make up for it.";
    const BY_BOTH: &str = "In depth and in preload at once: gauge, print and rolling torque.";
    const BY_SIDES: &str = "In lash and side preload: the side setting makes up for it.";
    match member {
        Member::HousingDepth => ("Depth of the housing", BY_DEPTH, DEPTH),
        Member::CartridgeFace => ("Face that the cartridge bolts to", BY_DEPTH, DEPTH),
        Member::CartridgeDepth => ("Depth of the cartridge", BY_DEPTH, DEPTH),
        Member::ShoulderDistance => ("Between the shoulders of the pinion's cups", BY_PRELOAD, PRELOAD),
        Member::HeadBearingStand => ("Stand of the head bearing", BY_BOTH, DEPTH_AND_PRELOAD),
        Member::TailBearingStand => ("Stand of the tail bearing", BY_PRELOAD, PRELOAD),
        Member::SetUpHeadStand => ("Stand of the set-up head bearing", BY_DEPTH, DEPTH),
        Member::SetUpTailStand => ("Stand of the set-up tail bearing", BY_PRELOAD, PRELOAD),
        Member::PinionMark => (
            "Where this pinion runs best (its true mark)",
            "The mark etched on its head, as far as it is right; then the height of both prints.",
            &["match_numbers", "print"],
        ),
        Member::SpacerLength => ("Free length of the spacer", BY_PRELOAD, PRELOAD),
        Member::Offset => (
            "Offset of the two axes",
            "Nothing on this bench measures it: drive and coast prints that stay at opposite ends tell of it.",
            &["print"],
        ),
        Member::Squareness => (
            "Squareness of the pinion's bore",
            "Nothing on this bench measures it: prints that no depth brings right tell of it.",
            &["print"],
        ),
        Member::ToothSideSeat => ("Seat in the case, tooth side", BY_SIDES, SIDES),
        Member::BackSideSeat => ("Seat in the case, behind the ring gear", BY_SIDES, SIDES),
        Member::CarrierToothSide => ("Carrier, from its seat to the tooth-side cone", BY_SIDES, SIDES),
        Member::CarrierBackSide => ("Carrier, from its seat to the cone behind", BY_SIDES, SIDES),
        Member::ToothBearingStand => ("Stand of the side bearing, tooth side", BY_SIDES, SIDES),
        Member::BackBearingStand => ("Stand of the side bearing behind the ring gear", BY_SIDES, SIDES),
        Member::WheelThickness => ("Ring gear, from its seat to its teeth", BY_SIDES, SIDES),
        Member::WheelFaceRunout => (
            "Face runout of the ring gear's seat",
            "Dial on the back of the ring gear; lash that differs around it.",
            &["wheel_face_runout", "lash"],
        ),
        Member::WheelRadialRunout => (
            "Radial runout of the ring gear",
            "Dial across the teeth; lash that differs around the ring gear.",
            &["wheel_radial_runout", "lash"],
        ),
        Member::WheelSeatChip => (
            "Runout that a chip under the ring gear makes",
            "Dial on the back of the ring gear; gone once the seat is cleaned.",
            &["wheel_face_runout", "lash"],
        ),
        Member::PinionRunout => (
            "Radial runout of the pinion",
            "Dial at the pinion; lash that differs with the pinion's turn.",
            &["pinion_runout"],
        ),
        Member::CapFloat => (
            "How far the ring gear floats while the caps are not torqued",
            "Lash before and after the caps are torqued.",
            &["lash"],
        ),
        Member::CapMismatch => (
            "What caps changed round do to the ring gear",
            "The marks on caps and case; a carrier that binds.",
            &["lash", "print"],
        ),
        Member::HeadConeGap => ("Gap behind the head cone, as it came", GAP, &["seat_gap"]),
        Member::HeadCupGap => ("Gap behind the head cup, as it came", GAP, &["seat_gap"]),
        Member::TailCupGap => ("Gap behind the tail cup, as it came", GAP, &["seat_gap"]),
        // What is fitted is not hidden; these are here so that a new member asks for its words.
        Member::HeadShim | Member::CupShim | Member::CartridgeShim => ("Depth shim", "Micrometer.", &["shim_pack"]),
        Member::SpacerShims => ("Shims beside the spacer", "Micrometer.", &["shim_pack"]),
        Member::ToothSideShim | Member::BackSideShim => ("Side shims", "Micrometer.", &["shim_pack"]),
        Member::ToothSideAdjuster | Member::BackSideAdjuster => ("Side adjuster", "Notches.", &[]),
        Member::WheelTilt => (
            "Ring gear drawn on crookedly",
            "Dial on its back.",
            &["wheel_face_runout", "lash"],
        ),
        Member::CaseSpreader => (
            if cartridge {
                "Case held open"
            } else {
                "Case held open by the spreader"
            },
            "Dial on the case.",
            &["case_spread"],
        ),
    }
}

const GAP: &str = "A 0.04 mm (0.0015 in) leaf behind the ring, and the sound of the press when it is home.";

/// A hidden number beside the chain.
pub(super) fn factor(factor: Factor) -> &'static str {
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

/// Where shims go, in the middle of a sentence.
pub(super) fn pack(place: ShimPlace) -> &'static str {
    match place {
        ShimPlace::Depth => "depth shims",
        ShimPlace::Spacer => "spacer shims",
        ShimPlace::ToothSide => "shims on the tooth side",
        ShimPlace::BackSide => "shims behind the ring gear",
    }
}

/// A ring, in the middle of a sentence.
pub(super) fn ring(ring: Ring) -> &'static str {
    match ring {
        Ring::HeadCone => "head cone",
        Ring::HeadCup => "head cup",
        Ring::TailCup => "tail cup",
    }
}

/// A stem, in the middle of a sentence.
pub(super) fn stem(stem: StemChoice) -> &'static str {
    match stem {
        StemChoice::SquareToTrace => "stem square to the tooth",
        StemChoice::AlongMotion => "stem along the motion",
        StemChoice::AlongNormal => "stem square to the flank",
    }
}
