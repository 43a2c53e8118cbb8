//! Which teeth meet again when (`checks/gears.md` 7).

use lashwright::gear::{Hunting, HuntingKind};

/// Wheel and pinion teeth; pinion turns, wheel turns and contacts until the same pair meets again. Formula read on a
/// hunting-tooth calculator's page [50], numbers verified there.
#[test]
fn turns_until_the_same_pair_meets_again() {
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
        println!("{z2}/{z1}: {got:?}");
        assert_eq!(
            (got.pinion_turns, got.wheel_turns, got.contacts),
            (pinion_turns, wheel_turns, contacts),
            "{z2}/{z1}"
        );
        // Simulated tooth by tooth: the pair (0, 0) comes back after that many contacts, not before.
        let back = (1..=contacts).find(|k| k % u64::from(z1) == 0 && k % u64::from(z2) == 0);
        assert_eq!(back, Some(contacts), "{z2}/{z1} counted tooth by tooth");
    }
}

/// Workshop text [27]: non-hunting and partly hunting sets are timed, hunting sets need no marks.
#[test]
fn timing_marks() {
    for (z2, z1, kind) in [
        (39, 13, HuntingKind::NonHunting),
        (35, 10, HuntingKind::PartlyHunting),
        (44, 6, HuntingKind::PartlyHunting),
        (41, 11, HuntingKind::Hunting),
    ] {
        let got = Hunting::of(z1, z2).expect("both have teeth");
        assert_eq!(got.kind, kind, "{z2}/{z1}");
        assert_eq!(got.needs_timing_marks(), kind != HuntingKind::Hunting, "{z2}/{z1}");
    }
}

/// A web page calls 40/10 "4.10, non-hunting" [52]: 40/10 is 4.00; 4.10 is 41/10 and hunts.
#[test]
fn the_wrong_ratio_of_a_web_page() {
    let forty = Hunting::of(10, 40).expect("both have teeth");
    let forty_one = Hunting::of(10, 41).expect("both have teeth");
    assert_eq!(forty.kind, HuntingKind::NonHunting);
    assert_eq!(forty_one.kind, HuntingKind::Hunting);
    assert!((41.0_f64 / 10.0 - 4.10).abs() < 1e-12, "4.10 is 41/10");
}

/// No tooth, no meeting.
#[test]
fn no_teeth() {
    assert_eq!(Hunting::of(0, 41), None);
    assert_eq!(Hunting::of(11, 0), None);
    assert_eq!(Hunting::of(0, 0), None);
}
