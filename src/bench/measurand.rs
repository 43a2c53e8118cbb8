//! What can be measured on an axle.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::choices::{Ring, ShimPlace};
use super::reading::{ReadingPart, Unit};

/// A quantity of the axle at hand. Values are in mm, N m, °C unless a variant says otherwise.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "quantity", rename_all = "snake_case", deny_unknown_fields)]
pub enum Measurand {
    /// Lash with this tooth of the wheel in mesh, by dial, the pinion held.
    Lash {
        /// Number of the wheel's tooth, from 0.
        tooth: u32,
    },
    /// Face runout of the wheel's back, total over a turn, by dial.
    WheelFaceRunout {},
    /// Radial runout of the wheel's teeth, total over a turn, by dial.
    WheelRadialRunout {},
    /// Radial runout of the pinion, total over a turn, by dial.
    PinionRunout {},
    /// Torque on the pinion nut, read off the wrench while it turns the nut.
    NutTorque {},
    /// Torque that starts the pinion, at its nut.
    BreakawayTorque {},
    /// Torque that keeps the pinion turning, at its nut: the pinion alone while the carrier is out, else the total.
    RollingTorque {},
    /// Torque that keeps the carrier turning by itself, at the wheel.
    CarrierTorque {},
    /// From the wheel's axis to the end of the pinion's head, by arbor and gauge.
    PinionDepth {},
    /// End play of the pinion, by dial.
    PinionEndPlay {},
    /// End play of the carrier, by dial.
    CarrierEndPlay {},
    /// How far the case is spread, by dial.
    CaseSpread {},
    /// Thickness of a piece from the shim kit, by micrometer.
    ShimPiece {
        /// Its number in the kit.
        piece: u32,
    },
    /// Thickness of the pack in a place, by micrometer, while it lies on the bench before it is fitted.
    ShimPack {
        /// Where it goes.
        place: ShimPlace,
    },
    /// Gap behind a ring, by feeler.
    SeatGap {
        /// Which.
        ring: Ring,
    },
    /// Temperature of the wheel.
    WheelTemperature {},
    /// The print on the drive and coast flanks of the painted teeth, by eye.
    Print {},
    /// The print on a painted plate beside the bench, by eye.
    Plate {
        /// Its number, from 0.
        plate: u32,
    },
    /// Numbers etched on both gears and the mark on the pinion's head: what `compare_numbers` leaves on record.
    MatchNumbers {},
}

impl Measurand {
    /// Its name in operations: the value of `quantity`.
    pub const fn name(&self) -> &'static str {
        self.kind().key()
    }

    /// Unit of its values.
    pub const fn unit(&self) -> Unit {
        match self {
            Self::NutTorque {} | Self::BreakawayTorque {} | Self::RollingTorque {} | Self::CarrierTorque {} => {
                Unit::NewtonMeter
            }
            Self::WheelTemperature {} => Unit::Celsius,
            Self::Print {} | Self::Plate { .. } | Self::MatchNumbers {} => Unit::One,
            Self::Lash { .. }
            | Self::WheelFaceRunout {}
            | Self::WheelRadialRunout {}
            | Self::PinionRunout {}
            | Self::PinionDepth {}
            | Self::PinionEndPlay {}
            | Self::CarrierEndPlay {}
            | Self::CaseSpread {}
            | Self::ShimPiece { .. }
            | Self::ShimPack { .. }
            | Self::SeatGap { .. } => Unit::Millimeter,
        }
    }

    /// The one of its values that it is named after; none where it is several: prints and what is etched.
    pub const fn main_part(&self) -> Option<ReadingPart> {
        Some(match self {
            Self::Lash { .. } => ReadingPart::Lash,
            Self::WheelFaceRunout {} | Self::WheelRadialRunout {} | Self::PinionRunout {} => {
                ReadingPart::TotalIndicatorReading
            }
            Self::NutTorque {} => ReadingPart::NutTorque,
            Self::BreakawayTorque {} => ReadingPart::Breakaway,
            Self::RollingTorque {} | Self::CarrierTorque {} => ReadingPart::Rolling,
            Self::PinionDepth {} => ReadingPart::Distance,
            Self::PinionEndPlay {} | Self::CarrierEndPlay {} | Self::CaseSpread {} => ReadingPart::Travel,
            Self::ShimPiece { .. } | Self::ShimPack { .. } => ReadingPart::Thickness,
            Self::SeatGap { .. } => ReadingPart::ThickestLeaf,
            Self::WheelTemperature {} => ReadingPart::Temperature,
            Self::Print {} | Self::Plate { .. } | Self::MatchNumbers {} => return None,
        })
    }
}

/// Which quantity it is, without the tooth, piece or place.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum MeasurandKind {
    /// Lash at a tooth.
    Lash,
    /// Face runout of the wheel.
    WheelFaceRunout,
    /// Radial runout of the wheel.
    WheelRadialRunout,
    /// Radial runout of the pinion.
    PinionRunout,
    /// Torque on the pinion nut.
    NutTorque,
    /// Torque that starts the pinion.
    BreakawayTorque,
    /// Torque that keeps the pinion turning.
    RollingTorque,
    /// Torque that keeps the carrier turning.
    CarrierTorque,
    /// Place of the pinion's head.
    PinionDepth,
    /// End play of the pinion.
    PinionEndPlay,
    /// End play of the carrier.
    CarrierEndPlay,
    /// Spread of the case.
    CaseSpread,
    /// Thickness of a piece.
    ShimPiece,
    /// Thickness of a pack.
    ShimPack,
    /// Gap behind a ring.
    SeatGap,
    /// Temperature of the wheel.
    WheelTemperature,
    /// Print on the teeth.
    Print,
    /// Print on a painted plate.
    Plate,
    /// Numbers and mark etched on the gears.
    MatchNumbers,
}

impl MeasurandKind {
    /// All of them, in the order of their numbers.
    pub const ALL: [Self; 19] = [
        Self::Lash,
        Self::WheelFaceRunout,
        Self::WheelRadialRunout,
        Self::PinionRunout,
        Self::NutTorque,
        Self::BreakawayTorque,
        Self::RollingTorque,
        Self::CarrierTorque,
        Self::PinionDepth,
        Self::PinionEndPlay,
        Self::CarrierEndPlay,
        Self::CaseSpread,
        Self::ShimPiece,
        Self::ShimPack,
        Self::SeatGap,
        Self::WheelTemperature,
        Self::Print,
        Self::Plate,
        Self::MatchNumbers,
    ];

    /// Its name in files: the value of `quantity`.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Lash => "lash",
            Self::WheelFaceRunout => "wheel_face_runout",
            Self::WheelRadialRunout => "wheel_radial_runout",
            Self::PinionRunout => "pinion_runout",
            Self::NutTorque => "nut_torque",
            Self::BreakawayTorque => "breakaway_torque",
            Self::RollingTorque => "rolling_torque",
            Self::CarrierTorque => "carrier_torque",
            Self::PinionDepth => "pinion_depth",
            Self::PinionEndPlay => "pinion_end_play",
            Self::CarrierEndPlay => "carrier_end_play",
            Self::CaseSpread => "case_spread",
            Self::ShimPiece => "shim_piece",
            Self::ShimPack => "shim_pack",
            Self::SeatGap => "seat_gap",
            Self::WheelTemperature => "wheel_temperature",
            Self::Print => "print",
            Self::Plate => "plate",
            Self::MatchNumbers => "match_numbers",
        }
    }
}

impl Measurand {
    /// Which quantity it is.
    pub const fn kind(&self) -> MeasurandKind {
        match self {
            Self::Lash { .. } => MeasurandKind::Lash,
            Self::WheelFaceRunout {} => MeasurandKind::WheelFaceRunout,
            Self::WheelRadialRunout {} => MeasurandKind::WheelRadialRunout,
            Self::PinionRunout {} => MeasurandKind::PinionRunout,
            Self::NutTorque {} => MeasurandKind::NutTorque,
            Self::BreakawayTorque {} => MeasurandKind::BreakawayTorque,
            Self::RollingTorque {} => MeasurandKind::RollingTorque,
            Self::CarrierTorque {} => MeasurandKind::CarrierTorque,
            Self::PinionDepth {} => MeasurandKind::PinionDepth,
            Self::PinionEndPlay {} => MeasurandKind::PinionEndPlay,
            Self::CarrierEndPlay {} => MeasurandKind::CarrierEndPlay,
            Self::CaseSpread {} => MeasurandKind::CaseSpread,
            Self::ShimPiece { .. } => MeasurandKind::ShimPiece,
            Self::ShimPack { .. } => MeasurandKind::ShimPack,
            Self::SeatGap { .. } => MeasurandKind::SeatGap,
            Self::WheelTemperature {} => MeasurandKind::WheelTemperature,
            Self::Print {} => MeasurandKind::Print,
            Self::Plate { .. } => MeasurandKind::Plate,
            Self::MatchNumbers {} => MeasurandKind::MatchNumbers,
        }
    }
}
