//! A TOML document whose tables are asked for their keys, one by one.

mod list;

use std::ops::{Range, RangeInclusive};

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::suggest::closest;
use super::{Problem, Problems};

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
    pub fn parse(text: &'t str) -> Result<Self, Problems> {
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
            let first_line = error
                .message()
                .lines()
                .next()
                .unwrap_or_default()
                .trim_end_matches('.')
                .to_owned();
            problems.note(
                span,
                format!("this is not TOML: {first_line}"),
                "here",
                "Write one `key = value` a line, texts in double quotes, tables as `[name]`.",
            );
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

/// Which numbers a key takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NumberRange {
    low: f64,
    high: f64,
    low_excluded: bool,
}

impl NumberRange {
    /// `low` ≤ x ≤ `high`.
    pub const fn closed(low: f64, high: f64) -> Self {
        Self {
            low,
            high,
            low_excluded: false,
        }
    }

    /// `low` < x ≤ `high`.
    pub const fn above(low: f64, high: f64) -> Self {
        Self {
            low,
            high,
            low_excluded: true,
        }
    }

    /// Whether `x` is a number inside.
    pub fn holds(self, x: f64) -> bool {
        x <= self.high && if self.low_excluded { x > self.low } else { x >= self.low }
    }

    fn words(self) -> String {
        if self.low_excluded {
            format!("above {} and at most {}", self.low, self.high)
        } else {
            format!("{} to {}", self.low, self.high)
        }
    }
}

/// Other units that people give by mistake: ending of the key, factor from the mistaken unit to the right one, the
/// mistaken unit, the right one. Endings are tried in this order; the longest must come first.
const MIX_UPS: [(&str, f64, &str, &str); 13] = [
    ("_n_per_um", 0.001, "newtons per millimetre", "newtons per micrometre"),
    (
        "_n_per_um",
        0.175_126_835,
        "thousands of pounds per inch",
        "newtons per micrometre",
    ),
    ("_n_per_mm", 0.175_126_835, "pounds per inch", "newtons per millimetre"),
    ("_mm2", 645.16, "square inches", "square millimetres"),
    ("_mm", 25.4, "inches", "millimetres"),
    ("_mm", 0.001, "micrometres", "millimetres"),
    ("_um", 25.4, "thousandths of an inch", "micrometres"),
    ("_um", 1000.0, "millimetres", "micrometres"),
    ("_deg", 180.0 / std::f64::consts::PI, "radians", "degrees"),
    ("_n", 4.448_221_615_260_5, "pounds", "newtons"),
    ("_n", 1000.0, "kilonewtons", "newtons"),
    ("_nm", 1.355_817_948_331_4, "foot-pounds", "newton metres"),
    ("_nm", 0.112_984_829_027_616_7, "inch-pounds", "newton metres"),
];

/// What the trainee or teacher may have meant by a value outside its range; empty where nothing fits.
fn mix_up(key: &str, value: f64, range: NumberRange) -> String {
    MIX_UPS
        .iter()
        .find(|(ending, factor, ..)| key.ends_with(ending) && range.holds(value * factor))
        .map(|(_, factor, wrong, right)| {
            // Seven digits are enough for any dimension and hide the noise of the product.
            let shown = format!("{:.4}", value * factor);
            let shown = shown.trim_end_matches('0').trim_end_matches('.');
            format!(" Did you give {wrong}? {value} {wrong} are {shown} {right}.")
        })
        .unwrap_or_default()
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

    fn missing(&self, key: &str, wanted: &str, problems: &mut Problems) {
        let place = self.place();
        let where_to = if self.name.is_empty() {
            "at the top of the file".to_owned()
        } else {
            format!("below `[{}]`", self.name)
        };
        problems.note(
            place,
            format!("`{}` is missing", self.path(key)),
            "",
            format!("Add a line `{key} = …` {where_to}: {wanted}."),
        );
    }

    fn wrong_kind(
        &self,
        key: &str,
        value: &Spanned<DeValue<'_>>,
        wanted: &str,
        example: &str,
        problems: &mut Problems,
    ) {
        problems.note(
            on_characters(self.text, value.span()),
            format!(
                "`{}` is {}, and {wanted} is wanted",
                self.path(key),
                kind(value.get_ref())
            ),
            format!("{wanted} is wanted here"),
            format!("Write `{key} = …` with {example}."),
        );
    }

    /// Notes that `key`, which the file gives, does not belong here, and that nothing else need be said of it.
    pub fn refuse(
        &mut self,
        key: &'static str,
        what: impl Into<String>,
        remedy: impl Into<String>,
        problems: &mut Problems,
    ) {
        self.value(key);
        problems.note(self.place_of(key), what, "", remedy);
    }

    /// A number that must be there, inside `range`. Whole numbers count as numbers.
    pub fn number(&mut self, key: &'static str, range: NumberRange, problems: &mut Problems) -> Option<f64> {
        if !self.has(key) {
            self.value(key);
            self.missing(key, &format!("a number {}", range.words()), problems);
            return None;
        }
        self.optional_number(key, range, problems)
    }

    /// A number that may be left out, inside `range`.
    pub fn optional_number(&mut self, key: &'static str, range: NumberRange, problems: &mut Problems) -> Option<f64> {
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
            self.wrong_kind(
                key,
                found,
                "a number",
                &format!("a number {}, without quotes", range.words()),
                problems,
            );
            return None;
        };
        if range.holds(number) {
            return Some(number);
        }
        problems.note(
            on_characters(self.text, found.span()),
            format!("`{}` is {number}, outside {}", self.path(key), range.words()),
            format!("{} is allowed", range.words()),
            format!("Give a number {}.{}", range.words(), mix_up(key, number, range)),
        );
        None
    }

    /// A whole number that must be there, inside `range`.
    pub fn integer(&mut self, key: &'static str, range: RangeInclusive<u32>, problems: &mut Problems) -> Option<u32> {
        let Some(found) = self.value(key) else {
            self.missing(
                key,
                &format!("a whole number {} to {}", range.start(), range.end()),
                problems,
            );
            return None;
        };
        let DeValue::Integer(integer) = found.get_ref() else {
            let words = format!(
                "a whole number {} to {}, without quotes or decimal point",
                range.start(),
                range.end()
            );
            self.wrong_kind(key, found, "a whole number", &words, problems);
            return None;
        };
        let number = i64::from_str_radix(integer.as_str(), integer.radix()).ok();
        if let Some(number) = number.and_then(|n| u32::try_from(n).ok())
            && range.contains(&number)
        {
            return Some(number);
        }
        let words = format!("{} to {}", range.start(), range.end());
        problems.note(
            on_characters(self.text, found.span()),
            format!("`{}` is {}, outside {words}", self.path(key), integer.as_str()),
            format!("{words} is allowed"),
            format!("Give a whole number {words}."),
        );
        None
    }

    /// A text that must be there, of `length` characters, without control characters.
    pub fn text(
        &mut self,
        key: &'static str,
        length: RangeInclusive<usize>,
        problems: &mut Problems,
    ) -> Option<String> {
        let Some(found) = self.value(key) else {
            self.missing(
                key,
                &format!("a text in quotes, {} to {} characters", length.start(), length.end()),
                problems,
            );
            return None;
        };
        let DeValue::String(text) = found.get_ref() else {
            self.wrong_kind(key, found, "a text in quotes", "a text between double quotes", problems);
            return None;
        };
        let span = on_characters(self.text, found.span());
        let count = text.chars().count();
        if !length.contains(&count) {
            let words = format!("{} to {} characters", length.start(), length.end());
            problems.note(
                span,
                format!("`{}` has {count} characters, and {words} are allowed", self.path(key)),
                "",
                format!("Give a text of {words}."),
            );
            return None;
        }
        if text.chars().any(char::is_control) {
            problems.note(
                span,
                format!("`{}` holds a line end or another control character", self.path(key)),
                "",
                "Write it on one line.",
            );
            return None;
        }
        Some(text.clone().into_owned())
    }

    /// One of the words in `choices`, which must be there.
    pub fn choice<T: Copy>(&mut self, key: &'static str, choices: &[(&str, T)], problems: &mut Problems) -> Option<T> {
        let words: Vec<&str> = choices.iter().map(|(word, _)| *word).collect();
        let quoted = words
            .iter()
            .map(|w| format!("\"{w}\""))
            .collect::<Vec<_>>()
            .join(" or ");
        let Some(found) = self.value(key) else {
            self.missing(key, &quoted, problems);
            return None;
        };
        let DeValue::String(text) = found.get_ref() else {
            self.wrong_kind(key, found, "a word in quotes", &quoted, problems);
            return None;
        };
        let chosen = choices
            .iter()
            .find(|(word, _)| *word == text.as_ref())
            .map(|(_, value)| *value);
        if chosen.is_none() {
            let near = closest(text, &words)
                .map(|w| format!(" Did you mean \"{w}\"?"))
                .unwrap_or_default();
            problems.note(
                on_characters(self.text, found.span()),
                format!("`{}` does not know this word", self.path(key)),
                format!("{quoted} is allowed"),
                format!("Write `{key} = {quoted}`.{near}"),
            );
        }
        chosen
    }

    /// The key `format`, which must say `kind`/`version`, for example "lashwright-gears/1". `people` is what people
    /// call such a file. Answers whether the rest of the file can be read.
    pub fn format(&mut self, kind: &str, version: u32, people: &str, problems: &mut Problems) -> bool {
        self.version(kind, version..=version, people, problems).is_some()
    }

    /// The key `format` of a file of which several versions are read: which of them it is. People are told of the newest.
    pub fn version(
        &mut self,
        kind: &str,
        versions: RangeInclusive<u32>,
        people: &str,
        problems: &mut Problems,
    ) -> Option<u32> {
        let version = *versions.end();
        let wanted = format!("{kind}/{version}");
        let Some(found) = self.value("format") else {
            self.missing("format", &format!("\"{wanted}\""), problems);
            return None;
        };
        let DeValue::String(text) = found.get_ref() else {
            self.wrong_kind("format", found, "a text in quotes", &format!("\"{wanted}\""), problems);
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
        if let Some(newer) = newer {
            problems.note(
                span,
                format!("this {people} file is of version {newer}, and this program reads up to version {version}"),
                "a newer version",
                "Use a newer program, or ask for the file in the older version.",
            );
        } else {
            problems.note(
                span,
                format!("this is not a {people} file that this program knows"),
                format!("\"{wanted}\" is wanted"),
                format!("Use a file that says `format = \"{wanted}\"`."),
            );
        }
        None
    }

    /// A table that must be there.
    pub fn table(&mut self, key: &'static str, problems: &mut Problems) -> Option<Self> {
        if self.has(key) {
            return self.optional_table(key, problems);
        }
        self.value(key);
        let path = self.path(key);
        problems.note(
            self.place(),
            format!("the table `[{path}]` is missing"),
            "",
            format!("Add a line `[{path}]` with its keys below it."),
        );
        None
    }

    /// A table that may be left out.
    pub fn optional_table(&mut self, key: &'static str, problems: &mut Problems) -> Option<Self> {
        let found = self.value(key)?;
        let path = self.path(key);
        let DeValue::Table(entries) = found.get_ref() else {
            problems.note(
                on_characters(self.text, found.span()),
                format!("`{path}` is {}, and a table is wanted", kind(found.get_ref())),
                "a table is wanted here",
                format!("Write `[{path}]` on a line of its own, with its keys below it."),
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
    pub fn finish(self, problems: &mut Problems) {
        for (key, value) in self.entries {
            let name = key.get_ref().as_ref();
            if self.asked.contains(&name) {
                continue;
            }
            let remedy = closest(name, &self.asked).map_or_else(
                || format!("Take it out. Known here: {}.", self.asked.join(", ")),
                |near| format!("Did you mean `{near}`?"),
            );
            // A table's own place says more than the key inside its header.
            let span = if matches!(value.get_ref(), DeValue::Table(_)) {
                value.span()
            } else {
                key.span()
            };
            problems.add(Problem {
                span: on_characters(self.text, span),
                what: format!("`{}` is not known", self.path(&shortened(name))),
                label: "nothing reads this".to_owned(),
                remedy,
            });
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

/// What people call a kind of TOML value.
fn kind(value: &DeValue<'_>) -> &'static str {
    match value {
        DeValue::String(_) => "a text",
        DeValue::Integer(_) => "a whole number",
        DeValue::Float(_) => "a number with a decimal point",
        DeValue::Boolean(_) => "true or false",
        DeValue::Datetime(_) => "a date",
        DeValue::Array(_) => "a list",
        DeValue::Table(_) => "a table",
    }
}
