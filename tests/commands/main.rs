//! The command line as people and scripts meet it.

mod attempt;
mod check;
mod debrief;
mod gears;
mod journal_before;
mod journal_file;
#[path = "../shared/journals.rs"]
mod journals;
mod mesh;
mod mesh_picture;
mod note;
mod preload;
mod program;
