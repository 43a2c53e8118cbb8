//! The list of keys, where single keys are changed too.

use egui::{Event, EventFilter, Id, Key, Modal, Rect, Sense, StrokeKind, Ui, WidgetInfo, WidgetType, pos2, vec2};

use super::key;
use super::page::Page;
use super::theme::Ink;
use super::widget::{self, ButtonFace, Rank};
use crate::view::{Action, Command, KeyName, KeyTaken, Place};
use crate::words::say;

/// Keys that stay what they are.
fn fixed_keys(place: Place) -> Vec<[String; 2]> {
    let mut all = vec![
        ["F1".to_owned(), say!("help-f1")],
        [say!("help-tab-key"), say!("help-tab")],
    ];
    let arrows = || [say!("help-arrows-key"), say!("help-arrows")];
    let by_hand = || [say!("help-ctrl-key"), say!("help-ctrl")];
    match place {
        Place::Bench => all.extend([
            [say!("help-enter-key"), say!("help-enter")],
            [say!("help-escape-key"), say!("help-escape")],
            arrows(),
            by_hand(),
        ]),
        Place::Gears => all.extend([arrows(), by_hand()]),
        Place::ToothRoom => all.push([say!("help-chart-key"), say!("help-chart")]),
        Place::Start | Place::Debrief => {}
    }
    all
}

/// The action whose new key is waited for.
#[derive(Debug, Clone, PartialEq)]
struct Waiting {
    action: Action,
    /// Why the key that was pressed last cannot be its key.
    said: Option<String>,
}

fn waiting_id() -> Id {
    Id::new("waiting-for-a-key")
}

fn button_id(action: Action) -> Id {
    Id::new(("change-key", action))
}

/// Shows the list while it is asked for, and asks for it on F1.
pub(super) fn help(ui: &Ui, page: &mut Page<'_>) {
    let view = page.view;
    let f1 = ui.input(|input| input.key_pressed(Key::F1));
    if f1 || !view.help {
        ui.data_mut(|data| data.remove::<Waiting>(waiting_id()));
    }
    if f1 {
        page.out.push(Command::ShowHelp(!view.help));
        return;
    }
    if !view.help {
        return;
    }
    take_new_key(ui, page);
    let ink = page.ink;
    let window = ui.ctx().content_rect();
    let shown = Modal::new(Id::new("keys")).show(ui.ctx(), |ui| {
        ui.set_max_width((0.9 * window.width()).min(ink.scaled(520.0)));
        let text = ink.color(|t| t.text);
        widget::words(ui, &say!("keys-list"), ink.page_title(), text);
        widget::words(ui, &say!("keys-list-help"), ink.body(), text);
        egui::ScrollArea::vertical()
            .max_height(if ink.large() { 0.5 } else { 0.62 } * window.height())
            .show(ui, |ui| {
                ui.spacing_mut().item_spacing.y = 0.0;
                rows(ui, page);
            });
        ui.add_space(ink.space(8.0));
        if let Some(said) = view.keys_said {
            widget::words(ui, said, ink.body(), ink.color(|t| t.off));
        }
        ui.horizontal(|ui| {
            let usual = ButtonFace::plain(say!("keys-usual"), Rank::Plain);
            if widget::button(ui, ink, &usual).clicked() {
                page.out.push(Command::UsualKeys);
            }
            let close = ButtonFace::new(say!("window-close"), say!("window-cap-escape"), Rank::Next);
            widget::button(ui, ink, &close).clicked()
        })
        .inner
    });
    if shown.inner || shown.should_close() {
        page.out.push(Command::ShowHelp(false));
    }
}

/// Keys of the place that is shown, then those of other places.
fn rows(ui: &mut Ui, page: &Page<'_>) {
    let (ink, view) = (page.ink, page.view);
    let text = ink.color(|t| t.text);
    for [keys, what] in fixed_keys(view.place) {
        fixed_row(ui, ink, &keys, &what);
    }
    for action in Action::all().filter(|action| action.acts_at(view.place)) {
        action_row(ui, page, action);
    }
    let mut others = Action::all().filter(|action| !action.acts_at(view.place)).peekable();
    if others.peek().is_some() {
        ui.add_space(ink.space(10.0));
        widget::words(ui, &say!("keys-list-other-places"), ink.section(), text);
        for action in others {
            action_row(ui, page, action);
        }
    }
}

/// Width of the column of keys.
fn column(ui: &Ui, ink: &Ink) -> f32 {
    ink.scaled(110.0).min(0.3 * ui.available_width())
}

fn fixed_row(ui: &mut Ui, ink: &Ink, keys: &str, what: &str) {
    let text = ink.color(|t| t.text);
    let (width, column) = (ui.available_width(), column(ui, ink));
    let words = ui.painter().layout(what.to_owned(), ink.body(), text, width - column);
    let height = words.size().y + ink.space(6.0);
    let (rect, response) = ui.allocate_exact_size(vec2(width, height), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Label, true, say!("help-row", keys = keys, what = what)));
    let painter = ui.painter();
    let at = rect.min + vec2(0.0, ink.space(3.0));
    painter.text(at, egui::Align2::LEFT_TOP, keys, ink.section(), text);
    painter.galley(at + vec2(column, 0.0), words, text);
    painter.hline(rect.x_range(), rect.bottom() - 0.5, ink.line(1.0, |t| t.hairline));
}

/// An action with its key as a button.
fn action_row(ui: &mut Ui, page: &Page<'_>, action: Action) {
    let ink = page.ink;
    let text = ink.color(|t| t.text);
    let (width, column) = (ui.available_width(), column(ui, ink));
    let waiting = waiting(ui).filter(|waiting| waiting.action == action);
    let label = action.to_string();
    let words = ui.painter().layout(label, ink.body(), text, width - column);
    let side = ink.scaled(28.0);
    let height = (words.size().y + ink.space(6.0)).max(side + ink.space(4.0));
    let (_, rect) = ui.allocate_space(vec2(width, height));
    ui.painter().galley(
        pos2(rect.left() + column, rect.center().y - words.size().y / 2.0),
        words,
        text,
    );
    key_button(ui, page, action, waiting.is_some(), rect);
    if let Some(Waiting { said, .. }) = waiting {
        let said = said.map_or_else(
            || say!("keys-press"),
            |said| say!("keys-press-again", why = said, press = say!("keys-press")),
        );
        let words = ui.painter().layout(said.clone(), ink.section(), text, width - column);
        let (_, below) = ui.allocate_space(vec2(width, words.size().y + ink.space(6.0)));
        let response = ui.interact(below, button_id(action).with("said"), Sense::hover());
        response.widget_info(|| WidgetInfo::labeled(WidgetType::Label, true, &said));
        // Said at once, although the keyboard stays on the button.
        let live = |node: &mut egui::accesskit::Node| node.set_live(egui::accesskit::Live::Polite);
        ui.ctx().accesskit_node_builder(response.id, live);
        ui.painter().galley(below.min + vec2(column, 0.0), words, text);
        response.scroll_to_me(None);
    }
    let bottom = ui.min_rect().bottom() - 0.5;
    ui.painter()
        .hline(rect.x_range(), bottom, ink.line(1.0, |t| t.hairline));
}

/// The framed key at the left of its row.
fn key_button(ui: &mut Ui, page: &Page<'_>, action: Action, waits: bool, row: Rect) {
    let (ink, view) = (page.ink, page.view);
    let side = ink.scaled(28.0);
    let current = view.keys.key(action);
    let (sign, color) = match (waits, current) {
        (true, _) => ("…".to_owned(), ink.color(|t| t.text)),
        (false, Some(key)) => (key.sign(), ink.color(|t| t.text)),
        (false, None) => (say!("keys-off"), ink.color(|t| t.muted)),
    };
    let galley = ui.painter().layout_no_wrap(sign, ink.section(), color);
    let size = vec2((galley.size().x + 2.0 * ink.space(8.0)).max(side), side);
    // The outline of the keyboard lies outside.
    let rect = Rect::from_min_size(pos2(row.left() + 4.0, row.center().y - side / 2.0), size);
    let response = ui.interact(rect, button_id(action), Sense::click());
    let name = if waits {
        say!(
            "keys-press-for",
            press = say!("keys-press"),
            action = action.to_string()
        )
    } else {
        say!(
            "keys-change",
            action = action.to_string(),
            key = current.map_or_else(|| say!("keys-off"), KeyName::word),
        )
    };
    response.widget_info(|| WidgetInfo::labeled(WidgetType::Button, true, &name));
    let line = if waits {
        ink.line(2.0, |t| t.accent)
    } else {
        ink.line(if response.hovered() { 2.0 } else { 1.0 }, |t| t.line)
    };
    let painter = ui.painter();
    painter.rect(rect, 2.0, ink.color(|t| t.inset), line, StrokeKind::Inside);
    painter.galley(rect.center() - galley.size() / 2.0, galley, color);
    widget::focus_outline(ui, ink, &response, rect);
    if response.gained_focus() {
        response.scroll_to_me(None);
    }
    if response.clicked() {
        response.request_focus();
        let waiting = Waiting { action, said: None };
        ui.data_mut(|data| data.insert_temp(waiting_id(), waiting));
    }
    if waits {
        // Escape ends the waiting and does not let go of the button.
        let filter = EventFilter {
            escape: true,
            ..EventFilter::default()
        };
        ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
    }
}

fn waiting(ui: &Ui) -> Option<Waiting> {
    ui.data(|data| data.get_temp(waiting_id()))
}

/// Takes the key that was waited for. Who goes on to something else, by Tab, an arrow or the pointer, has thought better
/// of it.
fn take_new_key(ui: &Ui, page: &mut Page<'_>) {
    let view = page.view;
    let Some(Waiting { action, .. }) = waiting(ui) else {
        return;
    };
    let end = || ui.data_mut(|data| data.remove::<Waiting>(waiting_id()));
    if ui.memory(egui::Memory::focused) != Some(button_id(action)) {
        end();
        return;
    }
    let Some(key) = struck(ui) else {
        return;
    };
    let said = match (key, key::name_of(key)) {
        (Key::Escape, _) => None,
        (Key::Backspace, _) => {
            page.out.push(Command::SetKey(action, None));
            None
        }
        (_, None) => Some(say!("keys-fixed")),
        (_, Some(key)) => {
            let taken = view.keys.taken_by(action, key).map(|other| KeyTaken { key, other });
            if taken.is_none() {
                page.out.push(Command::SetKey(action, Some(key)));
            }
            taken.map(|taken| say!("keys-taken-sentence", taken = taken.to_string()))
        }
    };
    match said {
        None => end(),
        said => ui.data_mut(|data| {
            data.insert_temp(waiting_id(), Waiting { action, said });
        }),
    }
}

/// The key that was struck, so that nothing else is asked for by it. A key that is still held down from before is none.
fn struck(ui: &Ui) -> Option<Key> {
    let mut found = None;
    ui.input_mut(|input| {
        let plain = key::plain(input);
        input.events.retain(|event| match event {
            Event::Key { key, pressed: true, .. } if !plain || goes_on(*key) => true,
            Event::Key {
                key,
                pressed: true,
                repeat,
                ..
            } => {
                if !repeat && found.is_none() {
                    found = Some(*key);
                }
                false
            }
            _ => true,
        });
    });
    found
}

/// Keys that go on to something else.
fn goes_on(key: Key) -> bool {
    matches!(
        key,
        Key::Tab | Key::ArrowUp | Key::ArrowDown | Key::ArrowLeft | Key::ArrowRight
    )
}
