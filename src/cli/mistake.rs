//! What is wrong with a command line, in our words: what the parser found is asked for as values.

use std::error::Error as _;
use std::num::{ParseFloatError, ParseIntError};

use clap::Command;
use clap::error::{ContextKind, ContextValue, ErrorKind};

use crate::job::Failure;
use crate::words::say;

use super::frame::usage;

/// What is wrong, what to do, and how the command is used. `command` is the whole command line in its frame, `named` the
/// command that was named, if there is such a one.
pub(super) fn failure(error: &clap::Error, command: &mut Command, named: Option<&str>) -> Failure {
    command.build();
    let mut whole = command.clone();
    let command = named
        .and_then(|name| command.find_subcommand_mut(name))
        .unwrap_or(&mut whole);
    let name = command.get_bin_name().unwrap_or_default().to_owned();
    let lines = [
        Failure::bad_input(what(error)).text,
        String::new(),
        [say!("command-line-usage"), usage(command)].join(" "),
        String::new(),
        say!("command-line-mistake-help", command = [&name, "--help"].join(" ")),
    ];
    Failure::input(lines.join("\n"))
}

/// What is wrong and what to do, beginning small.
fn what(error: &clap::Error) -> String {
    let argument = || texts(error, ContextKind::InvalidArg).join(", ");
    let value = || texts(error, ContextKind::InvalidValue).concat();
    match error.kind() {
        ErrorKind::InvalidSubcommand => {
            let given = texts(error, ContextKind::InvalidSubcommand).concat();
            let near = texts(error, ContextKind::SuggestedSubcommand);
            if near.is_empty() {
                say!("command-line-mistake-command", given = given)
            } else {
                say!(
                    "command-line-mistake-command-near",
                    given = given,
                    near = near.join(", ")
                )
            }
        }
        ErrorKind::UnknownArgument => {
            let given = argument();
            let near = texts(error, ContextKind::SuggestedArg).concat();
            if !near.is_empty() {
                say!("command-line-mistake-option-near", given = given, near = near)
            } else if given.starts_with('-') {
                say!("command-line-mistake-option", given = given)
            } else {
                say!("command-line-mistake-too-many", given = given)
            }
        }
        ErrorKind::InvalidValue if value().is_empty() => {
            say!("command-line-mistake-no-value", argument = argument())
        }
        ErrorKind::InvalidValue => say!(
            "command-line-mistake-choice",
            given = value(),
            argument = argument(),
            names = texts(error, ContextKind::ValidValue).join(", ")
        ),
        ErrorKind::ValueValidation => {
            let why = error.source();
            if why.and_then(|why| why.downcast_ref::<ParseFloatError>()).is_some() {
                say!("command-line-mistake-number", given = value(), argument = argument())
            } else if why.and_then(|why| why.downcast_ref::<ParseIntError>()).is_some() {
                say!(
                    "command-line-mistake-whole-number",
                    given = value(),
                    argument = argument()
                )
            } else {
                say!("command-line-mistake-range", given = value(), argument = argument())
            }
        }
        ErrorKind::ArgumentConflict => {
            let (given, others) = (argument(), texts(error, ContextKind::PriorArg));
            if others == [given.clone()] {
                say!("command-line-mistake-twice", argument = given)
            } else {
                say!(
                    "command-line-mistake-conflict",
                    argument = given,
                    others = quoted(&others)
                )
            }
        }
        ErrorKind::MissingRequiredArgument => say!(
            "command-line-mistake-missing",
            arguments = quoted(&texts(error, ContextKind::InvalidArg))
        ),
        ErrorKind::TooManyValues => say!(
            "command-line-mistake-takes-no-value",
            argument = argument(),
            given = value()
        ),
        ErrorKind::InvalidUtf8 => say!("command-line-mistake-no-text"),
        // What our declarations give no occasion for.
        _ => say!("command-line-mistake-other"),
    }
}

/// Names as they are typed.
fn quoted(names: &[String]) -> String {
    let quoted: Vec<String> = names.iter().map(|name| format!("`{name}`")).collect();
    quoted.join(", ")
}

/// Texts that the parser kept of a mistake.
fn texts(error: &clap::Error, kind: ContextKind) -> Vec<String> {
    match error.get(kind) {
        Some(ContextValue::String(one)) => vec![one.clone()],
        Some(ContextValue::Strings(many)) => many.clone(),
        _ => Vec::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::super::arguments::command;
    use super::*;

    fn told(line: &str) -> String {
        let mut command = command();
        let words: Vec<&str> = ["lashwright"].into_iter().chain(line.split_whitespace()).collect();
        let error = command.try_get_matches_from_mut(&words).expect_err("a mistake");
        failure(&error, &mut command, words.get(1).copied()).text
    }

    #[test]
    fn a_mistake_says_what_is_wrong_what_to_do_and_how_the_command_is_used() {
        for (line, said, used) in [
            ("chekc", ["no command `chekc`", "check"], "[COMMAND]"),
            ("zzzz", ["no command `zzzz`", "lashwright --help"], "[COMMAND]"),
            ("mesh", ["missing: `<GEARS>`", "Add"], "mesh [OPTIONS] <GEARS>"),
            (
                "mesh a --nope",
                ["no option `--nope`", "Leave it out"],
                "mesh [OPTIONS] <GEARS>",
            ),
            (
                "mesh a --rout fast",
                ["no option `--rout`", "`--route`"],
                "mesh [OPTIONS] <GEARS>",
            ),
            (
                "mesh a extra",
                ["`extra` is one argument too many", "Leave it out"],
                "mesh",
            ),
            ("mesh a --paste", ["`--paste <UM>` has no value", "Write"], "mesh"),
            ("mesh a --paste x", ["`x` is not a number", "`--paste <UM>`"], "mesh"),
            (
                "attempt a --seed 1.5",
                ["`1.5` is not a whole number", "`--seed <N>`"],
                "attempt",
            ),
            ("mesh a --route slow", ["`slow` is not a value", "exact, fast"], "mesh"),
            (
                "mesh a --paste 1 --paste 2",
                ["`--paste <UM>` is given twice", "Leave"],
                "mesh",
            ),
            (
                "preload a --json --csv --step 1",
                ["`--json` does not go together with `--csv`", "Leave"],
                "preload",
            ),
            (
                "preload a --spacer-from 1",
                ["missing: `--spacer-to <MM>`, `--step <STEP>`", "Add"],
                "preload",
            ),
            ("gears --json=3", ["`--json` takes no value", "`3`"], "gears"),
            (
                "picture --out x --frames 99999",
                ["`99999` is out of range", "`--frames <N>`"],
                "picture",
            ),
        ] {
            let text = told(line);
            assert!(text.starts_with("error: "), "{line}: {text}");
            assert!(said.iter().all(|part| text.contains(part)), "{line}: {text}");
            let usage = text.lines().find(|line| line.starts_with("Usage: lashwright "));
            assert!(usage.is_some_and(|line| line.contains(used)), "{line}: {text}");
            let help = if used == "[COMMAND]" {
                "`lashwright --help`"
            } else {
                " --help`"
            };
            assert!(text.contains(help), "{line}: {text}");
            assert!(!text.contains("command-line-"), "{line}: {text}");
        }
    }
}
