//! Names of keys that can be given to actions.

use crate::words::say;

/// A key with a letter, a digit or a sign on it, or the space bar.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct KeyName(&'static str);

/// Letters and digits, which are their own names.
const PLAIN: [&str; 36] = [
    "A", "B", "C", "D", "E", "F", "G", "H", "I", "J", "K", "L", "M", "N", "O", "P", "Q", "R", "S", "T", "U", "V", "W",
    "X", "Y", "Z", "0", "1", "2", "3", "4", "5", "6", "7", "8", "9",
];

/// What is said of a key, in the language that is spoken.
type Word = fn() -> String;

/// Name, what is drawn on a cap where that is a sign and no word, and the word for those who listen.
///
/// There is no key of its own for the equals sign: on many keyboards it is the plus key without shift.
const SIGNS: [(&str, Option<&str>, Word); 18] = [
    ("Space", None, || say!("keys-word-space")),
    ("Colon", Some(":"), || say!("keys-word-colon")),
    ("Comma", Some(","), || say!("keys-word-comma")),
    ("Minus", Some("\u{2212}"), || say!("keys-word-minus")),
    ("Period", Some("."), || say!("keys-word-period")),
    ("Plus", Some("+"), || say!("keys-word-plus")),
    ("Semicolon", Some(";"), || say!("keys-word-semicolon")),
    ("Backslash", Some("\\"), || say!("keys-word-backslash")),
    ("Slash", Some("/"), || say!("keys-word-slash")),
    ("Pipe", Some("|"), || say!("keys-word-pipe")),
    ("Questionmark", Some("?"), || say!("keys-word-question-mark")),
    ("Exclamationmark", Some("!"), || say!("keys-word-exclamation-mark")),
    ("OpenBracket", Some("["), || say!("keys-word-opening-bracket")),
    ("CloseBracket", Some("]"), || say!("keys-word-closing-bracket")),
    ("OpenCurlyBracket", Some("{"), || say!("keys-word-opening-brace")),
    ("CloseCurlyBracket", Some("}"), || say!("keys-word-closing-brace")),
    ("Backtick", Some("`"), || say!("keys-word-backtick")),
    ("Quote", Some("'"), || say!("keys-word-apostrophe")),
];

impl KeyName {
    /// The key of this name, where it can be given to an action.
    pub fn named(name: &str) -> Option<Self> {
        Self::all().find(|key| key.0 == name)
    }

    /// All of them.
    pub fn all() -> impl Iterator<Item = Self> {
        PLAIN.into_iter().chain(SIGNS.map(|(name, ..)| name)).map(Self)
    }

    /// Its name.
    pub const fn name(self) -> &'static str {
        self.0
    }

    /// What is drawn on its cap.
    pub fn sign(self) -> String {
        match self.row() {
            Some((_, Some(sign), _)) => sign.to_owned(),
            Some((_, None, _)) => say!("keys-cap-space"),
            None => self.0.to_owned(),
        }
    }

    /// Its word for those who listen.
    pub fn word(self) -> String {
        self.row().map_or_else(|| self.0.to_owned(), |(.., word)| word())
    }

    fn row(self) -> Option<(&'static str, Option<&'static str>, Word)> {
        SIGNS.into_iter().find(|(name, ..)| *name == self.0)
    }
}
