//! What an exercise is judged by, besides the windows of its card.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::bench::{Measurand, MeasurandKind, ShimPlace};

/// From where depth is judged.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum DepthFrom {
    /// From the best place that this axle can be set to.
    #[default]
    Best,
    /// From where the pinion stood when the axle came in.
    Found,
}

/// A value that the trainee is asked for: the last note of it is judged against what is true at the end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Asked {
    /// Which quantity.
    pub what: AskedFor,
    /// Full marks within, in its unit.
    pub full: f64,
    /// None beyond.
    pub zero: f64,
}

/// Quantities that can be asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum AskedFor {
    /// Lash at the tooth that the note names, in the reading of the card's stem, mm.
    Lash,
    /// Torque that keeps the pinion turning, settled, N m.
    RollingTorque,
    /// From the wheel's axis to the pinion's head, mm.
    PinionDepth,
    /// End play of the pinion, mm.
    PinionEndPlay,
    /// Face runout of the ring gear's back, mm.
    WheelFaceRunout,
}

impl AskedFor {
    /// All of them.
    pub const ALL: [Self; 5] = [
        Self::Lash,
        Self::RollingTorque,
        Self::PinionDepth,
        Self::PinionEndPlay,
        Self::WheelFaceRunout,
    ];

    /// Which quantity it is.
    pub fn kind(self) -> MeasurandKind {
        match self {
            Self::Lash => MeasurandKind::Lash,
            Self::RollingTorque => MeasurandKind::RollingTorque,
            Self::PinionDepth => MeasurandKind::PinionDepth,
            Self::PinionEndPlay => MeasurandKind::PinionEndPlay,
            Self::WheelFaceRunout => MeasurandKind::WheelFaceRunout,
        }
    }

    /// Its name in files: that of the quantity.
    pub fn name(self) -> &'static str {
        self.kind().key()
    }

    /// Whether a note is about it.
    pub fn is(self, what: Measurand) -> bool {
        what.kind() == self.kind()
    }
}

/// A pack that is asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PackWanted {
    /// Where it goes.
    pub place: ShimPlace,
    /// How thick it is to be, mm.
    pub size_mm: f64,
    /// Of how many pieces at most.
    pub pieces: u32,
}

/// Painted plates to be judged in place of an axle.
#[derive(Debug, Clone, PartialEq)]
pub struct PlatesWanted {
    /// How many.
    pub count: u32,
    /// The other gear set; every second plate is of it.
    pub other_gears: String,
    /// Farthest that a pinion stands from its place on a plate, mm.
    pub depth_mm: f64,
}

/// An instrument that is not as good as its certificate says.
#[derive(Debug, Clone, PartialEq)]
pub struct ToolOff {
    /// Which one on the bench.
    pub name: String,
    /// Its permitted deviation, times this.
    pub error_times: f64,
}

/// Shares of the score, percent; they add up to 100.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weights {
    /// What the axle has become.
    pub outcome: f64,
    /// A valid last check, and safety.
    pub process: f64,
    /// Predictions.
    pub understanding: f64,
    /// Tear-downs and spoiled parts.
    pub economy: f64,
}

impl Default for Weights {
    /// Common practice, no source: the axle is half of it.
    fn default() -> Self {
        Self {
            outcome: 50.0,
            process: 25.0,
            understanding: 15.0,
            economy: 10.0,
        }
    }
}
