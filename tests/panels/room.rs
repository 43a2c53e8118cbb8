//! The tooth room: what there is room for, what is pressed on the wall chart, comparing two settings.

use egui::{Key, Modifiers, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable as _;
use lashwright::contact::{Film, Pair, Placement, Route};
use lashwright::gear::GearSet;
use lashwright::job::gear_sets;
use lashwright::job::tooth_room::{Chart, Shown, flanks, motion, sheet};
use lashwright::panels::{RoomPictures, RoomSizes};
use lashwright::view::{Command, Place, Setting, TextSize};

use super::{Desk, USUAL, asked, window};

fn pair() -> Pair {
    let found = gear_sets::find("3.73-tapered-ring-224").expect("ships");
    Pair::new(GearSet::new(found.design).expect("exists"))
}

fn shown(pair: &Pair) -> Shown<'_> {
    Shown {
        pair,
        placement: Placement::NOMINAL,
        film: Film::default(),
        route: Route::Fast,
        other: Some(Placement {
            pinion_axial_mm: 0.1,
            ..Placement::NOMINAL
        }),
    }
}

fn pictures(sizes: &RoomSizes) -> RoomPictures {
    let pair = pair();
    let shown = shown(&pair);
    let chart = Chart::new(&pair, Placement::NOMINAL, Film::default())
        .expect("the chart's axes are good")
        .picture(Placement::NOMINAL, sizes.chart);
    RoomPictures {
        flanks: flanks(&shown, sizes.flanks),
        motion: motion(&shown, sizes.motion),
        chart: chart.items,
        chart_grid: chart.grid,
        across_mm: chart.across_mm,
        down_mm: chart.down_mm,
    }
}

fn room(percent: u16) -> Harness<'static, Desk> {
    let mut desk = Desk::with_sets(1);
    desk.place = Place::ToothRoom;
    desk.text_size = TextSize::nearest(percent);
    let mut harness = window(USUAL, desk);
    harness.run();
    let sizes = harness.state().room.expect("the room says what it has room for");
    harness.state_mut().pictures = Some(pictures(&sizes));
    harness.run();
    harness
}

#[test]
fn one_key_and_one_press_lead_there_and_back() {
    let mut harness = window(USUAL, Desk::with_sets(1));
    harness.get_by_label("Place: Tooth room").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::GoTo(Place::ToothRoom)]);
    harness.key_press(Key::T);
    harness.run();
    assert_eq!(asked(&mut harness), [Command::GoTo(Place::ToothRoom)]);
    harness.state_mut().place = Place::ToothRoom;
    harness.run();
    harness.key_press(Key::T);
    harness.run();
    assert_eq!(asked(&mut harness), [Command::GoTo(Place::Gears)]);
}

#[test]
fn pictures_fill_the_room_at_every_text_size() {
    for percent in TextSize::STEPS {
        let mut harness = room(percent);
        let sizes = harness.state().room.expect("sizes");
        for [width, height] in [sizes.flanks, sizes.motion, sizes.chart] {
            assert!(width > 250.0 && height > 120.0, "{percent} %: {sizes:?}");
        }
        let window = egui::Rect::from_min_size(egui::Pos2::ZERO, USUAL);
        if harness.query_by_label("Picture: Drive").is_some() {
            assert!(percent > 100, "at the usual size all three stand side by side");
            // One picture at a time.
            for (tab, name) in [
                ("Drive", "Drive flank"),
                ("Coast", "Coast flank"),
                ("Motion", "Transmission error"),
                ("Chart", "Wall chart"),
            ] {
                harness.get_by_label(&format!("Picture: {tab}")).click();
                harness.run();
                assert!(
                    window.contains_rect(harness.get_by_label(name).rect()),
                    "{percent} %: {name}"
                );
            }
            for button in ["Keep as B", "Swap A and B", "Drop B", "Save picture"] {
                let rect = harness.get_by_label(button).rect();
                assert!(window.contains_rect(rect), "{percent} %: {button} at {rect:?}");
            }
        } else {
            let rects =
                ["Both flanks", "Transmission error", "Wall chart"].map(|name| harness.get_by_label(name).rect());
            for (i, a) in rects.iter().enumerate() {
                assert!(window.contains_rect(*a), "{percent} %: {a:?}");
                for b in &rects[i + 1..] {
                    assert!(
                        !a.shrink(1.0).intersect(b.shrink(1.0)).is_positive(),
                        "{percent} %: {a:?} on {b:?}"
                    );
                }
            }
        }
    }
}

#[test]
fn a_press_on_the_chart_goes_to_that_field() {
    let mut harness = room(100);
    let grid = harness.get_by_label("Wall chart").rect();
    // The second column of the fourth row: P -0.1, G +0.05.
    let at = grid.min + vec2(0.3 * grid.width(), 0.7 * grid.height());
    for pressed in [true, false] {
        harness.event(egui::Event::PointerMoved(at));
        harness.event(egui::Event::PointerButton {
            pos: at,
            button: egui::PointerButton::Primary,
            pressed,
            modifiers: Modifiers::NONE,
        });
        // One frame: a press that lasts is no click.
        harness.step();
    }
    let commands = asked(&mut harness);
    let [Command::Set(setting)] = commands[..] else {
        panic!("one setting: {commands:?}");
    };
    assert!(
        (setting.pinion_mm + 0.1).abs() < 1e-12 && (setting.wheel_mm - 0.05).abs() < 1e-12,
        "{setting:?}"
    );
}

#[test]
fn arrows_with_shift_move_by_a_field() {
    let mut harness = room(100);
    harness.key_press_modifiers(Modifiers::SHIFT, Key::ArrowRight);
    harness.run();
    let commands = asked(&mut harness);
    assert!(
        matches!(commands[..], [Command::Set(Setting { pinion_mm, .. })] if (pinion_mm - 0.1).abs() < 1e-12),
        "{commands:?}"
    );
}

#[test]
fn the_work_line_compares_and_saves() {
    let mut harness = room(100);
    harness.get_by_label("Swap A and B").click();
    harness.run();
    assert_eq!(asked(&mut harness), [], "there is nothing to swap with");
    for (key, command) in [(Key::B, Command::KeepAsOther), (Key::E, Command::SavePicture)] {
        harness.key_press(key);
        harness.run();
        assert_eq!(asked(&mut harness), [command]);
    }
    harness.state_mut().other = Some(Setting::default());
    harness.run();
    harness.get_by_label("Swap A and B").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::SwapWithOther]);
    harness.key_press(Key::N);
    harness.run();
    assert_eq!(asked(&mut harness), [Command::DropOther]);
}

#[test]
fn the_paste_is_set_on_its_own_scale() {
    let mut harness = room(100);
    harness.get_by_label("Compound film: 8.0\u{a0}µm").focus();
    harness.run();
    harness.key_press(Key::ArrowRight);
    harness.run();
    let commands = asked(&mut harness);
    assert!(
        matches!(commands[..], [Command::SetFilm(film)] if (film - 8.5).abs() < 1e-9),
        "{commands:?}"
    );
}

/// The saved sheet holds both flanks, the other placement's outlines and what stands where.
#[test]
fn the_sheet_says_what_it_shows() {
    let pair = pair();
    let text = lashwright::drawing::svg::write(&sheet(&shown(&pair)), lashwright::drawing::Theme::Paper);
    for word in [
        "toe",
        "heel",
        "flank (root)",
        "face (top)",
        "Drive side",
        "Coast side",
        "never a specification",
        "Pinion ±0.000",
    ] {
        assert!(text.contains(word), "nothing of {word}");
    }
    assert!(
        text.contains("stroke-dasharray=\"10 4 2 4\""),
        "the other placement's outline"
    );
}
