//! Values for the window, and what a person can ask for there. No window, no drawing: only what is to be seen.
//!
//! Panels and the stage read [`WindowView`] and write [`Command`]s; one place, the window's session, carries them
//! out. [`look`] holds the colours and text sizes, [`gear_list`] the gear sets with their numbers as the trade reads
//! them, [`blanks`] the plain bodies on the stage, [`turn`] how far they have been turned, [`orbit`] the eye that
//! looks at them.

pub mod blanks;
mod command;
pub mod gear_list;
pub mod look;
pub mod orbit;
pub mod turn;

pub use blanks::Blanks;
pub use command::Command;
pub use gear_list::{GearEntry, GearNumbers, Origin};
pub use look::{Rgb, TextSize, Theme};
pub use orbit::{Orbit, Projection, Viewpoint};
pub use turn::Turn;

use crate::quantity::Units;

/// The note that stands in the window at all times.
pub const SAFETY_NOTE: &str = "Simulated values are never a specification for a real axle. \
     The maker's service information, local codes and qualified practice come first.";

/// What the window shows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WindowView<'a> {
    /// The gear sets that were found.
    pub gears: &'a [GearEntry],
    /// Which of them is on the stage.
    pub chosen: Option<usize>,
    /// Paper or slate.
    pub theme: Theme,
    /// Text size.
    pub text_size: TextSize,
    /// Millimetres or inches.
    pub units: Units,
    /// The stage.
    pub stage: StageView<'a>,
}

impl WindowView<'_> {
    /// The gear set on the stage.
    pub fn chosen_gears(&self) -> Option<&GearEntry> {
        self.gears.get(self.chosen?)
    }
}

/// What the stage shows and says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StageView<'a> {
    /// Whether the pinion turns by itself.
    pub turning: bool,
    /// How far the pair has been turned.
    pub turn: Turn,
    /// Why there is nothing to look at, if there is not.
    pub missing: Option<&'a str>,
    /// The named place it is seen from, if it is one.
    pub viewpoint: Option<Viewpoint>,
    /// Perspective or flat.
    pub projection: Projection,
}
