//! Running a command.

use std::process::ExitCode;

use crate::job::{check, gears, operations, schema};

use super::command::Command;
use super::page::finish;
use super::{attempt, mesh, preload, replay};

/// Runs a command and prints its answer.
pub fn run(command: &Command) -> ExitCode {
    match command {
        Command::Check { files } => finish(check::all(files)),
        Command::Gears { json } => finish(if *json { gears::document() } else { gears::text() }),
        Command::Preload(arguments) => finish(preload::run(arguments)),
        Command::Attempt(arguments) => attempt::run(arguments),
        Command::Replay { file, debrief, json } => finish(replay::run(file, debrief.as_deref(), *json)),
        Command::Operations { json } => finish(if *json {
            operations::schema()
        } else {
            Ok(operations::text())
        }),
        Command::Mesh(arguments) => mesh::run(arguments),
        Command::Schema { name } => finish(schema::schema(name)),
    }
}
