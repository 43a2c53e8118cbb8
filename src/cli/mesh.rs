//! `lashwright mesh GEARS`

use std::path::PathBuf;

use crate::document::mesh::MeshDocument;
use crate::job::Failure;
use crate::job::mesh::{self, MeshRequest, Route};
use crate::job::placements::PlacementNumbers;

use super::Answer;

/// Ways to find the contact.
#[derive(Debug, Clone, Copy, PartialEq, Eq, clap::ValueEnum)]
pub enum RouteArgument {
    /// Every point solved to the end: what readings and scores are made of
    Exact,
    /// From numbers prepared for the set: what is drawn while a slider moves
    Fast,
}

/// Arguments of `mesh`.
#[derive(Debug, Clone, PartialEq, clap::Args)]
pub struct MeshArguments {
    /// Gear set: a file, or the name of one that ships with the program (see `lashwright gears`)
    #[arg(value_name = "GEARS")]
    pub gears: String,
    /// Pinion away from the crossing point, mm (negative: deeper)
    #[arg(long, value_name = "MM", default_value_t = 0.0, allow_negative_numbers = true)]
    pub pinion_axial: f64,
    /// Ring gear away from the pinion, mm (positive: more lash)
    #[arg(long, value_name = "MM", default_value_t = 0.0, allow_negative_numbers = true)]
    pub wheel_axial: f64,
    /// Offset beyond the designed one, mm
    #[arg(long, value_name = "MM", default_value_t = 0.0, allow_negative_numbers = true)]
    pub offset_shift: f64,
    /// Shaft angle beyond the designed one, degrees
    #[arg(long, value_name = "DEG", default_value_t = 0.0, allow_negative_numbers = true)]
    pub shaft_angle_shift: f64,
    /// Thickness of the marking paste, µm
    #[arg(long, value_name = "UM", default_value_t = 8.0, allow_negative_numbers = true)]
    pub paste: f64,
    /// How to find the contact
    #[arg(long, value_enum, default_value_t = RouteArgument::Exact)]
    pub route: RouteArgument,
    /// CSV file of placements; prints one JSON line a row, in order
    #[arg(
        long,
        value_name = "IN.csv",
        conflicts_with_all = ["pinion_axial", "wheel_axial", "offset_shift", "shaft_angle_shift"]
    )]
    pub placements: Option<PathBuf>,
    /// One JSON document instead of text
    #[arg(long)]
    pub json: bool,
}

/// Meshes the gears at one placement, or at each of a file.
pub(super) fn run(arguments: &MeshArguments) -> Answer {
    let request = MeshRequest {
        gears: arguments.gears.clone(),
        paste_um: arguments.paste,
        route: match arguments.route {
            RouteArgument::Exact => Route::Exact,
            RouteArgument::Fast => Route::Fast,
        },
    };
    if let Some(file) = &arguments.placements {
        let lines: Result<Vec<String>, Failure> = mesh::at_placements(&request, file)?
            .iter()
            .map(|document| json(document, false))
            .collect();
        return Ok(lines?.join("\n"));
    }
    let placement = PlacementNumbers {
        pinion_axial_mm: arguments.pinion_axial,
        wheel_axial_mm: arguments.wheel_axial,
        offset_mm: arguments.offset_shift,
        shaft_angle_deg: arguments.shaft_angle_shift,
    };
    let (design, document) = mesh::at(&request, placement)?;
    if arguments.json {
        json(&document, true)
    } else {
        Ok(mesh::text(&design, &document))
    }
}

fn json(document: &MeshDocument, pretty: bool) -> Answer {
    let written = if pretty {
        serde_json::to_string_pretty(document)
    } else {
        serde_json::to_string(document)
    };
    written.map_err(|error| Failure::other(format!("error: {error}.")))
}
