//! What can hurt whoever does an operation in a real shop, told before the act. What the bench judges of it is a [`Caution`]:
//! a hazard that is really there as the axle stands, with the precaution that meets it. Common practice, no source.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::caution::{Caution, Precaution};
use super::choices::Cleaned;
use super::measurand::Measurand;
use super::operation::Operation;

/// Something that can hurt.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Hazard {
    /// Turning gears draw fingers in.
    TurningGears,
    /// Solvent on skin, in eyes, in the air, and near a flame.
    Solvent,
    /// A puller under load slips or breaks.
    Puller,
    /// A hardened ring under a press can burst.
    RingUnderPress,
    /// Drifts, pullers and stones throw splinters; compressed air throws what lies on a part.
    Splinters,
    /// A bearing spun by compressed air flies apart.
    AirSpunBearing,
    /// Ring gear, carrier or cartridge fall, or are lifted by a back.
    HeavyPart,
    /// A spread housing closes when the spreader slips.
    SpreadHousing,
    /// Whoever holds the flange feels the whole torque of the nut.
    NutReaction,
    /// The arm of a torque multiplier swings against what is near.
    MultiplierArm,
    /// A wrench slips off a bolt under torque.
    BoltTorque,
    /// The ring gear is hot: burns, fumes of oil, flame, and it stays hot long after.
    HotRingGear,
    /// Grinding and stoning throw sparks and dust.
    Grinding,
    /// Marking compound on skin and in eyes.
    MarkingCompound,
    /// Shims have sharp edges.
    SharpShims,
    /// Gear teeth and fresh edges cut.
    SharpEdges,
}

impl Hazard {
    /// All of them.
    pub const ALL: &'static [Self] = &[
        Self::TurningGears,
        Self::Solvent,
        Self::Puller,
        Self::RingUnderPress,
        Self::Splinters,
        Self::AirSpunBearing,
        Self::HeavyPart,
        Self::SpreadHousing,
        Self::NutReaction,
        Self::MultiplierArm,
        Self::BoltTorque,
        Self::HotRingGear,
        Self::Grinding,
        Self::MarkingCompound,
        Self::SharpShims,
        Self::SharpEdges,
    ];

    /// What is put on or used for it where an operation can say so; none where it only has to be known.
    pub const fn precaution(self) -> Option<Precaution> {
        match self {
            Self::Solvent | Self::Splinters => Some(Precaution::EyeProtection),
            Self::RingUnderPress => Some(Precaution::PressGuard),
            Self::AirSpunBearing => Some(Precaution::BearingHeld),
            Self::HeavyPart => Some(Precaution::Hoist),
            Self::NutReaction => Some(Precaution::HoldingBar),
            Self::HotRingGear => Some(Precaution::HotGloves),
            Self::TurningGears
            | Self::Puller
            | Self::SpreadHousing
            | Self::MultiplierArm
            | Self::BoltTorque
            | Self::Grinding
            | Self::MarkingCompound
            | Self::SharpShims
            | Self::SharpEdges => None,
        }
    }
}

impl Caution {
    /// What it is a case of.
    pub const fn hazard(self) -> Hazard {
        match self {
            Self::RingUnderPress => Hazard::RingUnderPress,
            Self::Splinters => Hazard::Splinters,
            Self::HotWheel => Hazard::HotRingGear,
            Self::HeavyCarrier => Hazard::HeavyPart,
            Self::NutReaction => Hazard::NutReaction,
            Self::AirSpunBearing => Hazard::AirSpunBearing,
        }
    }
}

impl Cleaned {
    /// What can hurt whoever cleans it.
    pub const fn hazards(self) -> &'static [Hazard] {
        match self {
            Self::WheelSeat => &[Hazard::Grinding, Hazard::SharpEdges],
            Self::Shims => &[Hazard::SharpShims],
            Self::Threads => &[Hazard::Solvent],
            Self::Teeth => &[Hazard::Solvent, Hazard::SharpEdges, Hazard::TurningGears],
            Self::Bearings => &[Hazard::Solvent, Hazard::AirSpunBearing, Hazard::Splinters],
        }
    }
}

impl Operation {
    /// What can hurt whoever does this: those of its kind that its fields do not rule out.
    pub fn hazards(&self) -> Vec<Hazard> {
        let of_kind = self.kind().hazards();
        match self {
            Self::Clean { what, .. } => what.hazards().to_vec(),
            Self::Measure { what, .. } => {
                let there = what.hazard();
                of_kind
                    .iter()
                    .copied()
                    .filter(|hazard| Some(*hazard) == there)
                    .collect()
            }
            _ => of_kind.to_vec(),
        }
    }
}

impl Measurand {
    /// What can hurt whoever measures it.
    pub const fn hazard(self) -> Option<Hazard> {
        match self {
            // The gears are turned or rocked for it.
            Self::Lash { .. }
            | Self::WheelFaceRunout {}
            | Self::WheelRadialRunout {}
            | Self::PinionRunout {}
            | Self::BreakawayTorque {}
            | Self::RollingTorque {}
            | Self::CarrierTorque {} => Some(Hazard::TurningGears),
            Self::ShimPiece { .. } | Self::ShimPack { .. } => Some(Hazard::SharpShims),
            Self::NutTorque {}
            | Self::PinionDepth {}
            | Self::PinionEndPlay {}
            | Self::CarrierEndPlay {}
            | Self::CaseSpread {}
            | Self::SeatGap { .. }
            | Self::WheelTemperature {}
            | Self::Print {}
            | Self::Plate { .. }
            | Self::MatchNumbers {} => None,
        }
    }
}
