//! Values for the window, and what a person can ask for there. No window, no drawing: only what is to be seen.
//!
//! Panels and the stage read [`WindowView`] and write [`Command`]s; one place, the window's session, carries them
//! out. [`look`] holds the colours and text sizes, [`gear_list`] the gear sets with their numbers as the trade reads
//! them, [`StagePair`] what is drawn of a set and computed with it, [`turn`] how far it has been turned, [`orbit`] the eye
//! that looks at it.

mod command;
pub mod gear_list;
pub mod look;
pub mod orbit;
mod pair;
pub mod turn;

pub use command::Command;
pub use gear_list::{GearEntry, GearNumbers, Origin};
pub use look::{Rgb, TextSize, Theme};
pub use orbit::{Orbit, Projection, Viewpoint};
pub use pair::{Done, Job, Play, Print, Scene, Setting, SettingContact, StagePair};
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
    /// Where in the program.
    pub place: Place,
    /// The stage.
    pub stage: StageView<'a>,
    /// The tooth room.
    pub room: RoomView<'a>,
}

/// A place of the program.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Place {
    /// The gears on the stage.
    #[default]
    Gears,
    /// Prints, motion and wall chart.
    ToothRoom,
}

impl Place {
    /// The other one.
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::Gears => Self::ToothRoom,
            Self::ToothRoom => Self::Gears,
        }
    }
}

/// What the tooth room shows besides pictures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RoomView<'a> {
    /// Thickness of the paste, µm.
    pub film_um: f64,
    /// The setting to compare with.
    pub other: Option<Setting>,
    /// Where the last picture was saved, or why it was not.
    pub saved: Option<&'a str>,
}

/// Thinnest, usual and thickest paste of the tooth room, µm.
pub const FILM_UM: [f64; 3] = [2.0, 8.0, 30.0];

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
    /// Whether the ring gear is rocked between both sides of the pinion's teeth.
    pub rocking: bool,
    /// How far both gears stand from where they were designed to.
    pub setting: Setting,
    /// What comes of it; none while the gears are being made.
    pub contact: Option<SettingContact>,
    /// Why there is nothing to look at, if there is not.
    pub missing: Option<&'a str>,
    /// The named place it is seen from, if it is one.
    pub viewpoint: Option<Viewpoint>,
    /// Perspective or flat.
    pub projection: Projection,
}
