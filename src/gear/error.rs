//! Why a design cannot be made into gears.

use thiserror::Error;

use super::Side;

/// A geometry that does not exist. The text says what to change.
#[derive(Debug, Clone, PartialEq, Error)]
pub enum GeometryError {
    /// No pair of pitch cones reaches the offset with a pinion spiral angle above the wheel's.
    #[error(
        "no pitch cones exist for an offset of {offset_mm} mm: the largest that this diameter and spiral angle allow is \
         about {largest_mm:.1} mm; reduce offset_mm"
    )]
    OffsetTooLarge {
        /// As designed.
        offset_mm: f64,
        /// Largest offset found, mm.
        largest_mm: f64,
    },
    /// Pitch cones reach the offset, but none of them has the limit radius asked for.
    #[error(
        "no pitch cones have a limit radius of {limit_radius_mm} mm: with this offset and spiral angle it can be {}; \
         change limit_radius_mm, or offset_mm and pinion_mean_spiral_angle_deg", reachable(*.smallest_mm, *.largest_mm)
    )]
    NoLimitRadius {
        /// As designed.
        limit_radius_mm: f64,
        /// Smallest limit radius that a solution has, mm, if any is positive.
        smallest_mm: Option<f64>,
        /// Largest limit radius that a solution has, mm; none where it has no upper end.
        largest_mm: Option<f64>,
    },
    /// The blank's proportions are impossible: an angle beyond its range or a tooth without height.
    #[error("the wheel's blank is impossible ({what}): reduce wheel_face_width_mm or depth_factor")]
    ImpossibleBlank {
        /// What about it.
        what: &'static str,
    },
    /// No blade angle gives the pressure angle asked for.
    #[error("no blade angle gives the {side} pressure angle: bring pressure_angle_{side}_deg nearer to 20")]
    NoBladeAngle {
        /// Which flank.
        side: Side,
    },
    /// The tooth spaces of the wheel would be narrower than nothing at the bottom.
    #[error(
        "the cutter's point width would be {point_width_mm:.3} mm, but must be above 0: reduce depth_factor or the \
         pressure angles, or raise thickness_factor"
    )]
    NegativePointWidth {
        /// W, mm.
        point_width_mm: f64,
    },
    /// The cutter misses the wheel's flank at its middle.
    #[error("the cutter does not reach the wheel's {side} flank: bring cutter_radius_mm nearer to the cone distance")]
    CutterMissesFlank {
        /// Which flank.
        side: Side,
    },
    /// No point of a flank has a regular partner on the pinion.
    #[error(
        "no point of the {side} flank has regular contact with the pinion: the pressure angle is too small for this \
         face width and tooth count; raise pressure_angle_{side}_deg or reduce wheel_face_width_mm"
    )]
    NoRegularContact {
        /// Which flank.
        side: Side,
    },
}

fn reachable(smallest_mm: Option<f64>, largest_mm: Option<f64>) -> String {
    match (smallest_mm, largest_mm) {
        (Some(low), Some(high)) => format!("{low:.1} to {high:.1} mm"),
        (Some(low), None) => format!("{low:.1} mm and more"),
        (None, _) => "none at all".to_owned(),
    }
}
