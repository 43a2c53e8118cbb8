//! Friction torque of one tapered roller bearing turned by hand.
//!
//! M = φ_ish φ_rs M_rr + M_sl (+ seal + drag), with the rolling moment M_rr = G_rr (ν n)^0.6 and the sliding moment
//! M_sl = G_sl µ_sl of roller ends against the guide rib. At hand speed the rib carries nearly everything and works in
//! boundary lubrication: the torque is then proportional to the thrust, which is why a torque wrench can tell preload.
//!
//! Source: all constants from the General Catalogue of rolling bearings (2005/2008), friction chapter; the boundary
//! coefficient 0.12 when turning and 0.15 at rest from the newer text of the same catalogue. Moments N mm, viscosity mm²/s,
//! speed r/min, forces N, diameters mm.

use super::tapered::{BearingKind, TaperedBearing};
use crate::numerics::math;

/// µ_bl while turning.
pub const BOUNDARY_COEFFICIENT_TURNING: f64 = 0.12;
/// µ_bl at rest: what must be overcome to start.
pub const BOUNDARY_COEFFICIENT_AT_REST: f64 = 0.15;
/// µ_EHL of tapered roller bearings under a full film.
pub const FULL_FILM_COEFFICIENT: f64 = 0.002;

/// The speed of the shaft and the oil between the surfaces.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Running {
    /// n, r/min, above 0.
    pub speed_rpm: f64,
    /// ν at the temperature of the bearing, mm²/s.
    pub viscosity_mm2_s: f64,
}

/// Friction of one bearing with its parts, N mm; the bearing's friction factor is in all of them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Friction {
    /// φ_ish M_rr, resistance of the oil to being rolled.
    pub rolling_nmm: f64,
    /// M_sl, roller ends sliding on the guide rib.
    pub sliding_nmm: f64,
    /// Their sum.
    pub total_nmm: f64,
    /// φ_bl, 1 when no film carries, 0 under a full film.
    pub boundary_share: f64,
}

/// G_rr = R1 d_m^2.38 (F_r + R2 Y F_a)^0.31.
pub fn rolling_moment_factor(bearing: &TaperedBearing, radial_n: f64, axial_n: f64) -> f64 {
    let c = bearing.friction;
    match bearing.kind {
        BearingKind::Tapered => {
            let load_n = radial_n + c.r2 * bearing.thrust_factor_y * axial_n;
            c.r1 * math::pow(bearing.mean_diameter_mm(), 2.38) * math::pow(load_n, 0.31)
        }
    }
}

/// G_sl = S1 d_m^0.82 (F_r + S2 Y F_a), N mm.
pub fn sliding_moment_factor_nmm(bearing: &TaperedBearing, radial_n: f64, axial_n: f64) -> f64 {
    let c = bearing.friction;
    match bearing.kind {
        BearingKind::Tapered => {
            let load_n = radial_n + c.s2 * bearing.thrust_factor_y * axial_n;
            c.s1 * math::pow(bearing.mean_diameter_mm(), 0.82) * load_n
        }
    }
}

/// The arm at which rib friction seems to act: e_eff = G_sl/F_a = S2 Y S1 d_m^0.82, mm, about 1.
pub fn effective_rib_arm_mm(bearing: &TaperedBearing) -> f64 {
    let c = bearing.friction;
    c.s2 * bearing.thrust_factor_y * c.s1 * math::pow(bearing.mean_diameter_mm(), 0.82)
}

/// φ_bl = exp(−2.6e-8 (n ν)^1.4 d_m), the share of the sliding load that no film carries.
pub fn boundary_share(mean_diameter_mm: f64, running: Running) -> f64 {
    math::exp(-2.6e-8 * math::pow(running.speed_rpm * running.viscosity_mm2_s, 1.4) * mean_diameter_mm)
}

/// µ_sl = φ_bl µ_bl + (1 − φ_bl) µ_EHL.
pub fn sliding_coefficient(boundary_share: f64, boundary_coefficient: f64, full_film_coefficient: f64) -> f64 {
    boundary_share * boundary_coefficient + (1.0 - boundary_share) * full_film_coefficient
}

/// φ_ish = 1/(1 + 1.84e-9 (n d_m)^1.28 ν^0.64): oil sheared at the inlet is warmer and thinner.
pub fn inlet_shear_factor(mean_diameter_mm: f64, running: Running) -> f64 {
    let heating = math::pow(running.speed_rpm * mean_diameter_mm, 1.28) * math::pow(running.viscosity_mm2_s, 0.64);
    1.0 / (1.0 + 1.84e-9 * heating)
}

/// φ_rs = exp(−K_rs ν n (d + D) √(K_z/(2 (D − d)))): oil pushed aside does not return in time. K_rs is 3e-8 for a low
/// oil bath and 6e-8 for grease, K_z is 6 for tapered rollers. At hand speed in gear oil it is above 0.99,
/// and the support model takes it as 1.
pub fn starvation_factor(bore_mm: f64, outside_diameter_mm: f64, running: Running, k_rs: f64, k_z: f64) -> f64 {
    let spread = (k_z / (2.0 * (outside_diameter_mm - bore_mm))).sqrt();
    let flow = running.viscosity_mm2_s * running.speed_rpm * (bore_mm + outside_diameter_mm);
    math::exp(-k_rs * flow * spread)
}

/// M_drag = 10 V_M K_roll B d_m⁴ n², N mm, K_roll = K_L K_z (d + D)/(D − d) 1e-12: rollers ploughing through an oil
/// bath. V_M is read from the catalogue's diagram over oil depth; B is the bearing's width in mm.
pub fn oil_bath_drag_nmm(
    bore_mm: f64,
    outside_diameter_mm: f64,
    width_mm: f64,
    speed_rpm: f64,
    v_m: f64,
    k_l: f64,
    k_z: f64,
) -> f64 {
    let k_roll = k_l * k_z * (bore_mm + outside_diameter_mm) / (outside_diameter_mm - bore_mm) * 1.0e-12;
    let mean = 0.5 * (bore_mm + outside_diameter_mm);
    let mean_squared = mean * mean;
    10.0 * v_m * k_roll * width_mm * mean_squared * mean_squared * speed_rpm * speed_rpm
}

/// Friction of a bearing that turns under pure thrust, with the boundary coefficient of turning and no starvation:
/// the definition of the support model.
pub fn turning(bearing: &TaperedBearing, axial_n: f64, running: Running) -> Friction {
    turning_with(bearing, axial_n, running, BOUNDARY_COEFFICIENT_TURNING)
}

/// As [`turning`] with another boundary coefficient (an oil additive, a dry rib, the older catalogue's 0.15).
pub fn turning_with(bearing: &TaperedBearing, axial_n: f64, running: Running, boundary_coefficient: f64) -> Friction {
    let mean_diameter_mm = bearing.mean_diameter_mm();
    let boundary_share = boundary_share(mean_diameter_mm, running);
    let mu = sliding_coefficient(boundary_share, boundary_coefficient, FULL_FILM_COEFFICIENT);
    let hydrodynamic = math::pow(running.viscosity_mm2_s * running.speed_rpm, 0.6);
    let rolling_nmm = bearing.friction_factor
        * inlet_shear_factor(mean_diameter_mm, running)
        * rolling_moment_factor(bearing, 0.0, axial_n)
        * hydrodynamic;
    let sliding_nmm = bearing.friction_factor * sliding_moment_factor_nmm(bearing, 0.0, axial_n) * mu;
    Friction {
        rolling_nmm,
        sliding_nmm,
        total_nmm: rolling_nmm + sliding_nmm,
        boundary_share,
    }
}

/// Torque that starts a bearing under pure thrust, N mm: G_sl times the boundary coefficient at rest.
///
/// The source warns that steep bearings (series 313, 322 B, 323 B) may need up to four times as much.
pub fn breakaway_nmm(bearing: &TaperedBearing, axial_n: f64) -> f64 {
    bearing.friction_factor * sliding_moment_factor_nmm(bearing, 0.0, axial_n) * BOUNDARY_COEFFICIENT_AT_REST
}
