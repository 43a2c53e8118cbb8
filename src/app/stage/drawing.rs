//! What the stage is drawn on and how, and the parts that a test tells apart.

use bevy::camera::ImageRenderTarget;
use bevy::prelude::*;

/// How the stage is drawn.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Drawing {
    /// Steel in the light.
    #[default]
    Shaded,
    /// Every part in one flat colour of its own on black, to be counted by a test: see [`part_color`].
    Parts,
}

/// A part that a test can tell from the others.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Part {
    /// The ring gear's body.
    Wheel,
    /// The pinion's body.
    Pinion,
    /// Tooth flanks of either gear.
    Flanks,
    /// The marked tooth of either gear.
    Mark,
    /// Marking paste.
    Paste,
    /// Where it was pressed away.
    Print,
}

/// The flat colour of a part in [`Drawing::Parts`], sRGB.
pub const fn part_color(part: Part) -> [u8; 3] {
    match part {
        Part::Wheel => [255, 0, 0],
        Part::Pinion => [0, 255, 0],
        Part::Flanks => [0, 0, 255],
        Part::Mark => [255, 255, 0],
        Part::Paste => [255, 0, 255],
        Part::Print => [0, 255, 255],
    }
}

/// What the stage is drawn on and how.
#[derive(Debug, Clone, Resource)]
pub struct Easel {
    /// The picture; `None` is the window.
    pub target: Option<ImageRenderTarget>,
    /// Smoothing of edges.
    pub smoothing: Msaa,
    /// Shaded or as parts.
    pub drawing: Drawing,
    /// Whether the panels are drawn too.
    pub panels: bool,
}

/// Which gear a body is, so that it turns with it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Component)]
pub enum Gear {
    /// The ring gear.
    Wheel,
    /// Its mate.
    Pinion,
}
