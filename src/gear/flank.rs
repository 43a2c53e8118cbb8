//! Flanks of the wheel: form cut, so each is a cone of its cutter.
//!
//! The slot is the set of points with S > 0 for both sides, S(q) = s (ρ − r_c) cos α_s + (W/2) cos α_s + h sin α_s with ρ
//! the distance of q from the cutter's axis and h its height over the plane of the blade tips. The gradient of S has
//! length 1, so that S is the true distance from the flank along its normal.
//!
//! Source: form cutting with straight blades and its flank as a cone of the cutter is in F. L. Litvin and A. Fuentes,
//! Gear Geometry and Applied Theory, 2nd ed., 2004, chapters on spiral bevel and hypoid gears. The slot as one distance
//! S is our own form of it.

use nalgebra::Vector3;

use crate::numerics::math;

use super::{Blank, Design, GeometryError, PitchCones, Side};

/// The cutter of the wheel and where it stands, in the wheel's frame.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cutter {
    /// C, centre of the cutter in the plane of its blade tips, mm.
    pub centre_mm: Vector3<f64>,
    /// N_f, axis of the cutter, out of the slot.
    pub axis: Vector3<f64>,
    /// r_c, mean cutter radius, mm.
    pub radius_mm: f64,
    /// W, width of the slot at the blade tips, mm.
    pub point_width_mm: f64,
    /// α_+ and α_−, blade angles of the drive and the coast side, rad.
    pub blade_angles_rad: [f64; 2],
    /// P, mean point, mm.
    pub mean_point_mm: Vector3<f64>,
    /// T, direction of the tooth at P, toward the heel.
    pub tooth_trace: Vector3<f64>,
}

impl Cutter {
    /// The cutter that makes the wheel of a design.
    ///
    /// # Errors
    /// [`GeometryError::NoBladeAngle`], [`GeometryError::NegativePointWidth`].
    pub fn new(design: &Design, pitch: &PitchCones, blank: &Blank) -> Result<Self, GeometryError> {
        let (sin_zm, cos_zm) = math::sin_cos(pitch.offset_angle_axial_rad);
        let e_r = Vector3::new(cos_zm, sin_zm, 0.0);
        let e_z = Vector3::new(0.0, 0.0, 1.0);
        let mean_point = e_r * pitch.wheel_mean_radius_mm + e_z * pitch.wheel_crossing_to_mean_mm;
        let (sin_d2, cos_d2) = math::sin_cos(pitch.wheel_pitch_angle_rad);
        let heelward = e_r * sin_d2 + e_z * cos_d2;
        let outward = e_r * cos_d2 - e_z * sin_d2;
        let trace = if design.offset_mm > 0.0 {
            let ratio = -f64::from(design.pinion_teeth) / f64::from(design.wheel_teeth);
            let from_pinion_axis = mean_point - Vector3::new(0.0, design.offset_mm, 0.0);
            let sliding = Vector3::new(1.0, 0.0, 0.0).cross(&from_pinion_axis) - e_z.cross(&mean_point) * ratio;
            let unit = sliding / sliding.norm();
            if unit.dot(&heelward) >= 0.0 { unit } else { -unit }
        } else {
            let (sin_b2, cos_b2) = math::sin_cos(pitch.wheel_spiral_angle_rad);
            heelward * cos_b2 + e_z.cross(&e_r) * sin_b2
        };
        let (sin_f2, cos_f2) = math::sin_cos(blank.wheel_root_angle_rad);
        let axis = e_r * cos_f2 - e_z * sin_f2;
        let height_p = blank.wheel_dedendum_mm * math::cos(blank.wheel_dedendum_angle_rad);
        let flat = trace - axis * axis.dot(&trace);
        let flat = flat / flat.norm();
        let across = axis.cross(&flat);
        let across = if across.dot(&heelward) >= 0.0 { across } else { -across };

        let mut blade = [0.0; 2];
        for side in Side::BOTH {
            let s = side.sign();
            let designed = match side {
                Side::Drive => design.pressure_angle_drive_deg.to_radians() + pitch.limit_pressure_angle_rad,
                Side::Coast => design.pressure_angle_coast_deg.to_radians() - pitch.limit_pressure_angle_rad,
            };
            let along = s * across.dot(&outward);
            let up = axis.dot(&outward);
            let sine = math::sin(designed) / (along * along + up * up).sqrt();
            let angle = math::asin(sine) - math::atan2(along, up);
            if angle.is_nan() || angle.abs() >= 0.5 * std::f64::consts::PI {
                return Err(GeometryError::NoBladeAngle { side });
            }
            blade[side.index()] = angle;
        }
        let (tan_drive, tan_coast) = (math::tan(blade[0]), math::tan(blade[1]));
        let m_mn = pitch.mean_normal_module_mm;
        let alpha_n = 0.5 * (design.pressure_angle_drive_deg + design.pressure_angle_coast_deg).to_radians();
        let thickness = m_mn
            * (0.5 * std::f64::consts::PI
                - 2.0
                    * ((0.5 - design.wheel_addendum_factor) * 0.5 * design.depth_factor * math::tan(alpha_n)
                        + design.thickness_factor));
        let point_width = std::f64::consts::PI * m_mn - thickness - height_p * (tan_drive + tan_coast);
        if point_width.is_nan() || point_width <= 0.0 {
            return Err(GeometryError::NegativePointWidth {
                point_width_mm: point_width,
            });
        }
        let r_c = design.cutter_radius_mm;
        let centre = mean_point - axis * height_p - across * (r_c + 0.5 * height_p * (tan_coast - tan_drive));
        Ok(Self {
            centre_mm: centre,
            axis,
            radius_mm: r_c,
            point_width_mm: point_width,
            blade_angles_rad: blade,
            mean_point_mm: mean_point,
            tooth_trace: trace,
        })
    }
}

/// A point of a wheel flank, in the wheel's frame.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlankPoint {
    /// Where, mm.
    pub position_mm: Vector3<f64>,
    /// Unit normal, into the slot.
    pub normal: Vector3<f64>,
}

/// A point with its derivatives to x and y, mm a unit.
#[derive(Debug, Clone, Copy)]
pub(crate) struct FlankPatch {
    pub(crate) w: Vector3<f64>,
    pub(crate) n: Vector3<f64>,
    pub(crate) w_x: Vector3<f64>,
    pub(crate) w_y: Vector3<f64>,
    /// Angle about the wheel's axis: start value for neighbours.
    pub(crate) angle: f64,
}

/// One flank of the wheel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WheelFlank {
    /// Which one.
    pub side: Side,
    blank: Blank,
    pub(super) centre: Vector3<f64>,
    pub(super) axis: Vector3<f64>,
    /// s cos α, sin α and the constant (W/2 − s r_c) cos α of S.
    pub(super) cos_signed: f64,
    pub(super) sin: f64,
    pub(super) constant: f64,
    /// Angle about the wheel's axis at (0, 0), its slopes to x and y and half its curvature along x.
    start: [f64; 4],
    /// Sign of the derivative of S along the wheel's rotation.
    turn_sign: f64,
}

impl WheelFlank {
    /// The flank of this side.
    ///
    /// # Errors
    /// [`GeometryError::CutterMissesFlank`].
    pub fn new(cutter: &Cutter, blank: &Blank, side: Side) -> Result<Self, GeometryError> {
        let missed = GeometryError::CutterMissesFlank { side };
        let (sin, cos) = math::sin_cos(cutter.blade_angles_rad[side.index()]);
        let s = side.sign();
        let p = cutter.mean_point_mm;
        let mut flank = Self {
            side,
            blank: *blank,
            centre: cutter.centre_mm,
            axis: cutter.axis,
            cos_signed: s * cos,
            sin,
            constant: (0.5 * cutter.point_width_mm - s * cutter.radius_mm) * cos,
            start: [math::atan2(p.y, p.x), 0.0, 0.0, 0.0],
            turn_sign: 0.0,
        };
        let (_, n) = flank.distance_and_normal(p);
        flank.turn_sign = if p.x * n.y - p.y * n.x >= 0.0 { 1.0 } else { -1.0 };
        let middle = flank.patch(0.0, 0.0).ok_or(missed.clone())?;
        flank.start[0] = middle.angle;
        let (along_x, along_y) = (middle.turn(&middle.w_x), middle.turn(&middle.w_y));
        flank.start = [middle.angle, along_x, along_y, 0.0];
        if let Some(heel) = flank.patch(0.5, 0.0) {
            flank.start[3] = 4.0 * (heel.angle - middle.angle - 0.5 * along_x);
        }
        Ok(flank)
    }

    /// Proportions of the wheel that the flank belongs to.
    pub fn blank(&self) -> &Blank {
        &self.blank
    }

    /// S, distance of a point from the flank along its normal, mm: positive in the slot. The cutter's cone goes on
    /// beyond the tooth.
    pub fn distance_mm(&self, q_mm: Vector3<f64>) -> f64 {
        self.distance_and_normal(q_mm).0
    }

    /// S and its gradient, the unit normal into the slot, at a point that need not lie on the flank.
    pub fn distance_and_normal(&self, q_mm: Vector3<f64>) -> (f64, Vector3<f64>) {
        let from = q_mm - self.centre;
        let h = self.axis.dot(&from);
        let radial = from - self.axis * h;
        let rho = radial.norm();
        let s = self.cos_signed * rho + self.constant + self.sin * h;
        (s, radial * (self.cos_signed / rho) + self.axis * self.sin)
    }

    /// The point with flank coordinates (x, y); beyond the square the cone of the cutter goes on. None where the cutter
    /// does not reach that radius and height.
    pub fn point(&self, x: f64, y: f64) -> Option<FlankPoint> {
        self.patch(x, y).map(|patch| FlankPoint {
            position_mm: patch.w,
            normal: patch.n,
        })
    }

    pub(crate) fn patch(&self, x: f64, y: f64) -> Option<FlankPatch> {
        let [t0, tx, ty, txx] = self.start;
        self.patch_near(x, y, t0 + tx * x + ty * y + txx * x * x)
    }

    /// The point at (x, y), searched from an angle about the wheel's axis near it.
    pub(crate) fn patch_near(&self, x: f64, y: f64, start_angle: f64) -> Option<FlankPatch> {
        let place = self.blank.section_point(x, y);
        let mut angle = start_angle;
        for _ in 0..40 {
            let (sin_t, cos_t) = math::sin_cos(angle);
            let w = Vector3::new(place.r * cos_t, place.r * sin_t, place.z);
            let (s, n) = self.distance_and_normal(w);
            let slope = w.x * n.y - w.y * n.x;
            let step = -s / slope;
            if step.is_nan() {
                return None;
            }
            if step.abs() < 1e-12 {
                if slope * self.turn_sign <= 0.0 {
                    return None;
                }
                // The last step is taken to first order.
                let w = Vector3::new(w.x - step * w.y, w.y + step * w.x, w.z);
                let derivative = |dr: f64, dz: f64| {
                    let plain = Vector3::new(dr * cos_t, dr * sin_t, dz);
                    let turn = -n.dot(&plain) / slope;
                    Vector3::new(plain.x - turn * w.y, plain.y + turn * w.x, plain.z)
                };
                return Some(FlankPatch {
                    w,
                    n,
                    w_x: derivative(place.dr[0], place.dz[0]),
                    w_y: derivative(place.dr[1], place.dz[1]),
                    angle: angle + step,
                });
            }
            angle += step.clamp(-0.1, 0.1);
        }
        None
    }
}

impl FlankPatch {
    /// How far a tangent vector turns about the wheel's axis, rad.
    fn turn(&self, along: &Vector3<f64>) -> f64 {
        (self.w.x * along.y - self.w.y * along.x) / (self.w.x * self.w.x + self.w.y * self.w.y)
    }
}
