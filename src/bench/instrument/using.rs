//! Which instrument, set up how often, used how often: what an error depends on.

use crate::numerics::random::Stream;

/// One use of an instrument.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Use<'a> {
    /// Seed of the attempt.
    pub seed: u64,
    /// Name of the instrument on the bench.
    pub instrument: &'a str,
    /// How often it had been set up before this set-up.
    pub set_up: u32,
    /// How often it had been read before this reading.
    pub reading: u32,
}

impl Use<'_> {
    /// A number of the instrument itself: always the same in an attempt.
    pub fn own(&self, what: &str) -> f64 {
        Stream::new(self.seed, &format!("instrument {} {what}", self.instrument)).normal_within(2.5)
    }

    /// A number of this set-up.
    pub fn of_set_up(&self, what: &str) -> f64 {
        let name = format!("instrument {} set-up {} {what}", self.instrument, self.set_up);
        Stream::new(self.seed, &name).normal_within(2.5)
    }

    /// A number of this reading.
    pub fn of_reading(&self, what: &str) -> f64 {
        let name = format!("instrument {} reading {} {what}", self.instrument, self.reading);
        Stream::new(self.seed, &name).normal_within(2.5)
    }
}

/// To the nearest graduation; as it is for a graduation of 0.
pub(super) fn graduated(value: f64, graduation: f64) -> f64 {
    if graduation > 0.0 {
        (value / graduation).round() * graduation
    } else {
        value
    }
}
