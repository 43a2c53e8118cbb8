//! The four scales, by pointer and by keyboard, and what the teeth say.

use egui::{Key, Modifiers, Vec2, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable as _;
use lashwright::quantity::Units;
use lashwright::view::{Command, Setting};

use super::{Desk, USUAL, asked, window};

const PINION: &str = "Pinion: 0.000\u{a0}mm";

/// The last setting that was asked for.
fn last(harness: &mut Harness<'_, Desk>) -> Setting {
    match asked(harness).last() {
        Some(Command::Set(setting)) => *setting,
        other => panic!("a setting was to be asked for: {other:?}"),
    }
}

fn press_at(harness: &mut Harness<'_, Desk>, label: &str, share: f32) {
    let rect = harness.get_by_label(label).rect();
    let at = rect.center() + vec2(share * (0.5 * rect.width() - 8.0), 6.0);
    for event in [
        egui::Event::PointerMoved(at),
        button(at, true),
        button(at, false),
        egui::Event::PointerMoved(at + Vec2::new(0.0, 200.0)),
    ] {
        harness.event(event);
        harness.run();
    }
}

fn button(pos: egui::Pos2, pressed: bool) -> egui::Event {
    egui::Event::PointerButton {
        pos,
        button: egui::PointerButton::Primary,
        pressed,
        modifiers: Modifiers::NONE,
    }
}

#[test]
fn a_press_on_a_scale_sets_it_where_it_was_pressed() {
    let mut harness = window(USUAL, Desk::with_sets(1));
    for (label, share) in [(PINION, 0.5_f32), ("Ring gear: 0.000\u{a0}mm", -1.0)] {
        press_at(&mut harness, label, share);
        let setting = last(&mut harness);
        let (value, other) = if label == PINION {
            (setting.pinion_mm, setting.wheel_mm)
        } else {
            (setting.wheel_mm, setting.pinion_mm)
        };
        let wanted = f64::from(share) * Setting::MOST.pinion_mm;
        assert!((value - wanted).abs() < 0.006, "{label}: {value} instead of {wanted}");
        assert!(other.abs() < 1e-12, "{label}: the others stay");
    }
    press_at(&mut harness, "Shaft angle: 0.000°", 1.0);
    assert!(
        (last(&mut harness).shaft_angle_deg - 0.1).abs() < 1e-9,
        "the end of the scale"
    );
}

#[test]
fn arrow_keys_step_and_the_stage_stays_quiet() {
    let mut harness = window(USUAL, Desk::with_sets(1));
    harness.get_by_label(PINION).focus();
    harness.run();
    harness.key_press(Key::ArrowRight);
    harness.run();
    assert_eq!(asked(&mut harness).len(), 1, "one step and nothing else");
    harness.key_press_modifiers(Modifiers::SHIFT, Key::ArrowLeft);
    harness.run();
    let setting = last(&mut harness);
    assert!(
        (setting.pinion_mm + 0.05).abs() < 1e-12,
        "ten steps of 5 µm: {setting:?}"
    );
    harness.key_press(Key::R);
    harness.run();
    assert_eq!(
        asked(&mut harness),
        [],
        "letters are quiet while a scale has the keyboard"
    );
}

#[test]
fn inch_steps_are_half_thousandths() {
    let mut desk = Desk::with_sets(1);
    desk.units = Units::Inch;
    let mut harness = window(USUAL, desk);
    harness.get_by_label("Offset: 0.0000\u{a0}in").focus();
    harness.run();
    harness.key_press(Key::ArrowRight);
    harness.run();
    let offset = last(&mut harness).offset_mm;
    assert!((offset - 0.0127).abs() < 1e-9, "{offset}");
}

#[test]
fn what_was_moved_can_be_put_back() {
    let mut harness = window(USUAL, Desk::with_sets(1));
    assert!(
        harness.query_by_label("Setting: Set all to zero").is_none(),
        "nothing to put back"
    );
    harness.state_mut().setting = Setting {
        pinion_mm: 0.1,
        shaft_angle_deg: -0.05,
        ..Setting::default()
    };
    harness.run();
    harness.get_by_label("Pinion: 0.100\u{a0}mm away");
    harness.get_by_label("Shaft angle: 0.050° narrower");
    harness.get_by_label("Setting: Set all to zero").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::Set(Setting::default())]);
}

#[test]
fn lash_and_prints_are_numbers_in_both_units() {
    let mut harness = window(USUAL, Desk::with_sets(1));
    harness.get_by_label("Backlash: 0.198 to 0.220\u{a0}mm");
    harness.get_by_label("Drive: 26\u{a0}%, 0.02 toe, 0.16 face");
    harness.get_by_label("Coast: none");
    harness.state_mut().units = Units::Inch;
    harness.run();
    harness.get_by_label("Backlash: 0.0078 to 0.0087\u{a0}in");
}
