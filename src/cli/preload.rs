//! `lashwright preload SUPPORT`

use std::path::PathBuf;

use crate::job::Failure;
use crate::job::preload::{self, Over, Request, Sweep, table};
use crate::words::say;

/// Arguments of `preload`.
///
/// Without a table and without options it shows one case: the support as its file says.
#[derive(Debug, Clone, PartialEq, clap::Args)]
pub struct PreloadArguments {
    /// Pinion support: an embedded name or a file.
    #[arg(value_name = "SUPPORT")]
    support: String,
    /// Free length of the spacer with its shims [default: as in the file].
    #[arg(long, value_name = "MM", allow_negative_numbers = true)]
    spacer_mm: Option<f64>,
    /// Torque on the pinion nut [default: what the support is meant for; 217 (160 ft·lb) where its file does not say].
    #[arg(long, value_name = "NM", allow_negative_numbers = true)]
    nut_torque_nm: Option<f64>,
    /// Speed at which the pinion is turned [default: 20].
    #[arg(long, value_name = "RPM", allow_negative_numbers = true)]
    turn_rpm: Option<f64>,
    /// Temperature of oil and bearings [default: 20].
    #[arg(long, value_name = "C", allow_negative_numbers = true)]
    temperature_c: Option<f64>,
    /// Table over spacer length: first length.
    #[arg(long, value_name = "MM", allow_negative_numbers = true, requires_all = ["spacer_to", "step"],
        conflicts_with_all = ["spacer_mm", "nut_torque_from"])]
    spacer_from: Option<f64>,
    /// Table over spacer length: last length.
    #[arg(long, value_name = "MM", allow_negative_numbers = true, requires = "spacer_from")]
    spacer_to: Option<f64>,
    /// Table over nut torque: first torque.
    #[arg(long, value_name = "NM", allow_negative_numbers = true, requires_all = ["nut_torque_to", "step"],
        conflicts_with = "nut_torque_nm")]
    nut_torque_from: Option<f64>,
    /// Table over nut torque: last torque.
    #[arg(long, value_name = "NM", allow_negative_numbers = true, requires = "nut_torque_from")]
    nut_torque_to: Option<f64>,
    /// Step of the table, mm or N·m.
    #[arg(long, value_name = "STEP", allow_negative_numbers = true)]
    step: Option<f64>,
    /// Write the chart of rotating torque with its windows into an SVG file.
    #[arg(long, value_name = "OUT.svg")]
    picture: Option<PathBuf>,
    /// One JSON document (a list of them for a table).
    #[arg(long, conflicts_with = "csv")]
    json: bool,
    /// The table as comma-separated values.
    #[arg(long, requires = "step")]
    csv: bool,
}

impl PreloadArguments {
    fn request(&self) -> Request {
        Request {
            support: self.support.clone(),
            spacer_mm: self.spacer_mm,
            nut_torque_nm: self.nut_torque_nm,
            turn_rpm: self.turn_rpm,
            temperature_c: self.temperature_c,
        }
    }

    fn sweep(&self) -> Result<Option<Sweep>, Failure> {
        let step = self.step.unwrap_or_default();
        let over = |over, from, to| Sweep { over, from, to, step };
        match (
            self.spacer_from.zip(self.spacer_to),
            self.nut_torque_from.zip(self.nut_torque_to),
        ) {
            (Some((from, to)), _) => Ok(Some(over(Over::Spacer, from, to))),
            (None, Some((from, to))) => Ok(Some(over(Over::NutTorque, from, to))),
            (None, None) if self.step.is_some() => Err(Failure::bad_input(say!("preload-step-alone"))),
            (None, None) => Ok(None),
        }
    }
}

/// Computes one case or a table, and draws the chart where one is asked for.
pub(super) fn run(arguments: &PreloadArguments) -> Result<String, Failure> {
    let request = arguments.request();
    let text = match &arguments.sweep()? {
        None if arguments.json => preload::document(&request)?,
        None => preload::text(&request)?,
        Some(sweep) if arguments.json => table::documents(&request, sweep)?,
        Some(sweep) if arguments.csv => table::csv(&request, sweep)?,
        Some(sweep) => table::text(&request, sweep)?,
    };
    let Some(file) = &arguments.picture else {
        return Ok(text);
    };
    preload::picture(&request, file)?;
    if arguments.json || arguments.csv {
        Ok(text)
    } else {
        let written = say!("files-picture-written", path = file.display().to_string());
        Ok([text, written].join("\n\n"))
    }
}
