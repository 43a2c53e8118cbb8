//! The fast route: what a drag and a search may ask hundreds of times a second.
//!
//! [`Tables`] hold, for about 870 points of either flank, a quadratic form of the gap in the placement, the wheel's
//! rotation and the roll (`form`), made once of the exact surfaces. At a placement they shrink to one parabola over the
//! roll for each point; `ridge` makes the wheel's motion of them, `print` the pattern. Only sums and products are left:
//! no surface is asked again.
//!
//! Good to about ±0.3 mm and ±0.1° around the designed placement; tested against the exact route within ±0.2 mm.

mod form;
mod print;
mod ridge;

use crate::gear::{GearSet, Side};

use super::exact::lash;
use super::gap_map::GapMap;
use super::motion::Envelope;
use super::pair::PreparedFlank;
use super::{Contact, EdgeContact, Film, FlankContact, Pair, Placement};

use form::{Column, Forms};
use print::Print;

/// What the fast route prepares once a pair.
#[derive(Debug, Clone)]
pub(crate) struct Tables {
    flanks: [Forms; 2],
    pitch: f64,
}

impl Tables {
    pub(crate) fn new(gears: &GearSet, flanks: &[PreparedFlank; 2]) -> Self {
        let [drive, coast] = flanks;
        Self {
            flanks: [Forms::new(gears, drive), Forms::new(gears, coast)],
            pitch: gears.wheel_pitch_rad(),
        }
    }

    fn columns(&self, placement: Placement, side: Side) -> Vec<Column> {
        let [drive, coast] = &self.flanks;
        match side {
            Side::Drive => drive.at(placement),
            Side::Coast => coast.at(placement),
        }
    }
}

/// Motion of one flank. None where no pair can touch at some roll.
pub(super) fn envelope(pair: &Pair, placement: Placement, side: Side) -> Option<Envelope> {
    let tables = pair.tables();
    ridge::envelope(&tables.columns(placement, side), tables.pitch)
}

/// Smallest gaps of one flank.
pub(super) fn map(pair: &Pair, placement: Placement, side: Side) -> Option<GapMap> {
    let tables = pair.tables();
    let columns = tables.columns(placement, side);
    let envelope = ridge::envelope(&columns, tables.pitch)?;
    Some(Print::new(&columns, &envelope).map())
}

pub(super) fn solve(pair: &Pair, placement: Placement, film: Film) -> Contact {
    let tables = pair.tables();
    let flank = |side: Side| {
        let columns = tables.columns(placement, side);
        let envelope = ridge::envelope(&columns, tables.pitch)?;
        let (low, high) = envelope.range();
        let [wheel, pinion_tip] = envelope.edge_shares();
        let contact = FlankContact {
            pattern: Print::new(&columns, &envelope).pattern(film.thickness_um),
            transmission_error_urad: Some(1e6 * (high - low)),
            edge_contact: Some(EdgeContact { wheel, pinion_tip }),
        };
        Some((contact, envelope))
    };
    let (drive, coast) = (flank(Side::Drive), flank(Side::Coast));
    Contact {
        lash: lash(pair, drive.as_ref().map(|d| &d.1), coast.as_ref().map(|c| &c.1)),
        drive: drive.map_or(FlankContact::NONE, |d| d.0),
        coast: coast.map_or(FlankContact::NONE, |c| c.0),
    }
}
