//! What stands on labels, gears and plates.

use crate::bench::ShimPlace;
use crate::exercise::debrief::{GearMarks, PackFitted, PieceFitted, PlateSeen};
use crate::exercise::score::reason::PlateNeeds;
use crate::quantity::{deviation, number};

use super::amount::{both, in_both};
use crate::words::bench::plate_number;
use crate::words::say;

/// Where a pack lies, at the head of a row.
pub fn pack(pack: &PackFitted) -> String {
    match pack.place {
        ShimPlace::Depth => say!("debrief-place-depth"),
        ShimPlace::Spacer => say!("debrief-place-spacer"),
        ShimPlace::ToothSide => say!("debrief-place-tooth-side"),
        ShimPlace::BackSide => say!("debrief-place-back-side"),
    }
}

/// A piece: what its label says and what is true.
pub fn piece(piece: &PieceFitted) -> String {
    say!(
        "debrief-piece",
        number = piece.number,
        label = both(piece.labelled_mm),
        truth = both(piece.truth_mm)
    )
}

/// What is etched on the gears, whether it was looked at, and what is true.
pub fn marks(marks: &GearMarks) -> String {
    let [pinion, wheel] = marks.numbers;
    let compared = marks.compared.map_or_else(
        || say!("debrief-marks-not-compared"),
        |operation| say!("debrief-marks-compared", operation = operation),
    );
    let matched = if pinion == wheel {
        say!("debrief-marks-match", number = pinion)
    } else {
        say!("debrief-marks-differ", pinion = pinion, ring_gear = wheel)
    };
    say!(
        "debrief-marks",
        matched = matched,
        compared = compared,
        etched = in_both(marks.mark_etched_mm, deviation),
        truth = in_both(marks.mark_truth_mm, deviation),
        off = in_both(marks.mark_etched_mm - marks.mark_truth_mm, deviation)
    )
}

/// Name of a painted plate.
pub fn plate(seen: &PlateSeen) -> String {
    say!("debrief-plate", plate = plate_number(seen.plate))
}

/// What the pinion of a painted plate needs.
pub fn plate_needs(seen: &PlateSeen) -> String {
    let by = both(seen.deeper_truth_mm.abs());
    match seen.needs {
        PlateNeeds::Deeper => say!("debrief-plate-deeper", by = by),
        PlateNeeds::Nothing => say!("debrief-plate-nothing", by = by),
        PlateNeeds::Shallower => say!("debrief-plate-shallower", by = by),
    }
}

/// What was said of a painted plate: the chances of deeper, right and shallower.
pub fn plate_said(chances: [f64; 3]) -> String {
    let [deeper, right, shallower] = chances.map(|chance| number(100.0 * chance, 0));
    say!(
        "debrief-plate-said",
        deeper = deeper,
        right = right,
        shallower = shallower
    )
}
