//! What an exercise sets up: the checked values of a scenario, how they are read, and what can be wrong with them.
//!
//! - [`card`]: the scenario with its faults, targets and start. [`wanted`]: what wins points, and what may be asked for.
//! - [`file`], [`wanted_file`]: reading both. [`problem`]: what only such a file can have wrong.

mod card;
mod file;
mod problem;
mod wanted;
mod wanted_file;

pub use card::{Factor, Fault, FaultKind, Scenario, Start, Targets, Window};
pub use problem::ScenarioProblem;
pub use wanted::{Asked, AskedFor, DepthFrom, PackWanted, PlatesWanted, ToolOff, Weights};
