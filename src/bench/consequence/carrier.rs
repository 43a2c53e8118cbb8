//! Carrier, caps, side adjusters, spreader; turning and pushing.

use super::done::Done;
use crate::axle::{Assembly, Axle, Caps, Member, Push, SideSetting, Truth, settle};
use crate::bench::carrier_group::{Adjuster, CarrierGroup};
use crate::bench::choices::{CapTorque, CarrierSide, Toward, Turned};
use crate::bench::notice::Notice;
use crate::bench::refusal::{Item, Refusal, need, need_fitted, need_free};
use crate::bench::setting::BenchSetUp;
use crate::bench::state::Bench;

/// How much wider than its room a carrier with its packs can be knocked in, mm (common practice, no source).
const KNOCKED_IN_MM: f64 = 0.10;
/// Where adjusters stand when the carrier has just been set in: backed off, notches.
const BACKED_OFF_NOTCHES: f64 = -18.0;
/// Side preload at which an adjuster does not turn any further, N.
const RING_STOPS_N: f64 = 40_000.0;
/// Share of what the case was spread too far that stays.
const SET_SHARE: f64 = 0.4;

/// Whether an axle's carrier is set by threaded rings.
fn by_adjusters(axle: &Axle) -> bool {
    axle.layout().side_setting() == SideSetting::Adjusters
}

impl CarrierGroup {
    pub(super) fn lift_carrier_out(&mut self) -> Result<Done, Refusal> {
        need_fitted(self.carrier_in, Item::Carrier)?;
        need(self.caps == Caps::Off, Refusal::CapsHoldCarrier)?;
        self.carrier_in = false;
        self.turns = 0.0;
        Ok(Done::plain())
    }

    /// Spreads the case; beyond its limit it takes a set, which is a change of the truth.
    pub(super) fn spread_case(&mut self, by_mm: f64, setting: &BenchSetUp, truth: &mut Truth) -> Done {
        self.spreader_mm = by_mm;
        let beyond_mm = by_mm - setting.spread_limit_mm;
        if beyond_mm > 0.0 {
            for member in [Member::ToothSideSeat, Member::BackSideSeat] {
                let seat = truth.deviations.get(member);
                truth.deviations.set(member, seat + 0.5 * SET_SHARE * beyond_mm);
            }
        }
        Done::plain()
    }

    pub(super) fn release_spreader(&mut self) -> Result<Done, Refusal> {
        need_fitted(self.spreader_mm > 0.0, Item::Spreader)?;
        self.spreader_mm = 0.0;
        Ok(Done::plain())
    }

    pub(super) fn fit_caps(&mut self, as_marked: bool) -> Result<Done, Refusal> {
        need_free(self.caps != Caps::Off, Item::Caps)?;
        need(self.carrier_in, Refusal::NoCarrierForCaps)?;
        self.caps = Caps::Snug;
        self.caps_swapped = !as_marked;
        Ok(Done::plain())
    }

    pub(super) fn tighten_caps(&mut self, to: CapTorque) -> Result<Done, Refusal> {
        need_fitted(self.caps != Caps::Off, Item::Caps)?;
        match to {
            CapTorque::Snug => need(self.caps == Caps::Snug, Refusal::CapsTighter)?,
            CapTorque::Full => self.caps = Caps::Torqued,
        }
        Ok(Done::plain())
    }

    pub(super) fn loosen_caps(&mut self) -> Result<Done, Refusal> {
        need(self.caps == Caps::Torqued, Refusal::CapsNotTorqued)?;
        self.caps = Caps::Snug;
        Ok(Done::plain())
    }

    pub(super) fn remove_caps(&mut self, axle: &Axle) -> Result<Done, Refusal> {
        need_fitted(self.caps != Caps::Off, Item::Caps)?;
        need(self.adjusters.iter().all(|a| !a.locked), Refusal::LocksHoldCaps)?;
        self.caps = Caps::Off;
        if !by_adjusters(axle) {
            return Ok(Done::plain());
        }
        // Whoever takes rings out counts how far they were in, so as to find the place again.
        let notch_deg = axle.adjuster().notch_deg();
        let [tooth_notches, back_notches] = self.adjusters.map(|a| {
            let notches = a.deg / notch_deg - BACKED_OFF_NOTCHES;
            // Nobody counts finer than a tenth of a notch.
            (10.0 * notches).round() / 10.0
        });
        Ok(Done::noticing(Notice::AdjustersWereIn {
            tooth_notches,
            back_notches,
        }))
    }

    /// Turns an adjuster without asking whether it stops on the way.
    fn adjuster_turned(&self, side: CarrierSide, notches: f64, axle: &Axle) -> Result<Self, Refusal> {
        need(by_adjusters(axle), Refusal::NoAdjusters)?;
        need(self.carrier_in && self.caps != Caps::Off, Refusal::AdjusterThreadOpen)?;
        need(self.caps == Caps::Snug, Refusal::AdjusterBinds)?;
        need(!self.adjuster(side).locked, Refusal::LockIsIn)?;
        let mut turned = self.clone();
        let adjuster = turned.adjuster_mut(side);
        adjuster.deg += notches * axle.adjuster().notch_deg();
        adjuster.on_slack = notches < 0.0 || (adjuster.on_slack && notches == 0.0);
        turned.turns = 0.0;
        Ok(turned)
    }

    pub(super) fn fit_lock(&mut self, side: CarrierSide, axle: &Axle) -> Result<Done, Refusal> {
        need(by_adjusters(axle), Refusal::NoAdjusters)?;
        need(self.caps != Caps::Off, Refusal::NoCapForLock)?;
        need_free(self.adjuster(side).locked, Item::Lock { side })?;
        let notches = self.adjuster(side).deg / axle.adjuster().notch_deg();
        need((notches - notches.round()).abs() < 1.0e-6, Refusal::NoSlotUnderLock)?;
        self.adjuster_mut(side).locked = true;
        Ok(Done::plain())
    }

    pub(super) fn remove_lock(&mut self, side: CarrierSide) -> Result<Done, Refusal> {
        need_fitted(self.adjuster(side).locked, Item::Lock { side })?;
        self.adjuster_mut(side).locked = false;
        Ok(Done::plain())
    }
}

impl Bench {
    /// How much wider than their room the side stacks would be with the carrier in and caps snug, mm.
    fn squeeze_mm(&self) -> Result<f64, Refusal> {
        let tried = Assembly {
            carrier_in: true,
            caps: Caps::Snug,
            ..self.fitted()
        };
        let built = settle(&self.setting.axle, &self.truth, &tried)?;
        Ok(built.side.map_or(0.0, |s| s.squeeze_mm))
    }

    pub(super) fn set_carrier_in(&mut self, marks_out_teeth: u32) -> Result<Done, Refusal> {
        need_free(self.carrier.carrier_in, Item::Carrier)?;
        need(self.carrier.caps == Caps::Off, Refusal::CapsInTheWay)?;
        if by_adjusters(&self.setting.axle) {
            let notch_deg = self.setting.axle.adjuster().notch_deg();
            self.carrier.adjusters = [Adjuster {
                deg: BACKED_OFF_NOTCHES * notch_deg,
                on_slack: true,
                locked: false,
            }; 2];
        } else {
            need(self.squeeze_mm()? <= KNOCKED_IN_MM, Refusal::SideStacksTooWide)?;
        }
        self.carrier.carrier_in = true;
        self.carrier.timing_offset = marks_out_teeth;
        self.carrier.turns = 0.0;
        self.carrier.push = Push::Middle;
        Ok(Done::plain())
    }

    pub(super) fn turn_adjuster(&mut self, side: CarrierSide, notches: f64) -> Result<Done, Refusal> {
        let mut tried = self.clone();
        tried.carrier = self.carrier.adjuster_turned(side, notches, &self.setting.axle)?;
        let built = settle(&self.setting.axle, &self.truth, &tried.fitted())?;
        need(
            built.side.is_none_or(|s| s.preload_n < RING_STOPS_N),
            Refusal::AdjusterStops,
        )?;
        self.carrier = tried.carrier;
        Ok(Done::plain())
    }

    /// Whether what is to be turned or pushed is held in its bearings.
    pub(in crate::bench) fn need_held(&self, what: Turned) -> Result<(), Refusal> {
        match what {
            Turned::Pinion => need(self.built.pinion.is_some(), Refusal::PinionNotHeld),
            Turned::Carrier => need(self.built.side.is_some(), Refusal::CarrierNotHeld),
        }
    }

    pub(super) fn turn(&mut self, what: Turned, turns: f64) -> Result<Done, Refusal> {
        self.need_held(what)?;
        let ratio = self.setting.axle.ratio();
        let meshed = self.built.placement.is_some();
        let (pinion, carrier) = match what {
            Turned::Pinion => (turns, if meshed { turns / ratio } else { 0.0 }),
            Turned::Carrier => (if meshed { turns * ratio } else { 0.0 }, turns),
        };
        need(!self.scrapes(), Refusal::GearsDoNotTurn)?;
        self.pinion.turns += pinion;
        self.carrier.turns += carrier;
        Ok(Done::plain())
    }

    pub(super) fn push(&mut self, what: Turned, toward: Toward) -> Result<Done, Refusal> {
        self.need_held(what)?;
        let push = match toward {
            Toward::Mesh => Push::Mesh,
            Toward::Apart => Push::Apart,
        };
        match what {
            Turned::Pinion => self.pinion.push = push,
            Turned::Carrier => self.carrier.push = push,
        }
        Ok(Done::plain())
    }
}
