//! Reads the command line and hands over: windows and pictures to `app`, everything else to `cli`.

use std::process::ExitCode;

use lashwright::cli::{self, Request};

fn main() -> ExitCode {
    match cli::parse() {
        Request::Command(command) => cli::run(&command),
        Request::Window | Request::Picture(_) => cli::fail(&lashwright::job::Failure::other(
            "error: this program was built without its window. Build it again with the default features.",
        )),
    }
}
