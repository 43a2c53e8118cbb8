//! Gap and touch of single wheel points: the innermost solves.
//!
//! A wheel point w stands in the pinion's frame at p = R_x(−φ1)[R_y(−Σ)(R_z(φ + d) w + (0, −a − E, G)) − P e_x] with φ
//! the roll, φ1 = φ/m and d the wheel's own rotation. The eased flank of the pinion is Ψ(p) = 0
//! ([`crate::gear::PinionFlank`]), whose evaluation holds one more unknown, the roll at which the designed pair would
//! touch there. Both unknowns are found together by Newton's method.
//!
//! Source: gears placed with errors of P, G, E and shaft angle, as in M. L. Baxter, Effect of Misalignment on Tooth
//! Action of Bevel and Hypoid Gears, ASME paper 61-MD-20 (1961); the gap along the normal and both unknowns at once are
//! our own method.

use nalgebra::Vector3;

use crate::gear::{GearSet, Level, PinionFlank, Roll, sin_cos_near};

use super::placement::Placement;

/// The most iterations of a solve; three to five are usual.
const MOST_STEPS: u32 = 40;
/// Largest step of a rotation, rad, and of a gap, mm.
const LARGEST_TURN: f64 = 0.05;
const LARGEST_GAP_STEP: f64 = 2.0;
const LARGEST_ROLL_STEP: f64 = 0.15;
/// When the last step was this small, its square no longer counts.
const TURN_ACCURACY: f64 = 1e-9;
const GAP_ACCURACY_MM: f64 = 1e-7;
const ROLL_ACCURACY: f64 = 1e-6;

/// Two gears at a placement.
#[derive(Debug, Clone, Copy)]
pub(crate) struct PlacedPair {
    sin_tilt: f64,
    cos_tilt: f64,
    across: f64,
    along_wheel: f64,
    along_pinion: f64,
    inverse_ratio: f64,
}

/// A wheel point brought to the pinion by turning the wheel.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Touch {
    /// Own rotation of the wheel, rad, signed about +z.
    pub(crate) turn: f64,
    /// Roll at which the designed pair touches at that pinion point: start value for neighbours.
    pub(crate) near: Roll,
    /// The pinion point.
    pub(crate) p: Vector3<f64>,
    /// Gradient of Ψ there.
    gradient: Vector3<f64>,
    /// Movement of the point for a unit of rotation.
    along_turn: Vector3<f64>,
    /// Wheel's angle φ + d.
    wheel: (f64, f64),
    roll: Roll,
}

/// A wheel point's gap.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Gap {
    /// mm along the wheel's normal; negative where the bodies overlap.
    pub(crate) mm: f64,
    /// As for [`Touch`].
    pub(crate) near: Roll,
    /// The pinion point met.
    pub(crate) p: Vector3<f64>,
    gradient: Vector3<f64>,
    normal: Vector3<f64>,
    /// −1 / (gradient · normal).
    scale: f64,
    /// Movement of the point with the wheel's rotation and with the pinion's, for a unit of roll.
    by_wheel: Vector3<f64>,
    by_pinion: Vector3<f64>,
}

impl PlacedPair {
    pub(crate) fn new(gears: &GearSet, placement: Placement) -> Self {
        let (sin_tilt, cos_tilt) = crate::numerics::math::sin_cos(placement.shaft_angle_rad);
        Self {
            sin_tilt,
            cos_tilt,
            across: -gears.design().offset_mm - placement.offset_mm,
            along_wheel: placement.wheel_axial_mm,
            along_pinion: placement.pinion_axial_mm,
            inverse_ratio: 1.0 / gears.ratio(),
        }
    }

    pub(crate) fn roll(&self, angle: f64) -> Roll {
        Roll::new(angle, self.inverse_ratio)
    }

    pub(crate) fn advanced(&self, roll: &Roll, step: f64) -> Roll {
        roll.advanced(step, self.inverse_ratio)
    }

    /// A start for `near` where nothing better is known: the roll itself.
    #[expect(clippy::unused_self, reason = "reads as a property of the stand")]
    pub(crate) fn start(&self, roll: &Roll) -> Roll {
        *roll
    }

    fn point(&self, w: Vector3<f64>, wheel: (f64, f64), pinion: (f64, f64)) -> Vector3<f64> {
        let ((sw, cw), (sp, cp)) = (wheel, pinion);
        let (x, y, z) = (
            cw * w.x - sw * w.y,
            sw * w.x + cw * w.y + self.across,
            w.z + self.along_wheel,
        );
        let (x, z) = (
            self.cos_tilt * x - self.sin_tilt * z - self.along_pinion,
            self.sin_tilt * x + self.cos_tilt * z,
        );
        Vector3::new(x, cp * y + sp * z, cp * z - sp * y)
    }

    fn direction(&self, v: Vector3<f64>, wheel: (f64, f64), pinion: (f64, f64)) -> Vector3<f64> {
        let ((sw, cw), (sp, cp)) = (wheel, pinion);
        let (x, y, z) = (cw * v.x - sw * v.y, sw * v.x + cw * v.y, v.z);
        let (x, z) = (
            self.cos_tilt * x - self.sin_tilt * z,
            self.sin_tilt * x + self.cos_tilt * z,
        );
        Vector3::new(x, cp * y + sp * z, cp * z - sp * y)
    }

    /// The level of the eased flank at p near a roll; moves `near` to a regular minimum first if it is not near one.
    fn level(pinion: &PinionFlank, p: Vector3<f64>, near: &mut Roll) -> Option<Level> {
        let level = pinion.level(p, near);
        if level.second > 0.0 && level.step.abs() < LARGEST_ROLL_STEP {
            return Some(level);
        }
        *near = pinion.nearest_roll(p, near)?;
        let level = pinion.level(p, near);
        (level.second > 0.0).then_some(level)
    }

    /// Turns the wheel, standing at roll `roll`, until its point w lies on the pinion's flank.
    pub(crate) fn touch(
        &self,
        pinion: &PinionFlank,
        w: Vector3<f64>,
        roll: &Roll,
        start_turn: f64,
        start_near: Roll,
    ) -> Option<Touch> {
        let (mut turn, mut near) = (start_turn, start_near);
        for _ in 0..MOST_STEPS {
            let wheel = turned(roll.wheel, sin_cos_near(turn));
            let p = self.point(w, wheel, roll.pinion);
            let along_turn = self.direction(Vector3::new(-w.y, w.x, 0.0), wheel, roll.pinion);
            let level = Self::level(pinion, p, &mut near)?;
            let full = -level.value / level.gradient.dot(&along_turn);
            let step = limited(full, LARGEST_TURN)?;
            let roll_step = limited(level.step + level.step_slope.dot(&along_turn) * step, LARGEST_ROLL_STEP)?;
            turn += step;
            if turn.abs() > 1.0 {
                return None;
            }
            near = self.advanced(&near, roll_step);
            if step.abs() < TURN_ACCURACY && roll_step.abs() < ROLL_ACCURACY {
                return Some(Touch {
                    turn,
                    near,
                    p: p + along_turn * step,
                    gradient: level.gradient,
                    along_turn,
                    wheel,
                    roll: *roll,
                });
            }
        }
        None
    }

    /// Gap of the wheel point w with unit normal n at a roll, the wheel turned by `turn` besides.
    pub(crate) fn gap(
        &self,
        pinion: &PinionFlank,
        w: Vector3<f64>,
        n: Vector3<f64>,
        roll: &Roll,
        turn: f64,
        start_near: Roll,
    ) -> Option<Gap> {
        let wheel = turned(roll.wheel, sin_cos_near(turn));
        let p0 = self.point(w, wheel, roll.pinion);
        let normal = self.direction(n, wheel, roll.pinion);
        let (mut gap, mut near) = (0.0, start_near);
        for _ in 0..MOST_STEPS {
            let p = p0 + normal * gap;
            let level = Self::level(pinion, p, &mut near)?;
            let scale = -1.0 / level.gradient.dot(&normal);
            let step = limited(level.value * scale, LARGEST_GAP_STEP)?;
            let roll_step = limited(level.step + level.step_slope.dot(&normal) * step, LARGEST_ROLL_STEP)?;
            gap += step;
            if gap.abs() > 50.0 {
                return None;
            }
            near = self.advanced(&near, roll_step);
            if step.abs() < GAP_ACCURACY_MM && roll_step.abs() < ROLL_ACCURACY {
                let p = p0 + normal * gap;
                let from_axis = w + n * gap;
                return Some(Gap {
                    mm: gap,
                    near,
                    p,
                    gradient: level.gradient,
                    normal,
                    scale,
                    by_wheel: self.direction(Vector3::new(-from_axis.y, from_axis.x, 0.0), wheel, roll.pinion),
                    by_pinion: Vector3::new(0.0, p.z, -p.y) * self.inverse_ratio,
                });
            }
        }
        None
    }

    /// Derivative of the gap to a movement of the wheel point, mm a unit (the turn of the normal with it is left out:
    /// it counts only as the square of a small gap).
    pub(crate) fn gap_along(&self, gap: &Gap, moved: Vector3<f64>, roll: &Roll, turn: f64) -> f64 {
        let wheel = turned(roll.wheel, sin_cos_near(turn));
        gap.gradient.dot(&self.direction(moved, wheel, roll.pinion)) * gap.scale
    }

    /// Derivatives of a touch to a movement of the wheel point: rotation, rad a unit, and movement of the pinion point.
    pub(crate) fn touch_along(&self, touch: &Touch, moved: Vector3<f64>) -> (f64, Vector3<f64>) {
        let moved = self.direction(moved, touch.wheel, touch.roll.pinion);
        let turn = -touch.gradient.dot(&moved) / touch.gradient.dot(&touch.along_turn);
        (turn, moved + touch.along_turn * turn)
    }

    /// Derivative of a touch's rotation to the roll.
    pub(crate) fn touch_along_roll(&self, touch: &Touch) -> f64 {
        let by_pinion = Vector3::new(0.0, touch.p.z, -touch.p.y) * self.inverse_ratio;
        -1.0 - touch.gradient.dot(&by_pinion) / touch.gradient.dot(&touch.along_turn)
    }
}

impl Gap {
    /// Derivative of the gap to the roll, mm/rad, when the wheel's own rotation changes by `turn_slope` for a unit.
    pub(crate) fn slope(&self, turn_slope: f64) -> f64 {
        self.gradient
            .dot(&(self.by_wheel * (1.0 + turn_slope) + self.by_pinion))
            * self.scale
    }

    /// Derivative of the gap to the wheel's own rotation about +z, mm/rad.
    pub(crate) fn by_turn(&self) -> f64 {
        self.gradient.dot(&self.by_wheel) * self.scale
    }

    /// Movement of the pinion point for a unit of roll.
    pub(crate) fn movement(&self, turn_slope: f64) -> Vector3<f64> {
        self.by_wheel * (1.0 + turn_slope) + self.by_pinion + self.normal * self.slope(turn_slope)
    }
}

fn turned(from: (f64, f64), by: (f64, f64)) -> (f64, f64) {
    (from.0 * by.1 + from.1 * by.0, from.1 * by.1 - from.0 * by.0)
}

fn limited(step: f64, largest: f64) -> Option<f64> {
    if step.is_nan() {
        None
    } else if step > largest {
        Some(largest)
    } else if step < -largest {
        Some(-largest)
    } else {
        Some(step)
    }
}
