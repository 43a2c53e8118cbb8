//! Other published formulas for bearing torque, each with the range in which it holds.
//!
//! They are here because a technician meets them, and because the lesson is where they fail: at hand speed all but the
//! starting formula say two to five times too little. None of them feeds the support model.
//!
//! Source: named beside each: Engineering Manual for tapered roller bearings (2011); Rolling Bearings, HR1 (2006); General
//! Catalogue of rolling bearings (2005/2008); Rolling Bearings, CAT. No. E1102; C. S. Karna, ASLE Transactions 17 (1974).

use super::tapered::TaperedBearing;
use crate::numerics::math;

/// A formula for running torque at road speed was asked about hand speed.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub struct BelowMinimumSpeed {
    /// The speed asked about, r/min.
    pub speed_rpm: f64,
    /// Lowest speed at which the formula holds, r/min.
    pub minimum_rpm: f64,
    /// What the formula would have said, N m: for lessons only.
    pub formula_would_say_nm: f64,
}

/// Geometry factors that the catalogue prints for a part.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpeedFactors {
    /// G1, of the torque.
    pub g1: f64,
    /// G2, of the lowest speed.
    pub g2: f64,
}

/// Lowest speed at which [`road_speed_torque_nm`] holds under pure thrust, r/min: `n_min` = (625/(G2 µ)) F_a^(2/3).
///
/// Source: Engineering Manual for tapered roller bearings, p. 180–182; under pure thrust f2 F_r/K is F_a. Viscosity in
/// mPa s.
pub fn minimum_speed_rpm(factors: SpeedFactors, axial_n: f64, viscosity_mpas: f64) -> f64 {
    625.0 / (factors.g2 * viscosity_mpas) * math::pow(axial_n, 2.0 / 3.0)
}

/// Running torque under pure thrust at road speed, N m: M = 2.56e-6 G1 (n µ)^0.62 F_a^0.3, run-in, in oil.
///
/// Source: Engineering Manual for tapered roller bearings, p. 180–182. Viscosity in mPa s.
///
/// # Errors
/// [`BelowMinimumSpeed`] where the source says that the formula underestimates.
pub fn road_speed_torque_nm(
    factors: SpeedFactors,
    axial_n: f64,
    speed_rpm: f64,
    viscosity_mpas: f64,
) -> Result<f64, BelowMinimumSpeed> {
    let torque_nm = 2.56e-6 * factors.g1 * math::pow(speed_rpm * viscosity_mpas, 0.62) * math::pow(axial_n, 0.3);
    let minimum_rpm = minimum_speed_rpm(factors, axial_n, viscosity_mpas);
    if speed_rpm >= minimum_rpm {
        Ok(torque_nm)
    } else {
        Err(BelowMinimumSpeed {
            speed_rpm,
            minimum_rpm,
            formula_would_say_nm: torque_nm,
        })
    }
}

/// Two-part torque of Palmgren, N mm: f0 1e-7 (ν n)^(2/3) d_m³ (160e-7 f0 d_m³ below ν n = 2000) plus f1 P1 d_m.
///
/// Source: Rolling Bearings, HR1 (2006), p. 55–60; for a single tapered bearing f1 = 0.0004 and P1 = 2 Y F_a (the latter
/// from memory).
pub fn two_part_torque_nmm(
    bearing: &TaperedBearing,
    axial_n: f64,
    speed_rpm: f64,
    viscosity_mm2_s: f64,
    f0: f64,
) -> f64 {
    let mean = bearing.mean_diameter_mm();
    let cube = mean * mean * mean;
    let flow = viscosity_mm2_s * speed_rpm;
    let viscous = if flow >= 2000.0 {
        f0 * 1.0e-7 * math::pow(flow, 2.0 / 3.0) * cube
    } else {
        160.0e-7 * f0 * cube
    };
    viscous + 0.0004 * 2.0 * bearing.thrust_factor_y * axial_n * mean
}

/// The rough rule M = µ P d/2, N mm; for P about a tenth of the rating and good lubrication only. Tapered rollers: µ
/// 0.0018, 0.0022 and 0.0017 to 0.0025 in three makers' catalogues.
pub fn constant_coefficient_torque_nmm(coefficient: f64, equivalent_load_n: f64, bore_mm: f64) -> f64 {
    0.5 * coefficient * equivalent_load_n * bore_mm
}

/// Starting torque from rib friction, N mm: M = µ_e e F_a cos β, µ_e = 0.20.
///
/// Source: Rolling Bearings, CAT. No. E1102, 15.4. e is the distance of the contact of roller end and rib from the line of
/// the cone's raceway, mm; β half the angle of the roller's cone.
pub fn rib_starting_torque_nmm(rib_arm_mm: f64, axial_n: f64, half_roller_angle_rad: f64) -> f64 {
    0.20 * rib_arm_mm * axial_n * math::cos(half_roller_angle_rad)
}

/// Power lost at one rib contact over shaft speed, N mm, from roller kinematics: what [`rib_starting_torque_nmm`] is
/// without cos β.
///
/// Rib force `Q_f` = F_a sin 2β/sin α over all rollers; the cone turns against the cage at ω sin α/(2 sin(α − β) cos β),
/// and the roller's end slides on the rib at that times e sin(α − β)/sin β.
pub fn rib_power_torque_nmm(
    coefficient: f64,
    rib_arm_mm: f64,
    axial_n: f64,
    contact_angle_rad: f64,
    half_roller_angle_rad: f64,
) -> f64 {
    let (alpha, beta) = (contact_angle_rad, half_roller_angle_rad);
    let rib_n = axial_n * math::sin(2.0 * beta) / math::sin(alpha);
    let cone_against_cage = math::sin(alpha) / (2.0 * math::sin(alpha - beta) * math::cos(beta));
    let slide = cone_against_cage * math::sin(alpha - beta) / math::sin(beta);
    coefficient * rib_n * slide * rib_arm_mm
}
