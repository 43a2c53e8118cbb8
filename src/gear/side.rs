//! The two flanks of a wheel tooth.

use std::fmt;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A flank side.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Side {
    /// The wheel's convex flank, which drives the vehicle forward.
    Drive,
    /// The wheel's concave flank.
    Coast,
}

impl Side {
    /// Both, drive first.
    pub const BOTH: [Self; 2] = [Self::Drive, Self::Coast];

    /// s: +1 for drive, −1 for coast.
    pub fn sign(self) -> f64 {
        match self {
            Self::Drive => 1.0,
            Self::Coast => -1.0,
        }
    }

    /// 0 for drive, 1 for coast.
    pub fn index(self) -> usize {
        match self {
            Self::Drive => 0,
            Self::Coast => 1,
        }
    }
}

impl fmt::Display for Side {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Drive => "drive",
            Self::Coast => "coast",
        })
    }
}
