//! How finely contact is sampled, and the places of an even grid.
//!
//! Source: our own choice; what it is good for is [`super::EXACT_ACCURACY`].

/// How finely contact is sampled.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Resolution {
    /// Grid cells along the tooth.
    pub lengthwise: usize,
    /// Grid cells up the tooth.
    pub heightwise: usize,
    /// Rolls in one pitch.
    pub rolls: usize,
}

impl Resolution {
    /// What ships: halving every step changes no result by more than [`super::EXACT_ACCURACY`].
    pub const SHIPPED: Self = Self {
        lengthwise: 48,
        heightwise: 36,
        rolls: 16,
    };

    /// Every step halved.
    #[must_use]
    pub fn halved(self) -> Self {
        Self {
            lengthwise: 2 * self.lengthwise,
            heightwise: 2 * self.heightwise,
            rolls: 2 * self.rolls,
        }
    }

    /// At least what the method needs, and no more than fits in memory.
    pub(super) fn sane(self) -> Self {
        Self {
            lengthwise: self.lengthwise.clamp(4, 1024),
            heightwise: self.heightwise.clamp(4, 1024),
            rolls: self.rolls.clamp(4, 1024),
        }
    }
}

impl Default for Resolution {
    fn default() -> Self {
        Self::SHIPPED
    }
}

/// The i-th of n + 1 places from −1 to 1.
pub(crate) fn coordinate(i: usize, n: usize) -> f64 {
    2.0 * i as f64 / n as f64 - 1.0
}
