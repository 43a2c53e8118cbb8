//! Quantities, packs, rings and sides in the middle of a sentence.

use crate::bench::{Measurand, Ring, ShimPlace, StemChoice};
use crate::words::bench::plate_number;
use crate::words::say;

/// A quantity, exactly enough for one line.
pub fn quantity(what: Measurand) -> String {
    match what {
        Measurand::Lash { tooth } => say!("debrief-quantity-lash", tooth = tooth_number(tooth)),
        Measurand::WheelFaceRunout {} => say!("debrief-quantity-face-runout"),
        Measurand::WheelRadialRunout {} => say!("debrief-quantity-radial-runout"),
        Measurand::PinionRunout {} => say!("debrief-quantity-pinion-runout"),
        Measurand::NutTorque {} => say!("debrief-quantity-nut-torque"),
        Measurand::BreakawayTorque {} => say!("debrief-quantity-breakaway"),
        Measurand::RollingTorque {} => say!("debrief-quantity-rotating"),
        Measurand::CarrierTorque {} => say!("debrief-quantity-carrier-torque"),
        Measurand::PinionDepth {} => say!("debrief-quantity-pinion-depth"),
        Measurand::PinionEndPlay {} => say!("debrief-quantity-pinion-play"),
        Measurand::CarrierEndPlay {} => say!("debrief-quantity-carrier-play"),
        Measurand::CaseSpread {} => say!("debrief-quantity-spread"),
        Measurand::ShimPiece { piece } => say!("debrief-quantity-piece", piece = piece),
        Measurand::ShimPack { place } => say!("debrief-quantity-pack", pack = pack(place)),
        Measurand::SeatGap { ring: of } => say!("debrief-quantity-gap", ring = ring(of)),
        Measurand::WheelTemperature {} => say!("debrief-quantity-temperature"),
        Measurand::Print {} => say!("debrief-quantity-print"),
        Measurand::Plate { plate: of } => say!("debrief-quantity-plate", plate = plate_number(of)),
        Measurand::MatchNumbers {} => say!("debrief-quantity-numbers"),
    }
}

/// The number that people give a tooth: they count from 1.
pub(super) const fn tooth_number(tooth: u32) -> u32 {
    tooth.saturating_add(1)
}

/// Where shims go.
pub fn pack(place: ShimPlace) -> String {
    match place {
        ShimPlace::Depth => say!("debrief-pack-depth"),
        ShimPlace::Spacer => say!("debrief-pack-spacer"),
        ShimPlace::ToothSide => say!("debrief-pack-tooth-side"),
        ShimPlace::BackSide => say!("debrief-pack-back-side"),
    }
}

/// A ring.
pub fn ring(ring: Ring) -> String {
    match ring {
        Ring::HeadCone => say!("debrief-ring-head-cone"),
        Ring::HeadCup => say!("debrief-ring-head-cup"),
        Ring::TailCup => say!("debrief-ring-tail-cup"),
    }
}

/// A stem.
pub fn stem(stem: StemChoice) -> String {
    match stem {
        StemChoice::SquareToTrace => say!("debrief-stem-square"),
        StemChoice::AlongMotion => say!("debrief-stem-motion"),
        StemChoice::AlongNormal => say!("debrief-stem-normal"),
    }
}

/// A name on the bench as it is spoken.
pub fn plain(name: &str) -> String {
    name.replace('_', " ")
}
