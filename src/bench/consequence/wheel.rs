//! The wheel on its carrier.

use super::{Done, HOT_C, Refusal, need};
use crate::axle::{WheelFitting, overheated, seat_wheel};
use crate::bench::operation::Cleaned;
use crate::bench::part::Part;
use crate::bench::state::Bench;

/// Temperature from which steel shows a straw colour, °C.
const STRAW_C: f64 = 205.0;

impl Bench {
    pub(super) fn heat_wheel(&mut self, to_c: f64) -> Result<Done, Refusal> {
        need(
            self.assembly.wheel.is_none(),
            "The ring gear is on its carrier and would heat that as well: take it off first.",
        )?;
        self.wheel_c = to_c;
        let mut done = Done::plain();
        if overheated(&self.setting.axle, to_c) && !self.wheel_scrap {
            self.wheel_scrap = true;
            done.spoiled.push(Part::Gears);
        }
        if to_c >= STRAW_C {
            done.noticed.push("The teeth have run straw-coloured.".to_owned());
        }
        Ok(done)
    }

    pub(super) fn fit_wheel(&mut self, crosswise: bool) -> Result<Done, Refusal> {
        need(self.assembly.wheel.is_none(), "It is on already.")?;
        need(
            !self.assembly.carrier_in,
            "Lift the carrier out first: the ring gear goes on at the bench.",
        )?;
        let fitting = WheelFitting {
            wheel_c: self.wheel_c,
            clean: self.wheel_seat_clean,
            crosswise,
        };
        let seat = seat_wheel(&self.setting.axle, &self.truth, fitting);
        self.assembly.wheel = Some(seat);
        Ok(Done::noticing(if seat.tilt_mm > 0.0 {
            "The ring gear had to be drawn on by its bolts."
        } else {
            "The ring gear went home by hand."
        }))
    }

    pub(super) fn remove_wheel(&mut self) -> Result<Done, Refusal> {
        need(self.assembly.wheel.is_some(), "It is not on.")?;
        need(!self.assembly.carrier_in, "Lift the carrier out first.")?;
        self.bolts_used |= self.assembly.wheel.is_some_and(|w| w.bolted);
        self.assembly.wheel = None;
        self.bolts_warm = false;
        self.bolts_locked = false;
        self.paste = None;
        Ok(Done::plain())
    }

    pub(super) fn tighten_ring_bolts(&mut self, thread_lock: bool) -> Result<Done, Refusal> {
        need(
            !self.assembly.carrier_in,
            "The bolts are reached at the bench: lift the carrier out first.",
        )?;
        let warm = self.wheel_c > HOT_C;
        let Some(seat) = &mut self.assembly.wheel else {
            return Err(Refusal("There is no ring gear on the carrier.".to_owned()));
        };
        let mut done = Done::plain();
        if !seat.bolted {
            if self.bolts_used && self.setting.single_use.contains(&Part::RingBolts) {
                done.reused.push(Part::RingBolts);
            }
            self.bolts_used = true;
        }
        seat.bolted = true;
        // Torqued warm, bolts lose clamp as the wheel shrinks; on oily threads the locking does not set.
        self.bolts_warm = warm;
        self.bolts_locked = thread_lock && (self.threads_clean || self.bolts_locked);
        Ok(done)
    }

    pub(super) fn clean(&mut self, what: Cleaned) -> Result<Done, Refusal> {
        match what {
            Cleaned::WheelSeat => {
                need(
                    self.assembly.wheel.is_none(),
                    "The ring gear covers its seat: take it off first.",
                )?;
                self.wheel_seat_clean = true;
            }
            Cleaned::Shims => self.packs.clean_box(),
            Cleaned::Threads => {
                need(
                    self.assembly.wheel.is_none_or(|w| !w.bolted),
                    "The bolts are in: take the ring gear off first.",
                )?;
                self.threads_clean = true;
            }
            Cleaned::Teeth => self.paste = None,
            Cleaned::Bearings => {
                need(
                    !self.assembly.pinion_in,
                    "The bearings are washed at the bench: take the pinion out first.",
                )?;
                self.assembly.pinion_turns = 0.0;
            }
        }
        Ok(Done::plain())
    }
}
