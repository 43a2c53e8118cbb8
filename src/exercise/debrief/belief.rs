//! Notes and readings beside the truth.

use std::collections::{BTreeMap, BTreeSet};

use super::replay;
use crate::bench::{Measurand, Note, Operation, Record, StemChoice};
use crate::exercise::attempt::Attempt;
use crate::exercise::outcome::Outcome;
use crate::exercise::prepared::ExerciseError;

use super::standing::attempt_stem;

/// What a belief is about: a quantity of the axle, rolling torque told apart by what was turned.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Subject {
    /// Rolling torque with the pinion alone.
    PinionTorque,
    /// Rolling torque with the gears in mesh.
    TotalTorque,
    /// Anything else.
    Of(Measurand),
}

/// A value on the set-up sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct Noted {
    /// The operation that wrote it.
    pub operation: u32,
    /// The value.
    pub value: f64,
    /// What was written beside it.
    pub remark: String,
    /// Whether something that it depends on was changed since.
    pub stale: bool,
}

/// What an instrument showed last.
#[derive(Debug, Clone, PartialEq)]
pub struct Read {
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
    /// Its unit.
    pub unit: &'static str,
    /// The last note.
    pub noted: Option<Noted>,
    /// The last reading.
    pub read: Option<Read>,
    /// What was true when it was read, in the same reading.
    pub truth_then: Option<f64>,
    /// What is true at hand-over; none where what it speaks of is not together. For lash in the card's reading.
    pub truth: Option<f64>,
}

impl Belief {
    /// The note less the truth at hand-over.
    pub fn note_off(&self) -> Option<f64> {
        Some(self.noted.as_ref()?.value - self.truth?)
    }

    /// The reading less what was true then: the error of instrument and hand.
    pub fn reading_off(&self) -> Option<f64> {
        Some(self.read.as_ref()?.value? - self.truth_then?)
    }
}

impl Subject {
    fn new(attempt: &Attempt, what: Measurand, operation: u32) -> Self {
        if matches!(what, Measurand::RollingTorque {}) {
            if attempt.in_mesh_after(operation) {
                Self::TotalTorque
            } else {
                Self::PinionTorque
            }
        } else {
            Self::Of(what)
        }
    }

    /// What was measured.
    pub fn what(self) -> Measurand {
        match self {
            Self::PinionTorque | Self::TotalTorque => Measurand::RollingTorque {},
            Self::Of(what) => what,
        }
    }
}

/// The value of a record that its quantity is named after.
pub(super) fn shown(record: &Record) -> Option<f64> {
    record.main_value()
}

/// How the stem lay in the operation that took a record.
pub(super) fn stem_of(attempt: &Attempt, operation: u32) -> Option<StemChoice> {
    let place = usize::try_from(operation).ok()?.checked_sub(1)?;
    match &attempt.steps().get(place)?.operation {
        Operation::Measure { stem, .. } => Some(*stem),
        _ => None,
    }
}

/// Whether beliefs of this kind are a row; prints, plates, pieces, packs and numbers are told elsewhere.
fn is_row(what: Measurand) -> bool {
    !matches!(
        what,
        Measurand::Print {}
            | Measurand::Plate { .. }
            | Measurand::MatchNumbers {}
            | Measurand::ShimPiece { .. }
            | Measurand::ShimPack { .. }
            | Measurand::WheelTemperature {}
    )
}

pub(super) fn notes_of(attempt: &Attempt) -> Vec<(Subject, &Note)> {
    let notes = attempt.bench().notes().iter().filter(|n| is_row(n.what));
    notes.map(|n| (Subject::new(attempt, n.what, n.operation), n)).collect()
}

pub(super) fn reads_of(attempt: &Attempt) -> Vec<(Subject, &Record)> {
    let records = attempt.bench().records().iter().filter(|r| is_row(r.what));
    records
        .map(|r| (Subject::new(attempt, r.what, r.operation), r))
        .collect()
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
    let read = record.map(|record| Read {
        operation: record.operation,
        instrument: record.instrument.clone(),
        value: shown(record),
        stem: stem_of(attempt, record.operation).filter(|_| lash),
        stale: record.stale,
    });
    let truth_then = read.as_ref().and_then(|read| {
        let then = states.get(&read.operation)?;
        true_then(then, what, read.stem.unwrap_or_default())
    });
    let truth = match subject {
        Subject::PinionTorque => outcome.pinion_torque_nm,
        Subject::TotalTorque => outcome.pinion_torque_nm.zip(outcome.side_torque_nm).map(|(p, s)| p + s),
        Subject::Of(_) => true_now(attempt, outcome, what, attempt_stem(attempt)),
    };
    let noted = notes.iter().rev().find(|(s, _)| *s == subject).map(|(_, note)| Noted {
        operation: note.operation,
        value: note.value,
        remark: note.remark.clone(),
        stale: note.stale,
    });
    Belief {
        subject,
        unit: what.unit().symbol(),
        noted,
        read,
        truth_then,
        truth,
    }
}

/// What is true of a quantity at hand-over, torques settled.
pub(super) fn true_now(attempt: &Attempt, outcome: &Outcome, what: Measurand, stem: StemChoice) -> Option<f64> {
    match what {
        Measurand::RollingTorque {} => Some(outcome.pinion_torque_nm? + outcome.side_torque_nm.unwrap_or(0.0)),
        Measurand::PinionEndPlay {} => outcome.pinion_play_mm,
        _ => true_then(attempt, what, stem),
    }
}

/// What is true of a quantity in a state, as an instrument without error would show it. None for what is not together and
/// for what is no single number.
fn true_then(attempt: &Attempt, what: Measurand, stem: StemChoice) -> Option<f64> {
    attempt.bench().true_reading(what, stem)
}
