//! Speed of gear geometry and contact on one core, at the shipped resolution.

use std::hint::black_box;

use criterion::{Criterion, criterion_group, criterion_main};
use lashwright::contact::{Film, Pair, Placement, Route, solve};
use lashwright::gear::GearSet;
use lashwright::job::gear_sets;

/// Sets that differ most: tapered and uniform, forgiving and touchy, without offset.
const SETS: [&str; 4] = [
    "3.73-tapered-ring-224",
    "4.56-uniform-ring-238",
    "4.11-tapered-ring-178",
    "3.00-tapered-ring-186",
];

fn gears(name: &str) -> GearSet {
    let found = gear_sets::find(name).unwrap_or_else(|failure| panic!("{failure}"));
    GearSet::new(found.design).unwrap_or_else(|error| panic!("{error}"))
}

fn contact(criterion: &mut Criterion) {
    for name in SETS {
        let gears = gears(name);
        criterion.bench_function(&format!("prepare {name}"), |b| {
            b.iter(|| Pair::new(black_box(gears.clone())));
        });
        let pair = Pair::new(gears);
        criterion.bench_function(&format!("prepare the fast route {name}"), |b| {
            b.iter_batched(
                || pair.clone(),
                |fresh| fresh.prepare_fast(),
                criterion::BatchSize::LargeInput,
            );
        });
        pair.prepare_fast();
        // Both flanks with print, transmission error and edge contact, and lash; not always the same placement.
        let mut k = 0_u32;
        for (route, words) in [(Route::Exact, "both flanks and lash"), (Route::Fast, "the same, fast")] {
            criterion.bench_function(&format!("{words} {name}"), |b| {
                b.iter(|| {
                    k = (k + 1) % 7;
                    let t = f64::from(k) / 7.0 - 0.5;
                    let placement = Placement {
                        pinion_axial_mm: 0.1 * t,
                        wheel_axial_mm: -0.05 * t,
                        offset_mm: 0.02 * t,
                        shaft_angle_rad: 1e-4 * t,
                    };
                    solve(black_box(&pair), placement, Film::default(), route)
                });
            });
        }
    }
    let design = gear_sets::find(SETS[0])
        .unwrap_or_else(|failure| panic!("{failure}"))
        .design;
    criterion.bench_function("gears of a design, with warnings", |b| {
        b.iter(|| GearSet::new(black_box(design.clone())));
    });
}

criterion_group!(benches, contact);
criterion_main!(benches);
