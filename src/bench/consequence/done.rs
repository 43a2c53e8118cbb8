//! What an operation came to, beside the changed state.

use crate::bench::aspect::Aspects;
use crate::bench::measurand::Measurand;
use crate::bench::notice::Notice;
use crate::bench::part::Part;
use crate::bench::reading::ReadingPart;

/// What an operation came to, beside the changed state.
#[derive(Debug, Clone, PartialEq, Default)]
pub(in crate::bench) struct Done {
    pub(in crate::bench) more_minutes: f64,
    pub(in crate::bench) noticed: Vec<Notice>,
    pub(in crate::bench) shown: Option<Shown>,
    pub(in crate::bench) bought: Vec<Part>,
    pub(in crate::bench) spoiled: Vec<Part>,
    pub(in crate::bench) reused: Vec<Part>,
}

/// What an instrument showed, to go on record.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::bench) struct Shown {
    pub(in crate::bench) what: Measurand,
    pub(in crate::bench) instrument: String,
    pub(in crate::bench) values: Vec<(ReadingPart, Option<f64>)>,
    /// What the values depend on.
    pub(in crate::bench) behind: Aspects,
}

impl Done {
    /// Nothing beside the changed state.
    pub(in crate::bench) fn plain() -> Self {
        Self::default()
    }

    /// Something seen, heard or felt.
    pub(super) fn noticing(notice: Notice) -> Self {
        Self {
            noticed: vec![notice],
            ..Self::default()
        }
    }

    /// Something that an instrument showed.
    pub(in crate::bench) fn showing(shown: Shown) -> Self {
        Self {
            shown: Some(shown),
            ..Self::default()
        }
    }

    /// Both, one after the other.
    pub(super) fn and(mut self, mut other: Self) -> Self {
        self.more_minutes += other.more_minutes;
        self.noticed.append(&mut other.noticed);
        self.bought.append(&mut other.bought);
        self.spoiled.append(&mut other.spoiled);
        self.reused.append(&mut other.reused);
        self.shown = other.shown.or(self.shown);
        self
    }
}
