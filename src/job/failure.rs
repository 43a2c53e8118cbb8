//! Why a job was not done, in words for people.

use crate::report::problem::error_line;
use crate::store::StoreError;
use crate::words::say;

use super::store_error::store_error;

/// Whose fault it is; decides the exit code.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AtFault {
    /// What was given cannot be used: exit code 2.
    Input,
    /// Anything else: exit code 1.
    Other,
}

/// A job that was not done.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{text}")]
pub struct Failure {
    /// Whose fault it is.
    pub fault: AtFault,
    /// What to tell people; whole lines without a line end at the end.
    pub text: String,
}

impl Failure {
    /// Something that was given cannot be used.
    pub fn input(text: impl Into<String>) -> Self {
        Self {
            fault: AtFault::Input,
            text: text.into(),
        }
    }

    /// Something else went wrong.
    pub fn other(text: impl Into<String>) -> Self {
        Self {
            fault: AtFault::Other,
            text: text.into(),
        }
    }

    /// Something that was given cannot be used: a sentence that begins small, marked as an error.
    pub fn bad_input(what: impl Into<String>) -> Self {
        Self::input(error_line(what))
    }

    /// Something else went wrong: a sentence that begins small, marked as an error.
    pub fn went_wrong(what: impl Into<String>) -> Self {
        Self::other(error_line(what))
    }

    /// A fault of the program itself, by what a library says of it.
    pub fn of_program(error: impl std::fmt::Display) -> Self {
        Self::went_wrong(say!("files-program-fault", why = error.to_string()))
    }
}

impl From<StoreError> for Failure {
    fn from(error: StoreError) -> Self {
        let what = store_error(&error).line();
        match error {
            StoreError::Read { .. } | StoreError::TooLarge { .. } | StoreError::Exists { .. } => Self::bad_input(what),
            StoreError::Write { .. } | StoreError::Changed { .. } | StoreError::Locked { .. } => Self::went_wrong(what),
        }
    }
}
