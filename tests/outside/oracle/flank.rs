//! The wheel's flank as the cone of the cutter, and the pinion's flank as explicit points: each is the wheel point's
//! partner in the designed mesh, found from the two closed-form roots of the equation of meshing, and eased off.

use super::blank::{Blank, blank};
use super::numbers::Numbers;
use super::pitch_vectors::{Pitch, pitch};
use super::vector::{V, Y, Z};

/// One side of the slot.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Cone {
    side: f64,
    axis: V,
    centre: V,
    radius: f64,
    half_width: f64,
    pub(crate) blade: f64,
}

impl Cone {
    /// Signed distance of a wheel-fixed point from the flank, positive in the slot, and its direction of growth.
    pub(crate) fn distance(&self, q: V) -> (f64, V) {
        let from = q - self.centre;
        let height = from.dot(self.axis);
        let radial = from - self.axis * height;
        let rho = radial.norm();
        let (sin, cos) = self.blade.sin_cos();
        let s = (self.side * (rho - self.radius) + self.half_width) * cos + height * sin;
        (s, radial * (self.side * cos / rho) + self.axis * sin)
    }
}

/// A gear set ready for the explicit route.
#[derive(Debug, Clone)]
pub(crate) struct Gears {
    pub(crate) numbers: Numbers,
    pub(crate) pitch: Pitch,
    pub(crate) blank: Blank,
    /// Drive (s = +1), coast (s = −1).
    pub(crate) cones: [Cone; 2],
    pub(crate) point_width: f64,
    /// −z1/z2: wheel angle over pinion angle.
    pub(crate) m: f64,
}

/// An eased pinion point, pinion-fixed, about the designed place of the pinion's axis.
#[derive(Debug, Clone, Copy)]
pub(crate) struct PinionPoint {
    pub(crate) p: V,
    /// Wheel angle at which it meets its wheel point in the designed mesh.
    pub(crate) roll: f64,
    /// Second derivative of the distance along the roll, mm/rad²: positive where the envelope is regular.
    pub(crate) second: f64,
    /// How far inside the pinion's face cone, mm.
    pub(crate) inside: f64,
}

impl Gears {
    pub(crate) fn new(n: &Numbers) -> Self {
        let pitch = pitch(n);
        let blank = blank(n, &pitch);
        let m_mn = pitch.m_mn[0];
        let (sin_f, cos_f) = blank.root_angle2.sin_cos();
        let axis = pitch.e_r * cos_f - Z * sin_f;
        let height = blank.h_f2 * blank.theta_f2.cos();
        let trace_f = (pitch.trace - axis * pitch.trace.dot(axis)).unit();
        let out = axis.cross(trace_f);
        let out = if out.dot(pitch.g2) < 0.0 { -out } else { out };
        let normal_angle = [
            n.alpha_drive_deg.to_radians() + pitch.alpha_lim,
            n.alpha_coast_deg.to_radians() - pitch.alpha_lim,
        ];
        // sin α_n = A cos α + B sin α; the root in (−90°, 90°).
        let blade = |side: f64, alpha_n: f64| {
            let (a, b) = (side * out.dot(pitch.n2), axis.dot(pitch.n2));
            let phase = a.atan2(b);
            (alpha_n.sin() / (a * a + b * b).sqrt()).asin() - phase
        };
        let alpha = [blade(1.0, normal_angle[0]), blade(-1.0, normal_angle[1])];
        let mean_alpha = (0.5 * (n.alpha_drive_deg + n.alpha_coast_deg)).to_radians();
        let s_2 =
            m_mn * (std::f64::consts::FRAC_PI_2 - 2.0 * ((0.5 - n.c_ham) * (n.k_d / 2.0) * mean_alpha.tan() + n.k_t));
        let point_width = std::f64::consts::PI * m_mn - s_2 - height * (alpha[0].tan() + alpha[1].tan());
        let centre =
            pitch.p - axis * height - out * (n.cutter_radius + height * (alpha[1].tan() - alpha[0].tan()) / 2.0);
        let cone = |side: f64, blade: f64| Cone {
            side,
            axis,
            centre,
            radius: n.cutter_radius,
            half_width: point_width / 2.0,
            blade,
        };
        Self {
            numbers: n.clone(),
            pitch,
            blank,
            cones: [cone(1.0, alpha[0]), cone(-1.0, alpha[1])],
            point_width,
            m: -n.z1 / n.z2,
        }
    }

    /// The same gears seen in a mirror (y turned round): a left-hand wheel, the pinion's offset on the other side.
    pub(crate) fn mirrored(&self) -> Self {
        let flip = |v: V| V(v.0, -v.1, v.2);
        let mut other = self.clone();
        other.numbers.offset = -self.numbers.offset;
        other.pitch.p = flip(self.pitch.p);
        other.pitch.zeta_m = -self.pitch.zeta_m;
        for cone in &mut other.cones {
            cone.centre = flip(cone.centre);
            cone.axis = flip(cone.axis);
        }
        other
    }

    /// The wheel point of flank coordinates, by Newton's method on the angle round the wheel's axis.
    pub(crate) fn wheel_point(&self, side: usize, x: f64, y: f64) -> Option<V> {
        let [r, z] = self.blank.section_of(x, y);
        let mut angle = self.pitch.zeta_m;
        for _ in 0..40 {
            let q = V(r * angle.cos(), r * angle.sin(), z);
            let (s, n) = self.cones[side].distance(q);
            let slope = n.dot(Z.cross(q));
            let step = s / slope;
            angle -= step.clamp(-0.2, 0.2);
            if step.abs() < 1e-15 {
                break;
            }
        }
        let q = V(r * angle.cos(), r * angle.sin(), z);
        (self.cones[side].distance(q).0.abs() < 1e-11).then_some(q)
    }

    /// Flank coordinates of a wheel-fixed point.
    pub(crate) fn flank_of(&self, q: V) -> [f64; 2] {
        self.blank.coordinates_of((q.0 * q.0 + q.1 * q.1).sqrt(), q.2)
    }

    /// A wheel-fixed point seen from the pinion in the designed mesh at roll φ.
    fn to_pinion(&self, q: V, roll: f64) -> V {
        (q.turned_z(roll) - Y * self.numbers.offset).turned_x(-roll / self.m)
    }

    fn to_wheel(&self, p: V, roll: f64) -> V {
        (p.turned_x(roll / self.m) + Y * self.numbers.offset).turned_z(-roll)
    }

    /// The eased pinion point that meets the wheel point (x, y) in the designed mesh.
    pub(crate) fn pinion_point(&self, side: usize, x: f64, y: f64) -> Option<PinionPoint> {
        let q = self.wheel_point(side, x, y)?;
        let (_, n) = self.cones[side].distance(q);
        // n·v12 = (Mx cos φ − My sin φ − a nz)/m − Mz with M = q × n.
        let moment = q.cross(n);
        let wanted = moment.2 * self.m + self.numbers.offset * n.2;
        let size = (moment.0 * moment.0 + moment.1 * moment.1).sqrt();
        if wanted.abs() > size {
            return None;
        }
        let phase = moment.1.atan2(moment.0);
        let half = (wanted / size).acos();
        let mut best: Option<(f64, f64)> = None;
        for root in [half - phase, -half - phase] {
            let roll = root - (root / std::f64::consts::TAU).round() * std::f64::consts::TAU;
            let p = self.to_pinion(q, roll);
            let along = |d: f64| self.cones[side].distance(self.to_wheel(p, roll + d)).0;
            let d = 1e-4;
            let second = (along(d) - 2.0 * along(0.0) + along(-d)) / (d * d);
            let nearer = best.is_none_or(|(r, s)| {
                if (second > 0.0) == (s > 0.0) {
                    roll.abs() < r.abs()
                } else {
                    second > 0.0
                }
            });
            if nearer {
                best = Some((roll, second));
            }
        }
        let (roll, second) = best?;
        let [cl, cp, cb, sl, sp] = self.numbers.ease_um[side];
        let ease = 1e-3 * (cl * x * x + cp * y * y + cb * x * y + sl * x + sp * y);
        let normal = n.turned_z(roll).turned_x(-roll / self.m);
        let p = self.to_pinion(q, roll) + normal * ease;
        let inside = self.blank.inside_face1(p.0, (p.1 * p.1 + p.2 * p.2).sqrt());
        Some(PinionPoint {
            p,
            roll,
            second,
            inside,
        })
    }
}
