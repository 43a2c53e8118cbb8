//! What stands on the command line.

use std::ffi::OsString;
use std::process::ExitCode;

use clap::{CommandFactory, FromArgMatches, Parser, Subcommand};

use super::attempt::AttemptArguments;
use super::command::Command;
use super::frame::framed;
use super::help::worded;
use super::mesh::MeshArguments;
use super::mistake::failure;
use super::page::{fail, print};
use super::preload::PreloadArguments;

/// What the person asks for.
#[derive(Debug, Clone, PartialEq)]
pub enum Request {
    /// Open the window.
    Window,
    /// Draw a picture without a window.
    Picture(PictureArguments),
    /// A command that needs no screen.
    Command(Command),
}

/// Arguments of `picture`.
#[derive(Debug, Clone, PartialEq, Eq, clap::Args)]
pub struct PictureArguments {
    /// Gear set to show: an embedded name or a file.
    #[arg(value_name = "GEARS")]
    pub gears: Option<String>,
    /// PNG file to write.
    #[arg(long, value_name = "FILE.png")]
    pub out: std::path::PathBuf,
    /// Size in pixels.
    #[arg(long, value_name = "WxH", default_value = "1280x720")]
    pub size: String,
    /// Where to look from: corner, pinion, ring-gear, above, mesh, drive or coast; or a page: tooth-room, start, bench or debrief.
    #[arg(long, value_name = "VIEW", default_value = "corner")]
    pub view: String,
    /// paper or slate.
    #[arg(long, value_name = "THEME", default_value = "paper")]
    pub theme: String,
    /// Exercise whose bench is shown: a name from `attempt --list`.
    #[arg(long, value_name = "NAME")]
    pub scenario: Option<String>,
    /// Which axle of the exercise.
    #[arg(long, value_name = "N", default_value_t = 1)]
    pub seed: u64,
    /// What is done to it first: operations as JSON lines.
    #[arg(long, value_name = "IN.jsonl", requires = "scenario")]
    pub operations: Option<std::path::PathBuf>,
    /// Size of text in percent, 100 to 200.
    #[arg(long, value_name = "PERCENT", default_value_t = 100)]
    pub text: u16,
    /// mm or inch.
    #[arg(long, value_name = "UNITS", default_value = "mm")]
    pub units: String,
    /// Frames that are drawn afterwards with the gears turning, to say how long they take.
    #[arg(long, value_name = "N", default_value_t = 0, value_parser = clap::value_parser!(u32).range(0..=10_000))]
    pub frames: u32,
}

/// The whole command line; what it says is in [`super::help`].
#[derive(Debug, Parser)]
#[command(name = "lashwright", version, disable_help_subcommand = true)]
struct Arguments {
    #[command(subcommand)]
    command: Option<Subcommands>,
}

#[derive(Debug, Subcommand)]
enum Subcommands {
    /// Check files and show all their problems.
    Check {
        /// Files, or names of embedded gear sets.
        #[arg(required = true, value_name = "FILE")]
        files: Vec<String>,
    },
    /// List the gear sets that ship with the program.
    Gears {
        /// One JSON document.
        #[arg(long)]
        json: bool,
    },
    /// Preload and rotating torque of a pinion support with its nut tightened.
    Preload(PreloadArguments),
    /// Contact pattern, lash and transmission error of a gear set at a placement.
    Mesh(MeshArguments),
    /// Build up an axle without a screen: operations in, answers out.
    Attempt(AttemptArguments),
    /// Do an attempt again from its journal and compare every answer.
    Replay {
        /// Journal.
        #[arg(value_name = "JOURNAL")]
        file: std::path::PathBuf,
        /// Write the debrief of the finished attempt as one HTML page.
        #[arg(long, value_name = "OUT.html")]
        debrief: Option<std::path::PathBuf>,
        /// One JSON document.
        #[arg(long)]
        json: bool,
    },
    /// List all operations of an attempt with their fields.
    Operations {
        /// As a JSON Schema.
        #[arg(long)]
        json: bool,
    },
    /// Print the schema of a JSON document.
    Schema {
        /// Its name: the command that prints it.
        #[arg(value_name = "NAME")]
        name: String,
    },
    /// Draw what the window shows into a PNG file, without a window.
    Picture(PictureArguments),
}

/// The command line with its words.
pub(super) fn command() -> clap::Command {
    framed(worded(Arguments::command()))
}

/// Reads the command line of this process. For `--help`, and on a mistake there, it prints what to say.
///
/// # Errors
/// The exit code where there is nothing to run: 0 after help, 2 after a mistake.
pub fn parse() -> Result<Request, ExitCode> {
    let mut whole = command();
    let given: Vec<OsString> = std::env::args_os().collect();
    let named = given.iter().skip(1).find_map(|word| {
        let word = word.to_str()?;
        whole.find_subcommand(word).map(|_| word.to_owned())
    });
    let arguments = whole
        .try_get_matches_from_mut(given)
        .and_then(|mut matches| Arguments::from_arg_matches_mut(&mut matches));
    match arguments {
        Ok(arguments) => Ok(request(arguments)),
        Err(asked) if !asked.use_stderr() => Err(print(&asked.render().to_string())),
        Err(mistake) => Err(fail(&failure(&mistake, &mut whole, named.as_deref()))),
    }
}

fn request(arguments: Arguments) -> Request {
    match arguments.command {
        None => Request::Window,
        Some(Subcommands::Picture(arguments)) => Request::Picture(arguments),
        Some(Subcommands::Preload(arguments)) => Request::Command(Command::Preload(arguments)),
        Some(Subcommands::Check { files }) => Request::Command(Command::Check { files }),
        Some(Subcommands::Gears { json }) => Request::Command(Command::Gears { json }),
        Some(Subcommands::Mesh(arguments)) => Request::Command(Command::Mesh(arguments)),
        Some(Subcommands::Attempt(arguments)) => Request::Command(Command::Attempt(arguments)),
        Some(Subcommands::Replay { file, debrief, json }) => Request::Command(Command::Replay { file, debrief, json }),
        Some(Subcommands::Operations { json }) => Request::Command(Command::Operations { json }),
        Some(Subcommands::Schema { name }) => Request::Command(Command::Schema { name }),
    }
}
