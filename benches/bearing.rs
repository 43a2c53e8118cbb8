//! Speed of the bearing floor. Goal: one full solve of a pair with friction in 5 µs on one core, since scoring asks for
//! thousands.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use lashwright::bearing::{SpacerMemory, Support};
use lashwright::job::supports;

fn support(name: &str) -> Support {
    supports::find(name).expect("embedded").support
}

/// Everything that `preload` computes for one case: clamp, share of the spacer, preload, deflections, viscosity, rolling
/// and breakaway torque.
fn full_solve(support: &Support, torque_nm: f64) -> f64 {
    let state = support
        .tightened_to(torque_nm, SpacerMemory::default())
        .expect("solved");
    let running = support.running(20.0, 20.0);
    let rolling = support.rolling_torque(state.preload_n, running);
    let breakaway = support.breakaway_torque(state.preload_n);
    rolling.total_nm + breakaway.total_nm + state.pinion_shift_mm
}

fn solves(criterion: &mut Criterion) {
    for (name, torque) in [
        ("medium-axle-solid", 217.0),
        ("light-axle-sleeve", 217.0),
        ("heavy-axle-solid", 1000.0),
    ] {
        let support = support(name);
        criterion.bench_function(&format!("full solve, {name}"), |b| {
            b.iter(|| full_solve(black_box(&support), black_box(torque)));
        });
    }
    let sleeve = support("light-axle-sleeve");
    let state = sleeve.tightened_to(217.0, SpacerMemory::default()).expect("solved");
    criterion.bench_function("one degree of the nut on a sleeve", |b| {
        b.iter(|| sleeve.turned_on(black_box(&state), black_box(1.0)));
    });
}

criterion_group!(benches, solves);
criterion_main!(benches);
