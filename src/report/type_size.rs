//! Type sizes of the look, in points.

/// Names, scales, what is said beside.
pub(super) const SMALL: f64 = 12.0;

/// Values and sentences.
pub(super) const BODY: f64 = 13.0;

/// What a sheet is of.
pub(super) const TITLE: f64 = 18.0;
