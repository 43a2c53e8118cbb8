//! What the trainee gets to see after an operation. It holds no truth: only what instruments, hands and eyes tell.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::caution::Caution;
use super::measurand::Measurand;
use super::part::Part;

/// Answer to one operation.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Answer {
    /// Number of the operation in the attempt, from 1.
    pub operation: u32,
    /// Whether it was done.
    pub done: bool,
    /// Why not: what makes it physically impossible.
    #[serde(skip_serializing_if = "Option::is_none", default)]
    pub refused: Option<String>,
    /// Minutes it took.
    pub minutes: f64,
    /// Money it cost.
    pub money: f64,
    /// What was seen, heard and felt.
    #[serde(skip_serializing_if = "Vec::is_empty", default)]
    pub noticed: Vec<String>,
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

/// One value that an instrument showed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Reading {
    /// Number of the record, from 1; readings of one measurement share it.
    pub record: u32,
    /// What of, in words of the quantity.
    pub name: String,
    /// The value; none where the instrument showed nothing.
    pub value: Option<f64>,
    /// Its unit.
    pub unit: String,
}

/// A measurement on record.
#[derive(Debug, Clone, PartialEq)]
pub struct Record {
    /// Its number, from 1.
    pub number: u32,
    /// The operation that took it.
    pub operation: u32,
    /// What was measured.
    pub what: Measurand,
    /// With which instrument.
    pub instrument: String,
    /// What it showed.
    pub readings: Vec<Reading>,
    /// Whether something that it depends on was changed since.
    pub stale: bool,
    /// What it depends on.
    pub(super) behind: super::aspect::Aspects,
}

impl Answer {
    /// An operation that was not done.
    pub(super) fn refused(operation: u32, reason: String) -> Self {
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
}
