//! `lashwright preload SUPPORT`

use std::path::PathBuf;

use crate::document::preload::PreloadDocument;
use crate::job::preload::{Over, Preload, Request, Step, Sweep, TorqueWindow, WindowVerdict, preload, table};
use crate::job::shop_units::{foot_pounds, inch_pounds, inches, number, pounds_force, signed};
use crate::job::{Failure, preload_picture};

use crate::words::say;

use super::Answer;

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
        let written = say!("files-picture-written", path = file.display().to_string());
        Ok([text, written].join("\n\n"))
    }
}

fn json(document: &impl serde::Serialize) -> Answer {
    serde_json::to_string_pretty(document).map_err(Failure::of_program)
}

/// The conditions in one line.
fn conditions_line(case: &Preload, of_row: Option<Over>, default_torque: bool) -> String {
    let c = &case.conditions;
    let mut parts = Vec::new();
    if of_row != Some(Over::Spacer) {
        parts.push(say!(
            "preload-spacer",
            mm = number(c.spacer_mm, 3),
            inches = number(inches(c.spacer_mm), 4)
        ));
    }
    if of_row != Some(Over::NutTorque) {
        let (nm, ft_lb) = (number(c.nut_torque_nm, 1), number(foot_pounds(c.nut_torque_nm), 0));
        parts.push(if default_torque {
            say!("preload-nut-usual", nm = nm, ft_lb = ft_lb)
        } else {
            say!("preload-nut", nm = nm, ft_lb = ft_lb)
        });
    }
    parts.push(say!("preload-turned", rpm = number(c.turn_rpm, 0)));
    parts.push(say!(
        "preload-temperature",
        celsius = number(c.temperature_c, 0),
        viscosity = number(case.running.viscosity_mm2_s, 0)
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
    let mut force = |name: String, newtons: f64| {
        lines.push(measure_line(
            &name,
            [
                (number(1.0e-3 * newtons, 2), "kN"),
                (number(pounds_force(newtons), 0), "lbf"),
            ],
        ));
    };
    force(say!("preload-clamp"), s.clamp_n);
    force(say!("preload-carried-by-spacer"), s.spacer_n);
    force(say!("preload-of-bearings"), s.preload_n);
    let mut micrometres = |name: String, millimetres: f64| {
        lines.push(measure_line(
            &name,
            [
                (number(1.0e3 * millimetres, 1), "µm"),
                (number(inches(millimetres), 5), "in"),
            ],
        ));
    };
    micrometres(say!("preload-end-play"), s.play_mm);
    micrometres(say!("preload-head-gives"), s.head_deflection_mm);
    micrometres(say!("preload-tail-gives"), s.tail_deflection_mm);
    micrometres(say!("preload-pinion-out"), s.pinion_shift_mm);
    let mut millimetres = |name: String, length_mm: f64| {
        lines.push(measure_line(
            &name,
            [(number(length_mm, 4), "mm"), (number(inches(length_mm), 5), "in")],
        ));
    };
    millimetres(say!("preload-spacer-loaded"), s.spacer_loaded_length_mm);
    if case.support.has_sleeve() {
        millimetres(say!("preload-crushed"), s.memory.plastic_shortening_mm);
    }
    lines.push(String::new());
    lines.push(format!(
        "{:<28}{:>20} {:>23}",
        say!("preload-torque"),
        say!("preload-rotating"),
        say!("preload-breakaway")
    ));
    for (name, rolling, breakaway) in [
        (
            say!("preload-head-bearing"),
            case.rolling.head_bearing_nm,
            case.breakaway.head_bearing_nm,
        ),
        (
            say!("preload-tail-bearing"),
            case.rolling.tail_bearing_nm,
            case.breakaway.tail_bearing_nm,
        ),
        (say!("preload-seal"), case.rolling.seal_nm, case.breakaway.seal_nm),
        (say!("preload-total"), case.rolling.total_nm, case.breakaway.total_nm),
    ] {
        lines.push(format!("{name:<28}{} {}", both_units(rolling), both_units(breakaway)));
    }
    lines.push(String::new());
    lines.extend(window_lines(case));
    lines.extend(step_line(case));
    lines.extend(case.notes.iter().map(|note| say!("preload-note", what = note.clone())));
    lines.push(say!("preload-caution"));
    lines.join("\n")
}

fn both_units(torque_nm: f64) -> String {
    let (metric, inch) = (number(torque_nm, 2), number(inch_pounds(torque_nm), 1));
    let [nm, in_lb] = ["N·m", "in·lb"];
    format!("{metric:>7} {nm} {inch:>5} {in_lb}")
}

/// A name with its value in two systems of units.
fn measure_line(name: &str, [(metric, unit), (inch, other)]: [(String, &str); 2]) -> String {
    format!("{name:<28}{metric:>9} {unit} {inch:>9} {other}")
}

/// Where the preload lies for new and for run-in bearings.
fn window_lines(case: &Preload) -> Vec<String> {
    [
        (
            say!("preload-new-bearings"),
            TorqueWindow::new_bearings(&case.support),
            case.rolling_new_nm,
        ),
        (
            say!("preload-run-in-bearings"),
            TorqueWindow::run_in_bearings(&case.support),
            case.rolling_run_in_nm,
        ),
    ]
    .into_iter()
    .map(|(name, window, torque)| {
        let low = number(inch_pounds(window.low_nm), 0);
        let high = number(inch_pounds(window.high_nm), 0);
        let feels = number(inch_pounds(torque), 1);
        let said = match window.verdict(torque) {
            WindowVerdict::Low => say!("preload-window-low", low = low, high = high, feels = feels),
            WindowVerdict::Inside => say!("preload-window-inside", low = low, high = high, feels = feels),
            WindowVerdict::High => say!("preload-window-high", low = low, high = high, feels = feels),
        };
        format!("{name:<16} {said}")
    })
    .collect()
}

/// What the next small change would do: a shim for a solid spacer, a degree of the nut for a sleeve.
fn step_line(case: &Preload) -> Option<String> {
    let shown = |step: Step| {
        (
            signed(1.0e-3 * step.preload_n, 2),
            signed(inch_pounds(step.rolling_nm), 1),
        )
    };
    Some(if case.support.has_sleeve() {
        let (preload, torque) = shown(case.with_a_degree_more()?);
        say!("preload-degree-more", preload = preload, torque = torque)
    } else {
        let (preload, torque) = shown(case.with_a_thousandth_more_shim()?);
        say!("preload-shim-more", preload = preload, torque = torque)
    })
}

/// Heading and width of a column.
struct Column {
    name: String,
    unit: &'static str,
    width: usize,
}

impl Column {
    const fn new(name: String, unit: &'static str, width: usize) -> Self {
        Self { name, unit, width }
    }
}

/// A rotating torque in both units, with a mark where it lies outside its window.
fn feel(torque_nm: f64, window: TorqueWindow) -> String {
    let mark = match window.verdict(torque_nm) {
        WindowVerdict::Low => say!("preload-mark-low"),
        WindowVerdict::Inside => say!("preload-mark-inside"),
        WindowVerdict::High => say!("preload-mark-high"),
    };
    format!(
        "{mark:<4} {:>5} ({})",
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
    let ends = |window: TorqueWindow| [window.low_nm, window.high_nm].map(|nm| number(inch_pounds(nm), 0));
    let [low, high] = ends(TorqueWindow::new_bearings(&first.support));
    lines.push(say!("preload-table-window-new", low = low, high = high));
    let [low, high] = ends(TorqueWindow::run_in_bearings(&first.support));
    lines.push(say!("preload-table-window-run-in", low = low, high = high));
    lines.push(String::new());
    let own = first.friction_is_unusual();
    let mut columns = vec![match over {
        Over::Spacer => Column::new(say!("preload-column-spacer"), "mm", 8),
        Over::NutTorque => Column::new(say!("preload-column-nut"), "N·m", 8),
    }];
    if sleeve {
        columns.push(Column::new(say!("preload-column-past-touching"), "°", 19));
    }
    columns.push(Column::new(say!("preload-column-end-play"), "mm", 10));
    columns.push(Column::new(say!("preload-column-preload"), "kN", 9));
    if own {
        columns.push(Column::new(say!("preload-column-as-filed"), "in·lb", 20));
    }
    columns.push(Column::new(say!("preload-column-new"), "in·lb (N·m)", 22));
    columns.push(Column::new(say!("preload-column-run-in"), "in·lb (N·m)", 22));
    columns.push(Column::new(say!("preload-column-pinion-out"), "µm", 13));
    let line = |cells: Vec<String>| {
        let padded = cells
            .iter()
            .zip(&columns)
            .map(|(cell, column)| format!("{cell:>0$}", column.width));
        padded.collect::<Vec<_>>().concat()
    };
    lines.push(line(columns.iter().map(|c| c.name.clone()).collect()));
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
        lines.push(say!("preload-table-spacers"));
    }
    lines.push(say!("preload-caution"));
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
