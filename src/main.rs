//! Reads the command line and hands over: windows and pictures to `app`, everything else to `cli`.

use std::process::ExitCode;

use lashwright::cli::{self, Request};

fn main() -> ExitCode {
    cli::speak_as_environment_says();
    match cli::parse() {
        Ok(Request::Command(command)) => cli::run(&command),
        Ok(screen) => on_screen(screen),
        Err(ended) => ended,
    }
}

#[cfg(feature = "window")]
fn on_screen(request: Request) -> ExitCode {
    use lashwright::app::{self, WindowRequest};

    let done = match request {
        Request::Command(_) => Ok(None),
        Request::Window => app::run(&WindowRequest::default()).map(|()| None),
        Request::Picture(words) => picture_request(&words)
            .and_then(|request| app::picture(&request, &words.out))
            .map(|report| Some(format!("{}: {report}", words.out.display()))),
    };
    match done {
        Ok(None) => ExitCode::SUCCESS,
        Ok(Some(text)) => cli::print(&text),
        Err(error) => cli::fail(&error.into()),
    }
}

#[cfg(feature = "window")]
fn picture_request(
    words: &cli::PictureArguments,
) -> Result<lashwright::app::PictureRequest, lashwright::app::AppError> {
    let mut request =
        lashwright::app::PictureRequest::from_words(words.gears.clone(), &words.size, &words.view, &words.theme)?;
    request.set_text_and_units(words.text, &words.units)?;
    request.turning_frames = words.frames;
    if let Some(scenario) = &words.scenario {
        request.set_exercise(scenario, words.seed, words.operations.as_deref())?;
    }
    Ok(request)
}

#[cfg(not(feature = "window"))]
fn on_screen(_: Request) -> ExitCode {
    cli::no_window()
}
