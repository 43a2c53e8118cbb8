//! Speed of the bench. Goals on one core: an operation answered in 2 ms, a lash reading in 5 ms, a print in 60 ms.

use std::sync::Arc;

use criterion::{Criterion, criterion_group, criterion_main};
use lashwright::axle::{Assembly, Axle, Layout, Target, Truth, settle, usual_side_bearings};
use lashwright::bench::{Bench, BenchSetUp, Operation, ShimPiece, ShimPlace, StartingState};
use lashwright::catalogue;
use lashwright::contact::Pair;
use lashwright::exercise::{Attempt, Exercise, par, score};
use lashwright::gear::{Design, GearSet};
use lashwright::job::{scenarios, supports};

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
    let setting = BenchSetUp::usual(axle, Arc::new(Pair::new(gears)), 1, kit);
    let packs = [vec![0], vec![1], vec![], vec![]];
    Bench::new(
        Arc::new(setting),
        Truth::default(),
        &StartingState::Assembled { assembly, packs },
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

/// What each of the thousand attempts does: read, take apart, build up, read.
const ATTEMPT: [&str; 14] = [
    r#"{"do":"clean","what":"shims"}"#,
    r#"{"do":"measure","what":{"quantity":"lash","tooth":0},"instrument":"dial_indicator"}"#,
    r#"{"do":"take_apart","to":"bearings","precautions":["hoist","holding_bar","eye_protection"]}"#,
    r#"{"do":"fit_shims","place":"depth","pieces":[0]}"#,
    r#"{"do":"press","ring":"head_cup","force_kn":24,"precautions":["eye_protection","press_guard"]}"#,
    r#"{"do":"press","ring":"tail_cup","force_kn":24,"precautions":["eye_protection","press_guard"]}"#,
    r#"{"do":"press","ring":"head_cone","force_kn":24,"precautions":["eye_protection","press_guard"]}"#,
    r#"{"do":"fit_spacer","spacer":"own","new":true}"#,
    r#"{"do":"insert_pinion"}"#,
    r#"{"do":"fit_nut","new":true}"#,
    r#"{"do":"tighten_nut","torque_nm":200,"wrench":"large_dial_wrench","precautions":["holding_bar"]}"#,
    r#"{"do":"turn","what":"pinion","turns":12}"#,
    r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"small_dial_wrench"}"#,
    r#"{"do":"finish"}"#,
];

/// Attempts at all exercises, a thousand in all, each done twice: every answer and the state at the end must agree bit for
/// bit. What one takes is measured after that.
fn attempts(criterion: &mut Criterion) {
    let exercises: Vec<Arc<Exercise>> = scenarios::embedded()
        .expect("they ship")
        .into_iter()
        .map(|found| Arc::new(found.exercise))
        .collect();
    let operations = ATTEMPT.map(|json| Operation::from_json(json).expect("an operation"));
    let play = |exercise: &Arc<Exercise>, seed: u64| {
        let mut attempt = Attempt::begin(Arc::clone(exercise), seed).expect("an axle");
        let answers: Vec<String> = operations
            .iter()
            .map(|operation| serde_json::to_string(&attempt.apply(operation)).expect("an answer"))
            .collect();
        (answers, attempt.bench().state_hash())
    };
    for number in 0..1000_u64 {
        let exercise = &exercises[usize::try_from(number).expect("small") % exercises.len()];
        assert!(
            play(exercise, number) == play(exercise, number),
            "attempt {number} came out otherwise"
        );
    }
    println!("1000 attempts replayed bit for bit");
    let mut seed = 0;
    criterion.bench_function("a whole attempt with its gears", |b| {
        b.iter(|| {
            seed += 1;
            play(&exercises[0], seed)
        });
    });
}

/// What the score of a whole axle takes, and its par.
fn scores(criterion: &mut Criterion) {
    let exercise = Arc::new(scenarios::find("oat-barn-tractor").expect("it ships").exercise);
    let mut attempt = Attempt::begin(Arc::clone(&exercise), 1).expect("an axle");
    assert!(
        attempt
            .apply(&Operation::from_json(r#"{"do":"finish"}"#).expect("an operation"))
            .done,
        "handed over"
    );
    criterion.bench_function("par of a seed", |b| b.iter(|| par(&exercise, 1).expect("a par")));
    let par = par(&exercise, 1).expect("a par");
    criterion.bench_function("score of a whole axle", |b| b.iter(|| score(&attempt, &par)));
}

criterion_group!(benches, operations, scores, attempts);
criterion_main!(benches);
