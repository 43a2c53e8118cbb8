//! An axle as it was handed over.

use super::best_depth::approval;
use super::reason::Missing;
use crate::axle::{Bearings, SpacerFitted};
use crate::bench::Bench;
use crate::contact::Contact;
use crate::exercise::attempt::Attempt;
use crate::exercise::counted::Counted;
use crate::exercise::history::Deed;
use crate::exercise::outcome::Outcome;
use crate::gear::EaseOff;

/// What was handed over, with what it is judged by.
#[derive(Debug, Clone)]
pub(super) struct Handed<'a> {
    pub(super) attempt: &'a Attempt,
    pub(super) outcome: Outcome,
    /// What both flanks of the designed gears show at their designed places.
    pub(super) approval: Contact,
    /// Whether the pinion is held by the parts that stay in the axle.
    pub(super) pinion_stays: bool,
    /// Whether, besides, the gears are in mesh.
    pub(super) meshed: bool,
}

impl<'a> Handed<'a> {
    pub(super) fn of(attempt: &'a Attempt) -> Self {
        let bench = attempt.bench();
        let outcome = attempt.outcome();
        let assembly = bench.assembly();
        // Set-up bearings and a pair without its spacer are for trials.
        let pinion_stays = assembly.bearings == Bearings::Real
            && assembly.spacer != SpacerFitted::None
            && outcome.pinion_torque_nm.is_some();
        let pair = &bench.setting().pair;
        let deviates = bench
            .truth()
            .pair
            .flank_deviation
            .iter()
            .any(|d| *d != EaseOff::default());
        let designed = deviates
            .then(|| attempt.exercise().pair(&crate::axle::Truth::default()).ok())
            .flatten();
        Self {
            attempt,
            approval: approval(designed.as_ref().unwrap_or(pair)),
            meshed: pinion_stays && outcome.placement.is_some() && !bench.wheel_is_scrap(),
            pinion_stays,
            outcome,
        }
    }

    pub(super) fn bench(&self) -> &'a Bench {
        self.attempt.bench()
    }

    pub(super) fn counts(&self) -> &'a [Counted] {
        &self.attempt.exercise().scenario().counts
    }

    /// Whether anything is asked of the gears in mesh.
    pub(super) fn asks_mesh(&self) -> bool {
        self.counts().iter().any(|c| c.needs_mesh())
    }

    /// Whether all that is asked for is together.
    pub(super) fn is_together(&self) -> bool {
        if self.counts().is_empty() {
            return true;
        }
        if self.asks_mesh() {
            self.meshed
        } else {
            self.pinion_stays
        }
    }

    /// Whether any part was fitted or moved.
    pub(super) fn was_worked_on(&self) -> bool {
        let work = [Deed::Depth, Deed::Pinion, Deed::Side, Deed::Wheel];
        self.attempt.history().iter().any(|m| work.contains(&m.deed))
    }

    /// Number of the operation that handed the axle over.
    pub(super) fn finish(&self) -> u32 {
        self.attempt.history().last().map_or(0, |m| m.operation)
    }

    /// The last operation of this kind.
    pub(super) fn last(&self, deed: &Deed) -> Option<u32> {
        let found = self.attempt.history().iter().rev().find(|m| m.deed == *deed);
        found.map(|m| m.operation)
    }

    /// What is missing for something to be judged.
    pub(super) fn missing(&self, mesh: bool) -> Missing {
        if self.bench().wheel_is_scrap() && mesh {
            Missing::SoundRingGear
        } else if !self.pinion_stays {
            Missing::PinionHeld
        } else {
            Missing::Mesh
        }
    }
}
