//! What operations do: one file a group of them.
//!
//! Each first asks whether the thing can be done at all, and says why not; then it changes the parts that it is about.
//! Sizes, preloads and torques follow from the state by the axle's solver, never from here.

mod apart;
mod carrier;
mod done;
mod nut;
mod paste;
mod pinion;
mod sheet;
mod shims;
mod wheel;

pub(super) use self::done::{Done, Shown};

use self::pinion::Around;
use super::caution::{Caution, Precaution};
use super::choices::{CapTorque, Cleaned, Level, Ring, ShimPlace, SpacerChoice};
use super::measurand::Measurand;
use super::operation::Operation;
use super::plate::PlateJudged;
use super::refusal::Refusal;
use super::refusal::{Item, need, need_free};
use super::state::Bench;
use crate::axle::Caps;

/// Torque above which whoever holds the flange needs a bar, N m.
const BAR_FROM_NM: f64 = 60.0;

impl Bench {
    /// Does an operation on this state.
    pub(super) fn perform(&mut self, operation: &Operation) -> Result<Done, Refusal> {
        let setting = self.setting.clone();
        let axle = &setting.axle;
        let around = Around {
            axle,
            carrier_in: self.carrier.carrier_in,
        };
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
            Operation::Press { ring, force_kn, .. } => {
                let holding_n = match ring {
                    Ring::HeadCone => self.truth.press.head_cone_n,
                    Ring::HeadCup => self.truth.press.head_cup_n,
                    Ring::TailCup => self.truth.press.tail_cup_n,
                };
                let pressed_n = self.pressed_n(1.0e3 * force_kn);
                self.pinion.press(*ring, around, pressed_n, holding_n)
            }
            Operation::PullOff { ring, .. } => self.pinion.pull_off(*ring, around),
            Operation::FitSetUpBearings {} => self.pinion.fit_set_up_bearings(),
            Operation::RemoveSetUpBearings {} => self.pinion.remove_set_up_bearings(),
            Operation::FitSpacer { spacer, new } => self.pinion.fit_spacer(*spacer, *new, &setting),
            Operation::RemoveSpacer {} => self.pinion.remove_spacer(),
            Operation::InsertPinion {} => self.pinion.insert_pinion(around),
            Operation::RemovePinion {} => self.pinion.remove_pinion(around),
            Operation::FitSeal {} => self.pinion.fit_seal(),
            Operation::RemoveSeal {} => self.pinion.remove_seal(),
            Operation::FitNut { new } => self.fit_nut(*new),
            Operation::RemoveNut { .. } => self.pinion.remove_nut(),
            Operation::TightenNut { torque_nm, wrench, .. } => self.tighten_nut(*torque_nm, wrench),
            Operation::TurnNut { angle_deg, wrench, .. } => self.turn_nut_by(*angle_deg, wrench.as_deref()),
            Operation::BoltCartridge {} => self.pinion.bolt_cartridge(axle),
            Operation::UnboltCartridge {} => self.pinion.unbolt_cartridge(axle),
            Operation::HeatWheel { to_c, .. } => self.carrier.heat_wheel(*to_c, &setting),
            Operation::Wait { .. } => Ok(Done::plain()),
            Operation::FitWheel { crosswise, .. } => self.carrier.fit_wheel(*crosswise, &setting, &self.truth),
            Operation::RemoveWheel {} => self.carrier.remove_wheel(),
            Operation::TightenRingBolts { thread_lock } => self.carrier.tighten_ring_bolts(*thread_lock, &setting),
            Operation::SetCarrierIn { marks_out_teeth, .. } => self.set_carrier_in(*marks_out_teeth),
            Operation::LiftCarrierOut { .. } => self.carrier.lift_carrier_out(),
            Operation::SpreadCase { by_mm } => Ok(self.carrier.spread_case(*by_mm, &setting, &mut self.truth)),
            Operation::ReleaseSpreader {} => self.carrier.release_spreader(),
            Operation::FitCaps { as_marked } => self.carrier.fit_caps(*as_marked),
            Operation::TightenCaps { to } => self.carrier.tighten_caps(*to),
            Operation::LoosenCaps {} => self.carrier.loosen_caps(),
            Operation::RemoveCaps {} => self.carrier.remove_caps(axle),
            Operation::TurnAdjuster { side, notches } => self.turn_adjuster(*side, *notches),
            Operation::FitLock { side } => self.carrier.fit_lock(*side, axle),
            Operation::RemoveLock { side } => self.carrier.remove_lock(*side),
            Operation::Turn { what, turns } => self.turn(*what, *turns),
            Operation::Push { what, toward } => self.push(*what, *toward),
            Operation::Clean { what, .. } => self.clean(*what),
            Operation::BrushPaste { teeth, film } => self.brush_paste(teeth, *film),
            Operation::Roll { drag_nm, passes } => self.roll(*drag_nm, *passes),
            Operation::Replace { part } => self.replace(*part),
            Operation::Note {
                what,
                value,
                record,
                remark,
            } => self.note(*what, *value, *record, remark),
            Operation::Predict { about, chances } => Ok(self.predict(*about, *chances)),
            Operation::JudgePlate { plate, chances } => {
                let judged = PlateJudged {
                    operation: self.operations,
                    plate: *plate,
                    chances: *chances,
                };
                self.sheet.judge_plate(judged, setting.plates.len())
            }
            Operation::Hint { level } => {
                self.sheet.hints.push((self.operations, *level));
                Ok(Done::plain())
            }
            Operation::Condemn { part, reason, evidence } => {
                self.sheet.condemn(self.operations, *part, reason, evidence)
            }
            Operation::Finish {} => {
                self.finished = true;
                Ok(Done::plain())
            }
        }
    }

    /// Hazards of an operation as the state is now, and the precautions that it comes with.
    pub(in crate::bench) fn hazards<'a>(&self, operation: &'a Operation) -> (Vec<Caution>, &'a [Precaution]) {
        let heavy = self.setting.axle.gears().outer_pitch_radius_mm * 2.0 >= self.setting.hoist_from_diameter_mm;
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
                if heavy && *to >= Level::Carrier && self.carrier.carrier_in {
                    hazards.push(Caution::HeavyCarrier);
                }
                if *to >= Level::Nut && self.built.pinion.is_some() {
                    hazards.push(Caution::NutReaction);
                }
                if *to >= Level::Bearings && self.pinion.any_ring_on() {
                    hazards.push(Caution::Splinters);
                }
                precautions
            }
            Operation::HeatWheel { precautions, .. } => {
                hazards.push(Caution::HotWheel);
                precautions
            }
            Operation::FitWheel { precautions, .. } => {
                if self.carrier.is_hot() {
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
                match what {
                    Cleaned::Bearings => hazards.extend([Caution::AirSpunBearing, Caution::Splinters]),
                    Cleaned::WheelSeat | Cleaned::Shims | Cleaned::Threads | Cleaned::Teeth => {}
                }
                precautions
            }
            // Nothing here moves, is hot, heavy or under force.
            Operation::Measure { .. }
            | Operation::CompareNumbers {}
            | Operation::FitShims { .. }
            | Operation::RemoveShims { .. }
            | Operation::FitSetUpBearings {}
            | Operation::RemoveSetUpBearings {}
            | Operation::FitSpacer { .. }
            | Operation::RemoveSpacer {}
            | Operation::InsertPinion {}
            | Operation::RemovePinion {}
            | Operation::FitSeal {}
            | Operation::RemoveSeal {}
            | Operation::FitNut { .. }
            | Operation::BoltCartridge {}
            | Operation::UnboltCartridge {}
            | Operation::Wait { .. }
            | Operation::RemoveWheel {}
            | Operation::TightenRingBolts { .. }
            | Operation::SpreadCase { .. }
            | Operation::ReleaseSpreader {}
            | Operation::FitCaps { .. }
            | Operation::TightenCaps { .. }
            | Operation::LoosenCaps {}
            | Operation::RemoveCaps {}
            | Operation::TurnAdjuster { .. }
            | Operation::FitLock { .. }
            | Operation::RemoveLock { .. }
            | Operation::Turn { .. }
            | Operation::Push { .. }
            | Operation::BrushPaste { .. }
            | Operation::Roll { .. }
            | Operation::Replace { .. }
            | Operation::Note { .. }
            | Operation::Predict { .. }
            | Operation::JudgePlate { .. }
            | Operation::Hint { .. }
            | Operation::Condemn { .. }
            | Operation::Finish {} => &[],
        };
        (hazards, met)
    }

    /// Whether an operation that would be done changes anything, as far as anybody sees.
    pub(super) fn nothing_to_do(&self, operation: &Operation) -> Result<(), Refusal> {
        let pack = |place: ShimPlace| need(!self.shop.packs.at(place).is_empty(), Refusal::NoPackIn);
        match operation {
            Operation::FitSpacer { spacer, .. } => match spacer {
                SpacerChoice::Own => need_free(self.pinion.spacer_on(), Item::Spacer),
                SpacerChoice::None => Ok(()),
            },
            Operation::TightenCaps { to } => match to {
                CapTorque::Full => need(self.carrier.caps != Caps::Torqued, Refusal::CapsTorqued),
                CapTorque::Snug => Ok(()),
            },
            Operation::RemoveShims { place } => pack(*place),
            // A pack is measured where one lies; whatever else is read, there is something to read or a refusal.
            Operation::Measure { what, .. } => {
                if let Measurand::ShimPack { place } = what {
                    pack(*place)?;
                }
                Ok(())
            }
            Operation::Clean { what, .. } => match what {
                Cleaned::Teeth => need(self.carrier.paste.is_some(), Refusal::NoPaste),
                Cleaned::WheelSeat | Cleaned::Shims | Cleaned::Threads | Cleaned::Bearings => Ok(()),
            },
            Operation::TakeApart { to, .. } => need(self.next_step(*to).is_some(), Refusal::NothingTogether),
            Operation::CompareNumbers {}
            | Operation::FitShims { .. }
            | Operation::Press { .. }
            | Operation::PullOff { .. }
            | Operation::FitSetUpBearings {}
            | Operation::RemoveSetUpBearings {}
            | Operation::RemoveSpacer {}
            | Operation::InsertPinion {}
            | Operation::RemovePinion {}
            | Operation::FitSeal {}
            | Operation::RemoveSeal {}
            | Operation::FitNut { .. }
            | Operation::RemoveNut { .. }
            | Operation::TightenNut { .. }
            | Operation::TurnNut { .. }
            | Operation::BoltCartridge {}
            | Operation::UnboltCartridge {}
            | Operation::HeatWheel { .. }
            | Operation::Wait { .. }
            | Operation::FitWheel { .. }
            | Operation::RemoveWheel {}
            | Operation::TightenRingBolts { .. }
            | Operation::SetCarrierIn { .. }
            | Operation::LiftCarrierOut { .. }
            | Operation::SpreadCase { .. }
            | Operation::ReleaseSpreader {}
            | Operation::FitCaps { .. }
            | Operation::LoosenCaps {}
            | Operation::RemoveCaps {}
            | Operation::TurnAdjuster { .. }
            | Operation::FitLock { .. }
            | Operation::RemoveLock { .. }
            | Operation::Turn { .. }
            | Operation::Push { .. }
            | Operation::BrushPaste { .. }
            | Operation::Roll { .. }
            | Operation::Replace { .. }
            | Operation::Note { .. }
            | Operation::Predict { .. }
            | Operation::JudgePlate { .. }
            | Operation::Hint { .. }
            | Operation::Condemn { .. }
            | Operation::Finish {} => Ok(()),
        }
    }
}
