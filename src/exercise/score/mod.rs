//! What an attempt is worth, and where each lost point went.
//!
//! ```text
//! Attempt ─┬─ handed   what was handed over: true numbers, approval prints, best depth
//!          ├─ verdict  parts condemned against parts that cannot be set right
//!          └─ result 50, process 25, understanding 15, economy 10 ── marks ──> Score, Loss
//! ```
//! - `result`: the truth against the card's bands, flat inside. What a reading said does not matter here.
//! - `process`: a final verification that is not stale, the sheet, and how the parts were put together.
//! - `understanding`: predictions by a quadratic rule against "nothing known".
//! - `economy`: tear-downs and parts beyond par and one more.
//!
//! An unsafe act, an incurable fault that was not reported and a sound part condemned cap the total. How the points inside
//! of a part are shared out is judgement; no source gives it. Sizes of bands stand in the scenario.
//!
//! Nothing is lost without a reason: 100 − total is the sum of all losses, and each [`LossReason`] holds the numbers that it
//! was judged by. Its sentence is made of it in `words`.

mod best_depth;
mod economy;
mod handed;
mod marks;
mod points;
mod process;
pub mod reason;
mod result;
mod sheet;
mod understanding;
mod verdict;

pub use best_depth::{approval, best_depth_mm};
pub use points::{CAP, Loss, Score, ScorePart};
pub use reason::{LossReason, PlateNeeds};

pub use super::judgement::PLATE_TOLERANCE_MM;
pub(super) use super::judgement::PRINT_FULL;
pub(super) use result::{COAST_TIMES, EDGE_SHARE, LASH_ZERO_MM, NUT_ZERO_SHARE, PRINT_ZERO, WRENCH_SHARE};
pub(super) use sheet::PACK_MM;

use super::attempt::Attempt;
use super::par::Par;
use handed::Handed;
use marks::tally;
use reason::{CapCause, Whole};
use verdict::Verdict;

/// The score of an attempt against its par. Pure: the same attempt gives the same bits. An attempt that is not finished has
/// no points, so that a score tells nothing of a truth that is still hidden.
pub fn score(attempt: &Attempt, par: &Par) -> Score {
    if !attempt.is_finished() {
        return unfinished(attempt);
    }
    let weights = attempt.exercise().scenario().weights;
    let handed = Handed::of(attempt);
    let verdict = Verdict::of(attempt);
    let mut losses = Vec::new();
    let mut part = |part, full, marks: &[marks::Mark]| tally(part, full, marks, &mut losses);
    let outcome = part(ScorePart::Outcome, weights.outcome, &result::marks(&handed, &verdict));
    let process = part(ScorePart::Process, weights.process, &process::marks(&handed, &verdict));
    let understanding = part(
        ScorePart::Understanding,
        weights.understanding,
        &understanding::marks(attempt),
    );
    let reached = if weights.outcome > 0.0 {
        outcome / weights.outcome
    } else {
        1.0
    };
    let economy = part(
        ScorePart::Economy,
        weights.economy,
        &economy::marks(&handed, &verdict, par, reached),
    );
    let sum = outcome + process + understanding + economy;
    let causes = cap_causes(attempt, &verdict);
    let total = if causes.is_empty() || sum < CAP { sum } else { CAP };
    let mut taken = sum - total;
    for cause in causes {
        losses.push(Loss {
            part: ScorePart::Cap,
            points: taken,
            operation: Some(cause.operation()),
            reason: Whole::Capped {
                cause,
                most: CAP,
                without: sum,
            }
            .into(),
        });
        taken = 0.0;
    }
    Score {
        total,
        outcome,
        process,
        economy,
        understanding,
        losses,
    }
}

/// What caps a total.
fn cap_causes(attempt: &Attempt, verdict: &Verdict) -> Vec<CapCause> {
    let unsafe_acts = attempt.bench().ledger().unsafe_acts.iter().take(1);
    unsafe_acts
        .map(|(operation, caution)| CapCause::Unsafe {
            operation: *operation,
            caution: *caution,
        })
        .chain(verdict.missed())
        .chain(verdict.false_alarms())
        .collect()
}

/// No points yet.
fn unfinished(attempt: &Attempt) -> Score {
    let operations = attempt.bench().operations();
    let weights = attempt.exercise().scenario().weights;
    let parts = [
        (ScorePart::Outcome, weights.outcome),
        (ScorePart::Process, weights.process),
        (ScorePart::Understanding, weights.understanding),
        (ScorePart::Economy, weights.economy),
    ];
    Score {
        total: 0.0,
        outcome: 0.0,
        process: 0.0,
        economy: 0.0,
        understanding: 0.0,
        losses: parts
            .into_iter()
            .map(|(part, points)| Loss {
                part,
                points,
                operation: None,
                reason: Whole::NotHandedOver { operations }.into(),
            })
            .collect(),
    }
}
