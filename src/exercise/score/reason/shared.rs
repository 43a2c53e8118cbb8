//! Values that reasons of several parts hold.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What is missing on an axle for something to be judged.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Missing {
    /// The wheel is scrap.
    SoundRingGear,
    /// The pinion is not held by its own bearings, spacer and nut.
    PinionHeld,
    /// The gears are not in mesh.
    Mesh,
}

/// What the pinion nut stands at, against the card.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct NutStands {
    /// What it stands at, N m.
    pub stands_nm: f64,
    /// Least that the card wants, N m.
    pub least_nm: f64,
    /// Most that it permits, N m.
    pub most_nm: f64,
}
