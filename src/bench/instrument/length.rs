//! Micrometer, depth gauge with arbor and block, feeler leaves.

use super::using::{Use, graduated};

/// A micrometer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Micrometer {
    /// What can be told apart, mm.
    pub graduation_mm: f64,
    /// Standard deviation of its zero, mm.
    pub own_mm: f64,
    /// Standard deviation of one reading, mm.
    pub reading_mm: f64,
}

impl Micrometer {
    /// Hundredths with a vernier.
    pub const USUAL: Self = Self {
        graduation_mm: 0.002,
        own_mm: 0.0015,
        reading_mm: 0.0015,
    };

    /// What it shows of a thickness, mm.
    pub fn reads_mm(&self, thickness_mm: f64, using: Use<'_>) -> f64 {
        let shown = thickness_mm + self.own_mm * using.own("zero") + self.reading_mm * using.of_reading("feel");
        graduated(shown, self.graduation_mm)
    }
}

/// Measures depth: an arbor in the bores of the side bearings, a gauge block on the pinion's head, and what fits between.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DepthGauge {
    /// What can be told apart, mm.
    pub graduation_mm: f64,
    /// Standard deviation of arbor radius and block together, mm: the same for good.
    pub own_mm: f64,
    /// Standard deviation of how arbor and block sit this time, mm.
    pub set_up_mm: f64,
    /// Standard deviation of one reading, mm.
    pub reading_mm: f64,
}

impl DepthGauge {
    /// One that is cleaned and laid in with care.
    pub const USUAL: Self = Self {
        graduation_mm: 0.01,
        own_mm: 0.010,
        set_up_mm: 0.010,
        reading_mm: 0.005,
    };

    /// What it shows of the distance from the wheel's axis to the pinion's head, mm.
    pub fn reads_mm(&self, distance_mm: f64, using: Use<'_>) -> f64 {
        let shown = distance_mm
            + self.own_mm * using.own("arbor and block")
            + self.set_up_mm * using.of_set_up("seating")
            + self.reading_mm * using.of_reading("feel");
        graduated(shown, self.graduation_mm)
    }
}

/// Feeler leaves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Feeler {
    /// Leaves, thinnest first, mm.
    pub leaves_mm: &'static [f64],
    /// Standard deviation of what a hand calls going in, mm.
    pub hand_mm: f64,
}

impl Feeler {
    /// A usual set; the thinnest leaf is the one for seats (0.0015 in).
    pub const USUAL: Self = Self {
        leaves_mm: &[0.038, 0.05, 0.08, 0.10, 0.15, 0.20, 0.25, 0.30, 0.40, 0.50],
        hand_mm: 0.004,
    };

    /// The thickest leaf that goes into a gap, mm; none where not even the thinnest does.
    pub fn goes_in_mm(&self, gap_mm: f64, using: Use<'_>) -> Option<f64> {
        let felt = gap_mm + self.hand_mm * using.of_reading("hand");
        self.leaves_mm.iter().copied().rfind(|leaf| *leaf <= felt)
    }
}
