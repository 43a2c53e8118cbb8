//! The instruments on a bench, by name.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::instrument::{DepthGauge, Dial, Feeler, Micrometer, Stem, Thermometer, TorqueWrench, WrenchKind};
use super::instrument_kind::InstrumentKind;

/// One instrument on the bench.
#[derive(Debug, Clone, PartialEq)]
pub struct Tool {
    /// What it is called there; its own errors are drawn under this name.
    pub name: String,
    /// What it is.
    pub instrument: Instrument,
}

/// What an instrument is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Instrument {
    /// Dial indicator.
    Dial(Dial),
    /// Torque wrench, or cord and scale.
    Wrench(TorqueWrench),
    /// Micrometer.
    Micrometer(Micrometer),
    /// Arbor, block and what fits between.
    DepthGauge(DepthGauge),
    /// Feeler leaves.
    Feeler(Feeler),
    /// Thermometer.
    Thermometer(Thermometer),
    /// A pair of eyes: reads prints.
    Eye,
}

/// How a dial's stem is laid to a tooth.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum StemChoice {
    /// Square to the tooth's trace: as cards ask for.
    #[default]
    SquareToTrace,
    /// Along the motion of the tooth.
    AlongMotion,
    /// Along the flank's normal.
    AlongNormal,
}

impl StemChoice {
    /// The stem in geometry.
    pub fn stem(self) -> Stem {
        match self {
            Self::SquareToTrace => Stem::SquareToTrace,
            Self::AlongMotion => Stem::AlongMotion,
            Self::AlongNormal => Stem::AlongNormal,
        }
    }
}

/// A dial wrench for nuts, that can be read while it turns.
const LARGE_DIAL: TorqueWrench = TorqueWrench {
    kind: WrenchKind::Dial,
    range_nm: [20.0, 400.0],
    graduation_nm: 5.0,
    permitted_share: 0.04,
    pull_share: 0.02,
};

impl Tool {
    /// The name that every bench gives to looking, without an instrument in hand.
    pub const EYE: &'static str = "eye";

    /// The name of the gauge on the press, which belongs to the press and not to the bench's instruments.
    pub const PRESS_GAUGE: &'static str = "press_gauge";

    /// What lies on a usual bench.
    pub fn usual() -> Vec<Self> {
        [
            ("dial_indicator", Instrument::Dial(Dial::USUAL)),
            ("lever_dial", Instrument::Dial(Dial::GOOD)),
            ("worn_dial", Instrument::Dial(Dial::WORN)),
            ("small_dial_wrench", Instrument::Wrench(TorqueWrench::SMALL_DIAL)),
            ("small_beam_wrench", Instrument::Wrench(TorqueWrench::SMALL_BEAM)),
            ("cord_and_scale", Instrument::Wrench(TorqueWrench::CORD)),
            ("click_wrench", Instrument::Wrench(TorqueWrench::LARGE_CLICK)),
            ("large_dial_wrench", Instrument::Wrench(LARGE_DIAL)),
            ("multiplier_wrench", Instrument::Wrench(TorqueWrench::MULTIPLIER)),
            ("micrometer", Instrument::Micrometer(Micrometer::USUAL)),
            ("depth_gauge", Instrument::DepthGauge(DepthGauge::USUAL)),
            ("feeler", Instrument::Feeler(Feeler::USUAL)),
            ("thermometer", Instrument::Thermometer(Thermometer::USUAL)),
            (Self::EYE, Instrument::Eye),
        ]
        .into_iter()
        .map(|(name, instrument)| Self {
            name: name.to_owned(),
            instrument,
        })
        .collect()
    }
}

impl Instrument {
    /// The same wrench with this many times its permitted deviation; other instruments as they are.
    #[must_use]
    pub fn less_exact(self, times: f64) -> Self {
        match self {
            Self::Wrench(wrench) => Self::Wrench(TorqueWrench {
                permitted_share: times * wrench.permitted_share,
                ..wrench
            }),
            other => other,
        }
    }

    /// What it is, without its numbers.
    pub fn kind(&self) -> InstrumentKind {
        match self {
            Self::Dial(_) => InstrumentKind::Dial,
            Self::Wrench(wrench) => wrench.kind.into(),
            Self::Micrometer(_) => InstrumentKind::Micrometer,
            Self::DepthGauge(_) => InstrumentKind::DepthGauge,
            Self::Feeler(_) => InstrumentKind::Feeler,
            Self::Thermometer(_) => InstrumentKind::Thermometer,
            Self::Eye => InstrumentKind::Eye,
        }
    }
}
