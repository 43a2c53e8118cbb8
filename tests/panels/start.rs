//! The start page: exercises, axle (seed), own attempts.

use egui_kittest::kittest::Queryable as _;
use lashwright::job::scenarios;
use lashwright::view::bench::{ExerciseLine, KeptLine};
use lashwright::view::{Command, Place, Saved, TextSize};

use super::{Desk, USUAL, asked, window};

fn desk() -> Desk {
    let mut desk = Desk::with_sets(1);
    desk.place = Place::Start;
    desk.exercises = scenarios::embedded()
        .expect("they ship")
        .iter()
        .map(|found| ExerciseLine::new(&found.source, found.exercise.scenario()))
        .collect();
    desk.kept = vec![KeptLine {
        points: None,
        title: "An axle that was left".to_owned(),
        seed: 7,
        operations: 12,
    }];
    desk.finished = vec![KeptLine {
        title: "An axle that was handed over".to_owned(),
        seed: 3,
        operations: 80,
        points: Some(71.4),
    }];
    desk
}

#[test]
fn an_exercise_is_chosen_and_begun() {
    let mut harness = window(USUAL, desk());
    let second = harness.state().exercises[1].title.clone();
    harness.get_by_label(&second).click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::ChooseExercise(1)]);
    harness.get_by_label("Higher axle number").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::ChooseSeed(2)]);
    harness.get_by_label("Begin").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::Begin]);
}

#[test]
fn an_unfinished_attempt_is_gone_on_with() {
    let mut harness = window(USUAL, desk());
    harness.get_by_label("An axle that was left, axle 7").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::GoOn(0)]);
}

#[test]
fn a_finished_attempt_is_looked_at_again() {
    let mut harness = window(USUAL, desk());
    harness
        .get_by_label_contains("An axle that was handed over, axle 3")
        .click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::OpenFinished(0)]);
}

/// What became of a page lies over the window, says where, and is put away.
#[test]
fn it_is_said_where_a_page_was_saved() {
    let mut desk = desk();
    desk.saved = Some(Saved::UnderWay);
    let mut harness = window(USUAL, desk);
    assert!(harness.query_by_label("Close").is_none(), "nothing to put away yet");
    harness.state_mut().saved = Some(Saved::There(vec!["/somewhere/else/page.html".to_owned()]));
    harness.run();
    harness.get_by_label("/somewhere/else/page.html");
    harness.get_by_label("Close").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::PutSavedAway]);
}

/// From the keyboard alone: Tab leads from the top of the page to each thing in turn, and Enter presses it.
#[test]
fn the_keyboard_reaches_everything() {
    let mut harness = window(USUAL, desk());
    for name in ["Gears", "Tooth room", "An axle that was left, axle 7", "Begin"] {
        let led = (0..60).any(|_| {
            harness.key_press(egui::Key::Tab);
            harness.run();
            harness.get_by_label(name).is_focused()
        });
        assert!(led, "Tab does not lead to {name}");
        harness.key_press(egui::Key::Enter);
        harness.run();
    }
    assert_eq!(
        asked(&mut harness),
        [
            Command::GoTo(Place::Gears),
            Command::GoTo(Place::ToothRoom),
            Command::GoOn(0),
            Command::Begin
        ]
    );
}

#[test]
fn every_exercise_says_what_it_teaches_at_every_text_size() {
    for percent in TextSize::STEPS {
        let mut desk = desk();
        desk.text_size = TextSize::nearest(percent);
        let aims = desk.exercises[0].aims.clone();
        let titles: Vec<String> = desk.exercises.iter().map(|e| e.title.clone()).collect();
        let harness = window(USUAL, desk);
        for title in titles.iter().skip(1) {
            assert!(harness.query_by_label(title).is_some(), "{percent} %: {title}");
        }
        for aim in aims {
            assert!(harness.query_by_label(&aim).is_some(), "{percent} %: {aim}");
        }
    }
}
