//! Properties that hold for every input, tried on random ones.

mod bearing;
mod convergence;
mod fast_route;
#[path = "../outside/core.rs"]
mod core;
mod gear_pairs;
mod random_sets;
mod reading;
mod roots;
mod solid;
