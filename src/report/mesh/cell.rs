//! One cell of a wall chart: both prints and the backlash at a placement.

use crate::contact::{self, Film, Pair, Placement, Route};
use crate::drawing::{Cell, CellFlank};
use crate::gear::Side;

use super::tooth::{on_edge, print_of};

/// The cell of a placement.
pub(crate) fn cell_of(pair: &Pair, placement: Placement, film: Film, route: Route) -> Cell {
    let contact = contact::solve(pair, placement, film, route);
    let flank = |side: Side| {
        let map = contact::gap_map(pair, placement, side, route);
        let flank = contact.flank(side);
        CellFlank {
            print: print_of(pair.gears(), film.thickness_um, side, map.as_ref(), flank),
            on_edge: on_edge(flank.edge_contact),
        }
    };
    Cell {
        drive: flank(Side::Drive),
        coast: flank(Side::Coast),
        lash_mm: contact.lash.map(|lash| [lash.min_mm, lash.max_mm]),
    }
}
