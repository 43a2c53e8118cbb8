//! Exercises: what a scenario sets up, what a seed makes of it, what the trainee may know, and what is kept of an attempt.
//!
//! ```text
//! scenario file ── Scenario ── prepare(Sources) ──> Exercise ── truth(seed) ──> axle::Truth (hidden)
//!                                                      └── Attempt::begin(seed), apply(Operation) ──> Answer
//! ```
//! - [`Scenario`]: the checked file `lashwright-scenario/1`, with the places of its problems.
//! - [`Sources`]: the one door through which gear sets and supports come in; this floor reads no file.
//! - [`Exercise`]: a scenario with its gears and its axle, ready for any seed.
//! - [`Attempt`]: an exercise with a seed and what has been done; [`Seen`]: what the trainee may know of it; [`Outcome`]: what
//!   the axle has become.
//! - [`journal`]: how an attempt is kept: lines of text in a chain of hashes.
//! - [`truth`]: from seed to hidden truth: one named stream of random numbers a quantity, so that a new one moves none of
//!   the others.

mod attempt;
mod begin;
pub mod journal;
mod outcome;
mod prepared;
mod scenario;
mod scenario_file;
mod seen;
mod spread;
mod variant;
mod wanted;
mod wanted_file;

pub use attempt::Attempt;
pub use outcome::Outcome;
pub use prepared::{Exercise, ExerciseError, Source, Sources};
pub use scenario::{Factor, Fault, FaultKind, Fitted, Scenario, Start, Targets, Window};
pub use seen::{Seen, SeenPiece};
pub use spread::Spread;
pub use variant::truth;
pub use wanted::{Asked, AskedFor, Counted, DepthFrom, PackWanted, PlatesWanted, ToolOff, Weights};
