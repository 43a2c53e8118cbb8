//! What every panel of the bench is given: what is to be seen, what it keeps between frames, where it writes what was asked
//! for.

use egui::{Id, ScrollArea, Ui};

use super::desk_state::DeskState;
use crate::panels::page::Page;
use crate::panels::theme::Ink;
use crate::view::{BenchView, Command, WindowView};

/// The bench, of one frame.
pub(super) struct Desk<'a> {
    /// Colors and sizes.
    pub(super) ink: &'a Ink,
    /// What the window shows.
    pub(super) view: &'a WindowView<'a>,
    /// What lies on the bench.
    pub(super) board: &'a BenchView,
    /// What is kept between frames.
    pub(super) state: DeskState,
    /// What was asked for, in order.
    pub(super) out: &'a mut Vec<Command>,
}

impl Desk<'_> {
    /// What panels that know nothing of the bench are given.
    pub(super) fn page(&mut self) -> Page<'_> {
        Page {
            ink: self.ink,
            view: self.view,
            out: self.out,
        }
    }

    /// Name of a list of this attempt: one that was scrolled in another exercise is seen from its top.
    pub(super) fn list(&self, name: &str) -> Id {
        Id::new((name, &self.board.title, self.board.seed, self.state.attempts))
    }
}

/// How something is as high as it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Flow {
    /// It fills its zone and scrolls by itself.
    Own,
    /// It is as high as it needs, in a list that scrolls.
    Along,
}

/// A list that scrolls down, never sideways.
pub(super) fn scrolled<R>(ui: &mut Ui, name: Id, add: impl FnOnce(&mut Ui) -> R) -> R {
    ScrollArea::vertical()
        .id_salt(name)
        .auto_shrink([false, false])
        .show(ui, add)
        .inner
}
