//! Known groups: whoever works by the rules of the trade scores high, whoever turns the depth rule round low, whoever does
//! anything lowest. Eight seeds of every exercise here, 200 in the benchmark.

use std::sync::Arc;

use lashwright::exercise::technician::{Policy, play};
use lashwright::exercise::{Par, score};
use lashwright::job::scenarios;

const SEEDS: u64 = 8;

/// Total of the reference technician, of the reversed depth rule and of anything, for each seed.
fn totals(found: &scenarios::FoundScenario) -> Vec<[f64; 3]> {
    let exercise = Arc::new(found.exercise.clone());
    (1..=SEEDS)
        .map(|seed| {
            let attempts = Policy::ALL.map(|policy| play(&exercise, seed, policy).expect("a seed that can be played"));
            let par = Par::of(&attempts[0]);
            attempts.map(|attempt| {
                let score = score(&attempt, &par);
                assert!(
                    (0.0..=100.0).contains(&score.total),
                    "{} {seed}: {score:?}",
                    found.source
                );
                score.total
            })
        })
        .collect()
}

#[test]
fn known_groups_do_not_overlap() {
    for found in scenarios::embedded().expect("embedded exercises are good") {
        let totals = totals(&found);
        let column = |k: usize| {
            totals
                .iter()
                .map(|t| format!("{:.0}", t[k]))
                .collect::<Vec<_>>()
                .join(" ")
        };
        println!(
            "{:28} reference {} | reversed {} | random {}",
            found.source,
            column(0),
            column(1),
            column(2)
        );
    }
}
