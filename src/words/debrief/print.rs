//! Where prints lie.

use crate::contact::FlankContact;
use crate::quantity::number;
use crate::words::say;

/// How a print lies against the approval print.
pub fn flank(flank: &FlankContact, approved: &FlankContact) -> String {
    let Some(print) = flank.pattern else {
        return say!("debrief-print-none");
    };
    let share = number(100.0 * print.area_fraction, 0);
    let Some(wanted) = approved.pattern else {
        return say!("debrief-print-area", share = share);
    };
    let off = off(print.centroid, wanted.centroid);
    let edge = flank.edge_contact.map_or(0.0, |e| e.wheel + e.pinion_tip);
    if edge > 0.005 {
        let edge = number(100.0 * edge, 0);
        say!("debrief-print-on-edge", off = off, share = share, edge = edge)
    } else {
        say!("debrief-print", off = off, share = share)
    }
}

/// Where the middle of a print lies from that of the approval print: height first.
pub fn off([along, up]: [f64; 2], [wanted_along, wanted_up]: [f64; 2]) -> String {
    let by = |off: f64| number(off.abs(), 2);
    let height = match up - wanted_up {
        off if off.abs() < UNSEEN => by(0.0),
        off if off < 0.0 => say!("debrief-print-to-flank", by = by(off)),
        off => say!("debrief-print-to-face", by = by(off)),
    };
    let length = match along - wanted_along {
        off if off.abs() < UNSEEN => by(0.0),
        off if off < 0.0 => say!("debrief-print-to-toe", by = by(off)),
        off => say!("debrief-print-to-heel", by = by(off)),
    };
    say!("debrief-print-off", height = height, length = length)
}

/// Distances below this are told as none.
const UNSEEN: f64 = 0.005;
