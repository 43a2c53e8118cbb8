//! A table over spacer length or nut torque, for people.

use crate::quantity::{inch_pounds, number};
use crate::words::{self, say};

use super::case::{Over, Preload};
use super::conditions::conditions_line;
use super::window::{TorqueWindow, WindowVerdict};

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

/// Rows below each other, with what they run over in the first column.
pub(crate) fn table(rows: &[Preload], over: Over) -> String {
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
    lines.push(say!("preload-windows-source"));
    lines.push(words::simulated());
    lines.join("\n")
}
