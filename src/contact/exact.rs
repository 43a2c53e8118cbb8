//! The exact route: both flanks of a pair at a placement.

use crate::gear::Side;

use super::gap::Stand;
use super::gap_map::{GapMap, Gapper};
use super::motion::{Curve, Envelope};
use super::outline::Outline;
use super::pattern::Pattern;
use super::touch::Toucher;
use super::{Contact, EdgeContact, Film, FlankContact, Lash, Pair, PathPoint, Placement};

/// The curve of first touch of one pair on one flank.
fn curve(pair: &Pair, stand: &Stand, side: Side) -> Curve {
    let flank = pair.flank(side);
    let step = pair.gears().wheel_pitch_rad() / pair.resolution().rolls as f64;
    let toucher = Toucher { stand, flank };
    Curve::new(
        &toucher,
        flank.first_sample,
        flank.last_sample,
        step,
        pair.resolution().rolls,
    )
}

/// Motion of one flank. None where no pair can touch at some roll.
pub(super) fn envelope(pair: &Pair, stand: &Stand, side: Side) -> Option<Envelope> {
    Envelope::new(&curve(pair, stand, side), pair.gears().wheel_pitch_rad())
}

/// Where one pair touches while the wheel is held by it, from its first roll to its last.
pub(super) fn path(pair: &Pair, stand: &Stand, side: Side) -> Option<Vec<PathPoint>> {
    /// A sample counts as held by its pair where the envelope lies no lower than by rounding, rad.
    const HELD: f64 = 1e-12;
    let curve = curve(pair, stand, side);
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

/// Smallest gaps of one flank that moves by this envelope.
pub(super) fn map(pair: &Pair, stand: &Stand, side: Side, envelope: &Envelope) -> GapMap {
    let kinks = envelope.kinks();
    let gapper = Gapper {
        stand,
        flank: pair.flank(side),
        envelope,
        kinks: &kinks,
    };
    gapper.map(pair.resolution())
}

pub(super) fn solve(pair: &Pair, placement: Placement, film: Film) -> Contact {
    let stand = Stand::new(pair.gears(), placement);
    let envelopes = Side::BOTH.map(|side| envelope(pair, &stand, side));
    let flank = |side: Side, envelope: &Option<Envelope>| {
        envelope.as_ref().map_or(FlankContact::NONE, |envelope| {
            let map = map(pair, &stand, side, envelope);
            let (low, high) = envelope.range();
            let [wheel, pinion_tip] = envelope.edge_shares();
            FlankContact {
                pattern: pattern(pair, &stand, side, envelope, &map, film),
                transmission_error_urad: Some(1e6 * (high - low)),
                edge_contact: Some(EdgeContact { wheel, pinion_tip }),
            }
        })
    };
    let [drive, coast] = &envelopes;
    Contact {
        lash: lash(pair, drive.as_ref(), coast.as_ref()),
        drive: flank(Side::Drive, drive),
        coast: flank(Side::Coast, coast),
    }
}

/// The print of a map, its ends found on the surfaces themselves.
fn pattern(pair: &Pair, stand: &Stand, side: Side, envelope: &Envelope, map: &GapMap, film: Film) -> Option<Pattern> {
    let (pattern, extremes) = Pattern::with_extremes(map, film.thickness_um)?;
    let kinks = envelope.kinks();
    let outline = Outline {
        gapper: Gapper {
            stand,
            flank: pair.flank(side),
            envelope,
            kinks: &kinks,
        },
        designed: Stand::new(pair.gears(), Placement::NOMINAL),
        film_mm: 1e-3 * film.thickness_um,
        cell: [2.0 / map.nx as f64, 2.0 / map.ny as f64],
    };
    let [[toe, heel], [root, top]] = extremes;
    Some(Pattern {
        toe: outline.end(toe, 0, -1.0),
        heel: outline.end(heel, 0, 1.0),
        root: outline.end(root, 1, -1.0),
        top: outline.end(top, 1, 1.0),
        ..pattern
    })
}

/// Lash over one pitch: j0 + (D_drive(φ) + D_coast(φ + 2ψ j0/d_e2)) d_e2/2.
pub(super) fn lash(pair: &Pair, drive: Option<&Envelope>, coast: Option<&Envelope>) -> Option<Lash> {
    let design = pair.gears().design();
    let radius = 0.5 * design.wheel_outer_pitch_diameter_mm;
    let (low, mean, high) = drive?.sum(coast?, lash_lead(pair));
    Some(Lash {
        min_mm: design.lash_mm + low * radius,
        mean_mm: design.lash_mm + mean * radius,
        max_mm: design.lash_mm + high * radius,
    })
}

/// How much further the coast flank's roll is taken: the pinion's tooth is thinner by the designed lash.
pub(super) fn lash_lead(pair: &Pair) -> f64 {
    let design = pair.gears().design();
    pair.flank(Side::Drive).toward * design.lash_mm / (0.5 * design.wheel_outer_pitch_diameter_mm)
}
