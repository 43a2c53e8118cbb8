//! Pinion, its bearings, spacer, seal and cartridge.

use super::done::Done;
use crate::axle::{Axle, Layout, Member};
use crate::bearing::{SeatGap, SpacerMemory};
use crate::bench::choices::{Ring, SpacerChoice};
use crate::bench::notice::Notice;
use crate::bench::part::Part;
use crate::bench::pinion_group::{PinionGroup, Spacer};
use crate::bench::refusal::{Item, Refusal, need, need_fitted, need_free};
use crate::bench::setting::BenchSetUp;
use crate::bench::state::Bench;
use crate::numerics::random::Stream;

/// Length over which a ring slides on its seat, mm. Friction of the fit rises evenly along it.
const SEAT_LENGTH_MM: f64 = 20.0;
/// A ring that went less far than this share of its seat is not on.
const STARTED_SHARE: f64 = 0.9;
/// Above this multiple of the fit's friction everybody hears and feels that a ring is home.
const CLEARLY_HOME: f64 = 1.15;

/// What is around the pinion and decides whether a hand gets at it.
#[derive(Debug, Clone, Copy)]
pub(super) struct Around<'a> {
    pub(super) axle: &'a Axle,
    pub(super) carrier_in: bool,
}

impl PinionGroup {
    /// Presses a ring on; `pressed_n` is the true force of the press, `holding_n` the friction of the ring's fit.
    pub(super) fn press(
        &mut self,
        ring: Ring,
        around: Around<'_>,
        pressed_n: f64,
        holding_n: f64,
    ) -> Result<Done, Refusal> {
        need_free(self.ring_on(ring), Item::Ring { ring })?;
        self.reach_ring(ring, around)?;
        let share = pressed_n / holding_n;
        if share < STARTED_SHARE {
            return Ok(Done::noticing(Notice::RingPartWayOn));
        }
        let gap_mm = if share < 1.0 {
            SEAT_LENGTH_MM * (1.0 - share)
        } else {
            0.0
        };
        self.set_ring(ring, Some(SeatGap { gap_mm, holding_n }));
        self.turns = 0.0;
        Ok(Done::noticing(if share > CLEARLY_HOME {
            Notice::RingHome
        } else {
            Notice::RingStopped
        }))
    }

    pub(super) fn pull_off(&mut self, ring: Ring, around: Around<'_>) -> Result<Done, Refusal> {
        need_fitted(self.ring_on(ring), Item::Ring { ring })?;
        self.reach_ring(ring, around)?;
        self.set_ring(ring, None);
        Ok(Done::plain())
    }

    /// Whether a press or puller can get at a ring.
    fn reach_ring(&self, ring: Ring, around: Around<'_>) -> Result<(), Refusal> {
        need(!self.pinion_in, Refusal::PinionInTheWay)?;
        need(!self.set_up_bearings, Refusal::SetUpBearingsInTheWay)?;
        let inside = ring == Ring::HeadCup && !around.axle.layout().has_cartridge();
        need(!(inside && around.carrier_in), Refusal::HeadCupBehindCarrier)
    }

    pub(super) fn fit_set_up_bearings(&mut self) -> Result<Done, Refusal> {
        need_free(self.set_up_bearings, Item::SetUpBearings)?;
        need(!self.pinion_in, Refusal::PinionBlocksSetUpBearings)?;
        need(!self.any_ring_on(), Refusal::RealBearingsInPlace)?;
        self.set_up_bearings = true;
        self.turns = 0.0;
        Ok(Done::plain())
    }

    pub(super) fn remove_set_up_bearings(&mut self) -> Result<Done, Refusal> {
        need_fitted(self.set_up_bearings, Item::SetUpBearings)?;
        need(!self.pinion_in, Refusal::PinionHoldsSetUpBearings)?;
        self.set_up_bearings = false;
        Ok(Done::plain())
    }

    pub(super) fn fit_spacer(
        &mut self,
        spacer: SpacerChoice,
        new: bool,
        setting: &BenchSetUp,
    ) -> Result<Done, Refusal> {
        need(!self.pinion_in, Refusal::SpacerNeedsPinionOut)?;
        if self.spacer_on() {
            self.remove_spacer()?;
        }
        let mut done = Done::plain();
        match spacer {
            SpacerChoice::None => return Ok(done),
            SpacerChoice::Own => {}
        }
        self.spacer = if setting.axle.layout().has_sleeve() {
            let memory = match (new, self.old_sleeve) {
                (false, Some(memory)) => {
                    if setting.single_use.contains(&Part::Sleeve) {
                        done.reused.push(Part::Sleeve);
                    }
                    memory
                }
                (false, None) => return Err(Refusal::NoUsedSleeve),
                (true, _) => {
                    done.bought.push(Part::Sleeve);
                    SpacerMemory::default()
                }
            };
            self.old_sleeve = None;
            Spacer::Sleeve(memory)
        } else {
            Spacer::Solid
        };
        Ok(done)
    }

    pub(super) fn remove_spacer(&mut self) -> Result<Done, Refusal> {
        need_fitted(self.spacer_on(), Item::Spacer)?;
        need(!self.pinion_in, Refusal::SpacerInside)?;
        if let Spacer::Sleeve(memory) = self.spacer {
            self.old_sleeve = Some(memory);
        }
        self.spacer = Spacer::None;
        Ok(Done::plain())
    }

    pub(super) fn insert_pinion(&mut self, around: Around<'_>) -> Result<Done, Refusal> {
        need_free(self.pinion_in, Item::Pinion)?;
        need(
            self.set_up_bearings || self.all_rings_on(),
            Refusal::PinionNeedsBearings,
        )?;
        self.reach_housing(around)?;
        self.pinion_in = true;
        self.turns = 0.0;
        Ok(Done::plain())
    }

    pub(super) fn remove_pinion(&mut self, around: Around<'_>) -> Result<Done, Refusal> {
        need_fitted(self.pinion_in, Item::Pinion)?;
        need(!self.nut_on(), Refusal::NutHoldsPinion)?;
        self.reach_housing(around)?;
        self.pinion_in = false;
        Ok(Done::plain())
    }

    /// Whether the pinion can pass in or out.
    fn reach_housing(&self, around: Around<'_>) -> Result<(), Refusal> {
        if around.axle.layout() == Layout::B {
            need(!self.cartridge_bolted, Refusal::HeadBlockedByCartridge)
        } else {
            need(!around.carrier_in, Refusal::HeadBlockedByCarrier)
        }
    }

    pub(super) fn fit_seal(&mut self) -> Result<Done, Refusal> {
        need_free(self.seal, Item::Seal)?;
        need(!self.nut_on(), Refusal::FlangeInTheWay)?;
        self.seal = true;
        Ok(Done {
            bought: vec![Part::Seal],
            ..Done::default()
        })
    }

    pub(super) fn remove_seal(&mut self) -> Result<Done, Refusal> {
        need_fitted(self.seal, Item::Seal)?;
        need(!self.nut_on(), Refusal::FlangeInTheWay)?;
        self.seal = false;
        Ok(Done {
            spoiled: vec![Part::Seal],
            ..Done::default()
        })
    }

    pub(super) fn bolt_cartridge(&mut self, axle: &Axle) -> Result<Done, Refusal> {
        need(axle.layout().has_cartridge(), Refusal::NoCartridge)?;
        need_free(self.cartridge_bolted, Item::Cartridge)?;
        self.cartridge_bolted = true;
        Ok(Done::plain())
    }

    pub(super) fn unbolt_cartridge(&mut self, axle: &Axle) -> Result<Done, Refusal> {
        need(axle.layout().has_cartridge(), Refusal::NoCartridge)?;
        need_fitted(self.cartridge_bolted, Item::Cartridge)?;
        self.cartridge_bolted = false;
        Ok(Done::plain())
    }
}

impl Bench {
    /// New parts from the shelf. New bearings have stands of their own.
    pub(super) fn replace(&mut self, part: Part) -> Result<Done, Refusal> {
        match part {
            Part::Nut => {
                need(!self.pinion.nut_on(), Refusal::OldNutOn)?;
                self.pinion.nut_used = false;
            }
            Part::RingBolts => {
                need(self.carrier.wheel.is_none_or(|w| !w.bolted), Refusal::OldBoltsIn)?;
                self.carrier.bolts.used = false;
            }
            Part::PinionBearings => {
                need(
                    !self.pinion.any_ring_on() && !self.pinion.pinion_in,
                    Refusal::OldBearingsOn,
                )?;
                self.draw_stands("pinion bearings", &[Member::HeadBearingStand, Member::TailBearingStand]);
            }
            Part::SideBearings => {
                need(!self.carrier.carrier_in, Refusal::LiftCarrierFirst)?;
                self.draw_stands("side bearings", &[Member::ToothBearingStand, Member::BackBearingStand]);
            }
            Part::Seal => return Err(Refusal::SealComesNew),
            Part::Sleeve => return Err(Refusal::SleeveComesNew),
            Part::SolidSpacer | Part::Gears | Part::Case | Part::Carrier => {
                return Err(Refusal::NotOnTheShelf { part });
            }
        }
        Ok(Done {
            bought: vec![part],
            ..Done::default()
        })
    }

    /// Stands of bearings just unpacked: even over half of what inspection lets pass. `stream` begins the name of their
    /// random numbers.
    fn draw_stands(&mut self, stream: &str, members: &[Member]) {
        let chain = self.setting.axle.chain();
        for member in members {
            let tolerance = chain.link(*member).map_or(0.0, |l| l.tolerance);
            let name = format!("{stream} bought at operation {}: {}", self.operations, member.name());
            let mut stream = Stream::new(self.setting.seed, &name);
            self.truth
                .deviations
                .set(*member, 0.5 * tolerance * stream.between(-1.0, 1.0));
        }
    }
}
