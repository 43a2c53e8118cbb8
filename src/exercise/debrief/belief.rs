//! Notes and readings beside the truth.

use std::collections::{BTreeMap, BTreeSet};

use super::depths::card_stem;
use super::replay;
use super::subject::{Measure, Subject, notes_of, reads_of, stem_of};
use super::truth::true_now;
use crate::bench::{Measurand, Note, Record, StemChoice};
use crate::exercise::attempt::Attempt;
use crate::exercise::outcome::Outcome;
use crate::exercise::prepared::ExerciseError;

/// A value on the set-up sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct Noted {
    /// The operation that wrote it.
    pub operation: u32,
    /// The value.
    pub value: f64,
    /// The operation that took the record it was read from, where it names one.
    pub read: Option<u32>,
    /// What the trainee wrote beside it.
    pub remark: String,
    /// Whether something that it depends on was changed since.
    pub stale: bool,
}

/// What an instrument showed last.
#[derive(Debug, Clone, PartialEq)]
pub struct LastReading {
    /// The operation that read it.
    pub operation: u32,
    /// Instrument.
    pub instrument: String,
    /// What it showed; none where it showed nothing.
    pub value: Option<f64>,
    /// How the stem of a dial lay, for lash.
    pub stem: Option<StemChoice>,
    /// Whether something that it depends on was changed since.
    pub stale: bool,
}

/// What was believed of a quantity, and what is true.
#[derive(Debug, Clone, PartialEq)]
pub struct Belief {
    /// Of what.
    pub subject: Subject,
    /// The last note.
    pub noted: Option<Noted>,
    /// The last reading.
    pub read: Option<LastReading>,
    /// What was true when it was read, in the same reading.
    pub truth_then: Option<f64>,
    /// What is true at hand-over; none where what it speaks of is not together. For lash in the card's reading.
    pub truth: Option<f64>,
}

impl Belief {
    /// What its values are measured in.
    pub fn measure(&self) -> Measure {
        self.subject.measure()
    }

    /// The note less the truth at hand-over.
    pub fn note_off(&self) -> Option<f64> {
        Some(self.noted.as_ref()?.value - self.truth?)
    }

    /// The reading less what was true then: the error of instrument and hand.
    pub fn reading_off(&self) -> Option<f64> {
        Some(self.read.as_ref()?.value? - self.truth_then?)
    }
}

/// All of them, in the order in which a quantity was first read or written down.
///
/// # Errors
/// As [`Attempt::begin`].
pub(super) fn beliefs(attempt: &Attempt, outcome: &Outcome) -> Result<Vec<Belief>, ExerciseError> {
    let (notes, reads) = (notes_of(attempt), reads_of(attempt));
    let mut subjects: Vec<(u32, Subject)> = Vec::new();
    let said = notes.iter().map(|(s, n)| (n.operation, *s));
    let mut all: Vec<(u32, Subject)> = said.chain(reads.iter().map(|(s, r)| (r.operation, *s))).collect();
    all.sort_by_key(|(operation, _)| *operation);
    for (operation, subject) in all {
        if !subjects.iter().any(|(_, s)| *s == subject) {
            subjects.push((operation, subject));
        }
    }
    let last_read = |subject: Subject| reads.iter().rev().find(|(s, _)| *s == subject).map(|(_, r)| *r);
    let wanted: BTreeSet<u32> = subjects
        .iter()
        .filter_map(|(_, s)| Some(last_read(*s)?.operation))
        .collect();
    let states = replay::after(attempt, &wanted)?;
    Ok(subjects
        .into_iter()
        .map(|(_, subject)| belief(attempt, outcome, &states, subject, last_read(subject), &notes))
        .collect())
}

fn belief(
    attempt: &Attempt,
    outcome: &Outcome,
    states: &BTreeMap<u32, Attempt>,
    subject: Subject,
    record: Option<&Record>,
    notes: &[(Subject, &Note)],
) -> Belief {
    let what = subject.what();
    let lash = matches!(what, Measurand::Lash { .. });
    let read = record.map(|record| LastReading {
        operation: record.operation,
        instrument: record.instrument.clone(),
        value: record.main_value(),
        stem: stem_of(attempt, record.operation).filter(|_| lash),
        stale: record.stale,
    });
    let truth_then = read.as_ref().and_then(|read| {
        let then = states.get(&read.operation)?;
        then.bench().true_reading(what, read.stem.unwrap_or_default())
    });
    let truth = match subject {
        Subject::PinionTorque => outcome.pinion_torque_nm,
        Subject::TotalTorque => outcome.pinion_torque_nm.zip(outcome.side_torque_nm).map(|(p, s)| p + s),
        Subject::Of(_) => true_now(attempt, outcome, what, card_stem(attempt)),
    };
    let noted = notes.iter().rev().find(|(s, _)| *s == subject).map(|(_, note)| Noted {
        operation: note.operation,
        value: note.value,
        read: note.record.and_then(|number| {
            let mut records = attempt.bench().records().iter();
            records.find(|r| r.number == number).map(|r| r.operation)
        }),
        remark: note.remark.clone(),
        stale: note.stale,
    });
    Belief {
        subject,
        noted,
        read,
        truth_then,
        truth,
    }
}
