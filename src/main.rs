//! Reads the command line and hands over: windows and pictures to `app`, everything else to `cli`.

use std::process::ExitCode;

use lashwright::cli::{self, Request};

fn main() -> ExitCode {
    match cli::parse() {
        Request::Command(command) => cli::run(&command),
        screen => on_screen(screen),
    }
}

#[cfg(feature = "window")]
fn on_screen(request: Request) -> ExitCode {
    use lashwright::app::{self, PictureRequest, WindowRequest};

    let done = match request {
        Request::Command(_) => Ok(None),
        Request::Window => app::run(&WindowRequest::default()).map(|()| None),
        Request::Picture(words) => PictureRequest::from_words(words.gears, &words.size, &words.view, &words.theme)
            .and_then(|request| app::picture(&request, &words.out))
            .map(|report| Some(format!("{}: {report}", words.out.display()))),
    };
    match done {
        Ok(None) => ExitCode::SUCCESS,
        Ok(Some(text)) => cli::print(&text),
        Err(error) => cli::fail(&error.into()),
    }
}

#[cfg(not(feature = "window"))]
fn on_screen(_: Request) -> ExitCode {
    cli::fail(&lashwright::job::Failure::other(
        "error: this program was built without its window. Build it again with the default features.",
    ))
}
