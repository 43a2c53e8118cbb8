//! Whole builds at the bench: what can be done, what is refused, what follows. Common practice, no source.

use std::sync::Arc;

use lashwright::axle::{Assembly, Layout, Member, SpacerFitted, Truth};
use lashwright::bench::{Answer, Bench, Caution, Operation, Part, Setting, ShimPiece, ShimPlace, Start};
use lashwright::contact::Pair;
use lashwright::gear::GearSet;

use super::axles::{axle_with, gears, gears_of};

/// A kit with pieces of 0.05, 0.08, 0.13, 0.25, 0.5 mm, twice each, for every place, and one pack of 6 mm a side.
fn kit() -> Vec<ShimPiece> {
    let mut kit = Vec::new();
    for place in ShimPlace::ALL {
        let base: &[f64] = match place {
            ShimPlace::ToothSide | ShimPlace::BackSide => &[6.0],
            ShimPlace::Depth | ShimPlace::Spacer => &[],
        };
        for labelled_mm in base
            .iter()
            .chain(&[0.05, 0.05, 0.08, 0.08, 0.13, 0.13, 0.25, 0.25, 0.5, 0.5])
        {
            kit.push(ShimPiece {
                place,
                labelled_mm: *labelled_mm,
                true_mm: *labelled_mm,
            });
        }
    }
    kit
}

/// Numbers of the pieces that make up this thickness, from the largest down.
fn pieces(kit: &[ShimPiece], place: ShimPlace, thickness_mm: f64) -> Vec<u32> {
    let mut own: Vec<usize> = (0..kit.len()).filter(|i| kit[*i].place == place).collect();
    own.sort_by(|a, b| kit[*b].true_mm.total_cmp(&kit[*a].true_mm));
    let mut left = thickness_mm;
    let mut chosen = Vec::new();
    for index in own {
        if kit[index].true_mm <= left + 0.01 {
            left -= kit[index].true_mm;
            chosen.push(u32::try_from(index).expect("small"));
        }
    }
    chosen
}

fn bench(layout: Layout, truth: Truth) -> Bench {
    let set = gears(gears_of(layout));
    let pair = GearSet::new(truth.design_of(set.design())).expect("gears that exist");
    let axle = axle_with(layout, layout.depth_shims()[0]);
    let setting = Setting::usual(axle, Arc::new(Pair::new(pair)), 7, kit());
    Bench::new(Arc::new(setting), truth, &Start::Bare).expect("a start")
}

fn asked(bench: &mut Bench, json: &str) -> Answer {
    let operation = Operation::from_json(json).unwrap_or_else(|e| panic!("{json}: {e}"));
    bench.apply(&operation)
}

fn done(bench: &mut Bench, json: &str) -> Answer {
    let answer = asked(bench, json);
    assert!(answer.done, "{json}: {:?}", answer.refused);
    answer
}

fn refused(bench: &mut Bench, json: &str) -> String {
    let before = bench.clone();
    let answer = asked(bench, json);
    assert!(!answer.done, "{json} was done");
    assert_eq!((answer.minutes, answer.money), (0.0, 0.0), "a refusal takes nothing");
    assert_eq!(bench.assembly(), before.assembly(), "a refusal changes nothing");
    answer.refused.expect("a reason")
}

fn fit(bench: &mut Bench, place: ShimPlace, thickness_mm: f64) {
    let chosen = pieces(&bench.setting().kit, place, thickness_mm);
    let place = serde_json::to_string(&place).expect("a name");
    done(
        bench,
        &format!(r#"{{"do":"fit_shims","place":{place},"pieces":{chosen:?}}}"#),
    );
}

fn press_all(bench: &mut Bench) {
    for ring in ["head_cup", "tail_cup", "head_cone"] {
        done(
            bench,
            &format!(
                r#"{{"do":"press","ring":"{ring}","force_kn":25,"precautions":["eye_protection","press_guard"]}}"#
            ),
        );
    }
}

fn wheel_on(bench: &mut Bench) {
    done(bench, r#"{"do":"clean","what":"wheel_seat"}"#);
    done(bench, r#"{"do":"clean","what":"threads"}"#);
    done(bench, r#"{"do":"heat_wheel","to_c":120,"precautions":["hot_gloves"]}"#);
    done(
        bench,
        r#"{"do":"fit_wheel","crosswise":true,"precautions":["hot_gloves"]}"#,
    );
    done(bench, r#"{"do":"wait","minutes":120}"#);
    done(bench, r#"{"do":"tighten_ring_bolts","thread_lock":true}"#);
    assert!(bench.bolts_are_sound(), "cold, locked, on clean threads");
}

/// Layout A from parts to a print: head shim, sleeve crushed by angle, spread case, side shims.
#[test]
fn a_light_axle_is_built_from_parts() {
    let mut b = bench(Layout::A, Truth::default());
    let b = &mut b;
    done(b, r#"{"do":"clean","what":"shims"}"#);
    let text = refused(b, r#"{"do":"insert_pinion"}"#);
    assert!(text.contains("bearings"), "{text}");
    fit(b, ShimPlace::Depth, 0.90);
    press_all(b);
    let text = refused(b, r#"{"do":"fit_shims","place":"depth","pieces":[]}"#);
    assert!(text.contains("cone"), "{text}");
    done(b, r#"{"do":"fit_spacer","spacer":"own","new":true}"#);
    done(b, r#"{"do":"insert_pinion"}"#);
    done(b, r#"{"do":"fit_nut","new":true}"#);
    // Down to the sleeve's yield, then by angle.
    done(
        b,
        r#"{"do":"tighten_nut","torque_nm":150,"wrench":"click_wrench","precautions":["holding_bar"]}"#,
    );
    let preload = |b: &Bench| b.built().pinion.expect("held").tightened.preload_n;
    let mut steps = 0;
    while preload(b) < 5_000.0 {
        let step = if preload(b) > 3_500.0 { 1.0 } else { 6.0 };
        done(
            b,
            &format!(r#"{{"do":"turn_nut","angle_deg":{step},"precautions":["holding_bar"]}}"#),
        );
        steps += 1;
        assert!(steps < 300, "the sleeve never came to its preload");
    }
    assert!(preload(b) < 5_600.0, "overshot: {}", preload(b));
    done(b, r#"{"do":"turn","what":"pinion","turns":15}"#);
    done(
        b,
        r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"small_dial_wrench"}"#,
    );
    done(
        b,
        r#"{"do":"measure","what":{"quantity":"pinion_depth"},"instrument":"depth_gauge"}"#,
    );
    wheel_on(b);
    fit(b, ShimPlace::ToothSide, 6.0);
    fit(b, ShimPlace::BackSide, 6.0);
    let text = refused(b, r#"{"do":"set_carrier_in"}"#);
    assert!(text.contains("Spread the case"), "{text}");
    done(b, r#"{"do":"spread_case","by_mm":0.4}"#);
    done(b, r#"{"do":"set_carrier_in","precautions":["hoist"]}"#);
    done(b, r#"{"do":"release_spreader"}"#);
    done(b, r#"{"do":"fit_caps","as_marked":true}"#);
    done(b, r#"{"do":"tighten_caps","to":"full"}"#);
    done(b, r#"{"do":"turn","what":"carrier","turns":5}"#);
    let placement = b.built().placement.expect("in mesh");
    // What the pack is thinner than nominal the pinion stands shallower, but for the springs of a preload near its target.
    let thinner = 0.90 - b.assembly().depth_shim_mm;
    assert!(
        (placement.pinion_axial_mm - thinner).abs() < 0.003,
        "{placement:?} {thinner}"
    );
    assert!(placement.wheel_axial_mm.abs() < 0.02, "{placement:?}");
    let lash = done(
        b,
        r#"{"do":"measure","what":{"quantity":"lash","tooth":0},"instrument":"dial_indicator"}"#,
    );
    assert!(lash.readings[0].value.expect("a value") > 0.1, "{lash:?}");
    let text = refused(b, r#"{"do":"measure","what":{"quantity":"print"},"instrument":"eye"}"#);
    assert!(text.contains("paste"), "{text}");
    done(b, r#"{"do":"brush_paste","teeth":[0,1,2,3],"film":"usual"}"#);
    done(b, r#"{"do":"roll","drag_nm":12,"passes":5}"#);
    let print = done(b, r#"{"do":"measure","what":{"quantity":"print"},"instrument":"eye"}"#);
    assert!(print.readings.len() >= 6, "both flanks: {print:?}");
    let teardowns = b.ledger().tear_downs;
    done(
        b,
        r#"{"do":"take_apart","to":"bearings","precautions":["hoist","holding_bar","eye_protection"]}"#,
    );
    assert_eq!(b.ledger().tear_downs, teardowns + 1, "one tear-down");
    assert!(
        b.records().iter().filter(|r| r.what.unit() == "mm").all(|r| r.stale),
        "stale now"
    );
    done(b, r#"{"do":"finish"}"#);
    assert!(
        !asked(b, r#"{"do":"push","what":"pinion","toward":"mesh"}"#).done,
        "handed over"
    );
}

/// Layout B: cartridge under its own nut, bolted on; adjusters by notch with locks.
#[test]
fn a_cartridge_axle_is_built_from_parts() {
    let mut truth = Truth::default();
    truth.deviations.set(Member::CartridgeFace, 0.10);
    let mut b = bench(Layout::B, truth);
    let b = &mut b;
    done(b, r#"{"do":"clean","what":"shims"}"#);
    press_all(b);
    fit(b, ShimPlace::Spacer, 0.81);
    done(b, r#"{"do":"fit_spacer","spacer":"own"}"#);
    done(b, r#"{"do":"insert_pinion"}"#);
    done(b, r#"{"do":"fit_nut","new":true}"#);
    done(
        b,
        r#"{"do":"tighten_nut","torque_nm":500,"wrench":"multiplier_wrench","precautions":["holding_bar"]}"#,
    );
    assert!(
        b.built().pinion.expect("held").axial_mm.is_none(),
        "not in its case yet"
    );
    fit(b, ShimPlace::Depth, 0.5);
    done(b, r#"{"do":"bolt_cartridge"}"#);
    // Cartridge shim 0.1 thinner cancels a face 0.1 too far out.
    let axial = b.built().pinion.expect("held").axial_mm.expect("in its case");
    assert!(axial.abs() < 0.02, "{axial}");
    let text = refused(b, r#"{"do":"fit_shims","place":"depth","pieces":[]}"#);
    assert!(text.contains("cartridge"), "{text}");
    wheel_on(b);
    let lifted = done(b, r#"{"do":"set_carrier_in"}"#);
    assert_eq!(lifted.cautions, [Caution::HeavyCarrier], "268 mm of ring gear");
    assert_eq!(b.ledger().unsafe_acts.len(), 1, "and it is booked");
    let text = refused(b, r#"{"do":"turn_adjuster","side":"tooth","notches":3}"#);
    assert!(text.contains("cap"), "{text}");
    done(b, r#"{"do":"fit_caps","as_marked":true}"#);
    for side in ["back", "tooth"] {
        done(b, &format!(r#"{{"do":"turn_adjuster","side":"{side}","notches":18}}"#));
    }
    let side = b.built().side.expect("held");
    assert!(side.preload_n > 3_000.0 && side.axial_mm.abs() < 0.01, "{side:?}");
    done(b, r#"{"do":"turn_adjuster","side":"tooth","notches":0.5}"#);
    let text = refused(b, r#"{"do":"fit_lock","side":"tooth"}"#);
    assert!(text.contains("slot"), "{text}");
    done(b, r#"{"do":"turn_adjuster","side":"tooth","notches":0.5}"#);
    done(b, r#"{"do":"turn_adjuster","side":"back","notches":-1}"#);
    done(b, r#"{"do":"turn_adjuster","side":"back","notches":0}"#);
    done(b, r#"{"do":"fit_lock","side":"tooth"}"#);
    done(b, r#"{"do":"tighten_caps","to":"full"}"#);
    let text = refused(b, r#"{"do":"turn_adjuster","side":"back","notches":1}"#);
    assert!(text.contains("binds"), "{text}");
    let text = refused(b, r#"{"do":"remove_caps"}"#);
    assert!(text.contains("lock"), "{text}");
    done(b, r#"{"do":"turn","what":"carrier","turns":3}"#);
}

/// A worn axle comes in whole: what is read first goes stale with the strip-down.
#[test]
fn a_worn_axle_is_stripped_down() {
    let layout = Layout::C;
    let truth = Truth::default();
    let axle = axle_with(layout, layout.depth_shims()[0]);
    let kit = kit();
    let assembly = Assembly::nominal(&axle).expect("numbers");
    let packs = [
        pieces(&kit, ShimPlace::Depth, 1.0),
        pieces(&kit, ShimPlace::Spacer, 0.8),
        Vec::new(),
        Vec::new(),
    ];
    let pair = Arc::new(Pair::new(gears(gears_of(layout))));
    let setting = Arc::new(Setting::usual(axle, pair, 3, kit));
    let start = Start::Assembled {
        assembly: Box::new(assembly),
        packs,
    };
    let mut b = Bench::new(setting, truth, &start).expect("a start");
    let b = &mut b;
    let text = refused(b, r#"{"do":"compare_numbers"}"#);
    assert!(text.contains("carrier"), "{text}");
    done(
        b,
        r#"{"do":"measure","what":{"quantity":"lash","tooth":5},"instrument":"dial_indicator"}"#,
    );
    done(
        b,
        r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"small_dial_wrench"}"#,
    );
    let face = done(
        b,
        r#"{"do":"measure","what":{"quantity":"wheel_face_runout"},"instrument":"dial_indicator"}"#,
    );
    assert!(face.stale.is_empty(), "reading changes nothing");
    done(b, r#"{"do":"note","what":{"quantity":"lash","tooth":5},"value":0.2}"#);
    let apart = done(b, r#"{"do":"take_apart","to":"carrier","precautions":["hoist"]}"#);
    assert_eq!(
        apart.stale,
        [1, 2],
        "lash and torque, not the runout of the wheel on its carrier"
    );
    assert!(b.notes()[0].stale, "the note as well");
    assert!(apart.minutes > 6.0, "locks, caps, carrier: {}", apart.minutes);
    let answer = done(b, r#"{"do":"compare_numbers"}"#);
    assert_eq!(answer.noticed.len(), 2, "numbers and mark");
    done(b, r#"{"do":"take_apart","to":"pinion","precautions":["holding_bar"]}"#);
    assert!(matches!(b.assembly().spacer, SpacerFitted::None), "spacer off");
    assert_eq!(
        b.ledger().spoiled.iter().filter(|(_, p)| *p == Part::Seal).count(),
        1,
        "the seal is spoiled"
    );
}

/// An overheated wheel is scrap; one drawn on cold sits crookedly, and one fitted warm does not.
#[test]
fn heat_decides_how_the_wheel_sits() {
    let mut truth = Truth::default();
    truth.deviations.set(Member::WheelSeatChip, 0.05);
    let tilt = |operations: &[&str]| {
        let mut b = bench(Layout::A, truth.clone());
        for json in operations {
            done(&mut b, json);
        }
        (b.assembly().wheel.expect("on"), b.wheel_is_scrap())
    };
    let clean = r#"{"do":"clean","what":"wheel_seat"}"#;
    let on = r#"{"do":"fit_wheel","crosswise":false}"#;
    let (cold, _) = tilt(&[clean, on]);
    let (crossed, _) = tilt(&[clean, r#"{"do":"fit_wheel","crosswise":true}"#]);
    let (warm, sound) = tilt(&[clean, r#"{"do":"heat_wheel","to_c":130}"#, on]);
    let (_, scrap) = tilt(&[clean, r#"{"do":"heat_wheel","to_c":200}"#, on]);
    let (dirty, _) = tilt(&[r#"{"do":"heat_wheel","to_c":130}"#, on]);
    assert!(
        cold.tilt_mm > 0.05 && crossed.tilt_mm < 0.02 && warm.tilt_mm < 0.001,
        "{cold:?} {crossed:?} {warm:?}"
    );
    assert!(!sound && scrap, "above 149 °C it is scrap");
    assert!(dirty.dirty && !warm.dirty, "what was not cleaned stays under it");
}

/// A ring pressed short is not home, and the case spread too far takes a set.
#[test]
fn what_is_done_too_little_or_too_much_stays() {
    let mut b = bench(Layout::A, Truth::default());
    let b = &mut b;
    // From too little upward, a tenth of a kilonewton at a time: first it comes off again, then it stays with a gap that
    // shrinks as the force grows, then it is home.
    let on = |b: &Bench| b.assembly().seating.head_cone.gap_mm;
    let mut gaps = Vec::new();
    for tenths in 100..200 {
        let force_kn = 0.1 * f64::from(tenths);
        let answer = done(
            b,
            &format!(r#"{{"do":"press","ring":"head_cone","force_kn":{force_kn}}}"#),
        );
        if answer.noticed.iter().any(|n| n.contains("came off")) {
            assert!(gaps.is_empty(), "more force, less way");
            continue;
        }
        gaps.push(on(b));
        if on(b) == 0.0 {
            break;
        }
        done(b, r#"{"do":"pull_off","ring":"head_cone"}"#);
    }
    assert!(gaps.len() > 5 && gaps.is_sorted_by(|a, b| a > b), "{gaps:?}");
    assert!(gaps[0] <= 2.0 && gaps.last() == Some(&0.0), "{gaps:?}");
    let feeler = done(
        b,
        r#"{"do":"measure","what":{"quantity":"seat_gap","ring":"head_cone"},"instrument":"feeler"}"#,
    );
    assert!(!feeler.readings.is_empty(), "{feeler:?}");
    done(b, r#"{"do":"pull_off","ring":"head_cone"}"#);
    assert!(
        asked(b, r#"{"do":"press","ring":"head_cone","force_kn":2}"#).done,
        "done, but it came off"
    );
    assert!(b.assembly().seating.head_cone.gap_mm == 0.0, "nothing is left on");
    let seat = |b: &Bench| b.truth().deviations.get(Member::ToothSideSeat);
    let before = seat(b);
    done(b, r#"{"do":"spread_case","by_mm":0.4}"#);
    assert!(seat(b) <= before, "within the limit it springs back");
    done(b, r#"{"do":"spread_case","by_mm":0.8}"#);
    assert!(seat(b) > before, "beyond it does not");
}

#[test]
fn operations_are_checked_before_they_are_done() {
    for (json, what) in [
        (r#"{"do":"dance"}"#, "dance"),
        (r#"{"do":"turn_nut","angle_deg":99999}"#, "angle_deg"),
        (r#"{"do":"turn_nut","angle_deg":3,"extra":1}"#, "extra"),
        (r#"{"do":"release_spreader","extra":1}"#, "extra"),
        (r#"{"do":"tighten_nut","torque_nm":-4,"wrench":"x"}"#, "torque_nm"),
        (r#"{"do":"predict","about":"lash","chances":[0.5,0.5,0.5]}"#, "chances"),
        (
            r#"{"do":"measure","what":{"quantity":"lash","tooth":200},"instrument":"x"}"#,
            "tooth",
        ),
        (r"[]", "operations"),
    ] {
        let error = Operation::from_json(json).expect_err(json).to_string();
        assert!(error.contains(what), "{json}: {error}");
    }
    let schema = Operation::schema().to_string();
    for word in ["angle_deg", "maximum", "fit_shims", "declined"] {
        assert_eq!(schema.contains(word), word != "declined", "{word} in the schema");
    }
}

/// A wheel cools in still air: warm enough to drop on right after heating, cold after two hours.
#[test]
fn a_warm_wheel_cools_while_time_passes() {
    let mut b = bench(Layout::A, Truth::default());
    let b = &mut b;
    let read = |b: &mut Bench| {
        let json = r#"{"do":"measure","what":{"quantity":"wheel_temperature"},"instrument":"thermometer"}"#;
        done(b, json).readings[0].value.expect("a value")
    };
    done(b, r#"{"do":"heat_wheel","to_c":120,"precautions":["hot_gloves"]}"#);
    let hot = read(b);
    assert!(
        (hot - 120.0).abs() < 7.0,
        "just heated, read with a usual thermometer: {hot}"
    );
    let unmet = Operation::from_json(r#"{"do":"fit_wheel","crosswise":true}"#).expect("good");
    assert_eq!(b.cautions(&unmet), [Caution::HotWheel], "shown beforehand");
    done(b, r#"{"do":"wait","minutes":25}"#);
    let warm = read(b);
    // 63 % of its warmth is gone in 25 minutes and a little more in the 3 of the reading.
    assert!((warm - (20.0 + 100.0 / std::f64::consts::E)).abs() < 12.0, "{warm}");
    done(b, r#"{"do":"wait","minutes":120}"#);
    assert!(read(b) < 27.0, "cold");
    assert!(b.cautions(&unmet).is_empty(), "no hazard is left");
}

/// A nut is felt through its wrench: one that is too small shows nothing, a click wrench cannot be read, both turn it.
#[test]
fn a_nut_is_read_while_it_turns() {
    let mut b = bench(Layout::C, Truth::default());
    let b = &mut b;
    press_all(b);
    fit(b, ShimPlace::Spacer, 0.8);
    done(b, r#"{"do":"fit_spacer","spacer":"own"}"#);
    done(b, r#"{"do":"insert_pinion"}"#);
    done(b, r#"{"do":"fit_nut","new":true}"#);
    let text = refused(b, r#"{"do":"tighten_nut","torque_nm":500,"wrench":"click_wrench"}"#);
    assert!(text.contains("340"), "{text}");
    let text = refused(b, r#"{"do":"tighten_nut","torque_nm":100,"wrench":"micrometer"}"#);
    assert!(text.contains("micrometer"), "{text}");
    let unmet = done(b, r#"{"do":"tighten_nut","torque_nm":217,"wrench":"click_wrench"}"#);
    assert_eq!(unmet.cautions, [Caution::NutReaction], "217 N·m on the flange");
    let read = |b: &mut Bench, wrench: &str| {
        let json = format!(r#"{{"do":"turn_nut","angle_deg":0.2,"wrench":"{wrench}","precautions":["holding_bar"]}}"#);
        done(b, &json).readings[0].value
    };
    let shown = read(b, "large_dial_wrench").expect("a value");
    // Click wrench 4 %, dial wrench 4 %, pulls 2 % each, five degrees' graduation: within 12 % of what was set.
    assert!((shown / 217.0 - 1.0).abs() < 0.12, "{shown}");
    assert_eq!(read(b, "click_wrench"), None, "it shows nothing");
    assert_eq!(read(b, "small_dial_wrench"), None, "its pointer is at the stop");
}

/// The hand-over can be refused for nothing, but a verdict needs evidence that is there.
#[test]
fn a_part_is_condemned_with_evidence() {
    let mut b = bench(Layout::A, Truth::default());
    let b = &mut b;
    let text = refused(
        b,
        r#"{"do":"condemn","part":"gears","reason":"no match","evidence":[]}"#,
    );
    assert!(text.contains("evidence"), "{text}");
    let text = refused(
        b,
        r#"{"do":"condemn","part":"gears","reason":"no match","evidence":[4]}"#,
    );
    assert!(text.contains("no record 4"), "{text}");
    done(
        b,
        r#"{"do":"measure","what":{"quantity":"shim_piece","piece":0},"instrument":"micrometer"}"#,
    );
    done(
        b,
        r#"{"do":"condemn","part":"gears","reason":"no match","evidence":[1]}"#,
    );
    assert_eq!(b.judgements().len(), 1, "booked");
}
