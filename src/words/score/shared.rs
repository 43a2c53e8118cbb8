//! Words that reasons of several parts share.

use crate::exercise::score::reason::{Missing, NutStands};
use crate::exercise::{AskedFor, Counted};
use crate::quantity::number;

/// What counts, in the middle of a sentence.
pub fn counted(counted: Counted) -> &'static str {
    match counted {
        Counted::Depth => "depth",
        Counted::Lash => "lash",
        Counted::Spread => "the spread of lash",
        Counted::Runout => "the ring gear's face runout",
        Counted::PinionTorque => "rotating torque of the pinion",
        Counted::NutTorque => "torque of the nut",
        Counted::SideTorque => "what the side bearings add",
        Counted::Print => "the prints",
    }
}

/// A value that is asked for, in the middle of a sentence.
pub fn asked_for(asked: AskedFor) -> &'static str {
    match asked {
        AskedFor::Lash => "lash",
        AskedFor::RollingTorque => "rotating torque",
        AskedFor::PinionDepth => "the pinion's depth",
        AskedFor::PinionEndPlay => "the pinion's end play",
        AskedFor::WheelFaceRunout => "the ring gear's runout",
    }
}

/// What was missing at hand-over, as the beginning of a sentence.
pub(super) fn missing(operation: u32, missing: Missing) -> String {
    let what = match missing {
        Missing::SoundRingGear => "the ring gear was scrap, overheated",
        Missing::PinionHeld => "the pinion was not held by its own bearings, spacer and nut",
        Missing::Mesh => "the gears were not in mesh",
    };
    format!("At hand-over, operation {operation}, {what}")
}

/// What the pinion nut stands at.
pub(super) fn nut(stands: &NutStands) -> String {
    format!(
        "The pinion nut stands at {} N·m; the card wants {} N·m at least and {} N·m at most: {}.",
        number(stands.stands_nm, 0),
        number(stands.least_nm, 0),
        number(stands.most_nm, 0),
        if stands.stands_nm < stands.least_nm {
            "less clamp lets the parts work loose, so tighten it to the card"
        } else {
            "more spoils thread and spacer, so begin again with new parts"
        }
    )
}

/// A number of things.
pub(super) fn count(number: usize, one: &str, many: &str) -> String {
    format!("{number} {}", if number == 1 { one } else { many })
}
