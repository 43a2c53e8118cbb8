//! Invariants over random inputs.

mod reading;
mod roots;
