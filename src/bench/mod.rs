//! The bench.

pub mod instrument;
