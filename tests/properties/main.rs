//! Invariants over random inputs.

mod bearing;
mod convergence;
mod reading;
mod roots;
