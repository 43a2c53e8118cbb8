//! A score and the points that were lost.

use super::reason::LossReason;

/// The most that is left after an unsafe act, a missed fault or a false alarm.
pub const CAP: f64 = 60.0;

/// A score, in points. The total is the sum of the four parts unless it is capped.
#[derive(Debug, Clone, PartialEq)]
pub struct Score {
    /// 0 to 100.
    pub total: f64,
    /// 0 to its weight, usually 50.
    pub outcome: f64,
    /// 0 to its weight, usually 25.
    pub process: f64,
    /// 0 to its weight, usually 10.
    pub economy: f64,
    /// 0 to its weight, usually 15.
    pub understanding: f64,
    /// Where the rest of 100 points went.
    pub losses: Vec<Loss>,
}

/// What points belong to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum ScorePart {
    /// How near the axle came to what the card wants.
    Outcome,
    /// How it was checked, written down and put together.
    Process,
    /// What was foreseen.
    Understanding,
    /// What it took.
    Economy,
    /// What a cap on the total takes from the sum of the parts.
    Cap,
}

impl ScorePart {
    /// Its name in documents.
    pub fn name(self) -> &'static str {
        match self {
            Self::Outcome => "outcome",
            Self::Process => "process",
            Self::Understanding => "understanding",
            Self::Economy => "economy",
            Self::Cap => "cap",
        }
    }
}

/// Points lost, and why.
#[derive(Debug, Clone, PartialEq)]
pub struct Loss {
    /// Of which part.
    pub part: ScorePart,
    /// How many; 0 where a cap took nothing more.
    pub points: f64,
    /// Number of the operation that it comes from, where there is one.
    pub operation: Option<u32>,
    /// What was judged, with its numbers.
    pub reason: LossReason,
}
