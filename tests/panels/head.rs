//! The head of the sheet and the safety note.

use egui_kittest::kittest::Queryable as _;
use lashwright::quantity::Units;
use lashwright::view::{Command, TextSize, Theme, safety_note};

use super::{Desk, USUAL, asked, window};

#[test]
fn name_and_safety_note_are_there_at_every_text_size_on_both_grounds() {
    for theme in Theme::ALL {
        for percent in TextSize::STEPS {
            let mut desk = Desk::with_sets(14);
            desk.theme = theme;
            desk.text_size = TextSize::nearest(percent);
            let harness = window(USUAL, desk);
            harness.get_by_label("Lashwright");
            let note = harness.get_by_label(&format!("Safety. {}", safety_note())).rect();
            assert!(
                note.height() > 12.0 && note.bottom() < USUAL.y,
                "{theme:?} {percent} %: note at {note:?}"
            );
        }
    }
}

#[test]
fn ground_units_and_text_size_are_asked_for() {
    let mut harness = window(USUAL, Desk::with_sets(2));
    for (label, command) in [
        ("Theme: Slate", Command::SetTheme(Theme::Slate)),
        ("Units: inch", Command::SetUnits(Units::Inch)),
        ("Text larger", Command::SetTextSize(TextSize::nearest(110))),
    ] {
        harness.get_by_label(label).click();
        harness.run();
        assert_eq!(asked(&mut harness), [command], "{label}");
    }
    harness.get_by_label("Text smaller").click();
    harness.run();
    assert_eq!(asked(&mut harness), [], "text is not made smaller than 100 %");
    harness.state_mut().text_size = TextSize::nearest(200);
    harness.run();
    harness.get_by_label("Text larger").click();
    harness.run();
    assert_eq!(asked(&mut harness), [], "nor larger than 200 %");
    harness.get_by_label("Text smaller").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::SetTextSize(TextSize::nearest(190))]);
}

#[test]
fn at_large_text_the_side_panel_has_tabs() {
    let mut desk = Desk::with_sets(14);
    desk.text_size = TextSize::nearest(200);
    let mut harness = window(USUAL, desk);
    assert!(
        harness.query_by_label("Ratio: 3.727").is_none(),
        "the list is shown first"
    );
    harness.get_by_label("Show: Numbers").click();
    harness.run();
    harness.get_by_label("Ratio: 3.727");
}
