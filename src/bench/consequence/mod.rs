//! What operations do: one file a group of them.
//!
//! Each first asks whether the thing can be done at all, and says why not; then it changes the state. Sizes, preloads and
//! torques follow from the state by the axle's solver, never from here.

mod apart;
mod carrier;
mod nut;
mod paste;
mod pinion;
mod sheet;
mod shims;
mod wheel;

use super::answer::Record;
use super::caution::{Caution, Precaution};
use super::operation::{Cleaned, Level, Operation};
use super::part::Part;
use super::state::Bench;
use crate::axle::AxleError;

/// Why something cannot be done.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Refusal(pub(super) String);

impl From<AxleError> for Refusal {
    fn from(error: AxleError) -> Self {
        Self(format!("{error}."))
    }
}

/// Refuses with a reason.
pub(super) fn refuse<T>(reason: impl Into<String>) -> Result<T, Refusal> {
    Err(Refusal(reason.into()))
}

/// Refuses with a reason unless something holds.
pub(super) fn need(holds: bool, reason: &str) -> Result<(), Refusal> {
    if holds { Ok(()) } else { refuse(reason) }
}

/// What an operation came to, beside the changed state.
#[derive(Debug, Clone, PartialEq, Default)]
pub(super) struct Done {
    pub(super) more_minutes: f64,
    pub(super) noticed: Vec<String>,
    pub(super) record: Option<Record>,
    pub(super) bought: Vec<Part>,
    pub(super) spoiled: Vec<Part>,
    pub(super) reused: Vec<Part>,
}

impl Done {
    /// Nothing beside the changed state.
    pub(super) fn plain() -> Self {
        Self::default()
    }

    /// Something seen, heard or felt.
    pub(super) fn noticing(text: impl Into<String>) -> Self {
        Self {
            noticed: vec![text.into()],
            ..Self::default()
        }
    }

    /// Both, one after the other.
    fn and(mut self, mut other: Self) -> Self {
        self.more_minutes += other.more_minutes;
        self.noticed.append(&mut other.noticed);
        self.bought.append(&mut other.bought);
        self.spoiled.append(&mut other.spoiled);
        self.reused.append(&mut other.reused);
        self.record = other.record.or(self.record);
        self
    }
}

/// Warmer than this a wheel is no longer held in bare hands, °C.
const HOT_C: f64 = 50.0;
/// Torque above which whoever holds the flange needs a bar, N m.
const BAR_FROM_NM: f64 = 60.0;

impl Bench {
    /// Does an operation on this state.
    pub(super) fn perform(&mut self, operation: &Operation) -> Result<Done, Refusal> {
        match operation {
            Operation::Measure {
                what,
                instrument,
                set_up_again,
                stem,
            } => self.measure(*what, instrument, *set_up_again, *stem),
            Operation::CompareNumbers {} => self.compare_numbers(),
            Operation::TakeApart { to, .. } => self.take_apart(*to),
            Operation::FitShims { place, pieces } => self.fit_shims(*place, pieces),
            Operation::RemoveShims { place } => self.remove_shims(*place),
            Operation::Press { ring, force_kn, .. } => self.press(*ring, *force_kn),
            Operation::PullOff { ring, .. } => self.pull_off(*ring),
            Operation::FitSetUpBearings {} => self.fit_set_up_bearings(),
            Operation::RemoveSetUpBearings {} => self.remove_set_up_bearings(),
            Operation::FitSpacer { spacer, new } => self.fit_spacer(*spacer, *new),
            Operation::RemoveSpacer {} => self.remove_spacer(),
            Operation::InsertPinion {} => self.insert_pinion(),
            Operation::RemovePinion {} => self.remove_pinion(),
            Operation::FitSeal {} => self.fit_seal(),
            Operation::RemoveSeal {} => self.remove_seal(),
            Operation::FitNut { new } => self.fit_nut(*new),
            Operation::RemoveNut { .. } => self.remove_nut(),
            Operation::TightenNut { torque_nm, wrench, .. } => self.tighten_nut(*torque_nm, wrench),
            Operation::TurnNut { angle_deg, wrench, .. } => self.turn_nut_by(*angle_deg, wrench.as_deref()),
            Operation::BoltCartridge {} => self.bolt_cartridge(),
            Operation::UnboltCartridge {} => self.unbolt_cartridge(),
            Operation::HeatWheel { to_c, .. } => self.heat_wheel(*to_c),
            Operation::Wait { .. } => Ok(Done::plain()),
            Operation::FitWheel { crosswise, .. } => self.fit_wheel(*crosswise),
            Operation::RemoveWheel {} => self.remove_wheel(),
            Operation::TightenRingBolts { thread_lock } => self.tighten_ring_bolts(*thread_lock),
            Operation::SetCarrierIn { marks_out_teeth, .. } => self.set_carrier_in(*marks_out_teeth),
            Operation::LiftCarrierOut { .. } => self.lift_carrier_out(),
            Operation::SpreadCase { by_mm } => Ok(self.spread_case(*by_mm)),
            Operation::ReleaseSpreader {} => self.release_spreader(),
            Operation::FitCaps { as_marked } => self.fit_caps(*as_marked),
            Operation::TightenCaps { to } => self.tighten_caps(*to),
            Operation::LoosenCaps {} => self.loosen_caps(),
            Operation::RemoveCaps {} => self.remove_caps(),
            Operation::TurnAdjuster { side, notches } => self.turn_adjuster(*side, *notches),
            Operation::FitLock { side } => self.fit_lock(*side),
            Operation::RemoveLock { side } => self.remove_lock(*side),
            Operation::Turn { what, turns } => self.turn(*what, *turns),
            Operation::Push { what, toward } => self.push(*what, *toward),
            Operation::Clean { what, .. } => self.clean(*what),
            Operation::BrushPaste { teeth, film } => self.brush_paste(teeth, *film),
            Operation::Roll { drag_nm, passes } => self.roll(*drag_nm, *passes),
            Operation::Replace { part } => self.replace(*part),
            Operation::Note { what, value, remark } => {
                self.note(*what, *value, remark);
                Ok(Done::plain())
            }
            Operation::Predict { about, chances } => Ok(self.predict(*about, *chances)),
            Operation::JudgePlate { plate, chances } => self.judge_plate(*plate, *chances),
            Operation::Hint { level } => Ok(self.hint(*level)),
            Operation::Condemn { part, reason, evidence } => self.condemn(*part, reason, evidence),
            Operation::Finish {} => Ok(self.finish()),
        }
    }

    /// Hazards of an operation as the state is now, and the precautions that it comes with.
    pub(super) fn hazards<'a>(&self, operation: &'a Operation) -> (Vec<Caution>, &'a [Precaution]) {
        let heavy = self.setting.axle.gears().outer_pitch_radius_mm * 2.0 >= self.setting.hoist_from_diameter_mm;
        let hot = self.wheel_c > HOT_C;
        let mut hazards = Vec::new();
        let met: &[Precaution] = match operation {
            Operation::Press { precautions, .. } => {
                hazards.extend([Caution::RingUnderPress, Caution::Splinters]);
                precautions
            }
            Operation::PullOff { precautions, .. } => {
                hazards.push(Caution::Splinters);
                precautions
            }
            Operation::TakeApart { to, precautions } => {
                if heavy && *to >= Level::Carrier && self.assembly.carrier_in {
                    hazards.push(Caution::HeavyCarrier);
                }
                if *to >= Level::Nut && self.built.pinion.is_some() {
                    hazards.push(Caution::NutReaction);
                }
                if *to >= Level::Bearings && self.rings_on.contains(&true) {
                    hazards.push(Caution::Splinters);
                }
                precautions
            }
            Operation::HeatWheel { precautions, .. } => {
                hazards.push(Caution::HotWheel);
                precautions
            }
            Operation::FitWheel { precautions, .. } => {
                if hot {
                    hazards.push(Caution::HotWheel);
                }
                precautions
            }
            Operation::SetCarrierIn { precautions, .. } | Operation::LiftCarrierOut { precautions } => {
                if heavy {
                    hazards.push(Caution::HeavyCarrier);
                }
                precautions
            }
            Operation::TightenNut {
                torque_nm, precautions, ..
            } => {
                if *torque_nm > BAR_FROM_NM {
                    hazards.push(Caution::NutReaction);
                }
                precautions
            }
            Operation::TurnNut { precautions, .. } | Operation::RemoveNut { precautions } => {
                if self.nut_torque_nm().is_some_and(|t| t > BAR_FROM_NM) {
                    hazards.push(Caution::NutReaction);
                }
                precautions
            }
            Operation::Clean { what, precautions } => {
                if *what == Cleaned::Bearings {
                    hazards.extend([Caution::AirSpunBearing, Caution::Splinters]);
                }
                precautions
            }
            _ => &[],
        };
        (hazards, met)
    }
}
