//! Scales: from values to places, with ticks at round numbers.

/// A mark on a scale.
#[derive(Debug, Clone, PartialEq)]
pub struct Tick {
    /// Value where it stands.
    pub value: f64,
    /// What stands beside it; empty for a small one.
    pub label: String,
}

/// A straight scale from one value to another, drawn from one place to another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Axis {
    /// Value at `from_place`.
    pub from: f64,
    /// Value at `to_place`; not equal to `from`.
    pub to: f64,
    /// Place of `from`, points.
    pub from_place: f64,
    /// Place of `to`, points.
    pub to_place: f64,
}

impl Axis {
    /// Where a value stands, points; also outside the scale.
    pub fn place(&self, value: f64) -> f64 {
        self.from_place + (value - self.from) / (self.to - self.from) * (self.to_place - self.from_place)
    }

    /// Whether a value lies on the scale; the ends belong to it, with a hair of rounding.
    pub fn holds(&self, value: f64) -> bool {
        let (low, high) = if self.from < self.to {
            (self.from, self.to)
        } else {
            (self.to, self.from)
        };
        let hair = 1.0e-9 * (high - low);
        value >= low - hair && value <= high + hair
    }

    /// Step between ticks: the round number (1, 2, 2.5 or 5 times a power of ten) that gives at most `most` steps.
    pub fn round_step(&self, most: u32) -> f64 {
        let wanted = (self.to - self.from).abs() / f64::from(most.max(1));
        let mut power = 1.0;
        while power > wanted {
            power *= 0.1;
        }
        while power * 10.0 <= wanted {
            power *= 10.0;
        }
        for factor in [1.0, 2.0, 2.5, 5.0] {
            if power * factor >= wanted * (1.0 - 1.0e-12) {
                return power * factor;
            }
        }
        10.0 * power
    }

    /// Ticks at all multiples of `step` on the scale, labelled with as many decimals as the step needs.
    pub fn ticks(&self, step: f64) -> Vec<Tick> {
        // 400 ticks are more than any scale can show.
        const MOST: u32 = 400;
        let (low, high) = if self.from < self.to {
            (self.from, self.to)
        } else {
            (self.to, self.from)
        };
        let decimals = decimals_of(step);
        let first = (low / step - 1.0e-9).ceil();
        (0..MOST)
            .map(|i| (first + f64::from(i)) * step)
            .take_while(|value| *value <= high + 1.0e-9 * step)
            .map(|value| Tick {
                value,
                label: crate::quantity::number(value, decimals),
            })
            .collect()
    }
}

/// How many decimals a step between ticks needs, at most 6.
fn decimals_of(step: f64) -> usize {
    let mut scaled = step.abs();
    for decimals in 0..6 {
        if (scaled - scaled.round()).abs() < 1.0e-6 * scaled {
            return decimals;
        }
        scaled *= 10.0;
    }
    6
}

#[cfg(test)]
mod tests {
    use super::*;

    fn axis(from: f64, to: f64) -> Axis {
        Axis {
            from,
            to,
            from_place: 100.0,
            to_place: 500.0,
        }
    }

    #[test]
    fn steps_are_round_and_few_enough() {
        for (from, to, most, step) in [
            (0.0, 10.0, 10, 1.0),
            (0.0, 10.0, 6, 2.0),
            (0.0, 10.0, 4, 2.5),
            (44.9, 45.06, 8, 0.02),
            (0.0, 47.0, 10, 5.0),
            (3.0, 1.0, 5, 0.5),
            (0.0, 1.0e-4, 10, 1.0e-5),
        ] {
            let got = axis(from, to).round_step(most);
            assert!(
                (got - step).abs() < 1e-12,
                "{from} to {to}, {most} steps: {got}, wanted {step}"
            );
        }
    }

    #[test]
    fn ticks_stand_at_multiples_with_the_right_decimals() {
        let labels = |a: Axis, step: f64| a.ticks(step).into_iter().map(|t| t.label).collect::<Vec<_>>();
        assert_eq!(
            labels(axis(44.93, 45.0), 0.02),
            ["44.94", "44.96", "44.98", "45.00"],
            "rising"
        );
        assert_eq!(
            labels(axis(1.0, -1.0), 0.5),
            ["−1.0", "−0.5", "0.0", "0.5", "1.0"],
            "falling"
        );
        assert_eq!(labels(axis(0.0, 5.0), 2.5), ["0.0", "2.5", "5.0"], "quarters");
    }

    #[test]
    fn places_run_with_the_values() {
        let a = Axis {
            from: 0.0,
            to: 2.0,
            from_place: 300.0,
            to_place: 100.0,
        };
        assert!((a.place(0.5) - 250.0).abs() < 1e-12, "upward scale");
        assert!(
            (axis(44.9, 45.1).place(44.95) - 200.0).abs() < 1e-9,
            "a scale that does not begin at zero"
        );
        assert!((axis(3.0, 1.0).place(1.5) - 400.0).abs() < 1e-9, "a scale that falls");
        assert!(a.holds(2.0) && a.holds(0.0) && !a.holds(2.1), "ends belong to it");
    }
}
