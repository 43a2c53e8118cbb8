//! Attempts at the embedded exercises: what an axle that comes in whole is like, and what readings say of it.

use std::sync::Arc;

use lashwright::axle::{Layout, SideSetting, Turning, resistance};
use lashwright::bench::{Bench, Operation, ShimPiece, ShimPlace, Tool};
use lashwright::exercise::technician::{Policy, play};
use lashwright::exercise::{Attempt, Exercise};
use lashwright::job::scenarios;
use lashwright::words::answer::refusal;

fn exercises() -> Vec<Exercise> {
    let found = scenarios::embedded().expect("embedded exercises are good");
    found.into_iter().map(|f| f.exercise).collect()
}

/// The axle of an exercise, whole, with a nominal depth shim.
fn whole(exercise: &Exercise, seed: u64) -> Bench {
    let axle = exercise.axle();
    let depth_mm = axle.nominal_mm(axle.depth_shim_member()).unwrap_or(0.0);
    super::whole::whole(exercise, seed, depth_mm)
}

fn reading(bench: &mut Bench, json: &str, name: &str) -> Option<f64> {
    let answer = bench.apply(&Operation::from_json(json).unwrap_or_else(|e| panic!("{json}: {e}")));
    assert!(answer.done, "{json}: {:?}", answer.refused);
    let found = answer.readings.iter().find(|r| r.quantity.key() == name);
    found.unwrap_or_else(|| panic!("{json}: no {name} in {answer:?}")).value
}

/// For every exercise and 12 seeds: the axle stands near its drawing, its pinion is held, adjusters stand on slots; readings
/// are near the truth and are not the truth.
#[test]
fn whole_axles_of_all_exercises_can_be_read() {
    for exercise in exercises() {
        let mut off = Vec::new();
        for seed in 0..12 {
            let mut b = whole(&exercise, seed);
            let placement = b.built().placement.expect("in mesh");
            assert!(
                placement.pinion_axial_mm.abs() < 0.6,
                "{} {seed}: {placement:?}",
                exercise.scenario().title
            );
            assert!(
                placement.wheel_axial_mm.abs() < 0.2,
                "{} {seed}: {placement:?}",
                exercise.scenario().title
            );
            if b.setting().axle.layout().side_setting() == SideSetting::Adjusters {
                let notch = b.setting().axle.adjuster().notch_deg();
                for stack in b.assembly().side {
                    let notches = stack.adjuster_deg / notch;
                    assert!((notches - notches.round()).abs() < 1e-9, "on a slot: {notches}");
                }
            }
            let truth = resistance(&b.setting().axle, b.truth(), b.built(), Turning::BY_HAND)
                .expect("held")
                .total_nm;
            let json = r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"cord_and_scale"}"#;
            if b.apply(&Operation::from_json(json).expect("good")).done {
                let shown = reading(&mut b, json, "rolling_torque").expect("a value");
                off.push(shown / truth - 1.0);
                assert!(shown.to_bits() != truth.to_bits(), "a reading is not the truth");
            }
        }
        println!("{}: cord and scale off by {off:.3?}", exercise.scenario().title);
        assert!(!off.is_empty(), "at least one of twelve turns");
        // Half of 3 % and 3 % a pull, cut at 2.5 deviations, and half a graduation of 0.1 N·m on a newton metre and more.
        assert!(off.iter().all(|o| o.abs() < 0.18), "{off:?}");
    }
}

/// Repeating a reading on the same set-up averages away the pull, never the instrument: the mean keeps an error, and setting
/// up again draws another.
#[test]
fn repeated_readings_keep_the_error_of_the_instrument() {
    let exercise = exercises().into_iter().next().expect("one");
    let mut b = whole(&exercise, 3);
    let piece = u32::try_from(b.setting().kit.len() - 1).expect("small");
    let json =
        format!(r#"{{"do":"measure","what":{{"quantity":"shim_piece","piece":{piece}}},"instrument":"micrometer"}}"#);
    let values: Vec<f64> = (0..200)
        .map(|_| reading(&mut b, &json, "thickness").expect("a value"))
        .collect();
    let mean = values.iter().sum::<f64>() / 200.0;
    let spread = (values.iter().map(|v| (v - mean) * (v - mean)).sum::<f64>() / 199.0).sqrt();
    println!("micrometer: mean {mean:.4}, spread {spread:.4}");
    assert!((0.0005..0.003).contains(&spread), "one reading to the next: {spread}");
    let truth = b.packs().height_mm(&b.setting().kit, b.setting().kit.len() - 1);
    // The zero's own error: deviation 1.5 µm, cut at 2.5; the mean of 200 has 0.1 µm of the rest.
    assert!((mean - truth).abs() < 0.0045, "{mean} {truth}");
}

/// The kit: every place of the layout, labels wrong by at most 0.0005 in and not all alike, and the same for the same seed.
#[test]
fn kits_are_discrete_and_mislabelled() {
    for exercise in exercises() {
        let axle = exercise.axle();
        let (kit, packs) = ShimPiece::usual_kit(axle, 5, None);
        assert_eq!(kit, ShimPiece::usual_kit(axle, 5, None).0, "same seed");
        assert_ne!(kit, ShimPiece::usual_kit(axle, 6, None).0, "other seed");
        assert!(packs.iter().all(Vec::is_empty), "nothing was fitted");
        assert!(
            kit.iter().all(|p| (p.true_mm - p.labelled_mm).abs() <= 0.0127),
            "labels"
        );
        assert!(
            kit.iter().any(|p| (p.true_mm - p.labelled_mm).abs() > 0.006),
            "some are plainly wrong"
        );
        let has = |place| kit.iter().any(|p| p.place == place);
        assert!(has(ShimPlace::Depth), "depth");
        assert_eq!(has(ShimPlace::Spacer), axle.layout() != Layout::A, "spacer shims");
        assert_eq!(has(ShimPlace::ToothSide), axle.layout() == Layout::A, "side shims");
    }
}

/// The wrong instrument is refused with its reason; so is one that is not there.
#[test]
fn the_wrong_instrument_is_refused() {
    let exercise = exercises().into_iter().next().expect("one");
    let mut b = whole(&exercise, 1);
    for (quantity, instrument, word) in [
        ("rolling_torque", "click_wrench", "click"),
        ("rolling_torque", "micrometer", "does not show rotating torque"),
        ("print", "eye", "marking compound"),
        ("wheel_temperature", "nose", "There is no `nose`"),
    ] {
        let json = format!(r#"{{"do":"measure","what":{{"quantity":"{quantity}"}},"instrument":"{instrument}"}}"#);
        let answer = b.apply(&Operation::from_json(&json).expect("good"));
        let reason = answer.refused.expect("refused");
        let reason = refusal(&reason);
        assert!(reason.contains(word), "{json}: {reason}");
    }
    assert!(
        Tool::usual()
            .iter()
            .all(|t| t.name.chars().all(|c| c.is_ascii_lowercase() || c == '_')),
        "names"
    );
}

/// A stem square to the tooth's trace reads less than one along its motion, by the cosine of the spiral angle.
#[test]
fn the_stem_decides_what_a_dial_reads() {
    let exercise = exercises().into_iter().next().expect("one");
    let b = whole(&exercise, 2);
    let read = |stem: &str| {
        // A mean over many teeth and stops, so that only the stem differs.
        let mut b = b.clone();
        let values: Vec<f64> = (0..40)
            .filter_map(|tooth| {
                let json = format!(
                    r#"{{"do":"measure","what":{{"quantity":"lash","tooth":{}}},"instrument":"lever_dial","stem":"{stem}"}}"#,
                    tooth % 30
                );
                let answer = b.apply(&Operation::from_json(&json).expect("good"));
                answer.readings.first().and_then(|r| r.value)
            })
            .collect();
        assert!(values.len() == 40, "all teeth read: {}", values.len());
        values.iter().sum::<f64>() / 40.0
    };
    let (along, square) = (read("along_motion"), read("square_to_trace"));
    let beta = b.setting().axle.gears().outer_spiral_angle_rad;
    println!(
        "along the motion {along:.4}, square to the trace {square:.4}, cos β {:.4}",
        lashwright::numerics::math::cos(beta)
    );
    assert!(
        (square / along - lashwright::numerics::math::cos(beta)).abs() < 0.01,
        "{square} {along}"
    );
}

/// An exercise that was played to its end begins clean the next time: nothing of an attempt stays in what the next one is
/// begun from.
#[test]
fn an_exercise_begun_twice_begins_clean() {
    for exercise in exercises() {
        let name = exercise.scenario().title.clone();
        let fresh = Arc::new(exercise.clone());
        let used = Arc::new(exercise);
        let begin = |exercise: &Arc<Exercise>| Attempt::begin(Arc::clone(exercise), 6).expect("an attempt");
        let before = begin(&used);
        for policy in [Policy::Reference, Policy::Random] {
            let played = play(&used, 6, policy).expect("a seed that can be played");
            assert_ne!(
                played.bench().state_hash(),
                before.bench().state_hash(),
                "{name}: it was played"
            );
        }
        let [again, first] = [&used, &fresh].map(begin);
        assert!(again.steps().is_empty() && again.seen().records.is_empty(), "{name}");
        assert_eq!(again.history().len(), 1, "{name}: only its beginning");
        for other in [&first, &before] {
            assert_eq!(again.bench().state_hash(), other.bench().state_hash(), "{name}");
            assert_eq!(again.seen(), other.seen(), "{name}");
        }
        // The same work comes out the same, whoever worked before.
        let look = Operation::from_json(
            r#"{"do":"measure","what":{"quantity":"shim_piece","piece":0},"instrument":"micrometer"}"#,
        );
        let look = look.expect("an operation");
        let [mut again, mut first] = [again, first];
        assert_eq!(again.apply(&look), first.apply(&look), "{name}");
    }
}
