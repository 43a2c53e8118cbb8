//! Ranges of numbers.

/// Which numbers a key takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NumberRange {
    low: f64,
    high: f64,
    low_excluded: bool,
}

impl NumberRange {
    /// `low` ≤ x ≤ `high`.
    pub const fn closed(low: f64, high: f64) -> Self {
        Self {
            low,
            high,
            low_excluded: false,
        }
    }

    /// `low` < x ≤ `high`.
    pub const fn above(low: f64, high: f64) -> Self {
        Self {
            low,
            high,
            low_excluded: true,
        }
    }

    /// Whether `x` is a number inside.
    pub fn holds(self, x: f64) -> bool {
        x <= self.high && if self.low_excluded { x > self.low } else { x >= self.low }
    }

    /// The smallest number; [`Self::excludes_low`] says whether it is itself outside.
    pub const fn low(self) -> f64 {
        self.low
    }

    /// The largest number, itself inside.
    pub const fn high(self) -> f64 {
        self.high
    }

    /// Whether the lower end is itself outside.
    pub const fn excludes_low(self) -> bool {
        self.low_excluded
    }
}
