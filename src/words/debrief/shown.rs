//! What measurements showed, short.

use crate::bench::{Answer, Measurand, Operation, Reading, ReadingPart, Unit};
use crate::exercise::debrief::Line;
use crate::gear::Side as Flank;
use crate::quantity::number;
use crate::words::answer::reading_part;
use crate::words::say;

use super::amount::{both, both_nut_torque, both_torque};
use super::print;
use super::quantity::tooth_number;

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
        || say!("debrief-shown-nothing"),
        |value| match reading.unit {
            Unit::Millimeter => both(value),
            Unit::NewtonMeter => both_torque(value),
            unit @ (Unit::Celsius | Unit::One) => with_unit(value, unit),
        },
    );
    say!(
        "debrief-shown-value",
        quantity = reading_part(reading.quantity),
        value = value
    )
}

/// Short forms of what long readings showed.
fn short(what: Measurand, answer: &Answer) -> Option<String> {
    let first = || answer.readings.first()?.value;
    match what {
        Measurand::Print {} | Measurand::Plate { .. } => {
            let [drive, coast] = [Flank::Drive, Flank::Coast].map(|flank| {
                let middle = answer.centroid(flank);
                middle.map_or_else(|| say!("debrief-shown-no-print"), |middle| print::off(middle, [0.0; 2]))
            });
            Some(say!("debrief-shown-prints", drive = drive, coast = coast))
        }
        Measurand::Lash { tooth } => Some(say!(
            "debrief-shown-lash",
            tooth = tooth_number(tooth),
            value = both(first()?)
        )),
        Measurand::ShimPiece { piece } => Some(say!("debrief-shown-piece", piece = piece, value = both(first()?))),
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
            Some(value.map_or_else(|| say!("debrief-shown-nothing"), |value| value_of(what, value)))
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
        say!("debrief-with-unit", value = value, unit = unit.symbol())
    }
}
