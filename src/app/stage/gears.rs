//! The two gears on the stage: their bodies, where they stand, and the order of all that follows the session.

use bevy::camera::visibility::NoFrustumCulling;
use bevy::prelude::*;
use nalgebra::Vector3;

use super::drawing::{Gear, Part};
use super::steel::{Finish, Finishes, Touch};
use super::{axle, eye, paste, solid, steel};
use crate::app::frames::{bevy_from_axle, bevy_turn};
use crate::app::order::AppSystems;
use crate::app::session::Session;
use crate::contact::Placement;
use crate::view::AxlePart;
use crate::view::axle_parts::{Group, Look};

/// A finish of a gear.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Component)]
struct Face(Gear, Part);

/// Marks the turned faces of a gear that is chosen or pointed at, as other parts are.
fn mark_gears(session: Res<Session>, finishes: Res<Finishes>, mut faces: Query<(&Face, &mut MeshMaterial3d<Finish>)>) {
    let on_bench = session.board().is_some();
    let [chosen, pointed] = session.parts_at_hand().map(|part| part.filter(|_| on_bench));
    for (Face(gear, part), mut finish) in &mut faces {
        let own = match gear {
            Gear::Wheel => AxlePart::RingGear,
            Gear::Pinion => AxlePart::Pinion,
        };
        let turned = matches!(part, Part::Wheel | Part::Pinion);
        let wanted = match (turned, chosen == Some(own), pointed == Some(own)) {
            (true, true, _) => finishes.of_look(Look::Steel, Touch::Chosen),
            (true, false, true) => finishes.of_look(Look::Steel, Touch::Pointed),
            _ => finishes.of(*part),
        };
        if finish.0 != wanted {
            finish.0 = wanted;
        }
    }
}

/// Draws the stage. Needs a [`Session`], an [`Easel`] and a [`crate::app::StageArea`].
pub fn plugin(app: &mut App) {
    app.add_plugins(steel::plugin);
    app.add_systems(Startup, (steel::prepare, eye::open).chain())
        .add_systems(
            Update,
            (
                show_gears,
                paste::show_paste,
                turn_gears,
                axle::show_parts,
                axle::lay_parts,
                mark_gears,
                eye::place,
                steel::follow_theme,
            )
                .chain()
                .in_set(AppSystems::Mirror),
        );
}

/// Puts the gears of the session on the stage, instead of those before.
fn show_gears(
    mut commands: Commands,
    session: Res<Session>,
    finishes: Res<Finishes>,
    mut meshes: ResMut<Assets<Mesh>>,
    standing: Query<Entity, With<Gear>>,
    mut shown: Local<Option<u64>>,
) {
    let (pair, count) = session.stage_pair();
    if *shown == Some(count) {
        return;
    }
    *shown = Some(count);
    for body in &standing {
        commands.entity(body).despawn();
    }
    let Some(pair) = pair else { return };
    let gears = [
        (Gear::Wheel, "ring-gear", Part::Wheel, &pair.wheel),
        (Gear::Pinion, "pinion", Part::Pinion, &pair.pinion),
    ];
    for (gear, name, part, solid) in gears {
        commands
            .spawn((Name::new(name), gear, stand(gear, &session), Visibility::default()))
            .with_children(|body| {
                // On the bench the shaft behind the pinion's head is a part of its own.
                let until_mm = session
                    .axle_parts()
                    .0
                    .filter(|_| gear == Gear::Pinion)
                    .map(|parts| parts.pinion_back_mm);
                for (part, mesh) in solid::meshes(solid, part, until_mm) {
                    body.spawn((
                        Face(gear, part),
                        Mesh3d(meshes.add(mesh)),
                        MeshMaterial3d(finishes.of(part)),
                        NoFrustumCulling,
                    ));
                }
            });
    }
}

/// Where a gear stands: turned as the session says and moved as its setting says.
fn stand(gear: Gear, session: &Session) -> Transform {
    let Some(pair) = session.stage_pair().0 else {
        return Transform::default();
    };
    let placement = session.setting().placement();
    let (mut stand, group) = match gear {
        Gear::Wheel => (wheel_stand(placement, session.wheel_angle_rad()), Group::Wheel),
        Gear::Pinion => (
            pinion_stand(placement, pair.design().offset_mm, session.turn().pinion_angle_rad()),
            Group::Pinion,
        ),
    };
    // What is out of the case lies beside it.
    if let (Some(parts), Some(board)) = (session.axle_parts().0, session.board()) {
        stand.translation += bevy_from_axle(parts.shift_mm(group, &board.laid));
    }
    stand
}

/// The ring gear turned to an angle about +z and moved along it by G.
pub fn wheel_stand(placement: Placement, angle_rad: f64) -> Transform {
    Transform::from_translation(bevy_from_axle(Vector3::z() * placement.wheel_axial_mm))
        .with_rotation(bevy_turn(Vector3::z(), angle_rad))
}

/// The pinion turned to an angle about its own axis, that axis standing at (0, a + E, 0), turned by Σ about +y, and the
/// pinion moved along it by P: A + E y + R_y(Σ)(R_x(φ1) p + P x).
pub fn pinion_stand(placement: Placement, offset_mm: f64, angle_rad: f64) -> Transform {
    let tilt = nalgebra::Rotation3::from_axis_angle(&Vector3::y_axis(), placement.shaft_angle_rad);
    let foot = Vector3::new(0.0, offset_mm + placement.offset_mm, 0.0);
    Transform::from_translation(bevy_from_axle(foot + tilt * Vector3::x() * placement.pinion_axial_mm))
        .with_rotation(bevy_turn(Vector3::y(), placement.shaft_angle_rad) * bevy_turn(Vector3::x(), angle_rad))
}

/// Keeps the gears where the session says.
fn turn_gears(session: Res<Session>, mut bodies: Query<(&Gear, &mut Transform)>) {
    for (gear, mut transform) in &mut bodies {
        let now = stand(*gear, &session);
        if *transform != now {
            *transform = now;
        }
    }
}
