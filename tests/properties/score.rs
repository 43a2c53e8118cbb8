//! The score: what good work, bad work and tricks are worth.

use std::sync::Arc;

use lashwright::bench::{Operation, Part, ReadingPart};
use lashwright::catalogue::{SCENARIOS, Shelf};
use lashwright::contact::{self, Contact, Film, Placement, Route};
use lashwright::exercise::score::reason::{CapCause, OutcomeReason, ProcessReason, Whole};
use lashwright::exercise::score::{CAP, approval, best_depth_mm};
use lashwright::exercise::{Attempt, Exercise, Incurable, Loss, LossReason, Score, ScorePart, par, score};
use lashwright::words;
use proptest::prelude::*;

use super::begun::{begin, exercise};
use super::solvable::build_up;

const OAT_BARN: &str = "oat-barn-tractor";
const FEED_LORRY: &str = "feed-lorry-cartridge";
const CRUSH: &str = "crush-and-stop";

/// The oat barn's tractor with a line of its scenario changed or added.
fn changed(from: &str, to: &str) -> Arc<Exercise> {
    let text = SCENARIOS.iter().find(|s| s.name == OAT_BARN).expect("embedded").text;
    assert!(text.contains(from), "the scenario has no `{from}`");
    let scenario = lashwright::exercise::Scenario::from_toml(&text.replace(from, to)).expect("a good scenario");
    Arc::new(Exercise::prepare(scenario, &Shelf).expect("an exercise"))
}

fn does(attempt: &mut Attempt, json: &str) -> lashwright::bench::Answer {
    let operation = Operation::from_json(json).unwrap_or_else(|e| panic!("{json}: {e}"));
    let answer = attempt.apply(&operation);
    assert!(answer.done, "{json}: {:?}", answer.refused);
    answer
}

fn all(attempt: &mut Attempt, operations: &[&str]) {
    for json in operations {
        does(attempt, json);
    }
}

/// A build by hands that see the truth, as an attempt.
fn built(exercise: &Arc<Exercise>, seed: u64) -> Attempt {
    let mut attempt = begin(exercise, seed);
    let (hands, _) = build_up(exercise, attempt.bench().clone(), seed);
    for operation in &hands.operations {
        assert!(attempt.apply(operation).done, "{operation:?}");
    }
    attempt
}

/// The last checks: torque after ten turns, lash at three places, a print; what was read is written down.
fn verify(attempt: &mut Attempt) {
    all(attempt, &[r#"{"do":"turn","what":"pinion","turns":40}"#]);
    let torque = does(
        attempt,
        r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"small_dial_wrench"}"#,
    );
    let felt = torque.value(ReadingPart::Rolling);
    write(attempt, r#"{"quantity":"rolling_torque"}"#, felt.expect("a value"));
    if !attempt.exercise().scenario().counts.iter().any(|c| c.needs_mesh()) {
        return;
    }
    let mut lash = f64::INFINITY;
    for tooth in [0, 12, 25] {
        let read = measure_lash(attempt, tooth, "lever_dial");
        lash = lash.min(read);
    }
    write(attempt, r#"{"quantity":"lash","tooth":0}"#, lash);
    all(
        attempt,
        &[
            r#"{"do":"brush_paste","teeth":[0,1,2,3,20,21],"film":"usual"}"#,
            r#"{"do":"roll","drag_nm":25,"passes":6}"#,
            r#"{"do":"measure","what":{"quantity":"print"},"instrument":"eye"}"#,
        ],
    );
    write(attempt, r#"{"quantity":"print"}"#, 1.0);
}

fn write(attempt: &mut Attempt, what: &str, value: f64) {
    does(
        attempt,
        &format!(r#"{{"do":"note","what":{what},"value":{value},"remark":"as handed over"}}"#),
    );
}

fn measure_lash(attempt: &mut Attempt, tooth: u32, dial: &str) -> f64 {
    let answer = does(
        attempt,
        &format!(
            r#"{{"do":"measure","what":{{"quantity":"lash","tooth":{tooth}}},"instrument":"{dial}","set_up_again":true}}"#
        ),
    );
    answer.readings.first().and_then(|r| r.value).expect("a value")
}

const UNLOCK: [&str; 3] = [
    r#"{"do":"remove_lock","side":"tooth"}"#,
    r#"{"do":"remove_lock","side":"back"}"#,
    r#"{"do":"loosen_caps"}"#,
];
const LOCK: [&str; 4] = [
    r#"{"do":"tighten_caps","to":"full"}"#,
    r#"{"do":"turn","what":"carrier","turns":3}"#,
    r#"{"do":"fit_lock","side":"tooth"}"#,
    r#"{"do":"fit_lock","side":"back"}"#,
];

/// Moves the wheel by notches away from the pinion, the last move of each ring tightening.
fn move_wheel(attempt: &mut Attempt, notches: f64) {
    let (in_side, out_side) = if notches > 0.0 {
        ("tooth", "back")
    } else {
        ("back", "tooth")
    };
    let by = notches.abs();
    for json in [
        format!(
            r#"{{"do":"turn_adjuster","side":"{out_side}","notches":{}}}"#,
            -by - 1.0
        ),
        format!(r#"{{"do":"turn_adjuster","side":"{in_side}","notches":{by}}}"#),
        format!(r#"{{"do":"turn_adjuster","side":"{out_side}","notches":1}}"#),
    ] {
        does(attempt, &json);
    }
}

fn finish(attempt: &mut Attempt) -> Score {
    does(attempt, r#"{"do":"finish"}"#);
    points(attempt)
}

fn points(attempt: &Attempt) -> Score {
    let par = par(attempt.exercise(), attempt.seed()).expect("a par");
    let found = score(attempt, &par);
    check(&found);
    found
}

/// What holds for every score.
fn check(found: &Score) {
    for (points, most) in [
        (found.total, 100.0),
        (found.outcome, 50.0),
        (found.process, 25.0),
        (found.understanding, 15.0),
        (found.economy, 10.0),
    ] {
        assert!((0.0..=most).contains(&points), "{points} of {most}: {found:?}");
    }
    let lost: f64 = found.losses.iter().map(|l| l.points).sum();
    assert!(
        (100.0 - found.total - lost).abs() < 1e-9,
        "{lost} told of {}",
        100.0 - found.total
    );
    for loss in &found.losses {
        assert!(loss.points >= 0.0, "{loss:?}");
        let why = words::score::loss(&loss.reason);
        let number = why.chars().any(|c| c.is_ascii_digit());
        assert!(number && why.ends_with('.'), "a sentence with a number: {why}");
        let json = serde_json::to_string(&loss.reason).expect("JSON");
        let read: LossReason = serde_json::from_str(&json).unwrap_or_else(|e| panic!("{json}: {e}"));
        assert_eq!(read, loss.reason, "the same reason out of {json}");
    }
    for (part, points, most) in [
        (ScorePart::Outcome, found.outcome, 50.0),
        (ScorePart::Process, found.process, 25.0),
        (ScorePart::Understanding, found.understanding, 15.0),
        (ScorePart::Economy, found.economy, 10.0),
    ] {
        let lost: f64 = of(found, part).map(|l| l.points).sum();
        assert!((points + lost - most).abs() < 1e-9, "{part:?}: {points} and {lost}");
    }
}

fn of(found: &Score, part: ScorePart) -> impl Iterator<Item = &Loss> {
    found.losses.iter().filter(move |l| l.part == part)
}

/// What caps a total.
fn capped(found: &Score) -> impl Iterator<Item = &CapCause> {
    of(found, ScorePart::Cap).filter_map(|l| match &l.reason {
        LossReason::Whole(Whole::Capped { cause, .. }) => Some(cause),
        _ => None,
    })
}

fn show(what: &str, found: &Score) {
    println!(
        "{what}: {:.1} = outcome {:.1}, process {:.1}, understanding {:.1}, economy {:.1}",
        found.total, found.outcome, found.process, found.understanding, found.economy
    );
    for loss in &found.losses {
        println!(
            "   {:5.2} {:?} {:?} {}",
            loss.points,
            loss.part,
            loss.operation,
            words::score::loss(&loss.reason)
        );
    }
}

/// The names of all reasons in a schema.
fn reason_names(schema: &serde_json::Value, names: &mut Vec<String>) {
    if let Some(name) = schema["properties"]["reason"]["const"].as_str() {
        names.push(name.to_owned());
    }
    match schema {
        serde_json::Value::Object(map) => map.values().for_each(|v| reason_names(v, names)),
        serde_json::Value::Array(list) => list.iter().for_each(|v| reason_names(v, names)),
        _ => {}
    }
}

/// A document names a reason by its key alone, so that no two parts may have the same.
#[test]
fn no_two_reasons_have_the_same_name() {
    let schema = serde_json::to_value(schemars::schema_for!(LossReason)).expect("a schema");
    let mut names = Vec::new();
    reason_names(&schema, &mut names);
    names.sort_unstable();
    println!("{names:?}");
    assert!(names.len() >= 50, "{} reasons", names.len());
    for pair in names.windows(2) {
        assert_ne!(pair[0], pair[1], "the name of one reason only");
    }
}

/// A good build with everything checked, and one change foreseen: near 100. Without the prediction the five points of
/// "nothing known" are missing.
#[test]
fn a_good_build_is_near_a_hundred() {
    for name in [OAT_BARN, FEED_LORRY] {
        let exercise = exercise(name);
        for seed in 0..4 {
            let mut attempt = built(&exercise, seed);
            let before = attempt.clone();
            // There and back again: the lash of the first move is foreseen.
            measure_lash(&mut attempt, 0, "lever_dial");
            all(&mut attempt, &UNLOCK);
            move_wheel(&mut attempt, 1.0);
            does(&mut attempt, r#"{"do":"predict","about":"lash","chances":[0,0,1]}"#);
            measure_lash(&mut attempt, 0, "lever_dial");
            move_wheel(&mut attempt, -1.0);
            all(&mut attempt, &LOCK);
            verify(&mut attempt);
            let found = finish(&mut attempt);
            show(&format!("{name} {seed}"), &found);
            assert!(found.total > 97.0, "{name} {seed}: {}", found.total);
            let mut silent = before;
            verify(&mut silent);
            let silent = finish(&mut silent);
            assert!((silent.understanding - 10.0).abs() < 1e-9, "{}", silent.understanding);
            assert!(
                (silent.outcome - found.outcome).abs() < 0.5,
                "{} {}",
                silent.outcome,
                found.outcome
            );
        }
    }
}

/// The pinion alone: a sleeve stopped in its window, its last step foreseen.
#[test]
fn a_sleeve_stopped_in_its_window_is_near_a_hundred() {
    let exercise = exercise(CRUSH);
    for seed in 0..4 {
        let mut attempt = built(&exercise, seed);
        all(
            &mut attempt,
            &[
                r#"{"do":"turn","what":"pinion","turns":40}"#,
                r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"small_dial_wrench"}"#,
                r#"{"do":"turn_nut","angle_deg":2,"precautions":["holding_bar"]}"#,
                r#"{"do":"turn","what":"pinion","turns":40}"#,
                r#"{"do":"predict","about":"pinion_torque","chances":[0,0,1]}"#,
            ],
        );
        verify(&mut attempt);
        let found = finish(&mut attempt);
        show(&format!("{CRUSH} {seed}"), &found);
        assert!(found.outcome > 49.9 && found.process > 24.9, "{seed}");
        assert!(found.total > 94.0, "{seed}: {}", found.total);
    }
}

/// Inside of its band nothing is better than anything else: an axle whose wheel stands elsewhere in the window has the same
/// points to the last bit.
#[test]
fn a_bulls_eye_inside_the_band_wins_nothing_more() {
    let exercise = exercise(FEED_LORRY);
    let window = exercise.scenario().targets.lash_mm;
    let share = exercise.scenario().targets.stem.stem().share(exercise.axle().gears());
    let mut compared = 0;
    for seed in 0..4 {
        let mut found = Vec::new();
        for notches in [-0.2, 0.0, 0.2] {
            let mut attempt = built(&exercise, seed);
            all(&mut attempt, &UNLOCK);
            move_wheel(&mut attempt, notches);
            all(&mut attempt, &LOCK[..2]);
            verify(&mut attempt);
            let points = finish(&mut attempt);
            let lash = share * attempt.outcome().lash_mm.expect("in mesh")[0];
            if window.holds(lash) && points.outcome > 49.999_999 {
                found.push((lash, points));
            }
        }
        for pair in found.windows(2) {
            let [(a, one), (b, other)] = pair else { continue };
            println!(
                "{seed}: lash {a:.4} and {b:.4} mm: outcome {} and {}",
                one.outcome, other.outcome
            );
            assert!((a - b).abs() > 0.005, "the wheel moved: {a} {b}");
            assert_eq!(one.outcome.to_bits(), other.outcome.to_bits(), "flat");
            assert_eq!(one.process.to_bits(), other.process.to_bits(), "flat");
            compared += 1;
        }
    }
    assert!(compared >= 3, "{compared} compared");
}

/// Lash that is really outside, read by a worn dial until it looks right: not a point of outcome more than without any
/// reading, and that dial verifies nothing.
#[test]
fn a_reading_that_looks_right_wins_no_outcome() {
    let exercise = exercise(FEED_LORRY);
    let window = exercise.scenario().targets.lash_mm;
    let share = exercise.scenario().targets.stem.stem().share(exercise.axle().gears());
    let mut deceived = 0;
    for seed in 0..6 {
        let mut attempt = built(&exercise, seed);
        all(&mut attempt, &UNLOCK);
        // Judged as it is handed over, with the caps at full torque.
        for _ in 0..20 {
            move_wheel(&mut attempt, 0.25);
            all(&mut attempt, &LOCK[..2]);
            if !window.holds(share * attempt.outcome().lash_mm.expect("in mesh")[0]) {
                break;
            }
            does(&mut attempt, UNLOCK[2]);
        }
        let honest = finish(&mut attempt.clone());
        let told = |found: &Score| {
            of(found, ScorePart::Outcome).any(|l| {
                matches!(l.reason, LossReason::Outcome(OutcomeReason::Lash { reads_mm, full_mm, .. })
                    if !full_mm.holds(reads_mm))
            })
        };
        assert!(told(&honest), "lash is outside");
        // Again and again, until three places look right.
        let mut right = Vec::new();
        for tooth in 0..35 {
            if window.holds(measure_lash(&mut attempt, tooth, "worn_dial")) {
                right.push(tooth);
            }
        }
        deceived += usize::from(right.len() >= 3);
        write(
            &mut attempt,
            r#"{"quantity":"lash","tooth":0}"#,
            0.5 * (window.low + window.high),
        );
        let found = finish(&mut attempt);
        println!(
            "{seed}: {} of 35 readings look right; outcome {:.2} and without any {:.2}",
            right.len(),
            found.outcome,
            honest.outcome
        );
        assert_eq!(
            found.outcome.to_bits(),
            honest.outcome.to_bits(),
            "the truth alone counts"
        );
        assert!(told(&found), "{found:?}");
        let verified = of(&found, ScorePart::Process).any(|l| {
            matches!(l.reason, LossReason::Process(ProcessReason::LashUnverified { places: 0, coarse, .. })
                if coarse > 0)
        });
        assert!(verified, "a worn dial verifies nothing");
    }
    assert!(deceived >= 3, "the worn dial deceived in {deceived} seeds");
}

/// Evidence for anything: one record that has nothing to do with it.
fn some_record(attempt: &mut Attempt) {
    does(
        attempt,
        r#"{"do":"measure","what":{"quantity":"wheel_temperature"},"instrument":"thermometer"}"#,
    );
}

fn condemn_everything(attempt: &mut Attempt) {
    some_record(attempt);
    for part in Part::ALL {
        let part = serde_json::to_string(&part).expect("a name");
        does(
            attempt,
            &format!(r#"{{"do":"condemn","part":{part},"reason":"it looks bad","evidence":[1]}}"#),
        );
    }
}

#[test]
fn condemning_everything_loses() {
    let sound = exercise(OAT_BARN);
    let mismatched = changed(
        "[other]",
        "[[fault]]\nwhat = \"mismatched_gears\"\nshare = 1.0\nflank_um = 30\n\n[other]",
    );
    for (name, exercise) in [("sound", sound), ("mismatched", mismatched)] {
        for seed in 0..3 {
            let mut attempt = begin(&exercise, seed);
            condemn_everything(&mut attempt);
            // Even with everything put together well.
            let together = finish(&mut attempt.clone());
            all(
                &mut attempt,
                &[r#"{"do":"take_apart","to":"bearings","precautions":["hoist","holding_bar","eye_protection"]}"#],
            );
            let apart = finish(&mut attempt);
            println!(
                "{name} {seed}: {:.1} together, {:.1} in parts",
                together.total, apart.total
            );
            assert!(together.total < 40.0 && apart.total < 20.0, "{name} {seed}");
            assert!(together.outcome < 1e-9, "{name} {seed}: {}", together.outcome);
            assert!(
                capped(&together).any(|c| matches!(c, CapCause::FalseAlarm { .. })),
                "{together:?}"
            );
        }
    }
    let mut attempt = built(&exercise(FEED_LORRY), 1);
    verify(&mut attempt);
    let honest = finish(&mut attempt.clone());
    does(
        &mut attempt,
        r#"{"do":"condemn","part":"case","reason":"to be sure","evidence":[1]}"#,
    );
    let alarmed = finish(&mut attempt);
    println!("{:.1} and with a false alarm {:.1}", honest.total, alarmed.total);
    assert!(
        honest.total > 90.0 && (alarmed.total - CAP).abs() < 1e-9,
        "like a missed fault"
    );
}

/// Gears that do not belong together: said with evidence it is the whole outcome; not said, or said without, it caps.
#[test]
fn saying_no_with_evidence_wins() {
    let exercise = changed(
        "[other]",
        "[[fault]]\nwhat = \"mismatched_gears\"\nshare = 1.0\nflank_um = 30\n\n[other]",
    );
    let out = r#"{"do":"take_apart","to":"carrier","precautions":["hoist"]}"#;
    for seed in 0..3 {
        let mut attempt = begin(&exercise, seed);
        some_record(&mut attempt);
        let mut silent = attempt.clone();
        verify(&mut silent);
        let silent = finish(&mut silent);
        assert!(silent.total <= CAP, "{}", silent.total);
        assert!(
            capped(&silent).any(|c| {
                matches!(c, CapCause::Missed { fault: Incurable::NumbersDiffer { pinion_number, wheel_number }, .. }
                    if pinion_number != wheel_number)
            }),
            "{silent:?}"
        );
        let condemn = r#"{"do":"condemn","part":"gears","reason":"the numbers differ","evidence":[1]}"#;
        let mut guessed = attempt.clone();
        does(&mut guessed, condemn);
        let guessed = finish(&mut guessed);
        assert!(
            guessed.total <= CAP && !of(&guessed, ScorePart::Cap).collect::<Vec<_>>().is_empty(),
            "a guess"
        );
        all(&mut attempt, &[out, r#"{"do":"compare_numbers"}"#, condemn]);
        let found = finish(&mut attempt);
        show(&format!("said no {seed}"), &found);
        println!("   unsaid {:.1}, guessed {:.1}", silent.total, guessed.total);
        assert!(
            (found.outcome - 50.0).abs() < 1e-9 && found.total > CAP,
            "{}",
            found.total
        );
    }
}

#[test]
fn an_unsafe_act_caps_and_is_told() {
    let exercise = exercise(FEED_LORRY);
    let mut attempt = begin(&exercise, 2);
    let (hands, _) = build_up(&exercise, attempt.bench().clone(), 2);
    let mut careless = 0;
    for operation in &hands.operations {
        // The same work; once the hoist is left where it hangs.
        let operation = if let Operation::SetCarrierIn { marks_out_teeth, .. } = operation {
            careless = if careless == 0 {
                attempt.bench().operations() + 1
            } else {
                careless
            };
            Operation::SetCarrierIn {
                marks_out_teeth: *marks_out_teeth,
                precautions: Vec::new(),
            }
        } else {
            operation.clone()
        };
        assert!(attempt.apply(&operation).done, "{operation:?}");
    }
    verify(&mut attempt);
    let found = finish(&mut attempt);
    show("careless", &found);
    assert!((found.total - CAP).abs() < 1e-9, "{}", found.total);
    let told: Vec<_> = of(&found, ScorePart::Cap).collect();
    assert!(told.len() == 1 && told[0].operation == Some(careless), "{told:?}");
    assert!(
        of(&found, ScorePart::Process).any(|l| l.operation == Some(careless)),
        "safety"
    );
}

/// A value that was overtaken verifies nothing; nor do three places side by side, or a note that no reading bears out.
#[test]
fn a_verification_has_to_hold_at_the_end() {
    let exercise = exercise(FEED_LORRY);
    let mut attempt = built(&exercise, 3);
    let mut stale = attempt.clone();
    verify(&mut stale);
    all(&mut stale, &UNLOCK);
    move_wheel(&mut stale, 0.0);
    all(&mut stale, &LOCK);
    let stale = finish(&mut stale);
    show("stale", &stale);
    let overtaken = of(&stale, ScorePart::Process)
        .filter(|l| match &l.reason {
            LossReason::Process(
                ProcessReason::LashUnverified { overtaken, .. }
                | ProcessReason::PrintUnverified { overtaken, .. }
                | ProcessReason::TorqueUnverified { overtaken },
            ) => *overtaken > 0,
            _ => false,
        })
        .count();
    assert!(overtaken >= 3 && stale.process < 10.0, "{overtaken}, {}", stale.process);
    let mut bunched = attempt.clone();
    verify(&mut attempt);
    let good = finish(&mut attempt);
    for tooth in [0, 1, 2] {
        measure_lash(&mut bunched, tooth, "lever_dial");
    }
    write(&mut bunched, r#"{"quantity":"lash","tooth":0}"#, 0.5);
    let bunched = finish(&mut bunched);
    assert!(
        of(&bunched, ScorePart::Process).any(|l| {
            matches!(
                l.reason,
                LossReason::Process(ProcessReason::LashUnverified {
                    places: 3,
                    one_side: true,
                    ..
                })
            )
        }),
        "{bunched:?}"
    );
    assert!(
        of(&bunched, ScorePart::Process)
            .any(|l| matches!(l.reason, LossReason::Process(ProcessReason::NoteUnfounded { .. }))),
        "{bunched:?}"
    );
    assert!(
        good.process > 24.9 && bunched.process < 15.0,
        "{} {}",
        good.process,
        bunched.process
    );
}

/// Whoever turns a worn nut, a trial build or an axle in parts in has nothing.
#[test]
fn a_trial_build_is_no_axle() {
    let exercise = exercise(OAT_BARN);
    let mut attempt = begin(&exercise, 0);
    all(
        &mut attempt,
        &[
            r#"{"do":"take_apart","to":"bearings","precautions":["hoist","holding_bar","eye_protection"]}"#,
            r#"{"do":"fit_set_up_bearings"}"#,
            r#"{"do":"insert_pinion"}"#,
            r#"{"do":"fit_nut"}"#,
            r#"{"do":"tighten_nut","torque_nm":40,"wrench":"click_wrench"}"#,
        ],
    );
    let found = finish(&mut attempt);
    show("trial", &found);
    assert!(
        found.outcome < 1e-9 && found.process < 1e-9 && found.economy < 1e-9,
        "{found:?}"
    );
}

/// Predictions by a proper rule: right and sure above "nothing known", wrong and sure below; the same where nothing moved;
/// one a build.
#[test]
fn predictions_follow_a_proper_rule() {
    let exercise = exercise(OAT_BARN);
    let with = |predictions: &[&str]| {
        let mut attempt = begin(&exercise, 1);
        measure_lash(&mut attempt, 0, "lever_dial");
        all(&mut attempt, &UNLOCK);
        move_wheel(&mut attempt, 1.0);
        all(&mut attempt, predictions);
        measure_lash(&mut attempt, 0, "lever_dial");
        finish(&mut attempt).understanding
    };
    let predict = |chances: &str| format!(r#"{{"do":"predict","about":"lash","chances":{chances}}}"#);
    let [sure, wrong, vague, even] =
        ["[0,0,1]", "[1,0,0]", "[0.2,0.2,0.6]", "[0.3333,0.3333,0.3334]"].map(|c| with(&[&predict(c)]));
    println!(
        "sure {sure}, wrong {wrong}, vague {vague}, even {even}, silent {}",
        with(&[])
    );
    assert!((sure - 15.0).abs() < 1e-9 && wrong.abs() < 1e-9, "{sure} {wrong}");
    // 1 − (0.04 + 0.04 + 0.16)/2 = 0.88 of 15.
    assert!((vague - 13.2).abs() < 1e-9, "{vague}");
    assert!((even - 10.0).abs() < 0.01 && (with(&[]) - 10.0).abs() < 1e-9, "{even}");
    // Only the first counts.
    let twice = with(&[&predict("[1,0,0]"), &predict("[0,0,1]")]);
    assert!(twice.abs() < 1e-9, "{twice}");
    // Nothing moved: nothing to foresee.
    let mut attempt = begin(&exercise, 1);
    measure_lash(&mut attempt, 0, "lever_dial");
    does(&mut attempt, &predict("[0,1,0]"));
    measure_lash(&mut attempt, 0, "lever_dial");
    let nothing = finish(&mut attempt).understanding;
    assert!((nothing - 10.0).abs() < 1e-9, "{nothing}");
}

/// The rule is proper: whoever thinks that lash falls, stays or rises with chances q can expect most by saying q. Worth is read
/// off attempts in which it truly falls, stays and rises.
#[test]
fn honesty_is_worth_most() {
    let exercise = exercise(OAT_BARN);
    let said: [[f64; 3]; 4] = [[0.1, 0.2, 0.7], [0.5, 0.3, 0.2], [0.0, 0.0, 1.0], [0.3, 0.4, 0.3]];
    let worth: Vec<[f64; 3]> = said
        .iter()
        .map(|chances| {
            // A tenth of a notch moves the wheel by 8 µm and lash by less than what counts as a change.
            [-1.0, 0.1, 1.0].map(|notches| {
                let mut attempt = begin(&exercise, 1);
                measure_lash(&mut attempt, 0, "lever_dial");
                all(&mut attempt, &UNLOCK);
                move_wheel(&mut attempt, notches);
                does(&mut attempt, LOCK[0]);
                does(
                    &mut attempt,
                    &format!(r#"{{"do":"predict","about":"lash","chances":{chances:?}}}"#),
                );
                measure_lash(&mut attempt, 0, "lever_dial");
                finish(&mut attempt).understanding
            })
        })
        .collect();
    println!("worth when lash fell, stayed, rose: {worth:.2?}");
    for (k, thought) in said.iter().enumerate() {
        let expected = |of: &[f64; 3]| {
            of.iter()
                .zip(thought)
                .map(|(worth, chance)| worth * chance)
                .sum::<f64>()
        };
        for (other, of) in worth.iter().enumerate().filter(|(other, _)| *other != k) {
            assert!(
                expected(&worth[k]) > expected(of),
                "{thought:?} against {:?}",
                said[other]
            );
        }
    }
}

/// The best depth is 0 at the designed place and another one where wheel and axes are off; no depth near it brings the
/// prints nearer, by the exact route.
#[test]
fn depth_is_judged_against_the_best_that_can_be_reached() {
    for name in [OAT_BARN, FEED_LORRY] {
        let exercise = exercise(name);
        let pair = exercise.pair(&lashwright::axle::Truth::default()).expect("gears");
        let approved = approval(&pair);
        let nominal = best_depth_mm(&pair, Placement::NOMINAL, &approved).expect("a print");
        println!("{name}: best P at the designed place {nominal:+.4} mm");
        assert!(nominal.abs() < 0.004, "{nominal}");
        let far = |at: Placement| {
            let Contact { drive, coast, .. } = contact::solve(&pair, at, Film::default(), Route::Exact);
            let square = |flank: &contact::FlankContact, wanted: &contact::FlankContact| {
                let (is, was) = (flank.pattern.expect("a print"), wanted.pattern.expect("a print"));
                let [x, y] = [0, 1].map(|k| is.centroid[k] - was.centroid[k]);
                (x / 0.15) * (x / 0.15) + (y / 0.20) * (y / 0.20)
            };
            2.0 * square(&drive, &approved.drive) + square(&coast, &approved.coast)
        };
        let mut moved = 0.0_f64;
        for (wheel_axial_mm, offset_mm, shaft_angle_rad) in [
            (0.1, 0.0, 0.0),
            (-0.08, 0.0, 0.0),
            (0.0, 0.04, 0.0),
            (0.05, -0.03, 2e-4),
        ] {
            let at = |pinion_axial_mm| Placement {
                pinion_axial_mm,
                wheel_axial_mm,
                offset_mm,
                shaft_angle_rad,
            };
            let best = best_depth_mm(&pair, at(0.0), &approved).expect("a print");
            let [least, lower, higher] = [best, best - 0.02, best + 0.02].map(|p| far(at(p)));
            println!("   G {wheel_axial_mm:+.2}, E {offset_mm:+.2}, Σ {shaft_angle_rad:+.0e}: best P {best:+.4} mm");
            assert!(least < lower && least < higher, "{lower} {least} {higher}");
            moved = moved.max(best.abs());
        }
        assert!(moved > 0.02, "0 is not the best everywhere: {moved}");
    }
}

/// Before the hand-over a score tells nothing.
#[test]
fn an_unfinished_attempt_has_no_points() {
    let mut attempt = built(&exercise(FEED_LORRY), 0);
    verify(&mut attempt);
    let found = points(&attempt);
    assert!(found.total == 0.0 && found.losses.len() == 4, "{found:?}");
}

/// Handing over at once what came in: what nobody did is nobody's merit.
#[test]
fn leaving_it_as_it_is_is_no_work() {
    let exercise = exercise(OAT_BARN);
    let mut all_points = Vec::new();
    for seed in 0..20 {
        let found = finish(&mut begin(&exercise, seed));
        assert!(found.process < 1e-9, "{found:?}");
        all_points.push(found.total);
    }
    println!("handed over at once: {all_points:.1?}");
}

const ANYHOW: &[&str] = &[
    r#"{"do":"finish"}"#,
    r#"{"do":"turn","what":"pinion","turns":12}"#,
    r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"small_dial_wrench"}"#,
    r#"{"do":"measure","what":{"quantity":"lash","tooth":3},"instrument":"worn_dial"}"#,
    r#"{"do":"measure","what":{"quantity":"lash","tooth":20},"instrument":"lever_dial"}"#,
    r#"{"do":"brush_paste","teeth":[0,1],"film":"thick"}"#,
    r#"{"do":"roll","drag_nm":15,"passes":6}"#,
    r#"{"do":"measure","what":{"quantity":"print"},"instrument":"eye"}"#,
    r#"{"do":"take_apart","to":"bearings","precautions":["hoist","holding_bar","eye_protection"]}"#,
    r#"{"do":"take_apart","to":"carrier"}"#,
    r#"{"do":"compare_numbers"}"#,
    r#"{"do":"fit_shims","place":"depth","pieces":[0,3]}"#,
    r#"{"do":"press","ring":"head_cup","force_kn":14,"precautions":["eye_protection","press_guard"]}"#,
    r#"{"do":"press","ring":"tail_cup","force_kn":24,"precautions":["eye_protection","press_guard"]}"#,
    r#"{"do":"press","ring":"head_cone","force_kn":24}"#,
    r#"{"do":"fit_spacer","spacer":"own","new":true}"#,
    r#"{"do":"insert_pinion"}"#,
    r#"{"do":"fit_seal"}"#,
    r#"{"do":"fit_nut"}"#,
    r#"{"do":"tighten_nut","torque_nm":300,"wrench":"click_wrench","precautions":["holding_bar"]}"#,
    r#"{"do":"turn_nut","angle_deg":15,"precautions":["holding_bar"]}"#,
    r#"{"do":"turn_nut","angle_deg":-20}"#,
    r#"{"do":"heat_wheel","to_c":260,"precautions":["hot_gloves"]}"#,
    r#"{"do":"fit_wheel","crosswise":false}"#,
    r#"{"do":"set_carrier_in","precautions":["hoist"]}"#,
    r#"{"do":"fit_caps","as_marked":false}"#,
    r#"{"do":"loosen_caps"}"#,
    r#"{"do":"remove_lock","side":"tooth"}"#,
    r#"{"do":"turn_adjuster","side":"tooth","notches":-3}"#,
    r#"{"do":"turn_adjuster","side":"back","notches":16}"#,
    r#"{"do":"tighten_caps","to":"full"}"#,
    r#"{"do":"note","what":{"quantity":"lash","tooth":0},"value":0.17}"#,
    r#"{"do":"note","what":{"quantity":"rolling_torque"},"value":3.2}"#,
    r#"{"do":"predict","about":"lash","chances":[0.2,0.5,0.3]}"#,
    r#"{"do":"predict","about":"drive_height","chances":[1,0,0]}"#,
    r#"{"do":"predict","about":"pinion_torque","chances":[0,0,1]}"#,
    r#"{"do":"condemn","part":"gears","reason":"worn","evidence":[1]}"#,
    r#"{"do":"wait","minutes":60}"#,
];

proptest! {
    #![proptest_config(ProptestConfig { cases: 60, failure_persistence: None, ..ProptestConfig::default() })]

    /// Whatever is done in whatever order: 0 to 100, every lost point told with a number, the same bits again.
    #[test]
    fn any_attempt_has_a_score(
        seed in 0_u64..1000,
        which in 0_usize..3,
        choices in prop::collection::vec(1_usize..ANYHOW.len(), 0..60),
    ) {
        let exercise = exercise([OAT_BARN, FEED_LORRY, CRUSH][which]);
        let mut attempt = begin(&exercise, seed);
        for choice in &choices {
            // Refused or done: both are possible.
            let answer = attempt.apply(&Operation::from_json(ANYHOW[*choice]).expect("an operation"));
            prop_assert!(answer.done || answer.refused.is_some(), "one of both");
        }
        let found = finish(&mut attempt);
        prop_assert_eq!(&points(&attempt), &found);
        if !attempt.bench().ledger().unsafe_acts.is_empty() {
            prop_assert!(found.total <= CAP, "{}", found.total);
        }
    }
}
