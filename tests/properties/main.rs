//! Properties that hold for every input, tried on random ones.

mod axle;
#[path = "../outside/axles.rs"]
mod axles;
mod bearing;
mod bench;
mod convergence;
#[path = "../outside/core.rs"]
mod core;
mod gear_pairs;
mod random_sets;
mod reading;
mod roots;
mod solid;
