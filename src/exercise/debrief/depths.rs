//! Places and stems that depth and lash are judged by.

use crate::bench::StemChoice;
use crate::contact::{Contact, Placement};
use crate::exercise::attempt::Attempt;
use crate::exercise::outcome::Outcome;
use crate::exercise::scenario::DepthFrom;
use crate::exercise::score::best_depth_mm;

/// Where the gears stand; a pinion alone counts as if the wheel stood as designed.
pub(super) fn place(outcome: &Outcome) -> Option<Placement> {
    let alone = outcome.pinion_axial_mm.map(|pinion_axial_mm| Placement {
        pinion_axial_mm,
        ..Placement::NOMINAL
    });
    outcome.placement.or(alone)
}

/// The P that depth is judged against, worked out once for each place of the wheel.
#[derive(Debug)]
pub(super) struct Depths<'a> {
    pub(super) approval: &'a Contact,
    found: Vec<([u64; 3], Option<f64>)>,
}

impl<'a> Depths<'a> {
    pub(super) fn new(approval: &'a Contact) -> Self {
        Self {
            approval,
            found: Vec::new(),
        }
    }

    /// mm; `at` says where the wheel stands and how the axes lie. All attempts asked for have to be of the same seed.
    pub(super) fn wanted_mm(&mut self, attempt: &Attempt, at: Placement) -> Option<f64> {
        if let (DepthFrom::Found, Some(found)) = (attempt.exercise().scenario().depth_from, attempt.found_at_mm()) {
            return Some(found);
        }
        let key = [at.wheel_axial_mm, at.offset_mm, at.shaft_angle_rad].map(f64::to_bits);
        if let Some((_, depth)) = self.found.iter().find(|(k, _)| *k == key) {
            return *depth;
        }
        let depth = best_depth_mm(&attempt.bench().setting().pair, at, self.approval);
        self.found.push((key, depth));
        depth
    }
}

/// What the card's stem shows of a transverse lash.
pub(super) fn stem_share(attempt: &Attempt) -> f64 {
    let stem = attempt.exercise().scenario().targets.stem.stem();
    stem.share(attempt.bench().setting().axle.gears())
}

/// How the card has the stem laid.
pub(super) fn card_stem(attempt: &Attempt) -> StemChoice {
    attempt.exercise().scenario().targets.stem
}
