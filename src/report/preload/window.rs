//! The rotating torque that is aimed at.

use crate::bearing::Support;
use crate::quantity;

/// A rotating torque that is aimed at, N m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TorqueWindow {
    /// Least.
    pub low_nm: f64,
    /// Most.
    pub high_nm: f64,
}

/// What a wrench shows beside a window.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WindowVerdict {
    /// Below the window.
    Low,
    /// Inside, its ends included.
    Inside,
    /// Above it.
    High,
}

impl TorqueWindow {
    const fn in_lb(low: f64, high: f64) -> Self {
        Self {
            low_nm: low * quantity::NM_PER_INCH_POUND,
            high_nm: high * quantity::NM_PER_INCH_POUND,
        }
    }

    /// Rotating torque of new bearings: common practice, no source. A sleeve is taken for a light axle's.
    pub fn new_bearings(support: &Support) -> Self {
        if support.has_sleeve() {
            Self::in_lb(17.0, 29.0)
        } else {
            Self::in_lb(14.0, 36.0)
        }
    }

    /// Rotating torque of run-in bearings: common practice, no source.
    pub fn run_in_bearings(support: &Support) -> Self {
        if support.has_sleeve() {
            Self::in_lb(8.0, 16.0)
        } else {
            Self::in_lb(10.0, 20.0)
        }
    }

    /// Where a torque lies.
    pub fn verdict(&self, torque_nm: f64) -> WindowVerdict {
        if torque_nm < self.low_nm {
            WindowVerdict::Low
        } else if torque_nm > self.high_nm {
            WindowVerdict::High
        } else {
            WindowVerdict::Inside
        }
    }
}
