//! The trade's words for what is done and read.

use crate::bench::{
    CarrierSide, Cleaned, Level, Measurand, Part, Precaution, Predicted, Ring, ShimPlace, StemChoice, Tool,
};

use super::Amount;

/// A ring that is pressed.
pub const fn ring(ring: Ring) -> &'static str {
    match ring {
        Ring::HeadCone => "head bearing's cone",
        Ring::HeadCup => "head bearing's cup",
        Ring::TailCup => "tail bearing's cup",
    }
}

/// A part that can be spoiled, replaced or condemned.
pub const fn part(of: Part) -> &'static str {
    match of {
        Part::Sleeve => "sleeve",
        Part::SolidSpacer => "solid spacer",
        Part::Nut => "pinion nut",
        Part::Seal => "pinion seal",
        Part::PinionBearings => "pinion bearings",
        Part::SideBearings => "side bearings",
        Part::RingBolts => "ring gear bolts",
        Part::Gears => "ring gear and pinion",
        Part::Case => "case",
        Part::Carrier => "carrier",
    }
}

/// A place for shims.
pub const fn place(place: ShimPlace) -> &'static str {
    match place {
        ShimPlace::Depth => "depth shim",
        ShimPlace::Spacer => "spacer shims",
        ShimPlace::ToothSide => "side shim, teeth",
        ShimPlace::BackSide => "side shim, back",
    }
}

/// A side of the carrier.
pub const fn side(side: CarrierSide) -> &'static str {
    match side {
        CarrierSide::Tooth => "tooth side",
        CarrierSide::Back => "behind the ring gear",
    }
}

/// What is put on or used for safety.
pub const fn precaution(of: Precaution) -> &'static str {
    match of {
        Precaution::EyeProtection => "Eye protection on",
        Precaution::PressGuard => "Guard closed",
        Precaution::HotGloves => "Hot gloves on",
        Precaution::Hoist => "Hoist on the hook",
        Precaution::HoldingBar => "Holding bar on the bench",
        Precaution::BearingHeld => "Bearing held still",
    }
}

/// What to mind where something is washed.
pub const SOLVENT: &str = "Solvent splashes and burns: eye protection on, air the room, no flame near.";

/// How a dial's stem is laid.
pub const fn stem(of: StemChoice) -> &'static str {
    match of {
        StemChoice::SquareToTrace => "square to the tooth's trace",
        StemChoice::AlongMotion => "along the tooth's motion",
        StemChoice::AlongNormal => "along the flank's normal",
    }
}

/// An instrument on the bench by its name there.
pub fn tool(name: &str) -> String {
    match name {
        "dial_indicator" => "dial indicator".to_owned(),
        "lever_dial" => "lever dial, fine".to_owned(),
        "worn_dial" => "worn dial".to_owned(),
        "small_dial_wrench" => "small dial wrench".to_owned(),
        "small_beam_wrench" => "small beam wrench".to_owned(),
        "large_dial_wrench" => "large dial wrench".to_owned(),
        "multiplier_wrench" => "wrench with multiplier".to_owned(),
        Tool::EYE => "by eye".to_owned(),
        other => other.replace('_', " "),
    }
}

/// The number that people give a painted plate: they count from 1.
pub const fn plate_number(plate: u32) -> u32 {
    plate.saturating_add(1)
}

/// What is measured, as a heading.
pub fn measurand(what: Measurand) -> String {
    match what {
        Measurand::Lash { tooth } => format!("Lash, tooth {tooth}"),
        Measurand::WheelFaceRunout {} => "Face runout, ring gear".to_owned(),
        Measurand::WheelRadialRunout {} => "Radial runout, ring gear".to_owned(),
        Measurand::PinionRunout {} => "Runout, pinion".to_owned(),
        Measurand::NutTorque {} => "Torque on the nut".to_owned(),
        Measurand::BreakawayTorque {} => "Breakaway torque".to_owned(),
        Measurand::RollingTorque {} => "Rotating torque".to_owned(),
        Measurand::CarrierTorque {} => "Rotating torque, carrier".to_owned(),
        Measurand::PinionDepth {} => "Pinion depth".to_owned(),
        Measurand::PinionEndPlay {} => "End play, pinion".to_owned(),
        Measurand::CarrierEndPlay {} => "End play, carrier".to_owned(),
        Measurand::CaseSpread {} => "Case spread".to_owned(),
        Measurand::ShimPiece { piece } => format!("Shim piece {piece}"),
        Measurand::ShimPack { place: at } => format!("Pack: {}", place(at)),
        Measurand::SeatGap { ring: of } => format!("Gap behind the {}", ring(of)),
        Measurand::WheelTemperature {} => "Temperature, ring gear".to_owned(),
        Measurand::Print {} => "Print".to_owned(),
        Measurand::Plate { plate } => format!("Painted plate {}", plate_number(plate)),
        Measurand::MatchNumbers {} => "Numbers on both gears".to_owned(),
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
pub const fn predicted(about: Predicted) -> &'static str {
    match about {
        Predicted::Lash => "Lash",
        Predicted::PinionTorque => "Torque",
        Predicted::DriveLength => "Drive, along",
        Predicted::DriveHeight => "Drive, up",
        Predicted::CoastLength => "Coast, along",
        Predicted::CoastHeight => "Coast, up",
    }
}

/// The three outcomes of a prediction.
pub const fn outcomes(about: Predicted) -> [&'static str; 3] {
    match about {
        Predicted::Lash | Predicted::PinionTorque => ["less", "same", "more"],
        Predicted::DriveLength | Predicted::CoastLength => ["toe", "same", "heel"],
        Predicted::DriveHeight | Predicted::CoastHeight => ["root", "same", "top"],
    }
}

/// How far things come apart.
pub const fn level(to: Level) -> &'static str {
    match to {
        Level::Caps => "caps off, locks out",
        Level::Carrier => "carrier out",
        Level::Wheel => "ring gear off",
        Level::Nut => "nut, flange and seal off",
        Level::Pinion => "pinion and spacer out",
        Level::Bearings => "bearings pulled",
    }
}

/// What is cleaned.
pub const fn cleaned(what: Cleaned) -> &'static str {
    match what {
        Cleaned::WheelSeat => "Clean the ring gear's seat",
        Cleaned::Shims => "Deburr and wipe the shims",
        Cleaned::Threads => "Degrease the bolt threads",
        Cleaned::Teeth => "Wipe the paste off",
        Cleaned::Bearings => "Wash the bearings",
    }
}
