//! Problems of files: what is wrong, a label for the place, and what to do.

pub(super) mod gear_set;
mod scenario;
pub mod support;

use std::convert::Infallible;
use std::ops::RangeInclusive;

use super::say;
use crate::text::{FileUnit, ItemKind, MixUp, NumberRange, Problem, ProblemKind, ValueKind, Wanted};

/// What people read of a problem.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Told {
    /// What is wrong: one clause, without a capital or a full stop.
    pub what: String,
    /// Label for the marked place, where there is more to say of it.
    pub label: Option<String>,
    /// What to do: whole sentences; may be empty.
    pub cure: String,
}

impl Told {
    /// What is wrong alone, where that says what to do or nothing can be done.
    pub const fn bare(what: String) -> Self {
        Self::new(what, String::new())
    }

    /// Without a label.
    pub const fn new(what: String, cure: String) -> Self {
        Self {
            what,
            label: None,
            cure,
        }
    }

    /// With a label for the marked place.
    pub const fn labeled(what: String, label: String, cure: String) -> Self {
        Self {
            what,
            label: Some(label),
            cure,
        }
    }

    /// In one line, with a full stop: what is wrong, and what to do.
    pub fn line(&self) -> String {
        if self.cure.is_empty() {
            say!("problem-line-without-cure", what = self.what.as_str())
        } else {
            say!("problem-line", what = self.what.as_str(), cure = self.cure.as_str())
        }
    }
}

/// What can be wrong in files of one format alone.
pub trait Own {
    /// What people call such a file, with its article.
    fn file() -> String;

    /// Its words.
    fn told(&self) -> Told;
}

impl Own for Infallible {
    fn file() -> String {
        say!("problem-file-text")
    }

    fn told(&self) -> Told {
        match *self {}
    }
}

/// The words of a problem.
#[expect(clippy::too_many_lines, reason = "an arm a kind of problem")]
pub fn told<F: Own>(problem: &Problem<F>) -> Told {
    match &problem.kind {
        ProblemKind::TooLarge { bytes, most } => Told::new(
            say!("problem-too-large", bytes = *bytes, most = *most),
            say!("problem-too-large-cure"),
        ),
        ProblemKind::Nul => Told::labeled(
            say!("problem-nul"),
            say!("problem-here"),
            say!("problem-plain-text-cure"),
        ),
        ProblemKind::NotUtf8 => Told::labeled(
            say!("problem-not-utf8"),
            say!("problem-not-utf8-label"),
            say!("problem-plain-text-cure"),
        ),
        ProblemKind::NotToml { said } => Told::labeled(
            say!("problem-not-toml", said = said.as_str()),
            say!("problem-here"),
            say!("problem-not-toml-cure"),
        ),
        ProblemKind::Unusable => Told::new(say!("problem-unusable"), say!("problem-unusable-cure")),
        ProblemKind::Missing { key, table, wanted } => Told::new(
            say!("problem-missing", path = path(table, key)),
            sentences([add_line(table, key), give(wanted)]),
        ),
        ProblemKind::MissingTable { path } => Told::new(
            say!("problem-missing-table", path = path.as_str()),
            say!("problem-missing-table-cure", path = path.as_str()),
        ),
        ProblemKind::WrongKind { path, found, wanted } => wrong_kind(path, *found, wanted),
        ProblemKind::NotATable { path, found, item } => Told::labeled(
            not_a_table(path, *found, *item),
            say!("problem-not-a-table-label"),
            if *item {
                say!("problem-item-not-a-table-cure", path = path.as_str())
            } else {
                say!("problem-not-a-table-cure", path = path.as_str())
            },
        ),
        ProblemKind::OutOfRange {
            path,
            value,
            range,
            mix_up,
        } => Told::labeled(
            say!(
                "problem-out-of-range",
                path = path.as_str(),
                value = value.to_string(),
                range = range_words(*range)
            ),
            say!("problem-range-label", range = range_words(*range)),
            sentences([
                say!("problem-out-of-range-cure", range = range_words(*range)),
                mix_up.map(mix_up_words).unwrap_or_default(),
            ]),
        ),
        ProblemKind::WholeOutOfRange { path, value, range } => Told::labeled(
            say!(
                "problem-out-of-range",
                path = path.as_str(),
                value = value.as_str(),
                range = whole_range(range)
            ),
            say!("problem-range-label", range = whole_range(range)),
            say!("problem-whole-out-of-range-cure", range = whole_range(range)),
        ),
        ProblemKind::Length { path, count, length } => Told::new(
            say!(
                "problem-length",
                path = path.as_str(),
                count = *count,
                least = *length.start(),
                most = *length.end()
            ),
            say!("problem-length-cure", least = *length.start(), most = *length.end()),
        ),
        ProblemKind::ControlCharacter { path } => Told::new(
            say!("problem-control-character", path = path.as_str()),
            say!("problem-control-character-cure"),
        ),
        ProblemKind::UnknownWord { path, words, near } => {
            let meant = near.as_deref().map(|near| say!("problem-meant-word", word = near));
            Told::labeled(
                say!("problem-unknown-word", path = path.as_str()),
                say!("problem-unknown-word-label", words = quoted(words)),
                sentences([
                    say!("problem-give-word", count = words.len(), words = quoted(words)),
                    meant.unwrap_or_default(),
                ]),
            )
        }
        ProblemKind::ListLength {
            path,
            of,
            count,
            allowed,
        } => Told::new(
            say!(
                "problem-list-length",
                path = path.as_str(),
                count = *count,
                allowed = items(*of, allowed)
            ),
            say!("problem-list-length-cure", allowed = items(*of, allowed)),
        ),
        ProblemKind::ItemNoText { path, found, length } => {
            let (least, most) = (*length.start(), *length.end());
            Told::labeled(
                if *found == ValueKind::Text {
                    say!("problem-item-text-does-not-fit", path = path.as_str())
                } else {
                    say!("problem-item-no-text", path = path.as_str(), found = value_kind(*found))
                },
                say!("problem-item-no-text-label", least = least, most = most),
                say!("problem-item-no-text-cure", least = least, most = most),
            )
        }
        ProblemKind::ItemNoNumber { path, range } => Told::labeled(
            say!(
                "problem-item-no-number",
                path = path.as_str(),
                range = range_words(*range)
            ),
            say!("problem-range-label", range = range_words(*range)),
            say!("problem-give-number", range = range_words(*range)),
        ),
        ProblemKind::UnknownKey { path, near, known } => Told::labeled(
            say!("problem-unknown-key", path = path.as_str()),
            say!("problem-unknown-key-label"),
            near.map_or_else(
                || say!("problem-unknown-key-cure", known = known.join(", ")),
                |near| say!("problem-meant-key", key = near),
            ),
        ),
        ProblemKind::NewerFormat { version, newest } => Told::labeled(
            say!(
                "problem-newer-format",
                file = F::file(),
                version = *version,
                newest = *newest
            ),
            say!("problem-newer-format-label"),
            say!("problem-newer-format-cure"),
        ),
        ProblemKind::OtherFormat { wanted } => Told::labeled(
            say!("problem-other-format", file = F::file()),
            say!("problem-other-format-label", wanted = wanted.as_str()),
            say!("problem-other-format-cure", wanted = wanted.as_str()),
        ),
        ProblemKind::Own(own) => own.told(),
    }
}

/// How many problems of a file are shown and left out, at the end of the list.
pub fn count(file: &str, shown: usize, left_out: usize) -> String {
    if left_out == 0 {
        say!("problem-count", file = file, count = shown)
    } else {
        say!("problem-count-left-out", file = file, count = shown, more = left_out)
    }
}

/// One sentence after the other; empty ones are none.
fn sentences<const N: usize>(all: [String; N]) -> String {
    let all: Vec<String> = all.into_iter().filter(|sentence| !sentence.is_empty()).collect();
    all.join(" ")
}

fn path(table: &str, key: &str) -> String {
    if table.is_empty() {
        key.to_owned()
    } else {
        format!("{table}.{key}")
    }
}

fn add_line(table: &str, key: &str) -> String {
    if table.is_empty() {
        say!("problem-add-line-at-top", key = key)
    } else {
        say!("problem-add-line", key = key, table = table)
    }
}

/// What to give for a key.
fn give(wanted: &Wanted) -> String {
    match wanted {
        Wanted::Number(range) => say!("problem-give-number", range = range_words(*range)),
        Wanted::Whole(range) => say!("problem-give-whole", range = whole_range(range)),
        Wanted::Text(length) => say!("problem-give-text", least = *length.start(), most = *length.end()),
        Wanted::Flag => say!("problem-give-flag"),
        Wanted::Words(words) => say!("problem-give-word", count = words.len(), words = quoted(words)),
        Wanted::List(of, count) => say!("problem-give-list", allowed = items(*of, count)),
    }
}

fn wrong_kind(path: &str, found: ValueKind, wanted: &Wanted) -> Told {
    let noun = match wanted {
        Wanted::Number(_) => say!("problem-wanted-number"),
        Wanted::Whole(_) => say!("problem-wanted-whole"),
        Wanted::Text(_) => say!("problem-wanted-text"),
        Wanted::Flag => say!("problem-wanted-flag"),
        Wanted::Words(_) => say!("problem-wanted-word"),
        Wanted::List(..) => say!("problem-wanted-list"),
    };
    Told::labeled(
        say!(
            "problem-wrong-kind",
            path = path,
            found = value_kind(found),
            wanted = noun.as_str()
        ),
        say!("problem-wrong-kind-label", wanted = noun),
        give(wanted),
    )
}

fn not_a_table(path: &str, found: ValueKind, item: bool) -> String {
    if item {
        say!("problem-item-not-a-table", path = path, found = value_kind(found))
    } else {
        say!("problem-not-a-table", path = path, found = value_kind(found))
    }
}

/// What people call a kind of value.
fn value_kind(of: ValueKind) -> String {
    match of {
        ValueKind::Text => say!("problem-value-text"),
        ValueKind::Whole => say!("problem-value-whole"),
        ValueKind::Decimal => say!("problem-value-decimal"),
        ValueKind::Flag => say!("problem-value-flag"),
        ValueKind::Date => say!("problem-value-date"),
        ValueKind::List => say!("problem-value-list"),
        ValueKind::Table => say!("problem-value-table"),
    }
}

fn range_words(range: NumberRange) -> String {
    let (low, high) = (range.low().to_string(), range.high().to_string());
    if range.excludes_low() {
        say!("problem-range-above", low = low, high = high)
    } else {
        say!("problem-range", low = low, high = high)
    }
}

fn whole_range(range: &RangeInclusive<u32>) -> String {
    say!(
        "problem-range",
        low = range.start().to_string(),
        high = range.end().to_string()
    )
}

/// How many of what a list takes.
fn items(of: ItemKind, count: &RangeInclusive<usize>) -> String {
    let (least, most) = (*count.start(), *count.end());
    let amount = if least == most {
        most.to_string()
    } else {
        say!("problem-range", low = least.to_string(), high = most.to_string())
    };
    match of {
        ItemKind::Texts => say!("problem-items-texts", amount = amount, most = most),
        ItemKind::Numbers => say!("problem-items-numbers", amount = amount, most = most),
        ItemKind::Tables => say!("problem-items-tables", amount = amount, most = most),
    }
}

fn quoted(words: &[String]) -> String {
    let quoted: Vec<String> = words.iter().map(|word| format!("\"{word}\"")).collect();
    quoted.join(", ")
}

fn mix_up_words(of: MixUp) -> String {
    // Seven digits are enough for any dimension and hide the noise of the product.
    let meant = format!("{:.4}", of.meant);
    let meant = meant.trim_end_matches('0').trim_end_matches('.');
    say!(
        "problem-mix-up",
        given = of.given.to_string(),
        other = unit(of.given_in),
        meant = meant,
        unit = unit(of.unit)
    )
}

fn unit(of: FileUnit) -> String {
    match of {
        FileUnit::Millimeters => say!("problem-unit-millimeters"),
        FileUnit::Micrometers => say!("problem-unit-micrometers"),
        FileUnit::Inches => say!("problem-unit-inches"),
        FileUnit::Thousandths => say!("problem-unit-thousandths"),
        FileUnit::SquareMillimeters => say!("problem-unit-square-millimeters"),
        FileUnit::SquareInches => say!("problem-unit-square-inches"),
        FileUnit::Degrees => say!("problem-unit-degrees"),
        FileUnit::Radians => say!("problem-unit-radians"),
        FileUnit::Newtons => say!("problem-unit-newtons"),
        FileUnit::Kilonewtons => say!("problem-unit-kilonewtons"),
        FileUnit::Pounds => say!("problem-unit-pounds"),
        FileUnit::NewtonMeters => say!("problem-unit-newton-meters"),
        FileUnit::FootPounds => say!("problem-unit-foot-pounds"),
        FileUnit::InchPounds => say!("problem-unit-inch-pounds"),
        FileUnit::NewtonsPerMillimeter => say!("problem-unit-newtons-per-millimeter"),
        FileUnit::NewtonsPerMicrometer => say!("problem-unit-newtons-per-micrometer"),
        FileUnit::PoundsPerInch => say!("problem-unit-pounds-per-inch"),
        FileUnit::KilopoundsPerInch => say!("problem-unit-kilopounds-per-inch"),
    }
}
