//! What the root finders promise, for random functions with a known root.

use lashwright::numerics::{math, newton, root};
use proptest::prelude::*;

proptest! {
    /// A cubic with exactly one real root at `place`, of either slope.
    #[test]
    fn a_root_is_found_within_the_accuracy(
        place in -50.0_f64..50.0,
        below in 1e-6_f64..100.0,
        above in 1e-6_f64..100.0,
        bend in 0.0_f64..10.0,
        slope in prop_oneof![-10.0_f64..-0.01, 0.01_f64..10.0],
        digits in 2_i32..12,
    ) {
        let accuracy = (0..digits).fold(1.0, |a, _| a * 0.1);
        let f = |x: f64| { let t = x - place; slope * t * (1.0 + bend * t * t) };
        let slope_of = |x: f64| { let t = x - place; slope * (1.0 + 3.0 * bend * t * t) };
        let mut evaluations = 0_u32;
        let found = root::in_bracket(|x| { evaluations += 1; f(x) }, place - below, place + above, accuracy).expect("bracketed");
        prop_assert!((found - place).abs() <= 1.01 * accuracy, "{found} for {place}");
        let bisection = (math::log10((below + above) / (2.0 * accuracy)) / math::log10(2.0)).ceil().max(0.0);
        prop_assert!(f64::from(evaluations) <= 4.0 + bisection, "{evaluations} evaluations, bisection {bisection}");

        let by_slope = newton::in_bracket(|x| (f(x), slope_of(x)), place - below, place + above, place, accuracy).expect("bracketed");
        prop_assert!((by_slope - place).abs() <= 1.01 * accuracy, "{by_slope} for {place}");
        // A derivative that lies must not move the answer.
        let misled = newton::in_bracket(|x| (f(x), -3.0 * slope_of(x)), place - below, place + above, place + 0.3 * above, accuracy).expect("bracketed");
        prop_assert!((misled - place).abs() <= 1.01 * accuracy, "{misled} for {place}");
    }
}
