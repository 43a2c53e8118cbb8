//! Thermometer and the gauge of the press.

use super::using::{Use, graduated};

/// A contact thermometer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Thermometer {
    /// What can be told apart, °C.
    pub graduation_c: f64,
    /// Standard deviation of the instrument, °C.
    pub own_c: f64,
    /// Standard deviation of one reading, °C.
    pub reading_c: f64,
}

impl Thermometer {
    /// A usual one.
    pub const USUAL: Self = Self {
        graduation_c: 1.0,
        own_c: 1.5,
        reading_c: 1.0,
    };

    /// What it shows, °C.
    pub fn reads_c(&self, temperature_c: f64, using: Use<'_>) -> f64 {
        let shown = temperature_c + self.own_c * using.own("scale") + self.reading_c * using.of_reading("contact");
        graduated(shown, self.graduation_c)
    }
}

/// The gauge of the press.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PressGauge {
    /// What can be told apart, N.
    pub graduation_n: f64,
    /// Standard deviation of the gauge, as a share.
    pub own_share: f64,
}

impl PressGauge {
    /// A usual one.
    pub const USUAL: Self = Self {
        graduation_n: 500.0,
        own_share: 0.03,
    };

    /// What it shows of a force, N.
    pub fn reads_n(&self, force_n: f64, using: Use<'_>) -> f64 {
        graduated(force_n * (1.0 + self.own_share * using.own("scale")), self.graduation_n)
    }
}
