//! Panels at the edges: dragged, remembered for each size of text, never out of their range.

use egui::{Pos2, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable as _;
use lashwright::view::{Command, Place, TextSize};

use super::{Desk, USUAL, asked, window};

/// Left edge of the stage: the safety note stands below it.
fn stage_left(harness: &Harness<'_, Desk>) -> f32 {
    harness.get_by_label_contains("Safety. ").rect().left()
}

/// Drags the right edge of the side panel from where it is.
fn drag(harness: &mut Harness<'_, Desk>, from: f32, by: f32) {
    let at = |x: f32| Pos2::new(x, 400.0);
    harness.hover_at(at(from));
    harness.run();
    harness.drag_at(at(from));
    harness.run();
    harness.hover_at(at(from + by));
    harness.run();
    harness.drop_at(at(from + by));
    harness.run();
}

fn gears(percent: u16) -> Desk {
    let mut desk = Desk::with_sets(3);
    desk.place = Place::Gears;
    desk.text_size = TextSize::nearest(percent);
    desk
}

#[test]
fn an_edge_is_dragged_and_its_place_is_to_be_kept() {
    let mut harness = window(USUAL, gears(100));
    let before = stage_left(&harness);
    // The note stands a margin beside the edge; the stage takes what is pressed on its own side of it.
    drag(&mut harness, before - 18.0, 60.0);
    let after = stage_left(&harness);
    assert!((after - before - 58.0).abs() < 3.0, "{before} and {after}");
    let commands = asked(&mut harness);
    let [Command::KeepPanel(name, points)] = &commands[..] else {
        panic!("{commands:?}");
    };
    assert_eq!(name, "gear-sets 100");
    assert!((points - (after - 16.0)).abs() < 2.0, "{points} and {after}");
    // The next time it begins there; at another size of text as usual.
    for (percent, wanted) in [(100, after), (110, f32::NAN)] {
        let mut desk = gears(percent);
        desk.panels.insert(name.clone(), *points);
        let left = stage_left(&window(USUAL, desk));
        let usual = stage_left(&window(USUAL, gears(percent)));
        if percent == 100 {
            assert!((left - wanted).abs() < 2.0, "{left} and {wanted}");
        } else {
            assert!((left - usual).abs() < 0.5, "{left} and {usual}");
        }
    }
}

#[test]
fn no_panel_takes_the_whole_window() {
    for kept in [20.0, 8000.0] {
        let mut desk = gears(100);
        desk.panels.insert("gear-sets 100".to_owned(), kept);
        let left = stage_left(&window(Vec2::new(960.0, 540.0), desk));
        assert!((200.0..=600.0).contains(&left), "{kept}: the stage begins at {left}");
    }
    let mut harness = window(USUAL, gears(100));
    let edge = stage_left(&harness) - 18.0;
    drag(&mut harness, edge, 2000.0);
    let left = stage_left(&harness);
    assert!(left < 0.65 * USUAL.x, "the stage begins at {left}");
}
