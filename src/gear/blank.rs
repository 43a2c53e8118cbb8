//! Blanks: depth of the teeth, face and root cones of the wheel, face and root cones of the pinion.
//!
//! Source: the sum of dedendum angles for a slot of constant width, and its limit of 1.3 times the standard sum, are
//! those of ISO 23509:2006 (from memory), with the outer transverse module d_e2/z2 in it. Our own definition: depth,
//! clearance and addendum are parts of the mean normal module and of the depth at the mean point, the sum is shared as
//! addendum to dedendum, and the pinion's cones go through the places that mate with the ends of the wheel's root and
//! face lines.

use crate::numerics::math;

use super::{BlankFault, DepthTaper, Design, GeometryError, PitchCones};

/// A straight cone of the pinion: radius at each axial place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ConeLine {
    /// Angle to the pinion's axis, rad.
    pub angle_rad: f64,
    /// Radius at axial place 0 (the crossing point), mm.
    pub radius_at_crossing_mm: f64,
    /// Radius gained per axial length: tangent of the angle.
    pub slope: f64,
    /// Axial places of the two ends that fixed the cone (toe and heel of the wheel's face), mm.
    pub ends_mm: [f64; 2],
}

impl ConeLine {
    /// Radius at an axial place, mm.
    pub fn radius_mm(&self, axial_mm: f64) -> f64 {
        self.radius_at_crossing_mm + self.slope * axial_mm
    }
}

/// Tooth proportions and the cones that bound the teeth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Blank {
    /// h_w, working depth, mm.
    pub working_depth_mm: f64,
    /// c, clearance, mm.
    pub clearance_mm: f64,
    /// h_a2, mm.
    pub wheel_addendum_mm: f64,
    /// h_f2, mm.
    pub wheel_dedendum_mm: f64,
    /// θ_a2, rad.
    pub wheel_addendum_angle_rad: f64,
    /// θ_f2, rad.
    pub wheel_dedendum_angle_rad: f64,
    /// δ_a2, rad.
    pub wheel_face_angle_rad: f64,
    /// δ_f2, rad.
    pub wheel_root_angle_rad: f64,
    /// R_e2 = R_m2 + b2/2, mm.
    pub wheel_outer_cone_distance_mm: f64,
    /// Face cone of the pinion.
    pub pinion_face: ConeLine,
    /// Root cone of the pinion.
    pub pinion_root: ConeLine,
    pub(super) half_face_width_mm: f64,
    pub(super) r_m2: f64,
    pub(super) z_p: f64,
    pub(super) sin_d2: f64,
    pub(super) cos_d2: f64,
    tan_a2: f64,
    tan_f2: f64,
}

/// A place in the wheel's axial section and how it changes with (x, y).
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct SectionPoint {
    pub(crate) r: f64,
    pub(crate) z: f64,
    pub(crate) dr: [f64; 2],
    pub(crate) dz: [f64; 2],
}

impl Blank {
    /// Proportions by design.
    ///
    /// # Errors
    /// [`GeometryError::ImpossibleBlank`].
    pub fn new(design: &Design, pitch: &PitchCones) -> Result<Self, GeometryError> {
        let impossible = |fault| GeometryError::ImpossibleBlank { fault };
        let z2 = f64::from(design.wheel_teeth);
        let m_mn = pitch.mean_normal_module_mm;
        let b2 = design.wheel_face_width_mm;
        let depth = design.depth_factor * m_mn;
        let c = design.clearance_factor * depth;
        let h_a2 = design.wheel_addendum_factor * depth;
        let h_a1 = depth - h_a2;
        let h_f2 = h_a1 + c;
        let h_f1 = h_a2 + c;
        let cone = pitch.wheel_cone_distance_mm;
        let outer_cone = cone + 0.5 * b2;
        if cone <= 0.5 * b2 {
            return Err(impossible(BlankFault::BeyondApex));
        }
        let theta_deg = match design.depth {
            DepthTaper::Uniform => 0.0,
            DepthTaper::Tapered => {
                let standard_deg = (math::atan(h_f1 / cone) + math::atan(h_f2 / cone)).to_degrees();
                let alpha_n = 0.5 * (design.pressure_angle_drive_deg + design.pressure_angle_coast_deg).to_radians();
                let (sin_b2, cos_b2) = math::sin_cos(pitch.wheel_spiral_angle_rad);
                let rho = if design.offset_mm > 0.0 {
                    design.limit_radius_mm
                } else {
                    design.cutter_radius_mm
                };
                let slot_deg = 90.0 * (design.wheel_outer_pitch_diameter_mm / z2)
                    / (outer_cone * math::tan(alpha_n) * cos_b2)
                    * (1.0 - cone * sin_b2 / rho);
                let upper = 1.3 * standard_deg;
                let least = if slot_deg < upper { slot_deg } else { upper };
                if least > 0.0 { least } else { 0.0 }
            }
        };
        let theta = theta_deg.to_radians();
        let theta_a2 = theta * h_a2 / depth;
        let theta_f2 = theta - theta_a2;
        let delta2 = pitch.wheel_pitch_angle_rad;
        let (sin_d2, cos_d2) = math::sin_cos(delta2);
        let mut blank = Self {
            working_depth_mm: depth,
            clearance_mm: c,
            wheel_addendum_mm: h_a2,
            wheel_dedendum_mm: h_f2,
            wheel_addendum_angle_rad: theta_a2,
            wheel_dedendum_angle_rad: theta_f2,
            wheel_face_angle_rad: delta2 + theta_a2,
            wheel_root_angle_rad: delta2 - theta_f2,
            wheel_outer_cone_distance_mm: outer_cone,
            pinion_face: ConeLine {
                angle_rad: 0.0,
                radius_at_crossing_mm: 0.0,
                slope: 0.0,
                ends_mm: [0.0; 2],
            },
            pinion_root: ConeLine {
                angle_rad: 0.0,
                radius_at_crossing_mm: 0.0,
                slope: 0.0,
                ends_mm: [0.0; 2],
            },
            half_face_width_mm: 0.5 * b2,
            r_m2: pitch.wheel_mean_radius_mm,
            z_p: pitch.wheel_crossing_to_mean_mm,
            sin_d2,
            cos_d2,
            tan_a2: math::tan(theta_a2),
            tan_f2: math::tan(theta_f2),
        };
        for x in [-1.0, 1.0] {
            let (low, high) = blank.height_range(x * blank.half_face_width_mm);
            if low >= high {
                return Err(impossible(BlankFault::NoHeight));
            }
        }
        let line = |heights: [f64; 2], angle: f64| {
            let ends = [0, 1].map(|i| {
                let s = blank.half_face_width_mm * if i == 0 { -1.0 } else { 1.0 };
                let (r, z) = blank.section(s, heights[i]);
                conjugate_place(design.offset_mm, r, z, angle)
            });
            match ends {
                [Some((x_toe, r_toe)), Some((x_heel, r_heel))] if x_heel > x_toe => {
                    let slope = (r_heel - r_toe) / (x_heel - x_toe);
                    Ok(ConeLine {
                        angle_rad: math::atan(slope),
                        radius_at_crossing_mm: r_toe - slope * x_toe,
                        slope,
                        ends_mm: [x_toe, x_heel],
                    })
                }
                _ => Err(impossible(BlankFault::NoPinionCones)),
            }
        };
        let ends = [-blank.half_face_width_mm, blank.half_face_width_mm];
        let face = line(ends.map(|s| blank.height_range(s).0), blank.wheel_root_angle_rad)?;
        let root = line(ends.map(|s| blank.height_range(s).1 + c), blank.wheel_face_angle_rad)?;
        blank.pinion_face = face;
        blank.pinion_root = root;
        Ok(blank)
    }

    /// Heights of y = −1 (root line raised by the clearance) and y = 1 (face line) at s.
    fn height_range(&self, s: f64) -> (f64, f64) {
        (
            -self.wheel_dedendum_mm - s * self.tan_f2 + self.clearance_mm,
            self.wheel_addendum_mm + s * self.tan_a2,
        )
    }

    /// (r, z) of a place s along the pitch cone's generator and h at right angles to it, mm.
    fn section(&self, s: f64, h: f64) -> (f64, f64) {
        (
            self.r_m2 + s * self.sin_d2 + h * self.cos_d2,
            self.z_p + s * self.cos_d2 - h * self.sin_d2,
        )
    }

    /// Radius and axial place of the flank coordinates (x, y), mm.
    pub fn place_mm(&self, x: f64, y: f64) -> (f64, f64) {
        let point = self.section_point(x, y);
        (point.r, point.z)
    }

    /// Radius and axial place of the wheel's root line at x, mm: the bottom of the slot, below y = −1.
    pub fn root_place_mm(&self, x: f64) -> (f64, f64) {
        let s = x * self.half_face_width_mm;
        self.section(s, self.height_range(s).0 - self.clearance_mm)
    }

    pub(crate) fn section_point(&self, x: f64, y: f64) -> SectionPoint {
        let s = x * self.half_face_width_mm;
        let (low, high) = self.height_range(s);
        let part = 0.5 * (y + 1.0);
        let h = low + part * (high - low);
        let dh_ds = -self.tan_f2 * (1.0 - part) + self.tan_a2 * part;
        let dh_dy = 0.5 * (high - low);
        let (r, z) = self.section(s, h);
        let half = self.half_face_width_mm;
        SectionPoint {
            r,
            z,
            dr: [half * (self.sin_d2 + dh_ds * self.cos_d2), dh_dy * self.cos_d2],
            dz: [half * (self.cos_d2 - dh_ds * self.sin_d2), -dh_dy * self.sin_d2],
        }
    }

    /// Flank coordinates (x, y) of a radius and axial place, mm.
    pub fn coordinates(&self, r_mm: f64, z_mm: f64) -> (f64, f64) {
        let (dr, dz) = (r_mm - self.r_m2, z_mm - self.z_p);
        let s = dr * self.sin_d2 + dz * self.cos_d2;
        let h = dr * self.cos_d2 - dz * self.sin_d2;
        let (low, high) = self.height_range(s);
        (s / self.half_face_width_mm, 2.0 * (h - low) / (high - low) - 1.0)
    }

    /// Flank coordinates and their derivatives to (r, z): (x, y, [∂x/∂r, ∂x/∂z], [∂y/∂r, ∂y/∂z]).
    pub(crate) fn coordinates_and_slopes(&self, r: f64, z: f64) -> (f64, f64, [f64; 2], [f64; 2]) {
        let (dr, dz) = (r - self.r_m2, z - self.z_p);
        let s = dr * self.sin_d2 + dz * self.cos_d2;
        let h = dr * self.cos_d2 - dz * self.sin_d2;
        let (low, high) = self.height_range(s);
        let height = 1.0 / (high - low);
        let part = (h - low) * height;
        // y = 2 part − 1, part = (h − low)/(high − low), low' = −tan θ_f2, high' = tan θ_a2.
        let y_s = 2.0 * height * (self.tan_f2 - part * (self.tan_a2 + self.tan_f2));
        let y_h = 2.0 * height;
        let x_s = 1.0 / self.half_face_width_mm;
        (
            s * x_s,
            2.0 * part - 1.0,
            [x_s * self.sin_d2, x_s * self.cos_d2],
            [
                y_s * self.sin_d2 + y_h * self.cos_d2,
                y_s * self.cos_d2 - y_h * self.sin_d2,
            ],
        )
    }
}

/// Where the pinion has to end to clear the wheel's cone of this angle at (r, z): axial place and radius on the pinion.
fn conjugate_place(offset_mm: f64, r: f64, z: f64, angle: f64) -> Option<(f64, f64)> {
    let (sin_angle, cos_angle) = math::sin_cos(angle);
    let sin_tau = offset_mm * sin_angle / (r * sin_angle + z * cos_angle);
    if sin_tau.is_nan() || sin_tau.abs() >= 1.0 {
        return None;
    }
    let cos_tau = (1.0 - sin_tau * sin_tau).sqrt();
    let across = r * sin_tau - offset_mm;
    Some((r * cos_tau, (across * across + z * z).sqrt()))
}
