//! The two bearings beside the wheel: the same pair, with the case that the packs spread as its spring.
//!
//! Source: our own arrangement of `pair` and `friction`; torque through the gears is divided by the ratio.

use super::friction::{self, Running};
use super::pair::OpposedPair;
use super::stiffness::AxialApproach;
use super::support::Torque;
use super::tapered::TaperedBearing;
use crate::numerics::root::RootError;

/// The side bearings of a wheel and the case around them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SideBearings {
    /// On the side of the wheel's teeth.
    pub tooth_side: TaperedBearing,
    /// Behind the wheel.
    pub back_side: TaperedBearing,
    /// How hard the case is to spread, N/mm.
    pub case_stiffness_n_per_mm: f64,
}

/// Side bearings with their packs or adjusters in place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SidePreload {
    /// Axial force in both bearings, N.
    pub preload_n: f64,
    /// Cone into cup on the tooth side, mm.
    pub tooth_side_deflection_mm: f64,
    /// Cone into cup behind the wheel, mm.
    pub back_side_deflection_mm: f64,
    /// How far the case is spread, mm.
    pub case_spread_mm: f64,
    /// End play left, mm.
    pub play_mm: f64,
}

/// What turning the pinion feels like with the wheel in place, N m at the pinion.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TotalTorque {
    /// Both pinion bearings.
    pub pinion_bearings_nm: f64,
    /// Pinion seal.
    pub seal_nm: f64,
    /// Both side bearings, through the gears.
    pub side_bearings_nm: f64,
    /// All of them.
    pub total_nm: f64,
}

impl SideBearings {
    /// Both bearings and the case as a pair.
    pub fn pair(&self) -> OpposedPair {
        OpposedPair {
            near: AxialApproach::of(&self.back_side),
            far: AxialApproach::of(&self.tooth_side),
            structure_mm_per_n: 1.0 / self.case_stiffness_n_per_mm,
        }
    }

    /// State with packs (or adjusters) together `squeeze_mm` wider than the room that leaves neither play nor preload;
    /// negative leaves play.
    ///
    /// # Errors
    /// [`RootError`] for values that are not numbers.
    pub fn squeezed_by(&self, squeeze_mm: f64) -> Result<SidePreload, RootError> {
        let pair = self.pair();
        let preload_n = pair.preload_n(squeeze_mm)?;
        Ok(SidePreload {
            preload_n,
            tooth_side_deflection_mm: pair.far.approach_mm(preload_n),
            back_side_deflection_mm: pair.near.approach_mm(preload_n),
            case_spread_mm: preload_n * pair.structure_mm_per_n,
            play_mm: if squeeze_mm < 0.0 { -squeeze_mm } else { 0.0 },
        })
    }

    /// Torque that keeps the wheel turning, N m at the wheel; `running` holds the wheel's speed.
    pub fn rolling_torque_nm(&self, preload_n: f64, running: Running) -> f64 {
        let both = [&self.tooth_side, &self.back_side].map(|b| friction::turning(b, preload_n, running).total_nmm);
        1.0e-3 * (both[0] + both[1])
    }

    /// Torque that starts the wheel turning, N m at the wheel.
    pub fn breakaway_torque_nm(&self, preload_n: f64) -> f64 {
        let both = [&self.tooth_side, &self.back_side].map(|b| friction::breakaway_nmm(b, preload_n));
        1.0e-3 * (both[0] + both[1])
    }
}

/// The rotating torque felt at the pinion with the wheel in place: pinion and seal, and the side bearings' torque over
/// the ratio, since the wheel turns that much slower. `pinion` is the pinion alone, `side_at_wheel_nm` the side
/// bearings' torque at the wheel, `ratio` z2/z1. Losses of the teeth themselves are far below what a wrench shows and
/// left out.
pub fn total_torque_at_pinion(pinion: &Torque, side_at_wheel_nm: f64, ratio: f64) -> TotalTorque {
    let pinion_bearings_nm = pinion.head_bearing_nm + pinion.tail_bearing_nm;
    let side_bearings_nm = side_at_wheel_nm / ratio;
    TotalTorque {
        pinion_bearings_nm,
        seal_nm: pinion.seal_nm,
        side_bearings_nm,
        total_nm: pinion_bearings_nm + pinion.seal_nm + side_bearings_nm,
    }
}
