//! Each operation with what it showed, as the list of everything that was done tells it.

use crate::bench::{Answer, Measurand, Operation, ShimPiece, StemChoice};
use crate::contact::Placement;
use crate::exercise::attempt::{Attempt, Step};
use crate::exercise::history::Moment;

/// An operation in the order of the attempt.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// What was done.
    pub operation: Operation,
    /// What it took, showed, spoiled, or why it was not done.
    pub answer: Answer,
    /// Minutes since the beginning when it was done.
    pub at_minutes: f64,
    /// Sum of the labels of the pieces that it fits, mm; 0 where it fits none.
    pub labelled_mm: f64,
    /// Of which kind, where lines of one kind behind each other may be told together.
    pub kind: Option<LineKind>,
    /// Whether it took apart what was built.
    pub tear_down: bool,
    /// True change of where the gears stand since they last stood somewhere: pinion outward, ring gear away, mm.
    pub truth_moved_mm: Option<[f64; 2]>,
}

/// Measurements that can be told together: of the same thing in the same way, tooth after tooth, or piece after piece.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum LineKind {
    /// Shim pieces.
    Pieces {
        /// Name of the instrument on the bench.
        instrument: String,
    },
    /// Lash.
    Lash {
        /// Name of the instrument on the bench.
        instrument: String,
        /// How its stem lay.
        stem: StemChoice,
    },
    /// Anything else.
    Of {
        /// What.
        what: Measurand,
        /// Name of the instrument on the bench.
        instrument: String,
    },
}

impl Line {
    /// Whether painted teeth were rolled.
    pub fn rolled(&self) -> bool {
        self.answer.done && matches!(self.operation, Operation::Roll { .. })
    }

    /// Whether it is the hand-over.
    pub fn hand_over(&self) -> bool {
        self.answer.done && matches!(self.operation, Operation::Finish {})
    }
}

/// Changes of place below this are not told, mm.
const TOLD_MM: f64 = 0.002;

/// All of an attempt.
pub(super) fn lines(attempt: &Attempt) -> Vec<Line> {
    let kit = &attempt.bench().setting().kit;
    let mut moments = attempt.history().iter().peekable();
    let mut before = moments.next();
    let mut stood: Option<Placement> = before.and_then(|m| m.placement);
    let mut minutes = 0.0;
    let mut all = Vec::new();
    for step in attempt.steps() {
        let answer = &step.answer;
        let moment: Option<&Moment> = moments.next_if(|m| m.operation == answer.operation);
        let tear_down = moment.is_some_and(|m| before.is_some_and(|b| m.tear_downs > b.tear_downs));
        let moved = moment.and_then(|m| m.placement).and_then(|now| {
            let was = stood.replace(now)?;
            let by = [
                now.pinion_axial_mm - was.pinion_axial_mm,
                now.wheel_axial_mm - was.wheel_axial_mm,
            ];
            by.iter().any(|mm| mm.abs() >= TOLD_MM).then_some(by)
        });
        before = moment.or(before);
        all.push(Line {
            operation: step.operation.clone(),
            answer: answer.clone(),
            at_minutes: minutes,
            labelled_mm: labelled_mm(&step.operation, kit),
            kind: kind(step),
            tear_down,
            truth_moved_mm: moved,
        });
        minutes += answer.minutes;
    }
    all
}

fn labelled_mm(operation: &Operation, kit: &[ShimPiece]) -> f64 {
    let Operation::FitShims { pieces, .. } = operation else {
        return 0.0;
    };
    let label = |piece: &u32| kit.get(usize::try_from(*piece).ok()?).map(|p| p.labelled_mm);
    pieces.iter().filter_map(label).sum()
}

fn kind(step: &Step) -> Option<LineKind> {
    match &step.operation {
        Operation::Measure {
            what, instrument, stem, ..
        } if step.answer.done => {
            let instrument = instrument.clone();
            Some(match what {
                Measurand::ShimPiece { .. } => LineKind::Pieces { instrument },
                Measurand::Lash { .. } => LineKind::Lash {
                    instrument,
                    stem: *stem,
                },
                other => LineKind::Of {
                    what: *other,
                    instrument,
                },
            })
        }
        _ => None,
    }
}
