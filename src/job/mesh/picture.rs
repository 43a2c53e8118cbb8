//! The picture of a meshed gear set as a file.

use std::path::Path;

use crate::drawing::{Theme, svg};
use crate::job::Failure;
use crate::report::mesh::{self as pages, PlacementNumbers};
use crate::store;

use super::placements::checked;
use super::request::{Mesh, MeshRequest};

/// Draws what `lashwright mesh` computes and writes it as an SVG file, whole or not at all.
///
/// # Errors
/// As [`super::text`], and a file that cannot be written.
pub fn write(request: &MeshRequest, numbers: PlacementNumbers, file: &Path) -> Result<(), Failure> {
    let numbers = checked(numbers)?;
    let mesh = Mesh::prepare(request)?;
    let text = svg::write(&pages::picture(&mesh.meshing, &numbers), Theme::Paper);
    Ok(store::write_whole(file, text.as_bytes())?)
}
