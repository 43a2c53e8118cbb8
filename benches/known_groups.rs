//! Known groups over 200 seeds of every whole build: the table of the README. It asserts nothing of time.
//!
//! `cargo bench --bench known_groups` prints it; `-- --seeds N` takes fewer.

use std::sync::Arc;

use lashwright::exercise::technician::{Policy, play};
use lashwright::exercise::{Exercise, Par, score};
use lashwright::job::scenarios;
use rayon::prelude::*;

fn totals(exercise: &Arc<Exercise>, seed: u64) -> [f64; 3] {
    let attempts = Policy::ALL.map(|policy| play(exercise, seed, policy).expect("a seed that can be played"));
    let par = Par::of(&attempts[0]);
    attempts.map(|attempt| score(&attempt, &par).total)
}

fn main() {
    let arguments: Vec<String> = std::env::args().collect();
    let seeds: u64 = arguments
        .iter()
        .position(|a| a == "--seeds")
        .and_then(|at| arguments.get(at + 1)?.parse().ok())
        .unwrap_or(200);
    println!(
        "| exercise | reference: least, median, share ≥ 90 | reversed: median, most, share < 50 | random: median, most, share < 40 |"
    );
    println!("|-|-|-|-|");
    for found in scenarios::embedded().expect("embedded exercises are good") {
        if !found.exercise.scenario().whole_build {
            continue;
        }
        let exercise = Arc::new(found.exercise);
        let all: Vec<[f64; 3]> = (1..=seeds)
            .into_par_iter()
            .map(|seed| totals(&exercise, seed))
            .collect();
        let column = |k: usize| {
            let mut values: Vec<f64> = all.iter().map(|t| t[k]).collect();
            values.sort_by(f64::total_cmp);
            values
        };
        let [reference, reversed, random] = [0, 1, 2].map(column);
        let share = |values: &[f64], holds: &dyn Fn(f64) -> bool| {
            100.0 * values.iter().filter(|v| holds(**v)).count() as f64 / values.len() as f64
        };
        println!(
            "| {} | {:.0}, {:.0}, {:.1} % | {:.0}, {:.0}, {:.1} % | {:.0}, {:.0}, {:.1} % |",
            found.source,
            reference[0],
            reference[reference.len() / 2],
            share(&reference, &|v| v >= 90.0),
            reversed[reversed.len() / 2],
            reversed[reversed.len() - 1],
            share(&reversed, &|v| v < 50.0),
            random[random.len() / 2],
            random[random.len() - 1],
            share(&random, &|v| v < 40.0),
        );
    }
}
