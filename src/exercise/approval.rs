//! The maker's approval prints: what a set of gears shows at its designed place, as a sheet beside the card would tell it.
//!
//! Gears are lapped so that this print does not lie in the middle of the flank, so that nobody can judge a print without it.
//! It is worked out from the gears as designed and knows nothing of the axle on the bench.

use super::counted::Counted;
use super::scenario::DepthFrom;
use super::scenario::Scenario;
use super::score::approval;
use crate::contact::{self, Film, Pair, Pattern, Placement, Route};
use crate::gear::Side;

/// Share of what an upright print would need to lie along its diagonal, below which it is told as level. Judgement.
const LEVEL: f64 = 0.1;

/// The approval print of a set.
#[derive(Debug, Clone, PartialEq)]
pub struct ApprovalPrint {
    /// Name of the set.
    pub gears: String,
    /// Drive, then coast; none where nothing is marked.
    pub flanks: [Option<ApprovedFlank>; 2],
}

/// The approval print on one flank.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ApprovedFlank {
    /// Middle, ends and share of the flank.
    pub pattern: Pattern,
    /// Covariance of what is marked, along and up the tooth: positive rises toward the heel.
    pub lean: f64,
}

/// Which way a print leans.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lean {
    /// It rises to the heel.
    RisingToHeel,
    /// It rises to the toe.
    RisingToToe,
    /// It leans no way that is worth telling.
    Level,
}

impl ApprovedFlank {
    /// How the print leans.
    pub fn leans(&self) -> Lean {
        let p = self.pattern;
        // Of an ellipse that fills its ends, four times the covariance over both halves is how far it lies along the diagonal.
        let halves = 0.25 * (p.heel - p.toe) * (p.top - p.root);
        let share = if halves > 0.0 { 4.0 * self.lean / halves } else { 0.0 };
        if share > LEVEL {
            Lean::RisingToHeel
        } else if share < -LEVEL {
            Lean::RisingToToe
        } else {
            Lean::Level
        }
    }
}

impl ApprovalPrint {
    /// Of a pair of gears as designed.
    pub fn of(pair: &Pair) -> Self {
        let contact = approval(pair);
        Self {
            gears: pair.gears().design().name.clone(),
            flanks: Side::BOTH.map(|side| {
                Some(ApprovedFlank {
                    pattern: contact.flank(side).pattern?,
                    lean: lean(pair, side),
                })
            }),
        }
    }
}

impl Scenario {
    /// Whether prints are judged by the approval print: where old teeth keep the place that they made for themselves they are
    /// not, and a card on which nothing depends on it need not show it.
    pub fn shows_approval(&self) -> bool {
        let depth = self.counts.contains(&Counted::Depth) && self.depth_from == DepthFrom::Best;
        depth || self.counts.contains(&Counted::Print) || self.plates.is_some()
    }
}

/// Covariance of the places that a usual film marks at the designed place, along and up the tooth: positive rises toward the
/// heel.
pub fn lean(pair: &Pair, side: Side) -> f64 {
    let film_um = Film::default().thickness_um;
    let Some(map) = contact::gap_map(pair, Placement::NOMINAL, side, Route::Fast) else {
        return 0.0;
    };
    let (columns, rows) = map.size();
    let marked: Vec<(f64, f64)> = (0..columns)
        .flat_map(|i| (0..rows).map(move |j| (i, j)))
        .filter(|&(i, j)| map.gap_um(i, j).is_some_and(|gap| gap < film_um))
        .map(|(i, j)| map.place(i, j))
        .collect();
    let count = if marked.is_empty() { 1.0 } else { marked.len() as f64 };
    let (mut x, mut y) = (0.0, 0.0);
    for (along, up) in &marked {
        x += along / count;
        y += up / count;
    }
    marked.iter().map(|(along, up)| (along - x) * (up - y)).sum::<f64>() / count
}
