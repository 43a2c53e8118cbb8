//! What stands on labels, gears and plates.

use crate::bench::ShimPlace;
use crate::exercise::debrief::{GearMarks, PackFitted, PieceFitted, PlateSeen};
use crate::quantity::{Units, deviation, length, number};

use crate::words::bench::plate_number;
use crate::words::score::plate_needs as plate_needs_words;

/// Where a pack lies, at the head of a row.
pub const fn pack(pack: &PackFitted) -> &'static str {
    match pack.place {
        ShimPlace::Depth => "Depth",
        ShimPlace::Spacer => "Spacer",
        ShimPlace::ToothSide => "Tooth side",
        ShimPlace::BackSide => "Behind the ring gear",
    }
}

/// A piece: what its label says and what is true.
pub fn piece(piece: &PieceFitted) -> String {
    format!(
        "piece {}: label {}, true {}\u{a0}mm",
        piece.number,
        number(piece.labelled_mm, 3),
        number(piece.truth_mm, 3)
    )
}

/// What is etched on the gears, whether it was looked at, and what is true.
pub fn marks(marks: &GearMarks) -> String {
    let [pinion, wheel] = marks.numbers;
    let compared = marks.compared.map_or_else(
        || "You did not compare them.".to_owned(),
        |o| format!("You compared them in operation {o}."),
    );
    let matched = if pinion == wheel {
        format!("Pinion and ring gear are both etched {pinion}: they belong together.")
    } else {
        format!("The pinion is etched {pinion} and the ring gear {wheel}: they do not belong together.")
    };
    format!(
        "{matched} {compared} The mark on the pinion\u{2019}s head says {} ({}); true is {} ({}): the mark is off by {}.",
        deviation(marks.mark_etched_mm, Units::Metric),
        deviation(marks.mark_etched_mm, Units::Inch),
        deviation(marks.mark_truth_mm, Units::Metric),
        deviation(marks.mark_truth_mm, Units::Inch),
        deviation(marks.mark_etched_mm - marks.mark_truth_mm, Units::Metric)
    )
}

/// Name of a painted plate.
pub fn plate(seen: &PlateSeen) -> String {
    format!("Plate {}", plate_number(seen.plate))
}

/// What the pinion of a painted plate needs.
pub fn plate_needs(seen: &PlateSeen) -> String {
    let needs = plate_needs_words(seen.needs);
    format!(
        "Needs {needs}: {} from its place",
        length(seen.deeper_truth_mm.abs(), Units::Metric)
    )
}

/// What was said of a painted plate: the chances of deeper, right and shallower.
pub fn plate_said([deeper, right, shallower]: [f64; 3]) -> String {
    let percent = |chance: f64| number(100.0 * chance, 0);
    format!(
        "deeper {}\u{a0}%, right {}\u{a0}%, shallower {}\u{a0}%",
        percent(deeper),
        percent(right),
        percent(shallower)
    )
}
