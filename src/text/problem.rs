//! What is wrong in a text, where, and what to do.

use std::ops::Range;

/// One problem of a text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// Bytes of the text that it is about; `start ≤ end ≤ length`, on character boundaries.
    pub span: Range<usize>,
    /// What is wrong: one short sentence without a full stop.
    pub what: String,
    /// Short label for the marked place; may be empty.
    pub label: String,
    /// What to do about it: one sentence.
    pub remedy: String,
}

/// The problems of one text, in the order in which they stand there. At most [`Problems::MOST`] are kept; the others
/// are counted.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Problems {
    list: Vec<Problem>,
    left_out: usize,
}

impl Problems {
    /// How many problems are kept: nobody reads more at a time.
    pub const MOST: usize = 50;

    /// No problem yet.
    pub fn new() -> Self {
        Self::default()
    }

    /// Notes a problem at `span`.
    pub fn note(
        &mut self,
        span: Range<usize>,
        what: impl Into<String>,
        label: impl Into<String>,
        remedy: impl Into<String>,
    ) {
        self.add(Problem {
            span,
            what: what.into(),
            label: label.into(),
            remedy: remedy.into(),
        });
    }

    /// Notes a problem.
    pub fn add(&mut self, problem: Problem) {
        if self.list.len() < Self::MOST {
            self.list.push(problem);
        } else {
            self.left_out += 1;
        }
    }

    /// Whether nothing was noted.
    pub fn is_empty(&self) -> bool {
        self.list.is_empty()
    }

    /// The problems kept, by their place in the text.
    pub fn list(&self) -> &[Problem] {
        &self.list
    }

    /// How many were noted but not kept.
    pub fn left_out(&self) -> usize {
        self.left_out
    }

    /// The value, if nothing was noted.
    ///
    /// # Errors
    /// The problems, ordered by their place. Where nothing was noted and yet there is no value, the reader forgot to
    /// say why: a problem at the start of the text says that much rather than hiding it.
    pub fn verdict<T>(mut self, value: Option<T>) -> Result<T, Self> {
        match value {
            Some(value) if self.is_empty() => Ok(value),
            _ => {
                if self.is_empty() {
                    self.note(
                        0..0,
                        "this file could not be used",
                        "",
                        "Compare it with a file that works.",
                    );
                }
                self.list.sort_by_key(|p| (p.span.start, p.span.end));
                Err(self)
            }
        }
    }
}
