//! The command line: arguments in, people's text or JSON out. One file a command.
//!
//! A command builds its whole answer before the first byte is printed, or checks its whole input before it prints row by
//! row, so that bad input prints nothing on standard output. Exit codes: 0 fine, 2 bad input, 1 anything else.

mod arguments;
mod attempt;
mod check;
mod gears;
mod help;
mod language;
mod mesh;
mod preload;
mod schema;

use std::io::Write;
use std::process::ExitCode;

pub use arguments::{PictureArguments, Request, parse};
pub use attempt::AttemptArguments;
pub use language::speak_as_environment_says;
pub use mesh::{MeshArguments, RouteArgument};
pub use preload::PreloadArguments;

use crate::job::{AtFault, Failure};
use crate::words::say;

/// A command that needs no screen.
#[derive(Debug, Clone, PartialEq)]
pub enum Command {
    /// Check files.
    Check {
        /// Names of embedded files, or paths.
        files: Vec<String>,
    },
    /// List the gear sets that ship with the program.
    Gears {
        /// As one JSON document.
        json: bool,
    },
    /// What a pinion support does with its nut tightened.
    Preload(PreloadArguments),
    /// Play an attempt.
    Attempt(AttemptArguments),
    /// Do a journal again.
    Replay {
        /// The journal.
        file: std::path::PathBuf,
        /// Where the debrief is to be written.
        debrief: Option<std::path::PathBuf>,
        /// As one JSON document.
        json: bool,
    },
    /// List all operations.
    Operations {
        /// As a JSON Schema.
        json: bool,
    },
    /// Mesh a gear set.
    Mesh(MeshArguments),
    /// Print the schema of a JSON document.
    Schema {
        /// Name of the document.
        name: String,
    },
}

/// What a command prints on standard output.
pub(crate) type Answer = Result<String, Failure>;

/// Runs a command and prints its answer.
pub fn run(command: &Command) -> ExitCode {
    match command {
        Command::Check { files } => finish(check::run(files)),
        Command::Gears { json } => finish(gears::run(*json)),
        Command::Preload(arguments) => finish(preload::run(arguments)),
        Command::Attempt(arguments) => attempt::run(arguments),
        Command::Replay { file, debrief, json } => finish(attempt::replay(file, debrief.as_deref(), *json)),
        Command::Operations { json } => finish(attempt::operations(*json)),
        Command::Mesh(arguments) => mesh::run(arguments),
        Command::Schema { name } => finish(schema::run(name)),
    }
}

/// Prints an answer or what went wrong.
fn finish(answer: Answer) -> ExitCode {
    match answer {
        Ok(text) => print(&text),
        Err(failure) => fail(&failure),
    }
}

/// Prints `text`, ended by a line end, on standard output.
pub fn print(text: &str) -> ExitCode {
    let mut page = Page::new();
    if page.write(text) && !text.ends_with('\n') {
        page.write("\n");
    }
    page.end()
}

/// Standard output, for as long as somebody reads it.
struct Page {
    out: std::io::StdoutLock<'static>,
    ended: Option<std::io::Error>,
}

impl Page {
    fn new() -> Self {
        Self {
            out: std::io::stdout().lock(),
            ended: None,
        }
    }

    /// Prints a text at once. False where nobody takes any more.
    fn write(&mut self, text: &str) -> bool {
        if self.ended.is_none() {
            self.ended = self
                .out
                .write_all(text.as_bytes())
                .and_then(|()| self.out.flush())
                .err();
        }
        self.ended.is_none()
    }

    fn end(self) -> ExitCode {
        match self.ended {
            // A reader that has seen enough is no failure.
            Some(error) if error.kind() != std::io::ErrorKind::BrokenPipe => fail(&Failure::went_wrong(say!(
                "files-cannot-write-output",
                why = error.to_string()
            ))),
            _ => ExitCode::SUCCESS,
        }
    }
}

/// Says that this program has no window, where one is asked for.
pub fn no_window() -> ExitCode {
    fail(&Failure::went_wrong(say!("command-line-no-window")))
}

/// Prints what went wrong on standard error.
pub fn fail(failure: &Failure) -> ExitCode {
    // If standard error is closed there is nobody left to tell; the exit code still says it.
    drop(writeln!(std::io::stderr().lock(), "{}", failure.text));
    match failure.fault {
        AtFault::Input => ExitCode::from(2),
        AtFault::Other => ExitCode::from(1),
    }
}
