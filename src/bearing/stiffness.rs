//! How far tapered rollers give way: line contact, axial approach of a whole bearing, load zone.
//!
//! All rings are taken as rigid and all rollers as loaded. Forces N, lengths mm.
//!
//! Source: Rolling Bearings, CAT. No. E1102, 15.1 (approach of a bearing); A. Palmgren's line contact as in T. A.
//! Harris, Rolling Bearing Analysis; ISO/TS 16281 (roller between raceways); Technical Report E728g, 5.1 (load
//! zone).

use super::tapered::{BearingKind, TaperedBearing};
use crate::numerics::math;

/// Exponent of force in the approach of a line contact: δ ∝ F^0.9.
pub const APPROACH_EXPONENT: f64 = 0.9;

/// Axial approach of one bearing, δ = C F^0.9, with its coefficient worked out.
///
/// Source: Rolling Bearings, CAT. No. E1102, 15.1 (2): δ_a = 0.000077 F_a^0.9/((sin α)^1.9 Z^0.9 `L_we`^0.8), mm and N.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AxialApproach {
    /// C in δ = C F^0.9, mm/N^0.9.
    pub coefficient: f64,
}

impl AxialApproach {
    /// Of the bearing with rings taken as rigid.
    pub fn of(bearing: &TaperedBearing) -> Self {
        match bearing.kind {
            BearingKind::Tapered => Self::of_line_contact(bearing),
        }
    }

    fn of_line_contact(bearing: &TaperedBearing) -> Self {
        let rollers = math::pow(f64::from(bearing.roller_count), 0.9);
        let angle = math::pow(bearing.sin_contact_angle(), 1.9);
        let length = math::pow(bearing.roller_length_mm, 0.8);
        Self {
            coefficient: 0.000_077 / (angle * rollers * length),
        }
    }

    /// δ under the axial force, mm; 0 for no force or a pull (cups do not hold on to cones).
    pub fn approach_mm(self, axial_n: f64) -> f64 {
        if axial_n > 0.0 {
            self.coefficient * math::pow(axial_n, APPROACH_EXPONENT)
        } else {
            0.0
        }
    }

    /// Force that brings cup and cone together by `approach_mm`, N; 0 when they stand apart.
    pub fn force_n(self, approach_mm: f64) -> f64 {
        if approach_mm > 0.0 {
            math::pow(approach_mm / self.coefficient, 1.0 / APPROACH_EXPONENT)
        } else {
            0.0
        }
    }

    /// Work stored under the axial force, N mm: ∫ F dδ = (0.9/1.9) F δ.
    pub fn stored_energy_nmm(self, axial_n: f64) -> f64 {
        APPROACH_EXPONENT / (1.0 + APPROACH_EXPONENT) * axial_n * self.approach_mm(axial_n)
    }

    /// dF/dδ = F/(0.9 δ), N/mm, for a force above 0.
    pub fn stiffness_n_per_mm(self, axial_n: f64) -> f64 {
        axial_n / (APPROACH_EXPONENT * self.approach_mm(axial_n))
    }
}

/// Approach of one steel line contact, mm: δ = 3.84e-5 Q^0.9/l^0.8 (Palmgren; Harris).
pub fn line_contact_approach_mm(force_n: f64, length_mm: f64) -> f64 {
    3.84e-5 * math::pow(force_n, 0.9) / math::pow(length_mm, 0.8)
}

/// Approach of a roller between both raceways, mm: Q = 35948 `L_we`^(8/9) δ^(10/9) (ISO/TS 16281).
pub fn roller_approach_mm(force_n: f64, length_mm: f64) -> f64 {
    math::pow(force_n / (35_948.0 * math::pow(length_mm, 8.0 / 9.0)), 0.9)
}

/// Integrals of a load zone that covers the share ε of the diameter: Fr = Z `Q_max` cos α · radial and
/// Fa = Z `Q_max` sin α · axial.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LoadZone {
    /// `J_r`(ε).
    pub radial: f64,
    /// `J_a`(ε).
    pub axial: f64,
}

/// Load zone integrals for contacts with Q ∝ δ^`exponent` (10/9 line contact, 3/2 point contact); ε > 0, 0.5 is half
/// the circumference, above 1 all of it.
///
/// Source of the form: Technical Report E728g, 5.1; (1 − (1 − cos ψ)/(2 ε))^t over the loaded arc.
pub fn load_zone(share_of_diameter: f64, exponent: f64) -> LoadZone {
    // The loaded arc ends where the bracket vanishes. Substituting ψ = end · sin u flattens the integrand there, so
    // that Simpson's rule with this many strips is good to 1e-7.
    const STRIPS: u32 = 512;
    let cos_end = 1.0 - 2.0 * share_of_diameter;
    let end_rad = if cos_end <= -1.0 {
        std::f64::consts::PI
    } else {
        math::acos(cos_end)
    };
    let (mut radial, mut axial) = (0.0, 0.0);
    for i in 0..=STRIPS {
        let weight = if i == 0 || i == STRIPS {
            1.0
        } else if i % 2 == 1 {
            4.0
        } else {
            2.0
        };
        let (sin_u, cos_u) = math::sin_cos(std::f64::consts::FRAC_PI_2 * f64::from(i) / f64::from(STRIPS));
        let cos_psi = math::cos(end_rad * sin_u);
        let bracket = 1.0 - (1.0 - cos_psi) / (2.0 * share_of_diameter);
        if bracket > 0.0 {
            let load = weight * end_rad * cos_u * math::pow(bracket, exponent);
            radial += load * cos_psi;
            axial += load;
        }
    }
    // Simpson's third of the strip, both halves of the zone, over the full circle.
    let scale = std::f64::consts::FRAC_PI_2 / f64::from(STRIPS) / 3.0 / std::f64::consts::PI;
    LoadZone {
        radial: radial * scale,
        axial: axial * scale,
    }
}

/// `Q_max` Z/Fr of a radial roller bearing without clearance and with `roller_count` discrete rollers, one of them at
/// the middle of the zone: Z/Σ cos^(1+t) ψ over the loaded half, t = 10/9.
pub fn greatest_roller_share(roller_count: u32) -> f64 {
    let mut sum = 0.0;
    for i in 0..roller_count {
        let cos_psi = math::cos(2.0 * std::f64::consts::PI * f64::from(i) / f64::from(roller_count));
        if cos_psi > 0.0 {
            sum += math::pow(cos_psi, 1.0 + 10.0 / 9.0);
        }
    }
    f64::from(roller_count) / sum
}
