//! What a debrief tells of: the whole axle after a build, only what was asked for or looked at after a measuring exercise.

use crate::bench::Measurand;
use crate::exercise::attempt::Attempt;

/// A section of a debrief that not every exercise has. What was judged, what was believed and what was done is always told.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Section {
    /// Where the gears stand, with the forces in the bearings, and the contact patterns that come of it.
    State,
    /// Shim packs as signed off.
    Packs,
    /// Numbers and mark etched on the gears.
    Marks,
    /// How the parts were made, and the faults that there may be.
    Made,
    /// Builds, own ones and the reference technician's: what was changed, the pattern of each, what each was worth.
    Builds,
}

impl Section {
    /// All of them, in the order in which they are told.
    pub const ALL: [Self; 5] = [Self::State, Self::Packs, Self::Marks, Self::Made, Self::Builds];

    /// The sections of an attempt's debrief.
    ///
    /// An exercise in which nothing of the axle's set-up wins points is there to be read or measured: how the axle stands and
    /// how it came to stand so was no part of it. A pack is where one was wanted or measured, the gears' numbers are where
    /// they were compared, faults are where there can be some.
    pub(super) fn of(attempt: &Attempt) -> Vec<Self> {
        let card = attempt.exercise().scenario();
        let records = attempt.bench().records();
        let looked = |of: fn(Measurand) -> bool| records.iter().any(|record| of(record.what));
        let sets_up = !card.counts.is_empty();
        let is_told = |section: &Self| match section {
            Self::State | Self::Builds => sets_up,
            Self::Packs => sets_up || card.pack.is_some() || looked(|what| matches!(what, Measurand::ShimPack { .. })),
            Self::Marks => sets_up || looked(|what| what == Measurand::MatchNumbers {}),
            Self::Made => sets_up || !card.faults.is_empty(),
        };
        Self::ALL.into_iter().filter(is_told).collect()
    }
}
