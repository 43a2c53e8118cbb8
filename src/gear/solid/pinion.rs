//! Teeth of the pinion: the eased envelope where it is regular, and a fillet for the eye.
//!
//! Source: our own construction, for drawing.

use nalgebra::Vector3;

use crate::gear::pinion::Roll;
use crate::gear::{GearSet, PinionFlank, Side};
use crate::numerics::math;

use super::section::{FlankSample, Numbering, Place, Section, Teeth, index, turn_of};
use super::{Detail, SolidError, ToothedPart};

/// Narrowest land or space, mm, where flanks would meet.
const LEAST_WIDTH_MM: f64 = 0.05;
/// Where the fillet begins: height over the root cone in clearances. The wheel's tip passes one clearance over it.
const FILLET_START: f64 = 0.6;
/// Largest tilt of the eased flank against the envelope that normals show, rad.
const LARGEST_TILT: f64 = 0.03;
/// Longest step from station to station that seeds follow, in wheel face widths.
const SEED_STEP: f64 = 0.1;
/// Accuracy of points, mm.
const ACCURACY_MM: f64 = 1e-9;

/// Section lines: at right angles to the pinion's pitch cone, s along its generator from the mean point and h out of it.
struct Lines<'a> {
    set: &'a GearSet,
    sin: f64,
    cos: f64,
}

impl Lines<'_> {
    /// (axial, radius) of (s, h).
    fn place(&self, s: f64, h: f64) -> (f64, f64) {
        let pitch = self.set.pitch();
        (
            pitch.pinion_crossing_to_mean_mm + s * self.cos - h * self.sin,
            pitch.pinion_mean_radius_mm + s * self.sin + h * self.cos,
        )
    }

    /// s of an axial place and radius.
    fn station(&self, axial: f64, r: f64) -> f64 {
        let pitch = self.set.pitch();
        (axial - pitch.pinion_crossing_to_mean_mm) * self.cos + (r - pitch.pinion_mean_radius_mm) * self.sin
    }

    /// h of the root cone and of the face cone at s.
    fn heights(&self, s: f64) -> [f64; 2] {
        let (axial, r) = self.place(s, 0.0);
        let blank = self.set.blank();
        [&blank.pinion_root, &blank.pinion_face]
            .map(|cone| (cone.radius_mm(axial) - r) / (self.cos + cone.slope * self.sin))
    }
}

/// A place on a flank by the wheel point that it meets.
#[derive(Debug, Clone, Copy)]
struct Seed {
    h: f64,
    xy: [f64; 2],
}

pub(super) fn teeth(set: &GearSet, detail: Detail) -> Result<Teeth, SolidError> {
    let (sin, cos) = math::sin_cos(set.pitch().pinion_pitch_angle_rad);
    let lines = Lines { set, sin, cos };
    let stations = stations(&lines, 2 * detail.along);
    let up = detail.up + detail.up / 2;
    // The drive flank's normal points into the tooth, which lies behind the flank at the larger angle of a space.
    let drive = set.pinion_flank(Side::Drive);
    let missing = |side| SolidError::PinionFlank { side, along: 50.0 };
    let middle = drive.meeting(0.0, 0.0).ok_or(missing(Side::Drive))?;
    let p = middle.point_mm;
    let around = p.y * middle.normal.z - p.z * middle.normal.y;
    let sides = if around > 0.0 {
        [Side::Coast, Side::Drive]
    } else {
        [Side::Drive, Side::Coast]
    };
    let mut seeds = [Seed { h: 0.0, xy: [0.0; 2] }; 2];
    for (seed, side) in seeds.iter_mut().zip(sides) {
        *seed = first_seed(&lines, set.pinion_flank(side)).ok_or(missing(side))?;
    }
    // The station nearest to the middle where both flanks exist, in steps as fine as seeds can follow.
    let last = stations.len().saturating_sub(1);
    let middle_s = f64::midpoint(
        stations.first().copied().unwrap_or(0.0),
        stations.last().copied().unwrap_or(0.0),
    );
    let mut order: Vec<(usize, f64)> = stations.iter().copied().enumerate().collect();
    order.sort_by(|(_, a), (_, b)| (a - middle_s).abs().total_cmp(&(b - middle_s).abs()));
    let mut start = None;
    for (i, s) in order {
        let mut here = seeds;
        for (seed, side) in here.iter_mut().zip(sides) {
            approach(&lines, set.pinion_flank(side), middle_s, s, seed);
        }
        if let Ok(section) = section(&lines, sides, s, 50.0, up, &mut here, None) {
            start = Some((i, s, section, here));
            break;
        }
    }
    let Some((start, start_s, first, seeds)) = start else {
        // Says which flank is missing.
        let mut here = seeds;
        return Err(section(&lines, sides, middle_s, 50.0, up, &mut here, None)
            .err()
            .unwrap_or(SolidError::NoTooth {
                member: ToothedPart::Pinion,
            }));
    };
    let follow = |indices: &mut dyn Iterator<Item = usize>| -> Result<Vec<Section>, SolidError> {
        let mut seeds = seeds;
        let (mut before_s, mut found) = (start_s, vec![first.clone()]);
        for i in indices {
            let s = stations.get(i).copied().unwrap_or(start_s);
            for (seed, side) in seeds.iter_mut().zip(sides) {
                approach(&lines, set.pinion_flank(side), before_s, s, seed);
            }
            let along = 100.0 * i as f64 / last as f64;
            let neighbour = found.last().map(|section| (section, before_s));
            let next = section(&lines, sides, s, along, up, &mut seeds, neighbour)?;
            found.push(next);
            before_s = s;
        }
        Ok(found)
    };
    let mut sections = follow(&mut (0..start).rev())?;
    sections.reverse();
    sections.extend(follow(&mut (start + 1..=last))?.into_iter().skip(1));
    Ok(Teeth {
        count: set.design().pinion_teeth,
        low_side: sides[0],
        numbering: Numbering::Teeth,
        sections,
        land_fields: index((detail.up / 3).max(1)),
    })
}

/// A place of the flank in the middle of its length: at the middle of its height or, where the envelope is not regular
/// there, further up the pinion, which is down the wheel.
fn first_seed(lines: &Lines<'_>, flank: &PinionFlank) -> Option<Seed> {
    [0.0, -0.25, -0.5, -0.75, -0.95].iter().find_map(|&y| {
        let met = flank.meeting(0.0, y)?.point_mm;
        let s = lines.station(met.x, radius(met));
        let (axial, r) = lines.place(s, 0.0);
        Some(Seed {
            h: (radius(met) - r) * lines.cos - (met.x - axial) * lines.sin,
            xy: [0.0, y],
        })
    })
}

/// Takes a seed from one station to another.
fn approach(lines: &Lines<'_>, flank: &PinionFlank, from: f64, to: f64, seed: &mut Seed) {
    let steps = ((to - from).abs() / (SEED_STEP * lines.set.design().wheel_face_width_mm)).ceil();
    let mut i = 1.0;
    while i <= steps {
        if let Some(found) = anywhere(lines, flank, from + (to - from) * i / steps, seed.xy) {
            *seed = found;
        }
        i += 1.0;
    }
}

/// A place of the flank at this station, near the middle of its height or further up.
fn anywhere(lines: &Lines<'_>, flank: &PinionFlank, s: f64, xy: [f64; 2]) -> Option<Seed> {
    let [root, face] = lines.heights(s);
    [0.55, 0.7, 0.8, 0.9, 0.96].iter().find_map(|part| {
        let h = root + part * (face - root);
        let (axial, r) = lines.place(s, h);
        solve(flank, axial, r, xy).map(|xy| Seed { h, xy })
    })
}

fn radius(p: Vector3<f64>) -> f64 {
    (p.y * p.y + p.z * p.z).sqrt()
}

/// Stations from toe to heel: between them lie the ends of the cones and all that meets the wheel's flanks, but not more
/// than a quarter of the length beyond the cones, as where the envelope is nearly irregular it runs far away.
fn stations(lines: &Lines<'_>, fields: u32) -> Vec<f64> {
    let set = lines.set;
    let mut range = [f64::INFINITY, f64::NEG_INFINITY];
    let take = |range: &mut [f64; 2], s: f64| {
        let [low, high] = *range;
        *range = [if s < low { s } else { low }, if s > high { s } else { high }];
    };
    for cone in [&set.blank().pinion_face, &set.blank().pinion_root] {
        for axial in cone.ends_mm {
            take(&mut range, lines.station(axial, cone.radius_mm(axial)));
        }
    }
    let [toe, heel] = range;
    let most = 0.25 * (heel - toe);
    for side in Side::BOTH {
        let flank = set.pinion_flank(side);
        for x in [-1.0, 1.0] {
            for i in 0..=8 {
                let Some(met) = flank.meeting(x, f64::from(i) / 4.0 - 1.0) else {
                    continue;
                };
                let p = met.point_mm;
                if flank.depth_under_tip_mm(p) >= 0.0 {
                    let s = lines.station(p.x, radius(p));
                    take(&mut range, clamped(s, toe - most, heel + most));
                }
            }
        }
    }
    let [low, high] = range;
    (0..=fields)
        .map(|i| low + (high - low) * f64::from(i) / f64::from(fields))
        .collect()
}

/// The wheel point whose partner on the eased flank lies at this axial place and radius: Newton's method.
fn solve(flank: &PinionFlank, axial: f64, r: f64, start: [f64; 2]) -> Option<[f64; 2]> {
    let [mut x, mut y] = start;
    let misses = |x: f64, y: f64| {
        let p = flank.meeting(x, y)?.point_mm;
        Some((p.x - axial, radius(p) - r))
    };
    let d = 1e-6;
    for _ in 0..25 {
        let (f, g) = misses(x, y)?;
        if f.abs() < ACCURACY_MM && g.abs() < ACCURACY_MM {
            return Some([x, y]);
        }
        let (fx, gx) = misses(x + d, y)?;
        let (fy, gy) = misses(x, y + d)?;
        let (fx, gx, fy, gy) = ((fx - f) / d, (gx - g) / d, (fy - f) / d, (gy - g) / d);
        let determinant = fx * gy - fy * gx;
        let (dx, dy) = ((fy * g - gy * f) / determinant, (gx * f - fx * g) / determinant);
        let size = (dx * dx + dy * dy).sqrt();
        if !size.is_finite() {
            return None;
        }
        let part = if size > 0.3 { 0.3 / size } else { 1.0 };
        x += part * dx;
        y += part * dy;
        if (x - start[0]).abs() + (y - start[1]).abs() > 1.5 {
            return None;
        }
    }
    None
}

/// Goes from a known place of a section to height `to` in `steps`; where the flank ends, to the last place that exists.
fn march(lines: &Lines<'_>, flank: &PinionFlank, s: f64, from: Seed, to: f64, steps: u32) -> Seed {
    let solve_at = |h: f64, xy| {
        let (axial, r) = lines.place(s, h);
        solve(flank, axial, r, xy).map(|xy| Seed { h, xy })
    };
    let mut here = from;
    for i in 1..=steps {
        let next = from.h + (to - from.h) * f64::from(i) / f64::from(steps);
        if let Some(found) = solve_at(next, here.xy) {
            here = found;
            continue;
        }
        let mut beyond = next;
        for _ in 0..8 {
            match solve_at(0.5 * (here.h + beyond), here.xy) {
                Some(found) => here = found,
                None => beyond = 0.5 * (here.h + beyond),
            }
        }
        break;
    }
    here
}

/// What a flank offers at a station.
#[derive(Clone, Copy)]
struct Reach {
    bottom: Seed,
    top: Seed,
}

fn reach(lines: &Lines<'_>, flank: &PinionFlank, s: f64, seed: &mut Seed) -> Option<Reach> {
    let [root, face] = lines.heights(s);
    let target = root + FILLET_START * lines.set.blank().clearance_mm;
    // From the neighbouring station; where the flank does not exist at that height, further up.
    let start = anywhere(lines, flank, s, seed.xy)?;
    *seed = start;
    Some(Reach {
        bottom: march(lines, flank, s, start, target, 6),
        top: march(lines, flank, s, start, face, 4),
    })
}

/// A point of the flank, in cylinder coordinates; the coast flank stands back by the designed lash.
fn sample(lines: &Lines<'_>, side: Side, s: f64, at: Seed) -> Option<FlankSample> {
    let set = lines.set;
    let flank = set.pinion_flank(side);
    let met = flank.meeting(at.xy[0], at.xy[1])?;
    let gradient = flank
        .level(met.point_mm, &Roll::new(met.roll_rad, flank.inverse_ratio()))
        .gradient;
    let size = gradient.norm();
    if size.is_nan() || size <= 0.0 {
        return None;
    }
    // Out of the body. At the end of the regular envelope the eased flank would stand on edge over a few micrometres,
    // which is not for the eye.
    let tilt = gradient / size - met.normal;
    let part = if tilt.norm() > LARGEST_TILT {
        LARGEST_TILT / tilt.norm()
    } else {
        1.0
    };
    let normal = met.normal + tilt * part;
    let normal = normal * (-1.0 / normal.norm());
    let p = met.point_mm;
    let (axial, r) = lines.place(s, at.h);
    let (outward_y, outward_z) = (p.y / radius(p), p.z / radius(p));
    let around = outward_y * normal.z - outward_z * normal.y;
    let back = match side {
        Side::Drive => 0.0,
        Side::Coast => lash_turn_rad(set) * if around > 0.0 { -1.0 } else { 1.0 },
    };
    Some(FlankSample {
        place: Place {
            r,
            angle: math::atan2(p.z, p.y) + back,
            axial,
        },
        normal: [outward_y * normal.y + outward_z * normal.z, around, normal.x],
        coordinates: at.xy,
    })
}

/// Angle by which the pinion's coast flank stands back: the designed lash j0 at the wheel's outer pitch radius d_e2/2,
/// taken to the pinion by the ratio, rad.
fn lash_turn_rad(set: &GearSet) -> f64 {
    let design = set.design();
    2.0 * design.lash_mm / design.wheel_outer_pitch_diameter_mm / set.ratio().abs()
}

fn section(
    lines: &Lines<'_>,
    sides: [Side; 2],
    s: f64,
    along: f64,
    up: u32,
    seeds: &mut [Seed; 2],
    neighbour: Option<(&Section, f64)>,
) -> Result<Section, SolidError> {
    let set = lines.set;
    let [low_seed, high_seed] = seeds;
    let [low_side, high_side] = sides;
    let missing = |side| SolidError::PinionFlank { side, along };
    let [root, face] = lines.heights(s);
    // Where a flank has no regular point at all at this station, it goes on from the neighbouring one.
    let nowhere = |h| Seed { h, xy: [f64::NAN; 2] };
    let beyond = Reach {
        bottom: nowhere(root + FILLET_START * set.blank().clearance_mm),
        top: nowhere(face),
    };
    let find = |side, seed| match reach(lines, set.pinion_flank(side), s, seed) {
        None if neighbour.is_some() => Ok(beyond),
        found => found.ok_or(missing(side)),
    };
    let low_reach = find(low_side, low_seed)?;
    let high_reach = find(high_side, high_seed)?;
    let pitch = 2.0 * std::f64::consts::PI / f64::from(set.design().pinion_teeth);
    let mut top = if low_reach.top.h < high_reach.top.h {
        low_reach.top.h
    } else {
        high_reach.top.h
    };
    let step = 0.04 * (face - root);
    let mut bottoms = [low_reach.bottom, high_reach.bottom];
    for _ in 0..25 {
        if bottoms.iter().any(|b| b.h >= top - 0.5 * step) {
            break;
        }
        let flank = |side, bottom: Seed| {
            let found = samples(lines, side, s, bottom, top, up);
            let continued = || {
                let (section, from) = neighbour?;
                let samples: Vec<_> = if side == low_side {
                    // The flank of the tooth before; that of tooth 0 is meant.
                    let ahead = |sample: &FlankSample| FlankSample {
                        place: sample.place.turned(pitch),
                        ..*sample
                    };
                    section.low.iter().rev().map(ahead).collect()
                } else {
                    section.high.clone()
                };
                Some(continued(lines, &samples, s, s - from, [bottom.h, top]))
            };
            found.or_else(continued).ok_or(missing(side))
        };
        let (mut low, mut high) = (flank(low_side, bottoms[0])?, flank(high_side, bottoms[1])?);
        let Some(start) = high.first().map(|b| b.place.angle) else {
            break;
        };
        unroll(&mut high, start);
        unroll(&mut low, start);
        // Both belong to tooth 0; the flank at the smaller angle of a space is that of the tooth before.
        let thickness = angle_between(high.last(), low.last());
        let width = pitch - angle_between(high.first(), low.first());
        let (_, r_top) = lines.place(s, top);
        if thickness * r_top < LEAST_WIDTH_MM {
            top -= step;
            continue;
        }
        if width * lines.place(s, root).1 < LEAST_WIDTH_MM {
            for (bottom, side) in bottoms.iter_mut().zip(sides) {
                let raised = march(lines, set.pinion_flank(side), s, *bottom, bottom.h + step, 1);
                *bottom = if raised.h > bottom.h {
                    raised
                } else {
                    nowhere(bottom.h + step)
                };
            }
            continue;
        }
        for sample in &mut low {
            sample.place.angle -= pitch;
        }
        low.reverse();
        let bottom = fillets(lines, s, root, &low, &high, bottoms, (up / 3).max(2));
        return Ok(Section { low, bottom, high });
    }
    Err(SolidError::NoTooth {
        member: ToothedPart::Pinion,
    })
}

/// From the first flank of a tooth to the second, rad, −π to π.
fn angle_between(from: Option<&FlankSample>, to: Option<&FlankSample>) -> f64 {
    let turn = turn_of(to.map_or(0.0, |s| s.place.angle) - from.map_or(0.0, |s| s.place.angle) + std::f64::consts::PI);
    turn - std::f64::consts::PI
}

/// All angles on the branch of `start`.
fn unroll(flank: &mut [FlankSample], start: f64) {
    for sample in flank {
        sample.place.angle = start + turn_of(sample.place.angle - start + std::f64::consts::PI) - std::f64::consts::PI;
    }
}

/// Samples from bottom to top. Where one does not exist between two that do it is put between them, without normal and
/// coordinates.
fn samples(lines: &Lines<'_>, side: Side, s: f64, bottom: Seed, top: f64, up: u32) -> Option<Vec<FlankSample>> {
    let mut found = Vec::new();
    let mut here = bottom;
    for j in 0..=up {
        let h = bottom.h + (top - bottom.h) * f64::from(j) / f64::from(up);
        let (axial, r) = lines.place(s, h);
        let next = if j == 0 {
            Some(bottom)
        } else {
            solve(lines.set.pinion_flank(side), axial, r, here.xy).map(|xy| Seed { h, xy })
        };
        if let Some(next) = next {
            here = next;
        }
        let sample = next.and_then(|next| sample(lines, side, s, next));
        found.push(sample.unwrap_or(FlankSample {
            place: Place {
                r,
                angle: f64::NAN,
                axial,
            },
            normal: [0.0; 3],
            coordinates: [f64::NAN; 2],
        }));
    }
    bridge(&mut found)?;
    Some(found)
}

/// A flank that goes on from its samples (bottom to top) at the neighbouring station along a spiral with the pinion's mean
/// spiral angle, left hand: for the eye, without normals and coordinates.
fn continued(lines: &Lines<'_>, from: &[FlankSample], s: f64, ahead: f64, [bottom, top]: [f64; 2]) -> Vec<FlankSample> {
    let tan = math::tan(lines.set.pitch().pinion_spiral_angle_rad);
    let fields = from.len().saturating_sub(1) as f64;
    from.iter()
        .enumerate()
        .map(|(j, sample)| {
            let (axial, r) = lines.place(s, bottom + (top - bottom) * j as f64 / fields);
            FlankSample {
                place: Place {
                    r,
                    angle: sample.place.angle - tan * ahead / r,
                    axial,
                },
                normal: [0.0; 3],
                coordinates: [f64::NAN; 2],
            }
        })
        .collect()
}

/// Fills in angles that are missing from the nearest ones on either side, or from one side alone.
fn bridge(samples: &mut [FlankSample]) -> Option<()> {
    let known: Vec<(usize, f64)> = samples
        .iter()
        .enumerate()
        .filter(|(_, s)| s.place.angle.is_finite())
        .map(|(i, s)| (i, s.place.angle))
        .collect();
    known.first()?;
    for (i, sample) in samples.iter_mut().enumerate() {
        if sample.place.angle.is_finite() {
            continue;
        }
        let before = known.iter().rev().find(|(k, _)| *k < i);
        let after = known.iter().find(|(k, _)| *k > i);
        sample.place.angle = match (before, after) {
            (Some((j, a)), Some((k, b))) => {
                let gap = turn_of(b - a + std::f64::consts::PI) - std::f64::consts::PI;
                a + gap * (i - j) as f64 / (k - j) as f64
            }
            (Some((_, a)), None) | (None, Some((_, a))) => *a,
            (None, None) => return None,
        };
    }
    Some(())
}

/// The bottom of a space: from each flank a curve that leaves along the flank and runs out on the root cone.
fn fillets(
    lines: &Lines<'_>,
    s: f64,
    root: f64,
    low: &[FlankSample],
    high: &[FlankSample],
    bottoms: [Seed; 2],
    fields: u32,
) -> Vec<Place> {
    let (mut a, mut b) = (Vec::new(), Vec::new());
    let (Some(low_end), Some(high_end)) = (low.last(), high.first()) else {
        return a;
    };
    let gap = high_end.place.angle - low_end.place.angle;
    let (_, r_root) = lines.place(s, root);
    let curve = |end: &FlankSample, above: Option<&FlankSample>, bottom: Seed, sense: f64| -> Vec<Place> {
        let drop = bottom.h - root;
        let above_h = above.map_or(bottom.h + 1.0, |p| height(lines, s, &p.place));
        let lean = above.map_or(0.0, |p| (p.place.angle - end.place.angle) / (above_h - bottom.h));
        let toward = clamped(-lean * drop * sense, 0.0, 0.25 * gap);
        let run = clamped(toward + drop / r_root, 0.0, 0.45 * gap);
        (1..=fields)
            .map(|i| {
                let t = f64::from(i) / f64::from(fields);
                let angle = end.place.angle + sense * (2.0 * t * (1.0 - t) * toward + t * t * run);
                let h = root + (1.0 - t) * (1.0 - t) * drop;
                let (axial, r) = lines.place(s, h);
                Place { r, angle, axial }
            })
            .collect()
    };
    let above = |flank: &[FlankSample], i: usize| flank.get(i).copied();
    let low_above = low.len().checked_sub(2).and_then(|i| above(low, i));
    a.extend(curve(low_end, low_above.as_ref(), bottoms[0], 1.0));
    b.extend(curve(high_end, above(high, 1).as_ref(), bottoms[1], -1.0));
    let (axial, r) = lines.place(s, root);
    let from = a.last().map_or(low_end.place.angle, |p: &Place| p.angle);
    let to = b.last().map_or(high_end.place.angle, |p: &Place| p.angle);
    a.push(Place {
        r,
        angle: 0.5 * (from + to),
        axial,
    });
    b.reverse();
    a.extend(b);
    a
}

/// h of a place at its station.
fn height(lines: &Lines<'_>, s: f64, place: &Place) -> f64 {
    let (axial, r) = lines.place(s, 0.0);
    (place.r - r) * lines.cos - (place.axial - axial) * lines.sin
}

fn clamped(value: f64, low: f64, high: f64) -> f64 {
    if value > high {
        high
    } else if value > low {
        value
    } else {
        low
    }
}
