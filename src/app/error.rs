//! Why there is no window or no picture.

use core::error::Error;
use core::fmt;

use crate::job::Failure;
use crate::words::say;

/// Why there is no window or no picture, in one sentence and what to do.
#[derive(Debug)]
pub enum AppError {
    /// There is no screen.
    NoDisplay {
        /// What the connection says.
        reason: String,
    },
    /// There is no graphics driver.
    NoAdapter,
    /// The window could not be started although display and driver are there.
    Start {
        /// What the window system says.
        reason: String,
    },
    /// The gear set cannot exist or cannot be drawn.
    NoGears {
        /// The gear set.
        name: String,
        /// What about its numbers.
        why: String,
    },
    /// The graphics driver did not deliver a picture.
    NoPicture {
        /// What happened.
        reason: String,
    },
    /// An argument that cannot be used.
    Argument(String),
    /// A gear set or a file could not be used.
    Job(Failure),
}

impl fmt::Display for AppError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let words = match self {
            Self::NoDisplay { reason } => say!("display-no-window", reason = reason.as_str()),
            Self::NoAdapter => say!("display-no-driver"),
            Self::Start { reason } => say!("display-no-start", reason = reason.as_str()),
            Self::NoGears { name, why } => say!("display-no-gears", name = name.as_str(), why = why.as_str()),
            Self::NoPicture { reason } => say!("display-no-picture", reason = reason.as_str()),
            Self::Argument(words) => words.clone(),
            Self::Job(failure) => return fmt::Display::fmt(failure, f),
        };
        f.write_str(&words)
    }
}

impl Error for AppError {
    fn source(&self) -> Option<&(dyn Error + 'static)> {
        match self {
            // It is the failure itself, said in its words.
            Self::Job(failure) => failure.source(),
            Self::NoDisplay { .. }
            | Self::NoAdapter
            | Self::Start { .. }
            | Self::NoGears { .. }
            | Self::NoPicture { .. }
            | Self::Argument(_) => None,
        }
    }
}

impl From<Failure> for AppError {
    fn from(failure: Failure) -> Self {
        Self::Job(failure)
    }
}

impl From<AppError> for Failure {
    fn from(error: AppError) -> Self {
        match error {
            AppError::Job(failure) => failure,
            AppError::Argument(_) | AppError::NoGears { .. } => {
                Self::input(say!("display-error", error = error.to_string()))
            }
            _ => Self::other(say!("display-error", error = error.to_string())),
        }
    }
}
