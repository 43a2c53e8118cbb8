//! How much of an axle is together when an exercise begins.

/// How much of the axle is together at the start.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fitted {
    /// A bare case, all parts beside it.
    Nothing,
    /// Cups and head cone are pressed on, the rest lies beside the case.
    Rings,
    /// The carrier with its wheel is set in and adjusted; the pinion is out.
    Carrier,
    /// Everything is in, set to the drawing's nominal sizes.
    Everything,
}
