//! The plain bodies of revolution of a pair: pitch cones, outlines, and the place where they touch.
//!
//! Nothing here has teeth. What is drawn on the stage is the pair of pitch cones with a body behind them, and on
//! each cone one trace a tooth, so that the ratio can be counted.

use nalgebra::Vector3;

use crate::gear::{self, Design, GeometryError, PitchCones, PitchInput};
use crate::numerics::math;

/// A pitch cone about its own axis, with the tooth traces on it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PitchCone {
    /// δ, from the axis to the generator, radians. Both radii grow along the gear's axis.
    pub angle_rad: f64,
    /// Mean radius r_m, mm.
    pub mean_radius_mm: f64,
    /// Where the mean point stands along the axis, mm from the common perpendicular.
    pub mean_axial_mm: f64,
    /// Where the teeth begin and end along the generator: toe (negative) and heel, mm from the mean point.
    pub face_mm: [f64; 2],
    /// β, signed: positive when the trace turns with the right hand about the axis on its way to the heel, radians.
    pub spiral_rad: f64,
    /// Angle about the axis at which the trace through the mean point stands in the designed position, radians.
    pub mean_angle_rad: f64,
    /// Number of teeth.
    pub teeth: u32,
}

/// A point of a tooth trace in cylinder coordinates about the gear's axis.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TracePoint {
    /// Along the axis, mm.
    pub axial_mm: f64,
    /// Away from the axis, mm.
    pub radius_mm: f64,
    /// About the axis, radians.
    pub angle_rad: f64,
}

impl PitchCone {
    /// Point of the cone at `s_mm` along the generator from the mean point, heelward positive: axial and radius, mm.
    pub fn generator_mm(&self, s_mm: f64) -> [f64; 2] {
        let (sin, cos) = math::sin_cos(self.angle_rad);
        [self.mean_axial_mm + s_mm * cos, self.mean_radius_mm + s_mm * sin]
    }

    /// Distance from trace to trace at right angles to them at the mean point, mm.
    pub fn normal_pitch_mm(&self) -> f64 {
        core::f64::consts::TAU * self.mean_radius_mm * math::cos(self.spiral_rad) / f64::from(self.teeth.max(1))
    }

    /// Point of trace number `tooth` at `s_mm` along the generator. The spiral angle is kept at its mean value all
    /// along the tooth, so that the trace is a logarithmic spiral on the unrolled cone: θ = θ_m + tan β / sin δ ·
    /// ln(r/r_m). A cut tooth is an arc of the cutter instead; the two differ by little over a face width.
    pub fn trace(&self, tooth: u32, s_mm: f64) -> TracePoint {
        let [axial_mm, radius_mm] = self.generator_mm(s_mm);
        let turned_rad =
            math::tan(self.spiral_rad) / math::sin(self.angle_rad) * math::ln(radius_mm / self.mean_radius_mm);
        let tooth_rad = core::f64::consts::TAU * (f64::from(tooth) / f64::from(self.teeth.max(1)));
        TracePoint {
            axial_mm,
            radius_mm,
            angle_rad: self.mean_angle_rad + tooth_rad + turned_rad,
        }
    }
}

/// A body of revolution: its outline in (axial, radius), mm, in order, the body to the left.
///
/// An outline that begins and ends on the axis (radius 0) is closed by it, any other by the line from its last point
/// to its first.
#[derive(Debug, Clone, PartialEq)]
pub struct Outline {
    /// The corners.
    pub corners_mm: Vec<[f64; 2]>,
}

impl Outline {
    /// The edges of the outline, the closing one included unless it lies on the axis.
    pub fn edges_mm(&self) -> impl Iterator<Item = [[f64; 2]; 2]> + '_ {
        let following = self.corners_mm.iter().cycle().skip(1);
        self.corners_mm
            .iter()
            .zip(following)
            .map(|(from, to)| [*from, *to])
            .filter(|[from, to]| from[1] > 0.0 || to[1] > 0.0)
    }

    /// Twice the area that the outline goes round, mm²; positive when the body lies to the left.
    pub fn signed_area_mm2(&self) -> f64 {
        let following = self.corners_mm.iter().cycle().skip(1);
        self.corners_mm
            .iter()
            .zip(following)
            .map(|(a, b)| a[0] * b[1] - b[0] * a[1])
            .sum()
    }

    /// Smallest and largest axial position, mm.
    pub fn axial_extent_mm(&self) -> [f64; 2] {
        self.corners_mm
            .iter()
            .fold([f64::INFINITY, f64::NEG_INFINITY], |[low, high], corner| {
                [
                    if corner[0] < low { corner[0] } else { low },
                    if corner[0] > high { corner[0] } else { high },
                ]
            })
    }

    /// Largest radius, mm.
    pub fn outer_radius_mm(&self) -> f64 {
        self.corners_mm.iter().fold(
            0.0,
            |largest, corner| if corner[1] > largest { corner[1] } else { largest },
        )
    }
}

/// One blank: its pitch cone and its body.
#[derive(Debug, Clone, PartialEq)]
pub struct Blank {
    /// The pitch cone.
    pub cone: PitchCone,
    /// The body.
    pub outline: Outline,
}

/// The two blanks of a pair in the designed placement.
#[derive(Debug, Clone, PartialEq)]
pub struct Blanks {
    /// About +z through the origin.
    pub wheel: Blank,
    /// About +x through (0, a, 0).
    pub pinion: Blank,
    /// a, mm.
    pub offset_mm: f64,
    /// The mean point P, where the cones touch, in the frame of the axle, mm.
    pub mean_point_mm: Vector3<f64>,
}

impl Blanks {
    /// The blanks of a design: its pitch cones, as wide as its face cones, with a body behind them.
    ///
    /// # Errors
    /// [`GeometryError`] where the design has no pitch cones or no blank.
    pub fn new(design: &Design) -> Result<Self, GeometryError> {
        let pitch = PitchCones::solve(&PitchInput::from(design))?;
        let blank = gear::Blank::new(design, &pitch)?;
        let (sin_offset, cos_offset) = math::sin_cos(pitch.offset_angle_axial_rad);
        let mean_point_mm = Vector3::new(
            pitch.wheel_mean_radius_mm * cos_offset,
            pitch.wheel_mean_radius_mm * sin_offset,
            pitch.wheel_crossing_to_mean_mm,
        );
        let half_face_mm = design.wheel_face_width_mm / 2.0;
        let wheel_cone = PitchCone {
            angle_rad: pitch.wheel_pitch_angle_rad,
            mean_radius_mm: pitch.wheel_mean_radius_mm,
            mean_axial_mm: pitch.wheel_crossing_to_mean_mm,
            face_mm: [-half_face_mm, half_face_mm],
            // A right-hand ring gear: e_z × e_r points with the trace on its way to the heel.
            spiral_rad: pitch.wheel_spiral_angle_rad,
            mean_angle_rad: math::atan2(mean_point_mm.y, mean_point_mm.x),
            teeth: design.wheel_teeth,
        };
        let cos_pinion = math::cos(pitch.pinion_pitch_angle_rad);
        let along_generator = |axial_mm: f64| (axial_mm - pitch.pinion_crossing_to_mean_mm) / cos_pinion;
        let pinion_cone = PitchCone {
            angle_rad: pitch.pinion_pitch_angle_rad,
            mean_radius_mm: pitch.pinion_mean_radius_mm,
            mean_axial_mm: pitch.pinion_crossing_to_mean_mm,
            face_mm: blank.pinion_face.ends_mm.map(along_generator),
            // Left hand.
            spiral_rad: -pitch.pinion_spiral_angle_rad,
            // About +x the angle counts from y to z.
            mean_angle_rad: math::atan2(mean_point_mm.z, mean_point_mm.y - design.offset_mm),
            teeth: design.pinion_teeth,
        };
        let tooth_depth_mm = blank.working_depth_mm + blank.clearance_mm;
        Ok(Self {
            wheel: Blank {
                outline: wheel_outline(&wheel_cone, tooth_depth_mm),
                cone: wheel_cone,
            },
            pinion: Blank {
                outline: pinion_outline(&pinion_cone, tooth_depth_mm),
                cone: pinion_cone,
            },
            offset_mm: design.offset_mm,
            mean_point_mm,
        })
    }

    /// What the eye should look at: the middle of both blanks and half the height to keep in view, for a stage at
    /// least one and a half times as wide as high; in the frame of the axle, mm.
    pub fn middle_mm(&self) -> (Vector3<f64>, f64) {
        let wheel_radius_mm = self.wheel.outline.outer_radius_mm();
        let [_, wheel_back_mm] = self.wheel.outline.axial_extent_mm();
        let [_, shaft_end_mm] = self.pinion.outline.axial_extent_mm();
        let centre = Vector3::new(f64::midpoint(shaft_end_mm, -wheel_radius_mm), 0.0, wheel_back_mm / 2.0);
        let half_width_mm = f64::midpoint(shaft_end_mm, wheel_radius_mm);
        // A little air round the gears, and room for what the eye sees larger because it is nearer.
        let half_width_mm = 1.1 * half_width_mm;
        let half_height_mm = half_width_mm / 1.5;
        let wheel_radius_mm = 1.1 * wheel_radius_mm;
        (
            centre,
            if half_height_mm > wheel_radius_mm {
                half_height_mm
            } else {
                wheel_radius_mm
            },
        )
    }
}

/// Toe and heel of a cone, and the same pushed into the body at right angles to the generator by the tooth depth.
fn face_corners_mm(cone: &PitchCone, depth_mm: f64) -> [[f64; 2]; 4] {
    let (sin, cos) = math::sin_cos(cone.angle_rad);
    let inward = |[axial, radius]: [f64; 2]| [axial + depth_mm * sin, radius - depth_mm * cos];
    let [toe, heel] = cone.face_mm.map(|s_mm| cone.generator_mm(s_mm));
    [inward(toe), toe, heel, inward(heel)]
}

/// A ring: toothed face toward −z, flat back, a bore for the carrier.
fn wheel_outline(cone: &PitchCone, tooth_depth_mm: f64) -> Outline {
    let [toe_foot, toe, heel, heel_foot] = face_corners_mm(cone, tooth_depth_mm);
    let face_width_mm = cone.face_mm[1] - cone.face_mm[0];
    let back_mm = heel_foot[0] + 0.55 * face_width_mm;
    let bore_mm = toe_foot[1] - 0.3 * face_width_mm;
    let mut corners_mm = vec![
        [toe_foot[0], bore_mm],
        toe_foot,
        toe,
        heel,
        heel_foot,
        [back_mm, heel_foot[1]],
        [back_mm, bore_mm],
    ];
    // Listed clockwise, the body to the right; the other way round it lies to the left.
    corners_mm.reverse();
    Outline { corners_mm }
}

/// A head with a shaft toward +x: seat of the head bearing, then a step to the flange end.
fn pinion_outline(cone: &PitchCone, tooth_depth_mm: f64) -> Outline {
    let [toe_foot, toe, heel, heel_foot] = face_corners_mm(cone, 0.75 * tooth_depth_mm);
    let face_width_mm = cone.face_mm[1] - cone.face_mm[0];
    let seat_mm = 0.86 * heel_foot[1];
    let shoulder_mm = heel_foot[0] + 0.12 * face_width_mm;
    let step_mm = shoulder_mm + 0.9 * face_width_mm;
    let end_mm = step_mm + 1.5 * face_width_mm;
    let stem_mm = 0.78 * seat_mm;
    let mut corners_mm = vec![
        [toe_foot[0], 0.0],
        toe_foot,
        toe,
        heel,
        heel_foot,
        [shoulder_mm, heel_foot[1]],
        [shoulder_mm, seat_mm],
        [step_mm, seat_mm],
        [step_mm, stem_mm],
        [end_mm, stem_mm],
        [end_mm, 0.0],
    ];
    corners_mm.reverse();
    Outline { corners_mm }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::gear::{DepthTaper, EaseOff};

    fn design(teeth: [u32; 2], offset_mm: f64, diameter_mm: f64, face_mm: f64, spiral_deg: f64) -> Design {
        Design {
            name: "Invented".to_owned(),
            pinion_teeth: teeth[0],
            wheel_teeth: teeth[1],
            offset_mm,
            wheel_outer_pitch_diameter_mm: diameter_mm,
            wheel_face_width_mm: face_mm,
            pinion_mean_spiral_angle_deg: spiral_deg,
            limit_radius_mm: 100.0,
            cutter_radius_mm: 100.0,
            pressure_angle_drive_deg: 20.0,
            pressure_angle_coast_deg: 20.0,
            depth: DepthTaper::Tapered,
            depth_factor: 2.0,
            clearance_factor: 0.125,
            wheel_addendum_factor: 0.22,
            thickness_factor: 0.03,
            lash_mm: 0.18,
            ease_off_drive: EaseOff::default(),
            ease_off_coast: EaseOff::default(),
        }
    }

    fn sets() -> [Design; 4] {
        [
            design([13, 39], 0.0, 186.0, 27.0, 35.0),
            design([11, 41], 36.0, 224.0, 32.0, 50.0),
            design([9, 37], 28.0, 178.0, 26.0, 48.0),
            design([6, 44], 43.0, 298.0, 40.0, 46.0),
        ]
    }

    /// Point, heelward generator, outward normal and trace direction of a cone at its mean point, in the axle's frame.
    fn at_mean_point(blank: &Blank, point_of: impl Fn(TracePoint) -> Vector3<f64>) -> [Vector3<f64>; 4] {
        let cone = &blank.cone;
        let point = |s_mm: f64, angle_rad: f64| {
            let [axial_mm, radius_mm] = cone.generator_mm(s_mm);
            point_of(TracePoint {
                axial_mm,
                radius_mm,
                angle_rad,
            })
        };
        let h = 1e-4;
        let mean = point(0.0, cone.mean_angle_rad);
        let generator = (point(h, cone.mean_angle_rad) - point(-h, cone.mean_angle_rad)).normalize();
        let around = (point(0.0, cone.mean_angle_rad + h) - point(0.0, cone.mean_angle_rad - h)).normalize();
        let trace = (point_of(cone.trace(0, h)) - point_of(cone.trace(0, -h))).normalize();
        [mean, generator, around.cross(&generator), trace]
    }

    #[test]
    fn cones_touch_and_their_traces_agree() {
        for design in sets() {
            let blanks = Blanks::new(&design).expect("cones exist");
            let wheel = at_mean_point(&blanks.wheel, |p| {
                let (sin, cos) = math::sin_cos(p.angle_rad);
                Vector3::new(p.radius_mm * cos, p.radius_mm * sin, p.axial_mm)
            });
            let pinion = at_mean_point(&blanks.pinion, |p| {
                let (sin, cos) = math::sin_cos(p.angle_rad);
                Vector3::new(p.axial_mm, blanks.offset_mm + p.radius_mm * cos, p.radius_mm * sin)
            });
            let z = design.wheel_teeth;
            assert!(
                (wheel[0] - blanks.mean_point_mm).norm() < 1e-9,
                "{z}: ring gear passes the mean point"
            );
            assert!(
                (pinion[0] - blanks.mean_point_mm).norm() < 1e-9,
                "{z}: pinion passes the mean point"
            );
            assert!(
                (wheel[2] + pinion[2]).norm() < 1e-6,
                "{z}: common tangent plane, {:?} {:?}",
                wheel[2],
                pinion[2]
            );
            assert!(
                (wheel[3] - pinion[3]).norm() < 1e-6,
                "{z}: common trace, {:?} {:?}",
                wheel[3],
                pinion[3]
            );
        }
    }

    #[test]
    fn outlines_go_round_their_bodies() {
        for design in sets() {
            let blanks = Blanks::new(&design).expect("cones exist");
            for outline in [&blanks.wheel.outline, &blanks.pinion.outline] {
                assert!(outline.signed_area_mm2() > 0.0, "the body lies to the left");
                assert!(
                    outline.corners_mm.iter().all(|corner| corner[1] >= 0.0),
                    "no corner beyond the axis"
                );
                assert!(
                    outline
                        .edges_mm()
                        .all(|[from, to]| (from[0] - to[0]).abs() + (from[1] - to[1]).abs() > 0.1),
                    "no empty edge"
                );
            }
            let [front_mm, _] = blanks.wheel.outline.axial_extent_mm();
            assert!(front_mm > 0.0, "the ring gear's body stands at z > 0");
            let (centre_mm, radius_mm) = blanks.middle_mm();
            assert!(
                (blanks.mean_point_mm - centre_mm).norm() < radius_mm,
                "the mean point is in view"
            );
        }
    }

    #[test]
    fn impossible_designs_say_why() {
        let impossible = design([11, 41], 200.0, 224.0, 32.0, 50.0);
        let error = Blanks::new(&impossible).expect_err("an offset beyond the ring gear");
        assert!(error.to_string().contains("no pitch cones"), "{error}");
    }
}
