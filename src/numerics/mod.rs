//! Numerical tools of the core.
//!
//! - [`math`]: the one door to sine, exponential and their like, so that bits are the same on every machine.
//! - [`root`]: a root inside a bracket, with a bound on the number of evaluations.
//! - [`newton`]: the same with a derivative, for the few evaluations that inner loops can afford.
//! - [`random`]: reproducible random numbers, one named stream a quantity.
//!
//! Every routine takes its accuracy as an argument, answers with a typed error instead of a NaN, and has no state.

pub mod math;
pub mod newton;
pub mod random;
pub mod root;
