//! How far a size is from its drawing, before a seed decides.

use crate::numerics::random::Stream;

/// A distribution of a deviation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Spread {
    /// Evenly between two ends.
    Even {
        /// Smallest.
        low: f64,
        /// Largest.
        high: f64,
    },
    /// Bell-shaped about a middle, cut off at a largest distance from it.
    Normal {
        /// Middle.
        middle: f64,
        /// Standard deviation of the uncut bell.
        deviation: f64,
        /// Farthest from the middle.
        most: f64,
    },
    /// Off to either side, never near the middle: evenly between two distances.
    Beyond {
        /// Nearest to the middle.
        least: f64,
        /// Farthest from it.
        most: f64,
    },
}

impl Spread {
    /// Always the same.
    pub const fn fixed(value: f64) -> Self {
        Self::Even {
            low: value,
            high: value,
        }
    }

    /// A number from the stream.
    pub fn draw(&self, stream: &mut Stream) -> f64 {
        match *self {
            Self::Even { low, high } => stream.between(low, high),
            Self::Normal {
                middle,
                deviation,
                most,
            } => middle + (deviation * stream.normal_within(most / deviation)).clamp(-most, most),
            Self::Beyond { least, most } => {
                let far = stream.between(least, most);
                if stream.unit() < 0.5 { -far } else { far }
            }
        }
    }

    /// Smallest and largest number that can come.
    pub fn ends(&self) -> [f64; 2] {
        match *self {
            Self::Even { low, high } => [low, high],
            Self::Normal { middle, most, .. } => [middle - most, middle + most],
            Self::Beyond { most, .. } => [-most, most],
        }
    }
}
