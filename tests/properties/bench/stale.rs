//! A reading is struck out when something that it depends on has changed, and not before.

use lashwright::bench::{Bench, Cleaned, Measurand, Operation};
use lashwright::job::scenarios;
use proptest::prelude::*;

use super::super::whole::whole;

/// The axle of an exercise, whole.
fn axle(name: &str) -> Bench {
    let exercise = scenarios::find(name).expect("embedded").exercise;
    let depth_mm = exercise.scenario().start.old_depth_shim_mm;
    whole(&exercise, 5, depth_mm)
}

/// Does an operation that has to be done; numbers of the records that it struck out.
fn does(bench: &mut Bench, json: &str) -> Vec<u32> {
    let operation = Operation::from_json(json).unwrap_or_else(|e| panic!("{json}: {e}"));
    let answer = bench.apply(&operation);
    assert!(answer.done, "{json}: {:?}", answer.refused);
    answer.stale
}

/// Takes a reading; its number.
fn reads(bench: &mut Bench, what: &str, instrument: &str) -> u32 {
    let json = format!(r#"{{"do":"measure","what":{what},"instrument":"{instrument}"}}"#);
    let struck = does(bench, &json);
    assert!(struck.is_empty(), "{json}: reading overtakes nothing, {struck:?}");
    bench.records().last().expect("just read").number
}

const APART: &str = r#"{"do":"take_apart","to":"carrier","precautions":["hoist"]}"#;

/// Side packs: each stands for itself, and what lies beside an empty housing changes nothing of the axle.
#[test]
fn laying_side_packs_touches_only_their_own_readings() {
    let mut bench = axle("dairy-van-light-axle");
    let lash = reads(&mut bench, r#"{"quantity":"lash","tooth":0}"#, "dial_indicator");
    let whole = reads(&mut bench, r#"{"quantity":"rolling_torque"}"#, "small_dial_wrench");
    let runout = reads(&mut bench, r#"{"quantity":"wheel_face_runout"}"#, "dial_indicator");
    assert_eq!(does(&mut bench, APART), [lash, whole], "read with the carrier in");
    let alone = reads(&mut bench, r#"{"quantity":"rolling_torque"}"#, "small_dial_wrench");
    let depth = reads(&mut bench, r#"{"quantity":"pinion_depth"}"#, "depth_gauge");
    let spread = reads(&mut bench, r#"{"quantity":"case_spread"}"#, "dial_indicator");
    let tooth = reads(
        &mut bench,
        r#"{"quantity":"shim_pack","place":"tooth_side"}"#,
        "micrometer",
    );
    let back = reads(
        &mut bench,
        r#"{"quantity":"shim_pack","place":"back_side"}"#,
        "micrometer",
    );
    // The first pieces of the kit are the packs that came with the axle: depth, tooth side, behind the wheel.
    let spare = bench.setting().kit.len() - 1;
    let piece = reads(
        &mut bench,
        &format!(r#"{{"quantity":"shim_piece","piece":{spare}}}"#),
        "micrometer",
    );
    let struck = does(&mut bench, r#"{"do":"fit_shims","place":"back_side","pieces":[]}"#);
    assert_eq!(struck, [back], "the pack that is another one now");
    assert!(
        does(&mut bench, r#"{"do":"fit_shims","place":"tooth_side","pieces":[1]}"#).is_empty(),
        "the same pack again"
    );
    assert_eq!(
        does(&mut bench, r#"{"do":"clean","what":"shims"}"#),
        [piece],
        "a burr is off the piece; fitted packs stay as they are"
    );
    assert_eq!(
        does(&mut bench, r#"{"do":"spread_case","by_mm":0.3}"#),
        [spread],
        "the spreader opens the housing"
    );
    let fresh: Vec<u32> = bench.records().iter().filter(|r| !r.stale).map(|r| r.number).collect();
    assert_eq!(fresh, [runout, alone, depth, tooth]);
}

/// The pack beside a spacer: not the spacer, and not the pinion that went out before.
#[test]
fn laying_a_spacer_pack_touches_only_its_own_reading() {
    let mut bench = axle("depth-stole-my-preload");
    let alone_json = r#"{"quantity":"rolling_torque"}"#;
    does(&mut bench, APART);
    let alone = reads(&mut bench, alone_json, "small_dial_wrench");
    let spacer_json = r#"{"quantity":"shim_pack","place":"spacer"}"#;
    let depth = reads(&mut bench, r#"{"quantity":"shim_pack","place":"depth"}"#, "micrometer");
    let struck = does(
        &mut bench,
        r#"{"do":"take_apart","to":"pinion","precautions":["holding_bar"]}"#,
    );
    assert_eq!(struck, [alone], "the pinion came out");
    let spacer = reads(&mut bench, spacer_json, "micrometer");
    assert!(
        does(&mut bench, r#"{"do":"fit_spacer","spacer":"own","new":true}"#).is_empty(),
        "the pack beside a spacer does not ask which spacer it is"
    );
    assert_eq!(does(&mut bench, r#"{"do":"remove_shims","place":"spacer"}"#), [spacer]);
    let fresh: Vec<u32> = bench.records().iter().filter(|r| !r.stale).map(|r| r.number).collect();
    assert_eq!(fresh, [depth]);
}

/// A wrench that gives before the nut goes leaves preload and depth as they were read.
#[test]
fn a_nut_that_did_not_turn_overtakes_nothing_but_its_own_torque() {
    let mut bench = axle("depth-stole-my-preload");
    does(&mut bench, APART);
    let alone = reads(&mut bench, r#"{"quantity":"rolling_torque"}"#, "small_dial_wrench");
    let depth = reads(&mut bench, r#"{"quantity":"pinion_depth"}"#, "depth_gauge");
    let low = r#"{"do":"tighten_nut","torque_nm":80,"wrench":"click_wrench","precautions":["holding_bar"]}"#;
    assert!(does(&mut bench, low).is_empty(), "far below what it stands at");
    let high = r#"{"do":"tighten_nut","torque_nm":300,"wrench":"click_wrench","precautions":["holding_bar"]}"#;
    assert_eq!(does(&mut bench, high), [alone, depth], "it went");
}

/// Work around packs: what is laid, measured, cleaned, with the pinion in or out.
fn any_pack_work() -> impl Strategy<Value = Operation> {
    let place = prop_oneof![Just("depth"), Just("spacer"), Just("tooth_side"), Just("back_side")];
    let op = |json: String| Operation::from_json(&json).expect("an operation");
    prop_oneof![
        4 => (place.clone(), proptest::collection::btree_set(0..70_u32, 0..3)).prop_map(move |(place, pieces)| {
            let pieces: Vec<u32> = pieces.into_iter().collect();
            op(format!(r#"{{"do":"fit_shims","place":"{place}","pieces":{pieces:?}}}"#))
        }),
        1 => place.clone().prop_map(move |place| op(format!(r#"{{"do":"remove_shims","place":"{place}"}}"#))),
        3 => place.prop_map(move |place| op(format!(
            r#"{{"do":"measure","what":{{"quantity":"shim_pack","place":"{place}"}},"instrument":"micrometer"}}"#
        ))),
        3 => (0..70_u32).prop_map(move |piece| op(format!(
            r#"{{"do":"measure","what":{{"quantity":"shim_piece","piece":{piece}}},"instrument":"micrometer"}}"#
        ))),
        1 => Just(Operation::Clean { what: Cleaned::Shims, precautions: Vec::new() }),
        1 => Just(op(r#"{"do":"measure","what":{"quantity":"case_spread"},"instrument":"dial_indicator"}"#.to_owned())),
        1 => Just(op(r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"small_dial_wrench"}"#.to_owned())),
        1 => (0.0..0.4_f64).prop_map(|by_mm| Operation::SpreadCase { by_mm }),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(40))]

    /// Whatever is done with packs: readings of pieces and packs go stale exactly when the piece or the pack is another
    /// one, and other readings only when what they read has changed.
    #[test]
    fn packs_and_pieces_go_stale_with_themselves(
        (layout, out) in (0..3_usize, any::<bool>()),
        work in proptest::collection::vec(any_pack_work(), 1..40),
    ) {
        let mut bench = axle(["dairy-van-light-axle", "feed-lorry-cartridge", "depth-stole-my-preload"][layout]);
        let level = if out { "bearings" } else { "carrier" };
        does(&mut bench, &format!(
            r#"{{"do":"take_apart","to":"{level}","precautions":["hoist","holding_bar","eye_protection"]}}"#
        ));
        for operation in work {
            let before = bench.clone();
            let answer = bench.apply(&operation);
            for record in before.records().iter().filter(|r| !r.stale) {
                let struck = answer.stale.contains(&record.number);
                let same = before.true_value(record.what) == bench.true_value(record.what);
                match record.what {
                    Measurand::ShimPack { .. } | Measurand::ShimPiece { .. } => {
                        prop_assert_eq!(struck, !same, "{:?} after {:?}", record.what, operation);
                    }
                    // Turning settles rollers, which overtakes no reading.
                    _ => prop_assert!(!struck || !same, "{:?} after {:?}", record.what, operation),
                }
            }
        }
    }
}
