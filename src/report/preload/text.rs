//! One case for people.

use crate::quantity::{N_PER_POUND_FORCE, inch_pounds, inches, number, signed};
use crate::words::{self, say};

use super::case::{Preload, Step};
use super::conditions::conditions_line;
use super::window::{TorqueWindow, WindowVerdict};

/// Forces, lengths and torques of a case; `default_torque` says that nobody named the nut torque.
pub(crate) fn text(case: &Preload, default_torque: bool) -> String {
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
                (number(newtons / N_PER_POUND_FORCE, 0), "lbf"),
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
    lines.push(say!("preload-windows-source"));
    lines.push(words::simulated());
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
