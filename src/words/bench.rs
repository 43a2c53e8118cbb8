//! The trade's words for what is done and read.

use crate::bench::{
    CarrierSide, Cleaned, Level, Measurand, Part, Precaution, Predicted, Ring, ShimPlace, StemChoice, Tool,
};

use super::{Amount, say};

/// A cup or a cone that is pressed.
pub fn ring(ring: Ring) -> String {
    match ring {
        Ring::HeadCone => say!("bench-head-cone"),
        Ring::HeadCup => say!("bench-head-cup"),
        Ring::TailCup => say!("bench-tail-cup"),
    }
}

/// Whether it is a cup, which goes in, and not a cone, which goes on.
pub(super) const fn is_cup(ring: Ring) -> bool {
    match ring {
        Ring::HeadCup | Ring::TailCup => true,
        Ring::HeadCone => false,
    }
}

/// A part that can be spoiled, replaced or condemned.
pub fn part(of: Part) -> String {
    match of {
        Part::Sleeve => say!("bench-part-crush-spacer"),
        Part::SolidSpacer => say!("bench-part-solid-spacer"),
        Part::Nut => say!("bench-part-nut"),
        Part::Seal => say!("bench-part-seal"),
        Part::PinionBearings => say!("bench-part-pinion-bearings"),
        Part::SideBearings => say!("bench-part-side-bearings"),
        Part::RingBolts => say!("bench-part-ring-gear-bolts"),
        Part::Gears => say!("bench-part-gears"),
        Part::Case => say!("bench-part-housing"),
        Part::Carrier => say!("bench-part-carrier"),
    }
}

/// A place for shims.
pub fn place(place: ShimPlace) -> String {
    match place {
        ShimPlace::Depth => say!("bench-place-depth"),
        ShimPlace::Spacer => say!("bench-place-spacer"),
        ShimPlace::ToothSide => say!("bench-place-tooth-side"),
        ShimPlace::BackSide => say!("bench-place-back-side"),
    }
}

/// What messages call a side of the carrier.
pub(super) const fn side_key(side: CarrierSide) -> &'static str {
    match side {
        CarrierSide::Tooth => "tooth",
        CarrierSide::Back => "back",
    }
}

/// What is put on or used for safety.
pub fn precaution(of: Precaution) -> String {
    match of {
        Precaution::EyeProtection => say!("bench-precaution-eyes"),
        Precaution::PressGuard => say!("bench-precaution-press-guard"),
        Precaution::HotGloves => say!("bench-precaution-hot-gloves"),
        Precaution::Hoist => say!("bench-precaution-hoist"),
        Precaution::HoldingBar => say!("bench-precaution-holding-bar"),
        Precaution::BearingHeld => say!("bench-precaution-bearing-held"),
    }
}
/// How a dial's stem is laid.
pub fn stem(of: StemChoice) -> String {
    match of {
        StemChoice::SquareToTrace => say!("bench-stem-square"),
        StemChoice::AlongMotion => say!("bench-stem-motion"),
        StemChoice::AlongNormal => say!("bench-stem-normal"),
    }
}

/// An instrument on the bench by its name there. Exercises may name their own; those have no message.
pub fn tool(name: &str) -> String {
    match name {
        "dial_indicator" => say!("bench-tool-dial-indicator"),
        "lever_dial" => say!("bench-tool-lever-dial"),
        "worn_dial" => say!("bench-tool-worn-dial"),
        "small_dial_wrench" => say!("bench-tool-small-dial-wrench"),
        "small_beam_wrench" => say!("bench-tool-small-beam-wrench"),
        "cord_and_scale" => say!("bench-tool-cord-and-scale"),
        "click_wrench" => say!("bench-tool-click-wrench"),
        "large_dial_wrench" => say!("bench-tool-large-dial-wrench"),
        "multiplier_wrench" => say!("bench-tool-multiplier-wrench"),
        "micrometer" => say!("bench-tool-micrometer"),
        "depth_gauge" => say!("bench-tool-depth-gauge"),
        "feeler" => say!("bench-tool-feeler"),
        "thermometer" => say!("bench-tool-thermometer"),
        Tool::PRESS_GAUGE => say!("bench-tool-press-gauge"),
        Tool::EYE => say!("bench-tool-eye"),
        other => other.replace('_', " "),
    }
}

/// The number that people give a painted plate: they count from 1.
pub const fn plate_number(plate: u32) -> u32 {
    plate.saturating_add(1)
}

/// The number that people give a tooth: they count from 1.
pub const fn tooth_number(tooth: u32) -> u32 {
    tooth.saturating_add(1)
}

/// What is measured, as a heading.
pub fn measurand(what: Measurand) -> String {
    match what {
        Measurand::Lash { tooth } => say!("bench-measured-backlash", tooth = tooth_number(tooth)),
        Measurand::WheelFaceRunout {} => say!("bench-measured-face-runout"),
        Measurand::WheelRadialRunout {} => say!("bench-measured-radial-runout"),
        Measurand::PinionRunout {} => say!("bench-measured-pinion-runout"),
        Measurand::NutTorque {} => say!("bench-measured-nut-torque"),
        Measurand::BreakawayTorque {} => say!("bench-measured-breakaway-torque"),
        Measurand::RollingTorque {} => say!("bench-measured-rotating-torque"),
        Measurand::CarrierTorque {} => say!("bench-measured-carrier-torque"),
        Measurand::PinionDepth {} => say!("bench-measured-pinion-depth"),
        Measurand::PinionEndPlay {} => say!("bench-measured-pinion-end-play"),
        Measurand::CarrierEndPlay {} => say!("bench-measured-carrier-end-play"),
        Measurand::CaseSpread {} => say!("bench-measured-housing-spread"),
        Measurand::ShimPiece { piece } => say!("bench-measured-shim-piece", piece = piece),
        Measurand::ShimPack { place: at } => say!("bench-measured-shim-pack", place = place(at)),
        Measurand::SeatGap { ring: of } => say!("bench-measured-seat-gap", part = ring(of)),
        Measurand::WheelTemperature {} => say!("bench-measured-temperature"),
        Measurand::Print {} => say!("bench-measured-pattern"),
        Measurand::Plate { plate } => say!("bench-measured-plate", plate = plate_number(plate)),
        Measurand::MatchNumbers {} => say!("bench-measured-numbers"),
    }
}

/// What kind of number a reading of this is.
pub const fn amount(what: Measurand) -> Amount {
    match what {
        Measurand::NutTorque {} => Amount::NutTorque,
        Measurand::BreakawayTorque {} | Measurand::RollingTorque {} | Measurand::CarrierTorque {} => Amount::HandTorque,
        Measurand::WheelTemperature {} => Amount::Celsius,
        Measurand::Print {} | Measurand::Plate { .. } | Measurand::MatchNumbers {} => Amount::Share,
        Measurand::Lash { .. } => Amount::Length,
        Measurand::WheelFaceRunout {}
        | Measurand::WheelRadialRunout {}
        | Measurand::PinionRunout {}
        | Measurand::PinionDepth {}
        | Measurand::PinionEndPlay {}
        | Measurand::CarrierEndPlay {}
        | Measurand::CaseSpread {}
        | Measurand::ShimPiece { .. }
        | Measurand::ShimPack { .. }
        | Measurand::SeatGap { .. } => Amount::FineLength,
    }
}

/// What a prediction is about.
pub fn predicted(about: Predicted) -> String {
    match about {
        Predicted::Lash => say!("bench-predicted-backlash"),
        Predicted::PinionTorque => say!("bench-predicted-torque"),
        Predicted::DriveLength => say!("bench-predicted-drive-length"),
        Predicted::DriveHeight => say!("bench-predicted-drive-height"),
        Predicted::CoastLength => say!("bench-predicted-coast-length"),
        Predicted::CoastHeight => say!("bench-predicted-coast-height"),
    }
}

/// The three outcomes of a prediction.
pub fn outcomes(about: Predicted) -> [String; 3] {
    let same = say!("bench-outcome-same");
    match about {
        Predicted::Lash | Predicted::PinionTorque => [say!("bench-outcome-less"), same, say!("bench-outcome-more")],
        Predicted::DriveLength | Predicted::CoastLength => {
            [say!("bench-outcome-toe"), same, say!("bench-outcome-heel")]
        }
        Predicted::DriveHeight | Predicted::CoastHeight => {
            [say!("bench-outcome-root"), same, say!("bench-outcome-top")]
        }
    }
}

/// How far things come apart.
pub fn level(to: Level) -> String {
    match to {
        Level::Caps => say!("bench-level-caps"),
        Level::Carrier => say!("bench-level-carrier"),
        Level::Wheel => say!("bench-level-ring-gear"),
        Level::Nut => say!("bench-level-nut"),
        Level::Pinion => say!("bench-level-pinion"),
        Level::Bearings => say!("bench-level-bearings"),
    }
}

/// What is cleaned.
pub fn cleaned(what: Cleaned) -> String {
    match what {
        Cleaned::WheelSeat => say!("bench-clean-ring-gear-seat"),
        Cleaned::Shims => say!("bench-clean-shims"),
        Cleaned::Threads => say!("bench-clean-threads"),
        Cleaned::Teeth => say!("bench-clean-teeth"),
        Cleaned::Bearings => say!("bench-clean-bearings"),
    }
}
