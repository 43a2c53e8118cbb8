//! Invariants over random inputs.

mod bearing;
mod reading;
mod roots;
mod solid;
