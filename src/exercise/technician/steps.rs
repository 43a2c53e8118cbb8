//! Steps of depth that are worth making.

/// A change of depth below this is not made, mm (0.002 in; common practice, no source).
pub(in crate::exercise) const LEAST_STEP_MM: f64 = 0.05;
/// The same by the gauge before a print was seen, mm.
pub(super) const LEAST_GAUGE_STEP_MM: f64 = 0.045;
/// Largest change of depth at once, mm (0.010 in; common practice, no source).
pub(in crate::exercise) const LARGEST_STEP_MM: f64 = 0.254;
