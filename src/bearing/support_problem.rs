//! What only a support file can have wrong.

use super::friction_series::FrictionSeries;
use super::spacer::LengthFault;

/// What only a support file can have wrong.
#[derive(Debug, Clone, PartialEq)]
pub enum SupportProblem {
    /// A key of version 2 of the format in a file of version 1.
    OfVersionTwo {
        /// Key.
        key: &'static str,
    },
    /// `friction_series`, of version 1 of the format, in a file of version 2.
    OfVersionOne {
        /// The row of the friction table that it names, if it names one.
        row: Option<FrictionSeries>,
    },
    /// The cup leaves no room for rollers.
    CupTooSmall {
        /// Bore, mm.
        bore_mm: f64,
        /// Outside diameter, mm.
        outside_mm: f64,
    },
    /// No row of the friction table is called so.
    UnknownSeries {
        /// What was given.
        word: String,
    },
    /// A key of a collapsible spacer, and this one is solid.
    OfSleeve {
        /// Key.
        key: &'static str,
    },
    /// The spacer's length does not belong to that of the bearings.
    Length(LengthFault),
    /// The pitch is too coarse for the thread.
    PitchTooCoarse {
        /// Pitch, mm.
        pitch_mm: f64,
        /// Pitch diameter of the thread, mm.
        diameter_mm: f64,
    },
    /// The nut's face would lie inside its thread.
    FaceInsideThread {
        /// Mean diameter of the face, mm.
        face_mm: f64,
        /// Pitch diameter of the thread, mm.
        diameter_mm: f64,
    },
    /// Oil is thinner the hotter it is.
    ThickerWhenHot {
        /// Viscosity at 40 °C, mm²/s.
        at_40_mm2_s: f64,
        /// Viscosity at 100 °C, mm²/s.
        at_100_mm2_s: f64,
    },
    /// The tail bearing stands no farther out than the head bearing.
    TailNotBeyondHead {
        /// Place of the tail bearing, mm.
        tail_mm: f64,
        /// Place of the head bearing, mm.
        head_mm: f64,
    },
    /// The pilot bearing stands no farther in than the head bearing.
    PilotNotBeforeHead {
        /// Place of the pilot bearing, mm.
        pilot_mm: f64,
        /// Place of the head bearing, mm.
        head_mm: f64,
    },
}
