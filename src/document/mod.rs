//! What commands print as JSON: one type a document, with its published schema.

pub mod gears;
