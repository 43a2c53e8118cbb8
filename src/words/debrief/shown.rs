//! What measurements showed, short.

use crate::bench::{Answer, Measurand, Operation, Reading, ReadingPart, Unit};
use crate::exercise::debrief::Line;
use crate::gear::Side as Flank;
use crate::quantity::{Units, length, number, signed, torque};
use crate::words::answer::reading_part;

use super::amount::{both, both_nut_torque, both_torque};

/// What was read, without what of; none for what was no measurement.
pub fn shown(line: &Line) -> Option<String> {
    let Operation::Measure { what, .. } = &line.operation else {
        return None;
    };
    let answer = &line.answer;
    let all = || answer.readings.iter().map(reading).collect::<Vec<_>>().join(", ");
    answer.done.then(|| short(*what, answer).unwrap_or_else(all))
}

fn reading(reading: &Reading) -> String {
    let value = reading.value.map_or_else(
        || "nothing".to_owned(),
        |value| match reading.unit {
            Unit::Millimeter => both(value),
            Unit::NewtonMeter => torque(value, Units::Metric),
            unit @ (Unit::Celsius | Unit::One) => with_unit(value, unit),
        },
    );
    format!("{} {value}", reading_part(reading.quantity))
}

/// Short forms of what long readings showed.
fn short(what: Measurand, answer: &Answer) -> Option<String> {
    let first = || answer.readings.first()?.value;
    match what {
        Measurand::Print {} | Measurand::Plate { .. } => {
            let print = |flank: Flank, name: &str| {
                let words = answer.centroid(flank).map_or_else(
                    || "no print".to_owned(),
                    |[along, up]| format!("length {}, height {}", signed(along, 2), signed(up, 2)),
                );
                format!("{name}: {words}")
            };
            let [drive, coast] = [print(Flank::Drive, "drive"), print(Flank::Coast, "coast")];
            Some(format!("{drive}; {coast}"))
        }
        Measurand::Lash { tooth } => Some(format!("tooth {tooth}: {}", both(first()?))),
        Measurand::ShimPiece { piece } => Some(format!("piece {piece}: {}", length(first()?, Units::Metric))),
        Measurand::BreakawayTorque {} => {
            let turns = answer.value(ReadingPart::Rolling)?;
            let starts = answer.value(ReadingPart::Breakaway);
            Some(value_of(what, starts.unwrap_or(turns)))
        }
        Measurand::RollingTorque {} | Measurand::CarrierTorque {} => {
            Some(value_of(what, answer.value(ReadingPart::Rolling)?))
        }
        Measurand::WheelFaceRunout {}
        | Measurand::WheelRadialRunout {}
        | Measurand::PinionRunout {}
        | Measurand::NutTorque {}
        | Measurand::PinionDepth {}
        | Measurand::PinionEndPlay {}
        | Measurand::CarrierEndPlay {}
        | Measurand::CaseSpread {}
        | Measurand::ShimPack { .. }
        | Measurand::SeatGap { .. }
        | Measurand::WheelTemperature {}
        | Measurand::MatchNumbers {} => {
            let value = answer.readings.first()?.value;
            Some(value.map_or_else(|| "nothing".to_owned(), |value| value_of(what, value)))
        }
    }
}

/// A value of a quantity, in both units where it has two: hand torque in inch-pounds, that of a nut in foot-pounds.
pub(in crate::words) fn value_of(what: Measurand, value: f64) -> String {
    match what.unit() {
        Unit::Millimeter => both(value),
        Unit::NewtonMeter if matches!(what, Measurand::NutTorque {}) => both_nut_torque(value),
        Unit::NewtonMeter => both_torque(value),
        unit @ (Unit::Celsius | Unit::One) => with_unit(value, unit),
    }
}

fn with_unit(value: f64, unit: Unit) -> String {
    let value = number(value, 2);
    if unit == Unit::One {
        value
    } else {
        format!("{value}\u{a0}{}", unit.symbol())
    }
}
