//! Instruments: same arguments, same bits; errors as stated; the cosines of a stem; who can read what.

use lashwright::axle::GearNumbers;
use lashwright::bench::instrument::{
    CannotRead, Coat, DepthGauge, Dial, Feeler, Micrometer, Paste, PressGauge, Roll, Stem, Thermometer, TorqueWrench,
    Use, flat_target_true_mm,
};
use lashwright::gear::GearSet;
use lashwright::job::gear_sets;
use proptest::prelude::*;

fn using(seed: u64, set_up: u32, reading: u32) -> Use<'static> {
    Use {
        seed,
        instrument: "tried",
        set_up,
        reading,
    }
}

fn spread(values: &[f64]) -> (f64, f64) {
    let n = values.len() as f64;
    let mean = values.iter().sum::<f64>() / n;
    let square = values.iter().map(|v| (v - mean) * (v - mean)).sum::<f64>() / (n - 1.0);
    (mean, square.sqrt())
}

/// Where all errors are cut off, in standard deviations.
const CUT_AT: f64 = 2.5;

/// Share of its spread that a normal keeps when it is cut off at 2.5 deviations: √(1 − 2·2.5·φ(2.5)/(2Φ(2.5) − 1)), φ and Φ
/// of the standard normal (textbook formula of the truncated normal).
const CUT: f64 = 0.9546;

/// φ written out and Φ by Simpson's rule.
#[test]
fn the_cut_normal_has_the_spread_of_its_formula() {
    let phi = |x: f64| lashwright::numerics::math::exp(-0.5 * x * x) / (2.0 * std::f64::consts::PI).sqrt();
    let steps = 1000;
    let width = 2.0 * CUT_AT / f64::from(steps);
    let inside: f64 = (0..steps)
        .map(|k| {
            let x = f64::from(k) * width - CUT_AT;
            (phi(x) + 4.0 * phi(x + 0.5 * width) + phi(x + width)) * width / 6.0
        })
        .sum();
    let share = (1.0 - 2.0 * CUT_AT * phi(CUT_AT) / inside).sqrt();
    println!("within: {inside:.6}, spread: {share:.6}");
    assert!((share - CUT).abs() < 5.0e-5, "{share}");
}

/// Uses of the same set-up, of ever new set-ups of the same instrument, of ever new instruments.
const USES: [(&str, fn(u32) -> Use<'static>); 3] = [
    ("reading", |k| using(1, 0, k)),
    ("set-up", |k| using(1, k, 0)),
    ("instrument", |k| using(u64::from(k), 0, 0)),
];

/// How often each is tried.
const TRIED: u32 = 10_000;

/// An instrument with its stated standard deviations: its own, of a set-up, of a reading.
struct Stated {
    name: &'static str,
    truth: f64,
    deviations: [f64; 3],
    /// Names of the parts of its error; empty where it has none.
    parts: [&'static str; 3],
    reads: fn(f64, Use<'_>) -> f64,
}

/// All that show a number, without graduations.
fn stated() -> Vec<Stated> {
    const DIAL: Dial = Dial {
        graduation_mm: 0.0,
        ..Dial::USUAL
    };
    const MICROMETER: Micrometer = Micrometer {
        graduation_mm: 0.0,
        ..Micrometer::USUAL
    };
    const DEPTH: DepthGauge = DepthGauge {
        graduation_mm: 0.0,
        ..DepthGauge::USUAL
    };
    const WARMTH: Thermometer = Thermometer {
        graduation_c: 0.0,
        ..Thermometer::USUAL
    };
    const PRESS: PressGauge = PressGauge {
        graduation_n: 0.0,
        ..PressGauge::USUAL
    };
    const CORD: TorqueWrench = TorqueWrench {
        graduation_nm: 0.0,
        ..TorqueWrench::CORD
    };
    let (travel, force, torque) = (0.2, 20_000.0, 3.0);
    vec![
        Stated {
            name: "dial",
            truth: travel,
            deviations: [DIAL.own_share * travel, DIAL.set_up_mm, DIAL.reading_mm],
            parts: ["gearing", "holding", "needle"],
            reads: |x, u| DIAL.reads_mm(x, false, u),
        },
        Stated {
            name: "dial turned back",
            truth: travel,
            deviations: [DIAL.own_share * travel, DIAL.set_up_mm, DIAL.reading_mm],
            parts: ["gearing", "holding", "needle"],
            reads: |x, u| DIAL.reads_mm(x, true, u) - DIAL.hysteresis_mm,
        },
        Stated {
            name: "micrometer",
            truth: 1.0,
            deviations: [MICROMETER.own_mm, 0.0, MICROMETER.reading_mm],
            parts: ["zero", "", "feel"],
            reads: |x, u| MICROMETER.reads_mm(x, u),
        },
        Stated {
            name: "depth gauge",
            truth: 80.0,
            deviations: [DEPTH.own_mm, DEPTH.set_up_mm, DEPTH.reading_mm],
            parts: ["arbor and block", "seating", "feel"],
            reads: |x, u| DEPTH.reads_mm(x, u),
        },
        Stated {
            name: "thermometer",
            truth: 80.0,
            deviations: [WARMTH.own_c, 0.0, WARMTH.reading_c],
            parts: ["scale", "", "contact"],
            reads: |x, u| WARMTH.reads_c(x, u),
        },
        Stated {
            name: "press gauge",
            truth: force,
            deviations: [PRESS.own_share * force, 0.0, 0.0],
            parts: ["scale", "", ""],
            reads: |x, u| PRESS.reads_n(x, u),
        },
        Stated {
            name: "cord and scale",
            truth: torque,
            // Half the permitted deviation is one standard deviation of the tool.
            deviations: [0.5 * CORD.permitted_share * torque, 0.0, CORD.pull_share * torque],
            parts: ["calibration", "", "pull"],
            reads: |x, u| CORD.reads_nm(x, u).expect("within its range"),
        },
    ]
}

/// Of each instrument: what changes from one reading, set-up and instrument to the next has the stated spread, and the mean
/// is the truth with what stays the same. So nothing reads high or low in the long run that does not say so.
#[test]
fn each_part_of_an_error_has_the_mean_and_the_spread_that_it_says() {
    for instrument in stated() {
        let [own, set_up, reading] = instrument.deviations;
        for (level, (what, uses)) in USES.into_iter().enumerate() {
            let values: Vec<f64> = (0..TRIED)
                .map(|k| (instrument.reads)(instrument.truth, uses(k)))
                .collect();
            let (mean, found) = spread(&values);
            // What does not change in this row of uses.
            let u = uses(0);
            let kept = [
                (level < 2).then(|| own * u.own(instrument.parts[0])),
                (level == 0).then(|| set_up * u.of_set_up(instrument.parts[1])),
                (level == 1).then(|| reading * u.of_reading(instrument.parts[2])),
            ];
            let wanted_mean = instrument.truth + kept.into_iter().flatten().sum::<f64>();
            let changing = match level {
                0 => [0.0, 0.0, reading],
                1 => [0.0, set_up, 0.0],
                _ => [own, set_up, reading],
            };
            let wanted = CUT * changing.into_iter().map(Square::powi_two).sum::<f64>().sqrt();
            let name = instrument.name;
            println!("{name}, {what}: mean {mean:.6}, wanted {wanted_mean:.6}; spread {found:.6}, wanted {wanted:.6}");
            // Four standard errors of a mean of 10,000, and rounding.
            let error = 4.0 * wanted / f64::from(TRIED).sqrt() + 1.0e-12 * instrument.truth;
            assert!(
                (mean - wanted_mean).abs() < error,
                "{name}, {what}: mean {mean} instead of {wanted_mean} ± {error}"
            );
            // The spread of a sample of 10,000 is known to 0.7 %.
            assert!(
                (found - wanted).abs() <= 0.028 * wanted + 1.0e-12 * instrument.truth,
                "{name}, {what}: spread {found} instead of {wanted}"
            );
        }
    }
}

trait Square {
    fn powi_two(self) -> f64;
}

impl Square for f64 {
    fn powi_two(self) -> f64 {
        self * self
    }
}

/// Reading again and again does not make a bad set-up good.
#[test]
fn only_the_last_part_averages_away() {
    let dial = Dial::WORN;
    let mean_of = |set_up: u32| {
        let values: Vec<f64> = (0..400)
            .map(|k| dial.reads_mm(0.2, false, using(3, set_up, k)))
            .collect();
        spread(&values).0
    };
    let means: Vec<f64> = (0..50).map(mean_of).collect();
    let (_, left) = spread(&means);
    assert!(left > 0.7 * dial.set_up_mm, "after 400 readings {left} mm are left");
}

/// Along the motion the reading is the lash, square to the trace it is smaller by cos β, along the normal by
/// cos α cos β.
#[test]
fn the_stem_shows_its_share_of_the_lash() {
    for found in gear_sets::embedded().expect("embedded sets are read") {
        let gears = GearNumbers::of(&GearSet::new(found.design).expect("gears exist"));
        let (a, b) = (gears.pressure_angle_rad, gears.outer_spiral_angle_rad);
        let (cos_a, cos_b) = (lashwright::numerics::math::cos(a), lashwright::numerics::math::cos(b));
        for (stem, wanted) in [
            (Stem::AlongMotion, 1.0),
            (Stem::SquareToTrace, cos_b),
            (Stem::AlongNormal, cos_a * cos_b),
            (Stem::Between { angle_rad: 0.0 }, 1.0),
            (Stem::Between { angle_rad: b }, cos_b),
        ] {
            let share = stem.share(&gears);
            assert!(
                (share - wanted).abs() < 1e-12,
                "{}: {stem:?} {share} {wanted}",
                found.source
            );
        }
        // Nearer to the axis the flank moves less.
        let inner = Stem::AlongMotion.travel_mm(0.2, 0.9 * gears.outer_pitch_radius_mm, &gears);
        assert!((inner - 0.18).abs() < 1e-12, "{inner}");
    }
    let tilted = flat_target_true_mm(0.1, 0.5);
    assert!(
        (tilted - 0.1 * lashwright::numerics::math::cos(0.5)).abs() < 1e-15,
        "reads high by the cosine"
    );
}

#[test]
fn a_wrench_says_why_it_cannot_read() {
    let u = using(1, 0, 0);
    assert_eq!(
        TorqueWrench::LARGE_CLICK.rolling(60.0, 50.0, u),
        Err(CannotRead::Clicks)
    );
    assert_eq!(
        TorqueWrench::SMALL_DIAL.rolling(0.1, 0.1, u),
        Err(CannotRead::TooLarge { least_nm: 0.3 })
    );
    assert_eq!(
        TorqueWrench::SMALL_DIAL.rolling(9.0, 7.0, u),
        Err(CannotRead::TooSmall { most_nm: 8.0 })
    );
    let read = TorqueWrench::SMALL_DIAL.rolling(2.6, 2.0, u).expect("within its range");
    assert!(
        (read.running_nm / 2.0 - 1.0).abs() < 0.13 && read.start_nm > read.running_nm,
        "{read:?}"
    );
    for wrench in [TorqueWrench::LARGE_CLICK, TorqueWrench::MULTIPLIER] {
        let applied = wrench.applies_nm(250.0, u).expect("within its range");
        assert!(
            (applied / 250.0 - 1.0).abs() < 2.5 * (0.5 * wrench.permitted_share + wrench.pull_share),
            "{applied}"
        );
    }
}

/// Low drag prints faint, thick paste prints large, many passes smear.
#[test]
fn a_print_is_as_good_as_its_rolling() {
    let paste = Paste::USUAL;
    let rolled = |coat, drag_nm, passes| paste.rolled(coat, Roll { drag_nm, passes }, using(1, 0, 0));
    let right = rolled(Coat::Thin, 40.0, 6);
    assert!(
        right.clearness > 0.9 && right.smear.abs() < 1e-12,
        "firm drag, six passes: {right:?}"
    );
    assert!(rolled(Coat::Thin, 3.0, 6).clearness < 0.4, "light brake: faint");
    assert!(rolled(Coat::Thin, 40.0, 1).clearness < 0.5, "one pass: faint");
    assert!(
        rolled(Coat::Thick, 40.0, 6).film_um > 2.0 * right.film_um,
        "thick paste: falsely large"
    );
    let many = rolled(Coat::Thin, 40.0, 20);
    assert!(
        many.smear > 0.3 && many.film_um > 1.3 * right.film_um,
        "many passes smear: {many:?}"
    );
    assert!(
        rolled(Coat::Thin, f64::NAN, 6).clearness.abs() < 1e-12,
        "no drag at all"
    );
}

proptest! {
    #[test]
    fn the_same_use_gives_the_same_bits_and_never_nonsense(
        seed in any::<u64>(), set_up in 0_u32..50, reading in 0_u32..500, value in 0.0_f64..10.0,
    ) {
        let u = using(seed, set_up, reading);
        let all = || {
            [
                Dial::GOOD.reads_mm(value, false, u),
                Dial::WORN.reads_mm(value, true, u),
                Micrometer::USUAL.reads_mm(value, u),
                DepthGauge::USUAL.reads_mm(value, u),
                Feeler::USUAL.goes_in_mm(value, u).unwrap_or(-1.0),
                Thermometer::USUAL.reads_c(20.0 * value, u),
                PressGauge::USUAL.reads_n(1000.0 * value, u),
                TorqueWrench::CORD.reads_nm(value, u).unwrap_or(-1.0),
            ]
        };
        prop_assert_eq!(all().map(f64::to_bits), all().map(f64::to_bits));
        prop_assert!(all().iter().all(|v| v.is_finite()));
        prop_assert!((Micrometer::USUAL.reads_mm(value, u) - value).abs() < 0.02);
        if let Some(leaf) = Feeler::USUAL.goes_in_mm(value, u) {
            prop_assert!(leaf <= value + 0.011);
        }
    }
}
