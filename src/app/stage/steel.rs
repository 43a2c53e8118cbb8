//! Steel, paste, light and the ground behind.

use bevy::asset::RenderAssetUsages;
use bevy::camera::visibility::NoFrustumCulling;
use bevy::light::EnvironmentMapLight;
use bevy::mesh::{Indices, PrimitiveTopology};
use bevy::prelude::*;

use super::super::Session;
use super::{Drawing, Easel, Part, part_color};
use crate::view::look::TOOTH;
use crate::view::{Rgb, Theme};

/// A colour of the look for Bevy.
fn color(rgb: Rgb) -> Color {
    let [red, green, blue] = rgb.channels();
    Color::srgb_u8(red, green, blue)
}

/// The materials of the parts.
#[derive(Debug, Resource)]
pub(super) struct Materials {
    body: [Handle<StandardMaterial>; 2],
    traces: Handle<StandardMaterial>,
    mark: Handle<StandardMaterial>,
}

impl Materials {
    /// The material of a part.
    pub(super) fn of(&self, part: Part) -> Handle<StandardMaterial> {
        match part {
            Part::Wheel => self.body[0].clone(),
            Part::Pinion => self.body[1].clone(),
            Part::Traces => self.traces.clone(),
            Part::Mark => self.mark.clone(),
        }
    }
}

/// Makes the materials.
pub(super) fn prepare(mut commands: Commands, easel: Res<Easel>, mut materials: ResMut<Assets<StandardMaterial>>) {
    let mut material = |part: Part| {
        materials.add(match easel.drawing {
            Drawing::Parts => {
                let [red, green, blue] = part_color(part);
                StandardMaterial {
                    unlit: true,
                    ..Color::srgb_u8(red, green, blue).into()
                }
            }
            Drawing::Shaded => match part {
                Part::Wheel | Part::Pinion => StandardMaterial {
                    base_color: color(TOOTH.steel).lighter(0.16),
                    metallic: 0.65,
                    perceptual_roughness: 0.5,
                    ..default()
                },
                Part::Traces => StandardMaterial {
                    base_color: color(TOOTH.steel_worn),
                    metallic: 0.3,
                    perceptual_roughness: 0.6,
                    ..default()
                },
                Part::Mark => StandardMaterial {
                    base_color: color(TOOTH.paste),
                    perceptual_roughness: 0.8,
                    reflectance: 0.2,
                    ..default()
                },
            },
        })
    };
    let prepared = Materials {
        body: [material(Part::Wheel), material(Part::Pinion)],
        traces: material(Part::Traces),
        mark: material(Part::Mark),
    };
    commands.insert_resource(prepared);
}

/// What steel mirrors: a bright ceiling, a grey shop, a darker floor.
pub(super) fn surroundings(images: &mut Assets<Image>) -> EnvironmentMapLight {
    EnvironmentMapLight {
        intensity: 900.0,
        ..EnvironmentMapLight::hemispherical_gradient(
            images,
            Color::srgb(0.98, 0.97, 0.94),
            Color::srgb(0.62, 0.62, 0.61),
            Color::srgb(0.30, 0.29, 0.28),
        )
    }
}

/// A lamp over the left shoulder and a weaker one from the right; they go with the eye, as on a drawing.
pub(super) fn lights(eye: &mut ChildSpawnerCommands<'_>) {
    let lamps = [
        ("Key lamp", Vec3::new(0.55, -0.75, -0.8), 2500.0),
        ("Fill lamp", Vec3::new(-0.9, -0.1, -0.5), 800.0),
    ];
    for (name, direction, illuminance) in lamps {
        eye.spawn((
            Name::new(name),
            DirectionalLight {
                illuminance,
                shadow_maps_enabled: false,
                ..default()
            },
            Transform::default().looking_to(direction, Vec3::Y),
        ));
    }
}

/// The ground of the stage, drawn behind everything.
#[derive(Debug, Component)]
pub(super) struct Backdrop {
    grounds: Vec<(Theme, Handle<Mesh>)>,
}

/// Hangs the ground up behind the stage; the eye gives it its size.
pub(super) fn backdrop(
    eye: &mut ChildSpawnerCommands<'_>,
    theme: Theme,
    meshes: &mut Assets<Mesh>,
    materials: &mut Assets<StandardMaterial>,
) {
    let grounds: Vec<(Theme, Handle<Mesh>)> = Theme::ALL
        .into_iter()
        .map(|theme| (theme, meshes.add(gradient(theme))))
        .collect();
    let mesh = grounds
        .iter()
        .find(|(of, _)| *of == theme)
        .map(|(_, mesh)| mesh.clone())
        .unwrap_or_default();
    eye.spawn((
        Name::new("Ground"),
        Backdrop { grounds },
        Mesh3d(mesh),
        MeshMaterial3d(materials.add(StandardMaterial {
            unlit: true,
            cull_mode: None,
            ..default()
        })),
        NoFrustumCulling,
    ));
}

/// A unit square that faces the eye, in the stage's colours from top to foot, in bands fine enough that the mixing of
/// light and not of sRGB numbers in between is not seen.
fn gradient(theme: Theme) -> Mesh {
    const BANDS: u16 = 16;
    let tokens = theme.tokens();
    let (top, foot) = (color(tokens.stage_top).to_srgba(), color(tokens.stage_foot).to_srgba());
    let mut positions = Vec::new();
    let mut colors = Vec::new();
    for row in 0..=BANDS {
        let share = f32::from(row) / f32::from(BANDS);
        let mixed = LinearRgba::from(foot * (1.0 - share) + top * share).to_f32_array();
        for x in [-0.5, 0.5] {
            positions.push([x, share - 0.5, 0.0]);
            colors.push(mixed);
        }
    }
    let indices = (0..BANDS)
        .flat_map(|row| [0, 1, 3, 0, 3, 2].map(|corner| 2 * row + corner))
        .collect();
    Mesh::new(PrimitiveTopology::TriangleList, RenderAssetUsages::default())
        .with_inserted_attribute(Mesh::ATTRIBUTE_NORMAL, vec![[0.0, 0.0, 1.0]; positions.len()])
        .with_inserted_attribute(Mesh::ATTRIBUTE_POSITION, positions)
        .with_inserted_attribute(Mesh::ATTRIBUTE_COLOR, colors)
        .with_inserted_indices(Indices::U16(indices))
}

/// Changes the ground with the theme.
pub(super) fn follow_theme(
    session: Res<Session>,
    easel: Res<Easel>,
    mut clear: ResMut<ClearColor>,
    backdrop: Option<Single<(&Backdrop, &mut Mesh3d)>>,
    mut shown: Local<Option<Theme>>,
) {
    if *shown == Some(session.theme()) {
        return;
    }
    *shown = Some(session.theme());
    clear.0 = match easel.drawing {
        Drawing::Shaded => color(session.theme().tokens().stage_foot),
        Drawing::Parts => Color::BLACK,
    };
    if let Some(backdrop) = backdrop {
        let (Backdrop { grounds }, mut mesh) = backdrop.into_inner();
        if let Some((_, ground)) = grounds.iter().find(|(theme, _)| *theme == session.theme()) {
            mesh.0 = ground.clone();
        }
    }
}
