//! Geometry and gaps as the checks ask the core for them.

use lashwright::contact::{Pair, Placement, Route, gap_map};
use lashwright::document::mesh::GeometryDocument;
use lashwright::gear::{Design, GearSet, Side};
use lashwright::words::error::geometry as geometry_words;

/// The numbers of the set as designed.
pub(crate) fn geometry(design: &Design) -> Result<GeometryDocument, String> {
    let set = GearSet::new(design.clone()).map_err(|error| geometry_words(&error).what)?;
    Ok(GeometryDocument::new(&set))
}

/// Places of a flank with the smallest gap over the roll, µm, by the exact route.
pub(crate) fn gap_map_um(design: &Design, placement: &Placement, side: usize) -> Result<Vec<([f64; 2], f64)>, String> {
    let set = GearSet::new(design.clone()).map_err(|error| geometry_words(&error).what)?;
    let side = if side == 0 { Side::Drive } else { Side::Coast };
    let map = gap_map(&Pair::new(set), *placement, side, Route::Exact).ok_or("no contact")?;
    let (nx, ny) = map.size();
    let mut found = Vec::new();
    for i in 0..=nx {
        for j in 0..=ny {
            let (x, y) = map.place(i, j);
            found.extend(map.gap_um(i, j).map(|gap| ([x, y], gap)));
        }
    }
    Ok(found)
}
