//! The debrief, and the list of keys.

use std::sync::Arc;

use egui::Key;
use egui_kittest::kittest::Queryable as _;
use lashwright::bench::Operation;
use lashwright::exercise::{Attempt, par, score};
use lashwright::job::scenarios;
use lashwright::view::bench::{BenchView, DebriefView, ToothShape};
use lashwright::view::{Command, Place, TextSize};

use super::{Desk, USUAL, asked, window};

fn desk() -> Desk {
    let found = scenarios::find("oat-barn-tractor").expect("ships");
    let mut attempt = Attempt::begin(Arc::new(found.exercise), 3).expect("can be played");
    let tooth = ToothShape {
        face_width_mm: 32.0,
        lower_mm: [-5.0, -6.0],
        upper_mm: [3.0, 4.0],
        lean: [1.0, 1.0],
    };
    let par = par(attempt.exercise(), attempt.seed()).expect("it can be played");
    let board = BenchView::new(&attempt, tooth);
    let told = DebriefView::new(&attempt, &board, &score(&attempt, &par), &par);
    assert_eq!(told, None, "nothing is told before the end");
    attempt.apply(&Operation::Finish {});
    let board = BenchView::new(&attempt, tooth);
    let mut desk = Desk::with_sets(1);
    desk.debrief = DebriefView::new(&attempt, &board, &score(&attempt, &par), &par);
    desk.board = Some(board);
    desk.place = Place::Debrief;
    desk
}

#[test]
fn truth_stands_beside_belief_at_every_text_size() {
    for percent in TextSize::STEPS {
        let mut desk = desk();
        desk.text_size = TextSize::nearest(percent);
        let lines = desk.debrief.as_ref().map(|d| d.lines.clone()).unwrap_or_default();
        assert!(!lines.is_empty(), "there is something to tell");
        let harness = window(USUAL, desk);
        for name in lines.into_iter().map(|line| line.name) {
            let label = format!("{name}, wanted");
            let rect = harness.get_by_label_contains(&label).rect();
            assert!(rect.left() >= 0.0 && rect.right() <= USUAL.x, "{percent} %: {rect:?}");
        }
    }
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
        harness.query_by_label("P O: next part, part before").is_some(),
        "listed"
    );
    harness.key_press(Key::Escape);
    harness.run();
    assert!(asked(&mut harness).contains(&Command::ShowHelp(false)), "put away");
}
