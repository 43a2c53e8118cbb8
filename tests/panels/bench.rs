//! The bench in panels: parts, forms, precautions, what was read, stale values, slip, hand-over. All boards are of real
//! attempts.

use std::sync::Arc;

use egui::Key;
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use lashwright::bench::{Caution, Cleaned, Measurand, Operation, Precaution, Predicted, Refusal, StemChoice};
use lashwright::exercise::Attempt;
use lashwright::job::scenarios;
use lashwright::quantity::Units;
use lashwright::view::bench::{
    Amount, BenchView, ToothShape, measurand_words, operation_words, outcomes, predicted, stem,
};
use lashwright::view::{AxlePart, Command, Place, TextSize};
use lashwright::words::answer::{caution, refusal};
use lashwright::words::bench::{cleaned, precaution};

use super::{Desk, USUAL, asked, window};

/// Any tooth will do where nobody measures it.
const TOOTH: ToothShape = ToothShape {
    face_width_mm: 32.0,
    lower_mm: [-5.0, -6.0],
    upper_mm: [3.0, 4.0],
    lean: [1.0, 1.0],
};

pub(super) struct Hands {
    attempt: Attempt,
}

impl Hands {
    pub(super) fn at(scenario: &str) -> Self {
        let found = scenarios::find(scenario).expect("ships");
        let attempt = Attempt::begin(Arc::new(found.exercise), 3).expect("can be played");
        Self { attempt }
    }

    pub(super) fn does(mut self, json: &str) -> Self {
        let operation = Operation::from_json(json).expect("an operation");
        self.attempt.apply(&operation);
        self
    }

    pub(super) fn board(&self) -> BenchView {
        BenchView::new(&self.attempt, TOOTH)
    }

    pub(super) fn desk(&self) -> Desk {
        let mut desk = Desk::with_sets(1);
        desk.place = Place::Bench;
        desk.board = Some(self.board());
        desk
    }
}

/// From bare parts to an axle with its gears in mesh; the torque of the pinion alone is written down on the way, that of the
/// whole at the end.
pub(super) const BUILT: [&str; 24] = [
    r#"{"do":"fit_shims","place":"depth","pieces":[0,2,3,8]}"#,
    r#"{"do":"press","ring":"head_cup","force_kn":24.0,"precautions":["press_guard","eye_protection"]}"#,
    r#"{"do":"press","ring":"head_cone","force_kn":24.0,"precautions":["press_guard","eye_protection"]}"#,
    r#"{"do":"press","ring":"tail_cup","force_kn":24.0,"precautions":["press_guard","eye_protection"]}"#,
    r#"{"do":"fit_shims","place":"spacer","pieces":[1,20,21,22]}"#,
    r#"{"do":"fit_spacer","spacer":"own","new":false}"#,
    r#"{"do":"insert_pinion"}"#,
    r#"{"do":"fit_nut","new":true}"#,
    r#"{"do":"tighten_nut","torque_nm":217.0,"wrench":"click_wrench","precautions":["holding_bar"]}"#,
    r#"{"do":"turn","what":"pinion","turns":40.0}"#,
    r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"small_dial_wrench"}"#,
    r#"{"do":"note","what":{"quantity":"rolling_torque"},"value":2.5,"remark":"record 1"}"#,
    r#"{"do":"clean","what":"wheel_seat","precautions":[]}"#,
    r#"{"do":"heat_wheel","to_c":130.0,"precautions":["hot_gloves"]}"#,
    r#"{"do":"fit_wheel","crosswise":true,"precautions":["hot_gloves"]}"#,
    r#"{"do":"wait","minutes":120.0}"#,
    r#"{"do":"tighten_ring_bolts","thread_lock":true}"#,
    r#"{"do":"set_carrier_in","marks_out_teeth":0,"precautions":["hoist"]}"#,
    r#"{"do":"fit_caps","as_marked":true}"#,
    r#"{"do":"turn_adjuster","side":"tooth","notches":17.0}"#,
    r#"{"do":"turn_adjuster","side":"back","notches":17.0}"#,
    r#"{"do":"tighten_caps","to":"full"}"#,
    r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"small_dial_wrench"}"#,
    r#"{"do":"note","what":{"quantity":"rolling_torque"},"value":2.9,"remark":"record 2"}"#,
];

pub(super) const LASH: &str = r#"{"do":"measure","what":{"quantity":"lash","tooth":0},"instrument":"dial_indicator"}"#;

fn only(commands: &[Command]) -> &Operation {
    match commands {
        [Command::Do(operation)] => operation,
        other => panic!("one operation: {other:?}"),
    }
}

fn press(harness: &mut Harness<'_, Desk>, label: &str) {
    harness.get_by_label(label).click();
    harness.run();
}

/// The desk of an exercise with a part chosen.
fn with_part(scenario: &str, part: AxlePart) -> Harness<'static, Desk> {
    let mut desk = Hands::at(scenario).desk();
    desk.part = Some(part);
    window(USUAL, desk)
}

/// Puts the keyboard in a box and types over what stands in it.
fn type_over(harness: &mut Harness<'_, Desk>, label: &str, text: &str) {
    harness.get_by_label(label).focus();
    harness.run();
    harness.key_press_modifiers(egui::Modifiers::COMMAND, Key::A);
    harness.get_by_label(label).type_text(text);
    harness.run();
}

/// The card tells where the approval print lies, and the teeth show it before anything is read.
#[test]
fn the_approval_print_stands_on_the_card_and_on_the_teeth() {
    let desk = Hands::at("oat-barn-tractor").desk();
    let board = desk.board.clone().expect("a bench");
    let [approval] = board.approvals.as_slice() else {
        panic!("one set: {:?}", board.approvals);
    };
    let harness = window(USUAL, desk);
    for (name, flank) in ["Drive", "Coast"].into_iter().zip(&approval.flanks) {
        let words = flank.as_ref().expect("a print").text();
        assert!(
            words.starts_with("middle ")
                && (words.contains(" toe") || words.contains(" heel"))
                && words.contains(" face")
                && words.contains('%'),
            "{words}"
        );
        for label in [format!("{name}: {words}"), format!("the set’s own pattern: {words}")] {
            assert!(harness.query_all_by_label_contains(&label).next().is_some(), "{label}");
        }
    }
    assert!(
        harness
            .query_by_label_contains("Fine dashes: the set’s own pattern")
            .is_some()
    );
    // Nothing on this card is judged by it.
    let harness = window(USUAL, Hands::at("what-the-dial-says").desk());
    assert!(harness.query_by_label_contains("own pattern").is_none());
}

/// Each painted plate is judged by the approval print of its own set.
#[test]
fn plates_have_the_approval_print_of_their_set() {
    let hands = Hands::at("twelve-prints")
        .does(r#"{"do":"measure","what":{"quantity":"plate","plate":0},"instrument":"eye"}"#)
        .does(r#"{"do":"measure","what":{"quantity":"plate","plate":1},"instrument":"eye"}"#);
    let board = hands.board();
    let of = |k: usize| {
        board
            .approval_of(board.prints.get(k))
            .expect("its set has one")
            .gears
            .clone()
    };
    assert_eq!([of(0), of(1)].as_slice(), &hands.attempt.seen().plates[..2]);
    assert_ne!(of(0), of(1), "turn by turn");
}

#[test]
fn work_without_fields_is_one_press() {
    let mut harness = with_part("oat-barn-tractor", AxlePart::Caps);
    press(&mut harness, "Loosen until snug");
    assert_eq!(only(&asked(&mut harness)), &Operation::LoosenCaps {});
}

#[test]
fn a_part_is_chosen_from_the_list_and_by_keys() {
    let mut harness = window(USUAL, Hands::at("oat-barn-tractor").desk());
    press(&mut harness, "Nut and flange");
    assert_eq!(asked(&mut harness), [Command::ChoosePart(Some(AxlePart::Nut))]);
    harness.key_press(Key::P);
    harness.run();
    assert_eq!(asked(&mut harness), [Command::ChoosePart(Some(AxlePart::Axle))]);
}

/// Part, work and its form without a pointer.
#[test]
fn work_is_reached_by_keys() {
    let mut harness = with_part("oat-barn-tractor", AxlePart::RingGear);
    harness.key_press(Key::W);
    harness.run();
    harness.key_press(Key::Enter);
    harness.run();
    let open = harness.get_by_label("Tooth in mesh");
    assert!(open.accesskit_node().is_focused(), "the keyboard is in the first box");
    harness.key_press(Key::Enter);
    harness.run();
    let commands = asked(&mut harness);
    assert!(
        matches!(
            only(&commands),
            Operation::Measure {
                what: Measurand::Lash { tooth: 0 },
                ..
            }
        ),
        "{commands:?}"
    );
}

/// An open list has the arrows and Enter for itself: the picture stays, and nothing is done behind it.
#[test]
fn a_choice_is_made_with_the_arrows() {
    let mut harness = with_part("oat-barn-tractor", AxlePart::RingGear);
    press(&mut harness, "Check backlash");
    harness.get_by_label_contains("Stem: ").click();
    harness.run();
    assert!(
        harness.query_by_label(&stem(StemChoice::AlongNormal)).is_some(),
        "the list is open"
    );
    harness.key_press(Key::ArrowDown);
    harness.run();
    harness.key_press(Key::Enter);
    harness.run();
    assert_eq!(asked(&mut harness), [], "only chosen");
    assert!(
        harness.query_by_label(&stem(StemChoice::AlongNormal)).is_none(),
        "the list is closed"
    );
    press(&mut harness, "Take the reading");
    let commands = asked(&mut harness);
    let Operation::Measure { stem, .. } = only(&commands) else {
        panic!("{commands:?}");
    };
    assert_eq!(*stem, StemChoice::AlongMotion, "one below the first");
}

/// A dial that has been set up stays as it is for the next tooth; Escape closes a list that is open and not the form.
#[test]
fn choices_stay_for_the_next_reading() {
    let mut harness = with_part("what-the-dial-says", AxlePart::RingGear);
    let square = format!("Stem: {}", stem(StemChoice::SquareToTrace));
    for (tooth, chosen_before) in [(0, false), (1, true)] {
        press(&mut harness, "Check backlash");
        if !chosen_before {
            press(&mut harness, &square);
            harness.key_press(Key::Escape);
            harness.run();
            assert!(harness.query_by_label(&square).is_some(), "the form is still there");
            press(&mut harness, &square);
            press(&mut harness, &stem(StemChoice::AlongMotion));
        }
        // People count teeth from 1.
        type_over(&mut harness, "Tooth in mesh", &(tooth + 1).to_string());
        press(&mut harness, "Take the reading");
        let commands = asked(&mut harness);
        let Operation::Measure { stem, what, .. } = only(&commands) else {
            panic!("{commands:?}");
        };
        assert_eq!((*stem, *what), (StemChoice::AlongMotion, Measurand::Lash { tooth }));
        press(&mut harness, "Cancel");
    }
}

#[test]
fn a_form_is_filled_in_with_precautions_and_done_with_enter() {
    let mut harness = with_part("oat-barn-tractor", AxlePart::Nut);
    press(&mut harness, "Tighten to a torque");
    assert!(asked(&mut harness).is_empty(), "the form opens first");
    assert!(
        harness
            .query_by_label_contains(&format!("Caution. {}", caution(Caution::NutReaction)))
            .is_some(),
        "the hazard is said before"
    );
    type_over(&mut harness, "Torque", "230,5");
    press(&mut harness, &precaution(Precaution::HoldingBar));
    press(&mut harness, "Do it");
    let commands = asked(&mut harness);
    let Operation::TightenNut {
        torque_nm,
        wrench,
        precautions,
    } = only(&commands)
    else {
        panic!("{commands:?}");
    };
    assert!((torque_nm - 230.5).abs() < 1e-9, "{torque_nm}");
    assert_eq!(wrench, "click_wrench");
    assert_eq!(precautions, &[Precaution::HoldingBar]);
}

/// The part stays chosen, whether the keyboard was in the form or not.
#[test]
fn escape_puts_the_form_away_and_nothing_else() {
    for in_the_form in [true, false] {
        let mut harness = with_part("oat-barn-tractor", AxlePart::Nut);
        press(&mut harness, "Tighten to a torque");
        if !in_the_form {
            // A press beside the box takes the keyboard out of it.
            press(&mut harness, &precaution(Precaution::HoldingBar));
        }
        let open = harness.get_by_label("Torque").accesskit_node().is_focused();
        assert_eq!(open, in_the_form, "where the keyboard is");
        harness.key_press(Key::Escape);
        harness.run();
        assert!(harness.query_by_label("Torque").is_none(), "the form is away");
        assert_eq!(asked(&mut harness), [], "in the form: {in_the_form}");
        harness.key_press(Key::Escape);
        harness.run();
        assert_eq!(
            asked(&mut harness),
            [Command::ChoosePart(None)],
            "the next one lets go of the part"
        );
    }
}

#[test]
fn letters_typed_in_a_form_are_no_keys() {
    let mut harness = with_part("oat-barn-tractor", AxlePart::Nut);
    press(&mut harness, "Tighten to a torque");
    harness.get_by_label("Torque").focus();
    harness.run();
    asked(&mut harness);
    for key in [Key::P, Key::R, Key::V, Key::T, Key::Num4] {
        harness.key_press(key);
    }
    harness.run();
    assert!(asked(&mut harness).is_empty(), "nothing but text");
}

#[test]
fn a_wrong_number_is_said_and_nothing_is_done() {
    let mut harness = with_part("oat-barn-tractor", AxlePart::Nut);
    press(&mut harness, "Tighten to a torque");
    let why = Amount::NutTorque.read("much", Units::Metric).expect_err("no number");
    type_over(&mut harness, "Torque", "much");
    press(&mut harness, "Do it");
    assert!(asked(&mut harness).is_empty(), "nothing is done");
    assert!(
        harness.query_by_label(&format!("Torque: {why}")).is_some(),
        "and it says why"
    );
}

#[test]
fn what_cannot_be_done_now_says_why() {
    let mut harness = with_part("oat-barn-tractor", AxlePart::Seal);
    assert!(harness.query_by_label("Pull the seal out").is_none(), "not offered");
    press(&mut harness, "Show what is not possible now");
    let why = format!("Pull the seal out. {}", refusal(&Refusal::FlangeInTheWay));
    assert!(harness.query_by_label(&why).is_some(), "with the reason");
}

#[test]
fn what_is_read_is_written_in_the_units_at_hand() {
    let hands = Hands::at("oat-barn-tractor").does(LASH);
    for (units, typed, wanted) in [(Units::Metric, "0.16", 0.16), (Units::Inch, "0.006", 0.1524)] {
        let mut desk = hands.desk();
        desk.units = units;
        let mut harness = window(USUAL, desk);
        harness.get_by_label("Value you read").focus();
        harness.run();
        harness.get_by_label("Value you read").type_text(typed);
        harness.run();
        harness.key_press(Key::Enter);
        harness.run();
        let commands = asked(&mut harness);
        let Operation::Note {
            what,
            value,
            record,
            remark,
        } = only(&commands)
        else {
            panic!("{commands:?}");
        };
        assert_eq!(*what, Measurand::Lash { tooth: 0 });
        assert_eq!(
            (*record, remark.as_str()),
            (Some(1), ""),
            "the reading that it was read from"
        );
        assert!((value - wanted).abs() < 1e-9, "{value}");
    }
}

/// A print is signed by what is read of it: the height of its middle.
#[test]
fn a_print_is_written_down() {
    let hands = Hands::at("oat-barn-tractor")
        .does(r#"{"do":"brush_paste","teeth":[0,1,2],"film":"usual"}"#)
        .does(r#"{"do":"roll","drag_nm":20,"passes":4}"#)
        .does(r#"{"do":"measure","what":{"quantity":"print"},"instrument":"eye"}"#);
    let mut harness = window(USUAL, hands.desk());
    harness.get_by_label("Value you read").focus();
    harness.run();
    harness.get_by_label("Value you read").type_text("-0,2");
    harness.run();
    harness.key_press(Key::Enter);
    harness.run();
    let commands = asked(&mut harness);
    assert!(
        matches!(only(&commands), Operation::Note { what: Measurand::Print {}, value, .. } if (value + 0.2).abs() < 1e-9),
        "{commands:?}"
    );
}

/// The value stands in no word of the window until it is written or asked for.
#[test]
fn reading_is_the_trainees_work() {
    let hands = Hands::at("oat-barn-tractor").does(LASH);
    let value = hands.board().readings[0].values[0].value.expect("shown");
    let digits = lashwright::quantity::number(value, 2);
    let says = |harness: &Harness<'_, Desk>| {
        harness
            .root()
            .children_recursive()
            .filter_map(|node| node.accesskit_node().label())
            .any(|label| label.contains(&format!("{digits}\u{a0}mm")) && !label.contains(", target "))
    };
    let mut harness = window(USUAL, hands.desk());
    harness.run();
    assert!(!says(&harness), "nobody says {digits}");
    harness.state_mut().read_out = true;
    harness.run();
    assert!(says(&harness), "a beginner is told {digits}");
}

#[test]
fn stale_readings_say_so() {
    let hands = Hands::at("oat-barn-tractor")
        .does(LASH)
        .does(r#"{"do":"note","what":{"quantity":"lash","tooth":0},"value":0.16,"record":1}"#)
        .does(r#"{"do":"loosen_caps"}"#);
    let lash = measurand_words(Measurand::Lash { tooth: 0 });
    let mut harness = window(USUAL, hands.desk());
    harness.run();
    harness.get_by_label("Show: Readings").click();
    harness.run();
    assert!(
        harness
            .query_by_label(&format!("Reading 1: {lash}, 0.16\u{a0}mm, stale"))
            .is_some(),
        "in the list"
    );
    assert!(
        harness.query_by_label_contains("Reading 1 is stale.").is_some(),
        "in the answer"
    );
    press(&mut harness, "Show: Sheet");
    assert!(
        harness
            .query_by_label(&format!("{lash}: 0.16\u{a0}mm, stale"))
            .is_some(),
        "on the sheet"
    );
}

#[test]
fn refusals_are_said_with_their_reason() {
    let hands = Hands::at("oat-barn-tractor").does(r#"{"do":"remove_pinion"}"#);
    let what = operation_words(&Operation::RemovePinion {}, Units::Metric);
    let harness = window(USUAL, hands.desk());
    assert!(
        harness
            .query_by_label(&format!("{what}. Not done. {}", refusal(&Refusal::NutHoldsPinion)))
            .is_some(),
        "above the work"
    );
}

#[test]
fn a_slip_is_signed_line_by_line() {
    let mut harness = window(USUAL, Hands::at("oat-barn-tractor").desk());
    press(&mut harness, "Show: Prediction");
    for (about, outcome) in [(Predicted::Lash, 0), (Predicted::DriveHeight, 2)] {
        let row = format!("{}: {}", predicted(about), outcomes(about)[outcome]);
        press(&mut harness, &row);
    }
    press(&mut harness, "How sure: 95 %");
    press(&mut harness, "Sign");
    let commands = asked(&mut harness);
    let [Command::Do(first), Command::Do(second)] = &commands[..] else {
        panic!("{commands:?}");
    };
    let Operation::Predict { about, chances } = &**first else {
        panic!("{first:?}");
    };
    assert_eq!(*about, Predicted::Lash);
    assert!((chances[0] - 0.95).abs() < 1e-12 && (chances.iter().sum::<f64>() - 1.0).abs() < 1e-12);
    assert!(matches!(&**second, Operation::Predict { about: Predicted::DriveHeight, chances } if chances[2] > 0.9));
    for operation in [first, second] {
        operation.check().expect("the core takes it");
    }
}

#[test]
fn handing_over_is_asked_twice() {
    let mut harness = window(USUAL, Hands::at("oat-barn-tractor").desk());
    press(&mut harness, "Sign off");
    assert!(asked(&mut harness).is_empty(), "not at once");
    assert!(
        harness.get_by_label("Keep working").is_focused(),
        "the keyboard goes on where it does no harm"
    );
    press(&mut harness, "Keep working");
    assert!(harness.query_by_label("Sign off now").is_none(), "put away");
    press(&mut harness, "Sign off");
    press(&mut harness, "Sign off now");
    assert_eq!(only(&asked(&mut harness)), &Operation::Finish {});
}

#[test]
fn pieces_are_chosen_by_their_labels() {
    let mut harness = with_part("crush-and-stop", AxlePart::DepthShim);
    press(&mut harness, "Make up the shim pack");
    let board = harness.state().board.clone().expect("a board");
    let work = board
        .works
        .iter()
        .find(|w| w.part == AxlePart::DepthShim && w.name == "Make up the shim pack")
        .expect("offered");
    let lashwright::view::bench::FieldKind::Pieces { pieces, .. } = &work.fields[0].kind else {
        panic!("pieces");
    };
    let (number, mm) = (pieces[0].number, pieces[0].labelled_mm.expect("labelled"));
    press(
        &mut harness,
        &format!("Piece {number}: {}", lashwright::quantity::number(mm, 3)),
    );
    press(&mut harness, "Do it");
    let commands = asked(&mut harness);
    assert!(
        matches!(only(&commands), Operation::FitShims { pieces, .. } if pieces == &[number]),
        "{commands:?}"
    );
}

/// Every form that is offered gives an operation that the core takes, as it stands or after it was filled in.
#[test]
fn every_offer_is_an_operation() {
    for found in scenarios::embedded().expect("they ship") {
        let scenario = &found.source;
        let board = Hands::at(scenario).board();
        let mut now = 0;
        for work in &board.works {
            let blank = work.blank(Units::Metric);
            match work.operation(&blank, Units::Metric) {
                Ok(operation) => operation.check().expect("in its ranges"),
                Err(problem) => panic!("{scenario}, {:?}, {}: {problem}", work.part, work.name),
            }
            now += usize::from(work.not_now.is_none());
        }
        println!("{scenario}: {} offers, {now} of them now", board.works.len());
        assert!(now > 3, "{scenario}: there is something to do");
    }
}

#[test]
fn the_board_fits_at_every_text_size() {
    let hands = Hands::at("oat-barn-tractor").does(LASH);
    for size in [USUAL, egui::vec2(1920.0, 1080.0), egui::vec2(960.0, 540.0)] {
        for percent in TextSize::STEPS.into_iter().filter(|p| size.y > 600.0 || *p <= 130) {
            let mut desk = hands.desk();
            desk.text_size = TextSize::nearest(percent);
            let harness = window(size, desk);
            let whole = egui::Rect::from_min_size(egui::Pos2::ZERO, size);
            for label in [
                "Your reading",
                "Write down",
                "View: Corner",
                "Units: mm",
                "Keys: ?",
                "Pinion: Turn",
            ] {
                let rect = harness.get_by_label(label).rect();
                assert!(whole.contains_rect(rect), "{size:?} {percent} %: {label} at {rect:?}");
            }
        }
    }
}

/// A torque that is written down with the gears in mesh is the whole axle's: it does not stand for the pinion's, and what it
/// is more than that is what the side bearings add.
#[test]
fn the_torque_of_the_whole_does_not_stand_for_the_pinions() {
    let mut hands = Hands::at("depth-stole-my-preload");
    for operation in BUILT {
        let operation = Operation::from_json(operation).expect("an operation");
        let answer = hands.attempt.apply(&operation);
        assert!(answer.done, "{operation:?}: {:?}", answer.refused);
    }
    let harness = window(USUAL, hands.desk());
    let card = |name: &str| {
        let all = harness.query_all_by_label_contains(name);
        all.filter_map(|node| node.accesskit_node().value()).collect::<String>()
    };
    let pinion = card("Pinion rotating torque, target");
    assert!(
        pinion.ends_with(": 2.50\u{a0}N·m, stale") || pinion.ends_with(": 2.50\u{a0}N·m"),
        "{pinion}"
    );
    let sides = card("Added by the side bearings, target");
    assert!(sides.ends_with(": 0.40\u{a0}N·m"), "{sides}");
}

/// The keyboard begins at the first piece, the key that opened the form does not press it, and Ctrl with Enter does the work
/// from there.
#[test]
fn a_pack_is_made_up_by_the_keyboard_alone() {
    let mut harness = with_part("depth-stole-my-preload", AxlePart::DepthShim);
    let led = (0..120).any(|_| {
        harness.key_press(Key::Tab);
        harness.run();
        harness.get_by_label("Make up the shim pack").is_focused()
    });
    assert!(led, "Tab does not lead to the work");
    harness.key_press(Key::Enter);
    harness.run();
    let pressed = |harness: &Harness<'_, Desk>, label: &str| harness.get_by_label(label).accesskit_node().toggled();
    assert!(harness.get_by_label("Piece 0: 1.000").is_focused(), "where it begins");
    assert_eq!(
        pressed(&harness, "Piece 0: 1.000"),
        Some(egui::accesskit::Toggled::False),
        "not by the same key"
    );
    harness.key_press(Key::Space);
    harness.run();
    harness.key_press_modifiers(egui::Modifiers::COMMAND, Key::Enter);
    harness.run();
    let commands = asked(&mut harness);
    let Operation::FitShims { pieces, .. } = only(&commands) else {
        panic!("{commands:?}");
    };
    assert_eq!(pieces[..], [0], "as it stood: the key did not change it");
}

/// What was answered is seen whole, and the room for it is taken from the stage.
#[test]
fn a_long_answer_has_its_lines() {
    let height = |operation: &str, words: &str| {
        let harness = window(USUAL, Hands::at("depth-stole-my-preload").does(operation).desk());
        harness.get_by_label_contains(words).rect().height()
    };
    let title = |operation: &Operation| operation_words(operation, Units::Metric) + ".";
    let short = height(
        r#"{"do":"wait","minutes":1.0}"#,
        &title(&Operation::Wait { minutes: 1.0 }),
    );
    let long = height(r#"{"do":"compare_numbers"}"#, &title(&Operation::CompareNumbers {}));
    println!("{short} and {long} points");
    assert!(long >= short + 10.0, "{short} and {long} points");
}

/// Ctrl with Enter is the form's alone, whatever has the keyboard, and nobody's while something stands over the page.
#[test]
fn enter_does_one_thing() {
    let mut harness = with_part("oat-barn-tractor", AxlePart::Nut);
    press(&mut harness, "Tighten to a torque");
    for label in ["Cancel", "Wrench: click wrench", "Turn by an angle"] {
        harness.get_by_label(label).focus();
        harness.run();
        harness.key_press_modifiers(egui::Modifiers::COMMAND, Key::Enter);
        harness.run();
        let commands = asked(&mut harness);
        assert!(
            matches!(only(&commands), Operation::TightenNut { .. }),
            "{label}: {commands:?}"
        );
        assert!(
            harness.query_by_label("Torque").is_some(),
            "{label}: the form stays as it is"
        );
    }
    harness.state_mut().notice = Some("no such file");
    harness.run();
    harness.key_press_modifiers(egui::Modifiers::COMMAND, Key::Enter);
    harness.run();
    let commands = asked(&mut harness);
    assert!(
        !commands.iter().any(|command| matches!(command, Command::Do(_))),
        "behind the notice: {commands:?}"
    );
}

/// A number that was typed in millimetres is not written down in inches.
#[test]
fn what_was_typed_goes_with_its_units() {
    let mut harness = window(USUAL, Hands::at("what-the-dial-says").does(LASH).desk());
    type_over(&mut harness, "Value you read", "0.15");
    harness.state_mut().units = Units::Inch;
    harness.run();
    press(&mut harness, "Write down");
    assert_eq!(asked(&mut harness), [], "nothing is left to be written");
}

/// Rings that are on stay on when the axle is handed over, and a solvent is told from a splinter.
#[test]
fn what_lies_there_stays_and_cautions_fit() {
    let hands = Hands::at("oat-barn-tractor");
    let before = hands.board().laid.rings_on;
    assert_eq!(before, [true; 3], "assembled");
    let works = hands.board().works;
    let hazards = |name: &str| -> Vec<&str> {
        let found = works.iter().filter(|w| w.name == name);
        found.flat_map(|w| w.hazards.iter().map(|h| h.text.as_str())).collect()
    };
    assert!(
        hazards("Turn by an angle")
            .iter()
            .any(|text| text.contains("holding bar"))
    );
    assert!(
        hazards(cleaned(Cleaned::Threads).as_ref())
            .iter()
            .any(|text| text.contains("Solvent"))
    );
    let washing = hazards(cleaned(Cleaned::Bearings).as_ref());
    assert!(washing.iter().any(|text| text.contains("Solvent")), "{washing:?}");
    assert!(!washing.iter().any(|text| text.contains("splinters")), "{washing:?}");
    assert_eq!(hands.does(r#"{"do":"finish"}"#).board().laid.rings_on, before);
}
