//! Repeatability and reproducibility of our instruments, as the Automotive Industry Action Group computes it: *Measurement
//! Systems Analysis*, 4th edition (2010), average and range method with 3 appraisers, 10 parts, 3 trials. Constants
//! K1 = 0.5908 (3 trials), K2 = 0.5231 (3 appraisers) and the formulas are from memory; K1 and K2 are also computed here as
//! 1/d2* from the distribution of ranges, within what a simulation can tell.
//!
//! An appraiser is a set-up of the instrument, parts are lashes across the window of a light axle, the tolerance is that
//! window (0.13 to 0.23 mm, common practice, no source).

use std::ops::Bound;

use lashwright::bench::instrument::{Dial, Use};
use lashwright::numerics::random::Stream;

use super::guide::{Row, Source, checks};

const STUDIES: Source =
    Source::Memory("Automotive Industry Action Group, Measurement Systems Analysis, 4th ed. (2010)");

const K1: f64 = 0.5908;
const K2: f64 = 0.5231;
const APPRAISERS: u32 = 3;
const PARTS: u32 = 10;
const TRIALS: u32 = 3;
const TOLERANCE_MM: f64 = 0.10;

fn range(values: &[f64]) -> f64 {
    let low = values.iter().copied().fold(f64::INFINITY, f64::min);
    let high = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    high - low
}

fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len() as f64
}

/// Repeatability and reproducibility together, in percent of the tolerance, of one study.
fn study_percent(dial: &Dial, seed: u64) -> f64 {
    let mut reading = 0;
    let (mut ranges, mut averages) = (Vec::new(), Vec::new());
    for set_up in 0..APPRAISERS {
        let mut all = Vec::new();
        for part in 0..PARTS {
            let lash_mm = 0.13 + TOLERANCE_MM * (f64::from(part) + 0.37) / f64::from(PARTS);
            let trials: Vec<f64> = (0..TRIALS)
                .map(|trial| {
                    reading += 1;
                    let using = Use {
                        seed,
                        instrument: "studied dial",
                        set_up,
                        reading,
                    };
                    // Hands rock to and fro: now and then the needle comes back from the other side.
                    dial.reads_mm(lash_mm, trial == 1, using)
                })
                .collect();
            ranges.push(range(&trials));
            all.extend(trials);
        }
        averages.push(mean(&all));
    }
    let repeatability = mean(&ranges) * K1;
    let count = f64::from(PARTS * TRIALS);
    let between = (range(&averages) * K2).powi_two() - repeatability.powi_two() / count;
    let reproducibility_squared = if between > 0.0 { between } else { 0.0 };
    let both = (repeatability.powi_two() + reproducibility_squared).sqrt();
    100.0 * 6.0 * both / TOLERANCE_MM
}

trait Square {
    fn powi_two(self) -> f64;
}

impl Square for f64 {
    fn powi_two(self) -> f64 {
        self * self
    }
}

fn study(dial: &Dial) -> f64 {
    let studies: Vec<f64> = (0..200).map(|seed| study_percent(dial, seed)).collect();
    mean(&studies)
}

fn the_good_dial_is_good_and_the_worn_one_is_not() -> Vec<Row> {
    let [good, usual, worn] = [Dial::GOOD, Dial::USUAL, Dial::WORN].map(|dial| study(&dial));
    println!("of a tolerance of {TOLERANCE_MM} mm: good {good:.1} %, usual {usual:.1} %, worn {worn:.1} %");
    // Under 10 % is acceptable, over 30 % is not (AIAG, from memory).
    let mut acceptable = Row::range(
        "Repeatability and reproducibility of the good dial, of a lash window of 0.10 mm",
        STUDIES,
        ..10.0,
        "%",
    );
    acceptable.found("mean of 200 studies", good);
    let mut unacceptable = Row::range(
        "Repeatability and reproducibility of the worn dial",
        STUDIES,
        (Bound::Excluded(30.0), Bound::Unbounded),
        "%",
    );
    unacceptable.found("mean of 200 studies", worn);
    let mut order = Row::stated(
        "The usual dial lies between the good and the worn one",
        Source::Practice(""),
        "order",
    );
    order.is(format_args!("{good} {usual} {worn}"), good < usual && usual < worn);
    vec![acceptable, unacceptable, order]
}

fn the_constants_are_those_of_ranges() -> Vec<Row> {
    let mut constants = Row::absolute(
        "Constants K1 and K2 of the studies, as 1/d2 and 1/d2* of simulated ranges of three",
        STUDIES,
        0.003,
        "",
    );
    // d2* of one range tends to d2 for many: mean range of 3 normal numbers in standard deviations.
    let mut stream = Stream::new(7, "ranges");
    let count = 200_000;
    let total: f64 = (0..count)
        .map(|_| range(&[stream.normal(), stream.normal(), stream.normal()]))
        .sum();
    let d2 = total / f64::from(count);
    constants.near("K1", 1.0 / d2, K1);
    // K2 is for a single range of three: 1/d2* with d2* the root of the mean square of a range.
    let squares: f64 = (0..count)
        .map(|_| range(&[stream.normal(), stream.normal(), stream.normal()]).powi_two())
        .sum();
    let d2_star = (squares / f64::from(count)).sqrt();
    constants.near("K2", 1.0 / d2_star, K2);
    vec![constants]
}

checks![
    the_good_dial_is_good_and_the_worn_one_is_not,
    the_constants_are_those_of_ranges,
];
