//! Bodies behind the teeth: turned about the axis. Proportions for the eye, nothing is computed from them.
//!
//! Source: our own construction, for drawing.

use crate::gear::GearSet;
use crate::numerics::math;

use super::section::{Place, Section, Teeth};

/// Outline of a body, as (axial, radius) corners, mm, from its start to the toe and from the heel to its end.
#[derive(Debug, Clone)]
pub(super) struct Body {
    pub(super) to_toe: Vec<[f64; 2]>,
    pub(super) from_heel: Vec<[f64; 2]>,
    /// Axial places where the outline starts and ends on the axis; none where the end joins the start (a bore).
    pub(super) poles: Option<[f64; 2]>,
}

/// Lowest place of a section across the direction (axial, radius) out of the root.
fn lowest(section: Option<&Section>, out: [f64; 2]) -> Option<Place> {
    let section = section?;
    let height = |p: &Place| out[0] * p.axial + out[1] * p.r;
    let ends = section.low.last().into_iter().chain(section.high.first());
    let mut lowest: Option<Place> = None;
    for place in section.bottom.iter().copied().chain(ends.map(|s| s.place)) {
        if lowest.is_none_or(|l| height(&place) < height(&l)) {
            lowest = Some(place);
        }
    }
    lowest
}

/// Foot of the end faces: `depth_mm` below the roots.
fn feet(teeth: &Teeth, out: [f64; 2], depth_mm: f64) -> [[f64; 2]; 2] {
    [teeth.sections.first(), teeth.sections.last()].map(|section| {
        lowest(section, out).map_or([0.0, depth_mm], |p| {
            [p.axial - depth_mm * out[0], p.r - depth_mm * out[1]]
        })
    })
}

/// A ring with a flat back and a bore, edges broken.
pub(super) fn wheel(set: &GearSet, teeth: &Teeth) -> Body {
    let (sin, cos) = math::sin_cos(set.pitch().wheel_pitch_angle_rad);
    let width = set.design().wheel_face_width_mm;
    let [toe, heel] = feet(teeth, [-sin, cos], 0.35 * set.blank().working_depth_mm);
    let bore = larger(toe[1] - 0.3 * width, 0.3 * toe[1]);
    let back = larger(heel[0], toe[0]) + 0.55 * width;
    let edge = 0.05 * width;
    Body {
        to_toe: vec![[toe[0] + edge, bore], [toe[0], bore + edge], toe],
        from_heel: vec![
            heel,
            [back - edge, heel[1]],
            [back, heel[1] - edge],
            [back, bore + edge],
            [back - edge, bore],
        ],
        poles: None,
    }
}

/// A head with a shaft: seat of the head bearing, a step, and the end for the companion flange.
pub(super) fn pinion(set: &GearSet, teeth: &Teeth) -> Body {
    let (sin, cos) = math::sin_cos(set.pitch().pinion_pitch_angle_rad);
    let width = set.design().wheel_face_width_mm;
    let toe_root = lowest(teeth.sections.first(), [-sin, cos]).map_or(width, |p| p.r);
    let [toe, _] = feet(teeth, [-sin, cos], 0.15 * toe_root);
    let [_, heel] = feet(teeth, [-sin, cos], 0.06 * toe_root);
    let edge = 0.04 * width;
    let seat = 0.8 * heel[1];
    let stem = 0.76 * seat;
    let shoulder = heel[0] + 0.12 * width;
    let step = shoulder + 0.9 * width;
    let end = step + 1.5 * width;
    Body {
        to_toe: vec![[toe[0], 0.6 * toe[1]], toe],
        from_heel: vec![
            heel,
            [shoulder - edge, heel[1]],
            [shoulder, heel[1] - edge],
            [shoulder, seat],
            [step - edge, seat],
            [step, seat - edge],
            [step, stem],
            [end - edge, stem],
            [end, stem - edge],
        ],
        poles: Some([toe[0], end]),
    }
}

fn larger(a: f64, b: f64) -> f64 {
    if a > b { a } else { b }
}
