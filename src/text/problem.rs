//! What is wrong in a text, and where. What people read of it is made elsewhere.

use std::convert::Infallible;
use std::ops::{Range, RangeInclusive};

use super::range::NumberRange;
use super::unit::MixUp;

/// One problem of a text. `F` is what can be wrong in files of this format alone.
#[derive(Debug, Clone, PartialEq)]
pub struct Problem<F = Infallible> {
    /// Bytes of the text that it is about; `start ≤ end ≤ length`, on character boundaries.
    pub span: Range<usize>,
    /// What is wrong.
    pub kind: ProblemKind<F>,
}

/// What can be wrong in a text. A `path` is a key with the tables that it stands in, as `pair.offset_mm`.
#[derive(Debug, Clone, PartialEq)]
pub enum ProblemKind<F = Infallible> {
    /// The file is larger than any of its kind.
    TooLarge {
        /// Its bytes.
        bytes: usize,
        /// Most bytes that are read.
        most: usize,
    },
    /// It is no text: it holds a NUL character.
    Nul,
    /// It is no text: its bytes are not UTF-8.
    NotUtf8,
    /// It is not TOML.
    NotToml {
        /// What the parser says.
        said: String,
    },
    /// The reader forgot to say why it gave no value.
    Unusable,
    /// A key that must be there is not.
    Missing {
        /// Key.
        key: String,
        /// The table that it belongs in; empty for the file itself.
        table: String,
        /// What it takes.
        wanted: Wanted,
    },
    /// A table that must be there is not.
    MissingTable {
        /// Its path.
        path: String,
    },
    /// A value is of another kind than its key takes.
    WrongKind {
        /// Path of the key.
        path: String,
        /// What stands there.
        found: ValueKind,
        /// What the key takes.
        wanted: Wanted,
    },
    /// Something else stands where a table is wanted.
    NotATable {
        /// Its path.
        path: String,
        /// What stands there.
        found: ValueKind,
        /// Whether it is one of a list of tables, written as `[[path]]`.
        item: bool,
    },
    /// A number outside its range.
    OutOfRange {
        /// Path of the key.
        path: String,
        /// Number given.
        value: f64,
        /// What is allowed.
        range: NumberRange,
        /// Another unit in which it would fit.
        mix_up: Option<MixUp>,
    },
    /// A whole number outside its range.
    WholeOutOfRange {
        /// Path of the key.
        path: String,
        /// Digits given: there may be more of them than any number of ours holds.
        value: String,
        /// What is allowed.
        range: RangeInclusive<u32>,
    },
    /// A text too long or too short.
    Length {
        /// Path of the key.
        path: String,
        /// Its characters.
        count: usize,
        /// What is allowed.
        length: RangeInclusive<usize>,
    },
    /// A text with a line end or another control character.
    ControlCharacter {
        /// Path of the key.
        path: String,
    },
    /// A word that is none of those which a key takes.
    UnknownWord {
        /// Path of the key.
        path: String,
        /// What is allowed.
        words: Vec<String>,
        /// The one that was meant, if one is close.
        near: Option<String>,
    },
    /// A list too long or too short.
    ListLength {
        /// Path of the key.
        path: String,
        /// What it is a list of.
        of: ItemKind,
        /// Its items.
        count: usize,
        /// What is allowed.
        allowed: RangeInclusive<usize>,
    },
    /// An item of a list is no text that fits.
    ItemNoText {
        /// Path of the list.
        path: String,
        /// What stands there; a text is one of the wrong length, or with control characters.
        found: ValueKind,
        /// Characters that are allowed.
        length: RangeInclusive<usize>,
    },
    /// An item of a list is no number that fits.
    ItemNoNumber {
        /// Path of the list.
        path: String,
        /// What is allowed.
        range: NumberRange,
    },
    /// A key that nobody asked for.
    UnknownKey {
        /// Its path.
        path: String,
        /// The key that was meant, if one is close.
        near: Option<&'static str>,
        /// All keys that are known in its table.
        known: Vec<&'static str>,
    },
    /// A newer version of the right format.
    NewerFormat {
        /// Its version.
        version: u32,
        /// The newest that is read.
        newest: u32,
    },
    /// Another format.
    OtherFormat {
        /// The format that is read, with its version.
        wanted: String,
    },
    /// What can be wrong in this format alone.
    Own(F),
}

/// What a key takes.
#[derive(Debug, Clone, PartialEq)]
pub enum Wanted {
    /// A number.
    Number(NumberRange),
    /// A whole number.
    Whole(RangeInclusive<u32>),
    /// A text of so many characters.
    Text(RangeInclusive<usize>),
    /// True or false.
    Flag,
    /// One of these words.
    Words(Vec<String>),
    /// A list of so many items.
    List(ItemKind, RangeInclusive<usize>),
}

/// What a list is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ItemKind {
    /// Texts.
    Texts,
    /// Numbers.
    Numbers,
    /// Tables.
    Tables,
}

/// Kinds of values of a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ValueKind {
    /// Between quotes.
    Text,
    /// Without a decimal point.
    Whole,
    /// With a decimal point.
    Decimal,
    /// True or false.
    Flag,
    /// A date or a time.
    Date,
    /// In square brackets.
    List,
    /// Keys of its own.
    Table,
}

/// The problems of one text, in the order in which they stand there. At most [`Problems::MOST`] are kept; the others
/// are counted.
#[derive(Debug, Clone, PartialEq)]
pub struct Problems<F = Infallible> {
    list: Vec<Problem<F>>,
    left_out: usize,
}

impl<F> Default for Problems<F> {
    fn default() -> Self {
        Self::new()
    }
}

impl<F> Problems<F> {
    /// How many problems are kept: nobody reads more at a time.
    pub const MOST: usize = 50;

    /// No problem yet.
    pub const fn new() -> Self {
        Self {
            list: Vec::new(),
            left_out: 0,
        }
    }

    /// Notes a problem at `span`.
    pub fn note(&mut self, span: Range<usize>, kind: ProblemKind<F>) {
        if self.list.len() < Self::MOST {
            self.list.push(Problem { span, kind });
        } else {
            self.left_out += 1;
        }
    }

    /// Notes a problem at `span` that this format alone can have.
    pub fn note_own(&mut self, span: Range<usize>, own: F) {
        self.note(span, ProblemKind::Own(own));
    }

    /// Whether nothing was noted.
    pub fn is_empty(&self) -> bool {
        self.list.is_empty()
    }

    /// The problems kept, by their place in the text.
    pub fn list(&self) -> &[Problem<F>] {
        &self.list
    }

    /// How many were noted but not kept.
    pub fn left_out(&self) -> usize {
        self.left_out
    }

    /// The value, if nothing was noted.
    ///
    /// # Errors
    /// The problems, ordered by their place. Where nothing was noted and yet there is no value, the reader forgot to
    /// say why: a problem at the start of the text says that much rather than hiding it.
    pub fn verdict<T>(mut self, value: Option<T>) -> Result<T, Self> {
        match value {
            Some(value) if self.is_empty() => Ok(value),
            _ => {
                if self.is_empty() {
                    self.note(0..0, ProblemKind::Unusable);
                }
                self.list.sort_by_key(|p| (p.span.start, p.span.end));
                Err(self)
            }
        }
    }
}
