//! The command line as people and scripts meet it.

mod check;
mod gears;
mod program;
