//! Doubtful geometry: computed all the same, but said.
//!
//! Source: undercut as the end of the regular envelope is in F. L. Litvin and A. Fuentes, Gear Geometry and Applied
//! Theory, 2nd ed., 2004. Our own definition: the grid that is looked at, the ninths of a flank, lands measured square
//! to the tooth, and the second cut as the cutter's way over the face line.

use nalgebra::Vector3;

use crate::numerics::math;

use super::{Blank, Cutter, Design, Meeting, PinionFlank, PitchCones, Side};

/// A land under this many mean normal modules is narrow (common practice, no source).
const NARROW_LAND_MODULES: f64 = 0.2;

/// Third of the tooth's length.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Along {
    /// Inner end.
    Toe,
    /// Between.
    Middle,
    /// Outer end.
    Heel,
}

/// Third of the tooth's height.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Up {
    /// Bottom.
    Root,
    /// Between.
    Middle,
    /// Tip edge.
    Top,
}

/// A ninth of a wheel flank.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct FlankPlace {
    /// Along the tooth.
    pub along: Along,
    /// Up the tooth.
    pub up: Up,
}

impl FlankPlace {
    /// The ninth that (x, y) lies in.
    pub fn of(x: f64, y: f64) -> Self {
        Self {
            along: if x < -1.0 / 3.0 {
                Along::Toe
            } else if x > 1.0 / 3.0 {
                Along::Heel
            } else {
                Along::Middle
            },
            up: if y < -1.0 / 3.0 {
                Up::Root
            } else if y > 1.0 / 3.0 {
                Up::Top
            } else {
                Up::Middle
            },
        }
    }
}

/// What is doubtful about a gear set.
#[derive(Debug, Clone, PartialEq)]
pub enum Warning {
    /// Part of a working flank has no regular partner: the pinion is undercut there.
    Undercut {
        /// Flank.
        side: Side,
        /// Where on the wheel's flank, worst ninth first.
        places: Vec<FlankPlace>,
        /// Share of the sampled working flank.
        share: f64,
    },
    /// The pinion's tooth ends in a narrow land or a point.
    PinionTip {
        /// Where.
        place: Along,
        /// Width of the land square to the tooth, mm; at most 0 for a pointed tooth.
        land_mm: f64,
        /// What is narrow for this set: 0.2 m_mn, mm.
        narrow_mm: f64,
    },
    /// The wheel's tooth ends in a narrow land or a point.
    WheelTip {
        /// Where.
        place: Along,
        /// Width of the land square to the tooth, mm; at most 0 for a pointed tooth.
        land_mm: f64,
        /// What is narrow for this set: 0.2 m_mn, mm.
        narrow_mm: f64,
    },
    /// The cutter passes over the wheel's teeth a second time and cuts into them.
    SecondCut {
        /// Where on the face line.
        place: Along,
        /// How deep under the face line, mm.
        depth_mm: f64,
    },
}

/// Samples a side of the flank when looking for undercut.
const UNDERCUT_SAMPLES: u32 = 24;

/// What the check of a flank found.
pub(super) struct FlankCheck {
    pub(super) regular_points: u32,
    pub(super) undercut: Option<Warning>,
}

/// Second derivative along the roll over the working flank: the points whose partner lies inside the pinion's face cone.
pub(super) fn check_flank(flank: &PinionFlank) -> FlankCheck {
    let (mut regular, mut bad) = (0_u32, 0_u32);
    let mut counts: Vec<(FlankPlace, u32)> = Vec::new();
    let coordinate = |i: u32| 2.0 * f64::from(i) / f64::from(UNDERCUT_SAMPLES) - 1.0;
    for i in 0..=UNDERCUT_SAMPLES {
        let x = coordinate(i);
        // From the top down: once the partner has left the pinion's tooth the rest of the column does not work.
        for j in (0..=UNDERCUT_SAMPLES).rev() {
            let y = coordinate(j);
            let found = match flank.meeting(x, y) {
                Some(meeting) if flank.depth_under_tip_mm(meeting.envelope_point_mm) < 0.0 => break,
                Some(_) => {
                    regular += 1;
                    continue;
                }
                None => flank.meetings(x, y),
            };
            let inside = |m: &Meeting| flank.depth_under_tip_mm(m.envelope_point_mm) >= 0.0;
            // No root at all: nothing of the pinion was shaped by this point, so it is lost as well.
            if found.iter().flatten().any(inside) || found == [None, None] {
                bad += 1;
                let place = FlankPlace::of(x, y);
                match counts.iter_mut().find(|(p, _)| *p == place) {
                    Some((_, count)) => *count += 1,
                    None => counts.push((place, 1)),
                }
            }
        }
    }
    counts.sort_by(|(p, a), (q, b)| b.cmp(a).then(p.cmp(q)));
    FlankCheck {
        regular_points: regular,
        undercut: (bad > 0).then(|| Warning::Undercut {
            side: flank.wheel().side,
            places: counts.into_iter().map(|(place, _)| place).collect(),
            share: f64::from(bad) / f64::from(bad + regular),
        }),
    }
}

const STATIONS: [(Along, f64); 3] = [(Along::Toe, -1.0), (Along::Middle, 0.0), (Along::Heel, 1.0)];

/// Width of a land square to the tooth's edge, for an arc along the circle at a place with radial direction `radial`.
fn square_to_edge(arc: f64, around: Vector3<f64>, flank_normal: Vector3<f64>, land_normal: Vector3<f64>) -> f64 {
    let edge = flank_normal.cross(&land_normal);
    let edge = edge / edge.norm();
    arc * around.cross(&edge).norm()
}

/// Top lands of wheel and pinion at toe, middle and heel.
pub(super) fn check_lands(
    design: &Design,
    pitch: &PitchCones,
    blank: &Blank,
    flanks: &[PinionFlank; 2],
) -> Vec<Warning> {
    let narrow_mm = NARROW_LAND_MODULES * pitch.mean_normal_module_mm;
    let mut warnings = Vec::new();
    for (place, x) in STATIONS {
        if let Some(land_mm) = wheel_land(design, blank, flanks, x)
            && land_mm < narrow_mm
        {
            warnings.push(Warning::WheelTip {
                place,
                land_mm,
                narrow_mm,
            });
        }
        if let Some(land_mm) = pinion_land(design, pitch, blank, flanks, x)
            && land_mm < narrow_mm
        {
            warnings.push(Warning::PinionTip {
                place,
                land_mm,
                narrow_mm,
            });
        }
    }
    warnings
}

/// Land of the wheel's teeth at (x, 1), mm.
fn wheel_land(design: &Design, blank: &Blank, flanks: &[PinionFlank; 2], x: f64) -> Option<f64> {
    let [drive, coast] = flanks;
    let (a, b) = (drive.wheel().point(x, 1.0)?, coast.wheel().point(x, 1.0)?);
    let (r, _) = blank.place_mm(x, 1.0);
    let around = Vector3::new(-a.position_mm.y, a.position_mm.x, 0.0) / r;
    let turn = signed_turn((a.position_mm.x, a.position_mm.y), (b.position_mm.x, b.position_mm.y));
    // The slot lies where the drive flank's normal points to.
    let slot = if a.normal.dot(&around) >= 0.0 { turn } else { -turn };
    let arc = r * (2.0 * std::f64::consts::PI / f64::from(design.wheel_teeth) - slot);
    let (sin_a, cos_a) = math::sin_cos(blank.wheel_face_angle_rad);
    let radial = Vector3::new(a.position_mm.x, a.position_mm.y, 0.0) / r;
    let land_normal = radial * cos_a - Vector3::new(0.0, 0.0, sin_a);
    Some(square_to_edge(arc, around, a.normal, land_normal))
}

/// Land of the pinion's teeth on its face cone at the axial place that belongs to x, mm. The designed lash, which is
/// taken from the pinion's tooth, is taken off here as well.
fn pinion_land(design: &Design, pitch: &PitchCones, blank: &Blank, flanks: &[PinionFlank; 2], x: f64) -> Option<f64> {
    let [toe, heel] = blank.pinion_face.ends_mm;
    let axial = toe + 0.5 * (x + 1.0) * (heel - toe);
    let [drive, coast] = flanks;
    let a = tip_point(drive, axial, x)?;
    let b = tip_point(coast, axial, x)?;
    let p = a.envelope_point_mm;
    let q = b.envelope_point_mm;
    let r = blank.pinion_face.radius_mm(axial);
    let around = Vector3::new(0.0, -p.z, p.y) / r;
    let turn = signed_turn((p.y, p.z), (q.y, q.z));
    // The tooth's body lies where the normal points to.
    let arc = r * if a.normal.dot(&around) >= 0.0 { turn } else { -turn };
    let slope = blank.pinion_face.slope;
    let radial = Vector3::new(0.0, p.y, p.z) / r;
    let land_normal = (radial - Vector3::new(slope, 0.0, 0.0)) / (1.0 + slope * slope).sqrt();
    let thinned = design.lash_mm * 2.0 * pitch.wheel_mean_radius_mm / design.wheel_outer_pitch_diameter_mm
        * math::cos(pitch.wheel_spiral_angle_rad);
    Some(square_to_edge(arc, around, a.normal, land_normal) - thinned)
}

/// Angle from one direction of a plane to another, −π to π.
fn signed_turn(from: (f64, f64), to: (f64, f64)) -> f64 {
    math::atan2(from.0 * to.1 - from.1 * to.0, from.0 * to.0 + from.1 * to.1)
}

/// The point of the envelope on the pinion's face cone at this axial place: Newton's method on the wheel point.
fn tip_point(flank: &PinionFlank, axial: f64, x_start: f64) -> Option<Meeting> {
    let (mut x, mut y) = (x_start, -0.7);
    let misses = |m: &Meeting| {
        (
            m.envelope_point_mm.x - axial,
            flank.depth_under_tip_mm(m.envelope_point_mm),
        )
    };
    let h = 1e-5;
    for _ in 0..30 {
        let here = flank.meeting(x, y)?;
        let (f, g) = misses(&here);
        if f.abs() < 1e-9 && g.abs() < 1e-9 {
            return Some(here);
        }
        let (fx, gx) = misses(&flank.meeting(x + h, y)?);
        let (fy, gy) = misses(&flank.meeting(x, y + h)?);
        let (fx, gx, fy, gy) = ((fx - f) / h, (gx - g) / h, (fy - f) / h, (gy - g) / h);
        let determinant = fx * gy - fy * gx;
        let (mut dx, mut dy) = ((fy * g - gy * f) / determinant, (gx * f - fx * g) / determinant);
        let size = (dx * dx + dy * dy).sqrt();
        if size.is_nan() {
            return None;
        }
        if size > 0.3 {
            dx *= 0.3 / size;
            dy *= 0.3 / size;
        }
        x += dx;
        y += dy;
    }
    None
}

/// Stations along the face line and samples around the wheel when looking for a second cut.
const FACE_STATIONS: u32 = 8;
const AROUND: u32 = 1440;

/// Whether the cutter, having made a slot, passes over the wheel's face line a second time.
pub(super) fn check_second_cut(cutter: &Cutter, blank: &Blank, flanks: &[PinionFlank; 2]) -> Option<Warning> {
    let [drive, coast] = flanks;
    let mut worst: Option<(f64, f64)> = None;
    for i in 0..=FACE_STATIONS {
        let x = 2.0 * f64::from(i) / f64::from(FACE_STATIONS) - 1.0;
        let (r, z) = blank.place_mm(x, 1.0);
        let (Some(a), Some(b)) = (drive.wheel().point(x, 1.0), coast.wheel().point(x, 1.0)) else {
            continue;
        };
        let middle = (a.position_mm + b.position_mm) * 0.5;
        let centre = math::atan2(middle.y, middle.x);
        // How far a point of the circle lies inside what the blades sweep.
        let depth = |angle: f64| {
            let (sin_t, cos_t) = math::sin_cos(angle);
            let q = Vector3::new(r * cos_t, r * sin_t, z);
            let height = cutter.axis.dot(&(q - cutter.centre_mm));
            let (s, t) = (drive.wheel().distance_mm(q), coast.wheel().distance_mm(q));
            let least = if s < t { s } else { t };
            if height < least { height } else { least }
        };
        let step = 2.0 * std::f64::consts::PI / f64::from(AROUND);
        // Leave the slot itself on both sides, then look at all the rest.
        let leave = |direction: f64| {
            let mut k = 0_u32;
            while k < AROUND && depth(centre + direction * step * f64::from(k)) > 0.0 {
                k += 1;
            }
            k
        };
        let (forward, back) = (leave(1.0), leave(-1.0));
        for k in forward..AROUND.saturating_sub(back) {
            let inside = depth(centre + step * f64::from(k));
            if inside > 0.0 && worst.is_none_or(|(_, w)| inside > w) {
                worst = Some((x, inside));
            }
        }
    }
    worst.map(|(x, depth_mm)| Warning::SecondCut {
        place: FlankPlace::of(x, 0.0).along,
        depth_mm,
    })
}
