//! What can be done as things stand, for whoever asks before doing it.

use super::operation::Operation;
use super::refusal::Refusal;
use super::state::Bench;

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
}
