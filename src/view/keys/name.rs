//! Names of keys that can be given to actions.

/// A key with a letter, a digit or a sign on it, or the space bar.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct KeyName(&'static str);

/// Letters and digits, which are their own names.
const PLAIN: [&str; 36] = [
    "A", "B", "C", "D", "E", "F", "G", "H", "I", "J", "K", "L", "M", "N", "O", "P", "Q", "R", "S", "T", "U", "V", "W",
    "X", "Y", "Z", "0", "1", "2", "3", "4", "5", "6", "7", "8", "9",
];

/// Name, what is drawn on a cap, and the word for those who listen.
///
/// There is no key of its own for the equals sign: on many keyboards it is the plus key without shift.
const SIGNS: [[&str; 3]; 18] = [
    ["Space", "Space", "space bar"],
    ["Colon", ":", "colon"],
    ["Comma", ",", "comma"],
    ["Minus", "\u{2212}", "minus"],
    ["Period", ".", "full stop"],
    ["Plus", "+", "plus"],
    ["Semicolon", ";", "semicolon"],
    ["Backslash", "\\", "backslash"],
    ["Slash", "/", "slash"],
    ["Pipe", "|", "vertical bar"],
    ["Questionmark", "?", "question mark"],
    ["Exclamationmark", "!", "exclamation mark"],
    ["OpenBracket", "[", "opening bracket"],
    ["CloseBracket", "]", "closing bracket"],
    ["OpenCurlyBracket", "{", "opening brace"],
    ["CloseCurlyBracket", "}", "closing brace"],
    ["Backtick", "`", "grave accent"],
    ["Quote", "'", "apostrophe"],
];

impl KeyName {
    /// The key of this name, where it can be given to an action.
    pub fn named(name: &str) -> Option<Self> {
        Self::all().find(|key| key.0 == name)
    }

    /// All of them.
    pub fn all() -> impl Iterator<Item = Self> {
        PLAIN.into_iter().chain(SIGNS.map(|[name, ..]| name)).map(Self)
    }

    /// Its name.
    pub const fn name(self) -> &'static str {
        self.0
    }

    /// What is drawn on its cap.
    pub fn sign(self) -> &'static str {
        self.row().map_or(self.0, |[_, sign, _]| sign)
    }

    /// Its word for those who listen.
    pub fn word(self) -> &'static str {
        self.row().map_or(self.0, |[.., word]| word)
    }

    fn row(self) -> Option<[&'static str; 3]> {
        SIGNS.into_iter().find(|[name, ..]| *name == self.0)
    }
}
