//! The debrief, and the list of keys.

use std::sync::Arc;

use egui::Key;
use egui_kittest::kittest::Queryable as _;
use lashwright::bench::Operation;
use lashwright::exercise::{Attempt, Debrief};
use lashwright::job::scenarios;
use lashwright::view::bench::{BenchView, DebriefView, ToothShape};
use lashwright::view::{Command, Place, TextSize};
use lashwright::words::debrief as words;

use super::{Desk, USUAL, asked, window};

pub(super) fn desk() -> Desk {
    let found = scenarios::find("oat-barn-tractor").expect("ships");
    let mut attempt = Attempt::begin(Arc::new(found.exercise), 3).expect("can be played");
    let tooth = ToothShape {
        face_width_mm: 32.0,
        lower_mm: [-5.0, -6.0],
        upper_mm: [3.0, 4.0],
        lean: [1.0, 1.0],
    };
    assert!(Debrief::of(&attempt).is_err(), "nothing is told before the end");
    attempt.apply(&Operation::Finish {});
    let board = BenchView::new(&attempt, tooth);
    let mut desk = Desk::with_sets(1);
    let debrief = Debrief::of(&attempt).expect("it was handed over");
    desk.debrief = Some(DebriefView::new(&attempt, &debrief));
    desk.board = Some(board);
    desk.place = Place::Debrief;
    desk
}

#[test]
fn truth_stands_beside_belief_at_every_text_size() {
    for percent in TextSize::STEPS {
        let mut desk = desk();
        desk.text_size = TextSize::nearest(percent);
        let standings = desk.debrief.as_ref().map(|d| d.standings.clone()).unwrap_or_default();
        assert!(!standings.is_empty(), "there is something to tell");
        let harness = window(USUAL, desk);
        for name in standings.into_iter().map(|s| words::standing::name(s.what)) {
            let label = format!("{name}, target");
            let rect = harness.get_by_label_contains(&label).rect();
            assert!(rect.left() >= 0.0 && rect.right() <= USUAL.x, "{percent} %: {rect:?}");
        }
    }
}

/// A loss names where it was lost as the log numbers it: by operation. "Step" is how hard an exercise is.
#[test]
fn losses_name_operations_as_the_log_does() {
    let desk = desk();
    let debrief = desk.debrief.clone().expect("it was handed over");
    let done = desk.board.as_ref().map_or(0, |b| b.told_back.len());
    let harness = window(USUAL, desk);
    let placed: Vec<_> = debrief
        .losses
        .iter()
        .filter_map(|loss| Some((loss, loss.operation?)))
        .filter(|(loss, _)| loss.points >= 0.05)
        .collect();
    assert!(!placed.is_empty(), "something was lost at an operation");
    for (loss, operation) in placed {
        assert!(
            usize::try_from(operation).is_ok_and(|o| o <= done),
            "{operation} is in the log"
        );
        let label = format!(", operation {operation}: {}", loss.why);
        assert!(harness.query_by_label_contains(&label).is_some(), "{label}");
    }
}

/// The numbers stand in the page as they stand in the debrief, and the page can be had as a file.
#[test]
fn the_reference_way_is_told_and_the_page_can_be_saved() {
    let desk = desk();
    let debrief = desk.debrief.clone().expect("it was handed over");
    let mut harness = window(USUAL, desk);
    let words = format!("true values hidden: {:.0} points.", debrief.reference_total);
    assert!(harness.query_by_label_contains(&words).is_some(), "{words}");
    assert!(debrief.reference.len() > 1, "the axle asks for more than one build");
    for build in &debrief.reference {
        assert!(
            harness.query_all_by_label_contains(&build.name).next().is_some(),
            "{}",
            build.name
        );
    }
    for heading in ["Your builds", "What was hidden", "What was not as drawn"] {
        assert!(harness.query_by_label(heading).is_some(), "{heading}");
    }
    harness.get_by_label("Save page").click();
    harness.run();
    assert_eq!(asked(&mut harness), [Command::SaveDebrief]);
}

#[test]
fn the_keys_are_listed_on_f1() {
    let mut harness = window(USUAL, desk());
    harness.key_press(Key::F1);
    harness.run();
    assert_eq!(asked(&mut harness), [Command::ShowHelp(true)]);
    harness.state_mut().help = true;
    harness.state_mut().place = Place::Bench;
    harness.run();
    assert!(
        harness
            .query_by_label("Change the key of “Choose the next part”: P")
            .is_some(),
        "listed"
    );
    harness.key_press(Key::Escape);
    harness.run();
    assert!(asked(&mut harness).contains(&Command::ShowHelp(false)), "put away");
}

/// A measuring exercise has no builds and no setting to tell of; the reference's readings of the same axle are told.
#[test]
fn a_measuring_exercise_tells_no_builds() {
    let found = scenarios::find("what-the-dial-says").expect("ships");
    let mut attempt = Attempt::begin(Arc::new(found.exercise), 3).expect("can be played");
    attempt.apply(&Operation::Finish {});
    let mut desk = desk();
    let debrief = Debrief::of(&attempt).expect("it was handed over");
    let tooth = ToothShape {
        face_width_mm: 32.0,
        lower_mm: [-5.0, -6.0],
        upper_mm: [3.0, 4.0],
        lean: [1.0, 1.0],
    };
    desk.board = Some(BenchView::new(&attempt, tooth));
    let told = DebriefView::new(&attempt, &debrief);
    let log = told.reference_log.clone();
    desk.debrief = Some(told);
    let harness = window(USUAL, desk);
    for heading in ["Your builds", "What was hidden", "What was not as drawn"] {
        assert!(harness.query_by_label(heading).is_none(), "{heading}");
    }
    assert!(log.len() > 3, "{log:?}");
    let readings: Vec<_> = log.iter().filter(|entry| !entry.answer.readings.is_empty()).collect();
    assert!(readings.len() > 3, "{log:?}");
    for entry in readings {
        let shown = entry.sentences.first().expect("what it showed");
        assert!(
            harness.query_all_by_label_contains(shown.as_str()).next().is_some(),
            "{shown}"
        );
    }
}
