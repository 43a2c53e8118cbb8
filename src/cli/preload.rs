//! `lashwright preload SUPPORT`

use std::path::PathBuf;

use crate::document::preload::PreloadDocument;
use crate::job::preload::{Over, Preload, Request, Sweep, TorqueWindow, WindowVerdict, preload, table};
use crate::job::shop_units::{foot_pounds, inch_pounds, inches, number, pounds_force, signed};
use crate::job::{Failure, preload_picture, supports};

use super::Answer;

/// Arguments of `preload`.
///
/// Without a table and without options it shows one case: the support as its file says.
#[derive(Debug, Clone, PartialEq, clap::Args)]
pub struct PreloadArguments {
    /// Pinion support: an embedded name or a file
    #[arg(value_name = "SUPPORT", help = support_help())]
    support: String,
    /// Free length of the spacer with its shims [default: as in the file]
    #[arg(long, value_name = "MM", allow_negative_numbers = true)]
    spacer_mm: Option<f64>,
    /// Torque on the pinion nut [default: what the support is meant for; 217 (160 ft·lb) where its file does not say]
    #[arg(long, value_name = "NM", allow_negative_numbers = true)]
    nut_torque_nm: Option<f64>,
    /// Speed at which the pinion is turned [default: 20]
    #[arg(long, value_name = "RPM", allow_negative_numbers = true)]
    turn_rpm: Option<f64>,
    /// Temperature of oil and bearings [default: 20]
    #[arg(long, value_name = "C", allow_negative_numbers = true)]
    temperature_c: Option<f64>,
    /// Table over spacer length: first length
    #[arg(long, value_name = "MM", allow_negative_numbers = true, requires_all = ["spacer_to", "step"],
        conflicts_with_all = ["spacer_mm", "nut_torque_from"])]
    spacer_from: Option<f64>,
    /// Table over spacer length: last length
    #[arg(long, value_name = "MM", allow_negative_numbers = true, requires = "spacer_from")]
    spacer_to: Option<f64>,
    /// Table over nut torque: first torque
    #[arg(long, value_name = "NM", allow_negative_numbers = true, requires_all = ["nut_torque_to", "step"],
        conflicts_with = "nut_torque_nm")]
    nut_torque_from: Option<f64>,
    /// Table over nut torque: last torque
    #[arg(long, value_name = "NM", allow_negative_numbers = true, requires = "nut_torque_from")]
    nut_torque_to: Option<f64>,
    /// Step of the table, mm or N·m
    #[arg(long, value_name = "STEP", allow_negative_numbers = true)]
    step: Option<f64>,
    /// Write the chart of rotating torque with its windows into an SVG file
    #[arg(long, value_name = "OUT.svg")]
    picture: Option<PathBuf>,
    /// One JSON document (a list of them for a table)
    #[arg(long, conflicts_with = "csv")]
    json: bool,
    /// The table as comma-separated values
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
            (None, None) if self.step.is_some() => Err(Failure::input(
                "error: --step belongs to a table: give --spacer-from and --spacer-to, or --nut-torque-from and \
                 --nut-torque-to.",
            )),
            (None, None) => Ok(None),
        }
    }
}

/// What `--help` says of the support, with the names that ship.
fn support_help() -> String {
    format!(
        "Pinion support: an embedded name ({}) or a file",
        supports::names().join(", ")
    )
}

/// Computes one case or a table, and draws the chart where one is asked for.
pub(super) fn run(arguments: &PreloadArguments) -> Answer {
    let request = arguments.request();
    let sweep = arguments.sweep()?;
    let text = match &sweep {
        None => {
            let case = preload(&request)?;
            if arguments.json {
                json(&case.document())?
            } else {
                case_text(&case, request.nut_torque_nm.is_none())
            }
        }
        Some(sweep) => {
            let rows = table(&request, sweep)?;
            if arguments.json {
                json(&rows.iter().map(Preload::document).collect::<Vec<PreloadDocument>>())?
            } else if arguments.csv {
                csv(&rows)
            } else {
                table_text(&rows, sweep.over)
            }
        }
    };
    let Some(file) = &arguments.picture else {
        return Ok(text);
    };
    preload_picture::write(&preload(&request)?, file)?;
    if arguments.json || arguments.csv {
        Ok(text)
    } else {
        Ok(format!("{text}\n\nPicture written to {}", file.display()))
    }
}

fn json(document: &impl serde::Serialize) -> Answer {
    serde_json::to_string_pretty(document).map_err(|error| Failure::other(format!("error: {error}.")))
}

const CAUTION: &str =
    "Windows: common practice, no source. Simulated values are never a specification for a real axle.";

/// The conditions in one line.
fn conditions_line(case: &Preload, of_row: Option<Over>, default_torque: bool) -> String {
    let c = &case.conditions;
    let mut parts = Vec::new();
    if of_row != Some(Over::Spacer) {
        parts.push(format!(
            "spacer {} mm ({} in)",
            number(c.spacer_mm, 3),
            number(inches(c.spacer_mm), 4)
        ));
    }
    if of_row != Some(Over::NutTorque) {
        let usual = if default_torque {
            ", not given, so the usual value"
        } else {
            ""
        };
        parts.push(format!(
            "nut {} N·m ({} ft·lb{usual})",
            number(c.nut_torque_nm, 1),
            number(foot_pounds(c.nut_torque_nm), 0)
        ));
    }
    parts.push(format!("turned at {} r/min", number(c.turn_rpm, 0)));
    parts.push(format!(
        "{} °C (oil {} mm²/s)",
        number(c.temperature_c, 0),
        number(case.running.viscosity_mm2_s, 0)
    ));
    parts.join(", ")
}

fn case_text(case: &Preload, default_torque: bool) -> String {
    let s = &case.state;
    let mut lines = vec![
        case.support.name.clone(),
        conditions_line(case, None, default_torque),
        String::new(),
    ];
    let mut force = |name: &str, newtons: f64| {
        lines.push(format!(
            "{name:<28}{:>9} kN {:>9} lbf",
            number(1.0e-3 * newtons, 2),
            number(pounds_force(newtons), 0)
        ));
    };
    force("clamp of the nut", s.clamp_n);
    force("carried by the spacer", s.spacer_n);
    force("preload of the bearings", s.preload_n);
    let mut micrometres = |name: &str, millimetres: f64| {
        lines.push(format!(
            "{name:<28}{:>9} µm {:>9} in",
            number(1.0e3 * millimetres, 1),
            number(inches(millimetres), 5)
        ));
    };
    micrometres("end play", s.play_mm);
    micrometres("head bearing gives way", s.head_deflection_mm);
    micrometres("tail bearing gives way", s.tail_deflection_mm);
    micrometres("pinion moves outward", s.pinion_shift_mm);
    lines.push(format!(
        "{:<28}{:>9} mm {:>9} in",
        "spacer under its load",
        number(s.spacer_loaded_length_mm, 4),
        number(inches(s.spacer_loaded_length_mm), 5)
    ));
    if case.support.has_sleeve() {
        lines.push(format!(
            "{:<28}{:>9} mm {:>9} in",
            "sleeve crushed for good by",
            number(s.memory.plastic_shortening_mm, 4),
            number(inches(s.memory.plastic_shortening_mm), 5)
        ));
    }
    lines.push(String::new());
    lines.push(format!("{:<28}{:>20} {:>23}", "torque", "rolling", "breakaway"));
    for (name, rolling, breakaway) in [
        (
            "head bearing",
            case.rolling.head_bearing_nm,
            case.breakaway.head_bearing_nm,
        ),
        (
            "tail bearing",
            case.rolling.tail_bearing_nm,
            case.breakaway.tail_bearing_nm,
        ),
        ("seal", case.rolling.seal_nm, case.breakaway.seal_nm),
        ("total", case.rolling.total_nm, case.breakaway.total_nm),
    ] {
        lines.push(format!("{name:<28}{} {}", both_units(rolling), both_units(breakaway)));
    }
    lines.push(String::new());
    lines.extend(window_lines(case));
    lines.extend(step_line(case));
    lines.extend(case.notes.iter().map(|note| format!("Note: {note}")));
    lines.push(CAUTION.to_owned());
    lines.join("\n")
}

fn both_units(torque_nm: f64) -> String {
    format!(
        "{:>7} N·m {:>5} in·lb",
        number(torque_nm, 2),
        number(inch_pounds(torque_nm), 1)
    )
}

/// Where the preload lies for new and for run-in bearings.
fn window_lines(case: &Preload) -> Vec<String> {
    [
        (
            "new bearings",
            TorqueWindow::new_bearings(&case.support),
            case.rolling_new_nm,
        ),
        (
            "run-in bearings",
            TorqueWindow::run_in_bearings(&case.support),
            case.rolling_run_in_nm,
        ),
    ]
    .into_iter()
    .map(|(name, window, torque)| {
        format!(
            "{name:<16} window {} to {} in·lb; would feel {} in·lb: {}",
            number(inch_pounds(window.low_nm), 0),
            number(inch_pounds(window.high_nm), 0),
            number(inch_pounds(torque), 1),
            verdict_words(window.verdict(torque))
        )
    })
    .collect()
}

fn verdict_words(verdict: WindowVerdict) -> &'static str {
    match verdict {
        WindowVerdict::Low => "too little",
        WindowVerdict::Inside => "in the window",
        WindowVerdict::High => "too much",
    }
}

/// What the next small change would do: a shim for a solid spacer, a degree of the nut for a sleeve.
fn step_line(case: &Preload) -> Option<String> {
    let (what, step) = if case.support.has_sleeve() {
        ("One degree more of the nut", case.with_a_degree_more()?)
    } else {
        ("0.001 in (0.025 mm) more shim", case.with_a_thousandth_more_shim()?)
    };
    Some(format!(
        "{what}: preload {} kN, rotating torque {} in·lb",
        signed(1.0e-3 * step.preload_n, 2),
        signed(inch_pounds(step.rolling_nm), 1)
    ))
}

/// Heading and width of a column.
struct Column {
    name: &'static str,
    unit: &'static str,
    width: usize,
}

impl Column {
    const fn new(name: &'static str, unit: &'static str, width: usize) -> Self {
        Self { name, unit, width }
    }
}

/// A rotating torque in both units, with a mark where it lies outside its window.
fn feel(torque_nm: f64, window: TorqueWindow) -> String {
    let mark = match window.verdict(torque_nm) {
        WindowVerdict::Low => "low ",
        WindowVerdict::Inside => "ok  ",
        WindowVerdict::High => "high",
    };
    format!(
        "{mark} {:>5} ({})",
        number(inch_pounds(torque_nm), 1),
        number(torque_nm, 2)
    )
}

fn table_text(rows: &[Preload], over: Over) -> String {
    let Some(first) = rows.first() else {
        return String::new();
    };
    let sleeve = first.support.has_sleeve();
    let mut lines = vec![first.support.name.clone(), conditions_line(first, Some(over), false)];
    for (name, window) in [
        ("new bearings", TorqueWindow::new_bearings(&first.support)),
        ("run-in bearings", TorqueWindow::run_in_bearings(&first.support)),
    ] {
        lines.push(format!(
            "window for {name}: {} to {} in·lb",
            number(inch_pounds(window.low_nm), 0),
            number(inch_pounds(window.high_nm), 0)
        ));
    }
    lines.push(String::new());
    let own = first.friction_is_unusual();
    let mut columns = vec![match over {
        Over::Spacer => Column::new("spacer", "mm", 8),
        Over::NutTorque => Column::new("nut", "N·m", 8),
    }];
    if sleeve {
        columns.push(Column::new("nut past touching", "°", 19));
    }
    columns.push(Column::new("end play", "mm", 10));
    columns.push(Column::new("preload", "kN", 9));
    if own {
        columns.push(Column::new("rolling, as filed", "in·lb", 19));
    }
    columns.push(Column::new("rolling, new", "in·lb (N·m)", 22));
    columns.push(Column::new("rolling, run in", "in·lb (N·m)", 22));
    columns.push(Column::new("pinion out", "µm", 12));
    let line = |cells: Vec<String>| {
        let padded = cells
            .iter()
            .zip(&columns)
            .map(|(cell, column)| format!("{cell:>0$}", column.width));
        padded.collect::<Vec<_>>().concat()
    };
    lines.push(line(columns.iter().map(|c| c.name.to_owned()).collect()));
    lines.push(line(columns.iter().map(|c| c.unit.to_owned()).collect()));
    for row in rows {
        let mut cells = vec![match over {
            Over::Spacer => number(row.conditions.spacer_mm, 3),
            Over::NutTorque => number(row.conditions.nut_torque_nm, 1),
        }];
        if sleeve {
            cells.push(number(row.nut_past_touching_deg(), 1));
        }
        cells.push(number(row.state.play_mm, 3));
        cells.push(number(1.0e-3 * row.state.preload_n, 2));
        if own {
            cells.push(number(inch_pounds(row.rolling.total_nm), 1));
        }
        cells.push(feel(row.rolling_new_nm, TorqueWindow::new_bearings(&row.support)));
        cells.push(feel(row.rolling_run_in_nm, TorqueWindow::run_in_bearings(&row.support)));
        cells.push(number(1.0e3 * row.state.pinion_shift_mm, 1));
        lines.push(line(cells));
    }
    lines.push(String::new());
    if sleeve && over == Over::NutTorque {
        lines.push(
            "Each row is a new sleeve tightened once; going down the rows is the same sleeve tightened on.".to_owned(),
        );
    }
    lines.push(CAUTION.to_owned());
    lines.join("\n")
}

/// Plain numbers with a full stop, one row a line.
fn csv(rows: &[Preload]) -> String {
    let mut lines = vec![
        "spacer_length_mm,nut_torque_nm,nut_past_touching_deg,clamp_n,spacer_n,preload_n,play_um,spacer_loaded_length_mm,\
         pinion_shift_um,rolling_torque_nm,breakaway_nm,rolling_new_nm,rolling_run_in_nm"
            .to_owned(),
    ];
    for row in rows {
        let s = &row.state;
        let values = [
            row.conditions.spacer_mm,
            row.conditions.nut_torque_nm,
            row.nut_past_touching_deg(),
            s.clamp_n,
            s.spacer_n,
            s.preload_n,
            1.0e3 * s.play_mm,
            s.spacer_loaded_length_mm,
            1.0e3 * s.pinion_shift_mm,
            row.rolling.total_nm,
            row.breakaway.total_nm,
            row.rolling_new_nm,
            row.rolling_run_in_nm,
        ];
        lines.push(values.map(|v| v.to_string()).join(","));
    }
    lines.join("\n")
}
