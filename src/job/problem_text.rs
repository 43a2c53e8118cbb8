//! Problems of a text, drawn for people: file, line, caret, what to do.

use codespan_reporting::diagnostic::{Diagnostic, Label};
use codespan_reporting::files::SimpleFile;
use codespan_reporting::term;

use crate::text::Problems;
use crate::words::say;

use super::failure::error_line;

/// All `problems` of the file shown as `file`, whose text is `text`, with the lines they are about.
pub fn problem_text(file: &str, text: &str, problems: &Problems) -> String {
    let source = SimpleFile::new(file, text);
    // Plain characters: the text must be readable on any terminal and in any log.
    let config = term::Config {
        chars: term::Chars::ascii(),
        tab_width: 4,
        ..term::Config::default()
    };
    let mut out = String::new();
    for problem in problems.list() {
        let mut label = Label::primary((), problem.span.clone());
        if !problem.label.is_empty() {
            label = label.with_message(&problem.label);
        }
        let diagnostic = Diagnostic::error()
            .with_message(&problem.what)
            .with_label(label)
            .with_notes(vec![problem.remedy.clone()]);
        if let Ok(drawn) = term::emit_into_string(&config, &source, &diagnostic) {
            out.push_str(&drawn);
        } else {
            // Drawing can only fail for a place outside the text; the words are still worth having.
            out.push_str(&[&error_line(&problem.what), "\n = ", &problem.remedy, "\n\n"].concat());
        }
    }
    let (shown, more) = (problems.list().len(), problems.left_out());
    out + &if more == 0 {
        say!("files-problems", file = file, count = shown)
    } else {
        say!("files-problems-left-out", file = file, count = shown, more = more)
    }
}
