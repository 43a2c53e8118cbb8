//! Axles that stand on the bench whole.

use std::sync::Arc;

use lashwright::axle::{FittedShims, Member};
use lashwright::bench::{Bench, BenchSetUp, ShimPiece, StartingState};
use lashwright::exercise::Exercise;

/// The axle of an exercise for a seed, whole, with a depth shim of `depth_mm`; all other shims are nominal.
pub(crate) fn whole(exercise: &Exercise, seed: u64, depth_mm: f64) -> Bench {
    let axle = exercise.axle();
    let truth = exercise.truth(seed);
    let nominal = |member| axle.nominal_mm(member).unwrap_or(0.0);
    let fitted = FittedShims {
        depth_mm,
        spacer_mm: nominal(Member::SpacerShims),
        sides_mm: [nominal(Member::ToothSideShim), nominal(Member::BackSideShim)],
        adjusters_off_mm: [0.0; 2],
    };
    let (kit, packs) = ShimPiece::usual_kit(axle, seed, Some(fitted));
    let torque_nm = exercise.scenario().targets.nut_torque_nm;
    let start = StartingState::whole(axle, &truth, &kit, &packs, [0.0; 2], torque_nm).expect("a whole axle");
    let pair = Arc::new(exercise.pair(&truth).expect("gears that exist"));
    Bench::new(
        Arc::new(BenchSetUp::usual(axle.clone(), pair, seed, kit)),
        truth,
        &start,
    )
    .expect("a start")
}
