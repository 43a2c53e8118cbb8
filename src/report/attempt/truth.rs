//! What is true of an axle that was handed over.

use crate::document::attempt::{PrintDocument, TruthDocument};
use crate::quantity::{Units, fine_length, number, signed};
use crate::report::columns::with_unit;
use crate::words::debrief::amount::{both, both_torque};
use crate::words::say;

/// Names and values.
pub(super) fn truth_lines(truth: &TruthDocument) -> Vec<(String, String)> {
    let or_none = |value: Option<String>| value.unwrap_or_else(|| say!("card-not-assembled"));
    let nm = |value: Option<f64>| or_none(value.map(both_torque));
    let kn = |value: Option<f64>| or_none(value.map(|v| with_unit(&number(1e-3 * v, 2), "kN")));
    let print = |print: &PrintDocument| {
        or_none(print.centroid.map(|[x, y]| {
            let area = number(100.0 * print.area_fraction.unwrap_or(0.0), 0);
            let (along, up) = (signed(x, 2), signed(y, 2));
            if print.edge_contact == Some(true) {
                say!("card-truth-pattern-edge", area = area, along = along, up = up)
            } else {
                say!("card-truth-pattern", area = area, along = along, up = up)
            }
        }))
    };
    let pinion = |v| {
        off(
            v,
            |length| say!("card-toward-ring-gear", length = length),
            |length| say!("card-from-ring-gear", length = length),
        )
    };
    let ring_gear = |v| {
        off(
            v,
            |length| say!("card-toward-pinion", length = length),
            |length| say!("card-from-pinion", length = length),
        )
    };
    let offset = |v| {
        off(
            v,
            |length| say!("card-less-offset", length = length),
            |length| say!("card-more-offset", length = length),
        )
    };
    let lash = truth.lash_tightest_mm.zip(truth.lash_loosest_mm).map(|(low, high)| {
        say!(
            "card-truth-backlash-value",
            low = fine_length(low, Units::Metric),
            high = fine_length(high, Units::Metric)
        )
    });
    vec![
        (say!("card-truth-pinion"), or_none(truth.pinion_axial_mm.map(pinion))),
        (
            say!("card-truth-ring-gear"),
            or_none(truth.wheel_axial_mm.map(ring_gear)),
        ),
        (say!("card-truth-offset"), or_none(truth.offset_mm.map(offset))),
        (say!("card-truth-backlash"), or_none(lash)),
        (say!("card-truth-pinion-torque"), nm(truth.pinion_torque_nm)),
        (say!("card-side-torque"), nm(truth.side_torque_nm)),
        (say!("card-truth-pinion-preload"), kn(truth.pinion_preload_n)),
        (say!("card-truth-side-preload"), kn(truth.side_preload_n)),
        (say!("card-truth-drive"), print(&truth.drive)),
        (say!("card-truth-coast"), print(&truth.coast)),
    ]
}

/// Which way something lies off: below 0, at 0 as far as it is shown, above.
fn off(value: f64, below: fn(String) -> String, above: fn(String) -> String) -> String {
    let length = both(value.abs());
    if length == both(0.0) {
        say!("card-as-designed")
    } else if value < 0.0 {
        below(length)
    } else {
        above(length)
    }
}
