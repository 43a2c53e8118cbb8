//! A measurement on record.

use super::aspect::Aspects;
use super::measurand::Measurand;
use super::reading::{Reading, ReadingPart, centroid_of, value_of};
use crate::gear::Side as Flank;

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
    pub(super) behind: Aspects,
}

impl Record {
    /// One of its values; none where it has none of that name, or where the instrument showed nothing.
    pub fn value(&self, part: ReadingPart) -> Option<f64> {
        value_of(&self.readings, part)
    }

    /// The value that its quantity is named after; none where the instrument showed nothing.
    pub fn main_value(&self) -> Option<f64> {
        self.value(self.what.main_part()?)
    }

    /// The middle of the print on a flank, along and up the tooth; none where nothing was to be seen.
    pub fn centroid(&self, flank: Flank) -> Option<[f64; 2]> {
        centroid_of(&self.readings, flank)
    }
}
