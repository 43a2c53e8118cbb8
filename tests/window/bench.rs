//! A whole exercise without drawing: from the start page to the debrief by commands, kept in a journal, gone on with after
//! the program ended in the middle.

use lashwright::app::{Refusal, Session};
use lashwright::bench::{Measurand, Operation};
use lashwright::job::attempt::replay;
use lashwright::job::gear_sets;
use lashwright::view::bench::{BenchView, note};
use lashwright::view::{AxlePart, Command, Origin, Place, Saved, Setting, Viewpoint};
use lashwright::words::{Language, speaking};

use super::folder::Folder;

const EXERCISE: &str = "oat-barn-tractor";

/// A session with one gear set, whose attempts are kept in a folder of the test.
pub(crate) fn session(folder: &Folder) -> Session {
    let sets = gear_sets::embedded().expect("embedded sets are read");
    let one = sets
        .into_iter()
        .take(1)
        .map(|set| (set.design, Origin::BuiltIn))
        .collect();
    let mut session = Session::new(one)
        .with_attempts_in(Some(folder.path().to_owned()))
        .with_pages_in(Some(folder.path().join("pages")));
    session.finish();
    session
}

fn ask(session: &mut Session, command: Command) {
    session.apply(command).expect("it is carried out");
    session.finish();
}

fn board(session: &Session) -> &BenchView {
    session.view().bench.expect("an attempt is under way")
}

/// Does the work of this name at this part, as its form stands.
fn work(session: &mut Session, part: AxlePart, name: &str) {
    let view = session.view();
    let work = board(session)
        .works
        .iter()
        .find(|w| w.part == part && w.name == name)
        .unwrap_or_else(|| panic!("{part:?}: {name} is offered"));
    assert_eq!(work.not_now, None, "{name} can be done");
    let mut filled = work.blank(view.units);
    // Careful hands tick every precaution.
    filled.precautions.fill(true);
    let operation = work.operation(&filled, view.units).expect("the form is good");
    ask(session, Command::Do(Box::new(operation)));
    let last = board(session).told_back.last().expect("answered");
    assert!(last.answer.done, "{name}: {:?}", last.answer.refused);
    assert!(last.answer.cautions.is_empty(), "{name} was safe");
}

#[test]
fn an_exercise_from_the_start_page_to_the_debrief() {
    let folder = Folder::new("whole");
    let mut session = session(&folder);
    assert_eq!(session.place(), Place::Start, "the program opens there");
    assert_eq!(session.view().bench, None, "no axle is on the bench");
    assert_eq!(
        session.apply(Command::Do(Box::new(Operation::Finish {}))),
        Err(Refusal::NoAttempt)
    );
    assert!(session.choose_exercise(EXERCISE), "it ships");
    ask(&mut session, Command::Begin);
    assert_eq!(session.place(), Place::Bench, "the axle is there");

    // Paint, roll, look; read a dial and a wrench; write both down.
    work(&mut session, AxlePart::RingGear, "Check backlash");
    assert!(session.paste().is_none(), "no paste yet");
    work(&mut session, AxlePart::RingGear, "Brush on marking compound");
    let brushed = session.paste().expect("paste is on the teeth").clone();
    assert_eq!(brushed.flanks, [None, None], "the film is whole");
    let turned = session.turn().steps();
    assert_ne!(turned, 0, "the painted teeth were turned up");
    work(&mut session, AxlePart::RingGear, "Roll the painted teeth");
    let rolled = session.paste().expect("paste is on the teeth").clone();
    assert_eq!(rolled.teeth, brushed.teeth);
    assert!(rolled.clearness > 0.25, "the print stands out: {}", rolled.clearness);
    for flank in &rolled.flanks {
        let gaps = flank.as_ref().expect("rolled").gaps();
        let pressed = gaps.iter().filter(|gap| **gap < 1.0).count();
        assert!(pressed > 0 && pressed < gaps.len(), "a print on the flank: {pressed}");
    }
    work(&mut session, AxlePart::RingGear, "Read the pattern");
    work(&mut session, AxlePart::Pinion, "Turn");
    work(&mut session, AxlePart::Nut, "Measure rotating torque");
    ask(&mut session, Command::SetTurning(true));
    assert!(!board(&session).prints.is_empty(), "a print is to be seen");
    let reading = board(&session).readings.last().expect("read").clone();
    let value = reading.main_value().expect("the wrench shows something");
    ask(&mut session, Command::Do(Box::new(note(&reading, value))));
    assert_eq!(
        board(&session).readings.last().and_then(|r| r.written),
        Some(value),
        "on the sheet, beside its reading"
    );

    // Take it apart down to the bearings, change the cup shim, and hand it over as it lies.
    work(&mut session, AxlePart::Axle, "Take apart");
    assert!(!board(&session).laid.carrier_in, "the carrier is out");
    let lash = board(&session)
        .readings
        .iter()
        .find(|r| matches!(r.what, Measurand::Lash { .. }))
        .expect("read before");
    assert!(lash.stale, "what was read with the carrier in does not hold any more");
    assert_eq!(session.view().debrief, None, "nothing is told before the end");
    ask(&mut session, Command::Do(Box::new(Operation::Finish {})));
    assert_eq!(session.place(), Place::Debrief, "now it is talked through");
    assert!(!session.moving(), "nothing turns where nobody sees it");
    assert!(session.view().debrief.is_some(), "and told");

    // The journal is sealed and comes out again bit for bit.
    let kept = folder.files();
    assert_eq!(kept.len(), 1, "{kept:?}");
    let read = replay(&kept[0]).expect("a journal");
    assert!(read.identical && read.sealed, "{read:?}");
    assert!(session.view().start.kept.is_empty(), "nothing is unfinished");

    // The debrief is a page in the folder of pages when asked for, and it is said at once.
    session.apply(Command::SaveDebrief).expect("there is a debrief");
    assert_eq!(session.view().saved, Some(&Saved::UnderWay), "it is said at once");
    session.finish();
    let page = folder
        .path()
        .join("pages")
        .join(format!("debrief-{EXERCISE}-axle-1-1.html"));
    let bytes = lashwright::store::read_within(&page, 16_000_000).expect("the page is there");
    let text = String::from_utf8(bytes).expect("text");
    assert!(
        text.starts_with("<!DOCTYPE html>") && text.trim_end().ends_with("</html>"),
        "whole"
    );
    let there = Saved::There(vec![page.display().to_string()]);
    assert_eq!(session.view().saved, Some(&there), "it is said where");
    ask(&mut session, Command::PutSavedAway);
    assert_eq!(session.view().saved, None, "and put away");

    // Whoever comes again finds the attempt among the finished ones, and its debrief as it was.
    let told = session.view().debrief.cloned();
    drop(session);
    let mut session = self::session(&folder);
    let listed = session.view().start.finished;
    assert_eq!(listed.len(), 1, "{listed:?}");
    assert!(listed[0].points.is_some(), "with its points");
    ask(&mut session, Command::OpenFinished(0));
    assert_eq!(session.place(), Place::Debrief, "straight to the debrief");
    assert_eq!(session.view().debrief, told.as_ref(), "the same");
    assert_eq!(
        session.apply(Command::OpenFinished(1)),
        Err(Refusal::NoSuchFinished(1)),
        "there is only one"
    );
}

/// What was made of words before another language was chosen is made again.
#[test]
fn another_language_is_spoken_everywhere() {
    let folder = Folder::new("language");
    let mut session = session(&folder);
    let kept_in = session.view().start.kept_in.to_owned();
    let saved_in = session.view().start.saved_in.to_owned();
    // Tests beside this one go on in English: on this thread alone all is said in the other language.
    let english = Language::all().next().expect("English");
    speaking(Language::pseudo(), || ask(&mut session, Command::SetLanguage(english)));
    let start = session.view().start;
    assert_ne!(start.kept_in, kept_in, "where attempts are kept");
    assert_ne!(start.saved_in, saved_in, "where pages are saved");
    assert!(
        start.kept_in.contains(&folder.path().display().to_string()),
        "with the folder itself: {}",
        start.kept_in
    );
}

/// The session is dropped in the middle, as a kill would: what was done is there again, bit for bit.
#[test]
fn an_attempt_is_gone_on_with_after_the_program_ended() {
    let folder = Folder::new("kill");
    let before = {
        let mut session = session(&folder);
        assert!(session.choose_exercise(EXERCISE), "it ships");
        ask(&mut session, Command::ChooseSeed(4));
        ask(&mut session, Command::Begin);
        work(&mut session, AxlePart::RingGear, "Check backlash");
        work(&mut session, AxlePart::Caps, "Loosen until snug");
        board(&session).clone()
    };
    let mut session = session(&folder);
    let start = session.view().start;
    assert_eq!(
        (start.kept.len(), start.kept[0].seed, start.kept[0].operations),
        (1, 4, 2)
    );
    assert_eq!(session.apply(Command::GoOn(7)), Err(Refusal::NoSuchAttempt(7)));
    ask(&mut session, Command::GoOn(0));
    assert_eq!(board(&session), &before, "all of it is there again");
    work(&mut session, AxlePart::Caps, "Torque the bolts");
    drop(session);
    let mut session = self::session(&folder);
    ask(&mut session, Command::GoOn(0));
    assert_eq!(board(&session).told_back.len(), 3, "what was done since is kept too");
}

/// A torn last line is cut off and said.
#[test]
fn a_torn_journal_is_gone_on_with() {
    let folder = Folder::new("torn");
    {
        let mut session = session(&folder);
        assert!(session.choose_exercise(EXERCISE), "it ships");
        ask(&mut session, Command::Begin);
        work(&mut session, AxlePart::Caps, "Loosen until snug");
    }
    let path = folder.files().pop().expect("a journal");
    let whole = lashwright::store::read_within(&path, 1 << 20).expect("a journal");
    lashwright::store::write_whole(&path, &[&whole[..], b"{\"before\":\"12"].concat()).expect("written");
    let mut session = session(&folder);
    ask(&mut session, Command::GoOn(0));
    assert_eq!(board(&session).told_back.len(), 1, "what was whole is there");
    let said = session.view().desk.problem.unwrap_or_default().to_owned();
    assert!(said.contains("is cut off after 13 bytes"), "{said}");
    assert_eq!(
        lashwright::store::read_within(&path, 1 << 20).expect("a journal"),
        whole,
        "the torn end is gone from the file"
    );
}

/// Nothing of the bench moves the free gears, and where the gears of an exercise really stand is not on the stage.
#[test]
fn the_stage_shows_the_designed_place() {
    let folder = Folder::new("stage");
    let mut session = session(&folder);
    let setting = Setting {
        pinion_mm: 0.1,
        ..Setting::default()
    };
    ask(&mut session, Command::Set(setting));
    assert!(session.choose_exercise(EXERCISE), "it ships");
    ask(&mut session, Command::Begin);
    assert_eq!(session.setting(), Setting::default(), "as designed");
    let (bench_pair, bench_count) = session.stage_pair();
    let wheel_teeth = bench_pair.expect("gears").design().wheel_teeth;
    assert_eq!(wheel_teeth, 41, "the gears of the exercise");
    ask(&mut session, Command::TurnTeeth(5));
    ask(&mut session, Command::LookFrom(Viewpoint::Above));
    ask(&mut session, Command::GoTo(Place::Gears));
    assert_eq!(session.setting(), setting, "the free gears stand as they were set");
    assert_eq!(session.turn().steps(), 0, "and have not turned");
    assert_ne!(session.stage_pair().1, bench_count, "other gears are drawn");
    assert_eq!(session.axle_parts().0, None, "and nothing around them");
}

/// Each part that can be seen is found where it appears.
#[test]
fn parts_are_found_where_they_appear() {
    let folder = Folder::new("pick");
    let mut session = session(&folder);
    assert!(session.choose_exercise(EXERCISE), "it ships");
    ask(&mut session, Command::Begin);
    let parts = session.axle_parts().0.expect("there").clone();
    let laid = board(&session).laid.clone();
    let mut found = Vec::new();
    for across in -60..=60 {
        for up in -30..=30 {
            let place = [f64::from(across) / 60.0, f64::from(up) / 60.0];
            if let Some(part) = parts.part_at(session.orbit(), place[0], place[1], &laid)
                && !found.contains(&part)
            {
                found.push(part);
                ask(&mut session, Command::PickAt(place));
                assert_eq!(session.view().desk.part, Some(part), "a click chooses it");
            }
        }
    }
    println!("{found:?}");
    for wanted in [
        AxlePart::RingGear,
        AxlePart::Pinion,
        AxlePart::HeadBearing,
        AxlePart::TailBearing,
        AxlePart::Spacer,
        AxlePart::Nut,
        AxlePart::Case,
        AxlePart::Carrier,
    ] {
        assert!(found.contains(&wanted), "{wanted:?} is to be seen from the corner");
    }
}
