//! Where prints lie.

use crate::contact::FlankContact;
use crate::quantity::number;

/// How a print lies against the approval print.
pub fn flank(flank: &FlankContact, approved: &FlankContact) -> String {
    let Some(print) = flank.pattern else {
        return "none".to_owned();
    };
    let area = format!("{}\u{a0}% of the flank", number(100.0 * print.area_fraction, 0));
    let Some(wanted) = approved.pattern else {
        return area;
    };
    let off = off(print.centroid, wanted.centroid);
    let edge = flank.edge_contact.map_or(0.0, |e| e.wheel + e.pinion_tip);
    let edge = if edge > 0.005 {
        format!(", an edge touches over {}\u{a0}% of the roll", number(100.0 * edge, 0))
    } else {
        String::new()
    };
    format!("{off}; {area}{edge}")
}

/// Where the middle of a print lies from that of the approval print: height first.
pub fn off([along, up]: [f64; 2], [wanted_along, wanted_up]: [f64; 2]) -> String {
    let part = |off: f64, less: &str, more: &str| {
        if off.abs() < 0.005 {
            return "0.00".to_owned();
        }
        format!(
            "{} to the {}",
            number(off.abs(), 2),
            if off < 0.0 { less } else { more }
        )
    };
    format!(
        "height {}, length {}",
        part(up - wanted_up, "root", "top"),
        part(along - wanted_along, "toe", "heel")
    )
}
