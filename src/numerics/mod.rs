//! Numerical tools of the core: the door to transcendental functions, roots, reproducible random numbers.

pub mod math;
