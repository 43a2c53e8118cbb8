//! Nothing sticks out of the window or lies on something else, at any text size.

use egui::{Rect, Vec2};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use lashwright::view::{Place, TextSize};
use lashwright::words::{Language, speaking};

use super::{Desk, window};

/// What must be reachable without scrolling.
const ALWAYS: &[&str] = &[
    "Lashwright",
    "Units: mm",
    "Units: inch",
    "Theme: Paper",
    "Theme: Slate",
    "Text smaller",
    "Text larger",
    "View: Corner",
    "Projection: Flat",
    "From the corner. The computed gears in mesh, true to scale. Yellow: marking compound on three teeth of each gear, one \
     of them marked at its tip.",
    "Turn pinion",
    "Rock ring gear",
    "Back one tooth",
    "Forward one tooth",
    "Pinion 0\u{a0}turns and 0\u{a0}teeth, Ring gear 0\u{a0}turns and 0\u{a0}teeth",
];

/// The same, unless text is large: then one cell goes round the places.
const VIEWS: &[&str] = &[
    "View: Pinion",
    "View: Ring gear",
    "View: Above",
    "View: Mesh",
    "View: Drive",
    "View: Coast",
];

/// Numbers of the side panel, which may scroll down but never sideways.
const NUMBERS: &[&str] = &["Backlash: ", "Drive: ", "Coast: "];

#[test]
fn everything_fits_at_every_text_size() {
    for size in [
        Vec2::new(960.0, 540.0),
        Vec2::new(1280.0, 720.0),
        Vec2::new(1920.0, 1080.0),
    ] {
        // The smallest window is for text up to 130 %; the usual one for all sizes.
        for percent in TextSize::STEPS
            .into_iter()
            .filter(|percent| *percent <= 130 || size.y > 700.0)
        {
            let mut desk = Desk::with_sets(14);
            desk.text_size = TextSize::nearest(percent);
            let harness = window(size, desk);
            let whole = Rect::from_min_size(egui::Pos2::ZERO, size);
            let stage = harness.get_by_label_contains("Safety. ").rect().left();
            for number in NUMBERS {
                let rect = harness.get_by_label_contains(number).rect();
                assert!(
                    rect.left() >= 0.0 && rect.right() <= stage,
                    "{size:?} {percent} %: {number} at {rect:?} beside a stage at {stage}"
                );
            }
            let views = if percent < 150 { VIEWS } else { &[] };
            let rects: Vec<(&str, Rect)> = ALWAYS
                .iter()
                .chain(views)
                .map(|label| (*label, harness.get_by_label(label).rect()))
                .collect();
            for (i, (label, rect)) in rects.iter().enumerate() {
                assert!(whole.contains_rect(*rect), "{size:?} {percent} %: {label} at {rect:?}");
                for (other, beside) in &rects[i + 1..] {
                    let shared = rect.shrink(1.0).intersect(beside.shrink(1.0));
                    assert!(
                        !shared.is_positive(),
                        "{size:?} {percent} %: {label} {rect:?} lies on {other} {beside:?}"
                    );
                }
            }
        }
    }
}

/// At the usual size words and numbers of the side panel stand on one line, in the tooth room too.
#[test]
fn numbers_stand_beside_their_words() {
    for place in [Place::Gears, Place::ToothRoom] {
        let mut desk = Desk::with_sets(14);
        desk.place = place;
        let harness = window(Vec2::new(1280.0, 720.0), desk);
        for number in NUMBERS {
            let height = harness.get_by_label_contains(number).rect().height();
            assert!(height < 30.0, "{place:?}: {number} {height} points high");
        }
    }
}

/// Targets at least 28 points high (look page; WCAG 2.2, 2.5.8 asks for 24).
#[test]
fn what_can_be_pressed_is_large_enough() {
    let harness = window(Vec2::new(1280.0, 720.0), Desk::with_sets(14));
    let mut seen = 0;
    for node in harness.root().children_recursive() {
        let role = node.accesskit_node().role();
        if matches!(role, egui::accesskit::Role::Button | egui::accesskit::Role::RadioButton) {
            seen += 1;
            let rect = node.rect();
            assert!(
                rect.height() >= 28.0 && rect.width() >= 28.0,
                "{:?} is {rect:?}",
                node.accesskit_node().label()
            );
        }
    }
    assert!(seen > 20, "only {seen} targets were found");
}

/// Room for other languages: with every word 40 % longer nothing that can be pressed reaches over the window's sides, and nothing
/// in the head lies on something else, at any text size and in windows of four sizes.
#[test]
fn longer_words_have_their_room() {
    let mut wrong = Vec::new();
    for language in [Language::all().next().expect("English"), Language::pseudo()] {
        for size in [[960.0, 540.0], [1024.0, 768.0], [1280.0, 720.0], [1920.0, 1080.0]] {
            for percent in TextSize::STEPS {
                for place in [Place::Start, Place::Gears, Place::ToothRoom] {
                    // The smallest windows are for text up to 130 %.
                    if percent > 130 && size[0] < 1280.0 {
                        continue;
                    }
                    let mut desk = Desk::with_sets(5);
                    desk.text_size = TextSize::nearest(percent);
                    desk.place = place;
                    let rects: Vec<(String, Rect)> = speaking(language, || {
                        let harness = window(Vec2::from(size), desk);
                        let root = harness.root();
                        let pressed = root.children_recursive().filter(|node| {
                            let role = node.accesskit_node().role();
                            matches!(role, egui::accesskit::Role::Button | egui::accesskit::Role::RadioButton)
                        });
                        pressed
                            .map(|node| (node.accesskit_node().label().unwrap_or_default(), node.rect()))
                            .collect()
                    });
                    assert!(rects.len() > 5, "only {} things to press", rects.len());
                    let tag = language.tag();
                    for (label, rect) in &rects {
                        if rect.left() < -0.5 || rect.right() > size[0] + 0.5 {
                            wrong.push(format!("{tag} {size:?} {percent} % {place:?}: {label} at {rect:?}"));
                        }
                    }
                    // The head is the first line of the window.
                    let head: Vec<&(String, Rect)> = rects.iter().filter(|(_, rect)| rect.top() < 12.0).collect();
                    for (index, (label, rect)) in head.iter().enumerate() {
                        for (other, beside) in &head[index + 1..] {
                            if rect.shrink(1.0).intersect(beside.shrink(1.0)).is_positive() {
                                wrong.push(format!("{tag} {size:?} {percent} % {place:?}: {label} lies on {other}"));
                            }
                        }
                    }
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{} of them\n{}", wrong.len(), wrong.join("\n"));
}
