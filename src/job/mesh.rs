//! Meshing a gear set at one placement or many.

use std::path::Path;

use rayon::prelude::*;

use crate::contact::{self, Contact, FAST_REACH, Film, FlankContact, Pair};
use crate::document::mesh::{
    EdgeContactDocument, FlankDocument, GeometryDocument, LashDocument, MeshDocument, PatternDocument,
    PlacementDocument,
};
use crate::gear::{Design, GearSet};
use crate::quantity::degrees;
use crate::store;
use crate::words::{self, say};

use super::placements::{self, PlacementNumbers};
use super::{Failure, gear_sets};

pub use super::mesh_text::text;

/// The thickest paste, µm: far beyond what anybody paints.
const THICKEST_PASTE_UM: f64 = 1000.0;

pub use crate::contact::Route;

/// What is meshed, and how.
#[derive(Debug, Clone, PartialEq)]
pub struct MeshRequest {
    /// A file, or the name of an embedded gear set.
    pub gears: String,
    /// Thickness of the marking paste, µm.
    pub paste_um: f64,
    /// How the contact is found.
    pub route: Route,
}

/// A request made ready.
pub(super) struct Mesh {
    source: String,
    pair: Pair,
    film: Film,
    route: Route,
}

impl Mesh {
    /// Finds and prepares the gears.
    pub(super) fn prepare(request: &MeshRequest) -> Result<Self, Failure> {
        let paste_um = request.paste_um;
        if !(paste_um > 0.0 && paste_um <= THICKEST_PASTE_UM) {
            return Err(Failure::bad_input(say!(
                "mesh-compound-range",
                given = paste_um.to_string(),
                most = THICKEST_PASTE_UM.to_string()
            )));
        }
        let found = gear_sets::find(&request.gears)?;
        Ok(Self {
            pair: Pair::new(found.prepare()?),
            source: found.source,
            film: Film { thickness_um: paste_um },
            route: request.route,
        })
    }

    /// The gears in contact.
    pub(super) fn pair(&self) -> &Pair {
        &self.pair
    }

    /// The gears.
    pub(super) fn gears(&self) -> &GearSet {
        self.pair.gears()
    }

    /// Thickness of the paste, µm.
    pub(super) fn film_um(&self) -> f64 {
        self.film.thickness_um
    }

    /// "exact" or "fast".
    pub(super) fn route_name(&self) -> &'static str {
        match self.route {
            Route::Exact => "exact",
            Route::Fast => "fast",
        }
    }

    /// How the contact is found.
    pub(super) fn route(&self) -> Route {
        self.route
    }

    /// Contact at a placement.
    pub(super) fn contact(&self, numbers: &PlacementNumbers) -> Contact {
        contact::solve(&self.pair, numbers.placement(), self.film, self.route)
    }

    /// What is doubtful about the gears, and about the fast route far from where it is good.
    fn warnings(&self, numbers: &PlacementNumbers) -> Vec<String> {
        let mut warnings: Vec<String> = self
            .gears()
            .warnings()
            .iter()
            .map(|w| words::error::warning(w).line())
            .collect();
        if self.route == Route::Fast && !FAST_REACH.holds(&numbers.placement()) {
            warnings.push(say!(
                "mesh-fast-route-reach",
                axial = FAST_REACH.axial_mm.to_string(),
                offset = FAST_REACH.offset_mm.to_string(),
                angle = degrees(FAST_REACH.shaft_angle_rad).to_string()
            ));
        }
        warnings
    }

    fn at(&self, numbers: &PlacementNumbers) -> MeshDocument {
        let contact = self.contact(numbers);
        MeshDocument {
            gears: self.source.clone(),
            route: self.route_name().to_owned(),
            paste_um: self.film.thickness_um,
            warnings: self.warnings(numbers),
            placement: PlacementDocument {
                pinion_axial_mm: numbers.pinion_axial_mm,
                wheel_axial_mm: numbers.wheel_axial_mm,
                offset_mm: numbers.offset_mm,
                shaft_angle_deg: numbers.shaft_angle_deg,
            },
            geometry: None,
            lash_mm: lash(&contact),
            drive: flank(&contact.drive),
            coast: flank(&contact.coast),
        }
    }
}

fn lash(contact: &Contact) -> LashDocument {
    LashDocument {
        min: contact.lash.map(|l| l.min_mm),
        mean: contact.lash.map(|l| l.mean_mm),
        max: contact.lash.map(|l| l.max_mm),
    }
}

fn flank(contact: &FlankContact) -> FlankDocument {
    let pattern = contact.pattern;
    FlankDocument {
        pattern: PatternDocument {
            area_fraction: pattern.map_or(0.0, |p| p.area_fraction),
            centroid: pattern.map(|p| p.centroid),
            toe: pattern.map(|p| p.toe),
            heel: pattern.map(|p| p.heel),
            root: pattern.map(|p| p.root),
            top: pattern.map(|p| p.top),
        },
        transmission_error_urad: contact.transmission_error_urad,
        edge_contact: EdgeContactDocument {
            wheel: contact.edge_contact.map(|e| e.wheel),
            pinion_tip: contact.edge_contact.map(|e| e.pinion_tip),
        },
    }
}

/// Meshes the gears at one placement; the design comes along for people's text.
///
/// # Errors
/// Bad input: a paste or placement that nobody can mean, a gear set that is not there, cannot
/// be read or cannot exist.
pub fn at(request: &MeshRequest, numbers: PlacementNumbers) -> Result<(Design, MeshDocument), Failure> {
    let numbers = numbers.checked()?;
    let mesh = Mesh::prepare(request)?;
    let gears = mesh.pair.gears();
    let document = MeshDocument {
        geometry: Some(GeometryDocument::new(gears)),
        ..mesh.at(&numbers)
    };
    Ok((gears.design().clone(), document))
}

/// Rows computed at once before they are handed on, and rows that one thread takes at once.
const BLOCK: usize = 256;
const PART: usize = 8;

/// The gears and the placements of a file, ready to be meshed.
pub struct Rows {
    mesh: Mesh,
    placements: Vec<PlacementNumbers>,
}

impl std::fmt::Debug for Rows {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Rows")
            .field("gears", &self.mesh.source)
            .field("placements", &self.placements.len())
            .finish_non_exhaustive()
    }
}

/// Prepares to mesh the gears at every placement of a CSV file.
///
/// # Errors
/// As [`at`], and a placements file that cannot be read or has a bad row; then nothing is computed.
pub fn at_placements(request: &MeshRequest, file: &Path) -> Result<Rows, Failure> {
    let bytes = store::read_within(file, placements::LIMITS.bytes)?;
    let placements = placements::read(&file.display().to_string(), &bytes)?;
    let mesh = Mesh::prepare(request)?;
    if request.route == Route::Fast {
        // Before the threads start, which would wait for each other.
        mesh.pair.prepare_fast();
    }
    Ok(Rows { mesh, placements })
}

impl Rows {
    /// Hands on one JSON document a line, in the order of the file whatever the number of threads, some hundred rows at a
    /// time, until `take` answers false: a long file needs no more memory than a short one. The next rows are computed
    /// while the last ones are taken.
    ///
    /// # Errors
    /// Only if a document cannot be written as JSON, which is a fault of the program.
    pub fn json_lines(&self, mut take: impl FnMut(&str) -> bool) -> Result<(), Failure> {
        std::thread::scope(|scope| {
            let (sender, receiver) = std::sync::mpsc::sync_channel(1);
            scope.spawn(move || {
                for rows in self.placements.chunks(BLOCK) {
                    let parts: Result<Vec<String>, serde_json::Error> =
                        rows.par_chunks(PART).map(|part| self.lines(part)).collect();
                    // Nobody may be there any more to take them.
                    if sender.send(parts).is_err() {
                        return;
                    }
                }
            });
            for parts in receiver {
                let parts = parts.map_err(Failure::of_program)?;
                if !parts.iter().all(|part| take(part)) {
                    break;
                }
            }
            Ok(())
        })
    }

    fn lines(&self, rows: &[PlacementNumbers]) -> Result<String, serde_json::Error> {
        let mut text = String::new();
        for numbers in rows {
            text.push_str(&serde_json::to_string(&self.mesh.at(numbers))?);
            text.push('\n');
        }
        Ok(text)
    }
}
