//! Carrier, caps, side adjusters, spreader; turning and pushing.

use super::{Done, Refusal, need, refuse};
use crate::axle::{Assembly, Caps, Member, Push, SideSetting, SideStack, settle};
use crate::bench::operation::{CapTorque, Side, Toward, Turned};
use crate::bench::state::Bench;

/// How much wider than its room a carrier with its packs can be knocked in, mm (common practice, no source).
const KNOCKED_IN_MM: f64 = 0.10;
/// Where adjusters stand when the carrier has just been set in: backed off, notches.
const BACKED_OFF_NOTCHES: f64 = -18.0;
/// Side preload at which an adjuster does not turn any further, N.
const RING_STOPS_N: f64 = 40_000.0;
/// Share of what the case was spread too far that stays.
const SET_SHARE: f64 = 0.4;

impl Bench {
    /// How much wider than their room the side stacks would be with the carrier in and caps snug, mm.
    fn squeeze_mm(&self, assembly: &Assembly) -> Result<f64, Refusal> {
        let tried = Assembly {
            carrier_in: true,
            caps: Caps::Snug,
            ..assembly.clone()
        };
        let built = settle(&self.setting.axle, &self.truth, &tried)?;
        Ok(built.side.map_or(0.0, |s| s.squeeze_mm))
    }

    pub(super) fn set_carrier_in(&mut self, marks_out_teeth: u32) -> Result<Done, Refusal> {
        need(!self.assembly.carrier_in, "It is in already.")?;
        need(
            self.assembly.caps == Caps::Off,
            "The caps are in the way: take them off first.",
        )?;
        let setting = self.setting.axle.layout().side_setting();
        if setting == SideSetting::Adjusters {
            let notch_deg = self.setting.axle.adjuster().notch_deg();
            for stack in &mut self.assembly.side {
                *stack = SideStack {
                    adjuster_deg: BACKED_OFF_NOTCHES * notch_deg,
                    on_slack: true,
                    ..SideStack::default()
                };
            }
        } else if self.squeeze_mm(&self.assembly)? > KNOCKED_IN_MM {
            return refuse("The carrier with its side shims is too wide to go in. Spread the case, or thin the packs.");
        }
        self.assembly.carrier_in = true;
        self.assembly.timing_offset = marks_out_teeth;
        self.assembly.carrier_turns = 0.0;
        self.assembly.carrier_push = Push::Middle;
        Ok(Done::plain())
    }

    pub(super) fn lift_carrier_out(&mut self) -> Result<Done, Refusal> {
        need(self.assembly.carrier_in, "It is not in.")?;
        need(
            self.assembly.caps == Caps::Off,
            "The caps hold it: take them off first.",
        )?;
        self.assembly.carrier_in = false;
        self.assembly.carrier_turns = 0.0;
        Ok(Done::plain())
    }

    pub(super) fn spread_case(&mut self, by_mm: f64) -> Done {
        self.assembly.spreader_mm = by_mm;
        let beyond_mm = by_mm - self.setting.spread_limit_mm;
        if beyond_mm > 0.0 {
            for member in [Member::ToothSideSeat, Member::BackSideSeat] {
                let seat = self.truth.deviations.get(member);
                self.truth.deviations.set(member, seat + 0.5 * SET_SHARE * beyond_mm);
            }
        }
        Done::plain()
    }

    pub(super) fn release_spreader(&mut self) -> Result<Done, Refusal> {
        need(self.assembly.spreader_mm > 0.0, "There is no spreader on the case.")?;
        self.assembly.spreader_mm = 0.0;
        Ok(Done::plain())
    }

    pub(super) fn fit_caps(&mut self, as_marked: bool) -> Result<Done, Refusal> {
        need(self.assembly.caps == Caps::Off, "They are on already.")?;
        need(self.assembly.carrier_in, "There is no carrier for them to hold.")?;
        self.assembly.caps = Caps::Snug;
        self.assembly.caps_swapped = !as_marked;
        Ok(Done::plain())
    }

    pub(super) fn tighten_caps(&mut self, to: CapTorque) -> Result<Done, Refusal> {
        need(self.assembly.caps != Caps::Off, "They are not on.")?;
        match to {
            CapTorque::Snug => need(
                self.assembly.caps == Caps::Snug,
                "They are tighter than that already: loosen them.",
            )?,
            CapTorque::Full => self.assembly.caps = Caps::Torqued,
        }
        Ok(Done::plain())
    }

    pub(super) fn loosen_caps(&mut self) -> Result<Done, Refusal> {
        need(self.assembly.caps == Caps::Torqued, "They are not at full torque.")?;
        self.assembly.caps = Caps::Snug;
        Ok(Done::plain())
    }

    pub(super) fn remove_caps(&mut self) -> Result<Done, Refusal> {
        need(self.assembly.caps != Caps::Off, "They are not on.")?;
        need(
            self.assembly.side.iter().all(|s| !s.locked),
            "The locks are bolted to the caps: take them out first.",
        )?;
        self.assembly.caps = Caps::Off;
        if self.setting.axle.layout().side_setting() == SideSetting::Shims {
            return Ok(Done::plain());
        }
        // Whoever takes rings out counts how far they were in, so as to find the place again.
        let notch_deg = self.setting.axle.adjuster().notch_deg();
        let [tooth, back] = self
            .assembly
            .side
            .map(|stack| stack.adjuster_deg / notch_deg - BACKED_OFF_NOTCHES);
        Ok(Done::noticing(format!(
            "The rings were in by {tooth:.1} notches on the tooth side and {back:.1} behind the wheel, counted from where \
             they stand when a carrier is set in."
        )))
    }

    pub(super) fn turn_adjuster(&mut self, side: Side, notches: f64) -> Result<Done, Refusal> {
        self.need_adjusters()?;
        need(
            self.assembly.carrier_in && self.assembly.caps != Caps::Off,
            "Half its thread is in the cap: carrier in and caps on first.",
        )?;
        need(
            self.assembly.caps == Caps::Snug,
            "With the caps at full torque the ring binds: loosen them until they are snug.",
        )?;
        let notch_deg = self.setting.axle.adjuster().notch_deg();
        let mut tried = self.assembly.clone();
        let stack = stack_of(&mut tried, side);
        need(!stack.locked, "Its lock is in: take that out first.")?;
        stack.adjuster_deg += notches * notch_deg;
        stack.on_slack = notches < 0.0 || (stack.on_slack && notches == 0.0);
        tried.carrier_turns = 0.0;
        let built = settle(&self.setting.axle, &self.truth, &tried)?;
        need(
            built.side.is_none_or(|s| s.preload_n < RING_STOPS_N),
            "The ring stops before it has gone that far.",
        )?;
        self.assembly = tried;
        Ok(Done::plain())
    }

    pub(super) fn fit_lock(&mut self, side: Side) -> Result<Done, Refusal> {
        self.need_adjusters()?;
        need(
            self.assembly.caps != Caps::Off,
            "The lock is bolted to the cap: caps on first.",
        )?;
        let notch_deg = self.setting.axle.adjuster().notch_deg();
        let stack = stack_of(&mut self.assembly, side);
        need(!stack.locked, "It is in already.")?;
        let notches = stack.adjuster_deg / notch_deg;
        need(
            (notches - notches.round()).abs() < 1.0e-6,
            "The lock does not fit: no slot stands under it.",
        )?;
        stack.locked = true;
        Ok(Done::plain())
    }

    pub(super) fn remove_lock(&mut self, side: Side) -> Result<Done, Refusal> {
        let stack = stack_of(&mut self.assembly, side);
        need(stack.locked, "It is not in.")?;
        stack.locked = false;
        Ok(Done::plain())
    }

    fn need_adjusters(&self) -> Result<(), Refusal> {
        need(
            self.setting.axle.layout().side_setting() == SideSetting::Adjusters,
            "This axle has side shims and no adjusters.",
        )
    }

    pub(super) fn turn(&mut self, what: Turned, turns: f64) -> Result<Done, Refusal> {
        let ratio = self.setting.axle.ratio();
        let meshed = self.built.placement.is_some();
        let (pinion, carrier) = match what {
            Turned::Pinion => {
                need(self.built.pinion.is_some(), "There is no pinion held in its bearings.")?;
                (turns, if meshed { turns / ratio } else { 0.0 })
            }
            Turned::Carrier => {
                need(self.built.side.is_some(), "There is no carrier held in its bearings.")?;
                (if meshed { turns * ratio } else { 0.0 }, turns)
            }
        };
        if let Some(scrape) = self.scrapes() {
            return refuse(scrape);
        }
        self.assembly.pinion_turns += pinion;
        self.assembly.carrier_turns += carrier;
        Ok(Done::plain())
    }

    pub(super) fn push(&mut self, what: Turned, toward: Toward) -> Result<Done, Refusal> {
        let push = match toward {
            Toward::Mesh => Push::Mesh,
            Toward::Apart => Push::Apart,
        };
        match what {
            Turned::Pinion => {
                need(self.built.pinion.is_some(), "There is no pinion held in its bearings.")?;
                self.assembly.pinion_push = push;
            }
            Turned::Carrier => {
                need(self.built.side.is_some(), "There is no carrier held in its bearings.")?;
                self.assembly.carrier_push = push;
            }
        }
        Ok(Done::plain())
    }
}

fn stack_of(assembly: &mut Assembly, side: Side) -> &mut SideStack {
    let [tooth, back] = &mut assembly.side;
    match side {
        Side::Tooth => tooth,
        Side::Back => back,
    }
}
