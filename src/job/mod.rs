//! What the program does for people, one use case a file, shared by the command line and the window.
//!
//! A job takes plain requests, reads files through `store` and `catalogue`, calls the core, and answers with values or
//! a [`Failure`]: a finished text for people and whether their input was at fault.

pub mod attempt;
pub mod attempt_journal;
mod attempt_text;
pub mod check;
mod columns;
pub mod debrief;
mod failure;
pub mod gear_sets;
pub mod kept;
pub mod kept_choices;
pub mod kept_keys;
pub mod mesh;
pub mod mesh_chart;
pub mod mesh_picture;
mod mesh_sheet;
mod mesh_text;
pub mod operations;
pub mod picture_file;
pub mod placements;
pub mod preload;
pub mod preload_picture;
mod problem_text;
pub mod saved_files;
pub mod scenarios;
pub mod shop_units;
mod store_error;
pub mod supports;
pub mod text_file;
pub mod tooth_room;

pub use failure::{AtFault, Failure};
pub use problem_text::problem_text;
pub use store_error::store_error;
