//! A hand that has just done something. What lies under it then may be the opposite: who puts a seal in finds "Pull the seal
//! out" there. Until the pointer has moved, or a key was pressed, it does nothing else at that place; and the second press of
//! a double click does nothing at all.

use egui::{Event, Response, Ui};

use super::desk::Desk;
use super::desk_state::Acted;

/// How far a hand that rests may tremble, points.
const REST: f32 = 6.0;

/// Looks whether the hand has moved since it did something.
pub(super) fn pointer_moves(ui: &Ui, desk: &mut Desk<'_>) {
    let Some(acted) = &desk.state.acted else { return };
    let moved = ui.input(|input| {
        let away = |at: egui::Pos2| at.distance(acted.at) > REST;
        let key = |event: &Event| matches!(event, Event::Key { pressed: true, .. });
        input.pointer.latest_pos().is_none_or(away) || input.events.iter().any(key)
    });
    if moved {
        desk.state.acted = None;
    }
}

/// Whether this was pressed, and meant. `what` is what it is called: the same may be pressed again where it stands.
pub(super) fn pressed(ui: &Ui, desk: &mut Desk<'_>, response: &Response, what: &str) -> bool {
    if !response.clicked() {
        return false;
    }
    // A press by the keyboard has no place.
    let by_pointer = response.clicked_by(egui::PointerButton::Primary);
    let at = ui.input(|input| input.pointer.interact_pos()).filter(|_| by_pointer);
    let Some(at) = at else { return true };
    // The first press of a double click has done it; both can come within one frame that took long.
    let again = response.double_clicked() || response.triple_clicked();
    if desk
        .state
        .acted
        .as_ref()
        .is_some_and(|acted| again || acted.what != what)
    {
        return false;
    }
    desk.state.acted = Some(Acted {
        what: what.to_owned(),
        at,
    });
    true
}
