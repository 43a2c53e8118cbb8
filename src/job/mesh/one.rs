//! Meshing a gear set at one placement.

use crate::document::mesh::{GeometryDocument, MeshDocument};
use crate::job::{Failure, json};
use crate::report::mesh::{self as pages, PlacementNumbers};

use super::placements::checked;
use super::request::{Mesh, MeshRequest};

/// What the teeth do at one placement, for a technician.
///
/// # Errors
/// Bad input: a paste or placement that nobody can mean, a gear set that is not there, cannot be read or cannot exist.
pub fn text(request: &MeshRequest, numbers: PlacementNumbers) -> Result<String, Failure> {
    let (mesh, document) = at(request, numbers)?;
    Ok(pages::text(mesh.meshing.gears().design(), &document))
}

/// The same as one JSON document.
///
/// # Errors
/// As [`text`].
pub fn document(request: &MeshRequest, numbers: PlacementNumbers) -> Result<String, Failure> {
    json::pretty(&at(request, numbers)?.1)
}

fn at(request: &MeshRequest, numbers: PlacementNumbers) -> Result<(Mesh, MeshDocument), Failure> {
    let numbers = checked(numbers)?;
    let mesh = Mesh::prepare(request)?;
    let document = MeshDocument {
        geometry: Some(GeometryDocument::new(mesh.meshing.gears())),
        ..mesh.at(&numbers)
    };
    Ok((mesh, document))
}
