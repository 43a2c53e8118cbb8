//! One case, computed.

use crate::bearing::friction::Running;
use crate::bearing::{Overload, SpacerMemory, Support, Tightened};
use crate::job::Failure;
use crate::job::supports::FoundSupport;
use crate::report::preload::{Conditions, NEW_FRICTION_FACTOR, Preload, RUN_IN_FRICTION_FACTOR};
use crate::words::{self, say};

/// Speed above which the oil's failing to return in time is no longer nothing, r/min.
const HAND_SPEED_RPM: f64 = 120.0;

/// Viscosity at which gear oil counts as solid, mm²/s: 150 Pa s (limit of SAE J306) at 0.9 g/cm³.
const SOLID_OIL_MM2_S: f64 = 167_000.0;

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
