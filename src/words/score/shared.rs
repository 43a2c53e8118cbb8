//! Words that reasons of several parts share.

use crate::exercise::score::reason::{Missing, NutStands};
use crate::exercise::{AskedFor, Counted};
use crate::gear::Side;
use crate::words::debrief::amount::both_nut_torque;
use crate::words::say;

/// What counts, in the middle of a sentence.
pub fn counted(counted: Counted) -> String {
    match counted {
        Counted::Depth => say!("score-counted-depth"),
        Counted::Lash => say!("score-counted-lash"),
        Counted::Spread => say!("score-counted-spread"),
        Counted::Runout => say!("score-counted-runout"),
        Counted::PinionTorque => say!("score-counted-pinion-torque"),
        Counted::NutTorque => say!("score-counted-nut-torque"),
        Counted::SideTorque => say!("score-counted-side-torque"),
        Counted::Print => say!("score-counted-print"),
    }
}

/// A value that is asked for, in the middle of a sentence.
pub fn asked_for(asked: AskedFor) -> String {
    match asked {
        AskedFor::Lash => say!("score-asked-lash"),
        AskedFor::RollingTorque => say!("score-asked-rotating-torque"),
        AskedFor::PinionDepth => say!("score-asked-pinion-depth"),
        AskedFor::PinionEndPlay => say!("score-asked-end-play"),
        AskedFor::WheelFaceRunout => say!("score-asked-runout"),
    }
}

/// What was missing at sign-off, as a sentence.
pub(super) fn missing(operation: u32, missing: Missing) -> String {
    match missing {
        Missing::SoundRingGear => say!("score-missing-ring-gear", operation = operation),
        Missing::PinionHeld => say!("score-missing-pinion", operation = operation),
        Missing::Mesh => say!("score-missing-mesh", operation = operation),
    }
}

/// What the pinion nut stands at.
pub(super) fn nut(stands: &NutStands) -> String {
    let [at, least, most] = [stands.stands_nm, stands.least_nm, stands.most_nm].map(both_nut_torque);
    if stands.stands_nm < stands.least_nm {
        say!("score-nut-low", stands = at, least = least, most = most)
    } else {
        say!("score-nut-high", stands = at, least = least, most = most)
    }
}

/// A flank, as messages choose by it.
pub(super) const fn flank(side: Side) -> &'static str {
    match side {
        Side::Drive => "drive",
        Side::Coast => "coast",
    }
}

/// What becomes of shims, as messages choose by it.
pub(super) fn thicker(mm: f64) -> &'static str {
    if mm > 0.0 { "thicker" } else { "thinner" }
}
