//! `lashwright check FILE…`

use crate::job::check::check;
use crate::job::{AtFault, Failure};

use super::Answer;

/// Checks all files; the answer has one line a file, or all problems of all files.
pub(super) fn run(files: &[String]) -> Answer {
    let mut lines = Vec::new();
    let mut failures: Vec<Failure> = Vec::new();
    for file in files {
        match check(file) {
            Ok(line) => lines.push(line),
            Err(failure) => failures.push(failure),
        }
    }
    if failures.is_empty() {
        return Ok(lines.join("\n"));
    }
    let fault = if failures.iter().any(|f| f.fault == AtFault::Other) {
        AtFault::Other
    } else {
        AtFault::Input
    };
    let texts: Vec<String> = failures.into_iter().map(|f| f.text).collect();
    Err(Failure {
        fault,
        text: texts.join("\n\n"),
    })
}
