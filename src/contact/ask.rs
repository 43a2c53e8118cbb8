//! What may be asked of a pair at a placement, by either route.
//!
//! Source: our own definitions; the sum of both flanks' motions as lash is in `lash`.

use crate::gear::Side;

use super::gap::PlacedPair;
use super::gap_map::GapMap;
use super::motion::Envelope;
use super::pair::Pair;
use super::placement::{Film, Placement, Route};
use super::result::{Contact, FlankContact, PathPoint};
use super::{exact, fast, lash};

/// Contact of a pair at a placement. Never fails: what cannot touch is `None`, overlap is negative lash. A placement with
/// a number that is not finite gives no contact.
pub fn solve(pair: &Pair, placement: Placement, film: Film, route: Route) -> Contact {
    if !is_finite(&placement) {
        return Contact {
            lash: None,
            drive: FlankContact::NONE,
            coast: FlankContact::NONE,
        };
    }
    match route {
        Route::Exact => exact::solve(pair.prepared(), placement, film),
        Route::Fast => fast::solve(pair.prepared(), pair.tables(), placement, film),
    }
}

/// Motion of one flank at a placement. None where no pair can touch at some roll.
fn envelope(pair: &Pair, placement: Placement, side: Side, route: Route) -> Option<Envelope> {
    match route {
        Route::Exact => exact::envelope(pair.prepared(), &PlacedPair::new(pair.gears(), placement), side),
        Route::Fast => fast::envelope(pair.tables(), placement, side),
    }
}

/// Smallest gap over the roll on a grid over the flank: by the exact route with the resolution of the pair. None where
/// the flank cannot touch. [`Pattern::of`](super::Pattern::of) makes the pattern of it for any film.
pub fn gap_map(pair: &Pair, placement: Placement, side: Side, route: Route) -> Option<GapMap> {
    if !is_finite(&placement) {
        return None;
    }
    match route {
        Route::Exact => {
            let prepared = pair.prepared();
            let stand = PlacedPair::new(pair.gears(), placement);
            let envelope = exact::envelope(prepared, &stand, side)?;
            Some(exact::map(prepared, &stand, side, &envelope))
        }
        Route::Fast => fast::map(pair.tables(), placement, side),
    }
}

/// The wheel's motion on one flank over one pitch: (roll in rad from 0, rotation toward the pinion at which the first of
/// all pairs touches in µrad), `count` + 1 values. None where the flank cannot touch.
pub fn first_touch_urad(
    pair: &Pair,
    placement: Placement,
    side: Side,
    route: Route,
    count: usize,
) -> Option<Vec<(f64, f64)>> {
    if !is_finite(&placement) || count == 0 {
        return None;
    }
    let values = envelope(pair, placement, side, route)?.values(count);
    Some(values.into_iter().map(|(roll, toward)| (roll, 1e6 * toward)).collect())
}

/// The path of contact: where one pair touches over the rolls at which it holds the wheel, by rising roll. None where
/// the flank cannot touch.
pub fn path_of_contact(pair: &Pair, placement: Placement, side: Side, route: Route) -> Option<Vec<PathPoint>> {
    /// A sample counts as held by its pair where the envelope lies no lower than by rounding, rad.
    const HELD: f64 = 1e-12;
    if !is_finite(&placement) {
        return None;
    }
    let curve = match route {
        Route::Exact => exact::curve(pair.prepared(), &PlacedPair::new(pair.gears(), placement), side),
        Route::Fast => fast::curve(pair.tables(), placement, side)?,
    };
    let envelope = Envelope::new(&curve, pair.gears().wheel_pitch_rad())?;
    let held = curve.samples().iter().filter_map(|sample| {
        let touch = sample.touch?;
        (touch.toward <= envelope.at(sample.roll).0 + HELD).then_some(PathPoint {
            roll_rad: sample.roll,
            place: [touch.x, touch.y],
            toward_urad: 1e6 * touch.toward,
            slope: touch.slope,
        })
    });
    Some(held.collect())
}

/// Lash over one pitch: (roll in rad from 0, lash in mm), `count` + 1 values. None where a flank cannot touch.
pub fn lash_mm(pair: &Pair, placement: Placement, route: Route, count: usize) -> Option<Vec<(f64, f64)>> {
    if !is_finite(&placement) || count == 0 {
        return None;
    }
    let drive = envelope(pair, placement, Side::Drive, route)?;
    let coast = envelope(pair, placement, Side::Coast, route)?;
    let lead = lash::lead(pair.prepared());
    let design = pair.gears().design();
    let radius = 0.5 * design.wheel_outer_pitch_diameter_mm;
    Some(
        drive
            .values(count)
            .into_iter()
            .map(|(roll, toward)| {
                let other = coast.at(roll + lead).0;
                (roll, design.lash_mm + radius * (toward + other))
            })
            .collect(),
    )
}

fn is_finite(placement: &Placement) -> bool {
    [
        placement.pinion_axial_mm,
        placement.wheel_axial_mm,
        placement.offset_mm,
        placement.shaft_angle_rad,
    ]
    .iter()
    .all(|v| v.is_finite())
}
