//! `lashwright attempt SCENARIO`

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use crate::job::attempt::{self, LONGEST_LINE, OpenAttempt, list};
use crate::job::{Failure, debrief, text_file};
use crate::words::say;

use super::page::{Page, fail, finish};

/// Arguments of `attempt`.
#[derive(Debug, Clone, PartialEq, Eq, clap::Args)]
pub struct AttemptArguments {
    /// Exercise: a file, or the name of one that ships with the program (see `--list`).
    #[arg(value_name = "SCENARIO", required_unless_present = "list")]
    pub scenario: Option<String>,
    /// Which axle of the exercise.
    #[arg(long, value_name = "N", default_value_t = 1)]
    pub seed: u64,
    /// Operations as JSON lines; without it they are read from standard input.
    #[arg(long, value_name = "IN.jsonl")]
    pub operations: Option<PathBuf>,
    /// Have it played: reference, reversed or random.
    #[arg(long, value_name = "POLICY", conflicts_with = "operations")]
    pub play: Option<String>,
    /// Keep the attempt in this file, which must not be there yet.
    #[arg(long, value_name = "OUT.jsonl")]
    pub journal: Option<PathBuf>,
    /// One JSON line for each operation, and one for the end.
    #[arg(long)]
    pub json: bool,
    /// Write what was hidden beside what was believed, and better ways, as one HTML page; the attempt has to be finished.
    #[arg(long, value_name = "OUT.html")]
    pub debrief: Option<PathBuf>,
    /// List the exercises that ship with the program.
    #[arg(long, conflicts_with_all = ["scenario", "operations", "journal", "play", "debrief"])]
    pub list: bool,
}

/// Plays an attempt: each operation is answered before the next one is read.
pub(super) fn run(arguments: &AttemptArguments) -> ExitCode {
    if arguments.list {
        return finish(if arguments.json { list::document() } else { list::text() });
    }
    let Some(scenario) = &arguments.scenario else {
        return fail(&Failure::bad_input(say!("card-name-exercise")));
    };
    match play(arguments, scenario) {
        Ok(code) => code,
        Err(failure) => fail(&failure),
    }
}

fn play(arguments: &AttemptArguments, scenario: &str) -> Result<ExitCode, Failure> {
    if let Some(page) = &arguments.debrief {
        let others = [&arguments.operations, &arguments.journal].map(Option::as_deref);
        let others: Vec<&Path> = others.into_iter().flatten().collect();
        debrief::target_is_free(page, &others)?;
    }
    // A file is read before anything begins, so that one that is not there leaves no journal behind.
    let given = match &arguments.play {
        Some(policy) => Some(attempt::played(scenario, arguments.seed, policy)?),
        None => arguments.operations.as_deref().map(text_file::read_lines).transpose()?,
    };
    let mut session = OpenAttempt::begin(scenario, arguments.seed, arguments.journal.as_deref())?;
    let mut page = Page::new();
    if !arguments.json {
        page.write(&(session.card() + "\n\n"));
    }
    let outcome = if let Some(lines) = given {
        each(lines.into_iter().map(Ok), &mut session, &mut page, arguments.json)
    } else {
        let lines = text_file::lines_within(std::io::stdin().lock(), LONGEST_LINE);
        each(lines, &mut session, &mut page, arguments.json)
    };
    if let Err(failure) = outcome {
        page.end();
        return Err(failure);
    }
    let text = if arguments.json {
        session.end_line()?
    } else {
        session.end_text()?
    } + "\n";
    page.write(&text);
    let code = page.end();
    if let Some(file) = &arguments.debrief {
        session.write_debrief(file)?;
    }
    Ok(code)
}

/// Answers each line; empty ones and those that begin with `#` are passed over.
fn each(
    lines: impl Iterator<Item = Result<String, Failure>>,
    session: &mut OpenAttempt,
    page: &mut Page,
    json: bool,
) -> Result<(), Failure> {
    for (index, line) in lines.enumerate() {
        let at = |failure: Failure| Failure {
            fault: failure.fault,
            text: say!("files-at-line", line = index + 1, what = failure.text),
        };
        let line = line.map_err(at)?;
        let line = line.trim();
        if line.is_empty() || line.starts_with('#') {
            continue;
        }
        let operation = attempt::operation_of(line).map_err(at)?;
        let answer = session.apply(operation).map_err(at)?;
        let text = if json {
            session.answer_line(answer)?
        } else {
            session.answer_text(&answer)
        } + "\n";
        if !page.write(&text) {
            break;
        }
        if session.attempt().is_finished() {
            break;
        }
    }
    Ok(())
}
