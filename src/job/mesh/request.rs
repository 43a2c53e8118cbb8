//! What is asked for about a gear set, made ready.

use crate::contact::{Contact, FAST_REACH, Film, FlankContact, Pair, Route};
use crate::document::mesh::{
    EdgeContactDocument, FlankDocument, LashDocument, MeshDocument, PatternDocument, PlacementDocument,
};
use crate::job::{Failure, gear_sets};
use crate::quantity::degrees;
use crate::report::mesh::{Meshing, PlacementNumbers};
use crate::words::{self, say};

/// The thickest paste, µm: far beyond what anybody paints.
const THICKEST_PASTE_UM: f64 = 1000.0;

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
    pub(super) source: String,
    pub(super) meshing: Meshing,
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
            meshing: Meshing {
                pair: Pair::new(found.prepare()?),
                film: Film { thickness_um: paste_um },
                route: request.route,
            },
            source: found.source,
        })
    }

    /// "exact" or "fast".
    pub(super) fn route_name(&self) -> &'static str {
        match self.meshing.route {
            Route::Exact => "exact",
            Route::Fast => "fast",
        }
    }

    /// What is doubtful about the gears, and about the fast route far from where it is good.
    fn warnings(&self, numbers: &PlacementNumbers) -> Vec<String> {
        let mut warnings: Vec<String> = self
            .meshing
            .gears()
            .warnings()
            .iter()
            .map(|w| words::error::warning(w).line())
            .collect();
        if self.meshing.route == Route::Fast && !FAST_REACH.holds(&numbers.placement()) {
            warnings.push(say!(
                "mesh-fast-route-reach",
                axial = FAST_REACH.axial_mm.to_string(),
                offset = FAST_REACH.offset_mm.to_string(),
                angle = degrees(FAST_REACH.shaft_angle_rad).to_string()
            ));
        }
        warnings
    }

    /// What the teeth do at a placement.
    pub(super) fn at(&self, numbers: &PlacementNumbers) -> MeshDocument {
        let contact = self.meshing.contact(numbers);
        MeshDocument {
            gears: self.source.clone(),
            route: self.route_name().to_owned(),
            paste_um: self.meshing.film.thickness_um,
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
            note: words::simulated(),
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
