//! What the trainee gets to see after an operation. It holds no truth and no sentence: only what instruments, hands and eyes
//! tell, as values.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::caution::Caution;
use super::notice::Notice;
use super::part::Part;
use super::reading::{Reading, ReadingPart, centroid_of, value_of};
use super::refusal::Refusal;
use crate::gear::Side as Flank;

/// Answer to one operation.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Answer {
    /// Number of the operation in the attempt, from 1.
    pub operation: u32,
    /// Whether it was done.
    pub done: bool,
    /// Why not.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    pub refused: Option<Refusal>,
    /// Minutes it took.
    pub minutes: f64,
    /// Money it cost.
    pub money: f64,
    /// What was seen, heard and felt.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub noticed: Vec<Notice>,
    /// Hazards of the operation that were not met by a precaution.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub cautions: Vec<Caution>,
    /// Readings taken.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub readings: Vec<Reading>,
    /// Parts spoiled.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub spoiled: Vec<Part>,
    /// Numbers of earlier records that this change made stale.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub stale: Vec<u32>,
}

impl Answer {
    /// An operation that was not done.
    pub(super) fn refused(operation: u32, reason: Refusal) -> Self {
        Self {
            operation,
            done: false,
            refused: Some(reason),
            minutes: 0.0,
            money: 0.0,
            noticed: Vec::new(),
            cautions: Vec::new(),
            readings: Vec::new(),
            spoiled: Vec::new(),
            stale: Vec::new(),
        }
    }

    /// One of the values that were read; none where it was not read, or where the instrument showed nothing.
    pub fn value(&self, part: ReadingPart) -> Option<f64> {
        value_of(&self.readings, part)
    }

    /// The middle of the print on a flank, along and up the tooth; none where nothing was to be seen.
    pub fn centroid(&self, flank: Flank) -> Option<[f64; 2]> {
        centroid_of(&self.readings, flank)
    }

    /// The number of the record that it left, if it left one.
    pub fn record(&self) -> Option<u32> {
        self.readings.first().map(|reading| reading.record)
    }
}
