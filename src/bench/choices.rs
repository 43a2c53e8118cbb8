//! What an operation is about: places, rings, sides, levels and the other choices in its fields.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// How far an axle is taken apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Level {
    /// Caps off, locks out.
    Caps,
    /// Carrier out.
    Carrier,
    /// Wheel off its carrier.
    Wheel,
    /// Nut, flange and seal off (a cartridge first comes off its case).
    Nut,
    /// Pinion and spacer out.
    Pinion,
    /// Bearings pulled.
    Bearings,
}

/// Where shims go.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum ShimPlace {
    /// The depth shim's.
    Depth,
    /// Beside the solid spacer.
    Spacer,
    /// Beside the bearing on the side of the wheel's teeth.
    ToothSide,
    /// Beside the bearing behind the wheel.
    BackSide,
}

impl ShimPlace {
    /// All places, in the order of their numbers.
    pub const ALL: [Self; 4] = [Self::Depth, Self::Spacer, Self::ToothSide, Self::BackSide];
}

/// A ring that is pressed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Ring {
    /// Cone of the head bearing, on the pinion.
    HeadCone,
    /// Cup of the head bearing, in its bore.
    HeadCup,
    /// Cup of the tail bearing, in its bore.
    TailCup,
}

impl Ring {
    /// All rings, in the order of their numbers.
    pub const ALL: [Self; 3] = [Self::HeadCone, Self::HeadCup, Self::TailCup];
}

/// Which spacer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum SpacerChoice {
    /// None, as in a trial build.
    None,
    /// The one that belongs to the axle: sleeve or solid.
    Own,
}

/// How far the caps' bolts are tightened.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum CapTorque {
    /// Snug.
    Snug,
    /// Full torque.
    Full,
}

/// A side of the carrier.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum CarrierSide {
    /// Where the wheel's teeth are.
    Tooth,
    /// Behind the wheel.
    Back,
}

/// What is turned or pushed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Turned {
    /// The pinion (and the carrier with it, when in mesh).
    Pinion,
    /// The carrier (and the pinion with it, when in mesh).
    Carrier,
}

/// Which way something is pushed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Toward {
    /// Deeper into mesh.
    Mesh,
    /// Out of mesh.
    Apart,
}

/// What is cleaned.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Cleaned {
    /// Wheel and carrier where they meet: chips out, burrs stoned off.
    WheelSeat,
    /// All shims in the kit: deburred and wiped.
    Shims,
    /// Bolt threads of the wheel: degreased.
    Threads,
    /// Teeth: paste wiped off.
    Teeth,
    /// Bearings: washed and dried with air.
    Bearings,
}

/// How paste is brushed on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Brushing {
    /// Wiped thin.
    Thin,
    /// As usual.
    Usual,
    /// Laid on thick.
    Thick,
}

/// What a prediction is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Predicted {
    /// Lash: less, same, more.
    Lash,
    /// Torque at the pinion nut: less, same, more.
    PinionTorque,
    /// Print on the drive flank along the tooth: to the toe, same, to the heel.
    DriveLength,
    /// Print on the drive flank up the tooth: to the root, same, to the top.
    DriveHeight,
    /// Print on the coast flank along the tooth: to the toe, same, to the heel.
    CoastLength,
    /// Print on the coast flank up the tooth: to the root, same, to the top.
    CoastHeight,
}
