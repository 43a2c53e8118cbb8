//! Marking paste on the teeth of the ring gear: its flanks with a picture on them of what the gap has left of the film.
//! The shader draws the edge of the print where the gap equals the film.

use std::sync::Arc;

use bevy::asset::RenderAssetUsages;
use bevy::camera::visibility::NoFrustumCulling;
use bevy::mesh::{Indices, PrimitiveTopology};
use bevy::prelude::*;
use bevy::render::render_resource::{Extent3d, TextureDimension, TextureFormat};
use nalgebra::Vector3;

use super::drawing::Gear;
use super::steel::{Finish, Finishes};
use crate::app::frames::{bevy_from_axle, bevy_length, bevy_turn};
use crate::app::session::Session;
use crate::bench::PasteLeft;
use crate::contact::FilmLeft;
use crate::gear::Side;
use crate::view::StagePair;

/// How far the drawn paste stands off the flank, so that it covers the coarser flank of the solid, mm.
const STAND_OFF_MM: f64 = 0.03;
/// Points of a painted flank along the tooth and up the tooth.
const POINTS: [usize; 2] = [33, 13];

/// A painted flank.
#[derive(Debug, Component)]
pub(super) struct Pasted;

/// What is shown now.
#[derive(Debug)]
pub(super) struct Shown {
    pair: u64,
    paste: Arc<PasteLeft>,
}

/// Puts the paste of the session on the teeth.
pub(super) fn show_paste(
    mut commands: Commands,
    session: Res<Session>,
    finishes: Res<Finishes>,
    mut materials: ResMut<Assets<Finish>>,
    mut meshes: ResMut<Assets<Mesh>>,
    mut images: ResMut<Assets<Image>>,
    gears: Query<(Entity, &Gear)>,
    pasted: Query<Entity, With<Pasted>>,
    mut shown: Local<Option<Shown>>,
) {
    let (pair, count) = session.stage_pair();
    let wanted = pair.zip(session.paste());
    let wheel = gears.iter().find(|(_, gear)| **gear == Gear::Wheel);
    let (Some((pair, paste)), Some((wheel, _))) = (wanted, wheel) else {
        if shown.take().is_some() {
            for flank in &pasted {
                commands.entity(flank).despawn();
            }
        }
        return;
    };
    if (shown.as_ref()).is_some_and(|before| before.pair == count && Arc::ptr_eq(&before.paste, paste)) {
        return;
    }
    for (finish, film) in finishes.paste.iter().zip(&paste.flanks) {
        if let Some(mut finish) = materials.get_mut(finish) {
            finish.set_paste(images.add(picture_of(film.as_ref())), paste.clearness);
        }
    }
    let same_teeth = (shown.as_ref()).is_some_and(|before| before.pair == count && before.paste.teeth == paste.teeth);
    *shown = Some(Shown {
        pair: count,
        paste: Arc::clone(paste),
    });
    if same_teeth {
        return;
    }
    for flank in &pasted {
        commands.entity(flank).despawn();
    }
    for (side, finish) in Side::BOTH.into_iter().zip(&finishes.paste) {
        let mesh = meshes.add(flank_mesh(pair, side));
        for &tooth in &paste.teeth {
            let turn = bevy_turn(Vector3::z(), pair.flank_angle_rad(tooth, side));
            commands.entity(wheel).with_child((
                Pasted,
                Mesh3d(mesh.clone()),
                MeshMaterial3d(finish.clone()),
                Transform::from_rotation(turn),
                NoFrustumCulling,
            ));
        }
    }
}

/// Gaps as shades of grey, from 0 to [`FilmLeft::MOST`]; the first row lies at the root, and a row begins at the toe.
fn picture_of(film: Option<&FilmLeft>) -> Image {
    let size = |[width, height]: [usize; 2]| Extent3d {
        width: u32::try_from(width).unwrap_or(1),
        height: u32::try_from(height).unwrap_or(1),
        depth_or_array_layers: 1,
    };
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a share of 255, and a cast saturates"
    )]
    let shade = |gap: &f64| (255.0 * gap / FilmLeft::MOST).round() as u8;
    let (size, shades) = match film {
        Some(film) => (size(FilmLeft::SIZE), film.gaps().iter().map(shade).collect()),
        None => (size([1, 1]), vec![u8::MAX]),
    };
    Image::new(
        size,
        TextureDimension::D2,
        shades,
        TextureFormat::R8Unorm,
        RenderAssetUsages::default(),
    )
}

/// The flank of slot 0 on a grid from toe to heel, at each place from root to top.
fn flank_mesh(pair: &StagePair, side: Side) -> Mesh {
    let [columns, rows] = POINTS;
    let flank = pair.pair.gears().pinion_flank(side).wheel();
    let share = |at: usize, of: usize| at as f64 / (of - 1) as f64;
    // The outermost places of the picture are the middles of its outermost points.
    let in_picture = |share: f64, of: usize| bevy_length((0.5 + share * (of - 1) as f64) / of as f64);
    let (mut positions, mut normals, mut places) = (Vec::new(), Vec::new(), Vec::new());
    for i in 0..columns {
        for j in 0..rows {
            let (along, up) = (share(i, columns), share(j, rows));
            // Where the cutter does not reach there is no solid either: the point before stands for it.
            let (position, normal) = flank.point(2.0 * along - 1.0, 2.0 * up - 1.0).map_or_else(
                || {
                    let last = |of: &Vec<[f32; 3]>| of.last().copied().unwrap_or_default();
                    (last(&positions), last(&normals))
                },
                |point| {
                    let raised = point.position_mm + point.normal * STAND_OFF_MM;
                    let normal = bevy_from_axle(point.normal);
                    (bevy_from_axle(raised).to_array(), normal.to_array())
                },
            );
            positions.push(position);
            normals.push(normal);
            places.push([in_picture(along, FilmLeft::SIZE[0]), in_picture(up, FilmLeft::SIZE[1])]);
        }
    }
    let indices = fields(columns, rows, up_first(&positions, &normals, rows));
    Mesh::new(PrimitiveTopology::TriangleList, RenderAssetUsages::default())
        .with_inserted_attribute(Mesh::ATTRIBUTE_POSITION, positions)
        .with_inserted_attribute(Mesh::ATTRIBUTE_NORMAL, normals)
        .with_inserted_attribute(Mesh::ATTRIBUTE_UV_0, places)
        .with_inserted_indices(Indices::U32(indices))
}

/// Whether up the tooth, then along it, is anticlockwise as seen from outside.
fn up_first(positions: &[[f32; 3]], normals: &[[f32; 3]], rows: usize) -> bool {
    let of = |vectors: &[[f32; 3]], i: usize| vectors.get(i).copied().map(Vec3::from).unwrap_or_default();
    let middle = positions.len() / 2;
    let from_middle = |i: usize| of(positions, middle + i) - of(positions, middle);
    from_middle(1).cross(from_middle(rows)).dot(of(normals, middle)) > 0.0
}

/// Two triangles a field of the grid.
fn fields(columns: usize, rows: usize, up_first: bool) -> Vec<u32> {
    let point = |i: usize, j: usize| u32::try_from(i * rows + j).unwrap_or(u32::MAX);
    let mut indices = Vec::new();
    for i in 1..columns {
        for j in 1..rows {
            let [a, b, c, d] = [point(i - 1, j - 1), point(i - 1, j), point(i, j), point(i, j - 1)];
            indices.extend(if up_first {
                [a, b, c, a, c, d]
            } else {
                [a, c, b, a, d, c]
            });
        }
    }
    indices
}
