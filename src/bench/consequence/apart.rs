//! Taking apart to a level: the single operations in their order.

use super::{Done, Refusal};
use crate::axle::{Caps, Nut};
use crate::bench::operation::{Level, Operation, Ring, Side};
use crate::bench::state::Bench;

impl Bench {
    pub(super) fn take_apart(&mut self, to: Level) -> Result<Done, Refusal> {
        let mut done = Done::plain();
        let mut steps = 0;
        while let Some(step) = self.next_step(to) {
            let minutes = self.setting.tariff.minutes_of(&step.name());
            let came_to = self.perform(&step)?;
            self.settle_again()?;
            done = done.and(came_to);
            done.more_minutes += minutes;
            steps += 1;
            // Each step takes something off; there are fewer parts than this.
            if steps > 32 {
                break;
            }
        }
        Ok(done)
    }

    /// What comes off next on the way to a level; none when it is reached.
    fn next_step(&self, to: Level) -> Option<Operation> {
        let assembly = &self.assembly;
        let [tooth, back] = &assembly.side;
        if tooth.locked && assembly.carrier_in {
            return Some(Operation::RemoveLock { side: Side::Tooth });
        }
        if back.locked && assembly.carrier_in {
            return Some(Operation::RemoveLock { side: Side::Back });
        }
        if assembly.caps != Caps::Off {
            return Some(Operation::RemoveCaps {});
        }
        if to >= Level::Carrier && assembly.carrier_in {
            return Some(Operation::LiftCarrierOut {
                precautions: Vec::new(),
            });
        }
        if to >= Level::Wheel && assembly.wheel.is_some() {
            return Some(Operation::RemoveWheel {});
        }
        if to >= Level::Nut {
            if assembly.cartridge_bolted {
                return Some(Operation::UnboltCartridge {});
            }
            if assembly.nut != Nut::Off {
                return Some(Operation::RemoveNut {
                    precautions: Vec::new(),
                });
            }
            if assembly.seal {
                return Some(Operation::RemoveSeal {});
            }
        }
        if to >= Level::Pinion {
            if assembly.pinion_in {
                return Some(Operation::RemovePinion {});
            }
            if self.spacer_on {
                return Some(Operation::RemoveSpacer {});
            }
        }
        if to >= Level::Bearings {
            if self.set_up_bearings {
                return Some(Operation::RemoveSetUpBearings {});
            }
            let ring = Ring::ALL.into_iter().find(|r| self.ring_on(*r))?;
            return Some(Operation::PullOff {
                ring,
                precautions: Vec::new(),
            });
        }
        None
    }
}
