//! What an instrument is, without its numbers.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::instrument::WrenchKind;

/// What an instrument is, without its numbers.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum InstrumentKind {
    /// Dial indicator.
    Dial,
    /// Beam wrench.
    BeamWrench,
    /// Dial wrench.
    DialWrench,
    /// Electronic wrench.
    ElectronicWrench,
    /// Cord and scale.
    CordAndScale,
    /// Click wrench.
    ClickWrench,
    /// Micrometer.
    Micrometer,
    /// Depth gauge.
    DepthGauge,
    /// Feeler leaves.
    Feeler,
    /// Thermometer.
    Thermometer,
    /// Eye.
    Eye,
}

impl From<WrenchKind> for InstrumentKind {
    fn from(kind: WrenchKind) -> Self {
        match kind {
            WrenchKind::Beam => Self::BeamWrench,
            WrenchKind::Dial => Self::DialWrench,
            WrenchKind::Electronic => Self::ElectronicWrench,
            WrenchKind::CordAndScale => Self::CordAndScale,
            WrenchKind::Click => Self::ClickWrench,
        }
    }
}
