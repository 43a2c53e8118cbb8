//! The bench as hands find it: nothing is undone by a second press, nothing that is typed is lost, the keyboard goes the way
//! the eye goes, and instruments are large enough to be read.

use egui::accesskit::Role;
use egui::{Event, Key, Modifiers, PointerButton, Pos2, Rect, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use lashwright::bench::Operation;
use lashwright::quantity::Units;
use lashwright::view::bench::{FieldKind, Work, tool_words};
use lashwright::view::{AxlePart, Command, Place, TextSize, Viewpoint};
use lashwright::words::Language;
use lashwright::words::bench::precaution;

use super::bench::{Hands, LASH};
use super::{Desk, USUAL, asked, window};

/// The desk of an exercise with a part chosen.
fn with_part(hands: &Hands, part: AxlePart) -> Harness<'static, Desk> {
    let mut desk = hands.desk();
    desk.part = Some(part);
    window(USUAL, desk)
}

fn press(harness: &mut Harness<'_, Desk>, label: &str) {
    harness.get_by_label(label).click();
    harness.run();
}

/// The button goes down and up where the pointer is.
fn press_here(harness: &mut Harness<'_, Desk>, pos: Pos2) {
    for pressed in [true, false] {
        harness.event(Event::PointerButton {
            pos,
            button: PointerButton::Primary,
            pressed,
            modifiers: Modifiers::NONE,
        });
        harness.step();
    }
    harness.step();
}

/// A key with the text that a keyboard sends along.
fn types(harness: &mut Harness<'_, Desk>, text: &str) {
    for c in text.chars() {
        let key = match c {
            '.' => Key::Period,
            '-' => Key::Minus,
            _ => Key::from_name(&c.to_string()).expect("a key"),
        };
        harness.event(Event::Key {
            key,
            physical_key: None,
            pressed: true,
            repeat: false,
            modifiers: Modifiers::NONE,
        });
        harness.event(Event::Text(c.to_string()));
        harness.step();
        harness.step();
    }
}

/// What stands in a box.
fn written(harness: &Harness<'_, Desk>, label: &str) -> String {
    harness.get_by_label(label).value().unwrap_or_default()
}

/// The work that can be done at a part now.
fn offered(harness: &Harness<'_, Desk>, part: AxlePart) -> Vec<Work> {
    let board = harness.state().board.as_ref().expect("a bench");
    let works = board.works.iter();
    works
        .filter(|w| w.part == part && w.not_now.is_none())
        .cloned()
        .collect()
}

/// Work that was done lets other work come to its place. Until the hand has moved, a press there is no press of that.
#[test]
fn a_second_press_does_not_undo_the_first() {
    let hands = Hands::at("oat-barn-tractor");
    let mut harness = with_part(&hands, AxlePart::Caps);
    let first = "Loosen until snug";
    let at = harness.get_by_label(first).rect().center();
    harness.hover_at(at);
    harness.step();
    press_here(&mut harness, at);
    assert_eq!(
        asked(&mut harness),
        [Command::Do(Box::new(Operation::LoosenCaps {}))],
        "once"
    );
    harness.state_mut().board = Some(hands.does(r#"{"do":"loosen_caps"}"#).board());
    harness.run();
    let now = offered(&harness, AxlePart::Caps);
    let under = now.iter().find(|work| {
        let rect = harness.query_by_label(&work.name).map(|node| node.rect());
        rect.is_some_and(|rect| rect.contains(at))
    });
    let under = under.expect("other work came to the place").name.clone();
    assert_ne!(under, first);
    let forms = |harness: &Harness<'_, Desk>| harness.query_by_label("Cancel").is_some();
    press_here(&mut harness, at);
    assert_eq!(asked(&mut harness), [], "“{under}” came under a hand that rests");
    assert!(!forms(&harness), "nor is its form opened");
    harness.hover_at(at + vec2(60.0, 0.0));
    harness.step();
    harness.hover_at(at);
    harness.step();
    press_here(&mut harness, at);
    assert!(
        !asked(&mut harness).is_empty() || forms(&harness),
        "a hand that went there presses it"
    );
}

/// The second press of a double click is none, on the button that does the work too.
#[test]
fn a_double_click_does_the_work_once() {
    let mut harness = with_part(&Hands::at("oat-barn-tractor"), AxlePart::Nut);
    press(&mut harness, "Tighten to a torque");
    let at = harness.get_by_label("Do it").rect().center();
    harness.hover_at(at);
    harness.step();
    let mut press_within_a_frame = |times: usize| {
        for pressed in [true, false].repeat(times) {
            harness.input_mut().events.push(Event::PointerButton {
                pos: at,
                button: PointerButton::Primary,
                pressed,
                modifiers: Modifiers::NONE,
            });
        }
        harness.step();
        let commands = asked(&mut harness);
        commands.iter().filter(|c| matches!(c, Command::Do(_))).count()
    };
    // Frames of a test are a quarter of a second apart: two of them are a double click.
    let done = [press_within_a_frame(1), press_within_a_frame(1)];
    assert_eq!(done, [1, 0], "in two frames");
    for _ in 0..4 {
        assert_eq!(press_within_a_frame(0), 0);
    }
    assert_eq!(press_within_a_frame(1), 1, "the same again, later");
    let mut harness = with_part(&Hands::at("oat-barn-tractor"), AxlePart::Nut);
    press(&mut harness, "Tighten to a torque");
    harness.hover_at(at);
    harness.step();
    for pressed in [true, false, true, false] {
        harness.input_mut().events.push(Event::PointerButton {
            pos: at,
            button: PointerButton::Primary,
            pressed,
            modifiers: Modifiers::NONE,
        });
    }
    harness.run();
    let commands = asked(&mut harness);
    let count = commands.iter().filter(|c| matches!(c, Command::Do(_))).count();
    assert_eq!(count, 1, "in one frame that took long: {commands:?}");
}

/// Who asks to sign off and presses once more has not signed off.
#[test]
fn the_question_is_not_answered_by_the_press_that_asked() {
    let mut harness = window(USUAL, Hands::at("oat-barn-tractor").desk());
    let at = harness.get_by_label("Sign off").rect().center();
    harness.hover_at(at);
    harness.step();
    for _ in 0..3 {
        press_here(&mut harness, at);
    }
    assert_eq!(asked(&mut harness), []);
    assert!(harness.query_by_label("Sign off now").is_some(), "it is still asked");
}

/// A number that is typed while nothing has the keyboard goes to the form, and moves nothing else.
#[test]
fn digits_go_to_the_form() {
    let mut harness = with_part(&Hands::at("oat-barn-tractor"), AxlePart::Nut);
    press(&mut harness, "Tighten to a torque");
    use lashwright::bench::Precaution::HoldingBar;
    press(&mut harness, &precaution(HoldingBar));
    assert!(!harness.get_by_label("Torque").is_focused(), "nothing has the keyboard");
    types(&mut harness, "23.5");
    assert_eq!(written(&harness, "Torque"), "23.5");
    assert!(harness.get_by_label("Torque").is_focused(), "the box has it now");
    assert_eq!(asked(&mut harness), [], "nothing else was asked for");
    // Without a form digits are keys of the stage.
    press(&mut harness, "Cancel");
    types(&mut harness, "3");
    assert_eq!(
        asked(&mut harness),
        [Command::LookFrom(Viewpoint::ALL[2])],
        "the third place to look from"
    );
}

/// The same for the value of an instrument that was not written down yet.
#[test]
fn digits_go_to_the_reading() {
    let mut harness = window(USUAL, Hands::at("oat-barn-tractor").does(LASH).desk());
    harness.run();
    harness.key_press(Key::Escape);
    harness.run();
    asked(&mut harness);
    types(&mut harness, "0.16");
    assert_eq!(written(&harness, "Value you read"), "0.16");
    assert_eq!(asked(&mut harness), []);
}

/// Whoever comes to a box writes over what stands in it, by pointer, by Tab and by a key.
#[test]
fn a_box_is_written_over() {
    for way in ["pointer", "Tab", "key"] {
        let mut harness = with_part(&Hands::at("oat-barn-tractor"), AxlePart::RingGear);
        let name = "Tooth in mesh";
        if way == "key" {
            harness.key_press(Key::W);
            harness.run();
            harness.key_press(Key::Enter);
            harness.run();
        } else {
            press(&mut harness, "Check backlash");
        }
        if way == "pointer" {
            harness.key_press(Key::Tab);
            harness.run();
            press(&mut harness, name);
        } else if way == "Tab" {
            harness.key_press(Key::Tab);
            harness.run();
            harness.key_press_modifiers(Modifiers::SHIFT, Key::Tab);
            harness.run();
            harness.run();
        }
        assert!(harness.get_by_label(name).is_focused(), "{way}");
        assert_eq!(written(&harness, name), "1");
        types(&mut harness, "27");
        assert_eq!(written(&harness, name), "27", "by {way}");
    }
}

/// Where the keyboard goes with Tab, one thing after the other.
fn way_of_the_keyboard(harness: &mut Harness<'_, Desk>) -> Vec<(String, Rect)> {
    let mut way: Vec<(String, Rect)> = Vec::new();
    for _ in 0..90 {
        harness.key_press(Key::Tab);
        harness.run();
        let focused = harness.root().children_recursive().find_map(|node| {
            let access = node.accesskit_node();
            (access.is_focused() && access.role() != Role::Window)
                .then(|| (access.label().unwrap_or_default(), node.rect()))
        });
        let Some(focused) = focused else { continue };
        if way.contains(&focused) {
            break;
        }
        way.push(focused);
    }
    way
}

#[test]
fn the_keyboard_goes_as_the_eye_goes() {
    for place in [
        Place::Start,
        Place::Bench,
        Place::Gears,
        Place::ToothRoom,
        Place::Debrief,
    ] {
        let mut desk = if place == Place::Debrief {
            super::debrief::desk()
        } else {
            Hands::at("oat-barn-tractor").desk()
        };
        desk.place = place;
        let mut harness = window(USUAL, desk);
        let way = way_of_the_keyboard(&mut harness);
        let head = way.iter().take_while(|(_, rect)| rect.bottom() < 42.0).count();
        assert!(head >= 8, "{place:?}: {head} in the head of {way:?}");
        for pair in way[..head].windows(2) {
            assert!(pair[0].1.left() < pair[1].1.left(), "{place:?}: {pair:?}");
        }
        assert!(
            way[head..].iter().all(|(_, rect)| rect.top() > 40.0),
            "{place:?}: nothing of the head comes later"
        );
    }
    let mut harness = window(USUAL, Hands::at("oat-barn-tractor").desk());
    let way = way_of_the_keyboard(&mut harness);
    let at = |label: &str| {
        way.iter()
            .position(|(l, _)| l == label)
            .unwrap_or_else(|| panic!("{label} in {way:?}"))
    };
    let order = [
        "Sign off",
        "View: Corner",
        "Pinion: Turn",
        "Whole axle",
        "Show: Readings",
    ]
    .map(at);
    assert!(order.is_sorted(), "card, stage, what lies below it, lists: {order:?}");
}

#[test]
fn signing_off_has_a_key_that_asks_first() {
    for percent in [100, 200] {
        let mut desk = Hands::at("oat-barn-tractor").desk();
        desk.text_size = TextSize::nearest(percent);
        let mut harness = window(USUAL, desk);
        harness.run();
        harness.key_press(Key::S);
        harness.run();
        harness.run();
        assert_eq!(asked(&mut harness), [], "only asked");
        assert!(harness.get_by_label("Keep working").is_focused(), "{percent} %");
        harness.key_press_modifiers(Modifiers::SHIFT, Key::Tab);
        harness.run();
        harness.key_press(Key::Enter);
        harness.run();
        assert_eq!(asked(&mut harness), [Command::Do(Box::new(Operation::Finish {}))]);
    }
}

fn image(harness: &Harness<'_, Desk>, starts: &str) -> Vec<Rect> {
    let nodes = harness.root().children_recursive();
    nodes
        .filter(|node| {
            let access = node.accesskit_node();
            access.role() == Role::Image && access.label().is_some_and(|label| label.starts_with(starts))
        })
        .map(|node| node.rect())
        .collect()
}

/// An instrument is large enough for its graduations, and larger on a key, which puts it back too.
#[test]
fn an_instrument_can_be_read() {
    let dial = tool_words("dial_indicator");
    let mut harness = window(USUAL, Hands::at("oat-barn-tractor").does(LASH).desk());
    harness.run();
    let side = |harness: &Harness<'_, Desk>| {
        let all = image(harness, &dial);
        let [rect] = all[..] else { panic!("one dial: {all:?}") };
        rect.width().min(rect.height())
    };
    let small = side(&harness);
    assert!(small >= 240.0, "{small} points");
    harness.key_press(Key::Escape);
    harness.run();
    harness.key_press(Key::M);
    harness.run();
    let large = side(&harness);
    assert!(large > 1.15 * small, "{small} and {large}");
    assert!(
        harness.query_by_label("Value you read").is_some(),
        "its box is still there"
    );
    harness.key_press(Key::M);
    harness.run();
    assert!((side(&harness) - small).abs() < 0.5);
}

/// What was read before some other work does not come back to hand.
#[test]
fn an_old_instrument_stays_away() {
    let hands = Hands::at("oat-barn-tractor").does(LASH);
    let mut harness = window(USUAL, hands.desk());
    harness.run();
    assert!(harness.query_by_label("Value you read").is_some(), "just read");
    let hands = hands.does(r#"{"do":"note","what":{"quantity":"lash","tooth":0},"value":0.16,"record":1}"#);
    harness.state_mut().board = Some(hands.board());
    harness.run();
    assert!(harness.query_by_label("Value you read").is_some(), "and written down");
    harness.state_mut().board = Some(hands.does(r#"{"do":"loosen_caps"}"#).board());
    harness.run();
    assert!(
        harness.query_by_label("Value you read").is_none(),
        "the caps were loosened"
    );
}

/// A plate is held up while it is judged: large, with the name of its set, and nothing of another plate on it.
#[test]
fn a_plate_is_held_up() {
    let hands = Hands::at("twelve-prints")
        .does(r#"{"do":"measure","what":{"quantity":"plate","plate":0},"instrument":"eye"}"#)
        .does(r#"{"do":"measure","what":{"quantity":"plate","plate":1},"instrument":"eye"}"#);
    let gears = hands.board().prints[1].gears.clone().expect("its set is named");
    for size in [USUAL, vec2(1024.0, 768.0), vec2(960.0, 540.0)] {
        let mut desk = hands.desk();
        desk.part = Some(AxlePart::Plates);
        let mut harness = window(size, desk);
        harness.run();
        let widths = |harness: &Harness<'_, Desk>| -> Vec<f32> {
            image(harness, "Drive side").iter().map(Rect::width).collect()
        };
        assert!(
            widths(&harness).iter().any(|w| *w >= 300.0),
            "{size:?}: {:?}",
            widths(&harness)
        );
        let labels: Vec<String> = harness
            .root()
            .children_recursive()
            .filter_map(|node| node.accesskit_node().label())
            .collect();
        assert!(!labels.iter().any(|l| l.contains("Dash-dot")), "no other plate on it");
        if size == USUAL {
            assert!(harness.query_all_by_label(&gears).next().is_some(), "{gears}");
            let judge = offered(&harness, AxlePart::Plates);
            let judge = judge
                .iter()
                .find(|w| w.plate() == Some(1) && !w.reads)
                .expect("offered");
            press(&mut harness, &judge.name);
            assert!(widths(&harness).iter().any(|w| *w >= 300.0), "while it is judged");
        }
    }
}

/// A list that was scrolled in one exercise is seen from its top in the next.
#[test]
fn another_exercise_is_read_from_its_top() {
    let mut harness = window(vec2(1280.0, 600.0), Hands::at("dairy-van-light-axle").desk());
    harness.run();
    let title = |harness: &Harness<'_, Desk>| {
        let title = harness.state().board.as_ref().expect("a bench").title.clone();
        harness.query_by_label(&title).map(|node| node.rect().top())
    };
    let before = title(&harness).expect("seen");
    harness.hover_at(Pos2::new(100.0, 200.0));
    harness.step();
    harness.event(Event::MouseWheel {
        unit: egui::MouseWheelUnit::Point,
        delta: vec2(0.0, -300.0),
        phase: egui::TouchPhase::Move,
        modifiers: Modifiers::NONE,
    });
    harness.run_steps(6);
    assert!(
        title(&harness).is_none_or(|top| top < before - 50.0),
        "the card was scrolled"
    );
    harness.state_mut().board = Some(Hands::at("oat-barn-tractor").board());
    harness.run_steps(3);
    let after = title(&harness).expect("seen");
    assert!((after - before).abs() < 1.0, "{before} and {after}");
}

/// Pieces are named in the units that were chosen, in the list too.
#[test]
fn pieces_are_named_in_the_units_at_hand() {
    let hands = Hands::at("shim-drawer");
    let board = hands.board();
    let options = board
        .works
        .iter()
        .find_map(|work| {
            work.fields.iter().find_map(|field| match &field.kind {
                FieldKind::Choice { options, .. } if work.part == AxlePart::Kit => Some(options.clone()),
                _ => None,
            })
        })
        .expect("pieces lie there");
    for option in &options {
        let (metric, inch) = (option.text(Units::Metric), option.text(Units::Inch));
        assert!(metric.contains("\u{a0}mm") && !metric.contains("\u{a0}in"), "{metric}");
        assert!(inch.contains("\u{a0}in") && !inch.contains("mm"), "{inch}");
    }
}

/// Languages are chosen where units and theme are, by their own names.
#[test]
fn a_language_is_chosen_in_the_head() {
    for percent in TextSize::STEPS {
        let mut desk = Desk::with_sets(2);
        desk.text_size = TextSize::nearest(percent);
        let mut harness = window(USUAL, desk);
        let english = Language::all().next().expect("English");
        let label = format!("Language: {}", english.own_name());
        harness.get_by_role_and_label(Role::Button, &label).click();
        harness.run();
        let all: Vec<String> = harness
            .root()
            .children_recursive()
            .filter(|node| node.accesskit_node().role() == Role::RadioButton)
            .filter_map(|node| node.accesskit_node().label())
            .filter(|label| label.starts_with("Language: "))
            .collect();
        assert_eq!(
            all.len(),
            Language::all().count(),
            "each once, and none that only tests: {all:?}"
        );
        harness.get_by_role_and_label(Role::RadioButton, &label).click();
        harness.run();
        assert_eq!(asked(&mut harness), [Command::SetLanguage(english)], "{percent} %");
    }
}
