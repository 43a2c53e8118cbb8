//! What every panel is drawn with, and where it writes down what was asked for.

use super::theme::Ink;
use crate::view::{Command, WindowView};

/// What a panel is given beside its place.
pub(super) struct Page<'a> {
    /// Colors and sizes.
    pub(super) ink: &'a Ink,
    /// What there is to be seen.
    pub(super) view: &'a WindowView<'a>,
    /// What was asked for, in order.
    pub(super) out: &'a mut Vec<Command>,
}
