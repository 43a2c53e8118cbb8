//! What measurements showed, short.

use crate::bench::{Measurand, Operation, Reading};
use crate::exercise::debrief::Line;
use crate::quantity::{Units, length, number, signed, torque};

use super::amount::{both, both_nut_torque, both_torque};

/// What was read, without what of; none for what was no measurement.
pub fn shown(line: &Line) -> Option<String> {
    let Operation::Measure { what, .. } = &line.operation else {
        return None;
    };
    let readings = &line.answer.readings;
    let all = || readings.iter().map(reading).collect::<Vec<_>>().join(", ");
    line.answer.done.then(|| short(*what, readings).unwrap_or_else(all))
}

fn reading(reading: &Reading) -> String {
    let value = reading.value.map_or_else(
        || "nothing".to_owned(),
        |value| match reading.unit.as_str() {
            "mm" => both(value),
            "N·m" => torque(value, Units::Metric),
            unit => format!("{}\u{a0}{unit}", number(value, 2)).trim_end().to_owned(),
        },
    );
    if reading.name.is_empty() {
        value
    } else {
        format!("{} {value}", reading.name)
    }
}

/// Short forms of what long readings showed.
fn short(what: Measurand, readings: &[Reading]) -> Option<String> {
    let value = |name: &str| readings.iter().find(|r| r.name == name)?.value;
    match what {
        Measurand::Print {} | Measurand::Plate { .. } => {
            let flank = |flank: &str| {
                let along = value(&format!("{flank} centroid along the tooth"))?;
                let up = value(&format!("{flank} centroid up the tooth"))?;
                Some(format!("length {}, height {}", signed(along, 2), signed(up, 2)))
            };
            let flanks = ["drive", "coast"].map(|f| {
                let words = flank(f).unwrap_or_else(|| "no print".to_owned());
                format!("{f}: {words}")
            });
            Some(flanks.join("; "))
        }
        Measurand::Lash { tooth } => Some(format!(
            "tooth {tooth}: {}",
            both(readings.first().and_then(|r| r.value)?)
        )),
        Measurand::ShimPiece { piece } => Some(format!(
            "piece {piece}: {}",
            length(readings.first().and_then(|r| r.value)?, Units::Metric)
        )),
        Measurand::RollingTorque {} | Measurand::BreakawayTorque {} | Measurand::CarrierTorque {} => {
            let turns = value("rolling torque")?;
            let starts = value("breakaway torque").filter(|_| matches!(what, Measurand::BreakawayTorque {}));
            Some(value_of(what, starts.unwrap_or(turns)))
        }
        _ => Some(
            readings
                .first()?
                .value
                .map_or_else(|| "nothing".to_owned(), |value| value_of(what, value)),
        ),
    }
}

/// A value of a quantity, in both units where it has two: hand torque in inch-pounds, that of a nut in foot-pounds.
pub(super) fn value_of(what: Measurand, value: f64) -> String {
    match what.unit() {
        "mm" => both(value),
        "N·m" if matches!(what, Measurand::NutTorque {}) => both_nut_torque(value),
        "N·m" => both_torque(value),
        unit => format!("{}\u{a0}{unit}", number(value, 2)).trim_end().to_owned(),
    }
}
