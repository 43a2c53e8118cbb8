//! The parts around the gears of an exercise: there, away, or lying beside, as the axle lies on the bench.

use bevy::asset::RenderAssetUsages;
use bevy::camera::visibility::NoFrustumCulling;
use bevy::mesh::{Indices, PrimitiveTopology};
use bevy::prelude::*;

use super::steel::{Finish, Finishes, Touch};
use crate::app::frames::bevy_from_axle;
use crate::app::session::Session;
use crate::view::axle_parts::{Body, Look, Mesh as Shape};
use crate::view::bench::Laid;
use crate::view::{AxlePart, AxleParts};

/// A body of the axle, by its place in [`AxleParts::bodies`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, Component)]
pub(super) struct AxleBody {
    index: usize,
    part: AxlePart,
    look: Look,
}

/// Puts the bodies of the session's axle on the stage, instead of those before.
pub(super) fn show_parts(
    mut commands: Commands,
    session: Res<Session>,
    finishes: Res<Finishes>,
    mut meshes: ResMut<Assets<Mesh>>,
    standing: Query<Entity, With<AxleBody>>,
    mut shown: Local<Option<u64>>,
) {
    let (parts, count) = session.axle_parts();
    if *shown == Some(count) {
        return;
    }
    *shown = Some(count);
    for body in &standing {
        commands.entity(body).despawn();
    }
    let Some((parts, laid)) = parts.zip(session.board().map(|board| &board.laid)) else {
        return;
    };
    for (index, body) in parts.bodies.iter().enumerate().filter(|(_, body)| !body.unseen) {
        commands.spawn((
            AxleBody {
                index,
                part: body.part,
                look: body.look,
            },
            Mesh3d(meshes.add(mesh(&body.mesh))),
            MeshMaterial3d(finishes.of_look(body.look, touch(&session, body.part))),
            stand(parts, body, laid),
            visibility(body, laid),
            NoFrustumCulling,
        ));
    }
}

/// What the bodies depend on besides their shapes.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct PoseInputs {
    count: u64,
    laid: Option<Laid>,
    at_hand: [Option<AxlePart>; 2],
}

/// Keeps the bodies where the axle's state says, and marks the part at hand.
pub(super) fn lay_parts(
    session: Res<Session>,
    finishes: Res<Finishes>,
    mut bodies: Query<(&AxleBody, &mut Transform, &mut Visibility, &mut MeshMaterial3d<Finish>)>,
    mut seen: Local<Option<PoseInputs>>,
) {
    let (parts, count) = session.axle_parts();
    let now = PoseInputs {
        count,
        laid: session.board().map(|board| board.laid.clone()),
        at_hand: session.parts_at_hand(),
    };
    if seen.as_ref() == Some(&now) {
        return;
    }
    if let Some((parts, laid)) = parts.zip(now.laid.as_ref()) {
        for (own, mut transform, mut seen, mut finish) in &mut bodies {
            let Some(body) = parts.bodies.get(own.index) else {
                continue;
            };
            transform.set_if_neq(stand(parts, body, laid));
            seen.set_if_neq(visibility(body, laid));
            let wanted = finishes.of_look(own.look, touch(&session, own.part));
            if finish.0 != wanted {
                finish.0 = wanted;
            }
        }
    }
    *seen = Some(now);
}

fn touch(session: &Session, part: AxlePart) -> Touch {
    let [chosen, pointed] = session.parts_at_hand();
    if chosen == Some(part) {
        Touch::Chosen
    } else if pointed == Some(part) {
        Touch::Pointed
    } else {
        Touch::None
    }
}

fn stand(parts: &AxleParts, body: &Body, laid: &Laid) -> Transform {
    Transform::from_translation(bevy_from_axle(parts.shift_mm(body.group, laid)))
}

fn visibility(body: &Body, laid: &Laid) -> Visibility {
    if body.is_there(laid) {
        Visibility::Inherited
    } else {
        Visibility::Hidden
    }
}

fn mesh(shape: &Shape) -> Mesh {
    let places =
        |of: &[nalgebra::Vector3<f64>]| -> Vec<[f32; 3]> { of.iter().map(|v| bevy_from_axle(*v).to_array()).collect() };
    Mesh::new(PrimitiveTopology::TriangleList, RenderAssetUsages::default())
        .with_inserted_attribute(Mesh::ATTRIBUTE_POSITION, places(&shape.points))
        .with_inserted_attribute(Mesh::ATTRIBUTE_NORMAL, places(&shape.normals))
        .with_inserted_indices(Indices::U32(shape.triangles.iter().flatten().copied().collect()))
}
