//! What is seen, heard and felt beside what instruments show.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Something that whoever stands at the bench notices.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "notice", rename_all = "snake_case")]
pub enum Notice {
    /// The press stopped with a ring only part of the way on, and it came off again.
    RingPartWayOn,
    /// The force rose steeply at the end: the ring is home.
    RingHome,
    /// The press stopped without a clear rise.
    RingStopped,
    /// How far a nut went while it was tightened.
    NutWent {
        /// Degrees.
        degrees: f64,
    },
    /// The wrench gave before the nut moved.
    WrenchGaveFirst,
    /// How far the side adjusters were in when the caps came off, from where they stand when a carrier is set in.
    AdjustersWereIn {
        /// Notches on the side of the wheel's teeth.
        tooth_notches: f64,
        /// Notches behind the wheel.
        back_notches: f64,
    },
    /// The teeth of an overheated wheel have run straw-coloured.
    TeethStrawColored,
    /// The wheel had to be drawn on by its bolts.
    RingGearDrawnOn,
    /// The wheel went home by hand.
    RingGearWentHome,
    /// Numbers etched on both gears.
    NumbersEtched {
        /// On the pinion.
        pinion: u32,
        /// On the wheel.
        ring_gear: u32,
    },
    /// The mark on the pinion's head.
    MarkEtched {
        /// mm; positive stands farther from the wheel's axis.
        mark_mm: f64,
    },
    /// A hint of the card is given; its text stands there.
    Hint {
        /// Which, from 1.
        level: u32,
    },
}
