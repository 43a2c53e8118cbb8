//! Painted plates: prints that lie beside the bench, to be judged without an axle.

use std::sync::Arc;

use crate::contact::{Pair, Placement};

/// A print of a set of gears at a placement that nobody says.
#[derive(Debug, Clone)]
pub struct Plate {
    /// Name of the set, written on it.
    pub gears: String,
    /// The set.
    pub pair: Arc<Pair>,
    /// Where its gears stood.
    pub placement: Placement,
}

/// What was said of a plate.
#[derive(Debug, Clone, PartialEq)]
pub struct PlateJudged {
    /// The operation that said so.
    pub operation: u32,
    /// Which plate, from 0.
    pub plate: u32,
    /// Chances that this pinion has to come deeper, is right, has to stand shallower.
    pub chances: [f64; 3],
}
