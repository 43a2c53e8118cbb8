//! The stage: the two blanks, the ground behind, the eye.
//!
//! Everything here follows the [`Session`]; nothing here changes it. `solid` turns outlines into triangles, `eye`
//! places the camera, `steel` holds the finishes and their shader.

mod eye;
pub mod solid;
mod steel;

use bevy::camera::ImageRenderTarget;
use bevy::camera::visibility::NoFrustumCulling;
use bevy::prelude::*;

use self::solid::{GearAxis, Solid};
use self::steel::Finishes;
use super::frames::{bevy_from_axle, bevy_turn};
use super::{AppSystems, Session};
use crate::view::blanks::Blank;

/// How the stage is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Drawing {
    /// Steel in the light.
    #[default]
    Shaded,
    /// Every part in one flat colour of its own on black, to be counted by a test: see [`part_color`].
    Parts,
}

/// A part that a test can tell from the others.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Part {
    /// The ring gear's body.
    Wheel,
    /// The pinion's body.
    Pinion,
    /// Tooth traces on either gear.
    Traces,
    /// The marked tooth of either gear.
    Mark,
}

/// The flat colour of a part in [`Drawing::Parts`], sRGB.
pub const fn part_color(part: Part) -> [u8; 3] {
    match part {
        Part::Wheel => [255, 0, 0],
        Part::Pinion => [0, 255, 0],
        Part::Traces => [0, 0, 255],
        Part::Mark => [255, 255, 0],
    }
}

/// What the stage is drawn on and how.
#[derive(Debug, Clone, Resource)]
pub struct Easel {
    /// The picture; `None` is the window.
    pub target: Option<ImageRenderTarget>,
    /// Smoothing of edges.
    pub smoothing: Msaa,
    /// Shaded or as parts.
    pub drawing: Drawing,
    /// Whether the panels are drawn too.
    pub panels: bool,
}

/// Which gear a body is, so that it turns with it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Component)]
pub enum Gear {
    /// The ring gear.
    Wheel,
    /// Its mate.
    Pinion,
}

/// Draws the stage. Needs a [`Session`], an [`Easel`] and a [`super::StageArea`].
pub(super) fn plugin(app: &mut App) {
    app.add_plugins(steel::plugin);
    app.add_systems(Startup, (steel::prepare, eye::open).chain())
        .add_systems(
            Update,
            (show_blanks, turn_blanks, eye::place, steel::follow_theme)
                .chain()
                .in_set(AppSystems::Mirror),
        );
}

/// Puts the blanks of the chosen set on the stage, instead of those before.
fn show_blanks(
    mut commands: Commands,
    session: Res<Session>,
    finishes: Res<Finishes>,
    mut meshes: ResMut<Assets<Mesh>>,
    standing: Query<Entity, With<Gear>>,
    mut shown: Local<Option<usize>>,
) {
    if *shown == session.chosen() {
        return;
    }
    *shown = session.chosen();
    for body in &standing {
        commands.entity(body).despawn();
    }
    let Ok(blanks) = session.blanks() else { return };
    let [_, wheel_back_mm] = blanks.wheel.outline.axial_extent_mm();
    let [_, shaft_end_mm] = blanks.pinion.outline.axial_extent_mm();
    let gears = [
        (
            Gear::Wheel,
            "Ring gear",
            Part::Wheel,
            GearAxis::wheel(),
            &blanks.wheel,
            wheel_back_mm,
        ),
        (
            Gear::Pinion,
            "Pinion",
            Part::Pinion,
            GearAxis::pinion(blanks.offset_mm),
            &blanks.pinion,
            shaft_end_mm,
        ),
    ];
    for (gear, name, part, axis, blank, end_mm) in gears {
        let solids = [
            (part, Solid::revolved(&axis, &blank.outline, 240)),
            (Part::Traces, traces(&axis, blank)),
            (Part::Mark, mark(&axis, blank, end_mm)),
        ];
        commands
            .spawn((
                Name::new(name),
                gear,
                Transform::from_translation(bevy_from_axle(axis.origin_mm)),
                Visibility::default(),
            ))
            .with_children(|body| {
                for (part, solid) in solids {
                    body.spawn((
                        Mesh3d(meshes.add(solid.mesh())),
                        MeshMaterial3d(finishes.of(part)),
                        NoFrustumCulling,
                    ));
                }
            });
    }
}

/// Lines over the pitch cone, a tenth of the normal pitch wide, for all teeth but the marked one.
fn traces(axis: &GearAxis, blank: &Blank) -> Solid {
    Solid::traces(
        axis,
        &blank.cone,
        1..blank.cone.teeth,
        0.10 * blank.cone.normal_pitch_mm(),
        RAISED_MM,
    )
}

/// The marked tooth, and its mark on the end face at the back, so that it is seen from there too.
fn mark(axis: &GearAxis, blank: &Blank, end_mm: f64) -> Solid {
    let cone = &blank.cone;
    let tooth = Solid::traces(axis, cone, [0], 0.34 * cone.normal_pitch_mm(), RAISED_MM);
    let radii = blank
        .outline
        .corners_mm
        .iter()
        .filter(|corner| (corner[0] - end_mm).abs() < 1e-9)
        .map(|c| c[1]);
    let [inner_mm, outer_mm] = radii.fold([f64::INFINITY, 0.0], |[low, high], r| {
        [if r < low { r } else { low }, if r > high { r } else { high }]
    });
    let heel_angle_rad = cone.trace(0, cone.face_mm[1]).angle_rad;
    let width_mm = 0.22 * cone.normal_pitch_mm();
    tooth.and(Solid::radial_mark(
        axis,
        heel_angle_rad,
        [inner_mm, outer_mm],
        end_mm,
        width_mm,
        RAISED_MM,
        true,
    ))
}

/// How high lines lie over the steel, mm: more than the flats of the turned bodies are deep, too little to be seen.
const RAISED_MM: f64 = 0.12;

/// Turns the bodies to where the session says.
fn turn_blanks(session: Res<Session>, mut bodies: Query<(&Gear, &mut Transform)>) {
    let turn = session.turn();
    for (gear, mut transform) in &mut bodies {
        let rotation = match gear {
            Gear::Wheel => bevy_turn(nalgebra::Vector3::z(), turn.wheel_angle_rad()),
            Gear::Pinion => bevy_turn(nalgebra::Vector3::x(), turn.pinion_angle_rad()),
        };
        if transform.rotation != rotation {
            transform.rotation = rotation;
        }
    }
}
