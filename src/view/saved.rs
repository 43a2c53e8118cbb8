//! What becomes of a page or a picture that a person saves.

/// The last page or picture that was to be saved.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub enum Saved {
    /// It is being made and written.
    UnderWay,
    /// It lies in these files.
    There(Vec<String>),
    /// It was not written, with the reason as a sentence.
    Not(String),
}
