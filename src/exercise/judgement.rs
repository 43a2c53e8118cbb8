//! Numbers of judgement that more than one place judges by: the score, the debrief, and whoever plays.

/// How far a print may lie from its approval print without a loss, along and up the tooth (common practice, no source).
pub(super) const PRINT_FULL: [f64; 2] = [0.15, 0.20];
/// Weights of drive and coast print where both say how deep a pinion belongs (common practice, no source).
pub(super) const FLANK_WEIGHTS: [f64; 2] = [2.0, 1.0];
/// Turns of the pinion before a torque is believed (common practice, no source).
pub(super) const TURNS: f64 = 10.0;
/// A pinion nearer than this to its place is right on a painted plate, mm (0.002 in; common practice, no source).
pub const PLATE_TOLERANCE_MM: f64 = 0.05;
