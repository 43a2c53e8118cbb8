//! Which teeth meet again when: least common multiples, and what workshop texts make of them.

use lashwright::gear::{Hunting, HuntingKind};

use super::guide::{Row, Source, checks};

/// Wheel and pinion teeth; pinion turns, wheel turns and contacts until the same pair meets again. Formula read on a
/// hunting-tooth calculator's page; numbers verified by the least common multiple.
fn turns_until_the_same_pair_meets_again() -> Vec<Row> {
    let mut turns = Row::stated(
        "Pinion turns, wheel turns and contacts until the same two teeth meet again, seven sets",
        Source::Published("hunting-tooth calculator's page on the web"),
        "equal",
    );
    let mut counted = Row::stated(
        "Yardstick: the same contacts, counted tooth by tooth",
        Source::Law("least common multiple"),
        "equal",
    );
    for (z2, z1, pinion_turns, wheel_turns, contacts) in [
        (41, 11, 41, 11, 451),
        (41, 10, 41, 10, 410),
        (39, 13, 3, 1, 39),
        (35, 10, 7, 2, 70),
        (40, 13, 40, 13, 520),
        (43, 11, 43, 11, 473),
        (37, 9, 37, 9, 333),
    ] {
        let got = Hunting::of(z1, z2).expect("both have teeth");
        turns.is(
            format_args!("{z2}/{z1}: {got:?}"),
            (got.pinion_turns, got.wheel_turns, got.contacts) == (pinion_turns, wheel_turns, contacts),
        );
        // Simulated tooth by tooth: the pair (0, 0) comes back after that many contacts, not before.
        let back = (1..=contacts).find(|k| k % u64::from(z1) == 0 && k % u64::from(z2) == 0);
        counted.is(format_args!("{z2}/{z1}: {back:?}"), back == Some(contacts));
    }
    vec![turns, counted]
}

/// Workshop text: non-hunting and partly hunting sets are timed, hunting sets need no marks.
fn timing_marks() -> Vec<Row> {
    let mut row = Row::stated(
        "Kind of four sets, and whether they need timing marks",
        Source::Published("workshop text on timing marks"),
        "as stated",
    );
    for (z2, z1, kind) in [
        (39, 13, HuntingKind::NonHunting),
        (35, 10, HuntingKind::PartlyHunting),
        (44, 6, HuntingKind::PartlyHunting),
        (41, 11, HuntingKind::Hunting),
    ] {
        let got = Hunting::of(z1, z2).expect("both have teeth");
        row.is(format_args!("{z2}/{z1}: {:?}", got.kind), got.kind == kind);
        row.is(
            format_args!("{z2}/{z1}: marks"),
            got.needs_timing_marks() == (kind != HuntingKind::Hunting),
        );
    }
    vec![row]
}

/// A web page calls 40/10 "4.10, non-hunting": 40/10 is 4.00; 4.10 is 41/10 and hunts.
fn the_wrong_ratio_of_a_web_page() -> Vec<Row> {
    let mut row = Row::stated(
        "40/10 does not hunt and 41/10 does, against a web page that calls 40/10 \"4.10\"",
        Source::Law("arithmetic"),
        "as stated",
    );
    let forty = Hunting::of(10, 40).expect("both have teeth");
    let forty_one = Hunting::of(10, 41).expect("both have teeth");
    row.is("40/10", forty.kind == HuntingKind::NonHunting);
    row.is("41/10", forty_one.kind == HuntingKind::Hunting);
    let mut ratio = Row::absolute("Yardstick: 4.10 is 41/10", Source::Law("arithmetic"), 1e-12, "");
    ratio.near("41/10", 41.0 / 10.0, 4.10);
    vec![row, ratio]
}

/// No tooth, no meeting.
fn no_teeth() -> Vec<Row> {
    let mut row = Row::stated("Without teeth nothing meets", Source::Law("arithmetic"), "as stated");
    for (z1, z2) in [(0, 41), (11, 0), (0, 0)] {
        row.is(format_args!("{z2}/{z1}"), Hunting::of(z1, z2).is_none());
    }
    vec![row]
}

checks![
    turns_until_the_same_pair_meets_again,
    timing_marks,
    the_wrong_ratio_of_a_web_page,
    no_teeth,
];
