//! From the core's flanks and prints to those of drawings, and their names for people.

use crate::contact::{EdgeContact, FlankContact, GapMap};
use crate::drawing::{Edge, Field, Flank, Outline, Print, ToothWords};
use crate::gear::{GearSet, Side};
use crate::numerics::math;
use crate::words::{say, tooth};

/// Heading of a flank.
pub(super) fn flank_name(flank: Flank) -> String {
    match flank {
        Flank::Drive => tooth::drive_side(),
        Flank::Coast => tooth::coast_side(),
    }
}

/// Its shape on the ring gear.
pub(super) fn flank_shape(flank: Flank) -> String {
    match flank {
        Flank::Drive => say!("tooth-convex"),
        Flank::Coast => say!("tooth-concave"),
    }
}

/// Name of an edge.
pub(super) fn edge_name(edge: Edge) -> String {
    match edge {
        Edge::Toe => tooth::toe(),
        Edge::Heel => tooth::heel(),
        Edge::Root => tooth::flank(),
        Edge::Top => tooth::face(),
    }
}

/// What stands on the picture of a flank.
pub(super) fn tooth_words() -> ToothWords {
    ToothWords {
        toe: tooth::toe(),
        heel: tooth::heel(),
        root: tooth::flank(),
        top: tooth::face(),
        cannot_touch: say!("tooth-cannot-touch"),
        no_print: say!("tooth-no-pattern"),
    }
}

/// The drawing's name of a flank.
pub(super) fn flank_of(side: Side) -> Flank {
    match side {
        Side::Drive => Flank::Drive,
        Side::Coast => Flank::Coast,
    }
}

/// The shape of the wheel's flank.
pub(crate) fn outline(gears: &GearSet) -> Outline {
    let pitch = gears.pitch();
    let (sin_d2, cos_d2) = math::sin_cos(pitch.wheel_pitch_angle_rad);
    // Height over the pitch cone, square to its generator.
    let height = |x: f64, y: f64| {
        let (r, z) = gears.blank().place_mm(x, y);
        (r - pitch.wheel_mean_radius_mm) * cos_d2 - (z - pitch.wheel_crossing_to_mean_mm) * sin_d2
    };
    Outline {
        face_width_mm: gears.design().wheel_face_width_mm,
        lower_mm: [height(-1.0, -1.0), height(1.0, -1.0)],
        upper_mm: [height(-1.0, 1.0), height(1.0, 1.0)],
    }
}

/// What the paste shows on a flank, for drawing.
pub(crate) fn print_of(
    gears: &GearSet,
    film_um: f64,
    side: Side,
    map: Option<&GapMap>,
    contact: &FlankContact,
) -> Print {
    Print {
        flank: flank_of(side),
        outline: outline(gears),
        gap_um: map.map_or_else(
            || Field::new(2, 2, |_, _| None),
            |map| {
                let (columns, rows) = map.size();
                Field::new(columns, rows, |i, j| map.gap_um(i, j))
            },
        ),
        film_um,
        area_fraction: contact.pattern.map(|p| p.area_fraction),
        centroid: contact.pattern.map(|p| p.centroid),
    }
}

/// Whether an edge touches over part of the roll.
pub(super) fn on_edge(edge: Option<EdgeContact>) -> bool {
    edge.is_some_and(|e| e.wheel > 0.0 || e.pinion_tip > 0.0)
}
