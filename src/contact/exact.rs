//! The exact route: both flanks of a pair at a placement.
//!
//! Source: our own method throughout; what it stands on is in the tour of [`crate::contact`].

use crate::gear::Side;

use super::gap::PlacedPair;
use super::gap_map::{GapMap, GapSearch};
use super::lash;
use super::motion::{Curve, Envelope};
use super::outline::Outline;
use super::pattern::Pattern;
use super::placement::{Film, Placement};
use super::prepared::Prepared;
use super::result::{Contact, EdgeContact, FlankContact};
use super::touch::TouchSearch;

/// The curve of first touch of one pair on one flank.
pub(super) fn curve(prepared: &Prepared, stand: &PlacedPair, side: Side) -> Curve {
    let flank = prepared.flank(side);
    let step = prepared.gears.wheel_pitch_rad() / prepared.resolution.rolls as f64;
    let search = TouchSearch { stand, flank };
    Curve::new(
        &search,
        flank.first_sample,
        flank.last_sample,
        step,
        prepared.resolution.rolls,
    )
}

/// Motion of one flank. None where no pair can touch at some roll.
pub(super) fn envelope(prepared: &Prepared, stand: &PlacedPair, side: Side) -> Option<Envelope> {
    Envelope::new(&curve(prepared, stand, side), prepared.gears.wheel_pitch_rad())
}

/// Smallest gaps of one flank that moves by this envelope.
pub(super) fn map(prepared: &Prepared, stand: &PlacedPair, side: Side, envelope: &Envelope) -> GapMap {
    let kinks = envelope.kinks();
    let search = GapSearch {
        stand,
        flank: prepared.flank(side),
        envelope,
        kinks: &kinks,
    };
    search.map(prepared.resolution)
}

pub(super) fn solve(prepared: &Prepared, placement: Placement, film: Film) -> Contact {
    let stand = PlacedPair::new(&prepared.gears, placement);
    let envelopes = Side::BOTH.map(|side| envelope(prepared, &stand, side));
    let flank = |side: Side, envelope: &Option<Envelope>| {
        envelope.as_ref().map_or(FlankContact::NONE, |envelope| {
            let map = map(prepared, &stand, side, envelope);
            let (low, high) = envelope.range();
            let [wheel, pinion_tip] = envelope.edge_shares();
            FlankContact {
                pattern: pattern(prepared, &stand, side, envelope, &map, film),
                transmission_error_urad: Some(1e6 * (high - low)),
                edge_contact: Some(EdgeContact { wheel, pinion_tip }),
            }
        })
    };
    let [drive, coast] = &envelopes;
    Contact {
        lash: lash::of(prepared, drive.as_ref(), coast.as_ref()),
        drive: flank(Side::Drive, drive),
        coast: flank(Side::Coast, coast),
    }
}

/// The print of a map, its ends found on the surfaces themselves.
fn pattern(
    prepared: &Prepared,
    stand: &PlacedPair,
    side: Side,
    envelope: &Envelope,
    map: &GapMap,
    film: Film,
) -> Option<Pattern> {
    let (pattern, extremes) = Pattern::with_extremes(map, film.thickness_um)?;
    let kinks = envelope.kinks();
    let outline = Outline {
        search: GapSearch {
            stand,
            flank: prepared.flank(side),
            envelope,
            kinks: &kinks,
        },
        designed: PlacedPair::new(&prepared.gears, Placement::NOMINAL),
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
