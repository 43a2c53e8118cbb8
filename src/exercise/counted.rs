//! Which true numbers of an axle an exercise asks for.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::fitted::Fitted;

/// A true number that wins outcome points.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Counted {
    /// Distance of the pinion from the best depth that this axle can be set to.
    Depth,
    /// Lash at the tightest place.
    Lash,
    /// Difference of lash around the wheel.
    Spread,
    /// Face runout of the wheel.
    Runout,
    /// Rotating torque of the pinion alone.
    PinionTorque,
    /// Torque that the pinion nut stands at.
    NutTorque,
    /// What the side bearings add to the rotating torque.
    SideTorque,
    /// Prints of both flanks against the approval print.
    Print,
}

impl Counted {
    /// All of them.
    pub const ALL: [Self; 8] = [
        Self::Depth,
        Self::Lash,
        Self::Spread,
        Self::Runout,
        Self::PinionTorque,
        Self::NutTorque,
        Self::SideTorque,
        Self::Print,
    ];

    /// Its name in files.
    pub fn name(self) -> &'static str {
        match self {
            Self::Depth => "depth",
            Self::Lash => "lash",
            Self::Spread => "spread",
            Self::Runout => "runout",
            Self::PinionTorque => "pinion_torque",
            Self::NutTorque => "nut_torque",
            Self::SideTorque => "side_torque",
            Self::Print => "print",
        }
    }

    /// Whether it speaks of the gears in mesh, and not of the pinion in its bearings alone.
    pub fn needs_mesh(self) -> bool {
        !matches!(self, Self::Depth | Self::PinionTorque | Self::NutTorque)
    }

    /// What counts where a scenario does not say: everything of a whole build; else what the start leaves open.
    ///
    /// The torque of the nut stands for the outcome only where the pinion alone is built; elsewhere it is a matter of the
    /// process, and what it does to the bearings is felt as rotating torque.
    pub fn usual(whole_build: bool, fitted: Fitted) -> Vec<Self> {
        if whole_build {
            return Self::ALL.into_iter().filter(|c| *c != Self::NutTorque).collect();
        }
        match fitted {
            Fitted::Nothing | Fitted::Rings => vec![Self::PinionTorque, Self::NutTorque],
            Fitted::Carrier | Fitted::Everything => vec![Self::Depth, Self::PinionTorque, Self::Print],
        }
    }
}
