//! Problems of a text, drawn for people: file, line, caret, what to do.

use codespan_reporting::diagnostic::{Diagnostic, Label};
use codespan_reporting::files::SimpleFile;
use codespan_reporting::term;

use crate::text::Problems;
use crate::words::problem::{self, Own};
use crate::words::say;

/// All `problems` of the file shown as `file`, whose text is `text`, with the lines they are about.
pub fn problem_text<F: Own>(file: &str, text: &str, problems: &Problems<F>) -> String {
    let source = SimpleFile::new(file, text);
    // Plain characters: the text must be readable on any terminal and in any log.
    let config = term::Config {
        chars: term::Chars::ascii(),
        tab_width: 4,
        ..term::Config::default()
    };
    let mut out = String::new();
    for problem in problems.list() {
        let told = problem::told(problem);
        let mut label = Label::primary((), problem.span.clone());
        if let Some(said) = &told.label {
            label = label.with_message(said);
        }
        let diagnostic = Diagnostic::error()
            .with_message(&told.what)
            .with_label(label)
            .with_notes(vec![told.cure.clone()]);
        if let Ok(drawn) = term::emit_into_string(&config, &source, &diagnostic) {
            out.push_str(&drawn);
        } else {
            // Drawing can only fail for a place outside the text; the words are still worth having.
            out.push_str(&[&error_line(&told.what), "\n = ", &told.cure, "\n\n"].concat());
        }
    }
    out + &problem::count(file, problems.list().len(), problems.left_out())
}

/// A sentence that begins small, marked as an error.
pub fn error_line(what: impl Into<String>) -> String {
    say!("files-error", what = what.into())
}
