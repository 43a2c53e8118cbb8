//! Values in both units, times and counts.

use crate::quantity::{Units, fine_length, number, nut_torque, torque};
use crate::words::say;

/// The rule asks for nothing below this, mm.
pub const HAIR_MM: f64 = 0.0005;

/// A length in both units.
pub fn both(mm: f64) -> String {
    in_both(mm, fine_length)
}

/// A torque felt by hand in both units.
pub fn both_torque(torque_nm: f64) -> String {
    in_both(torque_nm, torque)
}

/// Torque of a nut in both units.
pub fn both_nut_torque(torque_nm: f64) -> String {
    in_both(torque_nm, nut_torque)
}

/// A value in both units, each said by `of`.
pub(super) fn in_both(value: f64, of: fn(f64, Units) -> String) -> String {
    format!("{} ({})", of(value, Units::Metric), of(value, Units::Inch))
}

/// Hours and minutes.
pub fn hours(minutes: f64) -> String {
    let whole = minutes.max(0.0).round();
    let hours = (whole / 60.0).floor();
    say!(
        "debrief-hours",
        hours = number(hours, 0),
        minutes = format!("{:0>2}", number(whole - 60.0 * hours, 0))
    )
}

/// Hours and minutes since the beginning.
pub fn clock(minutes: f64) -> String {
    let whole = minutes.max(0.0).floor();
    let hours = (whole / 60.0).floor();
    format!("{}:{:0>2}", number(hours, 0), number(whole - 60.0 * hours, 0))
}

/// So many of something.
pub fn counted(count: u32, one: &str, many: &str) -> String {
    format!("{count}\u{a0}{}", if count == 1 { one } else { many })
}

/// How far the pinion has to come deeper.
pub fn deeper(mm: f64) -> String {
    if mm.abs() < HAIR_MM {
        say!("debrief-no-change")
    } else if mm > 0.0 {
        say!("debrief-deeper", by = both(mm.abs()))
    } else {
        say!("debrief-shallower", by = both(mm.abs()))
    }
}
