//! Contact as the checks ask the core for it: the one place that knows its interface.

use lashwright::contact::{Film, FlankContact, Pair, Placement, Route, solve};
use lashwright::gear::{Design, GearSet};

/// Contact of one flank.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Flank {
    pub(crate) area_fraction: f64,
    pub(crate) centroid: Option<[f64; 2]>,
    pub(crate) toe: Option<f64>,
    pub(crate) heel: Option<f64>,
    pub(crate) root: Option<f64>,
    pub(crate) top: Option<f64>,
    pub(crate) transmission_error_urad: Option<f64>,
    pub(crate) edge_wheel: Option<f64>,
    pub(crate) edge_pinion_tip: Option<f64>,
}

/// Contact of a set at a placement.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Mesh {
    pub(crate) flanks: [Flank; 2],
    /// Least, mean, largest.
    pub(crate) lash_mm: Option<[f64; 3]>,
}

fn flank(contact: &FlankContact) -> Flank {
    let pattern = contact.pattern;
    Flank {
        area_fraction: pattern.map_or(0.0, |p| p.area_fraction),
        centroid: pattern.map(|p| p.centroid),
        toe: pattern.map(|p| p.toe),
        heel: pattern.map(|p| p.heel),
        root: pattern.map(|p| p.root),
        top: pattern.map(|p| p.top),
        transmission_error_urad: contact.transmission_error_urad,
        edge_wheel: contact.edge_contact.map(|e| e.wheel),
        edge_pinion_tip: contact.edge_contact.map(|e| e.pinion_tip),
    }
}

/// Contact by the exact route under a film, mm.
pub(crate) fn mesh(design: &Design, placement: &Placement, film_mm: f64) -> Result<Mesh, String> {
    mesh_by(Route::Exact, design, placement, film_mm)
}

/// Contact by a route under a film, mm.
pub(crate) fn mesh_by(route: Route, design: &Design, placement: &Placement, film_mm: f64) -> Result<Mesh, String> {
    let set = GearSet::new(design.clone()).map_err(|error| lashwright::words::error::geometry(&error).what)?;
    let film = Film {
        thickness_um: 1e3 * film_mm,
    };
    let contact = solve(&Pair::new(set), *placement, film, route);
    Ok(Mesh {
        flanks: [flank(&contact.drive), flank(&contact.coast)],
        lash_mm: contact.lash.map(|l| [l.min_mm, l.mean_mm, l.max_mm]),
    })
}
