//! Contact by explicit pinion points: each is moved by the placement and measured against the cutter cone of the wheel.
//!
//! For a pinion point the distance from the cone is the gap of the wheel point at its foot, exactly; the wheel rotation
//! that brings the point onto the cone is found by Newton's method; first touch is the smallest such rotation over all
//! points whose foot lies in the x–y square and which lie inside the pinion's face cone on the regular envelope.

use super::flank::{Gears, PinionPoint};
use super::vector::{V, X, Y, Z, solve};

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
/// Stands for "no border" among the borders.
const INSIDE: usize = 6;

/// One side at one placement.
#[derive(Debug)]
pub(crate) struct Side<'a> {
    gears: &'a Gears,
    index: usize,
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
            index: side,
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
            let (s, n) = self.gears.cones[self.index].distance(q);
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
        let (s, n) = self.gears.cones[self.index].distance(q);
        (s, self.gears.flank_of(q - n * s))
    }

    /// Whether a touching place counts: in the square, under the pinion's tip, on the regular envelope.
    fn feasible(at: [f64; 2], point: &PinionPoint) -> bool {
        at[0].abs() <= 1.0 && at[1].abs() <= 1.0 && point.inside >= 0.0 && point.second > 0.0
    }

    fn meet_uv(&self, uv: [f64; 2], roll: f64) -> Option<(Meeting, PinionPoint)> {
        let point = self.gears.pinion_point(self.index, uv[0], uv[1])?;
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
            if Self::feasible(meeting.at, point) && best.is_none_or(|(_, b)| meeting.rotation < b.rotation) {
                best = Some((*uv, meeting));
            }
        }
        let (uv, meeting) = best?;
        if let Some(touch) = self.polish_inside(uv, roll) {
            return Some(touch);
        }
        self.on_borders(uv, meeting, roll)
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
        Self::feasible(meeting.at, &point).then_some(Touch {
            rotation: meeting.rotation,
            at: meeting.at,
            decider: Decider::Inside,
        })
    }

    /// Rotation and the borders' slacks (toe, heel, root, top, pinion tip, end of the envelope) of a pinion point.
    fn slacks(&self, uv: [f64; 2], roll: f64) -> Option<(f64, [f64; 6], [f64; 2])> {
        let (meeting, point) = self.meet_uv(uv, roll)?;
        let [x, y] = meeting.at;
        Some((
            meeting.rotation,
            [1.0 + x, 1.0 - x, 1.0 + y, 1.0 - y, point.inside, point.second / 100.0],
            meeting.at,
        ))
    }

    /// Where the minimum lies on a border: finer grids round the best point to come near, then Newton's method on the
    /// equations of a minimum under one border, or of a corner of two; the least feasible one.
    fn on_borders(&self, start: [f64; 2], first: Meeting, roll: f64) -> Option<Touch> {
        let (mut uv, mut best) = (start, first.rotation);
        let mut width = 2.0 * REACH / (CELLS as f64 - 1.0);
        for _ in 0..8 {
            let centre = uv;
            for i in -4..=4 {
                for j in -4..=4 {
                    let trial = [
                        centre[0] + f64::from(i) * width / 4.0,
                        centre[1] + f64::from(j) * width / 4.0,
                    ];
                    if let Some((rotation, slack, _)) = self.slacks(trial, roll)
                        && slack.iter().all(|s| *s >= 0.0)
                        && rotation < best
                    {
                        (uv, best) = (trial, rotation);
                    }
                }
            }
            width *= 0.6;
        }
        let none = [f64::NAN; 6];
        let at = |uv: [f64; 2]| self.slacks(uv, roll).map_or((f64::NAN, none), |(r, s, _)| (r, s));
        let h = 1e-3;
        let gradient = |uv: [f64; 2], k: usize| {
            let value = |uv| if k == 6 { at(uv).0 * 1e3 } else { at(uv).1[k] };
            [
                (value([uv[0] + h, uv[1]]) - value([uv[0] - h, uv[1]])) / (2.0 * h),
                (value([uv[0], uv[1] + h]) - value([uv[0], uv[1] - h])) / (2.0 * h),
            ]
        };
        let mut found: Option<(f64, [f64; 2], usize)> = None;
        let mut keep = |candidate: [f64; 2], border: usize| {
            if let Some((rotation, slack, at)) = self.slacks(candidate, roll)
                && slack.iter().all(|s| *s >= -1e-7)
                && (candidate[0] - uv[0]).abs() + (candidate[1] - uv[1]).abs() < 0.3
                && found.is_none_or(|(r, _, _)| rotation < r)
            {
                found = Some((rotation, at, border));
            }
        };
        // No border at all: the first search may have failed only because its steps were too long.
        let (x, _) = solve(|x| gradient(x, 6), uv, [1e-3, 1e-3], 30);
        keep(x, INSIDE);
        for border in 0..6 {
            let (x, _) = solve(
                |x: [f64; 3]| {
                    let uv = [x[0], x[1]];
                    let (g, c) = (gradient(uv, 6), gradient(uv, border));
                    [g[0] - x[2] * c[0], g[1] - x[2] * c[1], at(uv).1[border]]
                },
                [uv[0], uv[1], 0.0],
                [1e-3, 1e-3, 1e-3],
                30,
            );
            keep([x[0], x[1]], border);
            for other in 0..border {
                let (x, _) = solve(|x| [at(x).1[border], at(x).1[other]], uv, [1e-4, 1e-4], 30);
                keep(x, border);
            }
        }
        let (rotation, at, border) = found?;
        let decider = match border {
            0..=3 => Decider::WheelEdge,
            4 => Decider::PinionTip,
            INSIDE => Decider::Inside,
            _ => Decider::EndOfEnvelope,
        };
        Some(Touch { rotation, at, decider })
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
            let point = self.gears.pinion_point(self.index, uv[0], uv[1])?;
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

/// One side's motion: the touching curve of one pair, and the lower envelope over all pairs one pitch apart.
#[derive(Debug)]
pub(crate) struct Motion<'a> {
    pub(crate) side: Side<'a>,
    first: f64,
    step: f64,
    curve: Vec<Option<Touch>>,
}

impl<'a> Motion<'a> {
    /// The pair's curve over `pitches` to each side of the designed middle, `per_pitch` samples a pitch.
    pub(crate) fn new(gears: &'a Gears, side: usize, moved: Moved, pitches: i32, per_pitch: i32) -> Self {
        let side = Side::new(gears, side, moved);
        let step = side.tooth_pitch() / f64::from(per_pitch);
        let half = pitches * per_pitch;
        let curve = (-half..=half).map(|k| side.touch(f64::from(k) * step)).collect();
        Self {
            side,
            first: -f64::from(half) * step,
            step,
            curve,
        }
    }

    /// The pair's curve at a roll, by the cubic through the four samples round it; `None` beyond the samples.
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a sample's number, checked not to be negative"
    )]
    pub(crate) fn pair(&self, roll: f64) -> Option<f64> {
        let place = (roll - self.first) / self.step;
        let k = place.floor();
        let t = place - k;
        let value = |i: f64| {
            if k + i < 0.0 {
                return None;
            }
            self.curve.get((k + i) as usize)?.map(|touch| touch.rotation)
        };
        let (b, c) = (value(0.0)?, if t == 0.0 { value(0.0)? } else { value(1.0)? });
        let (Some(a), Some(d)) = (value(-1.0), value(2.0)) else {
            return Some(b + t * (c - b));
        };
        Some(
            -a * t * (t - 1.0) * (t - 2.0) / 6.0 + b * (t + 1.0) * (t - 1.0) * (t - 2.0) / 2.0
                - c * (t + 1.0) * t * (t - 2.0) / 2.0
                + d * (t + 1.0) * t * (t - 1.0) / 6.0,
        )
    }

    /// D(φ): the lower envelope over all pairs.
    pub(crate) fn envelope(&self, roll: f64) -> Option<f64> {
        let pitch = self.side.tooth_pitch();
        (-8..=8)
            .filter_map(|k| self.pair(roll + f64::from(k) * pitch))
            .reduce(|a, b| if b < a { b } else { a })
    }

    /// Least and largest value of the envelope over one pitch: fine samples, the change-over found by halving.
    pub(crate) fn extremes(&self) -> Option<[f64; 2]> {
        let pitch = self.side.tooth_pitch();
        const FINE: usize = 4096;
        let values: Option<Vec<f64>> = (0..FINE)
            .map(|k| self.envelope(k as f64 / FINE as f64 * pitch))
            .collect();
        let values = values?;
        let low = values.iter().fold(f64::MAX, |m, v| if *v < m { *v } else { m });
        let at = (0..FINE).max_by(|&i, &j| values[i].total_cmp(&values[j]))?;
        // Round the largest sample the envelope is a peak: golden section.
        let (mut a, mut b) = (
            (at as f64 - 1.0) / FINE as f64 * pitch,
            (at as f64 + 1.0) / FINE as f64 * pitch,
        );
        for _ in 0..60 {
            let (c, d) = (b - 0.618_033_988_75 * (b - a), a + 0.618_033_988_75 * (b - a));
            if self.envelope(c)? > self.envelope(d)? {
                b = d;
            } else {
                a = c;
            }
        }
        Some([low, self.envelope(0.5 * (a + b))?])
    }

    /// Peak to peak over one pitch, rad.
    pub(crate) fn transmission_error(&self) -> Option<f64> {
        self.extremes().map(|[low, high]| high - low)
    }
}

/// Lash over one pitch: least, mean, largest, mm (definition of `lashwright::contact::Lash`).
pub(crate) fn lash(drive: &Motion<'_>, coast: &Motion<'_>) -> Option<[f64; 3]> {
    let n = &drive.side.gears.numbers;
    let shift = 2.0 * drive.side.sense * n.lash / n.d_e2;
    const FINE: usize = 4096;
    let pitch = drive.side.tooth_pitch();
    let (mut low, mut sum, mut high) = (f64::MAX, 0.0, f64::MIN);
    for k in 0..FINE {
        let roll = k as f64 / FINE as f64 * pitch;
        let value = n.lash + (drive.envelope(roll)? + coast.envelope(roll + shift)?) * n.d_e2 / 2.0;
        low = if value < low { value } else { low };
        high = if value > high { value } else { high };
        sum += value;
    }
    Some([low, sum / FINE as f64, high])
}

/// Shares of the roll over which the touching point lies within 0.02 of an edge of the wheel's flank, and on the
/// pinion's tip edge, from `rolls` places over one pitch.
pub(crate) fn edge_shares(motion: &Motion<'_>, rolls: i32) -> Option<[f64; 2]> {
    let pitch = motion.side.tooth_pitch();
    let (mut wheel, mut tip) = (0.0, 0.0);
    for k in 0..rolls {
        let roll = f64::from(k) / f64::from(rolls) * pitch;
        // The pair that touches, by the curve; the place itself anew.
        let pairs = (-8..=8).filter_map(|p| {
            let own = roll + f64::from(p) * pitch;
            Some((motion.pair(own)?, own))
        });
        let (_, own) = pairs.reduce(|a, b| if b.0 < a.0 { b } else { a })?;
        let touch = motion.side.touch(own)?;
        if touch.decider == Decider::PinionTip {
            tip += 1.0;
        }
        if touch.at[0].abs() > 0.98 || touch.at[1].abs() > 0.98 {
            wheel += 1.0;
        }
    }
    Some([wheel / f64::from(rolls), tip / f64::from(rolls)])
}

/// The marked contact on the wheel flank.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Pattern {
    pub(crate) area: f64,
    pub(crate) centroid: [f64; 2],
    /// Least and largest x, least and largest y.
    pub(crate) extents: [f64; 4],
}

/// Change-over rolls: where the pair's curve crosses the next pair's, and their like a pitch apart.
fn change_overs(motion: &Motion<'_>) -> Vec<f64> {
    let pitch = motion.side.tooth_pitch();
    let difference = |roll: f64| Some(motion.pair(roll)? - motion.pair(roll + pitch)?);
    let mut changes = Vec::new();
    const STEPS: i32 = 600;
    for k in -STEPS..STEPS {
        let (a, b) = (f64::from(k) * pitch / 100.0, f64::from(k + 1) * pitch / 100.0);
        if let (Some(fa), Some(fb)) = (difference(a), difference(b))
            && fa * fb <= 0.0
        {
            let at = super::vector::halve(|r| difference(r).unwrap_or(f64::NAN), a, b);
            for k in -8..=8 {
                changes.push(at + f64::from(k) * pitch);
            }
        }
    }
    changes.sort_by(f64::total_cmp);
    changes.dedup_by(|a, b| (*a - *b).abs() < 1e-9);
    changes
}

/// Least gaps at wheel points, mm.
pub(crate) fn least_gaps(motion: &Motion<'_>, places: &[[f64; 2]]) -> Vec<Option<f64>> {
    let changes = change_overs(motion);
    places.iter().map(|at| least_gap(motion, &changes, 0.25, *at)).collect()
}

/// Least gap at a wheel point over all rolls, the wheel held by whichever pair touches, mm. Gaps above `near` are not
/// looked into any further.
fn least_gap(motion: &Motion<'_>, changes: &[f64], near: f64, at: [f64; 2]) -> Option<f64> {
    let side = &motion.side;
    let middle = side.gears.pinion_point(side.index, at[0], at[1])?.roll;
    let reach = 0.5 * side.tooth_pitch();
    let mut uv = at;
    let mut gap = |roll: f64| {
        let rotation = motion.envelope(roll)?;
        let (gap, found, counts) = side.gap_at(at, roll, rotation, uv)?;
        uv = found;
        counts.then_some(gap)
    };
    let mut borders = vec![middle - reach];
    borders.extend(changes.iter().copied().filter(|c| (c - middle).abs() < reach));
    borders.push(middle + reach);
    let mut best: Option<f64> = None;
    let mut keep = |value: Option<f64>| {
        if let Some(v) = value
            && best.is_none_or(|b| v < b)
        {
            best = Some(v);
        }
    };
    const SAMPLES: i32 = 8;
    for piece in borders.windows(2) {
        let (first, last) = (piece[0], piece[1]);
        // Samples first: the partner may count over a part of the piece only.
        let step = (last - first) / f64::from(SAMPLES);
        let (mut lowest, mut at_lowest) = (f64::MAX, first);
        for k in 0..=SAMPLES {
            let roll = first + f64::from(k) * step;
            let value = gap(roll);
            keep(value);
            if value.is_some_and(|v| v < lowest) {
                (lowest, at_lowest) = (value.unwrap_or(f64::MAX), roll);
            }
        }
        if lowest > near {
            continue;
        }
        let (mut a, mut b) = ((at_lowest - step).max(first), (at_lowest + step).min(last));
        for _ in 0..20 {
            let (c, d) = (b - 0.618_033_988_75 * (b - a), a + 0.618_033_988_75 * (b - a));
            let (at_c, at_d) = (gap(c), gap(d));
            keep(at_c);
            keep(at_d);
            // Where neither counts, toward the sample that did.
            let left = match (at_c, at_d) {
                (None, None) => at_lowest < c,
                _ => at_c.unwrap_or(f64::MAX) < at_d.unwrap_or(f64::MAX),
            };
            if left {
                b = d;
            } else {
                a = c;
            }
        }
    }
    best
}

/// The pattern under a film (mm), on a grid of `cells` × `cells` of the x–y square; area and centroid by sub-cells of
/// the bilinear surface of the least gap.
pub(crate) fn pattern(motion: &Motion<'_>, film: f64, cells: usize) -> Option<Pattern> {
    let changes = change_overs(motion);
    let place = |k: usize| 2.0 * k as f64 / cells as f64 - 1.0;
    let gaps: Vec<Vec<f64>> = (0..=cells)
        .map(|i| {
            (0..=cells)
                .map(|j| least_gap(motion, &changes, 3.0 * film, [place(i), place(j)]).unwrap_or(f64::NAN))
                .collect()
        })
        .collect();
    const SUB: usize = 16;
    let (mut count, mut sum) = (0.0, [0.0, 0.0]);
    let mut extents = [f64::MAX, f64::MIN, f64::MAX, f64::MIN];
    for i in 0..cells {
        for j in 0..cells {
            let corner = [gaps[i][j], gaps[i + 1][j], gaps[i][j + 1], gaps[i + 1][j + 1]];
            for a in 0..SUB {
                for b in 0..SUB {
                    let (u, v) = ((a as f64 + 0.5) / SUB as f64, (b as f64 + 0.5) / SUB as f64);
                    let gap = (corner[0] * (1.0 - u) + corner[1] * u) * (1.0 - v)
                        + (corner[2] * (1.0 - u) + corner[3] * u) * v;
                    if gap < film {
                        let (x, y) = (place(i) + u * 2.0 / cells as f64, place(j) + v * 2.0 / cells as f64);
                        count += 1.0;
                        sum = [sum[0] + x, sum[1] + y];
                        extents = [
                            extents[0].min(x),
                            extents[1].max(x),
                            extents[2].min(y),
                            extents[3].max(y),
                        ];
                    }
                }
            }
        }
    }
    let all = (cells * cells * SUB * SUB) as f64;
    (count > 0.0).then(|| Pattern {
        area: count / all,
        centroid: [sum[0] / count, sum[1] / count],
        extents,
    })
}
