//! Contact by explicit pinion points: each is moved by the placement and measured against the cutter cone of the wheel.
//!
//! For a pinion point the distance from the cone is the gap of the wheel point at its foot, exactly; the wheel rotation
//! that brings the point onto the cone is found by Newton's method; first touch is the smallest such rotation over all
//! points whose foot lies in the x–y square and which lie inside the pinion's face cone on the regular envelope.

use super::flank::{Gears, PinionPoint};
use super::vector::{V, X, Y, Z};

/// P, G, E in mm; Σ in radians.
#[derive(Debug, Clone, Copy, Default)]
pub(crate) struct Moved {
    pub(crate) pinion_axial: f64,
    pub(crate) wheel_axial: f64,
    pub(crate) offset: f64,
    pub(crate) shaft_angle: f64,
}

/// What decided a first touch.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Decider {
    Inside,
    WheelEdge,
    PinionTip,
    EndOfEnvelope,
}

/// First touch at one roll.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Touch {
    /// Wheel rotation toward the pinion, rad.
    pub(crate) rotation: f64,
    /// Where, in flank coordinates.
    pub(crate) at: [f64; 2],
    pub(crate) decider: Decider,
}

const REACH: f64 = 1.6;
const CELLS: usize = 41;

/// One side at one placement.
#[derive(Debug)]
pub(crate) struct Side<'a> {
    gears: &'a Gears,
    side: usize,
    moved: Moved,
    grid: Vec<([f64; 2], PinionPoint)>,
    /// +1 or −1: the sense of wheel rotation that brings this flank toward the pinion.
    pub(crate) sense: f64,
}

/// A pinion point on the cone at some roll.
#[derive(Debug, Clone, Copy)]
struct Meeting {
    rotation: f64,
    at: [f64; 2],
}

impl<'a> Side<'a> {
    pub(crate) fn new(gears: &'a Gears, side: usize, moved: Moved) -> Self {
        let step = 2.0 * REACH / (CELLS as f64 - 1.0);
        let mut grid = Vec::new();
        for i in 0..CELLS {
            for j in 0..CELLS {
                let uv = [i as f64 * step - REACH, j as f64 * step - REACH];
                if let Some(p) = gears.pinion_point(side, uv[0], uv[1]) {
                    grid.push((uv, p));
                }
            }
        }
        let q = gears.pitch.p;
        let (_, n) = gears.cones[side].distance(q);
        Self {
            gears,
            side,
            moved,
            grid,
            sense: q.cross(n).2.signum(),
        }
    }

    /// One tooth pitch as a wheel angle.
    pub(crate) fn tooth_pitch(&self) -> f64 {
        std::f64::consts::TAU / self.gears.numbers.z2
    }

    /// The placed pinion point seen from the wheel's axis (wheel not yet turned).
    fn placed(&self, p: V, roll: f64) -> V {
        let m = &self.moved;
        let turned = p.turned_x(roll / self.gears.m) + X * m.pinion_axial;
        Y * (self.gears.numbers.offset + m.offset) + turned.turned_y(m.shaft_angle) - Z * m.wheel_axial
    }

    /// The wheel rotation (beyond the roll, toward the pinion) that puts a pinion point on the cone, and where.
    fn meeting(&self, p: V, roll: f64) -> Option<Meeting> {
        let w = self.placed(p, roll);
        let mut rotation = 0.0;
        for _ in 0..30 {
            let q = w.turned_z(-(roll + self.sense * rotation));
            let (s, n) = self.gears.cones[self.side].distance(q);
            let slope = -q.cross(n).2 * self.sense;
            if slope >= 0.0 {
                return None;
            }
            let step = s / slope;
            rotation -= step;
            if rotation.abs() > 0.2 {
                return None;
            }
            if step.abs() < 1e-15 {
                break;
            }
        }
        let q = w.turned_z(-(roll + self.sense * rotation));
        Some(Meeting {
            rotation,
            at: self.gears.flank_of(q),
        })
    }

    /// The gap of the wheel point at the foot of a pinion point, the wheel turned by `rotation` toward the pinion: gap
    /// in mm, flank coordinates of the foot.
    fn gap_of(&self, p: V, roll: f64, rotation: f64) -> (f64, [f64; 2]) {
        let q = self.placed(p, roll).turned_z(-(roll + self.sense * rotation));
        let (s, n) = self.gears.cones[self.side].distance(q);
        (s, self.gears.flank_of(q - n * s))
    }

    /// Second derivative along the roll of the distance of a point at this placement, mm/rad²: positive where the
    /// displaced partner is still on the cutting side.
    fn feasible(&self, at: [f64; 2], point: &PinionPoint) -> bool {
        at[0].abs() <= 1.0 && at[1].abs() <= 1.0 && point.inside >= 0.0 && point.second > 0.0
    }

    fn meet_uv(&self, uv: [f64; 2], roll: f64) -> Option<(Meeting, PinionPoint)> {
        let point = self.gears.pinion_point(self.side, uv[0], uv[1])?;
        Some((self.meeting(point.p, roll)?, point))
    }

    /// First touch of one pair at a roll; `None` where nothing of this pair can touch.
    pub(crate) fn touch(&self, roll: f64) -> Option<Touch> {
        let mut best: Option<([f64; 2], Meeting)> = None;
        for (uv, point) in &self.grid {
            if !(point.inside >= 0.0 && point.second > 0.0) {
                continue;
            }
            let Some(meeting) = self.meeting(point.p, roll) else {
                continue;
            };
            if self.feasible(meeting.at, point) && best.is_none_or(|(_, b)| meeting.rotation < b.rotation) {
                best = Some((*uv, meeting));
            }
        }
        let (uv, meeting) = best?;
        if let Some(touch) = self.polish_inside(uv, roll) {
            return Some(touch);
        }
        self.zoom(uv, meeting, roll)
    }

    /// Newton's method on the gradient; `None` where it leaves the allowed region.
    fn polish_inside(&self, start: [f64; 2], roll: f64) -> Option<Touch> {
        let mut uv = start;
        let h = 2e-3;
        let f = |a: f64, b: f64| self.meet_uv([a, b], roll).map(|(m, _)| m.rotation);
        for _ in 0..25 {
            let c = f(uv[0], uv[1])?;
            let (e, w) = (f(uv[0] + h, uv[1])?, f(uv[0] - h, uv[1])?);
            let (n, s) = (f(uv[0], uv[1] + h)?, f(uv[0], uv[1] - h)?);
            let cross = f(uv[0] + h, uv[1] + h)? - f(uv[0] + h, uv[1] - h)? - f(uv[0] - h, uv[1] + h)?
                + f(uv[0] - h, uv[1] - h)?;
            let g = [(e - w) / (2.0 * h), (n - s) / (2.0 * h)];
            let (hxx, hyy, hxy) = (
                (e - 2.0 * c + w) / (h * h),
                (n - 2.0 * c + s) / (h * h),
                cross / (4.0 * h * h),
            );
            let det = hxx * hyy - hxy * hxy;
            if det <= 0.0 || hxx <= 0.0 {
                return None;
            }
            let step = [(hyy * g[0] - hxy * g[1]) / det, (hxx * g[1] - hxy * g[0]) / det];
            uv = [uv[0] - step[0].clamp(-0.2, 0.2), uv[1] - step[1].clamp(-0.2, 0.2)];
            if uv[0].abs() > REACH || uv[1].abs() > REACH {
                return None;
            }
            if step[0].abs() + step[1].abs() < 1e-7 {
                break;
            }
        }
        let (meeting, point) = self.meet_uv(uv, roll)?;
        self.feasible(meeting.at, &point).then_some(Touch {
            rotation: meeting.rotation,
            at: meeting.at,
            decider: Decider::Inside,
        })
    }

    /// Where the minimum lies on a border: the best feasible point of ever finer grids round the best one.
    fn zoom(&self, start: [f64; 2], first: Meeting, roll: f64) -> Option<Touch> {
        let (mut uv, mut best) = (start, first);
        let mut width = 2.0 * REACH / (CELLS as f64 - 1.0);
        for _ in 0..60 {
            let centre = uv;
            let before = best.rotation;
            for i in -6..=6 {
                for j in -6..=6 {
                    let trial = [
                        centre[0] + f64::from(i) * width / 6.0,
                        centre[1] + f64::from(j) * width / 6.0,
                    ];
                    let Some((meeting, point)) = self.meet_uv(trial, roll) else {
                        continue;
                    };
                    if self.feasible(meeting.at, &point) && meeting.rotation < best.rotation {
                        (uv, best) = (trial, meeting);
                    }
                }
            }
            if before - best.rotation < 1e-3 * width * width {
                width *= 0.6;
            }
            if width < 1e-7 {
                break;
            }
        }
        let (_, point) = self.meet_uv(uv, roll)?;
        let decider = if best.at[0].abs() > 0.9999 || best.at[1].abs() > 0.9999 {
            Decider::WheelEdge
        } else if point.inside < 1e-3 {
            Decider::PinionTip
        } else {
            Decider::EndOfEnvelope
        };
        Some(Touch {
            rotation: best.rotation,
            at: best.at,
            decider,
        })
    }

    /// Gap at a wheel point (x, y), the wheel turned by `rotation`: Newton's method on the pinion point whose foot it
    /// is, from `start`. Returns gap (mm), the pinion's parameters and whether the partner counts.
    pub(crate) fn gap_at(
        &self,
        at: [f64; 2],
        roll: f64,
        rotation: f64,
        start: [f64; 2],
    ) -> Option<(f64, [f64; 2], bool)> {
        let mut uv = start;
        let h = 1e-4;
        let foot = |uv: [f64; 2]| {
            let point = self.gears.pinion_point(self.side, uv[0], uv[1])?;
            let (s, foot) = self.gap_of(point.p, roll, rotation);
            Some((s, foot, point))
        };
        for _ in 0..20 {
            let (_, f, _) = foot(uv)?;
            let miss = [f[0] - at[0], f[1] - at[1]];
            let (_, fx, _) = foot([uv[0] + h, uv[1]])?;
            let (_, fy, _) = foot([uv[0], uv[1] + h])?;
            let (a, b) = ((fx[0] - f[0]) / h, (fy[0] - f[0]) / h);
            let (c, d) = ((fx[1] - f[1]) / h, (fy[1] - f[1]) / h);
            let det = a * d - b * c;
            let step = [(d * miss[0] - b * miss[1]) / det, (a * miss[1] - c * miss[0]) / det];
            uv = [uv[0] - step[0].clamp(-0.3, 0.3), uv[1] - step[1].clamp(-0.3, 0.3)];
            if !(uv[0].abs() < 4.0 && uv[1].abs() < 4.0) {
                return None;
            }
            if step[0].abs() + step[1].abs() < 1e-10 {
                break;
            }
        }
        let (s, f, point) = foot(uv)?;
        ((f[0] - at[0]).abs() + (f[1] - at[1]).abs() < 1e-7).then_some((
            s,
            uv,
            point.inside >= 0.0 && point.second > 0.0,
        ))
    }
}

/// One side's motion: the lower envelope over all pairs.
#[derive(Debug)]
pub(crate) struct Motion<'a> {
    pub(crate) side: Side<'a>,
}

impl<'a> Motion<'a> {
    pub(crate) fn new(gears: &'a Gears, side: usize, moved: Moved) -> Self {
        Self {
            side: Side::new(gears, side, moved),
        }
    }

    /// First touch of whichever pair touches at wheel angle φ, and the pair's own roll.
    pub(crate) fn envelope(&self, roll: f64) -> Option<(Touch, f64)> {
        let pitch = self.side.tooth_pitch();
        let mut best: Option<(Touch, f64)> = None;
        for pair in -4..=4 {
            let own = roll + f64::from(pair) * pitch;
            if let Some(t) = self.side.touch(own)
                && best.as_ref().is_none_or(|(b, _)| t.rotation < b.rotation)
            {
                best = Some((t, own));
            }
        }
        best
    }
}
