//! What only a gear set file can have wrong, and gears that cannot exist.

use super::{Own, Told};
use crate::gear::{BlankFault, GearSetProblem, GeometryError, Side};
use crate::words::say;

impl Own for GearSetProblem {
    fn file() -> String {
        say!("problem-file-gear-set")
    }

    fn told(&self) -> Told {
        match *self {
            Self::WheelTeeth { wheel, pinion } => Told::labeled(
                say!("problem-gears-teeth", wheel = wheel, pinion = pinion),
                say!("problem-gears-teeth-label"),
                say!("problem-gears-teeth-cure"),
            ),
            Self::FaceWidth { face_mm, diameter_mm } => Told::new(
                say!(
                    "problem-gears-face-width",
                    face = face_mm.to_string(),
                    diameter = diameter_mm.to_string()
                ),
                say!("problem-gears-face-width-cure"),
            ),
            Self::NoRadius => Told::new(say!("problem-gears-no-radius"), say!("problem-gears-no-radius-cure")),
        }
    }
}

impl Own for GeometryError {
    fn file() -> String {
        say!("problem-file-gear-set")
    }

    fn told(&self) -> Told {
        match *self {
            Self::OffsetTooLarge { offset_mm, largest_mm } => Told::new(
                say!(
                    "problem-geometry-offset",
                    offset = offset_mm.to_string(),
                    largest = format!("{largest_mm:.1}")
                ),
                say!("problem-geometry-offset-cure"),
            ),
            Self::NoLimitRadius {
                limit_radius_mm,
                smallest_mm,
                largest_mm,
            } => Told::new(
                no_limit_radius(limit_radius_mm, smallest_mm, largest_mm),
                say!("problem-geometry-limit-radius-cure"),
            ),
            Self::ImpossibleBlank { fault } => Told::new(blank(fault), say!("problem-geometry-blank-cure")),
            Self::NoBladeAngle { side } => Told::new(
                match side {
                    Side::Drive => say!("problem-geometry-blade-angle-drive"),
                    Side::Coast => say!("problem-geometry-blade-angle-coast"),
                },
                say!("problem-geometry-blade-angle-cure", key = pressure_angle(side)),
            ),
            Self::NegativePointWidth { point_width_mm } => Told::new(
                say!("problem-geometry-point-width", width = format!("{point_width_mm:.3}")),
                say!("problem-geometry-point-width-cure"),
            ),
            Self::CutterMissesFlank { side } => Told::new(
                match side {
                    Side::Drive => say!("problem-geometry-cutter-drive"),
                    Side::Coast => say!("problem-geometry-cutter-coast"),
                },
                say!("problem-geometry-cutter-cure"),
            ),
            Self::NoRegularContact { side } => Told::new(
                match side {
                    Side::Drive => say!("problem-geometry-contact-drive"),
                    Side::Coast => say!("problem-geometry-contact-coast"),
                },
                say!("problem-geometry-contact-cure", key = pressure_angle(side)),
            ),
        }
    }
}

/// The key of a flank's pressure angle.
pub(in crate::words) const fn pressure_angle(side: Side) -> &'static str {
    match side {
        Side::Drive => "pressure_angle_drive_deg",
        Side::Coast => "pressure_angle_coast_deg",
    }
}

fn no_limit_radius(radius_mm: f64, smallest_mm: Option<f64>, largest_mm: Option<f64>) -> String {
    let radius = radius_mm.to_string();
    match (smallest_mm, largest_mm) {
        (Some(low), Some(high)) => say!(
            "problem-geometry-limit-radius-between",
            radius = radius,
            low = format!("{low:.1}"),
            high = format!("{high:.1}")
        ),
        (Some(low), None) => say!(
            "problem-geometry-limit-radius-above",
            radius = radius,
            low = format!("{low:.1}")
        ),
        (None, _) => say!("problem-geometry-limit-radius-none", radius = radius),
    }
}

fn blank(fault: BlankFault) -> String {
    match fault {
        BlankFault::BeyondApex => say!("problem-geometry-blank-apex"),
        BlankFault::NoHeight => say!("problem-geometry-blank-height"),
        BlankFault::NoPinionCones => say!("problem-geometry-blank-pinion"),
    }
}
