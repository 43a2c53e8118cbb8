//! How an attempt is played.

/// How an attempt is played.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Policy {
    /// By the rules of the trade.
    Reference,
    /// Alike, with the depth rule turned round.
    Reversed,
    /// Anything.
    Random,
}

impl Policy {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Reference, Self::Reversed, Self::Random];

    /// Its name on the command line.
    pub fn name(self) -> &'static str {
        match self {
            Self::Reference => "reference",
            Self::Reversed => "reversed",
            Self::Random => "random",
        }
    }
}
