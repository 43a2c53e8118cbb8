//! Properties that hold for every input, tried on random ones.

mod attempts;
mod axle;
#[path = "../outside/axles.rs"]
mod axles;
mod bearing;
#[path = "../shared/attempts.rs"]
mod begun;
mod bench;
mod convergence;
#[path = "../outside/core.rs"]
mod core;
mod debrief;
mod fast_route;
mod gear_pairs;
mod instruments;
mod journal;
mod journal_limits;
#[path = "../shared/journals.rs"]
mod journals;
mod keys;
mod known_groups;
mod random_sets;
mod reading;
mod roots;
mod scenarios;
mod score;
mod solid;
mod solvable;
mod stage_pair;
#[path = "../shared/whole.rs"]
mod whole;
