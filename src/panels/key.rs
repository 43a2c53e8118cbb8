//! Single keys: what was pressed, what it asks for, and how tooltips and caps say it.

use egui::{Event, InputState, Key, Ui};

use crate::view::{Action, KeyName, Keys, WindowView};
use crate::words::say;

/// The name of a key that can be given to an action. The equals sign stands for plus, which is on the same key of many
/// keyboards.
pub(super) fn name_of(key: Key) -> Option<KeyName> {
    KeyName::named(if key == Key::Equals { Key::Plus } else { key }.name())
}

/// Whether no key is held that makes something else of a letter.
pub(super) fn plain(input: &InputState) -> bool {
    !input.modifiers.ctrl && !input.modifiers.alt && !input.modifiers.command
}

/// Keys that were pressed by themselves or with shift, in their order; none while a list or the list of keys is open,
/// which has the keyboard. Whether something else has it is for the caller to say.
pub(super) fn pressed(ui: &Ui, view: &WindowView<'_>) -> Vec<Key> {
    if view.covered() || egui::Popup::is_any_open(ui.ctx()) {
        return Vec::new();
    }
    ui.input(|input| {
        let press = |event: &Event| match event {
            Event::Key { key, pressed: true, .. } => Some(*key),
            _ => None,
        };
        let plain = plain(input);
        input.events.iter().filter(|_| plain).filter_map(press).collect()
    })
}

/// What a key asks for at the place that is shown.
pub(super) fn action(key: Key, view: &WindowView<'_>) -> Option<Action> {
    view.keys.action_at(view.place, name_of(key)?)
}

/// What was asked for by single keys.
pub(super) fn actions(ui: &Ui, view: &WindowView<'_>) -> Vec<Action> {
    let pressed = pressed(ui, view);
    pressed.into_iter().filter_map(|key| action(key, view)).collect()
}

/// What stands on the cap of a button; empty where the key is turned off.
pub(super) fn cap(keys: &Keys, action: Action) -> String {
    keys.key(action).map(KeyName::sign).unwrap_or_default()
}

/// A tooltip with the key that does the same, if one does.
pub(super) fn hint(what: String, keys: &Keys, action: Action) -> String {
    match keys.key(action) {
        Some(key) => say!("keys-tooltip", what = what, key = key.sign()),
        None => what,
    }
}
