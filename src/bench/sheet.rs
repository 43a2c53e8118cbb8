//! What is written and said: readings on record, notes, predictions, judgements, hints.

use super::aspect::{Aspects, Change};
use super::choices::{Predicted, Ring, ShimPlace};
use super::measurand::Measurand;
use super::part::Part;
use super::plate::PlateJudged;
use super::reading::{Reading, ReadingPart};
use super::record::Record;
use crate::contact::Placement;

/// The set-up sheet with everything behind it.
#[derive(Debug, Clone, PartialEq, Default)]
pub(super) struct Sheet {
    pub(super) records: Vec<Record>,
    pub(super) notes: Vec<Note>,
    pub(super) predictions: Vec<Prediction>,
    pub(super) judgements: Vec<Judgement>,
    pub(super) plates_judged: Vec<PlateJudged>,
    /// Hints asked for: operation, level.
    pub(super) hints: Vec<(u32, u32)>,
}

/// A value on the set-up sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct Note {
    /// The operation that wrote it.
    pub operation: u32,
    /// What of.
    pub what: Measurand,
    /// What the trainee holds true.
    pub value: f64,
    /// The record that it was read from, where it was read from one.
    pub record: Option<u32>,
    /// What the trainee wrote beside it, in words of their own.
    pub remark: String,
    /// Whether something that it depends on was changed since.
    pub stale: bool,
    pub(super) behind: Aspects,
}

/// A prediction.
#[derive(Debug, Clone, PartialEq)]
pub struct Prediction {
    /// The operation that made it.
    pub operation: u32,
    /// What about.
    pub about: Predicted,
    /// Chances of the three outcomes.
    pub chances: [f64; 3],
    /// Where the gears stood, if they were in mesh.
    pub placement: Option<Placement>,
}

/// A part condemned.
#[derive(Debug, Clone, PartialEq)]
pub struct Judgement {
    /// The operation that said so.
    pub operation: u32,
    /// Which part.
    pub part: Part,
    /// Why, in the trainee's own words.
    pub reason: String,
    /// Records that show it.
    pub evidence: Vec<u32>,
}

/// A reading without the last bits that counting graduations leaves, and without a negative zero.
fn tidy(value: f64) -> f64 {
    (1.0e6 * value).round() / 1.0e6 + 0.0
}

impl Sheet {
    /// A new record of what an instrument showed in an operation; it depends on what stands `behind` it.
    pub(super) fn record(
        &mut self,
        operation: u32,
        what: Measurand,
        instrument: &str,
        shown: Vec<(ReadingPart, Option<f64>)>,
        behind: Aspects,
    ) -> Vec<Reading> {
        let number = u32::try_from(self.records.len()).unwrap_or(u32::MAX).saturating_add(1);
        let readings: Vec<Reading> = shown
            .into_iter()
            .map(|(quantity, value)| Reading {
                record: number,
                quantity,
                value: value.map(tidy),
                unit: what.unit(),
            })
            .collect();
        self.records.push(Record {
            number,
            operation,
            what,
            instrument: instrument.to_owned(),
            readings: readings.clone(),
            stale: false,
            behind,
        });
        readings
    }

    /// Whether there is a record of this number.
    pub(super) fn has_record(&self, number: u32) -> bool {
        self.records.iter().any(|r| r.number == number)
    }

    /// Marks every record and note that depends on what changed; gives the numbers of the records that went stale now.
    pub(super) fn mark_stale(&mut self, change: &Change) -> Vec<u32> {
        let mut stale = Vec::new();
        for record in self.records.iter_mut().filter(|r| !r.stale) {
            if change.touches(record.what, record.behind) {
                record.stale = true;
                stale.push(record.number);
            }
        }
        for note in self.notes.iter_mut().filter(|n| !n.stale) {
            note.stale = change.touches(note.what, note.behind);
        }
        stale
    }

    /// Hands everything on as bits, in a fixed order.
    pub(super) fn bits(&self, sink: &mut dyn FnMut(u64)) {
        let Self {
            records,
            notes,
            predictions,
            judgements,
            plates_judged,
            hints,
        } = self;
        for length in [
            records.len(),
            notes.len(),
            predictions.len(),
            judgements.len(),
            plates_judged.len(),
            hints.len(),
        ] {
            sink(length as u64);
        }
        for record in records {
            sink(u64::from(record.number));
            sink(u64::from(record.operation));
            measurand_bits(record.what, sink);
            text_bits(&record.instrument, sink);
            sink(record.readings.len() as u64);
            sink(u64::from(record.behind.number()));
            sink(u64::from(record.stale));
            for reading in &record.readings {
                text_bits(reading.quantity.key(), sink);
                sink(reading.value.map_or(u64::MAX, f64::to_bits));
            }
        }
        for note in notes {
            sink(u64::from(note.operation));
            measurand_bits(note.what, sink);
            sink(note.value.to_bits());
            sink(note.record.map_or(u64::MAX, u64::from));
            text_bits(&note.remark, sink);
            sink(u64::from(note.behind.number()));
            sink(u64::from(note.stale));
        }
        for prediction in predictions {
            sink(u64::from(prediction.operation));
            sink(prediction.about as u64);
            for chance in prediction.chances {
                sink(chance.to_bits());
            }
        }
        for judgement in judgements {
            sink(u64::from(judgement.operation));
            sink(judgement.part as u64);
            text_bits(&judgement.reason, sink);
            sink(judgement.evidence.len() as u64);
            for record in &judgement.evidence {
                sink(u64::from(*record));
            }
        }
        for judged in plates_judged {
            sink(u64::from(judged.operation));
            sink(u64::from(judged.plate));
            for chance in judged.chances {
                sink(chance.to_bits());
            }
        }
        for (operation, level) in hints {
            sink(u64::from(*operation));
            sink(u64::from(*level));
        }
    }
}

/// Hands a text on as bits: its length, then its bytes.
pub(super) fn text_bits(text: &str, sink: &mut dyn FnMut(u64)) {
    sink(text.len() as u64);
    for byte in text.bytes() {
        sink(u64::from(byte));
    }
}

fn measurand_bits(what: Measurand, sink: &mut dyn FnMut(u64)) {
    let place_number = |place: ShimPlace| place as u64;
    let ring_number = |ring: Ring| ring as u64;
    text_bits(what.name(), sink);
    sink(match what {
        Measurand::Lash { tooth: number }
        | Measurand::ShimPiece { piece: number }
        | Measurand::Plate { plate: number } => u64::from(number),
        Measurand::ShimPack { place } => place_number(place),
        Measurand::SeatGap { ring } => ring_number(ring),
        Measurand::WheelFaceRunout {}
        | Measurand::WheelRadialRunout {}
        | Measurand::PinionRunout {}
        | Measurand::NutTorque {}
        | Measurand::BreakawayTorque {}
        | Measurand::RollingTorque {}
        | Measurand::CarrierTorque {}
        | Measurand::PinionDepth {}
        | Measurand::PinionEndPlay {}
        | Measurand::CarrierEndPlay {}
        | Measurand::CaseSpread {}
        | Measurand::WheelTemperature {}
        | Measurand::Print {}
        | Measurand::MatchNumbers {} => 0,
    });
}
