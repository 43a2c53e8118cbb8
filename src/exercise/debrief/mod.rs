//! The debrief of a finished attempt: what was true beside what was believed, and what would have been better.
//!
//! ```text
//! Attempt (finished) ─┬─ replay    the same operations once more, stopped where something is to be looked at
//!                     ├─ standing  what was judged, with its bands         ─┐
//!                     ├─ belief    notes and readings beside the truth      │
//!                     ├─ hidden    how the parts were really made           ├──> Debrief
//!                     ├─ pack      shims, marks and plates                  │
//!                     ├─ build     each build: change, saw, print, what if  │
//!                     ├─ line      each operation with what it showed       │
//!                     ├─ section   which of all this the exercise has       │
//!                     └─ technician plays the same seed: Way               ─┘
//! ```
//! All of it is values; `words` makes sentences of them.
//!
//! Values of two kinds never share a field: what the trainee read or wrote comes from records and notes of the bench
//! ([`LastReading`], [`Noted`]), what is true from its state ([`Outcome`], fields named `truth`). Nothing here can
//! be had before the axle is handed over.

mod belief;
mod build;
mod change;
mod depths;
mod hidden;
mod line;
mod pack;
mod period;
mod print;
mod replay;
mod saw;
mod section;
mod shown_by;
mod standing;
mod subject;
mod truth;

pub use belief::{Belief, LastReading, Noted};
pub use build::{Build, WhatIf};
pub use change::Change;
pub use hidden::{Hidden, HiddenFault, HiddenNumber, HiddenSize, NumberUnit, Shift, SizeUnit};
pub use line::{Line, LineKind};
pub use pack::{GearMarks, PackFitted, PieceFitted, PlateSeen};
pub use print::{Asks, BuildPrint};
pub use saw::{Saw, SawKind};
pub use section::Section;
pub use standing::{Judged, Place, PrintAxis, Standing};
pub use subject::{Measure, Subject};

use std::sync::Arc;

use super::attempt::Attempt;
use super::outcome::Outcome;
use super::par::Par;
use super::prepared::ExerciseError;
use super::score::{Score, approval, score};
use super::technician::{Chart, Policy, play};
use crate::axle::Truth;
use crate::contact::{Contact, Pair};
use crate::gear::EaseOff;

/// Everything that is told after an attempt.
#[derive(Debug, Clone)]
pub struct Debrief {
    /// Its score.
    pub score: Score,
    /// What the reference technician took.
    pub par: Par,
    /// What the attempt took.
    pub used: Par,
    /// True numbers of the axle as it was handed over.
    pub outcome: Outcome,
    /// What of it is told, beside what was judged, believed and done: of the others there is nothing here.
    pub sections: Vec<Section>,
    /// What was judged, with its bands.
    pub standings: Vec<Standing>,
    /// Notes and readings beside the truth.
    pub beliefs: Vec<Belief>,
    /// Shim packs as handed over.
    pub packs: Vec<PackFitted>,
    /// Numbers and mark etched on the gears.
    pub marks: GearMarks,
    /// Painted plates.
    pub plates: Vec<PlateSeen>,
    /// How the parts were really made.
    pub hidden: Hidden,
    /// Gears as designed: their prints at the designed place are the approval prints.
    pub designed: Arc<Pair>,
    /// What they show there.
    pub approval: Contact,
    /// Each build in order; the last one is what was handed over. None without [`Section::Builds`].
    pub builds: Vec<Build>,
    /// Each operation with what it showed.
    pub lines: Vec<Line>,
    /// The reference technician's way with the same seed.
    pub reference: Way,
}

/// Somebody's way through an exercise: the same scenario and seed, and so the same axle.
#[derive(Debug, Clone)]
pub struct Way {
    /// What it is worth.
    pub score: Score,
    /// Its builds.
    pub builds: Vec<Build>,
    /// Each operation with what it showed.
    pub lines: Vec<Line>,
}

impl Debrief {
    /// Of an attempt that was handed over.
    ///
    /// # Errors
    /// [`ExerciseError::NotFinished`] before that; others for a seed that the reference technician cannot play.
    pub fn of(attempt: &Attempt) -> Result<Self, ExerciseError> {
        if !attempt.is_finished() {
            return Err(ExerciseError::NotFinished);
        }
        let exercise = attempt.exercise();
        let chart = Chart::of(exercise)?;
        let played = play(exercise, attempt.seed(), Policy::Reference)?;
        let par = Par::of(&played);
        let designed = designed(attempt)?;
        let approval = approval(&designed);
        let points = score(attempt, &par);
        let sheet = build::JudgedBy {
            chart: &chart,
            par: &par,
        };
        let mut depths = depths::Depths::new(&approval);
        let outcome = attempt.outcome();
        let sections = Section::of(attempt);
        let has = |section| sections.contains(&section);
        let reference = Way {
            score: score(&played, &par),
            builds: if has(Section::Builds) {
                build::builds(&played, &sheet, &mut depths, false)?
            } else {
                Vec::new()
            },
            lines: line::lines(&played),
        };
        let standings = standing::standings(attempt, &outcome, &mut depths);
        let builds = if has(Section::Builds) {
            build::builds(attempt, &sheet, &mut depths, true)?
        } else {
            Vec::new()
        };
        Ok(Self {
            standings,
            beliefs: belief::beliefs(attempt, &outcome)?,
            packs: if has(Section::Packs) {
                pack::packs(attempt)
            } else {
                Vec::new()
            },
            marks: pack::marks(attempt),
            plates: pack::plates(attempt),
            hidden: if has(Section::Made) {
                hidden::hidden(attempt)
            } else {
                Hidden::default()
            },
            sections,
            builds,
            lines: line::lines(attempt),
            used: Par::of(attempt),
            score: points,
            par,
            outcome,
            designed,
            approval,
            reference,
        })
    }
}

impl Debrief {
    /// Whether it has this section.
    pub fn has(&self, section: Section) -> bool {
        self.sections.contains(&section)
    }
}

/// The gears as designed; those on the bench where they are.
fn designed(attempt: &Attempt) -> Result<Arc<Pair>, ExerciseError> {
    let bench = attempt.bench();
    let deviates = bench
        .truth()
        .pair
        .flank_deviation
        .iter()
        .any(|d| *d != EaseOff::default());
    if deviates {
        attempt.exercise().pair(&Truth::default()).map(Arc::new)
    } else {
        Ok(bench.setting().pair.clone())
    }
}
