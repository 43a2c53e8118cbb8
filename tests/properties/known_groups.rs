//! Known groups: whoever works by the rules of the trade scores high, whoever turns the depth rule round low, whoever does
//! anything lowest. Eight seeds of every whole build here, 200 in the benchmark `known_groups`; where they overlap, the
//! score or the exercise is wrong.

use std::sync::Arc;

use lashwright::axle::Built;
use lashwright::exercise::technician::{Policy, play};
use lashwright::exercise::{Exercise, Par, par, score};
use lashwright::job::scenarios;

use super::begun::{begin, exercise};

/// Seeds of a whole build, and of every other exercise.
const SEEDS: u64 = 8;
const SEEDS_OF_OTHERS: u64 = 2;

fn totals(exercise: &Arc<Exercise>, seed: u64, policies: &[Policy]) -> Vec<f64> {
    let mut par = None;
    policies
        .iter()
        .map(|policy| {
            let attempt = play(exercise, seed, *policy).expect("a seed that can be played");
            let par = *par.get_or_insert_with(|| Par::of(&attempt));
            let score = score(&attempt, &par);
            let lost: f64 = score.losses.iter().map(|l| l.points).sum();
            assert!(
                (100.0 - score.total - lost).abs() < 1e-6,
                "every point is told: {score:?}"
            );
            score.total
        })
        .collect()
}

fn column(totals: &[Vec<f64>], k: usize) -> Vec<f64> {
    totals.iter().map(|t| t[k]).collect()
}

/// The three groups of a whole build keep apart, over eight seeds: all of the reference technician's at 90 or more, seven of
/// the others' below 50 and 40.
fn keeps_apart(name: &str) {
    let exercise = exercise(name);
    assert!(exercise.scenario().whole_build, "{name}");
    let totals: Vec<Vec<f64>> = (1..=SEEDS).map(|seed| totals(&exercise, seed, &Policy::ALL)).collect();
    let [reference, reversed, random] = [0, 1, 2].map(|k| column(&totals, k));
    println!("{name}\n  reference {reference:.0?}\n  reversed  {reversed:.0?}\n  random    {random:.0?}");
    assert!(reference.iter().all(|t| *t >= 90.0), "{name}: {reference:?}");
    let below = |totals: &[f64], limit: f64| totals.iter().filter(|t| **t < limit).count();
    assert!(below(&reversed, 50.0) >= 7, "{name}: {reversed:?}");
    assert!(below(&random, 40.0) >= 7, "{name}: {random:?}");
}

#[test]
fn groups_keep_apart_on_the_light_axle() {
    keeps_apart("dairy-van-light-axle");
}

#[test]
fn groups_keep_apart_on_the_cartridge() {
    keeps_apart("feed-lorry-cartridge");
}

#[test]
fn groups_keep_apart_with_a_cup_shim() {
    keeps_apart("depth-stole-my-preload");
}

#[test]
fn groups_keep_apart_with_a_uniform_set() {
    keeps_apart("same-chart-wrong-family");
}

/// The reference technician does every exercise well: what asks for more than the trade's rules is no exercise.
#[test]
fn every_exercise_can_be_done_by_the_rules() {
    for found in scenarios::embedded().expect("embedded exercises are good") {
        if found.exercise.scenario().whole_build {
            continue;
        }
        let exercise = Arc::new(found.exercise);
        for seed in 1..=SEEDS_OF_OTHERS {
            let total = totals(&exercise, seed, &[Policy::Reference])[0];
            println!("{} {seed}: {total:.1}", found.source);
            assert!(total >= 85.0, "{} {seed}: {total}", found.source);
        }
    }
}

/// Par is what the reference technician takes: minutes and money as its answers told them, a tear-down each time that gears
/// came out of mesh or a pinion alone lost its hold, seen by doing everything again.
#[test]
fn par_is_what_the_reference_technician_takes() {
    let (mut any_teardowns, mut any_money) = (0, 0.0);
    for (name, seed) in [
        ("oat-barn-tractor", 1),
        ("oat-barn-tractor", 2),
        ("feed-lorry-cartridge", 1),
        ("what-the-dial-says", 1),
    ] {
        let exercise = exercise(name);
        let played = play(&exercise, seed, Policy::Reference).expect("plays");
        let mut again = begin(&exercise, seed);
        let (mut minutes, mut money, mut teardowns) = (0.0, 0.0, 0);
        for step in played.steps() {
            let stands = |built: &Built| (built.placement.is_some(), built.pinion.is_some());
            let (meshed, held) = stands(again.bench().built());
            assert_eq!(again.apply(&step.operation), step.answer, "done again");
            let (meshes, holds) = stands(again.bench().built());
            teardowns += u32::from(if meshed { !meshes } else { held && !holds });
            minutes += step.answer.minutes;
            money += step.answer.money;
        }
        let found = par(&exercise, seed).expect("a par");
        println!("{name} {seed}: {found:?}");
        assert!((found.minutes - minutes).abs() < 1e-9, "{minutes} minutes: {found:?}");
        assert!((found.money - money).abs() < 1e-9, "{money} of money: {found:?}");
        assert_eq!(found.teardowns, teardowns, "{found:?}");
        assert!(minutes > 20.0, "it takes its time: {minutes}");
        any_teardowns += teardowns;
        any_money += money;
    }
    assert!(
        any_teardowns > 0 && any_money > 0.0,
        "something was taken apart and bought"
    );
}

/// The technician cannot see the truth: two axles that show the same show the same work. Hiding the seed behind another
/// that draws the same truth is not possible, so this looks at what it does before its first reading.
#[test]
fn the_first_moves_do_not_depend_on_the_truth() {
    let exercise = exercise("feed-lorry-cartridge");
    let first = |seed| {
        let attempt = play(&exercise, seed, Policy::Reference).expect("plays");
        let steps: Vec<&str> = attempt
            .steps()
            .iter()
            .take_while(|s| s.answer.readings.is_empty())
            .map(|s| s.operation.kind().key())
            .collect();
        steps
    };
    assert_eq!(first(1), first(2), "before anything was read");
}
