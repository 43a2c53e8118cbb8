//! Keys that a trainee gives to actions: what they ask for, what caps and tooltips say, how they are changed.

use egui::{Key, Modifiers, Rect};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable as _;
use lashwright::view::{Action, Command, KeyName, Keys, Place, TextSize, Theme, Viewpoint};

use super::{Desk, USUAL, asked, window};

fn key(name: &str) -> KeyName {
    KeyName::named(name).unwrap_or_else(|| panic!("{name} is a key"))
}

fn desk(changes: &[(Action, Option<&str>)]) -> Desk {
    let mut desk = Desk::with_sets(2);
    for (action, name) in changes {
        desk.keys.set(*action, name.map(key)).expect("the key is free");
    }
    desk
}

/// Presses a key and answers what was asked for.
fn press(harness: &mut Harness<'_, Desk>, key: Key) -> Vec<Command> {
    harness.key_press(key);
    harness.run();
    asked(harness)
}

/// As the session does.
fn carry_out(harness: &mut Harness<'_, Desk>, commands: &[Command]) {
    for command in commands {
        match command {
            Command::SetKey(action, key) => harness.state_mut().keys.set(*action, *key).expect("not taken"),
            Command::UsualKeys => harness.state_mut().keys = Keys::default(),
            Command::ShowHelp(help) => harness.state_mut().help = *help,
            other => panic!("the list of keys asks for {other:?}"),
        }
    }
    harness.run();
}

/// The list of keys over the gears.
fn list(changes: &[(Action, Option<&str>)]) -> Harness<'static, Desk> {
    let mut desk = desk(changes);
    desk.help = true;
    let mut harness = window(USUAL, desk);
    harness.run();
    harness
}

fn button(action: Action, key: &str) -> String {
    format!("Change the key of “{action}”: {key}")
}

/// Goes to the button of an action by Tab and presses it by Enter.
fn wait_for(harness: &mut Harness<'_, Desk>, action: Action, now: &str) {
    let name = button(action, now);
    for _ in 0..60 {
        harness.key_press(Key::Tab);
        harness.run();
        if harness.get_by_label(&name).is_focused() {
            assert_eq!(press(harness, Key::Enter), [], "only waited for");
            assert!(
                harness.query_by_label(WAITS).is_some(),
                "says what is to be done: {action}"
            );
            return;
        }
    }
    panic!("Tab does not lead to {name}");
}

const WAITS: &str = "Press the new key. Esc keeps the old key, Backspace turns it off.";

/// All texts that are painted.
fn painted(harness: &Harness<'_, Desk>) -> Vec<String> {
    fn texts(shape: &egui::Shape, found: &mut Vec<String>) {
        match shape {
            egui::Shape::Text(text) => found.push(text.galley.text().to_owned()),
            egui::Shape::Vec(shapes) => shapes.iter().for_each(|shape| texts(shape, found)),
            _ => {}
        }
    }
    let mut found = Vec::new();
    for clipped in &harness.output().shapes {
        texts(&clipped.shape, &mut found);
    }
    found
}

/// The texts that lie on the thing of this name.
fn painted_on(harness: &Harness<'_, Desk>, label: &str) -> Vec<String> {
    let rect = harness.get_by_label(label).rect();
    let on = |shape: &egui::Shape| match shape {
        egui::Shape::Text(text) => {
            let at = Rect::from_min_size(text.pos, text.galley.size());
            rect.contains(at.center()).then(|| text.galley.text().to_owned())
        }
        _ => None,
    };
    harness
        .output()
        .shapes
        .iter()
        .filter_map(|clipped| on(&clipped.shape))
        .collect()
}

#[test]
fn every_key_that_can_be_given_is_one_of_the_keyboards() {
    for name in KeyName::all() {
        let found = Key::from_name(name.name()).map(Key::name);
        assert_eq!(found, Some(name.name()), "spelled as the keyboard spells it");
    }
    for fixed in [Key::Enter, Key::Tab, Key::Escape, Key::F1, Key::ArrowUp, Key::Backspace] {
        assert_eq!(KeyName::named(fixed.name()), None, "{fixed:?} always means the same");
    }
}

#[test]
fn another_key_does_it_and_the_old_one_is_quiet() {
    let mut harness = window(
        USUAL,
        desk(&[(Action::Rock, Some("G")), (Action::Nearer, Some("Slash"))]),
    );
    assert_eq!(press(&mut harness, Key::R), [], "the old key");
    assert_eq!(press(&mut harness, Key::G), [Command::SetRocking(true)]);
    assert_eq!(press(&mut harness, Key::Plus), [], "the old key");
    assert_eq!(press(&mut harness, Key::Equals), [], "and what stands for it");
    assert_eq!(press(&mut harness, Key::Slash), [Command::Zoom(1.0)]);
    assert_eq!(
        press(&mut harness, Key::Num3),
        [Command::LookFrom(Viewpoint::RingGear)],
        "the others are as usual"
    );
    harness.state_mut().keys = Keys::default();
    harness.run();
    assert_eq!(
        press(&mut harness, Key::Equals),
        [Command::Zoom(1.0)],
        "plus without shift"
    );
    assert_eq!(press(&mut harness, Key::G), [], "not given any more");
    harness.state_mut().keys = desk(&[(Action::Rock, Some("G"))]).keys;
    harness.run();
    // A letter for a menu or the window is none of ours, and a list with the keyboard keeps it.
    harness.key_press_modifiers(Modifiers::CTRL, Key::G);
    harness.run();
    assert_eq!(asked(&mut harness), [], "with Ctrl");
    harness.get_by_label("Invented set 2").focus();
    harness.run();
    assert_eq!(press(&mut harness, Key::G), [], "while the list has the keyboard");
}

#[test]
fn a_key_turned_off_asks_for_nothing() {
    let mut harness = window(USUAL, desk(&[(Action::Rock, None), (Action::ToothRoom, None)]));
    for quiet in [Key::R, Key::T] {
        assert_eq!(press(&mut harness, quiet), [], "{quiet:?}");
    }
    assert_eq!(painted_on(&harness, "Rock ring gear"), ["Rock ring gear"], "no cap");
    harness.state_mut().place = Place::ToothRoom;
    harness.run();
    assert_eq!(press(&mut harness, Key::T), [], "nor back");
}

#[test]
fn the_tooth_room_goes_by_the_same_keys() {
    let mut desk = desk(&[(Action::ToothRoom, Some("Quote")), (Action::KeepAsOther, Some("K"))]);
    desk.place = Place::ToothRoom;
    let mut harness = window(USUAL, desk);
    harness.run();
    assert_eq!(painted_on(&harness, "Keep as B"), ["Keep as B", "K"]);
    for (pressed, commands) in [
        (Key::B, vec![]),
        (Key::K, vec![Command::KeepAsOther]),
        (Key::T, vec![]),
        (Key::Quote, vec![Command::GoTo(Place::Gears)]),
    ] {
        assert_eq!(press(&mut harness, pressed), commands, "{pressed:?}");
    }
}

#[test]
fn caps_and_tooltips_say_the_key_that_is_set() {
    let mut harness = window(USUAL, desk(&[]));
    harness.run();
    assert_eq!(painted_on(&harness, "Rock ring gear"), ["Rock ring gear", "R"]);
    harness.state_mut().keys = desk(&[
        (Action::Rock, Some("G")),
        (Action::Turn, Some("Semicolon")),
        (Action::Flat, Some("Y")),
        (Action::LookFrom(Viewpoint::Above), Some("9")),
        (Action::ToothRoom, Some("Z")),
    ])
    .keys;
    harness.run();
    assert_eq!(painted_on(&harness, "Rock ring gear"), ["Rock ring gear", "G"]);
    assert_eq!(painted_on(&harness, "Turn pinion"), ["Turn pinion", ";"]);
    for (label, hint) in [
        ("Projection: Flat", "Keep parallel lines parallel. Key: Y"),
        ("View: Above", "From above. Key: 9"),
        (
            "Place: Tooth room",
            "Patterns, motion and wall chart of any gear set. Key: Z",
        ),
    ] {
        harness.event(egui::Event::PointerMoved(egui::Pos2::new(700.0, 500.0)));
        harness.run();
        harness.get_by_label(label).hover();
        // Tooltips come after a while.
        harness.run_steps(60);
        assert!(
            painted(&harness).iter().any(|text| text == hint),
            "{label} says {hint}: {:?}",
            painted(&harness)
        );
    }
}

#[test]
fn a_key_is_changed_by_the_keyboard_alone() {
    let mut harness = list(&[]);
    wait_for(&mut harness, Action::Rock, "R");
    let commands = press(&mut harness, Key::G);
    assert_eq!(commands, [Command::SetKey(Action::Rock, Some(key("G")))]);
    carry_out(&mut harness, &commands);
    assert!(harness.query_by_label(WAITS).is_none(), "done");
    assert!(
        harness.get_by_label(&button(Action::Rock, "G")).is_focused(),
        "the keyboard stays where it was"
    );
    assert_eq!(press(&mut harness, Key::H), [], "nothing is waited for any more");
}

#[test]
fn the_pointer_changes_a_key_too() {
    // Near the head of the list: the rows farther down have to be scrolled to.
    let above = Action::LookFrom(Viewpoint::Above);
    let mut harness = list(&[]);
    harness.get_by_label(&button(above, "4")).click();
    harness.run();
    assert_eq!(asked(&mut harness), [], "only waited for");
    let commands = press(&mut harness, Key::Colon);
    assert_eq!(commands, [Command::SetKey(above, Some(key("Colon")))]);
    carry_out(&mut harness, &commands);
    harness.get_by_label(&button(above, "colon"));
}

#[test]
fn escape_leaves_the_key_and_the_list_as_they_are() {
    let mut harness = list(&[]);
    wait_for(&mut harness, Action::Rock, "R");
    assert_eq!(press(&mut harness, Key::Escape), [], "neither the key nor the list");
    assert!(harness.query_by_label(WAITS).is_none(), "nothing is waited for");
    assert!(
        harness.get_by_label(&button(Action::Rock, "R")).is_focused(),
        "the keyboard stays where it was"
    );
    assert_eq!(press(&mut harness, Key::G), [], "no key is taken any more");
    assert_eq!(press(&mut harness, Key::Escape), [Command::ShowHelp(false)]);
}

#[test]
fn who_goes_on_has_thought_better_of_it() {
    for away in [Key::Tab, Key::ArrowDown] {
        let mut harness = list(&[]);
        wait_for(&mut harness, Action::Rock, "R");
        assert_eq!(press(&mut harness, away), [], "{away:?}");
        assert!(harness.query_by_label(WAITS).is_none(), "{away:?}");
        assert_eq!(press(&mut harness, Key::G), [], "after {away:?}");
    }
    let mut harness = list(&[]);
    wait_for(&mut harness, Action::Rock, "R");
    assert_eq!(press(&mut harness, Key::F1), [Command::ShowHelp(false)]);
    harness.state_mut().help = false;
    harness.run();
    harness.state_mut().help = true;
    harness.run();
    assert!(harness.query_by_label(WAITS).is_none(), "forgotten with the list");
}

#[test]
fn backspace_turns_a_key_off() {
    let mut harness = list(&[]);
    wait_for(&mut harness, Action::Turn, "space bar");
    let commands = press(&mut harness, Key::Backspace);
    assert_eq!(commands, [Command::SetKey(Action::Turn, None)]);
    carry_out(&mut harness, &commands);
    // The space bar presses the button here, and is then given back.
    assert!(harness.get_by_label(&button(Action::Turn, "off")).is_focused());
    assert_eq!(press(&mut harness, Key::Space), [], "waited for");
    let commands = press(&mut harness, Key::Space);
    assert_eq!(commands, [Command::SetKey(Action::Turn, Some(key("Space")))]);
}

#[test]
fn a_key_held_down_to_press_the_button_is_not_taken() {
    let mut harness = list(&[]);
    let held = egui::Event::Key {
        key: Key::Space,
        physical_key: None,
        pressed: true,
        repeat: false,
        modifiers: Modifiers::NONE,
    };
    harness.get_by_label(&button(Action::Rock, "R")).focus();
    harness.run();
    for _ in 0..4 {
        harness.event(held.clone());
        harness.step();
    }
    assert_eq!(asked(&mut harness), [], "one press, held");
    assert!(harness.query_by_label(WAITS).is_some(), "still waited for");
}

#[test]
fn a_taken_key_is_refused_and_another_can_be_pressed() {
    let mut harness = list(&[]);
    wait_for(&mut harness, Action::Turn, "space bar");
    assert_eq!(press(&mut harness, Key::R), [], "R is another's");
    let said = "The key R belongs to “Rock the ring gear, or stop”. Press another key, or change that one first.";
    assert!(harness.query_by_label_contains(said).is_some(), "says whose it is");
    assert_eq!(press(&mut harness, Key::Enter), [], "no key to be given");
    assert!(
        harness
            .query_by_label_contains("That key has a fixed meaning.")
            .is_some(),
        "and says so"
    );
    assert_eq!(
        press(&mut harness, Key::G),
        [Command::SetKey(Action::Turn, Some(key("G")))]
    );
}

#[test]
fn a_key_of_another_place_is_free() {
    let mut harness = list(&[]);
    wait_for(&mut harness, Action::Rock, "R");
    assert_eq!(
        press(&mut harness, Key::B),
        [Command::SetKey(Action::Rock, Some(key("B")))],
        "B keeps a setting in the tooth room only"
    );
}

#[test]
fn usual_keys_come_back_at_one_press() {
    let mut harness = list(&[(Action::Rock, Some("G")), (Action::Turn, None)]);
    harness.get_by_label(&button(Action::Rock, "G"));
    harness.get_by_label("Restore the usual keys").focus();
    harness.run();
    let commands = press(&mut harness, Key::Enter);
    assert_eq!(commands, [Command::UsualKeys]);
    carry_out(&mut harness, &commands);
    harness.get_by_label(&button(Action::Rock, "R"));
    harness.get_by_label(&button(Action::Turn, "space bar"));
}

/// While the list is open, keys do nothing behind it.
#[test]
fn the_window_behind_the_list_is_quiet() {
    for place in Place::ALL {
        let mut harness = list(&[]);
        harness.state_mut().place = place;
        harness.run();
        for name in KeyName::all() {
            let pressed = Key::from_name(name.name()).expect("a key");
            assert_eq!(press(&mut harness, pressed), [], "{pressed:?} at {place:?}");
        }
        assert_eq!(press(&mut harness, Key::ArrowLeft), [], "arrows at {place:?}");
    }
}

/// The list names every action, at every place, text size and ground; nothing sticks out of the window.
#[test]
fn the_list_fits_and_names_every_action() {
    for (percent, theme) in [
        (100, Theme::Paper),
        (130, Theme::Slate),
        (200, Theme::Paper),
        (200, Theme::Slate),
    ] {
        for place in [Place::Start, Place::Gears, Place::ToothRoom] {
            let mut desk = desk(&[(Action::Rock, None)]);
            desk.help = true;
            desk.place = place;
            desk.theme = theme;
            desk.text_size = TextSize::nearest(percent);
            desk.keys_said = Some("The usual keys are used: /somewhere/keys.json cannot be used: line 1 is torn.");
            let mut harness = window(USUAL, desk);
            harness.run();
            let whole = Rect::from_min_size(egui::Pos2::ZERO, USUAL);
            for label in ["Restore the usual keys", "Close", "Press a framed key to change it."] {
                let rect = harness.get_by_label(label).rect();
                assert!(whole.contains_rect(rect), "{percent} % {place:?}: {label} at {rect:?}");
            }
            let said = harness.get_by_label_contains("The usual keys are used:").rect();
            assert!(whole.contains_rect(said), "{percent} % {place:?}: {said:?}");
            for action in Action::all() {
                let word = harness
                    .state()
                    .keys
                    .key(action)
                    .map_or_else(|| "off".to_owned(), KeyName::word);
                let rect = harness.get_by_label(&button(action, &word)).rect();
                assert!(
                    rect.left() >= 0.0 && rect.width() >= 28.0 && rect.height() >= 28.0,
                    "{percent} % {place:?}: {action} at {rect:?}"
                );
            }
        }
    }
}

/// Tab brings each row into view.
#[test]
fn tab_scrolls_the_list() {
    for percent in [100, 200] {
        let mut harness = list(&[]);
        harness.state_mut().text_size = TextSize::nearest(percent);
        harness.run();
        let last = Action::all().last().expect("some");
        wait_for(&mut harness, last, "E");
        let rect = harness.get_by_label_contains(&last.to_string()).rect();
        let close = harness.get_by_label("Close").rect();
        assert!(
            rect.bottom() <= close.top() && rect.top() > 0.0,
            "{percent} %: {rect:?} above {close:?}"
        );
    }
}
