//! The list of gear sets and the numbers of the chosen one.

use egui::Key;
use egui::accesskit::Role;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use egui_kittest::{Harness, Node};
use lashwright::quantity::Units;
use lashwright::view::Command;

use super::{Desk, USUAL, asked, window};

/// A row of the list; the title over the numbers has the same words.
fn row<'a>(harness: &'a Harness<'_, Desk>, name: &'a str) -> Node<'a> {
    harness.get_by_role_and_label(Role::RadioButton, name)
}

#[test]
fn a_set_is_chosen_by_pointer() {
    let mut harness = window(USUAL, Desk::with_sets(3));
    row(&harness, "Invented set 2").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::ChooseGears(1)]);
}

#[test]
fn a_set_is_chosen_by_keyboard() {
    let mut harness = window(USUAL, Desk::with_sets(3));
    row(&harness, "Invented set 1").focus();
    harness.run();
    // A list box: the arrow chooses the neighbour and takes the keyboard along.
    harness.key_press(Key::ArrowDown);
    harness.run();
    assert_eq!(asked(&mut harness), [Command::ChooseGears(1)]);
    harness.state_mut().chosen = Some(1);
    harness.run();
    assert!(row(&harness, "Invented set 2").is_focused(), "the keyboard went along");
    harness.key_press(Key::ArrowUp);
    harness.run();
    assert_eq!(asked(&mut harness), [Command::ChooseGears(0)]);
    harness.key_press(Key::ArrowUp);
    harness.run();
    assert_eq!(asked(&mut harness), [], "nothing above the first");
    row(&harness, "Invented set 3").focus();
    harness.run();
    harness.key_press(Key::Space);
    harness.run();
    assert_eq!(
        asked(&mut harness),
        [Command::ChooseGears(2)],
        "the space bar presses what has the keyboard"
    );
}

#[test]
fn the_chosen_set_is_said_not_only_coloured() {
    let mut desk = Desk::with_sets(3);
    desk.chosen = Some(2);
    let harness = window(USUAL, desk);
    let toggled = |label: &str| row(&harness, label).accesskit_node().toggled();
    assert_eq!(toggled("Invented set 3"), Some(egui::accesskit::Toggled::True));
    assert_eq!(toggled("Invented set 1"), Some(egui::accesskit::Toggled::False));
}

#[test]
fn the_chosen_set_is_in_view_in_a_long_list() {
    let mut desk = Desk::with_sets(40);
    desk.chosen = Some(37);
    let harness = window(USUAL, desk);
    let row = row(&harness, "Invented set 38").rect();
    assert!(row.top() > 60.0 && row.bottom() < 520.0, "row at {row:?}");
}

#[test]
fn numbers_of_the_chosen_set_in_both_units() {
    let mut harness = window(USUAL, Desk::with_sets(3));
    harness.get_by_label("Show: Numbers").click();
    harness.run();
    for label in [
        "Teeth: 11 to 41, hunting",
        "Ratio: 3.727",
        "Ring gear diameter: 224\u{a0}mm",
        "Offset: 36\u{a0}mm",
        "Pinion spiral angle: 50.0°",
        "Tooth depth: tapered",
        "Family: large cutter",
    ] {
        harness.get_by_label(label);
    }
    harness.state_mut().units = Units::Inch;
    harness.run();
    harness.get_by_label("Ring gear diameter: 8.819\u{a0}in");
    harness.get_by_label("Offset: 1.417\u{a0}in");
}

#[test]
fn an_empty_list_says_so() {
    let mut harness = window(USUAL, Desk::with_sets(0));
    harness.get_by_label("No gear sets found.");
    harness.get_by_label("Turn pinion").click();
    harness.get_by_label("Rock ring gear").click();
    harness.key_press(Key::Space);
    harness.key_press(Key::R);
    harness.run();
    harness.get_by_label("Show: Numbers").click();
    harness.run();
    harness.get_by_label("Choose a gear set to show it on the stage.");
    harness.run();
    assert_eq!(asked(&mut harness), [], "there is nothing to turn");
}

#[test]
fn a_gear_file_is_opened_by_its_path() {
    let mut harness = window(USUAL, Desk::with_sets(3));
    let path = harness.get_by_label("Gear file");
    path.focus();
    harness.run();
    harness.get_by_label("Gear file").type_text("own/set.toml");
    harness.run();
    harness.key_press(Key::Enter);
    harness.run();
    assert_eq!(asked(&mut harness), [Command::OpenGears("own/set.toml".into())]);
    harness.get_by_label("Open").click();
    harness.run();
    assert_eq!(asked(&mut harness), [], "the box is empty again");
    harness.get_by_label("Gear file").focus();
    harness.run();
    harness.get_by_label("Gear file").type_text(" t.toml ");
    harness.run();
    assert_eq!(asked(&mut harness), [], "letters are typed, and no key of the stage");
    harness.get_by_label("Open").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::OpenGears("t.toml".into())]);
}

#[test]
fn why_a_file_was_not_opened_stands_until_it_is_put_away() {
    let mut desk = Desk::with_sets(3);
    desk.notice = Some("unknown key `nonsense`\n  own.toml:3");
    let mut harness = window(USUAL, desk);
    assert!(
        harness.query_by_label_contains("unknown key `nonsense`").is_some(),
        "the words are there"
    );
    harness.get_by_label("Close").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::PutNoticeAway]);
    harness.key_press(Key::Escape);
    harness.run();
    assert_eq!(asked(&mut harness), [Command::PutNoticeAway]);
}
