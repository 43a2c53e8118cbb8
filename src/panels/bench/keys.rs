//! Keys of the bench. Single letters are quiet while anything has the keyboard.

use egui::{Key, Ui};

use super::desk::Desk;
use crate::panels::key;
use crate::view::{Action, AxlePart, Command};

/// What keys ask for.
pub(super) fn keys(ui: &Ui, desk: &mut Desk<'_>) {
    let view = desk.view;
    let had_keyboard = std::mem::replace(
        &mut desk.state.had_keyboard,
        ui.memory(|memory| memory.focused().is_some()),
    );
    if desk.state.had_keyboard || egui::Popup::is_any_open(ui.ctx()) {
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
        desk.out.push(Command::ChoosePart(here.get(next).copied()));
    }
    if asked(Action::ReadOut) {
        desk.out.push(Command::SetReadOut(!view.desk.read_out));
    }
    if asked(Action::SignOff) && !board.finished && !desk.state.handing_over {
        desk.state.ask_to_sign_off();
        desk.state.show_card();
    }
    if asked(Action::Enlarge) {
        desk.state.large = !desk.state.large && desk.state.reading.is_some();
    }
    if asked(Action::TakeInHand)
        && let Some(last) = board.readings.last()
    {
        desk.state.take_in_hand(last);
    }
    // In a box Escape lets go of the box, which has lost the keyboard by now, and of nothing else.
    if key::pressed(ui, view).contains(&Key::Escape) && desk.state.form.is_none() && !had_keyboard {
        if std::mem::take(&mut desk.state.large) {
            return;
        }
        desk.out.push(Command::ChoosePart(None));
    }
}
