//! The eye: where the stage is looked at from. Pure maths in the frame of the axle, in millimetres and radians.
//!
//! Up on the screen is −y of the axle, because the offset +y of the pinion is "below centre". The front is −z, the
//! side that the ring gear's teeth face; the pinion's shaft leaves to the right, +x. At azimuth 0 the eye stands in
//! front, at +90° it stands behind the companion flange and looks along the pinion. Azimuth and elevation are kept
//! as numbers, so that looking straight down is no special case.
//!
//! What the eye sees is stated as a height in millimetres at the target, not as a distance: a change between
//! perspective and flat keeps the size of what is looked at.

use core::f64::consts::{FRAC_PI_2, LN_2, PI, TAU};

use nalgebra::Vector3;

use super::Scene;
use crate::gear::Side;
use crate::numerics::math;
use crate::words::say;

/// How the stage is mapped to the screen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Projection {
    /// As the eye sees it.
    #[default]
    Perspective,
    /// As a drawing shows it: parallel lines stay parallel.
    Flat,
}

/// A place to look from that the trade has a name for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Viewpoint {
    /// From above, between the toothed side and the companion flange.
    #[default]
    Corner,
    /// Along the pinion's axis, from the companion flange.
    Pinion,
    /// Along the ring gear's axis, from the toothed side.
    RingGear,
    /// From above.
    Above,
    /// Close to where the teeth meet, from inside the ring gear.
    Mesh,
    /// Close to the topmost tooth of the ring gear, on its drive flank.
    Drive,
    /// The same tooth, on its coast flank.
    Coast,
}

impl Viewpoint {
    /// All of them, in the order in which they are offered.
    pub const ALL: [Self; 7] = [
        Self::Corner,
        Self::Pinion,
        Self::RingGear,
        Self::Above,
        Self::Mesh,
        Self::Drive,
        Self::Coast,
    ];

    /// The flank of the topmost tooth that is looked at, if it is one.
    pub const fn flank(self) -> Option<Side> {
        match self {
            Self::Drive => Some(Side::Drive),
            Self::Coast => Some(Side::Coast),
            Self::Corner | Self::Pinion | Self::RingGear | Self::Above | Self::Mesh => None,
        }
    }

    /// The one offered after it; the first after the last.
    #[must_use]
    pub fn next(self) -> Self {
        let after = Self::ALL.into_iter().skip_while(|viewpoint| *viewpoint != self).nth(1);
        after.unwrap_or_default()
    }

    /// Its name in files.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Corner => "corner",
            Self::Pinion => "pinion",
            Self::RingGear => "ring-gear",
            Self::Above => "above",
            Self::Mesh => "mesh",
            Self::Drive => "drive",
            Self::Coast => "coast",
        }
    }

    /// The word on the button.
    pub fn label(self) -> String {
        match self {
            Self::Corner => say!("stage-view-corner"),
            Self::Pinion => say!("stage-view-pinion"),
            Self::RingGear => say!("stage-view-ring-gear"),
            Self::Above => say!("stage-view-above"),
            Self::Mesh => say!("stage-view-mesh"),
            Self::Drive => say!("stage-view-drive"),
            Self::Coast => say!("stage-view-coast"),
        }
    }

    /// What the stage says above the picture.
    pub fn caption(self) -> String {
        match self {
            Self::Corner => say!("stage-caption-corner"),
            Self::Pinion => say!("stage-caption-pinion"),
            Self::RingGear => say!("stage-caption-ring-gear"),
            Self::Above => say!("stage-caption-above"),
            Self::Mesh => say!("stage-caption-mesh"),
            Self::Drive => say!("stage-caption-drive"),
            Self::Coast => say!("stage-caption-coast"),
        }
    }
}

/// Vertical angle of view of the perspective, radians: that of a 60 mm lens, which draws gears without distorting.
pub const FIELD_OF_VIEW_RAD: f64 = 24.0 * PI / 180.0;

/// Where the stage is looked at from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Orbit {
    target_mm: Vector3<f64>,
    azimuth_rad: f64,
    elevation_rad: f64,
    height_mm: f64,
    projection: Projection,
    home_target_mm: Vector3<f64>,
    home_height_mm: f64,
    mesh_mm: Vector3<f64>,
    mesh_height_mm: f64,
    tooth_mm: Vector3<f64>,
    tooth_height_mm: f64,
    /// Azimuth and elevation of the looks at the drive and the coast flank.
    flanks_rad: [[f64; 2]; 2],
}

/// Azimuth and elevation of an eye in this direction.
fn angles_of(to_eye: Vector3<f64>) -> [f64; 2] {
    [math::atan2(to_eye.x, -to_eye.z), math::asin(-to_eye.y)]
}

/// The eye as axes of the axle's frame: unit vectors and a point, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Eye {
    /// Where the eye stands.
    pub position_mm: Vector3<f64>,
    /// To the right on the screen.
    pub right: Vector3<f64>,
    /// Up on the screen.
    pub up: Vector3<f64>,
    /// Into the screen.
    pub forward: Vector3<f64>,
}

impl Orbit {
    /// Looks from `viewpoint` so that a ball of `radius_mm` about `centre_mm` fills the height, with a small rim.
    pub fn around(centre_mm: Vector3<f64>, radius_mm: f64, viewpoint: Viewpoint) -> Self {
        let home_height_mm = 2.1 * if radius_mm > 1.0 { radius_mm } else { 1.0 };
        let mut orbit = Self {
            target_mm: centre_mm,
            azimuth_rad: 0.0,
            elevation_rad: 0.0,
            height_mm: home_height_mm,
            projection: Projection::default(),
            home_target_mm: centre_mm,
            home_height_mm,
            mesh_mm: centre_mm,
            mesh_height_mm: home_height_mm / 6.0,
            tooth_mm: centre_mm,
            tooth_height_mm: home_height_mm / 6.0,
            flanks_rad: [[PI / 4.0, PI / 8.0], [-PI / 4.0, PI / 8.0]],
        };
        orbit.look_from(viewpoint);
        orbit
    }

    /// Azimuth and elevation of a named place, radians.
    const fn angles_rad(&self, viewpoint: Viewpoint) -> [f64; 2] {
        let [drive, coast] = self.flanks_rad;
        match viewpoint {
            Viewpoint::Corner => [PI / 6.0, PI / 7.0],
            Viewpoint::Pinion => [FRAC_PI_2, 0.0],
            Viewpoint::RingGear => [0.0, 0.0],
            Viewpoint::Above => [0.0, FRAC_PI_2],
            Viewpoint::Mesh => [-0.40 * PI, 0.04 * PI],
            Viewpoint::Drive => drive,
            Viewpoint::Coast => coast,
        }
    }

    /// The same direction and projection around other gears.
    #[must_use]
    pub fn moved_to(self, scene: &Scene) -> Self {
        let mut moved = Self {
            azimuth_rad: self.azimuth_rad,
            elevation_rad: self.elevation_rad,
            projection: self.projection,
            mesh_mm: scene.mesh_mm,
            mesh_height_mm: scene.mesh_height_mm,
            tooth_mm: scene.tooth_mm,
            tooth_height_mm: scene.tooth_height_mm,
            flanks_rad: scene.to_flanks.map(angles_of),
            ..Self::around(scene.centre_mm, scene.radius_mm, Viewpoint::default())
        };
        if let Some(close @ (Viewpoint::Mesh | Viewpoint::Drive | Viewpoint::Coast)) = self.viewpoint() {
            moved.look_from(close);
        }
        moved
    }

    /// Looks from a named place: the whole pair in view, or the mesh and no more.
    pub fn look_from(&mut self, viewpoint: Viewpoint) {
        [self.azimuth_rad, self.elevation_rad] = self.angles_rad(viewpoint);
        (self.target_mm, self.height_mm) = match viewpoint {
            Viewpoint::Mesh => (self.mesh_mm, self.mesh_height_mm),
            Viewpoint::Drive | Viewpoint::Coast => (self.tooth_mm, self.tooth_height_mm),
            Viewpoint::Corner | Viewpoint::Pinion | Viewpoint::RingGear | Viewpoint::Above => {
                (self.home_target_mm, self.home_height_mm)
            }
        };
    }

    /// The named place it looks from, if it is one (whatever the zoom).
    pub fn viewpoint(&self) -> Option<Viewpoint> {
        Viewpoint::ALL.into_iter().find(|viewpoint| {
            let [azimuth_rad, elevation_rad] = self.angles_rad(*viewpoint);
            (self.azimuth_rad - azimuth_rad).abs() < 1e-9 && (self.elevation_rad - elevation_rad).abs() < 1e-9
        })
    }

    /// Goes round: `azimuth_rad` to the right, `elevation_rad` upward; up to straight above and below.
    pub fn turn(&mut self, azimuth_rad: f64, elevation_rad: f64) {
        if azimuth_rad.is_finite() && elevation_rad.is_finite() {
            let turned = self.azimuth_rad + azimuth_rad;
            // Into (−π, π], so that hours of turning lose no digits and a named place is known again.
            self.azimuth_rad = turned - TAU * ((turned - PI) / TAU).ceil();
            self.elevation_rad = (self.elevation_rad + elevation_rad).clamp(-FRAC_PI_2, FRAC_PI_2);
        }
    }

    /// Makes what is seen larger by so many notches of the wheel, eight of which double it; between a quarter and
    /// forty times the whole pair, where the lash is seen. So many notches back show the same again.
    pub fn zoom(&mut self, notches: f64) {
        if notches.is_finite() {
            let height_mm = self.height_mm * math::exp(-notches * (LN_2 / 8.0));
            self.height_mm = height_mm.clamp(self.home_height_mm / 40.0, self.home_height_mm * 4.0);
        }
    }

    /// Shifts what is seen to the right and up, as fractions of the height in view; the target stays within reach.
    pub fn pan(&mut self, right: f64, up: f64) {
        if right.is_finite() && up.is_finite() {
            let eye = self.eye();
            let target_mm = self.target_mm - (eye.right * right + eye.up * up) * self.height_mm;
            let from_home_mm = target_mm - self.home_target_mm;
            let distance_mm = from_home_mm.norm();
            self.target_mm = if distance_mm > self.home_height_mm {
                self.home_target_mm + from_home_mm * (self.home_height_mm / distance_mm)
            } else {
                target_mm
            };
        }
    }

    /// Perspective or flat; the size of what is at the target stays.
    pub fn set_projection(&mut self, projection: Projection) {
        self.projection = projection;
    }

    /// Perspective or flat.
    pub fn projection(&self) -> Projection {
        self.projection
    }

    /// Height in view at the target, mm.
    pub fn height_mm(&self) -> f64 {
        self.height_mm
    }

    /// Distance from the eye to the target, mm.
    pub fn distance_mm(&self) -> f64 {
        match self.projection {
            Projection::Perspective => self.height_mm / (2.0 * math::tan(FIELD_OF_VIEW_RAD / 2.0)),
            // Any distance shows the same; this one keeps the eye outside of the whole pair.
            Projection::Flat => 4.0 * self.home_height_mm,
        }
    }

    /// Nearest and farthest distance that can hold anything, mm. The pair stays inside even when panned away.
    pub fn depth_mm(&self) -> [f64; 2] {
        let distance_mm = self.distance_mm();
        let reach_mm = 2.5 * self.home_height_mm;
        let nearest_mm = distance_mm - reach_mm;
        [if nearest_mm > 1.0 { nearest_mm } else { 1.0 }, distance_mm + reach_mm]
    }

    /// The eye's axes.
    pub fn eye(&self) -> Eye {
        let (sin_a, cos_a) = math::sin_cos(self.azimuth_rad);
        let (sin_e, cos_e) = math::sin_cos(self.elevation_rad);
        // Front is −z, right is +x, up is −y.
        let backward = Vector3::new(cos_e * sin_a, -sin_e, -cos_e * cos_a);
        let right = Vector3::new(cos_a, 0.0, sin_a);
        let forward = -backward;
        Eye {
            position_mm: self.target_mm + backward * self.distance_mm(),
            right,
            up: right.cross(&forward),
            forward,
        }
    }

    /// The ray on which lies whatever appears at a place of the view: from where, and the unit vector along it. The place as
    /// in [`Orbit::project`].
    pub fn ray(&self, right: f64, up: f64) -> (Vector3<f64>, Vector3<f64>) {
        let eye = self.eye();
        let aside = eye.right * right + eye.up * up;
        match self.projection {
            Projection::Flat => (eye.position_mm + aside * self.height_mm, eye.forward),
            Projection::Perspective => {
                let spread = 2.0 * math::tan(FIELD_OF_VIEW_RAD / 2.0);
                (eye.position_mm, (eye.forward + aside * spread).normalize())
            }
        }
    }

    /// Where a point of the axle appears: to the right and up from the middle of the view, as fractions of the
    /// view's height; `None` behind the eye.
    pub fn project(&self, point_mm: Vector3<f64>) -> Option<[f64; 2]> {
        let eye = self.eye();
        let from_eye_mm = point_mm - eye.position_mm;
        let depth_mm = from_eye_mm.dot(&eye.forward);
        let height_mm = match self.projection {
            Projection::Flat => self.height_mm,
            Projection::Perspective if depth_mm > 1e-6 => 2.0 * depth_mm * math::tan(FIELD_OF_VIEW_RAD / 2.0),
            Projection::Perspective => return None,
        };
        Some([
            from_eye_mm.dot(&eye.right) / height_mm,
            from_eye_mm.dot(&eye.up) / height_mm,
        ])
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn orbit(viewpoint: Viewpoint) -> Orbit {
        Orbit::around(Vector3::new(10.0, 20.0, 30.0), 100.0, viewpoint)
    }

    #[track_caller]
    fn assert_direction(got: Vector3<f64>, want: [f64; 3]) {
        assert!((got - Vector3::from(want)).norm() < 1e-12, "{got:?}, expected {want:?}");
    }

    #[test]
    fn a_ray_leads_back_to_where_it_appears() {
        for projection in [Projection::Perspective, Projection::Flat] {
            let mut orbit = orbit(Viewpoint::Corner);
            orbit.set_projection(projection);
            let (origin, way) = orbit.ray(0.31, -0.17);
            for distance_mm in [200.0, 450.0] {
                let [right, up] = orbit.project(origin + way * distance_mm).expect("before the eye");
                assert!((right - 0.31).abs() < 1e-9 && (up + 0.17).abs() < 1e-9, "{right} {up}");
            }
        }
    }

    #[test]
    fn named_places_look_along_the_axes_with_the_offset_downward() {
        let front = orbit(Viewpoint::RingGear).eye();
        assert_direction(front.forward, [0.0, 0.0, 1.0]);
        assert_direction(front.right, [1.0, 0.0, 0.0]);
        assert_direction(front.up, [0.0, -1.0, 0.0]);
        let pinion = orbit(Viewpoint::Pinion).eye();
        assert_direction(pinion.forward, [-1.0, 0.0, 0.0]);
        assert_direction(pinion.up, [0.0, -1.0, 0.0]);
        let above = orbit(Viewpoint::Above).eye();
        assert_direction(above.forward, [0.0, 1.0, 0.0]);
        assert_direction(above.right, [1.0, 0.0, 0.0]);
        let mesh = orbit(Viewpoint::Mesh).eye();
        assert!(mesh.forward.x > 0.8, "outward from inside the ring gear: {mesh:?}");
        for viewpoint in Viewpoint::ALL {
            assert_eq!(
                orbit(viewpoint).viewpoint(),
                Some(viewpoint),
                "a named place is known again"
            );
        }
    }

    #[test]
    fn axes_stay_a_right_handed_frame_however_it_is_turned() {
        let mut orbit = orbit(Viewpoint::Corner);
        for step in 0..1000 {
            let t = f64::from(step);
            orbit.turn(0.37 * t, 0.011 * t - 4.0);
            let eye = orbit.eye();
            assert!(
                (eye.right.cross(&eye.up) + eye.forward).norm() < 1e-12,
                "right × up = backward"
            );
            assert!((eye.up.norm() - 1.0).abs() < 1e-12, "unit axes");
            assert!(eye.up.y <= 1e-12, "up never points down");
        }
    }

    #[test]
    fn the_target_is_in_the_middle_and_keeps_its_size_when_flat() {
        let mut orbit = orbit(Viewpoint::Corner);
        let target = Vector3::new(10.0, 20.0, 30.0);
        let beside = target + orbit.eye().right * 25.0;
        let before = orbit.project(beside).expect("in front of the eye");
        orbit.set_projection(Projection::Flat);
        let after = orbit.project(beside).expect("in front of the eye");
        assert!(
            (before[0] - 25.0 / orbit.height_mm()).abs() < 1e-12,
            "25 mm to the right of the middle"
        );
        assert!(
            (before[0] - after[0]).abs() < 1e-12 && after[1].abs() < 1e-12,
            "the change keeps the size"
        );
        let middle = orbit.project(target).expect("in front of the eye");
        assert!(
            middle[0].abs() < 1e-12 && middle[1].abs() < 1e-12,
            "the target is in the middle"
        );
    }

    #[test]
    fn panning_moves_the_picture_with_the_hand() {
        let mut orbit = orbit(Viewpoint::Above);
        let target = Vector3::new(10.0, 20.0, 30.0);
        orbit.pan(0.1, -0.05);
        let [right, up] = orbit.project(target).expect("in front of the eye");
        assert!(
            (right - 0.1).abs() < 1e-12 && (up + 0.05).abs() < 1e-12,
            "({right}, {up})"
        );
        for _ in 0..1000 {
            orbit.pan(0.3, 0.3);
        }
        let [nearest, farthest] = orbit.depth_mm();
        let depth = (target - orbit.eye().position_mm).dot(&orbit.eye().forward);
        assert!(depth > nearest && depth < farthest, "the pair is never cut off");
        orbit.look_from(Viewpoint::Above);
        assert_eq!(
            orbit,
            self::orbit(Viewpoint::Above),
            "a named place shows the whole pair again"
        );
    }

    #[test]
    fn zoom_stops_at_both_ends_and_nonsense_is_ignored() {
        let mut orbit = orbit(Viewpoint::Corner);
        let home = orbit.height_mm();
        orbit.zoom(8.0);
        assert!((orbit.height_mm() - home / 2.0).abs() < 1e-12, "twice as large");
        for _ in 0..200 {
            orbit.zoom(1.5);
        }
        assert!((orbit.height_mm() - home / 40.0).abs() < 1e-12, "nearest");
        for _ in 0..200 {
            orbit.zoom(-1.5);
        }
        assert!((orbit.height_mm() - home * 4.0).abs() < 1e-12, "farthest");
        let before = orbit;
        for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            orbit.zoom(bad);
        }
        orbit.turn(f64::NAN, 0.0);
        orbit.pan(0.0, f64::INFINITY);
        assert_eq!(orbit, before, "nothing moved");
    }
}
