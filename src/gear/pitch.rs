//! Pitch cones: the two cones that touch along a plane at the mean point.
//!
//! Source: the relations are those of ISO 23509:2006, method 1, for a shaft angle of 90° (from memory; confirmed by
//! plain vectors in `tests/outside`), solved exactly instead of by its iteration. Limit pressure angle and limit radius
//! go back to E. Wildhaber, Basic Relationship of Hypoid Gears, American Machinist 90 (1946).
//!
//! For shafts at right angles all of them follow from two unknowns, the wheel's pitch angle δ2 and the offset angle in
//! the pitch plane ζ_mp = β_m1 − β_m2: tan δ1 = cos ζ_mp / tan δ2, sin ζ_m = sin ζ_mp cos δ1, r_m1 = r_m2 (z1/z2) cos
//! β_m2 / cos β_m1. Two conditions fix them: the offset a = sin ζ_m (r_m2 + r_m1 cos δ2 / cos δ1) and the limit radius
//! of lengthwise curvature. The mirror root of the equations has ζ_mp < 0 and so never enters.

use crate::numerics::{math, root};

use super::{Design, GeometryError};

const DEGREE: f64 = std::f64::consts::PI / 180.0;
/// Accuracy of both unknowns, radians.
const ANGLE_ACCURACY: f64 = 1e-15;
/// Steps of the search in δ2 and ζ_mp.
const WHEEL_ANGLE_STEP: f64 = 0.25 * DEGREE;
const OFFSET_ANGLE_STEP: f64 = 1.0 * DEGREE;

/// What the pitch cones are solved from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PitchInput {
    /// z1.
    pub pinion_teeth: u32,
    /// z2.
    pub wheel_teeth: u32,
    /// a, mm.
    pub offset_mm: f64,
    /// d_e2, mm.
    pub wheel_outer_pitch_diameter_mm: f64,
    /// b2, mm.
    pub wheel_face_width_mm: f64,
    /// β_m1, rad.
    pub pinion_spiral_angle_rad: f64,
    /// ρ_lim asked for, mm; not used with offset 0.
    pub limit_radius_mm: f64,
}

impl From<&Design> for PitchInput {
    fn from(design: &Design) -> Self {
        Self {
            pinion_teeth: design.pinion_teeth,
            wheel_teeth: design.wheel_teeth,
            offset_mm: design.offset_mm,
            wheel_outer_pitch_diameter_mm: design.wheel_outer_pitch_diameter_mm,
            wheel_face_width_mm: design.wheel_face_width_mm,
            pinion_spiral_angle_rad: design.pinion_mean_spiral_angle_deg * DEGREE,
            limit_radius_mm: design.limit_radius_mm,
        }
    }
}

/// Pitch cones and what belongs to their mean point P.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PitchCones {
    /// δ1, rad.
    pub pinion_pitch_angle_rad: f64,
    /// δ2, rad.
    pub wheel_pitch_angle_rad: f64,
    /// ζ_m, offset angle in the axial plane, rad.
    pub offset_angle_axial_rad: f64,
    /// ζ_mp, offset angle in the pitch plane, rad.
    pub offset_angle_pitch_plane_rad: f64,
    /// β_m1, rad.
    pub pinion_spiral_angle_rad: f64,
    /// β_m2, rad.
    pub wheel_spiral_angle_rad: f64,
    /// r_m1, mm.
    pub pinion_mean_radius_mm: f64,
    /// r_m2, mm.
    pub wheel_mean_radius_mm: f64,
    /// R_m1, mm.
    pub pinion_cone_distance_mm: f64,
    /// R_m2, mm.
    pub wheel_cone_distance_mm: f64,
    /// m_mn, mm.
    pub mean_normal_module_mm: f64,
    /// α_lim, rad; 0 with offset 0.
    pub limit_pressure_angle_rad: f64,
    /// ρ_lim, mm; none with offset 0.
    pub limit_radius_mm: Option<f64>,
    /// t_zm1, from the crossing point to P along the pinion's axis, mm.
    pub pinion_crossing_to_mean_mm: f64,
    /// t_zm2, from the crossing point to P along the wheel's axis, mm.
    pub wheel_crossing_to_mean_mm: f64,
}

/// One candidate: cones with the curvature 1/ρ_lim they have and the offset they need.
#[derive(Clone, Copy)]
struct Candidate {
    cones: PitchCones,
    offset_mm: f64,
    limit_curvature_per_mm: f64,
}

fn candidate(input: &PitchInput, r_m2: f64, delta2: f64, zeta_mp: f64) -> Candidate {
    let u = f64::from(input.wheel_teeth) / f64::from(input.pinion_teeth);
    let beta1 = input.pinion_spiral_angle_rad;
    let beta2 = beta1 - zeta_mp;
    let (sin_zp, cos_zp) = math::sin_cos(zeta_mp);
    let (sin_d2, cos_d2) = math::sin_cos(delta2);
    let tan_d2 = sin_d2 / cos_d2;
    let tan_d1 = cos_zp / tan_d2;
    let cos_d1 = 1.0 / (1.0 + tan_d1 * tan_d1).sqrt();
    let sin_d1 = tan_d1 * cos_d1;
    let sin_zm = sin_zp * cos_d1;
    let cos_zm = (1.0 - sin_zm * sin_zm).sqrt();
    let (sin_b1, cos_b1) = math::sin_cos(beta1);
    let (sin_b2, cos_b2) = math::sin_cos(beta2);
    let r_m1 = r_m2 * cos_b2 / (u * cos_b1);
    let cone1 = r_m1 / sin_d1;
    let cone2 = r_m2 / sin_d2;
    let tan_lim = -(tan_d1 * tan_d2 / cos_zp) * (cone1 * sin_b1 - cone2 * sin_b2) / (cone1 * tan_d1 + cone2 * tan_d2);
    let cos_lim = 1.0 / (1.0 + tan_lim * tan_lim).sqrt();
    let (tan_b1, tan_b2) = (sin_b1 / cos_b1, sin_b2 / cos_b2);
    let bracket = -tan_lim * (tan_b1 / (cone1 * tan_d1) + tan_b2 / (cone2 * tan_d2)) + 1.0 / (cone1 * cos_b1)
        - 1.0 / (cone2 * cos_b2);
    let curvature = cos_lim * bracket / (tan_b1 - tan_b2);
    Candidate {
        cones: PitchCones {
            pinion_pitch_angle_rad: math::atan(tan_d1),
            wheel_pitch_angle_rad: delta2,
            offset_angle_axial_rad: math::asin(sin_zm),
            offset_angle_pitch_plane_rad: zeta_mp,
            pinion_spiral_angle_rad: beta1,
            wheel_spiral_angle_rad: beta2,
            pinion_mean_radius_mm: r_m1,
            wheel_mean_radius_mm: r_m2,
            pinion_cone_distance_mm: cone1,
            wheel_cone_distance_mm: cone2,
            mean_normal_module_mm: 2.0 * r_m2 * cos_b2 / f64::from(input.wheel_teeth),
            limit_pressure_angle_rad: math::atan(tan_lim),
            limit_radius_mm: Some(1.0 / curvature),
            pinion_crossing_to_mean_mm: r_m2 * cos_zm,
            wheel_crossing_to_mean_mm: r_m1 * sin_d2 / cos_d1,
        },
        offset_mm: sin_zm * (r_m2 + r_m1 * cos_d2 / cos_d1),
        limit_curvature_per_mm: curvature,
    }
}

impl PitchCones {
    /// The pitch cones of a design: r_m2 = (d_e2 − b2 sin δ2)/2 with the final δ2, β_m1 and limit radius as given.
    ///
    /// # Errors
    /// [`GeometryError::OffsetTooLarge`] and [`GeometryError::NoLimitRadius`].
    pub fn solve(input: &PitchInput) -> Result<Self, GeometryError> {
        let d_e2 = input.wheel_outer_pitch_diameter_mm;
        let b2 = input.wheel_face_width_mm;
        let radius = |delta2| 0.5 * (d_e2 - b2 * math::sin(delta2));
        Self::with_radius(input, radius)
    }

    /// The pitch cones for a wheel mean radius r_m2 that is given, mm, as in the iteration of ISO 23509, which keeps the
    /// radius of its first guess. The outer diameter and the face width of `input` are not used.
    ///
    /// # Errors
    /// As [`PitchCones::solve`].
    pub fn with_wheel_mean_radius(input: &PitchInput, wheel_mean_radius_mm: f64) -> Result<Self, GeometryError> {
        Self::with_radius(input, |_| wheel_mean_radius_mm)
    }

    fn with_radius(input: &PitchInput, radius: impl Fn(f64) -> f64) -> Result<Self, GeometryError> {
        if input.offset_mm <= 0.0 {
            return Ok(Self::without_offset(input, &radius));
        }
        let solve_offset = |delta2: f64| offset_angle(input, radius(delta2), delta2);
        let excess =
            |delta2: f64| solve_offset(delta2).map(|c| (c, c.limit_curvature_per_mm * input.limit_radius_mm - 1.0));
        let mut before: Option<(f64, f64)> = None;
        let (mut lowest, mut highest) = (f64::INFINITY, f64::NEG_INFINITY);
        let mut delta2 = 10.0 * DEGREE;
        while delta2 < 89.9 * DEGREE {
            let now = excess(delta2);
            if let Some((c, value)) = now {
                if c.limit_curvature_per_mm < lowest {
                    lowest = c.limit_curvature_per_mm;
                }
                if c.limit_curvature_per_mm > highest {
                    highest = c.limit_curvature_per_mm;
                }
                if let Some((d_before, value_before)) = before
                    && (value_before > 0.0) != (value > 0.0)
                {
                    let f = |d: f64| excess(d).map_or(f64::NAN, |(_, v)| v);
                    if let Ok(d) = root::in_bracket(f, d_before, delta2, ANGLE_ACCURACY)
                        && let Some((c, v)) = excess(d)
                        && v.abs() < 1e-6
                    {
                        return Ok(c.cones);
                    }
                }
                before = Some((delta2, value));
            } else {
                before = None;
            }
            delta2 += WHEEL_ANGLE_STEP;
        }
        if lowest > highest {
            return Err(GeometryError::OffsetTooLarge {
                offset_mm: input.offset_mm,
                largest_mm: largest_offset(input, &radius),
            });
        }
        Err(GeometryError::NoLimitRadius {
            limit_radius_mm: input.limit_radius_mm,
            smallest_mm: (highest > 0.0).then(|| 1.0 / highest),
            largest_mm: (lowest > 0.0).then(|| 1.0 / lowest),
        })
    }

    /// Spiral bevel gears: one common apex, no sliding along the tooth.
    fn without_offset(input: &PitchInput, radius: &impl Fn(f64) -> f64) -> Self {
        let u = f64::from(input.wheel_teeth) / f64::from(input.pinion_teeth);
        let delta2 = math::atan(u);
        let r_m2 = radius(delta2);
        let mut cones = candidate(input, r_m2, delta2, 0.0).cones;
        cones.limit_pressure_angle_rad = 0.0;
        cones.limit_radius_mm = None;
        cones
    }
}

/// The cones with this δ2 that reach the offset: the smallest ζ_mp > 0.
fn offset_angle(input: &PitchInput, r_m2: f64, delta2: f64) -> Option<Candidate> {
    if r_m2 <= 0.0 {
        return None;
    }
    let lacking = |zeta: f64| candidate(input, r_m2, delta2, zeta).offset_mm - input.offset_mm;
    let mut low = 0.0;
    while low < 89.0 * DEGREE {
        let high = low + OFFSET_ANGLE_STEP;
        if lacking(high) >= 0.0 {
            let zeta = root::in_bracket(lacking, low, high, ANGLE_ACCURACY).ok()?;
            return (zeta > 0.0).then(|| candidate(input, r_m2, delta2, zeta));
        }
        low = high;
    }
    None
}

fn largest_offset(input: &PitchInput, radius: &impl Fn(f64) -> f64) -> f64 {
    let mut largest: f64 = 0.0;
    for i in 0..80 {
        let delta2 = (10.0 + f64::from(i)) * DEGREE;
        for k in 1..89 {
            let offset = candidate(input, radius(delta2), delta2, f64::from(k) * DEGREE).offset_mm;
            if offset > largest {
                largest = offset;
            }
        }
    }
    largest
}
