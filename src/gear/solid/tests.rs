//! Tests of meshes on an invented set.
