//! What instruments show, ready to be drawn: a face with its pointer, never more than the reading itself.

use super::{Amount, words};
use crate::bench::instrument::WrenchKind;
use crate::bench::{Instrument, Measurand, Note, Record, Tool};
use crate::numerics::math;

/// The face of an instrument.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Face {
    /// Needle over a round scale.
    Dial {
        /// What can be told apart, mm.
        graduation_mm: f64,
        /// What a turn of the needle stands for, mm.
        turn_mm: f64,
    },
    /// Needle over an arc.
    Wrench {
        /// What can be told apart, N m.
        graduation_nm: f64,
        /// Full scale, N m.
        full_nm: f64,
        /// Whether torque is felt by hand or put on a nut.
        by_hand: bool,
    },
    /// A wrench that only clicks.
    Click,
    /// Sleeve and thimble.
    Micrometer,
    /// Sleeve and thimble over a base.
    DepthGauge,
    /// A fan of leaves.
    Feeler,
    /// A column.
    Thermometer,
    /// A pair of eyes.
    Eye,
}

/// One value of a reading.
#[derive(Debug, Clone, PartialEq)]
pub struct Shown {
    /// What of.
    pub name: String,
    /// None where the instrument showed nothing.
    pub value: Option<f64>,
}

/// A measurement on record.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// Its number.
    pub number: u32,
    /// The operation that took it.
    pub operation: u32,
    /// What was measured.
    pub what: Measurand,
    /// In words.
    pub title: String,
    /// Instrument in words.
    pub instrument: String,
    /// Name of the instrument on the bench.
    pub tool: String,
    /// What kind of number its values are.
    pub amount: Amount,
    /// What it looks like.
    pub face: Face,
    /// Values shown.
    pub values: Vec<Shown>,
    /// Whether something that it depends on was changed since.
    pub stale: bool,
    /// What the trainee wrote down for it.
    pub written: Option<f64>,
}

impl Reading {
    pub(super) fn of(record: &Record, tools: &[Tool], notes: &[Note]) -> Self {
        let instrument = tools.iter().find(|t| t.name == record.instrument).map(|t| t.instrument);
        Self {
            number: record.number,
            operation: record.operation,
            what: record.what,
            title: words::measurand(record.what),
            instrument: words::tool(&record.instrument),
            tool: record.instrument.clone(),
            amount: words::amount(record.what),
            face: face(instrument),
            values: record
                .readings
                .iter()
                .map(|r| Shown {
                    name: r.name.clone(),
                    value: r.value,
                })
                .collect(),
            stale: record.stale,
            written: notes
                .iter()
                .rev()
                .find(|n| n.remark == remark(record.number))
                .map(|n| n.value),
        }
    }

    /// The value that is written down: the last one, which a wrench shows while something turns.
    pub fn main_value(&self) -> Option<f64> {
        self.values.last().and_then(|shown| shown.value)
    }
}

/// How a note says which record it was read from.
pub fn remark(record: u32) -> String {
    format!("record {record}")
}

fn face(instrument: Option<Instrument>) -> Face {
    match instrument {
        Some(Instrument::Dial(dial)) => Face::Dial {
            graduation_mm: dial.graduation_mm,
            turn_mm: if dial.graduation_mm < 0.004 { 0.2 } else { 1.0 },
        },
        Some(Instrument::Wrench(wrench)) => match wrench.kind {
            WrenchKind::Click => Face::Click,
            _ => Face::Wrench {
                graduation_nm: wrench.graduation_nm,
                full_nm: wrench.range_nm[1],
                by_hand: wrench.range_nm[1] <= 30.0,
            },
        },
        Some(Instrument::Micrometer(_)) => Face::Micrometer,
        Some(Instrument::DepthGauge(_)) => Face::DepthGauge,
        Some(Instrument::Feeler(_)) => Face::Feeler,
        Some(Instrument::Thermometer(_)) => Face::Thermometer,
        Some(Instrument::Eye) | None => Face::Eye,
    }
}

/// A print as an eye saw it, flank coordinates: x from toe −1 to heel 1, y from root −1 to top 1.
#[derive(Debug, Clone, PartialEq)]
pub struct SeenPrint {
    /// Number of its record.
    pub number: u32,
    /// Whether something that it depends on was changed since.
    pub stale: bool,
    /// How clearly it stands out, 0 to 1.
    pub clearness: f64,
    /// Drive, then coast; none where nothing is to be seen.
    pub flanks: [Option<SeenFlank>; 2],
}

/// A print on one flank.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SeenFlank {
    /// Its middle.
    pub centre: [f64; 2],
    /// Ends along the tooth: toward the toe, toward the heel.
    pub along: [f64; 2],
    /// Ends up the tooth: toward the root, toward the top.
    pub up: [f64; 2],
    /// Share of the flank, 0 to 1.
    pub area: f64,
}

impl SeenPrint {
    pub(super) fn of(record: &Record) -> Option<Self> {
        if record.what != (Measurand::Print {}) {
            return None;
        }
        let value = |name: &str| record.readings.iter().find(|r| r.name == name).and_then(|r| r.value);
        let flank = |name: &str| {
            let value = |of: &str| value(&format!("{name} {of}"));
            Some(SeenFlank {
                centre: [value("centroid along the tooth")?, value("centroid up the tooth")?],
                along: [value("toe end")?, value("heel end")?],
                up: [value("root end")?, value("top end")?],
                area: value("area")?,
            })
        };
        Some(Self {
            number: record.number,
            stale: record.stale,
            clearness: value("clearness").unwrap_or(0.0),
            flanks: [flank("drive"), flank("coast")],
        })
    }
}

impl SeenFlank {
    /// A closed line through the four ends, rounder or squarer as its area says: in each quarter about the middle
    /// |u|^n + |v|^n = 1. Within the flank: what the eye read can reach over its edge, the tooth does not.
    pub fn outline(&self) -> Vec<[f64; 2]> {
        const QUARTER: u32 = 12;
        let [cx, cy] = self.centre;
        let [toe, heel] = self.along;
        let [root, top] = self.up;
        let box_area = (heel - toe) * (top - root);
        let filled = if box_area > 0.0 {
            4.0 * self.area / box_area
        } else {
            0.785
        };
        let power = power_of(filled.clamp(0.5, 0.97));
        let mut points = Vec::new();
        for quarter in 0..4_u32 {
            for k in 0..QUARTER {
                // From one axis to the next; the quarters follow each other round the middle.
                let (u, v) = superellipse(f64::from(k) / f64::from(QUARTER), power);
                let (u, v) = match quarter {
                    0 => (u, v),
                    1 => (-v, u),
                    2 => (-u, -v),
                    _ => (v, -u),
                };
                let x = cx + if u > 0.0 { u * (heel - cx) } else { u * (cx - toe) };
                let y = cy + if v > 0.0 { v * (top - cy) } else { v * (cy - root) };
                points.push([x.clamp(-1.0, 1.0), y.clamp(-1.0, 1.0)]);
            }
        }
        points
    }
}

/// A place on |u|^n + |v|^n = 1 in the first quarter, from (1, 0) to (0, 1).
fn superellipse(t: f64, power: f64) -> (f64, f64) {
    // Along a straight line between both ends, moved out to the curve.
    let (a, b) = (1.0 - t, t);
    let size = root_of(raised(a, power) + raised(b, power), power);
    (a / size, b / size)
}

fn raised(base: f64, power: f64) -> f64 {
    math::pow(base, power)
}

fn root_of(value: f64, power: f64) -> f64 {
    math::pow(value, 1.0 / power)
}

/// The power whose curve fills this share of its square: 0.5 for a diamond, π/4 for a circle, toward 1 for a square.
fn power_of(filled: f64) -> f64 {
    let share = |power: f64| {
        // Mean height of the quarter curve.
        const STEPS: u32 = 40;
        let sum: f64 = (0..STEPS)
            .map(|k| {
                let x = (f64::from(k) + 0.5) / f64::from(STEPS);
                root_of(1.0 - raised(x, power), power)
            })
            .sum();
        sum / f64::from(STEPS)
    };
    let (mut low, mut high) = (1.0, 16.0);
    for _ in 0..30 {
        let middle = 0.5 * (low + high);
        if share(middle) < filled {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The line that is drawn has the ends and the area that were read.
    #[test]
    fn the_outline_is_what_was_read() {
        let print = SeenFlank {
            centre: [0.1, 0.05],
            along: [-0.5, 0.6],
            up: [-0.4, 0.5],
            area: 0.18,
        };
        let line = print.outline();
        let ends = |k: usize| {
            line.iter().fold([f64::INFINITY, f64::NEG_INFINITY], |[a, b], p| {
                [a.min(p[k]), b.max(p[k])]
            })
        };
        for (got, wanted) in [(ends(0), print.along), (ends(1), print.up)] {
            assert!(
                (got[0] - wanted[0]).abs() < 1e-9 && (got[1] - wanted[1]).abs() < 1e-9,
                "{got:?}"
            );
        }
        let next = line.iter().skip(1).chain(line.first());
        let area: f64 = line
            .iter()
            .zip(next)
            .map(|(a, b)| 0.5 * (a[0] * b[1] - b[0] * a[1]))
            .sum();
        println!("area {area:.4} of 4, read {:.4}", 4.0 * print.area);
        assert!((area / 4.0 - print.area).abs() < 0.01 * print.area * 4.0, "{area}");
    }
}
