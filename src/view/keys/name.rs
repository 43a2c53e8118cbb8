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

/// Keys with a sign on them, and the space bar.
///
/// There is no key of its own for the equals sign: on many keyboards it is the plus key without shift.
const SIGNS: [&str; 18] = [
    "Space",
    "Colon",
    "Comma",
    "Minus",
    "Period",
    "Plus",
    "Semicolon",
    "Backslash",
    "Slash",
    "Pipe",
    "Questionmark",
    "Exclamationmark",
    "OpenBracket",
    "CloseBracket",
    "OpenCurlyBracket",
    "CloseCurlyBracket",
    "Backtick",
    "Quote",
];

impl KeyName {
    /// The key of this name, where it can be given to an action.
    pub fn named(name: &str) -> Option<Self> {
        Self::all().find(|key| key.0 == name)
    }

    /// All of them.
    pub fn all() -> impl Iterator<Item = Self> {
        PLAIN.into_iter().chain(SIGNS).map(Self)
    }

    /// Its name.
    pub const fn name(self) -> &'static str {
        self.0
    }

    /// What is drawn on its cap.
    pub fn sign(self) -> String {
        match self.0 {
            "Space" => return say!("keys-cap-space"),
            "Colon" => ":",
            "Comma" => ",",
            "Minus" => "\u{2212}",
            "Period" => ".",
            "Plus" => "+",
            "Semicolon" => ";",
            "Backslash" => "\\",
            "Slash" => "/",
            "Pipe" => "|",
            "Questionmark" => "?",
            "Exclamationmark" => "!",
            "OpenBracket" => "[",
            "CloseBracket" => "]",
            "OpenCurlyBracket" => "{",
            "CloseCurlyBracket" => "}",
            "Backtick" => "`",
            "Quote" => "'",
            plain => plain,
        }
        .to_owned()
    }

    /// Its word for those who listen.
    pub fn word(self) -> String {
        match self.0 {
            "Space" => say!("keys-word-space"),
            "Colon" => say!("keys-word-colon"),
            "Comma" => say!("keys-word-comma"),
            "Minus" => say!("keys-word-minus"),
            "Period" => say!("keys-word-period"),
            "Plus" => say!("keys-word-plus"),
            "Semicolon" => say!("keys-word-semicolon"),
            "Backslash" => say!("keys-word-backslash"),
            "Slash" => say!("keys-word-slash"),
            "Pipe" => say!("keys-word-pipe"),
            "Questionmark" => say!("keys-word-question-mark"),
            "Exclamationmark" => say!("keys-word-exclamation-mark"),
            "OpenBracket" => say!("keys-word-opening-bracket"),
            "CloseBracket" => say!("keys-word-closing-bracket"),
            "OpenCurlyBracket" => say!("keys-word-opening-brace"),
            "CloseCurlyBracket" => say!("keys-word-closing-brace"),
            "Backtick" => say!("keys-word-backtick"),
            "Quote" => say!("keys-word-apostrophe"),
            plain => plain.to_owned(),
        }
    }
}
