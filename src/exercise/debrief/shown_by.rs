//! Which quantities show a hidden size.

use crate::axle::Member;
use crate::bench::MeasurandKind;

const DEPTH: &[MeasurandKind] = &[MeasurandKind::PinionDepth, MeasurandKind::Print];
const PRELOAD: &[MeasurandKind] = &[MeasurandKind::RollingTorque, MeasurandKind::PinionEndPlay];
const DEPTH_AND_PRELOAD: &[MeasurandKind] = &[
    MeasurandKind::PinionDepth,
    MeasurandKind::Print,
    MeasurandKind::RollingTorque,
    MeasurandKind::PinionEndPlay,
];
const SIDES: &[MeasurandKind] = &[MeasurandKind::Lash, MeasurandKind::CarrierEndPlay];
const FACE: &[MeasurandKind] = &[MeasurandKind::WheelFaceRunout, MeasurandKind::Lash];

/// Quantities that show a member, by itself or mixed with others.
pub(super) fn shown_by(member: Member) -> &'static [MeasurandKind] {
    match member {
        Member::HousingDepth | Member::CartridgeFace | Member::CartridgeDepth | Member::SetUpHeadStand => DEPTH,
        Member::ShoulderDistance | Member::TailBearingStand | Member::SetUpTailStand | Member::SpacerLength => PRELOAD,
        Member::HeadBearingStand => DEPTH_AND_PRELOAD,
        Member::PinionMark => &[MeasurandKind::MatchNumbers, MeasurandKind::Print],
        Member::Offset | Member::Squareness => &[MeasurandKind::Print],
        Member::ToothSideSeat
        | Member::BackSideSeat
        | Member::CarrierToothSide
        | Member::CarrierBackSide
        | Member::ToothBearingStand
        | Member::BackBearingStand
        | Member::WheelThickness => SIDES,
        Member::WheelFaceRunout | Member::WheelSeatChip | Member::WheelTilt => FACE,
        Member::WheelRadialRunout => &[MeasurandKind::WheelRadialRunout, MeasurandKind::Lash],
        Member::PinionRunout => &[MeasurandKind::PinionRunout],
        Member::CapFloat => &[MeasurandKind::Lash],
        Member::CapMismatch => &[MeasurandKind::Lash, MeasurandKind::Print],
        Member::HeadConeGap | Member::HeadCupGap | Member::TailCupGap => &[MeasurandKind::SeatGap],
        Member::HeadShim
        | Member::CupShim
        | Member::CartridgeShim
        | Member::SpacerShims
        | Member::ToothSideShim
        | Member::BackSideShim => &[MeasurandKind::ShimPack],
        Member::ToothSideAdjuster | Member::BackSideAdjuster => &[],
        Member::CaseSpreader => &[MeasurandKind::CaseSpread],
    }
}
