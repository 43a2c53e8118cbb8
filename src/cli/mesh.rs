//! `lashwright mesh GEARS`

use std::path::PathBuf;
use std::process::ExitCode;

use clap::builder::PossibleValue;

use crate::job::Failure;
use crate::job::mesh::{self, MeshRequest, PlacementNumbers, Route, chart, picture};
use crate::words::say;

use super::page::{Page, fail, finish};

/// Ways to find the contact.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RouteArgument {
    /// Every point solved to the end.
    Exact,
    /// From numbers prepared for the set.
    Fast,
}

impl clap::ValueEnum for RouteArgument {
    fn value_variants<'a>() -> &'a [Self] {
        &[Self::Exact, Self::Fast]
    }

    fn to_possible_value(&self) -> Option<PossibleValue> {
        Some(match self {
            Self::Exact => PossibleValue::new("exact").help(say!("command-line-mesh-route-exact")),
            Self::Fast => PossibleValue::new("fast").help(say!("command-line-mesh-route-fast")),
        })
    }
}

/// Arguments of `mesh`.
#[derive(Debug, Clone, PartialEq, clap::Args)]
pub struct MeshArguments {
    /// Gear set: a file, or the name of one that ships with the program (see `lashwright gears`).
    #[arg(value_name = "GEARS")]
    pub gears: String,
    /// Pinion away from the crossing point, mm (negative: deeper).
    #[arg(long, value_name = "MM", default_value_t = 0.0, allow_negative_numbers = true)]
    pub pinion_axial: f64,
    /// Ring gear away from the pinion, mm (positive: more lash).
    #[arg(long, value_name = "MM", default_value_t = 0.0, allow_negative_numbers = true)]
    pub wheel_axial: f64,
    /// Offset beyond the designed one, mm.
    #[arg(long, value_name = "MM", default_value_t = 0.0, allow_negative_numbers = true)]
    pub offset_shift: f64,
    /// Shaft angle beyond the designed one, degrees.
    #[arg(long, value_name = "DEG", default_value_t = 0.0, allow_negative_numbers = true)]
    pub shaft_angle_shift: f64,
    /// Thickness of the marking paste, µm.
    #[arg(long, value_name = "UM", default_value_t = 8.0, allow_negative_numbers = true)]
    pub paste: f64,
    /// How to find the contact.
    #[arg(long, value_enum, default_value_t = RouteArgument::Exact)]
    pub route: RouteArgument,
    /// CSV file of placements; prints one JSON line a row, in order.
    #[arg(
        long,
        value_name = "IN.csv",
        conflicts_with_all = ["pinion_axial", "wheel_axial", "offset_shift", "shaft_angle_shift"]
    )]
    pub placements: Option<PathBuf>,
    /// Write a picture of both flanks, transmission error and lash into an SVG file.
    #[arg(long, value_name = "OUT.svg", conflicts_with = "placements")]
    pub picture: Option<PathBuf>,
    /// Axes of a wall chart that is drawn as the picture.
    #[arg(long, value_name = "AXES", requires = "picture")]
    pub chart: Option<String>,
    /// One JSON document instead of text.
    #[arg(long)]
    pub json: bool,
}

/// Meshes the gears at one placement, or at each of a file and prints as it goes.
pub(super) fn run(arguments: &MeshArguments) -> ExitCode {
    let request = MeshRequest {
        gears: arguments.gears.clone(),
        paste_um: arguments.paste,
        route: match arguments.route {
            RouteArgument::Exact => Route::Exact,
            RouteArgument::Fast => Route::Fast,
        },
    };
    match &arguments.placements {
        Some(file) => match mesh::at_placements(&request, file) {
            Ok(rows) => {
                let mut page = Page::new();
                let done = rows.json_lines(|lines| page.write(lines));
                done.map_or_else(|failure| fail(&failure), |()| page.end())
            }
            Err(failure) => fail(&failure),
        },
        None => finish(at_one(arguments, &request)),
    }
}

fn at_one(arguments: &MeshArguments, request: &MeshRequest) -> Result<String, Failure> {
    let placement = PlacementNumbers {
        pinion_axial_mm: arguments.pinion_axial,
        wheel_axial_mm: arguments.wheel_axial,
        offset_mm: arguments.offset_shift,
        shaft_angle_deg: arguments.shaft_angle_shift,
    };
    let axes = arguments.chart.as_deref().map(chart::axes).transpose()?;
    let text = if arguments.json {
        mesh::document(request, placement)?
    } else {
        mesh::text(request, placement)?
    };
    let Some(file) = &arguments.picture else {
        return Ok(text);
    };
    match &axes {
        Some(axes) => chart::write(request, placement, axes, file)?,
        None => picture::write(request, placement, file)?,
    }
    if arguments.json {
        Ok(text)
    } else {
        let written = say!("files-picture-written", path = file.display().to_string());
        Ok([text, written].join("\n\n"))
    }
}
