//! Exercises: what a scenario sets up, what a seed makes of it, what the trainee may know, and what is kept of an attempt.
//!
//! ```text
//! scenario file ── Scenario ── prepare(Sources) ──> Exercise ── truth(seed) ──> axle::Truth (hidden)
//!                                                      └── Attempt::begin(seed), apply(Operation) ──> Answer
//! ```
//! - [`Scenario`]: the checked file `lashwright-scenario/1`, with the places of its problems.
//! - [`Sources`]: the one door through which gear sets and supports come in; this floor reads no file.
//! - [`Incurable`]: what no setting cures, by the true numbers of an axle.
//! - [`Exercise`]: a scenario with its gears and its axle, ready for any seed.
//! - [`ApprovalPrint`]: what a maker's sheet tells of the gears as designed, to judge prints by.
//! - [`Attempt`]: an exercise with a seed and what has been done; [`TraineeView`]: what the trainee may know of it; [`Outcome`]: what
//!   the axle has become; [`Moment`]: what happened, with the true state behind it.
//! - [`score`](score()): what a finished attempt is worth against its [`Par`], with the reason of every lost point.
//! - [`debrief`](debrief::Debrief): the truth of a finished attempt beside what was believed, and what would have been better.
//! - [`journal`]: how an attempt is kept: lines of text in a chain of hashes.
//! - [`truth`]: from seed to hidden truth: one named stream of random numbers a quantity, so that a new one moves none of
//!   the others.

mod approval;
mod attempt;
mod begin;
mod card_texts;
mod counted;
pub mod debrief;
mod fitted;
mod history;
mod incurable;
pub mod journal;
mod judgement;
mod outcome;
mod par;
mod prepared;
mod scenario;
pub mod score;
mod spread;
pub mod technician;
mod texts_file;
mod trainee_view;
mod variant;

pub use approval::{ApprovalPrint, ApprovedFlank, Lean, lean};
pub use attempt::{Attempt, Step};
pub use card_texts::{CardTexts, TranslatedTexts};
pub use counted::Counted;
pub use debrief::Debrief;
pub use fitted::Fitted;
pub use history::{Deed, Moment};
pub use incurable::{Incurable, incurable};
pub use outcome::Outcome;
pub use par::{Par, par};
pub use prepared::{Exercise, ExerciseError, Source, Sources, Unread};
pub use scenario::{
    Asked, AskedFor, DepthFrom, Factor, Fault, FaultKind, PackWanted, PlatesWanted, Scenario, ScenarioProblem, Start,
    Targets, ToolOff, Weights, Window,
};
pub use score::{Loss, LossReason, Score, ScorePart, score};
pub use spread::Spread;
pub use trainee_view::{SeenPiece, TraineeView};
pub use variant::truth;
