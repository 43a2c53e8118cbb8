//! The solids of the core as Bevy draws them: one mesh for each finish.

use bevy::asset::RenderAssetUsages;
use bevy::mesh::{Indices, Mesh, PrimitiveTopology};

use super::drawing::Part;
use crate::app::frames::bevy_from_axle;
use crate::gear::{self, Solid, Triangle};
use crate::view::axle_parts::SHOULDER_MM;

/// The tooth of either gear that is marked, so that it can be followed by eye.
const MARKED_TOOTH: u32 = 0;

/// Which finish a triangle has; `body` is that of the gear's turned faces.
pub fn part_of(triangle: &Triangle, body: Part) -> Part {
    match triangle.part {
        gear::Part::TipLand | gear::Part::ToeFace | gear::Part::HeelFace if triangle.tooth == Some(MARKED_TOOTH) => {
            Part::Mark
        }
        gear::Part::Flank(_) => Part::Flanks,
        _ => body,
    }
}

/// A gear cut up by finish, in its own frame; of a pinion only what does not lie beyond a place along its axis.
pub fn meshes(solid: &Solid, body: Part, until_mm: Option<f64>) -> [(Part, Mesh); 3] {
    let beyond = |triangle: &Triangle| {
        until_mm.is_some_and(|until_mm| {
            triangle.part == gear::Part::Body
                && triangle.vertices.iter().any(|&corner| {
                    let vertex = usize::try_from(corner).ok().and_then(|i| solid.vertices().get(i));
                    vertex.is_some_and(|vertex| solid.position_mm(vertex).x > until_mm + SHOULDER_MM)
                })
        })
    };
    [body, Part::Flanks, Part::Mark].map(|part| {
        let wanted = |triangle: &Triangle| part_of(triangle, body) == part && !beyond(triangle);
        (part, mesh(solid, wanted))
    })
}

/// The triangles that are wanted, with only the corners they use.
fn mesh(solid: &Solid, wanted: impl Fn(&Triangle) -> bool) -> Mesh {
    let mut place: Vec<Option<u32>> = vec![None; solid.vertices().len()];
    let (mut points, mut normals, mut indices) = (Vec::new(), Vec::new(), Vec::new());
    for triangle in solid.triangles().iter().filter(|t| wanted(t)) {
        for corner in triangle.vertices {
            let Some((slot, vertex)) = usize::try_from(corner)
                .ok()
                .and_then(|i| Some((place.get_mut(i)?, solid.vertices().get(i)?)))
            else {
                continue;
            };
            let index = *slot.get_or_insert_with(|| {
                points.push(bevy_from_axle(solid.position_mm(vertex)).to_array());
                normals.push(bevy_from_axle(vertex.normal).to_array());
                u32::try_from(points.len() - 1).unwrap_or(u32::MAX)
            });
            indices.push(index);
        }
    }
    Mesh::new(PrimitiveTopology::TriangleList, RenderAssetUsages::default())
        .with_inserted_attribute(Mesh::ATTRIBUTE_POSITION, points)
        .with_inserted_attribute(Mesh::ATTRIBUTE_NORMAL, normals)
        .with_inserted_indices(Indices::U32(indices))
}
