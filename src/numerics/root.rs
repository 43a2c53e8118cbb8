//! A root of a continuous function inside a bracket.
//!
//! Source: I. F. D. Oliveira and R. H. C. Takahashi, ACM Transactions on Mathematical Software 47(1), 2020.

use thiserror::Error;

/// Why no root was found.
#[derive(Debug, Clone, Copy, PartialEq, Error)]
#[error("{self:?}")]
pub enum RootError {
    /// The function has the same sign at both ends.
    NoBracket {
        /// Lower end.
        low: f64,
        /// Upper end.
        high: f64,
        /// Value at the lower end.
        value_low: f64,
        /// Value at the upper end.
        value_high: f64,
    },
    /// The function gave NaN, or an end of the bracket is not a finite number.
    NotANumber {
        /// Where.
        at: f64,
    },
    /// The accuracy asked for is not a positive number.
    BadAccuracy {
        /// As asked for.
        accuracy: f64,
    },
}

/// The smallest half width of a bracket that doubles can still resolve around `a` and `b`.
fn resolvable(a: f64, b: f64) -> f64 {
    let largest = if a.abs() > b.abs() { a.abs() } else { b.abs() };
    2.0 * f64::EPSILON * largest + f64::MIN_POSITIVE
}

/// A bracket with values of opposite sign at its ends, `low` < `high`.
pub(super) struct Bracket {
    pub(super) low: f64,
    pub(super) high: f64,
    pub(super) value_low: f64,
    pub(super) value_high: f64,
}

/// What the two ends of a bracket say.
pub(super) enum Ends {
    /// One of them is the root.
    Root(f64),
    /// The root lies between them.
    Between(Bracket),
}

/// `y`, the value at `x`, unless it is NaN.
pub(super) fn number_at(x: f64, y: f64) -> Result<f64, RootError> {
    if y.is_nan() {
        Err(RootError::NotANumber { at: x })
    } else {
        Ok(y)
    }
}

/// Checks what a root finder was given and looks at the two ends.
pub(super) fn look_at_ends(
    value: &mut impl FnMut(f64) -> Result<f64, RootError>,
    low: f64,
    high: f64,
    accuracy: f64,
) -> Result<Ends, RootError> {
    if accuracy.is_nan() || accuracy <= 0.0 {
        return Err(RootError::BadAccuracy { accuracy });
    }
    for end in [low, high] {
        if !end.is_finite() {
            return Err(RootError::NotANumber { at: end });
        }
    }
    let (low, high) = if low <= high { (low, high) } else { (high, low) };
    let (value_low, value_high) = (value(low)?, value(high)?);
    if value_low == 0.0 {
        return Ok(Ends::Root(low));
    }
    if value_high == 0.0 {
        return Ok(Ends::Root(high));
    }
    if (value_low > 0.0) == (value_high > 0.0) {
        return Err(RootError::NoBracket {
            low,
            high,
            value_low,
            value_high,
        });
    }
    Ok(Ends::Between(Bracket {
        low,
        high,
        value_low,
        value_high,
    }))
}

/// A root of `f` between `low` and `high` (either order), to within `accuracy` (or, where that is finer than doubles
/// can tell apart, to within a few units in the last place).
///
/// Method: ITP, which interpolates, truncates and projects (I. F. D. Oliveira and R. H. C. Takahashi, *An enhancement
/// of the bisection method average performance preserving minmax optimality*, ACM Trans. Math. Softw. 47(1), 2020),
/// with κ1 = 0.2 / (b − a), κ2 = 2, n0 = 1.
///
/// Guarantee: at most ⌈log2(|high − low| / (2 accuracy))⌉ + 2 evaluations besides those at the two ends, so never more
/// than two above bisection (one is the method's, one may be lost to rounding); smooth functions need far fewer. `f`
/// need not be smooth, only of opposite signs at the ends; at a jump the place of the jump is returned.
///
/// # Errors
/// [`RootError::NoBracket`] where the signs at the ends agree, [`RootError::NotANumber`] where `f` or an end is NaN or
/// an end is infinite, [`RootError::BadAccuracy`] for an accuracy that is not above 0.
pub fn in_bracket(mut f: impl FnMut(f64) -> f64, low: f64, high: f64, accuracy: f64) -> Result<f64, RootError> {
    let mut value = |x: f64| number_at(x, f(x));
    let Bracket {
        low: mut a,
        high: mut b,
        value_low: mut ya,
        value_high: mut yb,
    } = match look_at_ends(&mut value, low, high, accuracy)? {
        Ends::Root(root) => return Ok(root),
        Ends::Between(bracket) => bracket,
    };
    let epsilon = {
        let floor = resolvable(a, b);
        if accuracy > floor { accuracy } else { floor }
    };
    let kappa = 0.2 / (b - a);
    // epsilon · 2^(n_max − j), halved in each step: the widest half bracket that keeps the bound on evaluations.
    let mut allowed = epsilon;
    while allowed < 0.5 * (b - a) {
        allowed *= 2.0;
    }
    allowed *= 2.0;
    while b - a > 2.0 * epsilon {
        let half = 0.5 * (a + b);
        let reach = allowed - 0.5 * (b - a);
        // Infinite values still carry a sign: bisect then.
        let chord = (yb * a - ya * b) / (yb - ya);
        let interpolated = if chord.is_finite() { chord } else { half };
        let toward_half = if half >= interpolated { 1.0 } else { -1.0 };
        let shift = kappa * (b - a) * (b - a);
        let truncated = if shift <= (half - interpolated).abs() {
            interpolated + toward_half * shift
        } else {
            half
        };
        let x = if (truncated - half).abs() <= reach {
            truncated
        } else {
            half - toward_half * reach
        };
        let y = value(x)?;
        if y == 0.0 {
            return Ok(x);
        }
        if (y > 0.0) == (yb > 0.0) {
            b = x;
            yb = y;
        } else {
            a = x;
            ya = y;
        }
        allowed *= 0.5;
    }
    Ok(0.5 * (a + b))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::numerics::math;

    /// Roots known in closed form or to many digits, each with the bound on evaluations checked.
    #[test]
    fn known_roots_within_the_promised_evaluations() {
        let cases: [(&str, fn(f64) -> f64, f64, f64, f64); 6] = [
            ("x² − 2", |x| x * x - 2.0, 0.0, 2.0, std::f64::consts::SQRT_2),
            // Dottie number, OEIS A003957.
            ("cos x − x", |x| math::cos(x) - x, 0.0, 1.0, 0.739_085_133_215_160_641_7),
            // Omega constant, OEIS A030178.
            (
                "x eˣ − 1",
                |x| x * math::exp(x) - 1.0,
                0.0,
                1.0,
                0.567_143_290_409_783_873_0,
            ),
            ("x⁹", |x| x * x * x * x * x * x * x * x * x, -1.0, 3.0, 0.0),
            (
                "step at 1/3",
                |x| if x < 1.0 / 3.0 { -1.0 } else { 1.0 },
                0.0,
                1.0,
                1.0 / 3.0,
            ),
            ("falling line", |x| 5.0 - x, -10.0, 40.0, 5.0),
        ];
        for (name, f, low, high, root) in cases {
            for accuracy in [1e-3, 1e-8, 1e-13] {
                let mut evaluations = 0;
                let found = in_bracket(
                    |x| {
                        evaluations += 1;
                        f(x)
                    },
                    low,
                    high,
                    accuracy,
                )
                .expect("a root is there");
                let bound = 4.0 + math::log10((high - low) / (2.0 * accuracy)) / math::log10(2.0);
                println!(
                    "{name} to {accuracy:.0e}: {evaluations} evaluations, deviation {:.1e}",
                    found - root
                );
                assert!((found - root).abs() <= 1.01 * accuracy, "{name}: {found} is not {root}");
                assert!(
                    f64::from(evaluations) <= bound.ceil(),
                    "{name}: {evaluations} evaluations, promised {bound}"
                );
            }
        }
    }

    #[test]
    fn ends_may_come_in_either_order_and_may_be_the_root() {
        let f = |x: f64| x - 1.0;
        assert_eq!(
            in_bracket(f, 3.0, 0.0, 1e-12),
            in_bracket(f, 0.0, 3.0, 1e-12),
            "order of the ends"
        );
        assert_eq!(in_bracket(f, 1.0, 3.0, 1e-12), Ok(1.0), "lower end");
        assert_eq!(in_bracket(f, 0.0, 1.0, 1e-12), Ok(1.0), "upper end");
    }

    #[test]
    fn what_cannot_be_solved_is_refused() {
        assert!(
            matches!(in_bracket(|x| x, 1.0, 2.0, 1e-9), Err(RootError::NoBracket { .. })),
            "same sign"
        );
        assert!(
            matches!(
                in_bracket(|_| f64::NAN, 1.0, 2.0, 1e-9),
                Err(RootError::NotANumber { .. })
            ),
            "NaN"
        );
        assert!(
            matches!(
                in_bracket(|x| x, f64::NAN, 2.0, 1e-9),
                Err(RootError::NotANumber { .. })
            ),
            "NaN end"
        );
        assert!(
            matches!(
                in_bracket(|x| x, -1.0, f64::INFINITY, 1e-9),
                Err(RootError::NotANumber { .. })
            ),
            "∞ end"
        );
        for accuracy in [0.0, -1.0, f64::NAN] {
            assert!(
                matches!(
                    in_bracket(|x| x, -1.0, 2.0, accuracy),
                    Err(RootError::BadAccuracy { .. })
                ),
                "accuracy"
            );
        }
    }

    #[test]
    fn accuracy_finer_than_doubles_ends_at_the_last_place() {
        let found = in_bracket(|x| x * x * x - 10.0, 2.0, 3.0, 1e-300).expect("a root is there");
        assert!((found * found * found - 10.0).abs() < 1e-13, "{found}");
    }
}
