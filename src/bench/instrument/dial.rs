//! Dial indicators.
//!
//! A stem shows what its tip moves along its own direction. On a tooth flank that is not the lash itself: with m the motion
//! of the flank, n its normal and s the stem, reading = j (r/R) (m·n)/(s·n), j the transverse lash at the outer pitch
//! radius R and r the radius that the tip touches.

use super::using::{Use, graduated};
use crate::axle::GearNumbers;
use crate::numerics::math;

/// A dial indicator.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dial {
    /// What can be told apart on the dial, mm.
    pub graduation_mm: f64,
    /// Standard deviation of its gearing's error, as a share of the reading.
    pub own_share: f64,
    /// Standard deviation of what holding and zeroing it adds, mm.
    pub set_up_mm: f64,
    /// Standard deviation from one reading to the next, mm.
    pub reading_mm: f64,
    /// What the needle lags behind when the motion turns back, mm.
    pub hysteresis_mm: f64,
}

/// How the stem stands on a tooth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Stem {
    /// Along the motion of the flank: the reading is the transverse lash.
    AlongMotion,
    /// In the plane of the pitch cone, square to the tooth's trace.
    SquareToTrace,
    /// Along the flank's normal.
    AlongNormal,
    /// In the plane of the pitch cone, this far round from the motion toward the square, rad.
    Between {
        /// rad.
        angle_rad: f64,
    },
}

impl Dial {
    /// A lever-type indicator of two thousandths of a millimetre, cared for.
    pub const GOOD: Self = Self {
        graduation_mm: 0.002,
        own_share: 0.004,
        set_up_mm: 0.0008,
        reading_mm: 0.0008,
        hysteresis_mm: 0.0005,
    };
    /// The dial of most tool boxes: hundredths, read to half of one.
    pub const USUAL: Self = Self {
        graduation_mm: 0.005,
        own_share: 0.008,
        set_up_mm: 0.003,
        reading_mm: 0.002,
        hysteresis_mm: 0.002,
    };
    /// One that was dropped: it sticks, and its holder gives.
    pub const WORN: Self = Self {
        graduation_mm: 0.01,
        own_share: 0.03,
        set_up_mm: 0.010,
        reading_mm: 0.006,
        hysteresis_mm: 0.012,
    };

    /// What it shows of a travel, mm. `turned_back` says whether the last motion before the reading was against the
    /// travel.
    pub fn reads_mm(&self, travel_mm: f64, turned_back: bool, using: Use<'_>) -> f64 {
        let lag = if turned_back { self.hysteresis_mm } else { 0.0 };
        let shown = travel_mm * (1.0 + self.own_share * using.own("gearing"))
            + self.set_up_mm * using.of_set_up("holding")
            + self.reading_mm * using.of_reading("needle")
            + lag;
        graduated(shown, self.graduation_mm)
    }
}

impl Stem {
    /// What the stem moves for a unit of transverse motion at the place that it touches: (m·n)/(s·n).
    ///
    /// In the frame of motion, heelward generator and outward normal of the pitch cone the flank's normal is
    /// n = (cos α cos β, −cos α sin β, sin α) with β the spiral angle there; the sign of β does not matter.
    pub fn share(self, gears: &GearNumbers) -> f64 {
        let (sin_b, cos_b) = math::sin_cos(gears.outer_spiral_angle_rad);
        let (sin_a, cos_a) = math::sin_cos(gears.pressure_angle_rad);
        let n = [cos_a * cos_b, -cos_a * sin_b, sin_a];
        let s = match self {
            Self::AlongMotion => [1.0, 0.0, 0.0],
            Self::SquareToTrace => [cos_b, -sin_b, 0.0],
            Self::AlongNormal => n,
            Self::Between { angle_rad } => {
                let (sin, cos) = math::sin_cos(angle_rad);
                [cos, -sin, 0.0]
            }
        };
        n[0] / (s[0] * n[0] + s[1] * n[1] + s[2] * n[2])
    }

    /// What a stem on a flank moves while the wheel is rocked through a transverse lash, mm; `contact_radius_mm` is where
    /// its tip touches.
    pub fn travel_mm(self, lash_mm: f64, contact_radius_mm: f64, gears: &GearNumbers) -> f64 {
        lash_mm * contact_radius_mm / gears.outer_pitch_radius_mm * self.share(gears)
    }
}

/// The true travel of a flat face square to its motion, of which a stem tilted by `tilt_rad` shows `reading_mm`: such a stem
/// reads high.
pub fn flat_target_true_mm(reading_mm: f64, tilt_rad: f64) -> f64 {
    reading_mm * math::cos(tilt_rad)
}
