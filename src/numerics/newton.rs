//! Newton's method that cannot leave its bracket.
//!
//! Source: the safeguard of G. E. Forsythe, M. A. Malcolm and C. B. Moler, Computer Methods for Mathematical
//! Computations, 1977.

use super::root::{Bracket, Ends, RootError, look_at_ends, number_at};

/// A root of `f` between `low` and `high` (either order) from the start value `start`, to within `accuracy`.
/// `f` gives value and derivative.
///
/// Method: Newton steps, replaced by the middle of the present bracket whenever a step would leave the bracket or
/// did not halve the last but one step (the safeguard of G. E. Forsythe, M. A. Malcolm and C. B. Moler, *Computer
/// Methods for Mathematical Computations*, 1977, chapter 7, with Newton in place of the secant).
///
/// Guarantee: the sign of `f` changes within `accuracy` of the answer, whatever the derivative says (or the bracket is
/// as narrow as doubles can tell apart): before a short last step is believed, the sign beyond it is looked at. With a
/// right derivative and a simple root the end is quadratic: 4 to 6 evaluations from a fair start. With a wrong one the
/// method falls back to bisection and is only slower; 200 steps are the most, and far more than doubles need.
///
/// # Errors
/// As [`super::root::in_bracket`]. Values at both ends are asked for first.
pub fn in_bracket(
    mut f: impl FnMut(f64) -> (f64, f64),
    low: f64,
    high: f64,
    start: f64,
    accuracy: f64,
) -> Result<f64, RootError> {
    let ends = look_at_ends(&mut |x| number_at(x, f(x).0), low, high, accuracy)?;
    let Bracket {
        low: mut a,
        high: mut b,
        value_high,
        ..
    } = match ends {
        Ends::Root(root) => return Ok(root),
        Ends::Between(bracket) => bracket,
    };
    let mut value = |x: f64| {
        let (y, slope) = f(x);
        number_at(x, y).map(|y| (y, slope))
    };
    let rising = value_high > 0.0;
    let mut x = if start > a && start < b { start } else { 0.5 * (a + b) };
    let mut last_step = b - a;
    let mut step_before = last_step;
    for _ in 0..200 {
        let (y, slope) = value(x)?;
        if y == 0.0 {
            return Ok(x);
        }
        let above = (y > 0.0) == rising;
        if above {
            b = x;
        } else {
            a = x;
        }
        if b - a <= accuracy {
            return Ok(0.5 * (a + b));
        }
        let newton = y / slope;
        if newton.abs() <= accuracy {
            // The derivative says that the root is this near: believe it only if the sign changes within the accuracy.
            let probe = if above { x - accuracy } else { x + accuracy };
            if probe <= a || probe >= b {
                return Ok(0.5 * (a + b));
            }
            let (y, _) = value(probe)?;
            if y == 0.0 || ((y > 0.0) == rising) != above {
                let target = x - newton;
                return Ok(if (target - x) * (probe - x) >= 0.0 { target } else { x });
            }
            if above {
                b = probe;
            } else {
                a = probe;
            }
        }
        let target = x - newton;
        let usable = newton.is_finite()
            && newton.abs() > accuracy
            && target > a
            && target < b
            && 2.0 * newton.abs() < step_before.abs();
        let next = if usable { target } else { 0.5 * (a + b) };
        step_before = last_step;
        last_step = next - x;
        // The two ends are neighbours among doubles.
        if next <= a || next >= b {
            return Ok(next);
        }
        x = next;
    }
    Ok(x)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::numerics::math;

    #[test]
    fn known_roots_in_few_evaluations() {
        let cases: [(&str, fn(f64) -> (f64, f64), f64, f64, f64, f64, u32); 3] = [
            // Kepler's equation M = E − e sin E; M = 1 built from E = 1.5, e = (1.5 − 1) / sin 1.5: root by construction.
            (
                "Kepler",
                |x| {
                    let e = 0.5 / math::sin(1.5);
                    (x - e * math::sin(x) - 1.0, 1.0 - e * math::cos(x))
                },
                0.0,
                3.0,
                1.0,
                1.5,
                8,
            ),
            // Dottie number, OEIS A003957.
            (
                "cos x − x",
                |x| (math::cos(x) - x, -math::sin(x) - 1.0),
                0.0,
                1.0,
                0.7,
                0.739_085_133_215_160_6,
                7,
            ),
            // Wallis's example, the real root of x³ − 2x − 5 (OEIS A007493).
            (
                "Wallis",
                |x| (x * x * x - 2.0 * x - 5.0, 3.0 * x * x - 2.0),
                2.0,
                3.0,
                2.1,
                2.094_551_481_542_326_6,
                7,
            ),
        ];
        for (name, f, low, high, start, root, most) in cases {
            let mut evaluations = 0;
            let counted = |x| {
                evaluations += 1;
                f(x)
            };
            let found = in_bracket(counted, low, high, start, 1e-13).expect("a root is there");
            println!("{name}: {evaluations} evaluations, deviation {:.1e}", found - root);
            assert!((found - root).abs() < 1e-13, "{name}: {found} is not {root}");
            assert!(evaluations <= most, "{name}: {evaluations} evaluations");
        }
    }

    /// Plain Newton runs away from this start (arc tangent, start beyond 1.39); the safeguard must not.
    #[test]
    fn a_step_that_would_run_away_is_caught() {
        let found = in_bracket(|x| (math::atan(x), 1.0 / (1.0 + x * x)), -30.0, 40.0, 35.0, 1e-12).expect("root");
        assert!(found.abs() < 1e-12, "{found}");
    }

    #[test]
    fn a_wrong_derivative_only_costs_time() {
        for slope in [0.0, -1.0, 1e-30, 1e30, f64::NAN] {
            let found = in_bracket(|x| (x * x * x - 2.0, slope), 0.0, 3.0, 2.9, 1e-12).expect("root");
            assert!(
                (found - math::pow(2.0, 1.0 / 3.0)).abs() < 2e-12,
                "slope {slope}: {found}"
            );
        }
    }

    #[test]
    fn what_cannot_be_solved_is_refused() {
        assert!(
            matches!(
                in_bracket(|x| (x, 1.0), 1.0, 2.0, 1.5, 1e-9),
                Err(RootError::NoBracket { .. })
            ),
            "sign"
        );
        assert!(
            matches!(
                in_bracket(|_| (f64::NAN, 1.0), 1.0, 2.0, 1.5, 1e-9),
                Err(RootError::NotANumber { .. })
            ),
            "NaN"
        );
        assert!(
            matches!(
                in_bracket(|x| (x, 1.0), -1.0, 2.0, 0.5, 0.0),
                Err(RootError::BadAccuracy { .. })
            ),
            "accuracy"
        );
    }
}
