//! An axle as designed: layout, gears, support, side bearings, nominal sizes.
//!
//! Source: our own definitions. The spiral angle at the outer end is that of a circular cutter's trace on the developed
//! pitch cone (cosine rule; ISO 23509:2006 has the same for face-milled gears, from memory).

use super::chain::{Chain, Moves, Nominal};
use super::error::AxleError;
use super::layout::{DepthShim, Layout};
use super::member::Member;
use crate::bearing::{BearingKind, FrictionSeries, SideBearings, Support, TaperedBearing};
use crate::gear::GearSet;
use crate::numerics::math;

/// An axle as its maker meant it to be.
#[derive(Debug, Clone, PartialEq)]
pub struct Axle {
    layout: Layout,
    depth_shim: DepthShim,
    gears: GearNumbers,
    support: Support,
    side: SideBearings,
    target: Target,
    adjuster: Adjuster,
    register: Register,
    preloaded_shift_mm: f64,
    tooth_side_give_mm: f64,
}

/// What an axle needs to know of its gears.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GearNumbers {
    /// z1.
    pub pinion_teeth: u32,
    /// z2.
    pub wheel_teeth: u32,
    /// a, mm.
    pub offset_mm: f64,
    /// d_e2/2, mm: where lash is stated.
    pub outer_pitch_radius_mm: f64,
    /// r_m2, mm.
    pub wheel_mean_radius_mm: f64,
    /// β at the outer end of the wheel's tooth, rad: between its trace and the pitch cone's generator.
    pub outer_spiral_angle_rad: f64,
    /// Mean of the two flanks' pressure angles, rad.
    pub pressure_angle_rad: f64,
    /// From the wheel's axis to the end of the pinion's head at the designed place, mm: where depth is gauged.
    pub pinion_head_distance_mm: f64,
    /// From the wheel's axis to the back of the pinion's head at the designed place, mm.
    pub pinion_back_distance_mm: f64,
}

/// The state that the designer had in mind: at it, with all sizes nominal, the gears stand at their designed places.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Target {
    /// Preload of the pinion's pair, N.
    pub pinion_preload_n: f64,
    /// How much wider than their room the side stacks are, both together, mm.
    pub side_squeeze_mm: f64,
}

/// A threaded ring beside a side bearing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Adjuster {
    /// Thread, mm a turn.
    pub pitch_mm: f64,
    /// Slots around the ring that the lock can fall into.
    pub slots: u32,
}

/// Where the wheel sits on its carrier.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Register {
    /// Diameter, mm.
    pub diameter_mm: f64,
    /// Hottest the wheel may be made, °C.
    pub limit_c: f64,
}

impl Adjuster {
    /// A ring that most axles of this world have.
    pub const USUAL: Self = Self {
        pitch_mm: 1.5,
        slots: 18,
    };

    /// Turn from one slot to the next, degrees.
    pub fn notch_deg(&self) -> f64 {
        360.0 / f64::from(if self.slots > 0 { self.slots } else { 1 })
    }

    /// Travel for a turn, mm.
    pub fn travel_mm(&self, angle_deg: f64) -> f64 {
        self.pitch_mm * angle_deg / 360.0
    }
}

impl Axle {
    /// An axle of these parts. `depth_shim` must be one that the layout can have, and the support's spacer of its kind.
    ///
    /// # Errors
    /// [`AxleError`] for parts that do not belong together and for targets that are not numbers.
    pub fn new(
        layout: Layout,
        depth_shim: DepthShim,
        gears: &GearSet,
        support: Support,
        side: SideBearings,
        target: Target,
    ) -> Result<Self, AxleError> {
        if !layout.depth_shims().contains(&depth_shim) {
            return Err(AxleError::NoSuchShim { layout, depth_shim });
        }
        if layout.has_sleeve() != support.has_sleeve() {
            return Err(AxleError::OtherSpacer { layout });
        }
        if !(target.pinion_preload_n >= 0.0 && target.pinion_preload_n <= 1.0e6 && target.side_squeeze_mm.abs() <= 5.0)
        {
            return Err(AxleError::Target);
        }
        let force_n = target.pinion_preload_n;
        let pair = support.pair();
        let side_force_n = side.pair().preload_n(target.side_squeeze_mm)?;
        let preloaded_shift_mm = pair.near.approach_mm(force_n) + 0.5 * pair.structure_mm_per_n * force_n;
        let tooth_side_give_mm =
            side.pair().far.approach_mm(side_force_n) + 0.5 * side_force_n * side.pair().structure_mm_per_n;
        let gears = GearNumbers::of(gears);
        Ok(Self {
            layout,
            depth_shim,
            register: Register {
                diameter_mm: 1.1 * gears.outer_pitch_radius_mm,
                limit_c: crate::bearing::fit::WHEEL_HEAT_LIMIT_C,
            },
            gears,
            support,
            side,
            target,
            adjuster: Adjuster::USUAL,
            preloaded_shift_mm,
            tooth_side_give_mm,
        })
    }

    /// Its layout.
    pub fn layout(&self) -> Layout {
        self.layout
    }

    /// Where its depth shim lies.
    pub fn depth_shim(&self) -> DepthShim {
        self.depth_shim
    }

    /// Its gears in numbers.
    pub fn gears(&self) -> &GearNumbers {
        &self.gears
    }

    /// Its pinion support as drawn.
    pub fn support(&self) -> &Support {
        &self.support
    }

    /// Its side bearings as drawn.
    pub fn side(&self) -> &SideBearings {
        &self.side
    }

    /// What it is meant to be set to.
    pub fn target(&self) -> Target {
        self.target
    }

    /// Its side adjusters, where it has any.
    pub fn adjuster(&self) -> &Adjuster {
        &self.adjuster
    }

    /// Where its wheel sits.
    pub fn register(&self) -> &Register {
        &self.register
    }

    /// Its dimension chain.
    pub fn chain(&self) -> Chain {
        Chain::of(self.layout)
    }

    /// The member that the depth shim is.
    pub fn depth_shim_member(&self) -> Member {
        match self.depth_shim {
            DepthShim::Head => Member::HeadShim,
            DepthShim::Cup => Member::CupShim,
            DepthShim::Cartridge => Member::CartridgeShim,
        }
    }

    /// How far the designed preload moves the pinion outward, mm; the housing's nominal depth allows for it.
    pub fn preloaded_shift_mm(&self) -> f64 {
        self.preloaded_shift_mm
    }

    /// How far the tooth side gives under the designed side preload, mm; the seats' nominal places allow for it.
    pub fn tooth_side_give_mm(&self) -> f64 {
        self.tooth_side_give_mm
    }

    /// Nominal size of a member, mm; none where this axle has no such part.
    pub fn nominal_mm(&self, member: Member) -> Option<f64> {
        let chain = self.chain();
        let link = chain.link(member)?;
        let depth_shims = [Member::HeadShim, Member::CupShim, Member::CartridgeShim];
        if depth_shims.contains(&member) && member != self.depth_shim_member() {
            return None;
        }
        match link.nominal {
            Nominal::Size(size) => Some(size),
            Nominal::Closes => Some(self.closing_mm(member)),
        }
    }

    /// Nominal size of a member that closes the chain: what it takes beside the fixed sizes.
    fn closing_mm(&self, member: Member) -> f64 {
        let chain = self.chain();
        // Sum of the fixed nominal sizes that move the same thing, with the sign that has them balance this member.
        let rest = |moves: Moves| {
            let own = chain.per_unit(member, moves);
            let fixed: f64 = chain
                .links()
                .filter(|l| l.member != Member::SetUpHeadStand && l.member != Member::SetUpTailStand)
                .filter_map(|l| match l.nominal {
                    Nominal::Size(size) => self
                        .nominal_mm(l.member)
                        .map(|_| size * chain.per_unit(l.member, moves)),
                    Nominal::Closes => None,
                })
                .sum();
            -own * fixed
        };
        match member {
            Member::HousingDepth | Member::CartridgeFace => {
                rest(Moves::PinionAxial) + self.gears.pinion_back_distance_mm - self.preloaded_shift_mm
            }
            Member::ToothSideSeat => rest(Moves::ToothStack) - self.tooth_side_give_mm,
            Member::BackSideSeat => rest(Moves::BackStack) - self.target.side_squeeze_mm + self.tooth_side_give_mm,
            Member::SpacerLength => {
                let shims = self.nominal_mm(Member::SpacerShims).unwrap_or(0.0);
                self.support.spacer.free_length_mm - shims
            }
            Member::Offset => self.gears.offset_mm,
            _ => 0.0,
        }
    }

    /// z2/z1.
    pub fn ratio(&self) -> f64 {
        f64::from(self.gears.wheel_teeth) / f64::from(self.gears.pinion_teeth)
    }
}

impl GearNumbers {
    /// Of a gear set.
    pub fn of(set: &GearSet) -> Self {
        let (design, pitch, blank) = (set.design(), set.pitch(), set.blank());
        // The trace of a circular cutter on the developed pitch cone: cosine rule at the mean point gives the distance of
        // the cutter's centre from the apex, and once more at the outer end the angle.
        let (mean, outer) = (pitch.wheel_cone_distance_mm, blank.wheel_outer_cone_distance_mm);
        let cutter = design.cutter_radius_mm;
        let centre_squared =
            mean * mean + cutter * cutter - 2.0 * mean * cutter * math::sin(pitch.wheel_spiral_angle_rad);
        let sine = (outer * outer + cutter * cutter - centre_squared) / (2.0 * outer * cutter);
        let [toe, heel] = blank.pinion_face.ends_mm;
        Self {
            pinion_teeth: design.pinion_teeth,
            wheel_teeth: design.wheel_teeth,
            offset_mm: design.offset_mm,
            outer_pitch_radius_mm: 0.5 * design.wheel_outer_pitch_diameter_mm,
            wheel_mean_radius_mm: pitch.wheel_mean_radius_mm,
            outer_spiral_angle_rad: math::asin(sine.clamp(-1.0, 1.0)),
            pressure_angle_rad: (0.5 * (design.pressure_angle_drive_deg + design.pressure_angle_coast_deg))
                .to_radians(),
            pinion_head_distance_mm: toe.floor(),
            pinion_back_distance_mm: heel.ceil() + 4.0,
        }
    }
}

/// Side bearings and case of an axle for a wheel of this outer pitch diameter: three sizes, all numbers invented.
///
/// The cases are as stiff as published spreads ask for: 0.15 to 0.25 mm of packs together come to 2 to 7 kN and are felt
/// at the pinion with the few tenths of a newton metre that the trade looks for.
pub fn usual_side_bearings(wheel_outer_pitch_diameter_mm: f64) -> SideBearings {
    let (bore_mm, outside_diameter_mm, roller_count, roller_length_mm, case_stiffness_n_per_mm) =
        if wheel_outer_pitch_diameter_mm < 200.0 {
            (45.0, 80.0, 20, 14.0, 12_000.0)
        } else if wheel_outer_pitch_diameter_mm < 240.0 {
            (55.0, 95.0, 22, 16.0, 20_000.0)
        } else {
            (75.0, 125.0, 24, 21.0, 36_000.0)
        };
    let bearing = TaperedBearing {
        kind: BearingKind::Tapered,
        bore_mm,
        outside_diameter_mm,
        friction: FrictionSeries::InchLm.constants(),
        steep: false,
        thrust_factor_y: 1.5,
        roller_count,
        roller_length_mm,
        friction_factor: 2.0,
    };
    SideBearings {
        tooth_side: bearing,
        back_side: bearing,
        case_stiffness_n_per_mm,
    }
}
