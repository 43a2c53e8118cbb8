//! Par: what an attempt should take.
//!
//! The rule, until somebody plays every seed: whoever knows only the depth shim that was fitted before builds with it, sees
//! the print, and halves what is left of the error in depth with each further build until it lies inside of its band. Every
//! build is checked once. So par is the number of halvings; its minutes and its parts are those of the builds, by the
//! tariff of the bench. Where only the pinion is built there is nothing to halve: no tear-down. Where the gears do
//! not belong together, two tear-downs bracket the print and show the numbers.
//!
//! It does not know the chart, which can do better than halving, nor readings that mislead; score takes tear-downs and
//! parts only beyond par and one more.

use super::counted::Counted;
use super::prepared::{Exercise, ExerciseError};
use super::scenario::Fitted;
use crate::axle::{Layout, Truth, settle};
use crate::bench::{Part, ShimPiece, Start, Tariff};

/// What an attempt should take.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Par {
    /// Tear-downs.
    pub teardowns: u32,
    /// Minutes.
    pub minutes: f64,
    /// Money for parts.
    pub money: f64,
}

/// Most halvings that are asked of anybody.
const MOST_HALVINGS: u32 = 6;
/// Tear-downs that show that an axle cannot be set right.
const TO_SAY_NO: u32 = 2;
/// Minutes after which a wheel fitted warm is cold enough for its bolts.
const COOLING_MINUTES: f64 = 35.0;
/// Steps of a nut on a sleeve, each with turns and a reading.
const SLEEVE_STEPS: usize = 8;

const WHEEL_ON: &[&str] = &["clean", "clean", "heat_wheel", "fit_wheel", "tighten_ring_bolts"];
const RINGS_ON: &[&str] = &["press", "press", "press"];
const PINION_IN: &[&str] = &[
    "fit_shims",
    "fit_spacer",
    "insert_pinion",
    "fit_seal",
    "fit_nut",
    "tighten_nut",
    "turn",
];
const PINION_OUT: &[&str] = &[
    "remove_nut",
    "remove_seal",
    "remove_pinion",
    "remove_spacer",
    "pull_off",
    "press",
];
const SLEEVE_STEP: &[&str] = &["turn_nut", "turn", "measure"];
const CARRIER_IN: &[&str] = &["set_carrier_in", "fit_caps", "tighten_caps", "turn"];
const BY_SHIMS: &[&str] = &["fit_shims", "fit_shims", "spread_case", "release_spreader"];
const BY_ADJUSTERS: &[&str] = &["turn_adjuster", "turn_adjuster", "fit_lock", "fit_lock"];
const CARRIER_OUT: &[&str] = &["remove_caps", "lift_carrier_out"];
const CARTRIDGE_SHIM: &[&str] = &["unbolt_cartridge", "fit_shims", "bolt_cartridge"];
/// Rolling torque, lash at three places, a print.
const CHECKED: &[&str] = &[
    "turn",
    "measure",
    "measure",
    "measure",
    "measure",
    "brush_paste",
    "roll",
    "measure",
];
const CHECKED_ALONE: &[&str] = &["turn", "measure"];

/// Par of a seed.
///
/// # Errors
/// [`ExerciseError`] for a seed whose axle cannot be.
pub fn par(exercise: &Exercise, seed: u64) -> Result<Par, ExerciseError> {
    let scenario = exercise.scenario();
    let truth = exercise.truth(seed);
    let meshed = scenario.counts.iter().any(|c| c.needs_mesh());
    let depth = scenario
        .counts
        .iter()
        .any(|c| matches!(c, Counted::Depth | Counted::Print));
    let teardowns = if !truth.numbers_match() {
        TO_SAY_NO
    } else if depth {
        halvings(first_depth_mm(exercise, &truth, seed)?, scenario.targets.depth_mm[0])
    } else {
        0
    };
    let tariff = Tariff::default();
    let minutes = |names: &[&[&str]]| -> f64 {
        let all = names.iter().flat_map(|list| list.iter());
        all.map(|name| tariff.minutes_of(name)).sum()
    };
    let layout = exercise.axle().layout();
    let sleeve: Vec<&str> = if layout.has_sleeve() {
        SLEEVE_STEP.repeat(SLEEVE_STEPS)
    } else {
        Vec::new()
    };
    let sides = if layout.has_sleeve() { BY_SHIMS } else { BY_ADJUSTERS };
    let pinion = [PINION_IN, &sleeve];
    let checked = if meshed { CHECKED } else { CHECKED_ALONE };
    let mut total = minutes(&[checked]);
    let mut money = 0.0;
    let price = |parts: &[Part]| -> f64 { parts.iter().map(|p| tariff.price_of(*p)).sum() };
    if scenario.start.fitted != Fitted::Everything {
        total += minutes(&pinion) + minutes(&[RINGS_ON]);
        if layout == Layout::B && meshed {
            total += minutes(&[&["bolt_cartridge"]]);
        }
        money += price(first_parts(layout));
    }
    if scenario.start.fitted == Fitted::Nothing && meshed {
        total += minutes(&[WHEEL_ON]) + COOLING_MINUTES;
    }
    if meshed && scenario.start.fitted != Fitted::Everything {
        total += minutes(&[CARRIER_IN, sides]);
    }
    let again = if layout == Layout::B {
        minutes(&[CARTRIDGE_SHIM])
    } else {
        minutes(&[CARRIER_OUT, PINION_OUT, CARRIER_IN, BY_ADJUSTERS]) + minutes(&pinion)
    };
    let times = f64::from(teardowns);
    total += times * (again + minutes(&[checked]));
    money += times * price(parts_again(layout));
    Ok(Par {
        teardowns,
        minutes: total,
        money,
    })
}

/// Parts of single use that go in with the first build; nut and bolts lie on the bench unused.
fn first_parts(layout: Layout) -> &'static [Part] {
    if layout.has_sleeve() {
        &[Part::Sleeve, Part::Seal]
    } else {
        &[Part::Seal]
    }
}

/// Parts of single use that another depth shim takes.
fn parts_again(layout: Layout) -> &'static [Part] {
    match layout {
        Layout::A => &[Part::Sleeve, Part::Seal, Part::Nut],
        Layout::B => &[],
        Layout::C => &[Part::Seal, Part::Nut],
    }
}

/// Price of all parts of single use: one refit of everything.
pub(super) fn refit_price(exercise: &Exercise, tariff: &Tariff) -> f64 {
    let sleeve = exercise.axle().layout().has_sleeve().then_some(Part::Sleeve);
    let parts = [Part::Seal, Part::Nut, Part::RingBolts].into_iter().chain(sleeve);
    parts.map(|p| tariff.price_of(p)).sum()
}

/// How often an error has to be halved until it is no more than `within_mm`.
fn halvings(error_mm: f64, within_mm: f64) -> u32 {
    let mut left = error_mm.abs();
    let mut count = 0;
    while left > within_mm && count < MOST_HALVINGS {
        left *= 0.5;
        count += 1;
    }
    count
}

/// P with the depth shim that was fitted before, set up by careful hands, mm; the designed place stands for the best one.
fn first_depth_mm(exercise: &Exercise, truth: &Truth, seed: u64) -> Result<f64, ExerciseError> {
    let axle = exercise.axle();
    let (kit, packs) = ShimPiece::usual_kit(axle, seed, Some(exercise.fitted_before(truth)?));
    let torque_nm = exercise.scenario().targets.nut_torque_nm;
    let Start::Assembled { assembly, .. } = Start::whole(axle, truth, &kit, &packs, torque_nm)? else {
        return Ok(0.0);
    };
    let built = settle(axle, truth, &assembly)?;
    Ok(built.placement.map_or(0.0, |p| p.pinion_axial_mm))
}
