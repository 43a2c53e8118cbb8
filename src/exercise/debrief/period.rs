//! What lies between two tear-downs.

use crate::exercise::attempt::{Attempt, Step};
use crate::exercise::history::Moment;

/// From the first to the last operation between two tear-downs.
#[derive(Debug, Clone, Copy)]
pub(super) struct Period {
    pub(super) first: u32,
    pub(super) last: u32,
}

impl Period {
    /// Whether an operation lies in it.
    pub(super) fn holds(self, operation: u32) -> bool {
        operation >= self.first && operation <= self.last
    }

    /// All of an attempt; the last one ends before the hand-over.
    pub(super) fn all(attempt: &Attempt) -> Vec<Self> {
        let history = attempt.history();
        let mut periods = Vec::new();
        let mut first = 1;
        let mut tear_downs = 0;
        let mut end = 0;
        for moment in history {
            if moment.tear_downs > tear_downs {
                tear_downs = moment.tear_downs;
                periods.push(Self {
                    first,
                    last: moment.operation.saturating_sub(1),
                });
                first = moment.operation;
            }
            end = moment.operation;
        }
        periods.push(Self {
            first,
            last: end.saturating_sub(1),
        });
        periods
    }

    /// Operations that were done in it.
    pub(super) fn done(self, attempt: &Attempt) -> impl Iterator<Item = &Step> {
        let steps = attempt.steps().iter();
        steps.filter(move |s| s.answer.done && self.holds(s.answer.operation))
    }

    /// Its part of the history.
    pub(super) fn moments(self, attempt: &Attempt) -> impl Iterator<Item = &Moment> {
        attempt.history().iter().filter(move |m| self.holds(m.operation))
    }
}
