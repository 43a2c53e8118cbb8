//! The best depth that an axle can be set to, where its wheel, its offset and its squareness are as they are.
//!
//! P and G form a ridge, and E and Σ move the prints too: a pinion that stands at P = 0 is not the best answer everywhere.
//! The best is where both prints come nearest to the approval prints of the set.

use crate::contact::{self, Contact, FAST_REACH, Film, Pair, Placement, Route};
use crate::exercise::judgement::{FLANK_WEIGHTS, PRINT_FULL};

/// Stands for the distance of a print that is not there, in full marks.
const NO_PRINT: f64 = 10.0;
/// Places at which depth is tried, mm apart; where the fast route does not hold, the exact one takes fewer.
const STEPS_MM: [f64; 2] = [0.02, 0.06];
/// Halvings (by the golden section) of what is left after that.
const SECTIONS: u32 = 12;

/// The approval prints of a set: what both flanks show at the designed placement.
pub fn approval(designed: &Pair) -> Contact {
    contact::solve(designed, Placement::NOMINAL, Film::default(), Route::Exact)
}

/// The best P, mm, at this G, E and Σ, between the ends of what the fast route reaches. None where no depth leaves a print
/// on the drive flank, or where the approval has none.
pub fn best_depth_mm(pair: &Pair, at: Placement, approval: &Contact) -> Option<f64> {
    let wanted = [
        approval.drive.pattern.map(|p| p.centroid)?,
        approval.coast.pattern.map(|p| p.centroid)?,
    ];
    let placed = |pinion_axial_mm| Placement { pinion_axial_mm, ..at };
    let (route, step_mm) = if FAST_REACH.holds(&placed(0.0)) {
        (Route::Fast, STEPS_MM[0])
    } else {
        (Route::Exact, STEPS_MM[1])
    };
    let distance = |pinion_axial_mm: f64| {
        let contact = contact::solve(pair, placed(pinion_axial_mm), Film::default(), route);
        let prints = [
            contact.drive.pattern?,
            contact.coast.pattern.unwrap_or(contact.drive.pattern?),
        ];
        let there = [true, contact.coast.pattern.is_some()];
        let mut sum = 0.0;
        for (((print, there), wanted), weight) in prints.iter().zip(there).zip(wanted).zip(FLANK_WEIGHTS) {
            let far = |k: usize| (print.centroid[k] - wanted[k]) / PRINT_FULL[k];
            sum += weight
                * if there {
                    far(0) * far(0) + far(1) * far(1)
                } else {
                    NO_PRINT * NO_PRINT
                };
        }
        Some(sum)
    };
    let reach_mm = FAST_REACH.axial_mm;
    let steps = (reach_mm / step_mm).round();
    let mut best: Option<(f64, f64)> = None;
    let mut step = -steps;
    while step <= steps {
        let depth_mm = step * step_mm;
        if let Some(far) = distance(depth_mm)
            && best.is_none_or(|(_, least)| far < least)
        {
            best = Some((depth_mm, far));
        }
        step += 1.0;
    }
    let (middle_mm, _) = best?;
    let golden = 0.5 * (5.0_f64.sqrt() - 1.0);
    let clamped = |mm: f64| mm.clamp(-reach_mm, reach_mm);
    let (mut low, mut high) = (clamped(middle_mm - step_mm), clamped(middle_mm + step_mm));
    for _ in 0..SECTIONS {
        let (a, b) = (high - golden * (high - low), low + golden * (high - low));
        if distance(a).unwrap_or(f64::INFINITY) < distance(b).unwrap_or(f64::INFINITY) {
            high = b;
        } else {
            low = a;
        }
    }
    Some(0.5 * (low + high))
}
