//! A TOML document whose tables are asked for their keys, one by one.

mod list;

use std::ops::{Range, RangeInclusive};

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::problem::{ProblemKind, Problems, ValueKind, Wanted};
use super::range::NumberRange;
use super::suggest::closest;
use super::unit::MixUp;

/// A parsed text with the place of everything in it.
#[derive(Debug)]
pub struct Document<'t> {
    text: &'t str,
    root: Spanned<DeTable<'t>>,
}

impl<'t> Document<'t> {
    /// Reads `text` as TOML 1.0.
    ///
    /// # Errors
    /// Every place where the text is not TOML. Nothing is read from a text with such a place, since what stands after
    /// it may mean something else than was meant.
    pub fn parse<F>(text: &'t str) -> Result<Self, Problems<F>> {
        let (root, errors) = DeTable::parse_recoverable(text);
        if errors.is_empty() {
            return Ok(Self { text, root });
        }
        let mut problems = Problems::new();
        let mut last_line = None;
        for error in errors {
            let span = on_characters(text, error.span().unwrap_or(0..0));
            // One slip makes the parser stumble several times on its line; the first says what is wrong.
            let line = text.get(..span.start).map_or(0, |before| before.matches('\n').count());
            if last_line.replace(line) == Some(line) {
                continue;
            }
            let said = error.message().lines().next().unwrap_or_default();
            let said = said.trim_end_matches('.').to_owned();
            problems.note(span, ProblemKind::NotToml { said });
        }
        Err(problems.verdict::<()>(None).err().unwrap_or_default())
    }

    /// The place of a key or table given by its path, for example `pair.offset_mm`; the nearest table above it where
    /// the file leaves it out. For problems that show only after a file was read.
    pub fn place_of(&self, path: &str) -> Range<usize> {
        let mut table = self.root.get_ref();
        let mut place = 0..0;
        for key in path.split('.') {
            let Some(found) = table.get(key) else { break };
            place = on_characters(self.text, found.span());
            let DeValue::Table(inner) = found.get_ref() else { break };
            table = inner;
        }
        place
    }

    /// The table that holds everything.
    pub fn root(&self) -> Table<'_> {
        Table {
            text: self.text,
            name: String::new(),
            header: 0..0,
            entries: self.root.get_ref(),
            asked: Vec::new(),
        }
    }
}

/// `span` clipped to `text` and widened to whole characters, so that it can always be drawn.
fn on_characters(text: &str, span: Range<usize>) -> Range<usize> {
    let mut start = span.start.min(text.len());
    let mut end = span.end.clamp(start, text.len());
    while !text.is_char_boundary(start) {
        start -= 1;
    }
    while !text.is_char_boundary(end) {
        end += 1;
    }
    start..end
}

/// One table of a document. Each question names a key; what is wrong with it is noted and answered with `None`.
#[derive(Debug)]
pub struct Table<'d> {
    text: &'d str,
    name: String,
    header: Range<usize>,
    entries: &'d DeTable<'d>,
    asked: Vec<&'static str>,
}

impl<'d> Table<'d> {
    /// The table's place in the text: its header, or the start of the text for the outermost table.
    pub fn place(&self) -> Range<usize> {
        self.header.clone()
    }

    /// The place of the value of `key`, or that of the table where it is left out.
    pub fn place_of(&self, key: &str) -> Range<usize> {
        self.entries
            .get(key)
            .map_or_else(|| self.place(), |value| on_characters(self.text, value.span()))
    }

    /// Whether the file gives `key`.
    pub fn has(&self, key: &str) -> bool {
        self.entries.contains_key(key)
    }

    fn path(&self, key: &str) -> String {
        if self.name.is_empty() {
            key.to_owned()
        } else {
            format!("{}.{key}", self.name)
        }
    }

    fn value(&mut self, key: &'static str) -> Option<&'d Spanned<DeValue<'d>>> {
        if !self.asked.contains(&key) {
            self.asked.push(key);
        }
        self.entries.get(key)
    }

    fn missing<F>(&self, key: &str, wanted: Wanted, problems: &mut Problems<F>) {
        problems.note(
            self.place(),
            ProblemKind::Missing {
                key: key.to_owned(),
                table: self.name.clone(),
                wanted,
            },
        );
    }

    fn wrong_kind<F>(&self, key: &str, value: &Spanned<DeValue<'_>>, wanted: Wanted, problems: &mut Problems<F>) {
        problems.note(
            on_characters(self.text, value.span()),
            ProblemKind::WrongKind {
                path: self.path(key),
                found: kind(value.get_ref()),
                wanted,
            },
        );
    }

    /// Notes that `key`, which the file gives, does not belong here, and that nothing else need be said of it.
    pub fn refuse<F>(&mut self, key: &'static str, why: F, problems: &mut Problems<F>) {
        self.value(key);
        problems.note_own(self.place_of(key), why);
    }

    /// A number that must be there, inside `range`. Whole numbers count as numbers.
    pub fn number<F>(&mut self, key: &'static str, range: NumberRange, problems: &mut Problems<F>) -> Option<f64> {
        if !self.has(key) {
            self.value(key);
            self.missing(key, Wanted::Number(range), problems);
            return None;
        }
        self.optional_number(key, range, problems)
    }

    /// A number that may be left out, inside `range`.
    pub fn optional_number<F>(
        &mut self,
        key: &'static str,
        range: NumberRange,
        problems: &mut Problems<F>,
    ) -> Option<f64> {
        let found = self.value(key)?;
        let number = match found.get_ref() {
            DeValue::Float(float) => float.as_str().parse::<f64>().ok(),
            // Digits of another base are read as what they say; anything beyond 64 bits is out of every range.
            DeValue::Integer(integer) => {
                Some(i64::from_str_radix(integer.as_str(), integer.radix()).map_or(f64::INFINITY, |n| n as f64))
            }
            _ => None,
        };
        let Some(number) = number else {
            self.wrong_kind(key, found, Wanted::Number(range), problems);
            return None;
        };
        if range.holds(number) {
            return Some(number);
        }
        problems.note(
            on_characters(self.text, found.span()),
            ProblemKind::OutOfRange {
                path: self.path(key),
                value: number,
                range,
                mix_up: MixUp::of(key, number, range),
            },
        );
        None
    }

    /// A whole number that must be there, inside `range`.
    pub fn integer<F>(
        &mut self,
        key: &'static str,
        range: RangeInclusive<u32>,
        problems: &mut Problems<F>,
    ) -> Option<u32> {
        let Some(found) = self.value(key) else {
            self.missing(key, Wanted::Whole(range), problems);
            return None;
        };
        let DeValue::Integer(integer) = found.get_ref() else {
            self.wrong_kind(key, found, Wanted::Whole(range), problems);
            return None;
        };
        let number = i64::from_str_radix(integer.as_str(), integer.radix()).ok();
        if let Some(number) = number.and_then(|n| u32::try_from(n).ok())
            && range.contains(&number)
        {
            return Some(number);
        }
        problems.note(
            on_characters(self.text, found.span()),
            ProblemKind::WholeOutOfRange {
                path: self.path(key),
                value: integer.as_str().to_owned(),
                range,
            },
        );
        None
    }

    /// A text that must be there, of `length` characters, without control characters.
    pub fn text<F>(
        &mut self,
        key: &'static str,
        length: RangeInclusive<usize>,
        problems: &mut Problems<F>,
    ) -> Option<String> {
        let Some(found) = self.value(key) else {
            self.missing(key, Wanted::Text(length), problems);
            return None;
        };
        let DeValue::String(text) = found.get_ref() else {
            self.wrong_kind(key, found, Wanted::Text(length), problems);
            return None;
        };
        let span = on_characters(self.text, found.span());
        let count = text.chars().count();
        if !length.contains(&count) {
            problems.note(
                span,
                ProblemKind::Length {
                    path: self.path(key),
                    count,
                    length,
                },
            );
            return None;
        }
        if text.chars().any(char::is_control) {
            problems.note(span, ProblemKind::ControlCharacter { path: self.path(key) });
            return None;
        }
        Some(text.clone().into_owned())
    }

    /// A text that may be left out, of `length` characters, without control characters.
    pub fn optional_text<F>(
        &mut self,
        key: &'static str,
        length: RangeInclusive<usize>,
        problems: &mut Problems<F>,
    ) -> Option<String> {
        self.value(key)?;
        self.text(key, length, problems)
    }

    /// One of the words in `choices`, which must be there.
    pub fn choice<T: Copy, F>(
        &mut self,
        key: &'static str,
        choices: &[(&str, T)],
        problems: &mut Problems<F>,
    ) -> Option<T> {
        let words: Vec<&str> = choices.iter().map(|(word, _)| *word).collect();
        let owned = || -> Vec<String> { words.iter().map(|word| (*word).to_owned()).collect() };
        let Some(found) = self.value(key) else {
            self.missing(key, Wanted::Words(owned()), problems);
            return None;
        };
        let DeValue::String(text) = found.get_ref() else {
            self.wrong_kind(key, found, Wanted::Words(owned()), problems);
            return None;
        };
        let chosen = choices
            .iter()
            .find(|(word, _)| *word == text.as_ref())
            .map(|(_, value)| *value);
        if chosen.is_none() {
            problems.note(
                on_characters(self.text, found.span()),
                ProblemKind::UnknownWord {
                    path: self.path(key),
                    words: owned(),
                    near: closest(text, &words).map(str::to_owned),
                },
            );
        }
        chosen
    }

    /// The key `format`, which must say `kind`/`version`, for example "lashwright-gears/1". Answers whether the rest of the
    /// file can be read.
    pub fn format<F>(&mut self, kind: &str, version: u32, problems: &mut Problems<F>) -> bool {
        self.version(kind, version..=version, problems).is_some()
    }

    /// The key `format` of a file of which several versions are read: which of them it is. People are told of the newest.
    pub fn version<F>(&mut self, kind: &str, versions: RangeInclusive<u32>, problems: &mut Problems<F>) -> Option<u32> {
        let version = *versions.end();
        let wanted = format!("{kind}/{version}");
        let Some(found) = self.value("format") else {
            self.missing("format", Wanted::Words(vec![wanted]), problems);
            return None;
        };
        let DeValue::String(text) = found.get_ref() else {
            self.wrong_kind("format", found, Wanted::Words(vec![wanted]), problems);
            return None;
        };
        if let Some(known) = versions.into_iter().find(|v| *text == format!("{kind}/{v}")) {
            return Some(known);
        }
        let span = on_characters(self.text, found.span());
        let (its_kind, its_version) = text.split_once('/').unwrap_or((text, ""));
        let newer = its_version
            .parse::<u32>()
            .ok()
            .filter(|v| its_kind == kind && *v > version);
        let kind = newer.map_or(ProblemKind::OtherFormat { wanted }, |newer| ProblemKind::NewerFormat {
            version: newer,
            newest: version,
        });
        problems.note(span, kind);
        None
    }

    /// A table that must be there.
    pub fn table<F>(&mut self, key: &'static str, problems: &mut Problems<F>) -> Option<Self> {
        if self.has(key) {
            return self.optional_table(key, problems);
        }
        self.value(key);
        problems.note(self.place(), ProblemKind::MissingTable { path: self.path(key) });
        None
    }

    /// A table that may be left out.
    pub fn optional_table<F>(&mut self, key: &'static str, problems: &mut Problems<F>) -> Option<Self> {
        let found = self.value(key)?;
        let path = self.path(key);
        let DeValue::Table(entries) = found.get_ref() else {
            problems.note(
                on_characters(self.text, found.span()),
                ProblemKind::NotATable {
                    path,
                    found: kind(found.get_ref()),
                    item: false,
                },
            );
            return None;
        };
        Some(Self {
            text: self.text,
            name: path,
            header: on_characters(self.text, found.span()),
            entries,
            asked: Vec::new(),
        })
    }

    /// Notes every key that nobody asked for.
    pub fn finish<F>(self, problems: &mut Problems<F>) {
        for (key, value) in self.entries {
            let name = key.get_ref().as_ref();
            if self.asked.contains(&name) {
                continue;
            }
            // A table's own place says more than the key inside its header.
            let span = if matches!(value.get_ref(), DeValue::Table(_)) {
                value.span()
            } else {
                key.span()
            };
            problems.note(
                on_characters(self.text, span),
                ProblemKind::UnknownKey {
                    path: self.path(&shortened(name)),
                    near: closest(name, &self.asked),
                    known: self.asked.clone(),
                },
            );
        }
    }
}

/// A key as shown in a message: the first 40 characters.
fn shortened(name: &str) -> String {
    let mut short: String = name
        .chars()
        .take(40)
        .map(|c| if c.is_control() { '\u{fffd}' } else { c })
        .collect();
    if name.chars().count() > 40 {
        short.push('…');
    }
    short
}

/// Of which kind a value is.
fn kind(value: &DeValue<'_>) -> ValueKind {
    match value {
        DeValue::String(_) => ValueKind::Text,
        DeValue::Integer(_) => ValueKind::Whole,
        DeValue::Float(_) => ValueKind::Decimal,
        DeValue::Boolean(_) => ValueKind::Flag,
        DeValue::Datetime(_) => ValueKind::Date,
        DeValue::Array(_) => ValueKind::List,
        DeValue::Table(_) => ValueKind::Table,
    }
}
