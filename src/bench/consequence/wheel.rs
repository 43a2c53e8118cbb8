//! The wheel on its carrier.

use super::done::Done;
use crate::axle::Truth;
use crate::axle::{WheelFitting, overheated, seat_wheel};
use crate::bench::carrier_group::CarrierGroup;
use crate::bench::choices::Cleaned;
use crate::bench::notice::Notice;
use crate::bench::part::Part;
use crate::bench::refusal::{Item, Refusal, need, need_fitted, need_free};
use crate::bench::setting::BenchSetUp;
use crate::bench::state::Bench;

/// Temperature from which steel shows a straw colour, °C.
const STRAW_C: f64 = 205.0;

impl CarrierGroup {
    pub(super) fn heat_wheel(&mut self, to_c: f64, setting: &BenchSetUp) -> Result<Done, Refusal> {
        need(self.wheel.is_none(), Refusal::RingGearOnCarrier)?;
        self.wheel_c = to_c;
        let mut done = Done::plain();
        if overheated(&setting.axle, to_c) && !self.wheel_scrap {
            self.wheel_scrap = true;
            done.spoiled.push(Part::Gears);
        }
        if to_c >= STRAW_C {
            done.noticed.push(Notice::TeethStrawColored);
        }
        Ok(done)
    }

    pub(super) fn fit_wheel(&mut self, crosswise: bool, setting: &BenchSetUp, truth: &Truth) -> Result<Done, Refusal> {
        need_free(self.wheel.is_some(), Item::RingGear)?;
        need(!self.carrier_in, Refusal::RingGearGoesOnAtBench)?;
        let fitting = WheelFitting {
            wheel_c: self.wheel_c,
            clean: self.wheel_seat_clean,
            crosswise,
        };
        let seat = seat_wheel(&setting.axle, truth, fitting);
        self.wheel = Some(seat);
        Ok(Done::noticing(if seat.tilt_mm > 0.0 {
            Notice::RingGearDrawnOn
        } else {
            Notice::RingGearWentHome
        }))
    }

    pub(super) fn remove_wheel(&mut self) -> Result<Done, Refusal> {
        need_fitted(self.wheel.is_some(), Item::RingGear)?;
        need(!self.carrier_in, Refusal::LiftCarrierFirst)?;
        self.bolts.used |= self.wheel.is_some_and(|w| w.bolted);
        self.bolts.warm = false;
        self.bolts.locked = false;
        self.wheel = None;
        self.paste = None;
        Ok(Done::plain())
    }

    pub(super) fn tighten_ring_bolts(&mut self, thread_lock: bool, setting: &BenchSetUp) -> Result<Done, Refusal> {
        need(!self.carrier_in, Refusal::BoltsReachedAtBench)?;
        let (warm, reuses) = (self.is_hot(), self.reuses_bolts(setting));
        let Some(seat) = &mut self.wheel else {
            return Err(Refusal::NoRingGear);
        };
        let mut done = Done::plain();
        if !seat.bolted {
            if reuses {
                done.reused.push(Part::RingBolts);
            }
            self.bolts.used = true;
        }
        seat.bolted = true;
        // Torqued warm, bolts lose clamp as the wheel shrinks; on oily threads the locking does not set.
        self.bolts.warm = warm;
        self.bolts.locked = thread_lock && (self.threads_clean || self.bolts.locked);
        Ok(done)
    }
}

impl Bench {
    pub(super) fn clean(&mut self, what: Cleaned) -> Result<Done, Refusal> {
        match what {
            Cleaned::WheelSeat => {
                need(self.carrier.wheel.is_none(), Refusal::RingGearCoversSeat)?;
                self.carrier.wheel_seat_clean = true;
            }
            Cleaned::Shims => self.shop.packs.clean_box(),
            Cleaned::Threads => {
                need(self.carrier.wheel.is_none_or(|w| !w.bolted), Refusal::BoltsAreIn)?;
                self.carrier.threads_clean = true;
            }
            Cleaned::Teeth => self.carrier.paste = None,
            Cleaned::Bearings => {
                need(!self.pinion.pinion_in, Refusal::BearingsInside)?;
                self.pinion.turns = 0.0;
            }
        }
        Ok(Done::plain())
    }
}
