//! What is printed: answers on standard output, what went wrong on standard error.

use std::io::Write;
use std::process::ExitCode;

use crate::job::{AtFault, Failure};
use crate::words::say;

/// Prints an answer or what went wrong.
pub(super) fn finish(answer: Result<String, Failure>) -> ExitCode {
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
pub(super) struct Page {
    out: std::io::StdoutLock<'static>,
    ended: Option<std::io::Error>,
}

impl Page {
    /// Nothing printed yet.
    pub(super) fn new() -> Self {
        Self {
            out: std::io::stdout().lock(),
            ended: None,
        }
    }

    /// Prints a text at once. False where nobody takes any more.
    pub(super) fn write(&mut self, text: &str) -> bool {
        if self.ended.is_none() {
            self.ended = self
                .out
                .write_all(text.as_bytes())
                .and_then(|()| self.out.flush())
                .err();
        }
        self.ended.is_none()
    }

    /// The exit code.
    pub(super) fn end(self) -> ExitCode {
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
