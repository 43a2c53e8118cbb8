//! Pinion, its bearings, spacer, seal and cartridge.

use super::{Done, Refusal, need, refuse};
use crate::axle::{Layout, Member, Nut, SpacerFitted};
use crate::bearing::{SeatGap, SpacerMemory};
use crate::bench::operation::{Ring, SpacerChoice};
use crate::bench::part::Part;
use crate::bench::state::Bench;
use crate::numerics::random::Stream;

/// Length over which a ring slides on its seat, mm. Friction of the fit rises evenly along it.
const SEAT_LENGTH_MM: f64 = 20.0;
/// A ring that went less far than this share of its seat is not on.
const STARTED_SHARE: f64 = 0.9;
/// Above this multiple of the fit's friction everybody hears and feels that a ring is home.
const CLEARLY_HOME: f64 = 1.15;

impl Bench {
    pub(super) fn press(&mut self, ring: Ring, force_kn: f64) -> Result<Done, Refusal> {
        need(!self.ring_on(ring), "It is on already.")?;
        self.reach_ring(ring)?;
        let press = self.truth.press;
        let holding_n = match ring {
            Ring::HeadCone => press.head_cone_n,
            Ring::HeadCup => press.head_cup_n,
            Ring::TailCup => press.tail_cup_n,
        };
        let share = self.pressed_n(1.0e3 * force_kn) / holding_n;
        if share < STARTED_SHARE {
            return Ok(Done::noticing(
                "The press stopped with the ring only part of the way on. It came off again.",
            ));
        }
        let gap_mm = if share < 1.0 {
            SEAT_LENGTH_MM * (1.0 - share)
        } else {
            0.0
        };
        let gap = SeatGap { gap_mm, holding_n };
        let seating = &mut self.assembly.seating;
        match ring {
            Ring::HeadCone => seating.head_cone = gap,
            Ring::HeadCup => seating.head_cup = gap,
            Ring::TailCup => seating.tail_cup = gap,
        }
        self.set_ring(ring, true);
        self.assembly.pinion_turns = 0.0;
        Ok(if share > CLEARLY_HOME {
            Done::noticing("The force rose steeply at the end and the sound changed.")
        } else {
            Done::noticing("The press stopped; no clear rise was felt.")
        })
    }

    pub(super) fn pull_off(&mut self, ring: Ring) -> Result<Done, Refusal> {
        need(self.ring_on(ring), "It is not on.")?;
        self.reach_ring(ring)?;
        let seating = &mut self.assembly.seating;
        match ring {
            Ring::HeadCone => seating.head_cone = SeatGap::default(),
            Ring::HeadCup => seating.head_cup = SeatGap::default(),
            Ring::TailCup => seating.tail_cup = SeatGap::default(),
        }
        self.set_ring(ring, false);
        Ok(Done::plain())
    }

    /// Whether a press or puller can get at a ring.
    pub(super) fn reach_ring(&self, ring: Ring) -> Result<(), Refusal> {
        need(!self.assembly.pinion_in, "The pinion is in the way: take it out first.")?;
        need(
            !self.set_up_bearings,
            "The set-up bearings are in its place: take them out first.",
        )?;
        let inside = ring == Ring::HeadCup && !self.setting.axle.layout().has_cartridge();
        need(
            !(inside && self.assembly.carrier_in),
            "The head bearing's cup is reached from inside the case: lift the carrier out first.",
        )
    }

    pub(super) fn fit_set_up_bearings(&mut self) -> Result<Done, Refusal> {
        need(!self.set_up_bearings, "They are in already.")?;
        need(
            !self.assembly.pinion_in,
            "The pinion has to be out for the set-up bearings to go on.",
        )?;
        need(
            !self.rings_on.contains(&true),
            "The set-up bearings take the place of the real ones: pull those off first.",
        )?;
        self.set_up_bearings = true;
        self.assembly.pinion_turns = 0.0;
        Ok(Done::plain())
    }

    pub(super) fn remove_set_up_bearings(&mut self) -> Result<Done, Refusal> {
        need(self.set_up_bearings, "They are not in.")?;
        need(!self.assembly.pinion_in, "Take the pinion out first.")?;
        self.set_up_bearings = false;
        Ok(Done::plain())
    }

    pub(super) fn fit_spacer(&mut self, spacer: SpacerChoice, new: bool) -> Result<Done, Refusal> {
        need(
            !self.assembly.pinion_in,
            "The spacer goes on the shaft with the pinion out.",
        )?;
        if self.spacer_on {
            self.remove_spacer()?;
        }
        let mut done = Done::plain();
        if spacer == SpacerChoice::None {
            return Ok(done);
        }
        self.assembly.spacer = if self.setting.axle.layout().has_sleeve() {
            let memory = match (new, self.old_sleeve) {
                (false, Some(memory)) => {
                    if self.setting.single_use.contains(&Part::Sleeve) {
                        done.reused.push(Part::Sleeve);
                    }
                    memory
                }
                (false, None) => return refuse("There is no used sleeve on the bench: take a new one."),
                (true, _) => {
                    done.bought.push(Part::Sleeve);
                    SpacerMemory::default()
                }
            };
            self.old_sleeve = None;
            SpacerFitted::Sleeve(memory)
        } else {
            SpacerFitted::Solid { shims_mm: 0.0 }
        };
        self.spacer_on = true;
        Ok(done)
    }

    pub(super) fn remove_spacer(&mut self) -> Result<Done, Refusal> {
        need(self.spacer_on, "There is no spacer on the shaft.")?;
        need(
            !self.assembly.pinion_in,
            "The spacer is on the shaft inside: take the pinion out first.",
        )?;
        if let SpacerFitted::Sleeve(memory) = self.assembly.spacer {
            self.old_sleeve = Some(memory);
        }
        self.assembly.spacer = SpacerFitted::None;
        self.spacer_on = false;
        Ok(Done::plain())
    }

    pub(super) fn insert_pinion(&mut self) -> Result<Done, Refusal> {
        need(!self.assembly.pinion_in, "It is in already.")?;
        need(
            self.set_up_bearings || self.rings_on == [true; 3],
            "The pinion needs its bearings: head cone, head cup and tail cup, or the set-up bearings.",
        )?;
        self.reach_housing()?;
        self.assembly.pinion_in = true;
        self.assembly.pinion_turns = 0.0;
        Ok(Done::plain())
    }

    pub(super) fn remove_pinion(&mut self) -> Result<Done, Refusal> {
        need(self.assembly.pinion_in, "It is not in.")?;
        need(
            self.assembly.nut == Nut::Off,
            "The nut holds it: take the nut off first.",
        )?;
        self.reach_housing()?;
        self.assembly.pinion_in = false;
        Ok(Done::plain())
    }

    /// Whether the pinion can pass in or out.
    fn reach_housing(&self) -> Result<(), Refusal> {
        if self.setting.axle.layout() == Layout::B {
            need(
                !self.assembly.cartridge_bolted,
                "The pinion's head does not pass through the case: unbolt the cartridge first.",
            )
        } else {
            need(
                !self.assembly.carrier_in,
                "The pinion passes through the inside of the case: lift the carrier out first.",
            )
        }
    }

    pub(super) fn fit_seal(&mut self) -> Result<Done, Refusal> {
        need(!self.assembly.seal, "There is one in already.")?;
        need(
            self.assembly.nut == Nut::Off,
            "The flange is in the way: take nut and flange off first.",
        )?;
        self.assembly.seal = true;
        Ok(Done {
            bought: vec![Part::Seal],
            ..Done::default()
        })
    }

    pub(super) fn remove_seal(&mut self) -> Result<Done, Refusal> {
        need(self.assembly.seal, "There is none in.")?;
        need(
            self.assembly.nut == Nut::Off,
            "The flange is in the way: take nut and flange off first.",
        )?;
        self.assembly.seal = false;
        Ok(Done {
            spoiled: vec![Part::Seal],
            ..Done::default()
        })
    }

    pub(super) fn bolt_cartridge(&mut self) -> Result<Done, Refusal> {
        need(
            self.setting.axle.layout().has_cartridge(),
            "This axle has no cartridge.",
        )?;
        need(!self.assembly.cartridge_bolted, "It is bolted on already.")?;
        self.assembly.cartridge_bolted = true;
        Ok(Done::plain())
    }

    pub(super) fn unbolt_cartridge(&mut self) -> Result<Done, Refusal> {
        need(
            self.setting.axle.layout().has_cartridge(),
            "This axle has no cartridge.",
        )?;
        need(self.assembly.cartridge_bolted, "It is not bolted on.")?;
        self.assembly.cartridge_bolted = false;
        Ok(Done::plain())
    }

    /// New parts from the shelf. New bearings have stands of their own.
    pub(super) fn replace(&mut self, part: Part) -> Result<Done, Refusal> {
        match part {
            Part::Nut => {
                need(self.assembly.nut == Nut::Off, "Take the old one off first.")?;
                self.nut_used = false;
            }
            Part::RingBolts => {
                need(
                    self.assembly.wheel.is_none_or(|w| !w.bolted),
                    "The ring gear is bolted on with the old ones: take it off first.",
                )?;
                self.bolts_used = false;
            }
            Part::PinionBearings => {
                need(
                    !self.rings_on.contains(&true) && !self.assembly.pinion_in,
                    "Pull all rings of the old ones off first.",
                )?;
                self.draw_stands(part, &[Member::HeadBearingStand, Member::TailBearingStand]);
            }
            Part::SideBearings => {
                need(!self.assembly.carrier_in, "Lift the carrier out first.")?;
                self.draw_stands(part, &[Member::ToothBearingStand, Member::BackBearingStand]);
            }
            Part::Seal => return refuse("A seal comes new whenever one is fitted."),
            Part::Sleeve => return refuse("A sleeve comes new when it is asked for on fitting it."),
            Part::SolidSpacer | Part::Gears | Part::Case | Part::Carrier => {
                return refuse(format!(
                    "There is no other {} on the shelf: condemn it, with evidence.",
                    part.name()
                ));
            }
        }
        Ok(Done {
            bought: vec![part],
            ..Done::default()
        })
    }

    /// Stands of bearings just unpacked: even over half of what inspection lets pass.
    fn draw_stands(&mut self, part: Part, members: &[Member]) {
        let chain = self.setting.axle.chain();
        for member in members {
            let tolerance = chain.link(*member).map_or(0.0, |l| l.tolerance);
            let name = format!(
                "{} bought at operation {}: {}",
                part.name(),
                self.operations,
                member.name()
            );
            let mut stream = Stream::new(self.setting.seed, &name);
            self.truth
                .deviations
                .set(*member, 0.5 * tolerance * stream.between(-1.0, 1.0));
        }
    }
}
