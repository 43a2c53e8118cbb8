//! Pointer and keys on the stage, and who owns them.

use egui::{Key, Modifiers, PointerButton, Pos2, Vec2, pos2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable as _;
use lashwright::view::{Command, Projection, Viewpoint};

use super::{Desk, USUAL, asked, window};

/// A free place of the stage.
const FREE: Pos2 = pos2(800.0, 400.0);

fn drag(harness: &mut Harness<'_, Desk>, from: Pos2, by: Vec2, button: PointerButton, modifiers: Modifiers) {
    let press = |pos: Pos2, pressed: bool| egui::Event::PointerButton {
        pos,
        button,
        pressed,
        modifiers,
    };
    harness.event(egui::Event::PointerMoved(from));
    harness.event(press(from, true));
    harness.run();
    harness.event(egui::Event::PointerMoved(from + by));
    harness.run();
    harness.event(press(from + by, false));
    harness.run();
}

#[test]
fn drag_goes_round_and_the_right_button_shifts() {
    let mut harness = window(USUAL, Desk::with_sets(1));
    drag(
        &mut harness,
        FREE,
        Vec2::new(100.0, 20.0),
        PointerButton::Primary,
        Modifiers::NONE,
    );
    let commands = asked(&mut harness);
    let turned = commands.iter().fold([0.0, 0.0], |[a, e], command| match command {
        Command::Orbit {
            azimuth_rad,
            elevation_rad,
        } => [a + azimuth_rad, e + elevation_rad],
        other => panic!("a drag only goes round: {other:?}"),
    });
    assert!(
        (turned[0] + 35_f64.to_radians()).abs() < 1e-6,
        "100 points to the right: {turned:?}"
    );
    assert!(
        (turned[1] - 7_f64.to_radians()).abs() < 1e-6,
        "20 points down: {turned:?}"
    );

    drag(
        &mut harness,
        FREE,
        Vec2::new(60.0, -30.0),
        PointerButton::Secondary,
        Modifiers::NONE,
    );
    let shifted = asked(&mut harness);
    assert!(!shifted.is_empty(), "the right button does something");
    for command in shifted {
        let Command::Pan { right, up } = command else {
            panic!("the right button only shifts: {command:?}")
        };
        assert!(right >= 0.0 && up >= 0.0, "with the hand: {command:?}");
    }
}

#[test]
fn a_drag_that_begins_on_a_panel_is_no_orbit() {
    let mut harness = window(USUAL, Desk::with_sets(1));
    drag(
        &mut harness,
        pos2(100.0, 200.0),
        Vec2::new(600.0, 100.0),
        PointerButton::Primary,
        Modifiers::NONE,
    );
    let commands = asked(&mut harness);
    assert!(
        !commands.iter().any(|command| matches!(command, Command::Orbit { .. })),
        "{commands:?}"
    );
    // Nor is a press of a button that lies over the stage.
    harness.get_by_label("View: Above").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::LookFrom(Viewpoint::Above)]);
}

/// With Ctrl a drag turns the gears by hand, and the eye stays where it is.
#[test]
fn the_gears_are_turned_by_hand() {
    let mut harness = window(USUAL, Desk::with_sets(2));
    harness.event(egui::Event::ModifiersChanged(Modifiers::COMMAND));
    drag(
        &mut harness,
        FREE,
        Vec2::new(60.0, 0.0),
        PointerButton::Primary,
        Modifiers::COMMAND,
    );
    let commands = asked(&mut harness);
    let teeth: f64 = commands
        .iter()
        .map(|command| match command {
            Command::TurnBy(teeth) => *teeth,
            other => panic!("only turned: {other:?}"),
        })
        .sum();
    assert!((teeth - 1.0).abs() < 0.05, "60 points are a tooth: {teeth}");
}

#[test]
fn the_wheel_zooms_over_the_stage_only() {
    let mut harness = window(USUAL, Desk::with_sets(30));
    let scroll = |harness: &mut Harness<'_, Desk>, at: Pos2| {
        harness.event(egui::Event::PointerMoved(at));
        harness.event(egui::Event::MouseWheel {
            unit: egui::MouseWheelUnit::Line,
            delta: Vec2::new(0.0, 1.0),
            phase: egui::TouchPhase::Move,
            modifiers: Modifiers::NONE,
        });
        harness.run();
    };
    scroll(&mut harness, FREE);
    let zoomed: f64 = asked(&mut harness)
        .iter()
        .map(|command| match command {
            Command::Zoom(notches) => *notches,
            other => panic!("the wheel only zooms: {other:?}"),
        })
        .sum();
    assert!(zoomed > 0.5 && zoomed < 2.0, "one line is about one notch: {zoomed}");
    scroll(&mut harness, pos2(150.0, 250.0));
    assert_eq!(asked(&mut harness), [], "over the list it scrolls the list");
}

/// With large text there is no room for all places side by side: one cell goes from each to the next.
#[test]
fn with_large_text_one_cell_goes_round_the_places() {
    let mut desk = Desk::with_sets(2);
    desk.text_size = lashwright::view::TextSize::nearest(200);
    let mut harness = window(USUAL, desk);
    harness.get_by_label("View: Corner").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::LookFrom(Viewpoint::Pinion)]);
    let mut all = vec![Viewpoint::Corner];
    while all.len() < 20 {
        let next = all[all.len() - 1].next();
        if next == Viewpoint::Corner {
            break;
        }
        all.push(next);
    }
    assert_eq!(all, Viewpoint::ALL, "each once, and round");
}

#[test]
fn keys_act_when_nothing_else_has_the_keyboard() {
    let mut harness = window(USUAL, Desk::with_sets(2));
    for (key, command) in [
        (Key::Num1, Command::LookFrom(Viewpoint::Corner)),
        (Key::Num2, Command::LookFrom(Viewpoint::Pinion)),
        (Key::Num3, Command::LookFrom(Viewpoint::RingGear)),
        (Key::Num4, Command::LookFrom(Viewpoint::Above)),
        (Key::Num5, Command::LookFrom(Viewpoint::Mesh)),
        (Key::Num6, Command::LookFrom(Viewpoint::Drive)),
        (Key::Num7, Command::LookFrom(Viewpoint::Coast)),
        (Key::R, Command::SetRocking(true)),
        (Key::F, Command::SetProjection(Projection::Flat)),
        (Key::Space, Command::SetTurning(true)),
        (Key::Period, Command::TurnTeeth(1)),
        (Key::Comma, Command::TurnTeeth(-1)),
        (Key::Plus, Command::Zoom(1.0)),
    ] {
        harness.key_press(key);
        harness.run();
        assert_eq!(asked(&mut harness), [command], "{key:?}");
    }
    harness.get_by_label("Invented set 2").focus();
    harness.run();
    for key in [Key::Num2, Key::F, Key::Period, Key::Plus] {
        harness.key_press(key);
        harness.run();
        assert_eq!(asked(&mut harness), [], "{key:?} while the list has the keyboard");
    }
}

#[test]
fn arrows_orbit_on_the_stage_and_shift_with_shift() {
    let mut harness = window(USUAL, Desk::with_sets(2));
    harness.get_by_label("Stage").focus();
    harness.run();
    harness.key_press(Key::ArrowRight);
    harness.run();
    let commands = asked(&mut harness);
    assert!(
        matches!(commands[..], [Command::Orbit { azimuth_rad, .. }] if azimuth_rad > 0.0),
        "{commands:?}"
    );
    harness.key_press_modifiers(Modifiers::SHIFT, Key::ArrowUp);
    harness.run();
    let commands = asked(&mut harness);
    assert!(
        matches!(commands[..], [Command::Pan { up, .. }] if up > 0.0),
        "{commands:?}"
    );
}

#[test]
fn the_button_says_what_it_does_next() {
    let mut harness = window(USUAL, Desk::with_sets(1));
    harness.get_by_label("Turn pinion").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::SetTurning(true)]);
    harness.state_mut().turning = true;
    harness.state_mut().turn.teeth(12);
    harness.run();
    harness.get_by_label("Pinion 1\u{a0}turn and 1\u{a0}tooth, Ring gear 0\u{a0}turns and 12\u{a0}teeth");
    harness.get_by_label("Stop").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::SetTurning(false)]);
    harness.get_by_label("Rock ring gear").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::SetRocking(true)]);
    harness.state_mut().turning = false;
    harness.state_mut().rocking = true;
    harness.run();
    harness.get_by_label("Stop rocking").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::SetRocking(false)]);
}

#[test]
fn nobody_asks_for_another_frame_at_rest() {
    let mut harness = window(USUAL, Desk::with_sets(14));
    harness.run();
    let delay = harness.output().viewport_output[&egui::ViewportId::ROOT].repaint_delay;
    assert_eq!(delay, std::time::Duration::MAX, "a window at rest sleeps");
}
