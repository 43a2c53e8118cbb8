//! What can be done as things stand, for whoever asks before doing it.

use super::choices::{CapTorque, Cleaned, ShimPlace, SpacerChoice};
use super::measurand::Measurand;
use super::operation::Operation;
use super::refusal::{Item, Refusal, need, need_free};
use super::state::Bench;
use crate::axle::Caps;

impl Bench {
    /// What anybody sees who stands at the bench that speaks against an operation now: why it would be refused, or that
    /// there is nothing for it to do. None where nothing plain to see does; it may be refused all the same, by something
    /// that only shows when it is tried.
    pub fn plain_refusal(&self, operation: &Operation) -> Option<Refusal> {
        self.plainly_possible(operation)
            .err()
            .filter(Refusal::plain_to_see)
            .or_else(|| self.nothing_to_do(operation).err())
    }

    /// Tries it without solving any contact: what takes long is asked for its conditions alone, anything else is done on a
    /// copy.
    fn plainly_possible(&self, operation: &Operation) -> Result<(), Refusal> {
        self.takes(operation)?;
        match operation {
            Operation::Measure { what, instrument, .. } => {
                self.setting.instrument(instrument)?;
                self.measurable(*what)
            }
            Operation::Roll { .. } => self.rollable().map(|_| ()),
            Operation::Turn { what, .. } => self.need_held(*what),
            other => {
                let mut copy = self.clone();
                copy.perform(other)?;
                Ok(copy.settle_again()?)
            }
        }
    }

    /// Whether an operation that would be done changes anything, as far as anybody sees.
    fn nothing_to_do(&self, operation: &Operation) -> Result<(), Refusal> {
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
