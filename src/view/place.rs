//! Places of the program.

use crate::words::say;

/// A place of the program.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Place {
    /// Exercises and own attempts.
    #[default]
    Start,
    /// The axle at hand.
    Bench,
    /// The gears on the stage.
    Gears,
    /// Prints, motion and wall chart.
    ToothRoom,
    /// What was true.
    Debrief,
}

impl Place {
    /// All of them, in the order in which they are offered.
    pub const ALL: [Self; 5] = [Self::Start, Self::Bench, Self::Debrief, Self::Gears, Self::ToothRoom];

    /// Its word.
    pub fn label(self) -> String {
        match self {
            Self::Start => say!("window-start"),
            Self::Bench => say!("window-bench"),
            Self::Gears => say!("window-gears"),
            Self::ToothRoom => say!("window-tooth-room"),
            Self::Debrief => say!("window-debrief"),
        }
    }
}
