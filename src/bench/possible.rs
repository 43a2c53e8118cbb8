//! What can be done as things stand, for whoever asks before doing it.

use super::operation::{Operation, ShimPlace, SpacerChoice};
use super::refusal::{Item, Refusal, need};
use super::state::Bench;
use crate::axle::Caps;
use crate::bench::operation::CapTorque;

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
            Operation::FitSpacer {
                spacer: SpacerChoice::Own,
                ..
            } => super::refusal::need_free(self.pinion.spacer_on(), Item::Spacer),
            Operation::TightenCaps { to: CapTorque::Full } => {
                need(self.carrier.caps != Caps::Torqued, Refusal::CapsTorqued)
            }
            Operation::RemoveShims { place } => pack(*place),
            Operation::Measure {
                what: super::measurand::Measurand::ShimPack { place },
                ..
            } => pack(*place),
            Operation::Clean {
                what: super::operation::Cleaned::Teeth,
                ..
            } => need(self.carrier.paste.is_some(), Refusal::NoPaste),
            Operation::TakeApart { to, .. } => need(self.next_step(*to).is_some(), Refusal::NothingTogether),
            _ => Ok(()),
        }
    }
}
