//! What `--help` says. The arguments are declared beside the commands that take them; their words are messages, set here.

use clap::builder::{Resettable, StyledStr};
use clap::{Arg, ArgAction, Command};

use crate::job::supports;
use crate::words::{self, say};

/// The command line with its words.
pub(super) fn worded(command: Command) -> Command {
    with_flags(bare(command))
        .arg(
            Arg::new("version")
                .short('V')
                .long("version")
                .action(ArgAction::Version)
                .help(say!("command-line-version")),
        )
        .about(say!("command-line-about"))
        .long_about(say!("command-line-long-about", note = words::simulated()))
        .mut_subcommand("check", |command| {
            command
                .about(say!("command-line-check"))
                .mut_arg("files", |it| it.help(say!("command-line-check-files")))
        })
        .mut_subcommand("gears", |command| {
            command
                .about(say!("command-line-gears"))
                .mut_arg("json", |it| it.help(say!("command-line-json")))
        })
        .mut_subcommand("preload", preload)
        .mut_subcommand("mesh", mesh)
        .mut_subcommand("attempt", attempt)
        .mut_subcommand("replay", |command| {
            command
                .about(say!("command-line-replay"))
                .mut_arg("file", |it| it.help(say!("command-line-replay-file")))
                .mut_arg("debrief", |it| it.help(say!("command-line-replay-debrief")))
                .mut_arg("json", |it| it.help(say!("command-line-json")))
        })
        .mut_subcommand("operations", |command| {
            command
                .about(say!("command-line-operations"))
                .mut_arg("json", |it| it.help(say!("command-line-operations-json")))
        })
        .mut_subcommand("schema", |command| {
            command
                .about(say!("command-line-schema"))
                .mut_arg("name", |it| it.help(say!("command-line-schema-name")))
        })
        .mut_subcommand("picture", picture)
}

/// Without what the comments of the declarations say, which is for whoever works on them.
fn bare(command: Command) -> Command {
    let nothing = || Resettable::<StyledStr>::Reset;
    command
        .about(nothing())
        .long_about(nothing())
        .mut_args(|it| it.help(nothing()).long_help(nothing()))
        .mut_subcommands(bare)
}

/// With flags for help and version whose words are messages.
fn with_flags(command: Command) -> Command {
    command
        .disable_help_flag(true)
        .disable_version_flag(true)
        .arg(
            Arg::new("help")
                .short('h')
                .long("help")
                .action(ArgAction::Help)
                .help(say!("command-line-help")),
        )
        .mut_subcommands(with_flags)
}

fn preload(command: Command) -> Command {
    command
        .about(say!("command-line-preload"))
        .long_about(say!("command-line-preload-more"))
        .mut_arg("support", |it| {
            it.help(say!(
                "command-line-preload-support",
                names = supports::names().join(", ")
            ))
        })
        .mut_arg("spacer_mm", |it| it.help(say!("command-line-preload-spacer")))
        .mut_arg("nut_torque_nm", |it| it.help(say!("command-line-preload-nut-torque")))
        .mut_arg("turn_rpm", |it| it.help(say!("command-line-preload-turn")))
        .mut_arg("temperature_c", |it| it.help(say!("command-line-preload-temperature")))
        .mut_arg("spacer_from", |it| it.help(say!("command-line-preload-spacer-from")))
        .mut_arg("spacer_to", |it| it.help(say!("command-line-preload-spacer-to")))
        .mut_arg("nut_torque_from", |it| it.help(say!("command-line-preload-nut-from")))
        .mut_arg("nut_torque_to", |it| it.help(say!("command-line-preload-nut-to")))
        .mut_arg("step", |it| it.help(say!("command-line-preload-step")))
        .mut_arg("picture", |it| it.help(say!("command-line-preload-picture")))
        .mut_arg("json", |it| it.help(say!("command-line-preload-json")))
        .mut_arg("csv", |it| it.help(say!("command-line-preload-csv")))
}

fn mesh(command: Command) -> Command {
    command
        .about(say!("command-line-mesh"))
        .mut_arg("gears", |it| it.help(say!("command-line-mesh-gears")))
        .mut_arg("pinion_axial", |it| it.help(say!("command-line-mesh-pinion")))
        .mut_arg("wheel_axial", |it| it.help(say!("command-line-mesh-ring-gear")))
        .mut_arg("offset_shift", |it| it.help(say!("command-line-mesh-offset")))
        .mut_arg("shaft_angle_shift", |it| it.help(say!("command-line-mesh-shaft-angle")))
        .mut_arg("paste", |it| it.help(say!("command-line-mesh-paste")))
        .mut_arg("route", |it| it.help(say!("command-line-mesh-route")))
        .mut_arg("placements", |it| it.help(say!("command-line-mesh-placements")))
        .mut_arg("picture", |it| it.help(say!("command-line-mesh-picture")))
        .mut_arg("chart", |it| it.help(say!("command-line-mesh-chart")))
        .mut_arg("json", |it| it.help(say!("command-line-mesh-json")))
}

fn attempt(command: Command) -> Command {
    command
        .about(say!("command-line-attempt"))
        .mut_arg("scenario", |it| it.help(say!("command-line-attempt-exercise")))
        .mut_arg("seed", |it| it.help(say!("command-line-seed")))
        .mut_arg("operations", |it| it.help(say!("command-line-attempt-operations")))
        .mut_arg("play", |it| it.help(say!("command-line-attempt-play")))
        .mut_arg("journal", |it| it.help(say!("command-line-attempt-journal")))
        .mut_arg("json", |it| it.help(say!("command-line-attempt-json")))
        .mut_arg("debrief", |it| it.help(say!("command-line-attempt-debrief")))
        .mut_arg("list", |it| it.help(say!("command-line-attempt-list")))
}

fn picture(command: Command) -> Command {
    command
        .about(say!("command-line-picture"))
        .mut_arg("gears", |it| it.help(say!("command-line-picture-gears")))
        .mut_arg("out", |it| it.help(say!("command-line-picture-out")))
        .mut_arg("size", |it| it.help(say!("command-line-picture-size")))
        .mut_arg("view", |it| it.help(say!("command-line-picture-view")))
        .mut_arg("theme", |it| it.help(say!("command-line-picture-theme")))
        .mut_arg("scenario", |it| it.help(say!("command-line-picture-scenario")))
        .mut_arg("seed", |it| it.help(say!("command-line-seed")))
        .mut_arg("operations", |it| it.help(say!("command-line-picture-operations")))
        .mut_arg("text", |it| it.help(say!("command-line-picture-text")))
        .mut_arg("units", |it| it.help(say!("command-line-picture-units")))
        .mut_arg("frames", |it| it.help(say!("command-line-picture-frames")))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Commands and arguments that have no words, by name.
    fn without_words(command: &Command, path: &str, found: &mut Vec<String>) {
        let path = format!("{path} {}", command.get_name());
        if command.get_about().is_none() {
            found.push(path.clone());
        }
        for argument in command.get_arguments() {
            if argument.get_help().is_none() {
                found.push(format!("{path} {}", argument.get_id()));
            }
        }
        for inner in command.get_subcommands() {
            without_words(inner, &path, found);
        }
    }

    #[test]
    fn no_command_and_no_argument_is_without_help() {
        let whole = super::super::arguments::command();
        let mut found = Vec::new();
        without_words(&whole, "", &mut found);
        assert_eq!(found, Vec::<String>::new());
        whole.clone().debug_assert();
        without_words(&bare(whole), "", &mut found);
        assert!(found.len() > 60, "the test sees what has no words: {found:?}");
    }

    #[test]
    fn comments_of_the_declarations_are_not_shown() {
        let mut whole = super::super::arguments::command();
        let mesh = whole.find_subcommand_mut("mesh").expect("a command");
        let help = mesh.render_long_help().to_string();
        assert!(help.contains("positive more backlash"), "{help}");
        assert!(!help.contains("Arguments of `mesh`"), "{help}");
    }
}
