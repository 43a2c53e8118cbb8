//! What commands print as JSON: one type a document, with its published schema.

pub mod attempt;
pub mod gears;
pub mod mesh;
pub mod preload;

/// Names of the documents that have a published schema.
pub const SCHEMAS: [&str; 5] = ["attempt", "gears", "mesh", "preload", "replay"];

/// The JSON schema of a document, by its name in [`SCHEMAS`].
pub fn schema(name: &str) -> Option<schemars::Schema> {
    match name {
        "attempt" => Some(schemars::schema_for!(attempt::AttemptDocument)),
        "replay" => Some(schemars::schema_for!(attempt::ReplayDocument)),
        "gears" => Some(schemars::schema_for!(Vec<gears::GearSetRow>)),
        "mesh" => Some(schemars::schema_for!(mesh::MeshDocument)),
        "preload" => Some(schemars::schema_for!(preload::PreloadDocument)),
        _ => None,
    }
}
