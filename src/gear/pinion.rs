//! Flanks of the pinion: the envelope of the wheel's flank as the designed pair rolls, cut back by the ease-off.
//!
//! A point p fixed in the pinion sees the wheel's flank pass at the distance f(φ) = S(q(φ)), where q(φ) is p in the
//! wheel's frame at roll φ. Where f has a minimum along the roll (f' = 0, f'' > 0) its value M(p) is the distance of p
//! from the envelope along the common normal. With (x, y) the wheel point that touches there, the eased flank is the set
//! M(p) = e(x, y), and the pinion's body has M > e. All of it goes on beyond the tooth; only the pinion's face cone
//! ends it.
//!
//! Source: the envelope of a flank that moves, its equation of meshing n · v12 = 0 and where it stops being regular are
//! in F. L. Litvin and A. Fuentes, Gear Geometry and Applied Theory, 2nd ed., 2004; ease-off as the departure from the
//! exact mate is in H. J. Stadtfeld, Handbook of Bevel and Hypoid Gears, 1993. The envelope as the least of a distance
//! over the roll, which needs neither curvatures nor settings of a machine, and the five terms of the ease-off, are our
//! own definition.

use nalgebra::Vector3;

use crate::numerics::math;

use super::{Design, EaseOff, Side, WheelFlank};

/// Sine and cosine, by polynomials where the angle is small.
pub(crate) fn sin_cos_near(angle: f64) -> (f64, f64) {
    if angle.abs() > 0.08 {
        return math::sin_cos(angle);
    }
    let a = angle * angle;
    (
        angle * (1.0 - a / 6.0 * (1.0 - a / 20.0 * (1.0 - a / 42.0 * (1.0 - a / 72.0)))),
        1.0 - 0.5 * a * (1.0 - a / 12.0 * (1.0 - a / 30.0 * (1.0 - a / 56.0 * (1.0 - a / 90.0)))),
    )
}

/// A roll φ with the sines and cosines of both members' angles: φ of the wheel and φ/m of the pinion.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Roll {
    pub(crate) angle: f64,
    pub(crate) wheel: (f64, f64),
    pub(crate) pinion: (f64, f64),
}

fn turned(from: (f64, f64), by: (f64, f64)) -> (f64, f64) {
    (from.0 * by.1 + from.1 * by.0, from.1 * by.1 - from.0 * by.0)
}

impl Roll {
    pub(crate) fn new(angle: f64, inverse_ratio: f64) -> Self {
        Self {
            angle,
            wheel: math::sin_cos(angle),
            pinion: math::sin_cos(angle * inverse_ratio),
        }
    }

    /// The roll `step` further: no trigonometry for small steps.
    pub(crate) fn advanced(&self, step: f64, inverse_ratio: f64) -> Self {
        Self {
            angle: self.angle + step,
            wheel: turned(self.wheel, sin_cos_near(step)),
            pinion: turned(self.pinion, sin_cos_near(step * inverse_ratio)),
        }
    }
}

/// Where and how a wheel point meets the pinion when the designed pair rolls.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Meeting {
    /// φ at which it meets, rad.
    pub roll_rad: f64,
    /// f'' there, mm/rad²: above 0 where the envelope is regular.
    pub second_derivative_mm: f64,
    /// The point of the envelope, without ease-off, in the pinion's frame, mm.
    pub envelope_point_mm: Vector3<f64>,
    /// The point of the eased flank in the pinion's frame, mm.
    pub point_mm: Vector3<f64>,
    /// Unit normal of the envelope there in the pinion's frame, out of the wheel into the pinion.
    pub normal: Vector3<f64>,
}

/// What a pinion point sees of the wheel's flank at one roll.
#[derive(Debug, Clone, Copy)]
struct WheelSeenFrom {
    /// f, f', f''.
    s: f64,
    s1: f64,
    s2: f64,
    q: Vector3<f64>,
    n: Vector3<f64>,
    q1: Vector3<f64>,
    /// Second derivatives of S along q': (grad² S) q'.
    bend: Vector3<f64>,
    /// Ω: the pinion's motion as seen from the wheel, for a unit of roll.
    omega: Vector3<f64>,
}

/// The eased flank near a pinion point: Ψ = M − e with its gradient.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Level {
    /// Ψ, mm, to first order in the last step of the roll.
    pub(crate) value: f64,
    /// Gradient of Ψ in the pinion's frame.
    pub(crate) gradient: Vector3<f64>,
    /// f'' at the roll.
    pub(crate) second: f64,
    /// Step of the roll that leads to the minimum.
    pub(crate) step: f64,
    /// Change of that step with the point, in the pinion's frame: dφ' = step + step_slope · dp.
    pub(crate) step_slope: Vector3<f64>,
}

/// One flank of the pinion.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PinionFlank {
    wheel: WheelFlank,
    offset: f64,
    ratio: f64,
    inverse_ratio: f64,
    ease: [f64; 5],
}

impl PinionFlank {
    /// The mate of a wheel flank.
    pub fn new(design: &Design, wheel: WheelFlank) -> Self {
        let ease_off: &EaseOff = match wheel.side {
            Side::Drive => &design.ease_off_drive,
            Side::Coast => &design.ease_off_coast,
        };
        let (z1, z2) = (f64::from(design.pinion_teeth), f64::from(design.wheel_teeth));
        Self {
            wheel,
            offset: design.offset_mm,
            ratio: -z1 / z2,
            inverse_ratio: -z2 / z1,
            ease: [
                ease_off.lengthwise_crown_um,
                ease_off.profile_crown_um,
                ease_off.twist_um,
                ease_off.lengthwise_slope_um,
                ease_off.profile_slope_um,
            ]
            .map(|um| um * 1e-3),
        }
    }

    /// The wheel flank that it meets.
    pub fn wheel(&self) -> &WheelFlank {
        &self.wheel
    }

    /// 1/m: pinion angle for a unit of wheel angle.
    pub(crate) fn inverse_ratio(&self) -> f64 {
        self.inverse_ratio
    }

    /// e(x, y), mm.
    pub fn ease_off_mm(&self, x: f64, y: f64) -> f64 {
        let [cl, cp, cb, sl, sp] = self.ease;
        cl * x * x + cp * y * y + cb * x * y + sl * x + sp * y
    }

    /// e at a point q and its gradient in q.
    fn ease_off_at(&self, q: Vector3<f64>) -> (f64, Vector3<f64>) {
        let [cl, cp, cb, sl, sp] = self.ease;
        let r = (q.x * q.x + q.y * q.y).sqrt();
        let (x, y, x_rz, y_rz) = self.wheel.blank().coordinates_and_slopes(r, q.z);
        let e = cl * x * x + cp * y * y + cb * x * y + sl * x + sp * y;
        let e_x = 2.0 * cl * x + cb * y + sl;
        let e_y = 2.0 * cp * y + cb * x + sp;
        let e_r = (e_x * x_rz[0] + e_y * y_rz[0]) / r;
        (e, Vector3::new(e_r * q.x, e_r * q.y, e_x * x_rz[1] + e_y * y_rz[1]))
    }

    /// Where the wheel point (x, y) meets the pinion in the designed pair: the mesh equation n · v12 = 0 solved for the
    /// roll. Of its two roots the regular one is taken, the nearer to roll 0 if both are regular. None where no roll
    /// satisfies it or none is regular.
    pub fn meeting(&self, x: f64, y: f64) -> Option<Meeting> {
        let [a, b] = self.meetings(x, y);
        match (a.filter(is_regular), b.filter(is_regular)) {
            (Some(a), Some(b)) => Some(if a.roll_rad.abs() <= b.roll_rad.abs() { a } else { b }),
            (a, b) => a.or(b),
        }
    }

    /// Both roots of the mesh equation, regular or not.
    pub(crate) fn meetings(&self, x: f64, y: f64) -> [Option<Meeting>; 2] {
        let Some(patch) = self.wheel.patch(x, y) else {
            return [None, None];
        };
        // n · v12 = 0  ⇔  K_x cos φ − K_y sin φ = m K_z + a n_z with K = q × n.
        let k = patch.w.cross(&patch.n);
        let size = (k.x * k.x + k.y * k.y).sqrt();
        let cosine = (self.ratio * k.z + self.offset * patch.n.z) / size;
        if cosine.is_nan() || cosine.abs() > 1.0 {
            return [None, None];
        }
        let (middle, half) = (-math::atan2(k.y, k.x), math::acos(cosine));
        let ease_mm = self.ease_off_mm(x, y);
        [middle + half, middle - half].map(|roll| {
            let roll = wrapped(roll);
            let state = Roll::new(roll, self.inverse_ratio);
            let envelope_point = Self::to_pinion(patch.w, &state) - self.axis_to_pinion(&state);
            let sight = self.sight(envelope_point, &state);
            let normal = Self::to_pinion(patch.n, &state);
            let meeting = Meeting {
                roll_rad: roll,
                second_derivative_mm: sight.s2,
                envelope_point_mm: envelope_point,
                point_mm: envelope_point + normal * ease_mm,
                normal,
            };
            meeting.second_derivative_mm.is_finite().then_some(meeting)
        })
    }

    /// A direction of the wheel's frame in the pinion's, both at their designed places.
    fn to_pinion(v: Vector3<f64>, roll: &Roll) -> Vector3<f64> {
        let ((sw, cw), (sp, cp)) = (roll.wheel, roll.pinion);
        let (x, y, z) = (cw * v.x - sw * v.y, sw * v.x + cw * v.y, v.z);
        Vector3::new(x, cp * y + sp * z, cp * z - sp * y)
    }

    /// The vector from the wheel's to the pinion's origin in the pinion's frame.
    fn axis_to_pinion(&self, roll: &Roll) -> Vector3<f64> {
        let (sp, cp) = roll.pinion;
        Vector3::new(0.0, cp * self.offset, -sp * self.offset)
    }

    /// A direction of the pinion's frame in the wheel's.
    fn to_wheel(v: Vector3<f64>, roll: &Roll) -> Vector3<f64> {
        let ((sw, cw), (sp, cp)) = (roll.wheel, roll.pinion);
        let (x, y, z) = (v.x, cp * v.y - sp * v.z, sp * v.y + cp * v.z);
        Vector3::new(cw * x + sw * y, cw * y - sw * x, z)
    }

    fn sight(&self, p: Vector3<f64>, roll: &Roll) -> WheelSeenFrom {
        let ((sw, cw), (sp, cp)) = (roll.wheel, roll.pinion);
        let im = self.inverse_ratio;
        let (x, y, z) = (p.x, self.offset + cp * p.y - sp * p.z, sp * p.y + cp * p.z);
        let q = Vector3::new(cw * x + sw * y, cw * y - sw * x, z);
        let from = q - self.wheel.centre;
        let axis = self.wheel.axis;
        let h = axis.dot(&from);
        let radial = from - axis * h;
        let rho = radial.norm();
        let bending = self.wheel.cos_signed / rho;
        let s = self.wheel.cos_signed * rho + self.wheel.constant + self.wheel.sin * h;
        let n = radial * bending + axis * self.wheel.sin;
        // e_x of the pinion's axis in the wheel's frame is (cw, −sw, 0); A × it leaves a e_z.
        let omega = Vector3::new(im * cw, -im * sw, -1.0);
        let mut q1 = omega.cross(&q);
        q1.z -= im * self.offset;
        let turning = Vector3::new(-im * sw, -im * cw, 0.0);
        let q2 = turning.cross(&q) + omega.cross(&q1);
        let tangent = axis.cross(&radial) / rho;
        let bend = tangent * (bending * tangent.dot(&q1));
        WheelSeenFrom {
            s,
            s1: n.dot(&q1),
            s2: n.dot(&q2) + bend.dot(&q1),
            q,
            n,
            q1,
            bend,
            omega,
        }
    }

    /// The eased flank as seen from p, searched from a roll near the minimum: values to second order in what is left of
    /// the roll, so that a joint Newton iteration can use every call. `second` tells whether the roll is in a region
    /// with a minimum.
    pub(crate) fn level(&self, p: Vector3<f64>, roll: &Roll) -> Level {
        let sight = self.sight(p, roll);
        let (e, grad_e) = self.ease_off_at(sight.q - sight.n * sight.s);
        let grad_e = grad_e - sight.n * sight.n.dot(&grad_e);
        let along_roll = sight.s1 - grad_e.dot(&sight.q1);
        let mixed = sight.bend + sight.n.cross(&sight.omega);
        let inverse = 1.0 / sight.s2;
        let gradient = sight.n - grad_e - mixed * (along_roll * inverse);
        Level {
            value: sight.s - e - (along_roll - 0.5 * sight.s1) * sight.s1 * inverse,
            gradient: Self::to_pinion(gradient, roll),
            second: sight.s2,
            step: -sight.s1 * inverse,
            step_slope: Self::to_pinion(mixed * (-inverse), roll),
        }
    }

    /// The roll at which the pinion point p is nearest to the wheel's flank: the minimum of f that lies down the slope
    /// from `start`. None where there is none within a radian.
    pub(crate) fn nearest_roll(&self, p: Vector3<f64>, start: &Roll) -> Option<Roll> {
        let mut roll = *start;
        let mut largest = 0.12;
        let mut last = 0.0;
        for _ in 0..60 {
            let sight = self.sight(p, &roll);
            let mut step = if sight.s2 > 0.0 {
                -sight.s1 / sight.s2
            } else if sight.s1 > 0.0 {
                -largest
            } else {
                largest
            };
            if step.is_nan() {
                return None;
            }
            if step.abs() < 1e-10 && sight.s2 > 0.0 {
                return Some(roll);
            }
            if step * last < 0.0 {
                largest *= 0.5;
            }
            if step > largest {
                step = largest;
            } else if step < -largest {
                step = -largest;
            }
            last = step;
            roll = roll.advanced(step, self.inverse_ratio);
            if (roll.angle - start.angle).abs() > 1.0 {
                return None;
            }
        }
        None
    }

    /// The wheel point (x, y) that a pinion point meets, the roll at which it does, and its distance M from the
    /// envelope, mm: positive toward the pinion's body. None where the pinion point sees no regular minimum.
    pub fn partner(&self, p_mm: Vector3<f64>, near_roll_rad: f64) -> Option<(f64, f64, f64, f64)> {
        let roll = self.nearest_roll(p_mm, &Roll::new(near_roll_rad, self.inverse_ratio))?;
        let sight = self.sight(p_mm, &roll);
        let foot = sight.q - sight.n * sight.s;
        let r = (foot.x * foot.x + foot.y * foot.y).sqrt();
        let (x, y) = self.wheel.blank().coordinates(r, foot.z);
        Some((x, y, roll.angle, sight.s))
    }

    /// Height of a pinion point under the pinion's face cone, mm: negative outside the tooth.
    pub fn depth_under_tip_mm(&self, p_mm: Vector3<f64>) -> f64 {
        let radius = (p_mm.y * p_mm.y + p_mm.z * p_mm.z).sqrt();
        self.wheel.blank().pinion_face.radius_mm(p_mm.x) - radius
    }

    /// The direction of the pinion's frame in the wheel's at a roll of the designed pair.
    pub fn direction_in_wheel(&self, v: Vector3<f64>, roll_rad: f64) -> Vector3<f64> {
        Self::to_wheel(v, &Roll::new(roll_rad, self.inverse_ratio))
    }
}

fn is_regular(meeting: &Meeting) -> bool {
    meeting.second_derivative_mm > 0.0
}

/// An angle in −π to π.
fn wrapped(angle: f64) -> f64 {
    let turn = 2.0 * std::f64::consts::PI;
    angle - turn * (angle / turn).round()
}
