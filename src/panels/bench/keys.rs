//! Keys of the bench. Single letters are quiet while anything has the keyboard.

use egui::{Key, Ui};

use super::desk_state::DeskState;
use crate::panels::key;
use crate::view::{Action, AxlePart, Command, WindowView};

/// What keys ask for.
pub(super) fn keys(ui: &Ui, view: &WindowView<'_>, state: &mut DeskState, out: &mut Vec<Command>) {
    let had_keyboard = std::mem::replace(&mut state.had_keyboard, ui.memory(|memory| memory.focused().is_some()));
    if state.had_keyboard || egui::Popup::is_any_open(ui.ctx()) {
        return;
    }
    let actions = key::actions(ui, view);
    let asked = |action| actions.contains(&action);
    let Some(board) = view.bench else { return };
    let here: Vec<AxlePart> = AxlePart::ALL
        .into_iter()
        .filter(|part| board.works.iter().any(|w| w.part == *part))
        .collect();
    let now = view.desk.part.and_then(|part| here.iter().position(|p| *p == part));
    let step = i32::from(asked(Action::NextPart)) - i32::from(asked(Action::PartBefore));
    if step != 0 && !here.is_empty() {
        let count = here.len();
        let next = match (now, step > 0) {
            (None, _) => 0,
            (Some(at), true) => (at + 1) % count,
            (Some(at), false) => (at + count - 1) % count,
        };
        out.push(Command::ChoosePart(here.get(next).copied()));
    }
    if asked(Action::ReadOut) {
        out.push(Command::SetReadOut(!view.desk.read_out));
    }
    if asked(Action::TakeInHand)
        && let Some(last) = board.readings.last()
    {
        state.take_in_hand(last);
    }
    // In a box Escape lets go of the box, which has lost the keyboard by now, and of nothing else.
    if key::pressed(ui, view).contains(&Key::Escape) && state.form.is_none() && !had_keyboard {
        out.push(Command::ChoosePart(None));
    }
}
