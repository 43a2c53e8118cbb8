//! Torque wrenches and the cord with its scale.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::using::{Use, graduated};

/// How a wrench shows torque.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WrenchKind {
    /// A beam with a pointer.
    Beam,
    /// A dial.
    Dial,
    /// Digits.
    Electronic,
    /// A cord wound round a flange or cartridge and a spring scale: pull × radius.
    CordAndScale,
    /// Clicks at the set torque and shows nothing below.
    Click,
}

/// A torque wrench.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TorqueWrench {
    /// How it shows.
    pub kind: WrenchKind,
    /// Least and most torque that it is made for, N m.
    pub range_nm: [f64; 2],
    /// What can be told apart, N m.
    pub graduation_nm: f64,
    /// Permitted deviation of the instrument, as a share of the reading. ISO 6789 permits 4 % above 10 N m and 6 % below
    /// for indicating tools (from memory).
    pub permitted_share: f64,
    /// Standard deviation of one pull to the next, as a share.
    pub pull_share: f64,
}

/// What was felt while turning.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RollingReading {
    /// When it began to turn, N m.
    pub start_nm: f64,
    /// While it turned, N m.
    pub running_nm: f64,
}

/// Why a wrench shows nothing of use.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "why", rename_all = "snake_case")]
#[error("{self:?}")]
pub enum CannotRead {
    /// A click wrench has no pointer.
    Clicks,
    /// The torque lies outside of its range.
    TooLarge {
        /// Where it begins, N m.
        least_nm: f64,
    },
    /// The torque is more than it shows.
    TooSmall {
        /// Where it ends, N m.
        most_nm: f64,
    },
}

impl TorqueWrench {
    /// For rotating torque, with a pointer.
    pub const SMALL_DIAL: Self = Self {
        kind: WrenchKind::Dial,
        range_nm: [0.3, 8.0],
        graduation_nm: 0.05,
        permitted_share: 0.04,
        pull_share: 0.02,
    };
    /// For rotating torque, cheap.
    pub const SMALL_BEAM: Self = Self {
        kind: WrenchKind::Beam,
        range_nm: [0.5, 7.0],
        graduation_nm: 0.25,
        permitted_share: 0.06,
        pull_share: 0.04,
    };
    /// Cord round the cartridge and a spring scale.
    pub const CORD: Self = Self {
        kind: WrenchKind::CordAndScale,
        range_nm: [0.2, 15.0],
        graduation_nm: 0.1,
        permitted_share: 0.03,
        pull_share: 0.03,
    };
    /// For nuts: clicks.
    pub const LARGE_CLICK: Self = Self {
        kind: WrenchKind::Click,
        range_nm: [40.0, 340.0],
        graduation_nm: 1.0,
        permitted_share: 0.04,
        pull_share: 0.02,
    };
    /// For large nuts: a dial with a multiplier.
    pub const MULTIPLIER: Self = Self {
        kind: WrenchKind::Dial,
        range_nm: [200.0, 2000.0],
        graduation_nm: 5.0,
        permitted_share: 0.05,
        pull_share: 0.02,
    };

    /// Share by which this pull goes wrong: half the permitted deviation is one standard deviation of the tool.
    fn error(&self, using: Use<'_>) -> f64 {
        0.5 * self.permitted_share * using.own("calibration") + self.pull_share * using.of_reading("pull")
    }

    /// What it shows of a torque that starts the pinion and one that keeps it turning, N m.
    ///
    /// # Errors
    /// [`CannotRead`] for a click wrench and for torques that it does not show.
    pub fn rolling(&self, start_nm: f64, running_nm: f64, using: Use<'_>) -> Result<RollingReading, CannotRead> {
        let [least_nm, most_nm] = self.range_nm;
        if self.kind == WrenchKind::Click {
            return Err(CannotRead::Clicks);
        }
        if running_nm < least_nm {
            return Err(CannotRead::TooLarge { least_nm });
        }
        if start_nm > most_nm || running_nm > most_nm {
            return Err(CannotRead::TooSmall { most_nm });
        }
        let times = 1.0 + self.error(using);
        Ok(RollingReading {
            start_nm: graduated(start_nm * times, self.graduation_nm),
            running_nm: graduated(running_nm * times, self.graduation_nm),
        })
    }

    /// The torque that really acts when it is set to (or read at) `wanted_nm`.
    ///
    /// # Errors
    /// [`CannotRead`] outside of its range.
    pub fn applies_nm(&self, wanted_nm: f64, using: Use<'_>) -> Result<f64, CannotRead> {
        let [least_nm, most_nm] = self.range_nm;
        if wanted_nm < least_nm {
            Err(CannotRead::TooLarge { least_nm })
        } else if wanted_nm > most_nm {
            Err(CannotRead::TooSmall { most_nm })
        } else {
            Ok(wanted_nm * (1.0 + self.error(using)))
        }
    }

    /// What it shows of a torque that acts, N m.
    ///
    /// # Errors
    /// [`CannotRead`] for a click wrench and outside of its range.
    pub fn reads_nm(&self, torque_nm: f64, using: Use<'_>) -> Result<f64, CannotRead> {
        self.rolling(torque_nm, torque_nm, using)
            .map(|reading| reading.running_nm)
    }
}
