//! Why a design cannot be made into gears.

use thiserror::Error;

use super::Side;

/// What makes a blank impossible.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BlankFault {
    /// The face width reaches beyond the apex.
    BeyondApex,
    /// The teeth have no height at one end.
    NoHeight,
    /// The pinion's cones do not exist.
    NoPinionCones,
}

/// A geometry that does not exist.
#[derive(Debug, Clone, PartialEq, Error)]
#[error("{self:?}")]
pub enum GeometryError {
    /// No pair of pitch cones reaches the offset with a pinion spiral angle above the wheel's.
    OffsetTooLarge {
        /// As designed.
        offset_mm: f64,
        /// Largest offset found, mm.
        largest_mm: f64,
    },
    /// Pitch cones reach the offset, but none of them has the limit radius asked for.
    NoLimitRadius {
        /// As designed.
        limit_radius_mm: f64,
        /// Smallest limit radius that a solution has, mm, if any is positive.
        smallest_mm: Option<f64>,
        /// Largest limit radius that a solution has, mm; none where it has no upper end.
        largest_mm: Option<f64>,
    },
    /// The blank's proportions are impossible: an angle beyond its range or a tooth without height.
    ImpossibleBlank {
        /// What about it.
        fault: BlankFault,
    },
    /// No blade angle gives the pressure angle asked for.
    NoBladeAngle {
        /// Which flank.
        side: Side,
    },
    /// The tooth spaces of the wheel would be narrower than nothing at the bottom.
    NegativePointWidth {
        /// W, mm.
        point_width_mm: f64,
    },
    /// The cutter misses the wheel's flank at its middle.
    CutterMissesFlank {
        /// Which flank.
        side: Side,
    },
    /// No point of a flank has a regular partner on the pinion.
    NoRegularContact {
        /// Which flank.
        side: Side,
    },
}
