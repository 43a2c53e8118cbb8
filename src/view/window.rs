//! What the window shows.

use std::collections::BTreeMap;

use super::bench::{AxlePart, BenchView, DebriefView, StartView};
use super::gear_list::GearEntry;
use super::keys::Keys;
use super::look::{TextSize, Theme};
use super::orbit::{Projection, Viewpoint};
use super::pair::{Setting, SettingContact};
use super::place::Place;
use super::saved::Saved;
use super::turn::Turn;
use crate::quantity::Units;
use crate::words;

/// The note that stands in the window at all times.
pub fn safety_note() -> String {
    words::simulated()
}

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
    pub room: RoomView,
    /// The start page.
    pub start: StartView<'a>,
    /// The bench; none while no attempt is under way.
    pub bench: Option<&'a BenchView>,
    /// How the bench is shown.
    pub desk: DeskView<'a>,
    /// The debrief; none before the axle has been handed over.
    pub debrief: Option<&'a DebriefView>,
    /// Whether the keys are listed.
    pub help: bool,
    /// Whether a file hangs over the window, to be let go.
    pub file_over: bool,
    /// Why a file was not opened, until that is put away.
    pub notice: Option<&'a str>,
    /// What became of the last page or picture that was saved, until that is put away.
    pub saved: Option<&'a Saved>,
    /// Which single key asks for what.
    pub keys: &'a Keys,
    /// Why keys were not read or are not kept, if so.
    pub keys_said: Option<&'a str>,
    /// Sizes that panels were dragged to, by name, points.
    pub panels: &'a BTreeMap<String, f32>,
}

/// How the bench is shown, beside what lies on it.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct DeskView<'a> {
    /// The part whose work is shown.
    pub part: Option<AxlePart>,
    /// The part that the pointer rests on.
    pub pointed: Option<AxlePart>,
    /// Whether what instruments show is written beside them.
    pub read_out: bool,
    /// How many times thicker than true shims are drawn.
    pub shims_times: u32,
    /// Whether something is being worked out.
    pub busy: bool,
    /// What went wrong last, if something did.
    pub problem: Option<&'a str>,
}

/// What the tooth room shows besides pictures.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RoomView {
    /// Thickness of the paste, µm.
    pub film_um: f64,
    /// The setting to compare with.
    pub other: Option<Setting>,
}

/// Thinnest, usual and thickest paste of the tooth room, µm.
pub const FILM_UM: [f64; 3] = [2.0, 8.0, 30.0];

impl WindowView<'_> {
    /// Whether something stands over the page and has the keyboard: the list of keys, or why a file was not opened.
    pub fn covered(&self) -> bool {
        self.help || self.notice.is_some()
    }

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
