//! The command line as people and scripts meet it.

mod attempt;
mod check;
mod debrief;
mod gears;
mod journal_file;
mod mesh;
mod mesh_picture;
mod preload;
mod program;
