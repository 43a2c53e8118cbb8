//! Why there is no window or no picture.

use thiserror::Error;

use crate::job::Failure;

/// Why there is no window or no picture, in one sentence and what to do.
#[derive(Debug, Error)]
pub enum AppError {
    /// There is no screen.
    #[error("cannot open a window: {reason}. `lashwright picture` draws without a screen")]
    NoDisplay {
        /// What the connection says.
        reason: String,
    },
    /// There is no graphics driver.
    #[error(
        "cannot draw: no Vulkan driver was found. Install the driver of the graphics card, or Mesa's software driver \
         (on Debian and Ubuntu: mesa-vulkan-drivers)"
    )]
    NoAdapter,
    /// The window could not be started although display and driver are there.
    #[error("cannot open a window: {reason}")]
    Start {
        /// What the window system says.
        reason: String,
    },
    /// The gear set cannot exist or cannot be drawn.
    #[error("cannot draw {name}: {why}")]
    NoGears {
        /// The gear set.
        name: String,
        /// What about its numbers.
        why: String,
    },
    /// The graphics driver did not deliver a picture.
    #[error("cannot draw: {reason}")]
    NoPicture {
        /// What happened.
        reason: String,
    },
    /// An argument that cannot be used.
    #[error("{0}")]
    Argument(String),
    /// A gear set or a file could not be used.
    #[error(transparent)]
    Job(#[from] Failure),
}

impl From<AppError> for Failure {
    fn from(error: AppError) -> Self {
        match error {
            AppError::Job(failure) => failure,
            AppError::Argument(_) | AppError::NoGears { .. } => Self::input(format!("error: {error}.")),
            _ => Self::other(format!("error: {error}.")),
        }
    }
}
