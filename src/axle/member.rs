//! Members of the dimension chain: every size that decides where the gears stand.

/// One size in the chain. Values are deviations from nominal, mm (rad for [`Member::Squareness`]).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Member {
    /// Wheel axis to the shoulder of the head cup, in a one-piece housing.
    HousingDepth,
    /// Wheel axis to the face that the cartridge is bolted to.
    CartridgeFace,
    /// Flange of the cartridge to the shoulder of its head cup.
    CartridgeDepth,
    /// Between the shoulders of the two pinion cups.
    ShoulderDistance,
    /// Stand of the head bearing: back of cone to back of cup.
    HeadBearingStand,
    /// Stand of the tail bearing.
    TailBearingStand,
    /// Stand of the set-up bearing used in place of the head bearing.
    SetUpHeadStand,
    /// Stand of the set-up bearing used in place of the tail bearing.
    SetUpTailStand,
    /// How much farther from the wheel axis than nominal this pinion runs best: what its mark ought to say.
    PinionMark,
    /// Free length of the spacer (or sleeve) itself.
    SpacerLength,
    /// Between the two axes.
    Offset,
    /// Of the pinion's bore to the wheel's axis: positive opens the shaft angle, rad.
    Squareness,
    /// Seat of the tooth-side bearing in the case, outward from the middle.
    ToothSideSeat,
    /// Seat of the bearing behind the wheel in the case, outward from the middle.
    BackSideSeat,
    /// Carrier from the wheel's seat to the cone on the tooth side.
    CarrierToothSide,
    /// Carrier from the wheel's seat to the cone behind the wheel.
    CarrierBackSide,
    /// Stand of the side bearing on the tooth side.
    ToothBearingStand,
    /// Stand of the side bearing behind the wheel.
    BackBearingStand,
    /// Wheel from its seat to its teeth.
    WheelThickness,
    /// Half the face runout of the wheel's seat on the carrier.
    WheelFaceRunout,
    /// Half the radial runout of the wheel.
    WheelRadialRunout,
    /// Half the face runout that a chip or burr under the wheel makes.
    WheelSeatChip,
    /// Half the radial runout of the pinion.
    PinionRunout,
    /// How far the wheel floats from the pinion along the pinion's axis while its caps are not torqued.
    CapFloat,
    /// How far the wheel is moved the same way by caps that were changed round.
    CapMismatch,
    /// Depth shim between head and cone.
    HeadShim,
    /// Depth shim under the head cup.
    CupShim,
    /// Depth shim between cartridge and case.
    CartridgeShim,
    /// Gap behind a head cone that is not home.
    HeadConeGap,
    /// Gap behind a head cup that is not home.
    HeadCupGap,
    /// Gap behind a tail cup that is not home.
    TailCupGap,
    /// Shims beside the solid spacer.
    SpacerShims,
    /// Shims beside the bearing on the tooth side.
    ToothSideShim,
    /// Shims beside the bearing behind the wheel.
    BackSideShim,
    /// Adjuster on the tooth side, screwed inward.
    ToothSideAdjuster,
    /// Adjuster behind the wheel, screwed inward.
    BackSideAdjuster,
    /// Half the face runout of a wheel that was drawn on crookedly.
    WheelTilt,
    /// How far a spreader holds the case open.
    CaseSpreader,
}

impl Member {
    /// All members, in the order of their numbers.
    pub const ALL: [Self; 38] = [
        Self::HousingDepth,
        Self::CartridgeFace,
        Self::CartridgeDepth,
        Self::ShoulderDistance,
        Self::HeadBearingStand,
        Self::TailBearingStand,
        Self::SetUpHeadStand,
        Self::SetUpTailStand,
        Self::PinionMark,
        Self::SpacerLength,
        Self::Offset,
        Self::Squareness,
        Self::ToothSideSeat,
        Self::BackSideSeat,
        Self::CarrierToothSide,
        Self::CarrierBackSide,
        Self::ToothBearingStand,
        Self::BackBearingStand,
        Self::WheelThickness,
        Self::WheelFaceRunout,
        Self::WheelRadialRunout,
        Self::WheelSeatChip,
        Self::PinionRunout,
        Self::CapFloat,
        Self::CapMismatch,
        Self::HeadShim,
        Self::CupShim,
        Self::CartridgeShim,
        Self::HeadConeGap,
        Self::HeadCupGap,
        Self::TailCupGap,
        Self::SpacerShims,
        Self::ToothSideShim,
        Self::BackSideShim,
        Self::ToothSideAdjuster,
        Self::BackSideAdjuster,
        Self::WheelTilt,
        Self::CaseSpreader,
    ];

    /// Its name in files.
    pub fn name(self) -> &'static str {
        match self {
            Self::HousingDepth => "housing_depth",
            Self::CartridgeFace => "cartridge_face",
            Self::CartridgeDepth => "cartridge_depth",
            Self::ShoulderDistance => "shoulder_distance",
            Self::HeadBearingStand => "head_bearing_stand",
            Self::TailBearingStand => "tail_bearing_stand",
            Self::SetUpHeadStand => "set_up_head_stand",
            Self::SetUpTailStand => "set_up_tail_stand",
            Self::PinionMark => "pinion_mark",
            Self::SpacerLength => "spacer_length",
            Self::Offset => "offset",
            Self::Squareness => "squareness",
            Self::ToothSideSeat => "tooth_side_seat",
            Self::BackSideSeat => "back_side_seat",
            Self::CarrierToothSide => "carrier_tooth_side",
            Self::CarrierBackSide => "carrier_back_side",
            Self::ToothBearingStand => "tooth_bearing_stand",
            Self::BackBearingStand => "back_bearing_stand",
            Self::WheelThickness => "wheel_thickness",
            Self::WheelFaceRunout => "wheel_face_runout",
            Self::WheelRadialRunout => "wheel_radial_runout",
            Self::WheelSeatChip => "wheel_seat_chip",
            Self::PinionRunout => "pinion_runout",
            Self::CapFloat => "cap_float",
            Self::CapMismatch => "cap_mismatch",
            Self::HeadShim => "head_shim",
            Self::CupShim => "cup_shim",
            Self::CartridgeShim => "cartridge_shim",
            Self::HeadConeGap => "head_cone_gap",
            Self::HeadCupGap => "head_cup_gap",
            Self::TailCupGap => "tail_cup_gap",
            Self::SpacerShims => "spacer_shims",
            Self::ToothSideShim => "tooth_side_shim",
            Self::BackSideShim => "back_side_shim",
            Self::ToothSideAdjuster => "tooth_side_adjuster",
            Self::BackSideAdjuster => "back_side_adjuster",
            Self::WheelTilt => "wheel_tilt",
            Self::CaseSpreader => "case_spreader",
        }
    }

    /// The member of this name.
    pub fn from_name(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|m| m.name() == name)
    }

    /// Whether its size is decided by what is fitted ([`super::Assembly`]) and not by how parts were made
    /// ([`super::Truth`]).
    pub fn is_fitted(self) -> bool {
        self >= Self::HeadShim
    }
}

/// One number for each member; 0 where nothing was said.
#[derive(Debug, Clone, PartialEq)]
pub struct PerMember([f64; Member::ALL.len()]);

impl Default for PerMember {
    fn default() -> Self {
        Self([0.0; Member::ALL.len()])
    }
}

impl PerMember {
    /// The number of a member.
    pub fn get(&self, member: Member) -> f64 {
        self.0.get(member as usize).copied().unwrap_or(0.0)
    }

    /// Sets the number of a member.
    pub fn set(&mut self, member: Member, value: f64) {
        if let Some(place) = self.0.get_mut(member as usize) {
            *place = value;
        }
    }

    /// The same with another number for one member.
    #[must_use]
    pub fn with(mut self, member: Member, value: f64) -> Self {
        self.set(member, value);
        self
    }

    /// All members with their numbers, in order.
    pub fn iter(&self) -> impl Iterator<Item = (Member, f64)> + '_ {
        Member::ALL.into_iter().zip(self.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_and_names_go_both_ways() {
        for (number, member) in Member::ALL.into_iter().enumerate() {
            assert_eq!(member as usize, number, "{member:?} stands at its number");
            assert_eq!(Member::from_name(member.name()), Some(member), "{member:?} by name");
        }
        assert_eq!(Member::from_name("nothing"), None, "no such member");
    }
}
