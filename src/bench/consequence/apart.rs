//! Taking apart to a level: the single operations in their order.

use super::done::Done;
use crate::axle::Caps;
use crate::bench::choices::{CarrierSide, Level, Ring};
use crate::bench::operation::Operation;
use crate::bench::refusal::Refusal;
use crate::bench::state::Bench;

impl Bench {
    pub(super) fn take_apart(&mut self, to: Level) -> Result<Done, Refusal> {
        let mut done = Done::plain();
        let mut steps = 0;
        while let Some(step) = self.next_step(to) {
            let minutes = self.setting.tariff.minutes_of(step.kind());
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
    pub(in crate::bench) fn next_step(&self, to: Level) -> Option<Operation> {
        let (pinion, carrier) = (&self.pinion, &self.carrier);
        for side in [CarrierSide::Tooth, CarrierSide::Back] {
            if carrier.adjuster(side).locked && carrier.carrier_in {
                return Some(Operation::RemoveLock { side });
            }
        }
        if carrier.caps != Caps::Off {
            return Some(Operation::RemoveCaps {});
        }
        if to >= Level::Carrier && carrier.carrier_in {
            return Some(Operation::LiftCarrierOut {
                precautions: Vec::new(),
            });
        }
        if to >= Level::Wheel && carrier.wheel.is_some() {
            return Some(Operation::RemoveWheel {});
        }
        if to >= Level::Nut {
            if pinion.cartridge_bolted {
                return Some(Operation::UnboltCartridge {});
            }
            if pinion.nut_on() {
                return Some(Operation::RemoveNut {
                    precautions: Vec::new(),
                });
            }
            if pinion.seal {
                return Some(Operation::RemoveSeal {});
            }
        }
        if to >= Level::Pinion {
            if pinion.pinion_in {
                return Some(Operation::RemovePinion {});
            }
            if pinion.spacer_on() {
                return Some(Operation::RemoveSpacer {});
            }
        }
        if to >= Level::Bearings {
            if pinion.set_up_bearings {
                return Some(Operation::RemoveSetUpBearings {});
            }
            let ring = Ring::ALL.into_iter().find(|r| pinion.ring_on(*r))?;
            return Some(Operation::PullOff {
                ring,
                precautions: Vec::new(),
            });
        }
        None
    }
}
