//! `lashwright attempt`, `lashwright replay`, `lashwright operations`

use std::path::{Path, PathBuf};
use std::process::ExitCode;

use crate::job::attempt::{self, LONGEST_LINE, OpenAttempt, card_text, final_text};
use crate::job::{Failure, debrief, operations, text_file};

use super::{Answer, Page, fail};

/// Arguments of `attempt`.
#[derive(Debug, Clone, PartialEq, Eq, clap::Args)]
pub struct AttemptArguments {
    /// Exercise: a file, or the name of one that ships with the program (see `--list`)
    #[arg(value_name = "SCENARIO", required_unless_present = "list")]
    pub scenario: Option<String>,
    /// Which axle of the exercise
    #[arg(long, value_name = "N", default_value_t = 1)]
    pub seed: u64,
    /// Operations as JSON lines; without it they are read from standard input
    #[arg(long, value_name = "IN.jsonl")]
    pub operations: Option<PathBuf>,
    /// Have it played: reference, reversed or random
    #[arg(long, value_name = "POLICY", conflicts_with = "operations")]
    pub play: Option<String>,
    /// Keep the attempt in this file, which must not be there yet
    #[arg(long, value_name = "OUT.jsonl")]
    pub journal: Option<PathBuf>,
    /// One JSON line for each operation, and one for the end
    #[arg(long)]
    pub json: bool,
    /// Write what was hidden beside what was believed, and better ways, as one HTML page; the attempt has to be finished
    #[arg(long, value_name = "OUT.html")]
    pub debrief: Option<PathBuf>,
    /// List the exercises that ship with the program
    #[arg(long, conflicts_with_all = ["scenario", "operations", "journal", "play", "debrief"])]
    pub list: bool,
}

/// Plays an attempt: each operation is answered before the next one is read.
pub(super) fn run(arguments: &AttemptArguments) -> ExitCode {
    if arguments.list {
        return super::finish(list(arguments.json));
    }
    let Some(scenario) = &arguments.scenario else {
        return fail(&Failure::input(
            "error: name an exercise; `--list` shows those that ship with the program.",
        ));
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
        page.write(&(card_text(session.attempt()) + "\n\n"));
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
    let document = session.document()?;
    let text = if arguments.json {
        json_line(&document)?
    } else {
        final_text(&document, session.attempt().exercise().scenario().weights) + "\n"
    };
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
            text: format!("line {}: {}", index + 1, failure.text),
        };
        let line = line.map_err(at)?;
        let line = line.trim();
        if line.is_empty() || line.starts_with('#') {
            continue;
        }
        let operation = attempt::operation_of(line).map_err(at)?;
        let answer = session.apply(operation).map_err(at)?;
        let text = if json {
            json_line(&session.answer_document(answer))?
        } else {
            session.answer_text(&answer) + "\n"
        };
        if !page.write(&text) {
            break;
        }
        if session.attempt().is_finished() {
            break;
        }
    }
    Ok(())
}

fn json_line<T: serde::Serialize>(of: &T) -> Answer {
    serde_json::to_string(of)
        .map(|text| text + "\n")
        .map_err(|error| Failure::other(format!("error: {error}.")))
}

fn list(json: bool) -> Answer {
    let rows = attempt::list()?;
    if json {
        return serde_json::to_string_pretty(&rows).map_err(|error| Failure::other(format!("error: {error}.")));
    }
    let widest = rows.iter().map(|row| row.name.chars().count()).max().unwrap_or(0);
    let lines: Vec<String> = rows
        .iter()
        .map(|row| {
            format!(
                "{}  {:widest$}  layout {}  {}",
                row.step, row.name, row.layout, row.title
            )
        })
        .collect();
    Ok(lines.join("\n"))
}

/// Does everything in a journal again.
pub(super) fn replay(file: &Path, debrief: Option<&Path>, json: bool) -> Answer {
    let found = match debrief {
        Some(page) => attempt::replay_debrief(file, page)?,
        None => attempt::replay(file)?,
    };
    if json {
        return serde_json::to_string_pretty(&found).map_err(|error| Failure::other(format!("error: {error}.")));
    }
    let mut lines = vec![format!(
        "{}: {} operations at `{}`, seed {}, {}",
        found.journal,
        found.operations,
        found.scenario,
        found.seed,
        if found.sealed {
            "finished and sealed"
        } else {
            "not finished"
        }
    )];
    lines.extend(found.notice.clone());
    lines.push(match (found.first_difference, found.recomputed) {
        (None, _) => "Every answer came out again bit for bit.".to_owned(),
        (Some(first), true) => format!(
            "Recomputed: the journal was written with other physics, scenario or parts; answers differ from operation {first} on."
        ),
        (Some(first), false) => format!("Answers differ from operation {first} on: this journal was changed."),
    });
    match found.score_identical {
        Some(true) => lines.push(format!("So did the score: {:.1} of 100.", found.score.total)),
        Some(false) => lines.push(format!(
            "The score comes out as {:.1} of 100, and the journal holds another.",
            found.score.total
        )),
        None => {}
    }
    lines.push(format!("State {}", found.state_hash));
    Ok(lines.join("\n"))
}

/// Lists all operations.
pub(super) fn operations(json: bool) -> Answer {
    if json {
        return serde_json::to_string_pretty(&operations::schema())
            .map_err(|error| Failure::other(format!("error: {error}.")));
    }
    Ok(operations::text())
}
