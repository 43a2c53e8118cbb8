//! Where an operation can hurt somebody as the state is now.

use crate::bench::caution::{Caution, Precaution};
use crate::bench::choices::{Cleaned, Level};
use crate::bench::operation::Operation;
use crate::bench::state::Bench;

/// Torque above which whoever holds the flange needs a bar, N m.
const BAR_FROM_NM: f64 = 60.0;

impl Bench {
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
}
