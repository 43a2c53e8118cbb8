//! The one border between the axle's frame and Bevy's.
//!
//! The axle counts in f64 millimetres with x along the pinion's shaft, y along the offset (downward in a car) and z
//! along the ring gear's axis. Bevy counts in f32 with y upward. Half a turn about x leads from one to the other, so
//! that the picture is never mirrored; one Bevy unit is one millimetre.

use bevy::math::{Quat, Vec3};
use nalgebra::Vector3;

use crate::view::orbit::Eye;

/// A point in millimetres or a direction.
#[expect(
    clippy::cast_possible_truncation,
    reason = "f32 is what Bevy draws with; nothing is computed from it"
)]
pub fn bevy_from_axle(v: Vector3<f64>) -> Vec3 {
    Vec3::new(v.x as f32, -v.y as f32, -v.z as f32)
}

/// A length in millimetres.
#[expect(
    clippy::cast_possible_truncation,
    reason = "f32 is what Bevy draws with; nothing is computed from it"
)]
pub fn bevy_length(length_mm: f64) -> f32 {
    length_mm as f32
}

/// A turn by `angle_rad` about an axis of the axle.
pub fn bevy_turn(axis: Vector3<f64>, angle_rad: f64) -> Quat {
    Quat::from_axis_angle(bevy_from_axle(axis), bevy_length(angle_rad))
}

/// How a Bevy camera must be turned to look as the eye does: its −z is forward, its +y up.
pub fn bevy_from_eye(eye: &Eye) -> Quat {
    let columns = [eye.right, eye.up, -eye.forward].map(bevy_from_axle);
    Quat::from_mat3(&bevy::math::Mat3::from_cols(columns[0], columns[1], columns[2])).normalize()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::view::{Orbit, Viewpoint};

    #[test]
    fn the_picture_is_not_mirrored() {
        let [x, y, z] = [Vector3::x(), Vector3::y(), Vector3::z()].map(bevy_from_axle);
        assert!((x.cross(y) - z).length() < 1e-6, "right-handed in both");
        assert!((y + Vec3::Y).length() < 1e-6, "the offset points down");
    }

    #[test]
    fn a_turn_about_an_axis_is_the_same_turn() {
        let turned = nalgebra::Rotation3::new(Vector3::z() * 0.3) * Vector3::new(1.0, 2.0, 3.0);
        let in_bevy = bevy_turn(Vector3::z(), 0.3) * bevy_from_axle(Vector3::new(1.0, 2.0, 3.0));
        assert!(
            (bevy_from_axle(turned) - in_bevy).length() < 1e-5,
            "{turned:?} {in_bevy:?}"
        );
    }

    #[test]
    fn a_camera_looks_as_the_eye_does() {
        for viewpoint in Viewpoint::ALL {
            let eye = Orbit::around(Vector3::zeros(), 100.0, viewpoint).eye();
            let turn = bevy_from_eye(&eye);
            assert!(
                (turn * Vec3::NEG_Z - bevy_from_axle(eye.forward)).length() < 1e-5,
                "{viewpoint:?} forward"
            );
            assert!(
                (turn * Vec3::Y - bevy_from_axle(eye.up)).length() < 1e-5,
                "{viewpoint:?} up"
            );
        }
    }
}
