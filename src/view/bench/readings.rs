//! What instruments show, ready to be drawn: a face with its pointer, never more than the reading itself.

use std::f64::consts::PI;

use super::Amount;
use crate::bench::instrument::WrenchKind;
use crate::bench::{Instrument, Measurand, Note, Operation, PatternPart, ReadingPart, Record, Tool};
use crate::gear::Side;
use crate::numerics::math;
use crate::quantity::{self, Units};
use crate::words::{answer, bench as words, say};

/// The face of an instrument.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Face {
    /// Needle over a round scale.
    Dial {
        /// What can be told apart, mm.
        graduation_mm: f64,
        /// What a turn of the needle stands for, mm.
        turn_mm: f64,
        /// How far it reaches, mm: what the small hand can count.
        range_mm: f64,
    },
    /// Needle over an arc.
    Wrench {
        /// What can be told apart, N m.
        graduation_nm: f64,
        /// Least torque that it is made for, N m.
        least_nm: f64,
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
    Feeler {
        /// Their thicknesses, thinnest first, mm.
        leaves_mm: &'static [f64],
    },
    /// A column.
    Thermometer,
    /// A pair of eyes.
    Eye,
}

/// One value of a reading.
#[derive(Debug, Clone, PartialEq)]
pub struct Shown {
    /// What of.
    pub part: ReadingPart,
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
    /// How a dial's stem was laid, for lash.
    pub stem: Option<String>,
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
    pub(super) fn of(record: &Record, tools: &[Tool], notes: &[Note], took: Option<&Operation>) -> Self {
        let instrument = tools.iter().find(|t| t.name == record.instrument).map(|t| t.instrument);
        Self {
            number: record.number,
            operation: record.operation,
            what: record.what,
            title: words::measurand(record.what),
            // How the stem was laid is half of a reading of lash.
            stem: match (record.what, took) {
                (Measurand::Lash { .. }, Some(Operation::Measure { stem, .. })) => Some(words::stem(*stem)),
                _ => None,
            },
            instrument: words::tool(&record.instrument),
            tool: record.instrument.clone(),
            amount: words::amount(record.what),
            face: face(instrument),
            values: record
                .readings
                .iter()
                .map(|r| Shown {
                    part: r.quantity,
                    value: r.value,
                })
                .collect(),
            stale: record.stale,
            written: notes
                .iter()
                .rev()
                .find(|n| n.record == Some(record.number))
                .map(|n| n.value),
        }
    }

    /// The painted plate that was looked at, if one was.
    pub const fn plate(&self) -> Option<u32> {
        match self.what {
            Measurand::Plate { plate } => Some(plate),
            _ => None,
        }
    }

    /// What is written down of it, in words of the box; none for what is not.
    pub fn asks(&self) -> Option<String> {
        match self.what {
            Measurand::Print {} => Some(say!("readings-ask-pattern")),
            Measurand::Plate { .. } | Measurand::MatchNumbers {} => None,
            _ => self.main_value().map(|_| say!("readings-ask")),
        }
    }

    /// What is etched on the gears, a line each; nothing for any other reading.
    pub fn etched(&self, units: Units) -> Vec<String> {
        if !matches!(self.what, Measurand::MatchNumbers {}) {
            return Vec::new();
        }
        let line = |shown: &Shown| {
            let value = shown.value?;
            // Numbers of a set are whole; the mark is a deviation.
            let words = if shown.part == ReadingPart::PinionMark {
                quantity::deviation(value, units)
            } else {
                quantity::number(value, 0)
            };
            let part = answer::reading_part(shown.part);
            let mut letters = part.chars();
            let first: String = letters.next().map(char::to_uppercase).into_iter().flatten().collect();
            let name = format!("{first}{}", letters.as_str());
            Some(say!("readings-etched", name = name, value = words))
        };
        self.values.iter().filter_map(line).collect()
    }

    /// The value that its quantity is named after; none for prints and what is etched, which are several.
    pub fn main_value(&self) -> Option<f64> {
        let part = self.what.main_part()?;
        self.values.iter().find(|shown| shown.part == part)?.value
    }
}

/// Turns of the needle that the small hand of a dial counts.
const COUNTED_TURNS: f64 = 10.0;

fn face(instrument: Option<Instrument>) -> Face {
    match instrument {
        Some(Instrument::Dial(dial)) => {
            let turn_mm = if dial.graduation_mm < 0.004 { 0.2 } else { 1.0 };
            Face::Dial {
                graduation_mm: dial.graduation_mm,
                turn_mm,
                range_mm: COUNTED_TURNS * turn_mm,
            }
        }
        Some(Instrument::Wrench(wrench)) => match wrench.kind {
            WrenchKind::Click => Face::Click,
            _ => Face::Wrench {
                graduation_nm: wrench.graduation_nm,
                least_nm: wrench.range_nm[0],
                full_nm: wrench.range_nm[1],
                by_hand: wrench.range_nm[1] <= 30.0,
            },
        },
        Some(Instrument::Micrometer(_)) => Face::Micrometer,
        Some(Instrument::DepthGauge(_)) => Face::DepthGauge,
        Some(Instrument::Feeler(feeler)) => Face::Feeler {
            leaves_mm: feeler.leaves_mm,
        },
        Some(Instrument::Thermometer(_)) => Face::Thermometer,
        Some(Instrument::Eye) | None => Face::Eye,
    }
}

/// A print as an eye saw it, flank coordinates: x from toe −1 to heel 1, y from root −1 to top 1.
#[derive(Debug, Clone, PartialEq)]
pub struct SeenPrint {
    /// Number of its record.
    pub number: u32,
    /// What was looked at, in words.
    pub title: String,
    /// Which painted plate it is on; none for the ring gear.
    pub plate: Option<u32>,
    /// The set that the plate is of.
    pub gears: Option<String>,
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
    /// Of a record; `plates` names the set of each painted plate.
    pub(super) fn of(record: &Record, plates: &[String]) -> Option<Self> {
        if !matches!(record.what, Measurand::Print {} | Measurand::Plate { .. }) {
            return None;
        }
        let flank = |flank| {
            let value = |part| record.value(ReadingPart::Pattern(flank, part));
            Some(SeenFlank {
                centre: record.centroid(flank)?,
                along: [value(PatternPart::Toe)?, value(PatternPart::Heel)?],
                up: [value(PatternPart::Root)?, value(PatternPart::Top)?],
                area: value(PatternPart::Area)?,
            })
        };
        let plate = match record.what {
            Measurand::Plate { plate } => Some(plate),
            _ => None,
        };
        let place = plate.and_then(|plate| usize::try_from(plate).ok());
        Some(Self {
            number: record.number,
            title: words::measurand(record.what),
            plate,
            gears: place.and_then(|place| plates.get(place).cloned()),
            stale: record.stale,
            clearness: record.value(ReadingPart::Clearness).unwrap_or(0.0),
            flanks: Side::BOTH.map(flank),
        })
    }
}

/// A place along the tooth, toe −1 to heel +1, with the end that it lies toward.
pub fn along_words(place: f64) -> String {
    let share = quantity::number(place.abs(), 2);
    if place > 0.0 {
        say!("readings-toward-heel", share = share)
    } else {
        say!("readings-toward-toe", share = share)
    }
}

/// A place up the tooth, flank (root) −1 to face (top) +1, with the edge that it lies toward.
pub fn up_words(place: f64) -> String {
    let share = quantity::number(place.abs(), 2);
    if place > 0.0 {
        say!("readings-toward-face", share = share)
    } else {
        say!("readings-toward-flank", share = share)
    }
}

impl SeenFlank {
    /// Its middle and its share of the flank, in words.
    pub fn text(&self) -> String {
        let [x, y] = self.centre;
        let share = quantity::number(100.0 * self.area, 0);
        say!(
            "readings-middle",
            along = along_words(x),
            up = up_words(y),
            share = share
        )
    }

    /// The same where there is little room.
    pub fn short_text(&self) -> String {
        let [x, y] = self.centre;
        let share = quantity::number(100.0 * self.area, 0);
        say!(
            "readings-middle-short",
            along = along_words(x),
            up = up_words(y),
            share = share
        )
    }
}

/// Points of a drawn outline.
const OUTLINE: u32 = 48;

impl SeenFlank {
    /// A closed line that reaches the four ends and holds the area that was read: an ellipse that leans, with `lean` positive
    /// toward the top at the heel, or a rounder square where more is marked than any ellipse holds. Within the flank: what the
    /// eye read can reach over its edge, the tooth does not.
    pub fn outline(&self, lean: f64) -> Vec<[f64; 2]> {
        let [toe, heel] = self.along;
        let [root, top] = self.up;
        let (half_length, half_height) = (0.5 * (heel - toe), 0.5 * (top - root));
        let (x0, y0) = (0.5 * (toe + heel), 0.5 * (root + top));
        let box_area = 4.0 * half_length * half_height;
        let filled = if box_area > 0.0 {
            4.0 * self.area / box_area
        } else {
            PI / 4.0
        };
        // (cos t, cos(t − φ)) is an ellipse that fills sin φ of what an upright one does.
        let upright = filled / (PI / 4.0);
        let thin = if upright > 0.2 { upright } else { 0.2 };
        let phase = if upright < 1.0 { math::asin(thin) } else { 0.5 * PI };
        let phase = if lean < 0.0 { PI - phase } else { phase };
        let power = if upright > 1.0 { power_of(filled) } else { 2.0 };
        (0..OUTLINE)
            .map(|k| {
                let t = 2.0 * PI * f64::from(k) / f64::from(OUTLINE);
                let (u, v) = if power > 2.0 {
                    superellipse(t, power)
                } else {
                    (math::cos(t), math::cos(t - phase))
                };
                [
                    (x0 + half_length * u).clamp(-1.0, 1.0),
                    (y0 + half_height * v).clamp(-1.0, 1.0),
                ]
            })
            .collect()
    }
}

/// A place on |u|^n + |v|^n = 1 at an angle.
fn superellipse(angle_rad: f64, power: f64) -> (f64, f64) {
    let (sin, cos) = math::sin_cos(angle_rad);
    let size = math::pow(math::pow(cos.abs(), power) + math::pow(sin.abs(), power), 1.0 / power);
    (cos / size, sin / size)
}

/// The power whose curve fills this share of its square: π/4 for a circle, toward 1 for a square.
fn power_of(filled: f64) -> f64 {
    let share = |power: f64| {
        // Mean height of a quarter of the curve.
        const STEPS: u32 = 40;
        let sum: f64 = (0..STEPS)
            .map(|k| {
                let x = (f64::from(k) + 0.5) / f64::from(STEPS);
                math::pow(1.0 - math::pow(x, power), 1.0 / power)
            })
            .sum();
        sum / f64::from(STEPS)
    };
    let (mut low, mut high) = (2.0, 16.0);
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

    /// The line that is drawn has the ends and the area that were read, whichever way it leans.
    #[test]
    fn the_outline_is_what_was_read() {
        for (area, lean) in [(0.18, 1.0), (0.18, -1.0), (0.22, 1.0), (0.24, -1.0)] {
            let print = SeenFlank {
                centre: [0.1, 0.05],
                along: [-0.5, 0.6],
                up: [-0.4, 0.5],
                area,
            };
            let line = print.outline(lean);
            let ends = |k: usize| {
                line.iter().fold([f64::INFINITY, f64::NEG_INFINITY], |[a, b], p| {
                    [a.min(p[k]), b.max(p[k])]
                })
            };
            for (got, wanted) in [(ends(0), print.along), (ends(1), print.up)] {
                // A line of straight pieces cuts its rounds a little short.
                assert!(
                    (got[0] - wanted[0]).abs() < 0.01 && (got[1] - wanted[1]).abs() < 0.01,
                    "{got:?}"
                );
            }
            let next = line.iter().skip(1).chain(line.first());
            let drawn: f64 = line
                .iter()
                .zip(next)
                .map(|(a, b)| 0.5 * (a[0] * b[1] - b[0] * a[1]))
                .sum();
            println!("area {:.4}, read {area:.4}", drawn.abs() / 4.0);
            assert!((drawn.abs() / 4.0 - area).abs() < 0.02 * area, "{drawn} for {area}");
            let middle = |k: usize| line.iter().map(|p| p[k]).sum::<f64>() / line.len() as f64;
            let covariance: f64 = line.iter().map(|p| (p[0] - middle(0)) * (p[1] - middle(1))).sum();
            if area < 0.19 {
                assert!(covariance * lean > 0.0, "it leans as asked: {covariance}");
            }
        }
    }
}
