//! Speed of the bench. Goals on one core: an operation answered in 2 ms, a lash reading in 5 ms, a print in 60 ms.

use std::sync::Arc;

use criterion::{Criterion, criterion_group, criterion_main};
use lashwright::axle::{Assembly, Axle, Layout, Target, Truth, settle, usual_side_bearings};
use lashwright::bench::{Bench, Operation, Setting, ShimPiece, ShimPlace, Start};
use lashwright::catalogue;
use lashwright::contact::Pair;
use lashwright::gear::{Design, GearSet};
use lashwright::job::supports;

fn whole() -> Bench {
    let file = catalogue::gear_set("3.73-tapered-ring-224").expect("embedded");
    let gears = GearSet::new(Design::from_toml(file.text).expect("a good file")).expect("gears that exist");
    let support = supports::find("medium-axle-solid").expect("embedded").support;
    let side = usual_side_bearings(gears.design().wheel_outer_pitch_diameter_mm);
    let target = Target {
        pinion_preload_n: 5_500.0,
        side_squeeze_mm: 0.2,
    };
    let layout = Layout::C;
    let axle = Axle::new(layout, layout.depth_shims()[0], &gears, support, side, target).expect("parts");
    let assembly = Box::new(Assembly::nominal(&axle).expect("numbers"));
    let piece = |place, true_mm| ShimPiece {
        place,
        labelled_mm: true_mm,
        true_mm,
    };
    let kit = vec![piece(ShimPlace::Depth, 1.0), piece(ShimPlace::Spacer, 0.8)];
    let setting = Setting::usual(axle, Arc::new(Pair::new(gears)), 1, kit);
    let packs = [vec![0], vec![1], vec![], vec![]];
    Bench::new(
        Arc::new(setting),
        Truth::default(),
        &Start::Assembled { assembly, packs },
    )
    .expect("a start")
}

fn operations(criterion: &mut Criterion) {
    let bench = whole();
    let axle = &bench.setting().axle;
    criterion.bench_function("settle a whole axle", |b| {
        b.iter(|| settle(axle, bench.truth(), bench.assembly()).expect("settles"));
    });
    let mut painted = bench.clone();
    for json in [
        r#"{"do":"brush_paste","teeth":[0],"film":"usual"}"#,
        r#"{"do":"roll","drag_nm":10,"passes":5}"#,
    ] {
        assert!(
            painted.apply(&Operation::from_json(json).expect("an operation")).done,
            "{json}"
        );
    }
    for (name, json) in [
        ("turn the nut", r#"{"do":"turn_nut","angle_deg":1}"#),
        ("push the pinion", r#"{"do":"push","what":"pinion","toward":"apart"}"#),
        ("turn the carrier", r#"{"do":"turn","what":"carrier","turns":3}"#),
        ("take it all apart", r#"{"do":"take_apart","to":"bearings"}"#),
        (
            "read lash",
            r#"{"do":"measure","what":{"quantity":"lash","tooth":3},"instrument":"dial_indicator"}"#,
        ),
        (
            "read rolling torque",
            r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"small_dial_wrench"}"#,
        ),
        (
            "read a print",
            r#"{"do":"measure","what":{"quantity":"print"},"instrument":"eye"}"#,
        ),
    ] {
        let operation = Operation::from_json(json).expect("an operation");
        criterion.bench_function(name, |b| {
            b.iter_batched(
                || painted.clone(),
                |mut bench| bench.apply(&operation),
                criterion::BatchSize::SmallInput,
            );
        });
    }
    criterion.bench_function("hash the state", |b| b.iter(|| bench.state_hash()));
}

criterion_group!(benches, operations);
criterion_main!(benches);
