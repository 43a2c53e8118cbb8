//! Exercises: what a scenario sets up, what a seed makes of it, what the trainee may know, and what is kept of an attempt.
//!
//! ```text
//! scenario file ── Scenario ── prepare(Sources) ──> Exercise ── truth(seed) ──> axle::Truth (hidden)
//! ```
//! - [`Scenario`]: the checked file `lashwright-scenario/1`, with the places of its problems.
//! - [`Sources`]: the one door through which gear sets and supports come in; this floor reads no file.
//! - [`Exercise`]: a scenario with its gears and its axle, ready for any seed.
//! - [`truth`]: from seed to hidden truth: one named stream of random numbers a quantity, so that a new one moves none of
//!   the others.

mod prepared;
mod scenario;
mod scenario_file;
mod spread;
mod variant;

pub use prepared::{Exercise, ExerciseError, Source, Sources};
pub use scenario::{Factor, Fault, FaultKind, Fitted, Scenario, Start, Targets, Window};
pub use spread::Spread;
pub use variant::truth;
