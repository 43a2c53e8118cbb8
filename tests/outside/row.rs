//! A row of the test guide: what is checked, the source, the tolerance, and the numbers that were compared.

use std::fmt::Display;
use std::ops::{Bound, RangeBounds};

/// Where the numbers of a row come from.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Source {
    /// Published and read: its name.
    Published(&'static str),
    /// Published, but remembered and not read again: its name.
    Memory(&'static str),
    /// Common practice, no source; empty, or what else is to be said.
    Practice(&'static str),
    /// Not published: worked out a second time by another route, which is named.
    Second(&'static str),
    /// A theorem, an identity or plain arithmetic that every right answer obeys.
    Law(&'static str),
}

/// Kinds of source, in the order of [`Source`], with what the word means.
pub(crate) const KINDS: [(&str, &str); 5] = [
    ("published", "the source is named and was read for this check"),
    (
        "from memory",
        "the source is named, but its numbers or formulas were remembered and not read again",
    ),
    (
        "common practice",
        "what the trade says and does; no source that could be named",
    ),
    (
        "second computation",
        "not published: the number was worked out again by another route, which is named",
    ),
    (
        "law",
        "a theorem, an identity or plain arithmetic that every right answer obeys",
    ),
];

impl Source {
    /// Place in [`KINDS`].
    pub(crate) fn kind(self) -> usize {
        match self {
            Self::Published(_) => 0,
            Self::Memory(_) => 1,
            Self::Practice(_) => 2,
            Self::Second(_) => 3,
            Self::Law(_) => 4,
        }
    }

    fn text(self) -> String {
        match self {
            Self::Published(name) => name.to_owned(),
            Self::Memory(name) => format!("from memory: {name}"),
            Self::Practice("") => "common practice, no source".to_owned(),
            Self::Practice(more) => format!("common practice, no source; {more}"),
            Self::Second(route) => format!("second computation: {route}"),
            Self::Law(which) => format!("law: {which}"),
        }
    }
}

/// What a row allows.
#[derive(Debug, Clone, Copy)]
enum Tolerance {
    /// Difference in a unit.
    Absolute { within: f64, unit: &'static str },
    /// Difference over the wanted number.
    Relative { within: f64 },
    /// Difference in a unit: half a unit of the last printed place, and so much of the wanted number besides.
    Printed {
        half_place: f64,
        relative: f64,
        unit: &'static str,
    },
    /// A number between bounds.
    Range {
        low: Bound<f64>,
        high: Bound<f64>,
        unit: &'static str,
    },
    /// Yes or no: in what sense, as "sign" or "order".
    Stated(&'static str),
}

/// One row of the guide.
#[derive(Debug, Clone)]
pub(crate) struct Row {
    pub(crate) what: &'static str,
    pub(crate) source: Source,
    tolerance: Tolerance,
    in_bulk: bool,
    /// How many were compared.
    pub(crate) numbers: usize,
    /// Largest deviation, in the unit of the tolerance, and where it was found.
    largest: f64,
    pub(crate) place: String,
    /// Least and greatest number found, of a range.
    found: [f64; 2],
    pub(crate) misses: Vec<String>,
}

impl Row {
    fn new(what: &'static str, source: Source, tolerance: Tolerance) -> Self {
        Self {
            what,
            source,
            tolerance,
            in_bulk: false,
            numbers: 0,
            largest: 0.0,
            place: String::new(),
            found: [f64::INFINITY, f64::NEG_INFINITY],
            misses: Vec::new(),
        }
    }

    /// Numbers that may differ by `within`, in this unit.
    pub(crate) fn absolute(what: &'static str, source: Source, within: f64, unit: &'static str) -> Self {
        Self::new(what, source, Tolerance::Absolute { within, unit })
    }

    /// Numbers that may differ by this part of the wanted one.
    pub(crate) fn relative(what: &'static str, source: Source, within: f64) -> Self {
        Self::new(what, source, Tolerance::Relative { within })
    }

    /// Numbers printed with few digits: half a unit of the last place, and this part of the wanted number besides.
    pub(crate) fn printed(
        what: &'static str,
        source: Source,
        last_place: f64,
        relative: f64,
        unit: &'static str,
    ) -> Self {
        let half_place = 0.5 * last_place;
        Self::new(
            what,
            source,
            Tolerance::Printed {
                half_place,
                relative,
                unit,
            },
        )
    }

    /// Numbers that must lie between bounds.
    pub(crate) fn range(what: &'static str, source: Source, bounds: impl RangeBounds<f64>, unit: &'static str) -> Self {
        let (low, high) = (bounds.start_bound().cloned(), bounds.end_bound().cloned());
        Self::new(what, source, Tolerance::Range { low, high, unit })
    }

    /// Facts that are so or not; `sense` stands in the place of the tolerance: "sign", "order", "equal", "as stated".
    pub(crate) fn stated(what: &'static str, source: Source, sense: &'static str) -> Self {
        Self::new(what, source, Tolerance::Stated(sense))
    }

    /// Too many numbers to print them one by one.
    pub(crate) fn in_bulk(mut self) -> Self {
        self.in_bulk = true;
        self
    }

    /// Takes a number with what it should be.
    pub(crate) fn near(&mut self, place: impl Display, got: f64, want: f64) {
        let off = got - want;
        let (deviation, limit) = match self.tolerance {
            Tolerance::Absolute { within, .. } => (off.abs(), within),
            Tolerance::Relative { within } => ((off / want).abs(), within),
            Tolerance::Printed {
                half_place, relative, ..
            } => (off.abs(), half_place + relative * want.abs()),
            Tolerance::Range { .. } | Tolerance::Stated(_) => panic!("{}: nothing to be near to", self.what),
        };
        if deviation > self.largest || deviation.is_nan() {
            self.largest = deviation;
            self.place = place.to_string();
        }
        let holds = deviation <= limit;
        self.take(
            holds,
            format_args!("{place}: {got} for {want}, deviation {deviation:.2e} of {limit:.2e}"),
        );
    }

    /// Takes a number that should lie in the range.
    pub(crate) fn found(&mut self, place: impl Display, got: f64) {
        let Tolerance::Range { low, high, .. } = self.tolerance else {
            panic!("{}: no range", self.what)
        };
        let [least, greatest] = self.found;
        self.found = [
            if got < least { got } else { least },
            if got > greatest { got } else { greatest },
        ];
        let holds = (low, high).contains(&got);
        self.take(holds, format_args!("{place}: {got}, allowed {}", self.tolerance_text()));
    }

    /// Takes a fact.
    pub(crate) fn is(&mut self, place: impl Display, so: bool) {
        let Tolerance::Stated(sense) = self.tolerance else {
            panic!("{}: no yes or no", self.what)
        };
        let answer = if so { "yes" } else { "no" };
        self.take(so, format_args!("{place}: {answer} ({sense})"));
    }

    fn take(&mut self, holds: bool, line: std::fmt::Arguments<'_>) {
        self.numbers += 1;
        if !self.in_bulk {
            println!("{}: {line}", self.what);
        }
        if !holds {
            self.misses.push(line.to_string());
        }
    }

    /// Whether all numbers kept the tolerance, and there was at least one.
    pub(crate) fn holds(&self) -> bool {
        self.numbers > 0 && self.misses.is_empty()
    }

    fn tolerance_text(&self) -> String {
        match self.tolerance {
            Tolerance::Absolute { within, unit } => with_unit(&short(within), unit),
            Tolerance::Relative { within } => share(within, short),
            Tolerance::Printed {
                half_place,
                relative,
                unit,
            } => {
                let places = with_unit(&short(half_place), unit);
                if relative > 0.0 {
                    format!("{places} + {}", share(relative, short))
                } else {
                    places
                }
            }
            Tolerance::Range { low, high, unit } => {
                let text = match (low, high) {
                    (Bound::Unbounded, Bound::Unbounded) => "any".to_owned(),
                    (Bound::Unbounded, Bound::Included(high)) => format!("at most {}", short(high)),
                    (Bound::Unbounded, Bound::Excluded(high)) => format!("under {}", short(high)),
                    (Bound::Included(low), Bound::Unbounded) => format!("at least {}", short(low)),
                    (Bound::Excluded(low), Bound::Unbounded) => format!("over {}", short(low)),
                    (Bound::Included(low) | Bound::Excluded(low), Bound::Included(high) | Bound::Excluded(high)) => {
                        format!("{} to {}", short(low), short(high))
                    }
                };
                with_unit(&text, unit)
            }
            Tolerance::Stated(sense) => sense.to_owned(),
        }
    }

    fn deviation_text(&self) -> String {
        match self.tolerance {
            Tolerance::Absolute { within, unit } => self.largest_text(within, |v| with_unit(&v, unit)),
            Tolerance::Relative { within } if within >= PERCENT_FROM => {
                let percent = Self {
                    largest: 100.0 * self.largest,
                    ..self.clone()
                };
                percent.largest_text(100.0 * within, |v| format!("{v} %"))
            }
            Tolerance::Relative { within } => self.largest_text(within, |v| format!("{v} relative")),
            Tolerance::Printed { half_place, unit, .. } => self.largest_text(half_place, |v| with_unit(&v, unit)),
            Tolerance::Range { unit, .. } => {
                let [least, greatest] = self.found.map(|v| figures(v, 3));
                let found = if least == greatest {
                    least
                } else {
                    format!("{least} to {greatest}")
                };
                format!("found {}", with_unit(&found, unit))
            }
            Tolerance::Stated(_) if self.misses.is_empty() => "none".to_owned(),
            Tolerance::Stated(_) => format!("{} wrong", self.misses.len()),
        }
    }

    fn largest_text(&self, within: f64, unit: impl Fn(String) -> String) -> String {
        let largest = self.largest;
        if within > 0.0 && within <= ROUNDING && largest <= within {
            "rounding".to_owned()
        } else if largest < within / 1000.0 {
            format!("< {}", unit(short(within / 1000.0)))
        } else {
            unit(figures(largest, 2))
        }
    }

    /// Line of the guide's table.
    pub(crate) fn line(&self) -> String {
        let cells = [
            self.what.to_owned(),
            self.source.text(),
            self.numbers.to_string(),
            self.tolerance_text(),
            self.deviation_text(),
            if self.holds() { "holds" } else { "FAILS" }.to_owned(),
        ];
        format!("| {} |", cells.map(|c| c.replace('|', "\\|")).join(" | "))
    }
}

/// Relative tolerances from here on are told in percent.
const PERCENT_FROM: f64 = 1e-5;
/// Tolerances up to here ask for equality but for rounding.
const ROUNDING: f64 = 1e-10;

fn with_unit(number: &str, unit: &str) -> String {
    if unit.is_empty() {
        number.to_owned()
    } else {
        format!("{number} {unit}")
    }
}

fn share(part: f64, number: impl Fn(f64) -> String) -> String {
    if part >= PERCENT_FROM {
        format!("{} %", number(100.0 * part))
    } else {
        format!("{} relative", number(part))
    }
}

/// A number in so many significant digits.
fn figures(value: f64, count: usize) -> String {
    if value == 0.0 || !value.is_finite() {
        return value.abs().to_string();
    }
    let text = format!("{value:.*e}", count - 1);
    let exponent: i32 = text.split_once('e').map_or(0, |(_, e)| e.parse().expect("a number"));
    if (-4..=5).contains(&exponent) {
        let rounded: f64 = text.parse().expect("a number");
        let places = i32::try_from(count).expect("few") - 1 - exponent;
        format!("{rounded:.*}", usize::try_from(places).unwrap_or(0))
    } else {
        text
    }
}

/// A number as somebody chose it, without the noise of its last bits.
fn short(value: f64) -> String {
    let rounded: f64 = format!("{value:.3e}").parse().expect("a number");
    if value == 0.0 || (1e-4..1e6).contains(&rounded.abs()) {
        rounded.to_string()
    } else {
        format!("{rounded:e}")
    }
}

#[test]
fn a_row_that_is_off_says_so() {
    let law = Source::Law("a sample");
    let mut row = Row::absolute("sample", law, 0.1, "mm");
    assert!(!row.holds(), "a row without numbers");
    row.near("a", 1.05, 1.0);
    assert_eq!(row.line(), "| sample | law: a sample | 1 | 0.1 mm | 0.050 mm | holds |");
    row.near("b", 1.0, 1.25);
    assert_eq!(row.line(), "| sample | law: a sample | 2 | 0.1 mm | 0.25 mm | FAILS |");
    assert_eq!(row.place, "b", "where it is worst");
    let mut nan = Row::relative("sample", law, 0.01);
    nan.near("a", f64::NAN, 1.0);
    nan.near("b", 1.0, 1.0);
    assert_eq!(nan.line(), "| sample | law: a sample | 2 | 1 % | NaN % | FAILS |");
    let mut range = Row::range("sample", law, 0.5..0.7, "mm");
    range.found("a", 0.55);
    assert!(range.holds(), "inside");
    range.found("b", 0.7);
    assert_eq!(
        range.line(),
        "| sample | law: a sample | 2 | 0.5 to 0.7 mm | found 0.550 to 0.700 mm | FAILS |"
    );
    let mut stated = Row::stated("sample", law, "sign");
    stated.is("a", true);
    assert_eq!(stated.line(), "| sample | law: a sample | 1 | sign | none | holds |");
    stated.is("b", false);
    assert_eq!(stated.line(), "| sample | law: a sample | 2 | sign | 1 wrong | FAILS |");
}

#[test]
fn small_deviations_are_told_as_bounds() {
    let mut row = Row::relative("sample", Source::Practice(""), 0.001);
    row.near("a", 1.0 + 1e-9, 1.0);
    assert_eq!(
        row.line(),
        "| sample | common practice, no source | 1 | 0.1 % | < 0.0001 % | holds |"
    );
    let mut equal = Row::absolute("sample", Source::Memory("a book"), 1e-12, "N");
    equal.near("a", 1.0, 1.0);
    assert_eq!(
        equal.line(),
        "| sample | from memory: a book | 1 | 1e-12 N | rounding | holds |"
    );
    let told = [0.000_012_34, 0.001_25, 0.1, 9.96, 99.6, 5_546.6, 12_345_678.0].map(|v| figures(v, 2));
    assert_eq!(
        told,
        ["1.2e-5", "0.0013", "0.10", "10", "100", "5500", "1.2e7"],
        "two digits"
    );
}
