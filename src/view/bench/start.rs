//! The start page: exercises, own attempts.

use crate::axle::{DepthShim, Layout, SideSetting};
use crate::exercise::Scenario;
use crate::words::{card, say};

/// An exercise in the list.
#[derive(Debug, Clone, PartialEq)]
pub struct ExerciseLine {
    /// Its name on the command line.
    pub source: String,
    /// Its title.
    pub title: String,
    /// 1 to 4.
    pub step: u32,
    /// How the axle is put together.
    pub layout: Layout,
    /// Where its depth shim lies.
    pub depth_shim: DepthShim,
    /// What it teaches.
    pub aims: Vec<String>,
    /// The first thing that is told.
    pub told: String,
    /// Points of the own best attempt, if one holds points.
    pub best: Option<f64>,
    /// Own attempts that were handed over.
    pub finished: usize,
}

impl ExerciseLine {
    /// Of a scenario, without attempts.
    pub fn new(source: &str, scenario: &Scenario) -> Self {
        let texts = card::texts(scenario);
        Self {
            source: source.to_owned(),
            title: texts.title.to_owned(),
            step: scenario.step,
            layout: scenario.layout,
            depth_shim: scenario.depth_shim,
            aims: texts.aims.to_vec(),
            told: texts.told.first().cloned().unwrap_or_default(),
            best: None,
            finished: 0,
        }
    }

    /// The layout in words.
    pub fn layout_words(&self) -> String {
        layout_words(self.layout, self.depth_shim)
    }
}

/// A layout in words.
pub(super) fn layout_words(layout: Layout, depth_shim: DepthShim) -> String {
    let housing = if layout.has_cartridge() {
        say!("start-layout-cartridge")
    } else {
        say!("start-layout-one-piece")
    };
    let shim = match depth_shim {
        DepthShim::Head => say!("start-layout-head-shim"),
        DepthShim::Cup => say!("start-layout-cup-shim"),
        DepthShim::Cartridge => say!("start-layout-cartridge-shim"),
    };
    let spacer = if layout.has_sleeve() {
        say!("start-layout-crush-spacer")
    } else {
        say!("start-layout-solid-spacer")
    };
    let side = match layout.side_setting() {
        SideSetting::Shims => say!("start-layout-side-shims"),
        SideSetting::Adjusters => say!("start-layout-side-adjusters"),
    };
    say!(
        "start-layout",
        housing = housing,
        shim = shim,
        spacer = spacer,
        sides = side
    )
}

/// An own attempt.
#[derive(Debug, Clone, PartialEq)]
pub struct KeptLine {
    /// Title of its exercise, or the name where that is not there.
    pub title: String,
    /// Which axle of it.
    pub seed: u64,
    /// Operations so far.
    pub operations: usize,
    /// Points, if it is finished and its journal holds them.
    pub points: Option<f64>,
}

/// What the start page shows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StartView<'a> {
    /// All exercises, by step.
    pub exercises: &'a [ExerciseLine],
    /// Which of them is chosen.
    pub chosen: usize,
    /// Which axle of it.
    pub seed: u64,
    /// Own unfinished attempts.
    pub kept: &'a [KeptLine],
    /// Own finished attempts.
    pub finished: &'a [KeptLine],
    /// Where attempts are kept, or why they are not.
    pub kept_in: &'a str,
    /// Where pages and pictures are saved.
    pub saved_in: &'a str,
    /// What is under way, or what went wrong.
    pub said: Option<&'a str>,
    /// Whether something is under way.
    pub busy: bool,
}
