//! The command line as people and scripts meet it.

mod check;
mod gears;
mod mesh;
mod preload;
mod program;
