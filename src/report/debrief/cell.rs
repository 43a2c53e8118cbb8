//! What stands in cells: values in both systems of units, and links to operations.

use crate::exercise::debrief::Measure;
use crate::quantity::{Units, deviation, fine_length, number, nut_torque, signed, torque};
use crate::report::html::escaped;
use crate::words::say;

/// A link to an operation in the list at the end.
pub(super) fn operation(number: u32) -> String {
    let words = say!("pages-operation", number = number);
    format!("<a href=\"#op{number}\">{}</a>", escaped(&words))
}

/// A value with its unit in both systems: the shop's inches in small type behind.
pub(super) fn value(value: f64, measure: Measure) -> String {
    let inch = |words: String| format!("<br><span class=\"inch\">{}</span>", escaped(&words));
    match measure {
        Measure::Length => escaped(&fine_length(value, Units::Metric)) + &inch(fine_length(value, Units::Inch)),
        Measure::Deviation => escaped(&deviation(value, Units::Metric)) + &inch(deviation(value, Units::Inch)),
        Measure::Torque => escaped(&torque(value, Units::Metric)) + &inch(torque(value, Units::Inch)),
        Measure::NutTorque => escaped(&nut_torque(value, Units::Metric)) + &inch(nut_torque(value, Units::Inch)),
        Measure::Tooth => signed(value, 2),
    }
}

/// A sentence of plain words with markup in one place of it: `said` makes the sentence of the text that stands there.
pub(super) fn around(markup: &str, said: impl FnOnce(&str) -> String) -> String {
    // A letter that no message and no name holds.
    const PLACE: &str = "\u{e000}";
    escaped(&said(PLACE)).replace(PLACE, markup)
}

/// So many points of so many.
pub(super) fn points_of(reached: f64, full: f64) -> String {
    say!("pages-points-of", reached = number(reached, 1), full = number(full, 0))
}

pub(super) fn in_line(v: f64, measure: Measure) -> String {
    let (metric, inch) = match measure {
        Measure::Torque => (torque(v, Units::Metric), torque(v, Units::Inch)),
        Measure::NutTorque => (nut_torque(v, Units::Metric), nut_torque(v, Units::Inch)),
        _ => (fine_length(v, Units::Metric), fine_length(v, Units::Inch)),
    };
    format!("{} <span class=\"inch\">({})</span>", escaped(&metric), escaped(&inch))
}
