//! What stands around the words of `--help`: headings, the usage line, usual values. The parser's own frame is English in its
//! source, so that it is left out and made of messages here.

use clap::{Arg, Command};

use crate::words::say;

/// The parser's heading of a usage line, and its words for all options and commands there.
const PARSERS_HEADING: &str = "Usage: ";
const PARSERS_OPTIONS: &str = "[OPTIONS]";
const PARSERS_COMMAND: &str = "[COMMAND]";

/// Commands in their frame.
pub(super) fn framed(command: Command) -> Command {
    let command = with_values(command.bin_name(command_name()));
    let mut built = command.clone();
    built.build();
    with_usage(command, &mut built)
}

/// The name that the program goes by, whatever its file is called.
fn command_name() -> &'static str {
    env!("CARGO_PKG_NAME")
}

/// The usage line of a command in its frame.
pub(super) fn usage(command: &mut Command) -> String {
    let line = command.render_usage().to_string();
    let line = line.strip_prefix(PARSERS_HEADING).unwrap_or(&line);
    line.replace(PARSERS_OPTIONS, &say!("command-line-usage-options"))
        .replace(PARSERS_COMMAND, &say!("command-line-usage-command"))
}

/// With usage lines and headings, of commands within as well; `built` is the same command as the parser completes it.
fn with_usage(command: Command, built: &mut Command) -> Command {
    let template = template(built);
    let mut command = command.override_usage(usage(built)).help_template(template);
    let names: Vec<String> = command.get_subcommands().map(|c| c.get_name().to_owned()).collect();
    for name in names {
        if let Some(inner) = built.find_subcommand_mut(&name) {
            command = command.mut_subcommand(&name, |command| with_usage(command, inner));
        }
    }
    command
}

/// In the parser's own order; braces name what it fills in.
fn template(command: &Command) -> String {
    let mut parts = vec![format!(
        "{{about-with-newline}}\n{} {{usage}}",
        say!("command-line-usage")
    )];
    let mut part = |there: bool, heading: String, filled: &str| {
        if there {
            parts.push(format!("{heading}\n{filled}"));
        }
    };
    part(
        command.has_subcommands(),
        say!("command-line-commands"),
        "{subcommands}",
    );
    part(
        command.get_positionals().next().is_some(),
        say!("command-line-arguments"),
        "{positionals}",
    );
    part(true, say!("command-line-options"), "{options}");
    parts.join("\n\n")
}

/// With usual and possible values told in messages.
fn with_values(command: Command) -> Command {
    command.mut_args(values_told).mut_subcommands(with_values)
}

fn values_told(argument: Arg) -> Arg {
    let told = argument.get_help().map(ToString::to_string);
    let Some(mut help) = told.filter(|_| argument.get_action().takes_values()) else {
        return argument;
    };
    let possible = argument.get_possible_values();
    let usual: Vec<String> = argument
        .get_default_values()
        .iter()
        .map(|value| value.to_string_lossy().into_owned())
        .collect();
    let mut long = help.clone();
    if !possible.is_empty() {
        let names: Vec<&str> = possible.iter().map(clap::builder::PossibleValue::get_name).collect();
        help = say!("command-line-with-values", help = help, names = names.join(", "));
        let lines = possible.iter().map(|value| {
            let about = value.get_help().map(ToString::to_string).unwrap_or_default();
            say!("command-line-value", name = value.get_name(), help = about)
        });
        long = [long].into_iter().chain(lines).collect::<Vec<_>>().join("\n");
    }
    if !usual.is_empty() {
        let usual = usual.join(", ");
        help = say!("command-line-with-usual", help = help, usual = usual.clone());
        long = [long, say!("command-line-usual", usual = usual)].join("\n");
    }
    let argument = argument.hide_default_value(true).hide_possible_values(true);
    if long == help {
        argument.help(help)
    } else {
        argument.help(help).long_help(long)
    }
}
