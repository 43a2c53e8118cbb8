//! Teeth of the wheel: what the cutter leaves.
//!
//! Source: our own construction, for drawing.

use nalgebra::Vector3;

use crate::gear::{GearSet, Side};
use crate::numerics::math;

use super::section::{FlankSample, Numbering, Place, Section, Teeth, index, turn_of};
use super::{Detail, SolidError, ToothedPart};

/// Narrowest land that is left where the flanks of a tooth would meet below the face cone, mm.
const LEAST_LAND_MM: f64 = 0.02;

pub(super) fn teeth(set: &GearSet, detail: Detail) -> Result<Teeth, SolidError> {
    let middle = set
        .wheel_flank(Side::Drive)
        .point(0.0, 0.0)
        .ok_or(SolidError::WheelFlank {
            side: Side::Drive,
            x: 0.0,
        })?;
    let around = middle.position_mm.x * middle.normal.y - middle.position_mm.y * middle.normal.x;
    // The normal points into the slot.
    let low_side = if around > 0.0 { Side::Drive } else { Side::Coast };
    let sections = (0..=detail.along)
        .map(|i| {
            let x = 2.0 * f64::from(i) / f64::from(detail.along) - 1.0;
            section(set, detail, low_side, x)
        })
        .collect::<Result<Vec<_>, _>>()?;
    Ok(Teeth {
        count: set.design().wheel_teeth,
        low_side,
        numbering: Numbering::Slots,
        sections,
        land_fields: index((detail.up / 3).max(1)),
    })
}

fn other(side: Side) -> Side {
    match side {
        Side::Drive => Side::Coast,
        Side::Coast => Side::Drive,
    }
}

fn section(set: &GearSet, detail: Detail, low_side: Side, x: f64) -> Result<Section, SolidError> {
    let high_side = other(low_side);
    let bottoms = [bottom_y(set, low_side, x)?, bottom_y(set, high_side, x)?];
    let pitch = set.wheel_pitch_rad();
    let mut top = 1.0;
    for _ in 0..20 {
        let (low, high) = (sample(set, low_side, x, top)?, sample(set, high_side, x, top)?);
        let slot = turn_of(high.place.angle - low.place.angle);
        if (pitch - slot) * low.place.r >= LEAST_LAND_MM {
            let flank = |side, bottom: f64| -> Result<Vec<FlankSample>, SolidError> {
                (0..=detail.up)
                    .map(|j| {
                        sample(
                            set,
                            side,
                            x,
                            bottom + (top - bottom) * f64::from(j) / f64::from(detail.up),
                        )
                    })
                    .collect()
            };
            let mut low = flank(low_side, bottoms[0])?;
            let mut high = flank(high_side, bottoms[1])?;
            low.reverse();
            // Both flanks on one branch of the angle.
            let start = low.first().map_or(0.0, |first| first.place.angle);
            for flank in low.iter_mut().skip(1).chain(high.iter_mut()) {
                flank.place.angle = start + near_zero(flank.place.angle - start);
            }
            let bottom = slot_bottom(set, x, low.last(), high.first(), (detail.up / 3).max(1));
            return Ok(Section { low, bottom, high });
        }
        top -= 0.1;
    }
    Err(SolidError::NoTooth {
        member: ToothedPart::Wheel,
    })
}

/// Angle brought into half a turn on either side of 0.
fn near_zero(angle: f64) -> f64 {
    turn_of(angle + std::f64::consts::PI) - std::f64::consts::PI
}

/// y at which the flank meets the plane of the blade tips.
fn bottom_y(set: &GearSet, side: Side, x: f64) -> Result<f64, SolidError> {
    let missing = SolidError::WheelFlank { side, x };
    let cutter = set.cutter();
    let mut y = -1.1;
    for _ in 0..30 {
        let patch = set.wheel_flank(side).patch(x, y).ok_or(missing)?;
        let height = cutter.axis.dot(&(patch.w - cutter.centre_mm));
        let step = height / cutter.axis.dot(&patch.w_y);
        if step.is_nan() || step.abs() > 10.0 {
            return Err(missing);
        }
        y -= step;
        if step.abs() < 1e-11 {
            return if y < 0.5 { Ok(y) } else { Err(missing) };
        }
    }
    Err(missing)
}

fn sample(set: &GearSet, side: Side, x: f64, y: f64) -> Result<FlankSample, SolidError> {
    let point = set
        .wheel_flank(side)
        .point(x, y)
        .ok_or(SolidError::WheelFlank { side, x })?;
    let (r, axial) = set.blank().place_mm(x, y);
    let (position, normal) = (point.position_mm, point.normal);
    let radial = Vector3::new(position.x, position.y, 0.0) / r;
    Ok(FlankSample {
        place: Place {
            r,
            angle: math::atan2(position.y, position.x),
            axial,
        },
        normal: [normal.dot(&radial), radial.x * normal.y - radial.y * normal.x, normal.z],
        coordinates: [x, y],
    })
}

/// Points of the plane of the blade tips between the flanks.
fn slot_bottom(
    set: &GearSet,
    x: f64,
    low: Option<&FlankSample>,
    high: Option<&FlankSample>,
    fields: u32,
) -> Vec<Place> {
    let (Some(low), Some(high)) = (low, high) else {
        return Vec::new();
    };
    let cutter = set.cutter();
    let (root, face) = (set.blank().place_mm(x, -1.0), set.blank().place_mm(x, 1.0));
    (1..fields)
        .map(|i| {
            let between = low.place.toward(&high.place, f64::from(i) / f64::from(fields));
            let (sin, cos) = math::sin_cos(between.angle);
            let height = |(r, z): (f64, f64)| cutter.axis.dot(&(Vector3::new(r * cos, r * sin, z) - cutter.centre_mm));
            // Radius and axial place are linear in y, and so is the height.
            let (at_root, at_face) = (height(root), height(face));
            let part = at_root / (at_root - at_face);
            Place {
                r: root.0 + part * (face.0 - root.0),
                axial: root.1 + part * (face.1 - root.1),
                ..between
            }
        })
        .collect()
}
