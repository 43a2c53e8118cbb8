//! One tapered roller bearing: what its catalogue row says, and what follows from it by geometry.
//!
//! Source: ISO 281 (contact angle from Y, ratings); Engineering Manual for tapered roller bearings (K); Technical Report
//! E728g, 7.2 (roller forces).

use super::friction_constants::FrictionConstants;
use crate::numerics::math;

/// How a bearing rolls: its approach under thrust and its friction follow formulas of its own.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum BearingKind {
    /// Tapered rollers in line contact.
    #[default]
    Tapered,
}

/// A single-row tapered roller bearing as a catalogue lists it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TaperedBearing {
    /// How it rolls.
    pub kind: BearingKind,
    /// d, bore of the cone, mm.
    pub bore_mm: f64,
    /// D, outside diameter of the cup, mm.
    pub outside_diameter_mm: f64,
    /// Constants of its friction moment.
    pub friction: FrictionConstants,
    /// Whether its starting torque may be up to four times higher than computed, as the source of the friction table says
    /// of steep bearings.
    pub steep: bool,
    /// Y, thrust factor; Y = 0.4 cot α.
    pub thrust_factor_y: f64,
    /// Z, number of rollers.
    pub roller_count: u32,
    /// L_we, effective length of a roller, mm.
    pub roller_length_mm: f64,
    /// Friction as a multiple of that of a seated, run-in bearing: 1 run-in, more when new.
    pub friction_factor: f64,
}

impl TaperedBearing {
    /// d_m = (d + D)/2, mm.
    pub fn mean_diameter_mm(&self) -> f64 {
        0.5 * (self.bore_mm + self.outside_diameter_mm)
    }

    /// α, contact angle of the cup in radians, from Y = 0.4 cot α (ISO 281).
    pub fn contact_angle_rad(&self) -> f64 {
        math::atan2(0.4, self.thrust_factor_y)
    }

    /// sin α without the detour over the angle: tan α = 0.4/Y.
    pub(super) fn sin_contact_angle(&self) -> f64 {
        0.4 / (0.16 + self.thrust_factor_y * self.thrust_factor_y).sqrt()
    }

    /// The same bearing with another friction factor: new, run-in, dry.
    #[must_use]
    pub fn with_friction_factor(self, friction_factor: f64) -> Self {
        Self {
            friction_factor,
            ..self
        }
    }
}

/// K, ratio of radial rating to thrust rating, from the contact angle: K = 0.389 cot α (ISO 281; the manual).
pub fn rating_ratio_k(contact_angle_rad: f64) -> f64 {
    0.389 / math::tan(contact_angle_rad)
}

/// Rating for one million revolutions from the rating for ninety, both N: C1 = 90^(3/10) C90 (ISO 281 exponent 10/3).
pub fn rating_one_million_n(rating_ninety_million_n: f64) -> f64 {
    math::pow(90.0, 0.3) * rating_ninety_million_n
}

/// Forces on one roller of a bearing under pure thrust, N.
///
/// Source: Technical Report E728g, 7.2: `Q_e` = F_a/(Z sin α), `Q_i` = `Q_e` cos 2β, `Q_f` = `Q_e` sin 2β.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RollerForces {
    /// `Q_e`, cup on roller.
    pub cup_n: f64,
    /// `Q_i`, cone raceway on roller.
    pub cone_n: f64,
    /// `Q_f`, guide rib of the cone on the roller's end.
    pub rib_n: f64,
}

/// Forces on one of `roller_count` rollers under the thrust `axial_n`; `half_roller_angle_rad` is β, half the angle
/// of the roller's cone.
pub fn roller_forces(
    axial_n: f64,
    roller_count: u32,
    contact_angle_rad: f64,
    half_roller_angle_rad: f64,
) -> RollerForces {
    let cup_n = axial_n / (f64::from(roller_count) * math::sin(contact_angle_rad));
    let (sin_2b, cos_2b) = math::sin_cos(2.0 * half_roller_angle_rad);
    RollerForces {
        cup_n,
        cone_n: cup_n * cos_2b,
        rib_n: cup_n * sin_2b,
    }
}
