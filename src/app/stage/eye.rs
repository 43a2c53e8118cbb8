//! The camera. It looks as the session's orbit says, with the middle of the stage as the middle of its view, whatever
//! part of the window the panels take.

use bevy::camera::{RenderTarget, ScalingMode, SubCameraView};
use bevy::core_pipeline::tonemapping::{DebandDither, Tonemapping};
use bevy::light::cluster::ClusterConfig;
use bevy::prelude::*;
use bevy::render::view::NoIndirectDrawing;

use super::drawing::{Drawing, Easel};
use super::steel::{self, Backdrop, Finish};
use crate::app::frames::{bevy_from_axle, bevy_from_eye, bevy_length};
use crate::app::screen::{self, StageArea};
use crate::app::session::Session;
use crate::view::orbit::FIELD_OF_VIEW_RAD;
use crate::view::{Orbit, Projection as EyeProjection};

/// The one camera.
#[derive(Debug, Component)]
pub(super) struct StageEye;

/// Opens the eye, with the ground behind.
pub(super) fn open(
    mut commands: Commands,
    session: Res<Session>,
    easel: Res<Easel>,
    mut meshes: ResMut<Assets<Mesh>>,
    mut finishes: ResMut<Assets<Finish>>,
) {
    let mut eye = commands.spawn((
        Name::new("eye"),
        StageEye,
        Camera3d::default(),
        easel.smoothing,
        // Colours of the look arrive as they are.
        Tonemapping::None,
        DebandDither::Disabled,
        // A handful of bodies and no lamps: nothing to sort into clusters, no crowd to cull on the card.
        ClusterConfig::Single,
        NoIndirectDrawing,
    ));
    if let Some(target) = &easel.target {
        eye.insert(RenderTarget::Image(target.clone()));
    }
    if easel.panels {
        eye.insert(screen::panel_context(&session));
    }
    let drawing = easel.drawing;
    eye.with_children(|eye| {
        if drawing == Drawing::Shaded {
            steel::backdrop(eye, session.theme(), &mut meshes, &mut finishes);
        }
    });
}

/// Everything the camera's place depends on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct EyeInputs {
    orbit: Orbit,
    area: StageArea,
    target_px: Option<UVec2>,
}

/// Places the eye.
pub(super) fn place(
    session: Res<Session>,
    area: Res<StageArea>,
    eye: Single<(&mut Transform, &mut Projection, &mut Camera), With<StageEye>>,
    backdrop: Option<Single<&mut Transform, (With<Backdrop>, Without<StageEye>)>>,
    mut seen: Local<Option<EyeInputs>>,
) {
    let (mut transform, mut projection, mut camera) = eye.into_inner();
    let now = EyeInputs {
        orbit: *session.orbit(),
        area: *area,
        target_px: camera.physical_target_size(),
    };
    if *seen == Some(now) {
        return;
    }
    *seen = Some(now);
    let orbit = session.orbit();
    let eye = orbit.eye();
    *transform = Transform::from_translation(bevy_from_axle(eye.position_mm)).with_rotation(bevy_from_eye(&eye));

    let [near, far] = orbit.depth_mm().map(bevy_length);
    // The ground lies just inside of the far end.
    let ground_mm = far * 1.02;
    let (aspect, sub_view) = stage_view(&area, now.target_px);
    camera.sub_camera_view = sub_view;
    let height_at_ground = match orbit.projection() {
        EyeProjection::Perspective => {
            let fov = bevy_length(FIELD_OF_VIEW_RAD);
            *projection = Projection::Perspective(PerspectiveProjection {
                fov,
                near,
                far: far * 1.05,
                ..default()
            });
            2.0 * ground_mm * (fov / 2.0).tan()
        }
        EyeProjection::Flat => {
            let viewport_height = bevy_length(orbit.height_mm());
            *projection = Projection::Orthographic(OrthographicProjection {
                near,
                far: far * 1.05,
                scaling_mode: ScalingMode::FixedVertical { viewport_height },
                ..OrthographicProjection::default_3d()
            });
            viewport_height
        }
    };
    if let Some(backdrop) = backdrop {
        // A little larger than the stage, so that no edge shows.
        let scale = Vec3::new(height_at_ground * aspect * 1.02, height_at_ground * 1.02, 1.0);
        *backdrop.into_inner() = Transform::from_xyz(0.0, 0.0, -ground_mm).with_scale(scale);
    }
}

/// Width to height of the stage, and the window as a view that reaches beyond the stage on the panels' side.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "pixels of a window, checked to be 1 or more"
)]
fn stage_view(area: &StageArea, target_px: Option<UVec2>) -> (f32, Option<SubCameraView>) {
    match (area.stage_px, target_px) {
        (Some([left, top, width, height]), Some(target_px)) => {
            let full_size = UVec2::new(width.round().max(1.0) as u32, height.round().max(1.0) as u32);
            let sub_view = SubCameraView {
                full_size,
                offset: Vec2::new(-left.round(), -top.round()),
                size: target_px,
            };
            (width / height, Some(sub_view))
        }
        (_, Some(target_px)) => (target_px.x as f32 / target_px.y.max(1) as f32, None),
        (_, None) => (1.0, None),
    }
}
