//! What a pinion support does with its nut tightened: one case, or a table over spacer length or nut torque.

use crate::bearing::friction::Running;
use crate::bearing::{LengthFault, Overload, SpacerMemory, Support, Tightened, Torque};
use crate::document::preload::PreloadDocument;
use crate::quantity;
use crate::words::{self, say};

use super::failure::error_line;
use super::supports::{self, FoundSupport};
use super::{AtFault, Failure};

/// Nut torque where neither the request nor the file gives one, N m: 160 ft·lb, a usual pinion nut.
pub const DEFAULT_NUT_TORQUE_NM: f64 = 217.0;
/// Speed at which a pinion is turned by hand, r/min.
pub const DEFAULT_TURN_RPM: f64 = 20.0;
/// Temperature of the shop, °C.
pub const DEFAULT_TEMPERATURE_C: f64 = 20.0;
/// Friction factor of new bearings: service literature says that half the drag is lost with running in.
pub const NEW_FRICTION_FACTOR: f64 = 2.0;
/// Friction factor of seated, run-in bearings.
pub const RUN_IN_FRICTION_FACTOR: f64 = 1.0;
/// Most rows of a table.
pub const MOST_ROWS: u32 = 2000;

/// Speed above which the oil's failing to return in time is no longer nothing, r/min.
const HAND_SPEED_RPM: f64 = 120.0;
/// Unit of temperatures.
const CELSIUS: &str = "°C";
/// Viscosity at which gear oil counts as solid, mm²/s: 150 Pa s (limit of SAE J306) at 0.9 g/cm³.
const SOLID_OIL_MM2_S: f64 = 167_000.0;

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

/// What a table runs over.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Over {
    /// Free length of the spacer, mm.
    Spacer,
    /// Nut torque, N m.
    NutTorque,
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

/// Under which a support is looked at, all checked.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conditions {
    /// Free length of the spacer, mm.
    pub spacer_mm: f64,
    /// Nut torque, N m.
    pub nut_torque_nm: f64,
    /// Speed of turning, r/min.
    pub turn_rpm: f64,
    /// Temperature, °C.
    pub temperature_c: f64,
}

/// One case, computed.
#[derive(Debug, Clone, PartialEq)]
pub struct Preload {
    /// Name of the support on the command line.
    pub source: String,
    /// The support with the spacer as asked for.
    pub support: Support,
    /// Under which.
    pub conditions: Conditions,
    /// Forces and lengths.
    pub state: Tightened,
    /// Speed and viscosity.
    pub running: Running,
    /// Torque that keeps the pinion turning.
    pub rolling: Torque,
    /// Torque that starts it.
    pub breakaway: Torque,
    /// The same rotating torque were the bearings new, N m.
    pub rolling_new_nm: f64,
    /// The same rotating torque were the bearings run in, N m.
    pub rolling_run_in_nm: f64,
    /// What people should know about these numbers: one sentence each.
    pub notes: Vec<String>,
}

/// A rotating torque that is aimed at, N m.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TorqueWindow {
    /// Least.
    pub low_nm: f64,
    /// Most.
    pub high_nm: f64,
}

/// What a wrench shows beside a window.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WindowVerdict {
    /// Below the window.
    Low,
    /// Inside, its ends included.
    Inside,
    /// Above it.
    High,
}

impl TorqueWindow {
    const fn in_lb(low: f64, high: f64) -> Self {
        Self {
            low_nm: low * quantity::NM_PER_INCH_POUND,
            high_nm: high * quantity::NM_PER_INCH_POUND,
        }
    }

    /// Rotating torque of new bearings: common practice, no source. A sleeve is taken for a light axle's.
    pub fn new_bearings(support: &Support) -> Self {
        if support.has_sleeve() {
            Self::in_lb(17.0, 29.0)
        } else {
            Self::in_lb(14.0, 36.0)
        }
    }

    /// Rotating torque of run-in bearings: common practice, no source.
    pub fn run_in_bearings(support: &Support) -> Self {
        if support.has_sleeve() {
            Self::in_lb(8.0, 16.0)
        } else {
            Self::in_lb(10.0, 20.0)
        }
    }

    /// Where a torque lies.
    pub fn verdict(&self, torque_nm: f64) -> WindowVerdict {
        if torque_nm < self.low_nm {
            WindowVerdict::Low
        } else if torque_nm > self.high_nm {
            WindowVerdict::High
        } else {
            WindowVerdict::Inside
        }
    }
}

/// Nut torque where none is given, N m: what the support is meant for, or [`DEFAULT_NUT_TORQUE_NM`].
pub fn usual_nut_torque_nm(support: &Support) -> f64 {
    support.meant_nut_torque_nm.unwrap_or(DEFAULT_NUT_TORQUE_NM)
}

/// Computes one case.
///
/// # Errors
/// Everything that is wrong with the file, or with the request, all at once.
pub fn preload(request: &Request) -> Result<Preload, Failure> {
    let found = supports::find(&request.support)?;
    let conditions = check(&found, request, None)?;
    solve(&found, conditions)
}

/// Computes a table; each row stands for a spacer and nut of its own, tightened for the first time.
///
/// # Errors
/// As [`preload`]; also for a table without rows or with more than [`MOST_ROWS`].
pub fn table(request: &Request, sweep: &Sweep) -> Result<Vec<Preload>, Failure> {
    let found = supports::find(&request.support)?;
    let conditions = check(&found, request, Some(sweep))?;
    sweep
        .values()
        .into_iter()
        .map(|value| {
            let row = match sweep.over {
                Over::Spacer => Conditions {
                    spacer_mm: value,
                    ..conditions
                },
                Over::NutTorque => Conditions {
                    nut_torque_nm: value,
                    ..conditions
                },
            };
            solve(&found, row)
        })
        .collect()
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

    fn values(&self) -> Vec<f64> {
        (0..self.rows().unwrap_or(0))
            .map(|i| self.from + f64::from(i) * self.step)
            .collect()
    }
}

/// The support under these conditions.
pub(super) fn solve(found: &FoundSupport, conditions: Conditions) -> Result<Preload, Failure> {
    let support = found.support.with_spacer_length_mm(conditions.spacer_mm);
    let state = support
        .tightened_to(conditions.nut_torque_nm, SpacerMemory::default())
        .map_err(|error| Failure::went_wrong(say!("preload-unsolved", why = words::error::root(error).line())))?;
    let overload = support.overload(&state);
    let tears = matches!(overload, Some(Overload::Thread { .. } | Overload::Spacer { .. }));
    if let Some(overload) = overload
        && (tears || state.spacer_loaded_length_mm <= 0.0)
    {
        return Err(Failure::bad_input(say!(
            "preload-overload",
            torque = conditions.nut_torque_nm.to_string(),
            spacer = conditions.spacer_mm.to_string(),
            what = words::error::overload(overload),
            source = found.source.clone()
        )));
    }
    let running = support.running(conditions.turn_rpm, conditions.temperature_c);
    let with_factor = |factor| {
        support
            .with_friction_factor(factor)
            .rolling_torque(state.preload_n, running)
            .total_nm
    };
    let mut notes = notes(&support, &conditions, &state, running);
    notes.extend(overload.map(|overload| say!("preload-note-overload", what = words::error::overload(overload))));
    Ok(Preload {
        source: found.source.clone(),
        conditions,
        state,
        running,
        rolling: support.rolling_torque(state.preload_n, running),
        breakaway: support.breakaway_torque(state.preload_n),
        rolling_new_nm: with_factor(NEW_FRICTION_FACTOR),
        rolling_run_in_nm: with_factor(RUN_IN_FRICTION_FACTOR),
        support,
        notes,
    })
}

/// What a small change at the bench would do.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    /// Change of preload, N.
    pub preload_n: f64,
    /// Change of rotating torque, N m.
    pub rolling_nm: f64,
}

impl Preload {
    /// As the JSON document of this case.
    pub fn document(&self) -> PreloadDocument {
        let state = &self.state;
        PreloadDocument {
            support: self.source.clone(),
            spacer_length_mm: self.conditions.spacer_mm,
            nut_torque_nm: self.conditions.nut_torque_nm,
            turn_rpm: self.conditions.turn_rpm,
            temperature_c: self.conditions.temperature_c,
            clamp_n: state.clamp_n,
            spacer_n: state.spacer_n,
            preload_n: state.preload_n,
            play_um: 1.0e3 * state.play_mm,
            spacer_loaded_length_mm: state.spacer_loaded_length_mm,
            head_deflection_um: 1.0e3 * state.head_deflection_mm,
            tail_deflection_um: 1.0e3 * state.tail_deflection_mm,
            pinion_shift_um: 1.0e3 * state.pinion_shift_mm,
            oil_viscosity_mm2_s: self.running.viscosity_mm2_s,
            rolling_torque_nm: (&self.rolling).into(),
            breakaway_nm: (&self.breakaway).into(),
        }
    }

    /// Whether the file's bearings are neither as new nor as run-in ones are taken.
    pub fn friction_is_unusual(&self) -> bool {
        let factors = [self.support.head_bearing, self.support.tail_bearing].map(|b| b.friction_factor);
        ![NEW_FRICTION_FACTOR, RUN_IN_FRICTION_FACTOR]
            .iter()
            .any(|usual| factors.iter().all(|factor| (factor - usual).abs() < 1.0e-9))
    }

    /// What 0.001 in more shim at the spacer would do, with the same nut torque.
    pub fn with_a_thousandth_more_shim(&self) -> Option<Step> {
        let longer = self
            .support
            .with_spacer_length_mm(self.conditions.spacer_mm + 1.0e-3 * quantity::MM_PER_INCH);
        let state = longer
            .tightened_to(self.conditions.nut_torque_nm, SpacerMemory::default())
            .ok()?;
        Some(self.step_to(&state))
    }

    /// What one more degree of the nut would do.
    pub fn with_a_degree_more(&self) -> Option<Step> {
        Some(self.step_to(&self.support.turned_on(&self.state, 1.0).ok()?))
    }

    fn step_to(&self, state: &Tightened) -> Step {
        let rolling = self.support.rolling_torque(state.preload_n, self.running);
        Step {
            preload_n: state.preload_n - self.state.preload_n,
            rolling_nm: rolling.total_nm - self.rolling.total_nm,
        }
    }

    /// How far the nut has turned since the bearings touched without preload, degrees; negative for end play.
    pub fn nut_past_touching_deg(&self) -> f64 {
        let closed_mm = if self.state.spacer_loose {
            self.support.pair().closing_mm(self.state.preload_n)
        } else {
            self.support.zero_preload_length_mm - self.state.spacer_loaded_length_mm
        };
        360.0 * closed_mm / self.support.nut.pitch_mm
    }
}

fn notes(support: &Support, conditions: &Conditions, state: &Tightened, running: Running) -> Vec<String> {
    let mut notes = Vec::new();
    if state.preload_n <= 0.0 && support.has_sleeve() && state.memory.plastic_shortening_mm <= 0.0 {
        notes.push(say!("preload-note-not-crushed"));
    } else if state.preload_n <= 0.0 {
        notes.push(say!("preload-note-end-play"));
    }
    if state.spacer_loose {
        notes.push(say!("preload-note-loose"));
    }
    if [support.head_bearing, support.tail_bearing].iter().any(|b| b.steep) {
        notes.push(say!("preload-note-steep"));
    }
    if conditions.turn_rpm > HAND_SPEED_RPM {
        notes.push(say!("preload-note-fast", rpm = HAND_SPEED_RPM.to_string()));
    }
    if running.viscosity_mm2_s > SOLID_OIL_MM2_S {
        notes.push(say!("preload-note-solid-oil"));
    }
    notes
}

/// Reads the request against the support; a sweep stands in for the value that it runs over.
fn check(found: &FoundSupport, request: &Request, sweep: Option<&Sweep>) -> Result<Conditions, Failure> {
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
