//! What people ask for about a pinion support, read against it.

use crate::bearing::{LengthFault, Support};
use crate::job::supports::FoundSupport;
use crate::job::{AtFault, Failure};
use crate::quantity;
use crate::report::preload::{Conditions, Over};
use crate::report::problem::error_line;
use crate::words::{self, say};

/// Nut torque where neither the request nor the file gives one, N m: 160 ft·lb, a usual pinion nut.
const DEFAULT_NUT_TORQUE_NM: f64 = 217.0;

/// Speed at which a pinion is turned by hand, r/min.
const DEFAULT_TURN_RPM: f64 = 20.0;

/// Temperature of the shop, °C.
const DEFAULT_TEMPERATURE_C: f64 = 20.0;

/// Most rows of a table.
pub const MOST_ROWS: u32 = 2000;

/// Unit of temperatures.
const CELSIUS: &str = "°C";

/// What people ask for. `None` takes the file's or the usual value.
#[derive(Debug, Clone, PartialEq)]
pub struct Request {
    /// Name of an embedded support, or a file.
    pub support: String,
    /// Free length of the spacer, mm.
    pub spacer_mm: Option<f64>,
    /// Nut torque, N m.
    pub nut_torque_nm: Option<f64>,
    /// Speed of turning, r/min.
    pub turn_rpm: Option<f64>,
    /// Temperature, °C.
    pub temperature_c: Option<f64>,
}

/// A table's rows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sweep {
    /// What changes from row to row.
    pub over: Over,
    /// First value.
    pub from: f64,
    /// Last value, when the step falls on it.
    pub to: f64,
    /// Step, above 0.
    pub step: f64,
}

impl Sweep {
    /// How many rows it has; `None` when its numbers make none or too many.
    fn rows(&self) -> Option<u32> {
        let steps = (self.to - self.from) / self.step + 1.0e-9;
        // Written so that NaN and a step of 0 or less are refused as well.
        if self.step > 0.0 && steps >= 0.0 && steps < f64::from(MOST_ROWS) {
            (1..=MOST_ROWS).take_while(|row| f64::from(row - 1) <= steps).last()
        } else {
            None
        }
    }

    /// What the table runs over, row by row.
    pub(super) fn values(&self) -> Vec<f64> {
        (0..self.rows().unwrap_or(0))
            .map(|i| self.from + f64::from(i) * self.step)
            .collect()
    }
}

/// Nut torque where none is given, N m: what the support is meant for, or [`DEFAULT_NUT_TORQUE_NM`].
fn usual_nut_torque_nm(support: &Support) -> f64 {
    support.meant_nut_torque_nm.unwrap_or(DEFAULT_NUT_TORQUE_NM)
}

/// Reads the request against the support; a sweep stands in for the value that it runs over.
pub(super) fn check(found: &FoundSupport, request: &Request, sweep: Option<&Sweep>) -> Result<Conditions, Failure> {
    let mut wrong: Vec<String> = Vec::new();
    let support = &found.support;
    let mut in_range = |option: &str, value: f64, [low, high]: [f64; 2], unit: &str| {
        if (low..=high).contains(&value) {
            return;
        }
        let [shown, low, high] = [value, low, high].map(|number| number.to_string());
        wrong.push(error_line(if unit == CELSIUS && (150.0..=300.0).contains(&value) {
            say!(
                "preload-fahrenheit",
                option = option,
                value = shown,
                low = low,
                high = high,
                unit = unit
            )
        } else {
            say!(
                "preload-out-of-range",
                option = option,
                value = shown,
                low = low,
                high = high,
                unit = unit
            )
        }));
    };
    let torques = [1.0, 10_000.0];
    let conditions = Conditions {
        spacer_mm: request.spacer_mm.unwrap_or(support.spacer.free_length_mm),
        nut_torque_nm: request.nut_torque_nm.unwrap_or_else(|| usual_nut_torque_nm(support)),
        turn_rpm: request.turn_rpm.unwrap_or(DEFAULT_TURN_RPM),
        temperature_c: request.temperature_c.unwrap_or(DEFAULT_TEMPERATURE_C),
    };
    in_range("--nut-torque-nm", conditions.nut_torque_nm, torques, "N·m");
    in_range("--turn-rpm", conditions.turn_rpm, [0.1, 1000.0], "r/min");
    in_range("--temperature-c", conditions.temperature_c, [-40.0, 150.0], CELSIUS);
    if let Some(Sweep {
        over: Over::NutTorque,
        from,
        to,
        ..
    }) = sweep
    {
        in_range("--nut-torque-from", *from, torques, "N·m");
        in_range("--nut-torque-to", *to, torques, "N·m");
    }
    let mut fits = |name: &str, value: f64| {
        if let Some(text) = length_problem(support, name, value) {
            wrong.push(text);
        }
    };
    fits("--spacer-mm", conditions.spacer_mm);
    if let Some(Sweep {
        over: Over::Spacer,
        from,
        to,
        ..
    }) = sweep
    {
        fits("--spacer-from", *from);
        fits("--spacer-to", *to);
    }
    if let Some(sweep) = sweep
        && wrong.is_empty()
        && sweep.rows().is_none()
    {
        wrong.push(error_line(say!(
            "preload-no-table",
            from = sweep.from.to_string(),
            to = sweep.to.to_string(),
            step = sweep.step.to_string(),
            most = MOST_ROWS
        )));
    }
    if wrong.is_empty() {
        Ok(conditions)
    } else {
        Err(Failure {
            fault: AtFault::Input,
            text: wrong.join("\n"),
        })
    }
}

/// What is wrong with a spacer length given on the command line.
fn length_problem(support: &Support, name: &str, value: f64) -> Option<String> {
    let fault_of = |length: f64| LengthFault::of(support.has_sleeve(), length, support.zero_preload_length_mm);
    if !(value > 0.0 && value.is_finite()) {
        return Some(error_line(say!(
            "preload-length-above-zero",
            option = name,
            value = value.to_string()
        )));
    }
    let fault = fault_of(value)?;
    let told = words::problem::support::length(fault);
    let inches = quantity::millimetres(value);
    Some(error_line(if fault_of(inches).is_none() {
        say!(
            "preload-length-inches",
            option = name,
            value = value.to_string(),
            fault = told.line(),
            mm = format!("{inches:.3}")
        )
    } else {
        say!(
            "preload-length",
            option = name,
            value = value.to_string(),
            fault = told.line()
        )
    }))
}
