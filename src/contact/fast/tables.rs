//! The forms of both flanks, and what is asked of them at a placement.
//!
//! Source: our own method.

use crate::contact::gap_map::GapMap;
use crate::contact::lash;
use crate::contact::motion::{Curve, Envelope};
use crate::contact::placement::{Film, Placement};
use crate::contact::prepared::Prepared;
use crate::contact::result::{Contact, EdgeContact, FlankContact};
use crate::gear::Side;

use super::form::{Column, Forms};
use super::print::FlankPrint;
use super::ridge;

/// What the fast route prepares once a pair.
#[derive(Debug, Clone)]
pub(crate) struct Tables {
    flanks: [Forms; 2],
    pitch: f64,
}

impl Tables {
    pub(crate) fn new(prepared: &Prepared) -> Self {
        Self {
            flanks: Side::BOTH.map(|side| Forms::new(&prepared.gears, prepared.flank(side))),
            pitch: prepared.gears.wheel_pitch_rad(),
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

/// The curve of first touch of one pair on one flank.
pub(crate) fn curve(tables: &Tables, placement: Placement, side: Side) -> Option<Curve> {
    ridge::curve(&tables.columns(placement, side), tables.pitch)
}

/// Motion of one flank. None where no pair can touch at some roll.
pub(crate) fn envelope(tables: &Tables, placement: Placement, side: Side) -> Option<Envelope> {
    motion(&tables.columns(placement, side), tables.pitch)
}

fn motion(columns: &[Column], pitch: f64) -> Option<Envelope> {
    Envelope::new(&ridge::curve(columns, pitch)?, pitch)
}

/// Smallest gaps of one flank.
pub(crate) fn map(tables: &Tables, placement: Placement, side: Side) -> Option<GapMap> {
    let columns = tables.columns(placement, side);
    let envelope = motion(&columns, tables.pitch)?;
    Some(FlankPrint::new(&columns, &envelope).map())
}

pub(crate) fn solve(prepared: &Prepared, tables: &Tables, placement: Placement, film: Film) -> Contact {
    let flank = |side: Side| {
        let columns = tables.columns(placement, side);
        let envelope = motion(&columns, tables.pitch)?;
        let (low, high) = envelope.range();
        let [wheel, pinion_tip] = envelope.edge_shares();
        let contact = FlankContact {
            pattern: FlankPrint::new(&columns, &envelope).pattern(film.thickness_um),
            transmission_error_urad: Some(1e6 * (high - low)),
            edge_contact: Some(EdgeContact { wheel, pinion_tip }),
        };
        Some((contact, envelope))
    };
    let (drive, coast) = (flank(Side::Drive), flank(Side::Coast));
    Contact {
        lash: lash::of(prepared, drive.as_ref().map(|d| &d.1), coast.as_ref().map(|c| &c.1)),
        drive: drive.map_or(FlankContact::NONE, |d| d.0),
        coast: coast.map_or(FlankContact::NONE, |c| c.0),
    }
}
