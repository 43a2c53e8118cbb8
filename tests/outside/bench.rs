//! Whole builds at the bench: what can be done, what is refused, what follows. Common practice, no source.

use std::ops::Bound;
use std::sync::Arc;

use lashwright::axle::{Assembly, Layout, Member, SpacerFitted, Truth};
use lashwright::bench::{
    Answer, Bench, BenchSetUp, Caution, Notice, Operation, Part, ShimPiece, ShimPlace, StartingState, Unit,
};
use lashwright::contact::Pair;
use lashwright::gear::GearSet;
use lashwright::words::answer::refusal;
use lashwright::words::error;

use super::axles::{axle_with, gears, gears_of};
use super::guide::{Row, Source, checks};

const TRADE: Source = Source::Practice("");

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
    let setting = BenchSetUp::usual(axle, Arc::new(Pair::new(pair)), 7, kit());
    Bench::new(Arc::new(setting), truth, &StartingState::Bare).expect("a start")
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

/// Asks for what cannot be done; the refusal must speak of this word.
fn refused(bench: &mut Bench, row: &mut Row, json: &str, word: &str) {
    let before = bench.clone();
    let answer = asked(bench, json);
    assert!(!answer.done, "{json} was done");
    assert_eq!((answer.minutes, answer.money), (0.0, 0.0), "a refusal takes nothing");
    assert_eq!(bench.assembly(), before.assembly(), "a refusal changes nothing");
    let reason = refusal(&answer.refused.expect("a reason"));
    row.is(format_args!("{json}: {reason}"), reason.contains(word));
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
fn a_light_axle_is_built_from_parts() -> Vec<Row> {
    let mut refusals = Row::stated(
        "Layout A from parts to a print: what cannot be done yet is refused for its reason",
        TRADE,
        "as stated",
    );
    let mut crushed = Row::range(
        "Layout A: preload of a sleeve crushed by angle to 5 kN",
        TRADE,
        ..5_600.0,
        "N",
    );
    let mut depth = Row::absolute(
        "Layout A: P is what the pack is thinner than nominal",
        TRADE,
        0.003,
        "mm",
    );
    let mut wheel = Row::absolute("Layout A: G with equal packs of nominal parts", TRADE, 0.02, "mm");
    let mut read = Row::range(
        "Layout A: lash read with a dial",
        TRADE,
        (Bound::Excluded(0.1), Bound::Unbounded),
        "mm",
    );
    let mut follows = Row::stated(
        "Layout A: the print shows both flanks, taking apart is one tear-down, makes lengths stale, and what is handed over \
         stays",
        TRADE,
        "as stated",
    );
    let mut b = bench(Layout::A, Truth::default());
    let b = &mut b;
    done(b, r#"{"do":"clean","what":"shims"}"#);
    refused(b, &mut refusals, r#"{"do":"insert_pinion"}"#, "bearings");
    fit(b, ShimPlace::Depth, 0.90);
    press_all(b);
    refused(
        b,
        &mut refusals,
        r#"{"do":"fit_shims","place":"depth","pieces":[]}"#,
        "cone",
    );
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
    crushed.found(format_args!("after {steps} steps"), preload(b));
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
    refused(b, &mut refusals, r#"{"do":"set_carrier_in"}"#, "Spread the housing");
    done(b, r#"{"do":"spread_case","by_mm":0.4}"#);
    done(b, r#"{"do":"set_carrier_in","precautions":["hoist"]}"#);
    done(b, r#"{"do":"release_spreader"}"#);
    done(b, r#"{"do":"fit_caps","as_marked":true}"#);
    done(b, r#"{"do":"tighten_caps","to":"full"}"#);
    done(b, r#"{"do":"turn","what":"carrier","turns":5}"#);
    let placement = b.built().placement.expect("in mesh");
    // What the pack is thinner than nominal the pinion stands shallower, but for the springs of a preload near its target.
    let thinner = 0.90 - b.assembly().depth_shim_mm;
    depth.near("P", placement.pinion_axial_mm, thinner);
    wheel.near("G", placement.wheel_axial_mm, 0.0);
    let lash = done(
        b,
        r#"{"do":"measure","what":{"quantity":"lash","tooth":0},"instrument":"dial_indicator"}"#,
    );
    read.found("tooth 0", lash.readings[0].value.expect("a value"));
    refused(
        b,
        &mut refusals,
        r#"{"do":"measure","what":{"quantity":"print"},"instrument":"eye"}"#,
        "marking compound",
    );
    done(b, r#"{"do":"brush_paste","teeth":[0,1,2,3],"film":"usual"}"#);
    done(b, r#"{"do":"roll","drag_nm":12,"passes":5}"#);
    let print = done(b, r#"{"do":"measure","what":{"quantity":"print"},"instrument":"eye"}"#);
    follows.is(format_args!("both flanks: {print:?}"), print.readings.len() >= 6);
    let teardowns = b.ledger().tear_downs;
    done(
        b,
        r#"{"do":"take_apart","to":"bearings","precautions":["hoist","holding_bar","eye_protection"]}"#,
    );
    follows.is("one tear-down", b.ledger().tear_downs == teardowns + 1);
    follows.is(
        "stale now",
        b.records()
            .iter()
            .filter(|r| r.what.unit() == Unit::Millimeter)
            .all(|r| r.stale),
    );
    done(b, r#"{"do":"finish"}"#);
    follows.is(
        "handed over",
        !asked(b, r#"{"do":"push","what":"pinion","toward":"mesh"}"#).done,
    );
    vec![refusals, crushed, depth, wheel, read, follows]
}

/// Layout B: cartridge under its own nut, bolted on; adjusters by notch with locks.
fn a_cartridge_axle_is_built_from_parts() -> Vec<Row> {
    let mut refusals = Row::stated(
        "Layout B from parts: shims under a bolted cartridge, rings without caps, locks off a slot, rings under torqued \
         caps, caps under locks are refused for their reason",
        TRADE,
        "as stated",
    );
    let mut depth = Row::absolute(
        "Layout B: a cartridge shim 0.1 mm thinner cancels a face 0.1 mm too far out",
        TRADE,
        0.02,
        "mm",
    );
    let mut side_row = Row::range(
        "Layout B: side preload with both rings one turn in",
        TRADE,
        (Bound::Excluded(3_000.0), Bound::Unbounded),
        "N",
    );
    let mut wheel = Row::absolute("Layout B: G with both rings one turn in", TRADE, 0.01, "mm");
    let mut follows = Row::stated(
        "Layout B: no P before the cartridge is bolted on; a heavy carrier without a hoist is warned of and booked",
        TRADE,
        "as stated",
    );
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
    follows.is(
        "not in its case yet",
        b.built().pinion.expect("held").axial_mm.is_none(),
    );
    fit(b, ShimPlace::Depth, 0.5);
    done(b, r#"{"do":"bolt_cartridge"}"#);
    // Cartridge shim 0.1 thinner cancels a face 0.1 too far out.
    let axial = b.built().pinion.expect("held").axial_mm.expect("in its case");
    depth.near("P", axial, 0.0);
    refused(
        b,
        &mut refusals,
        r#"{"do":"fit_shims","place":"depth","pieces":[]}"#,
        "cartridge",
    );
    wheel_on(b);
    let lifted = done(b, r#"{"do":"set_carrier_in"}"#);
    follows.is("268 mm of ring gear", lifted.cautions == [Caution::HeavyCarrier]);
    follows.is("and it is booked", b.ledger().unsafe_acts.len() == 1);
    refused(
        b,
        &mut refusals,
        r#"{"do":"turn_adjuster","side":"tooth","notches":3}"#,
        "cap",
    );
    done(b, r#"{"do":"fit_caps","as_marked":true}"#);
    for side in ["back", "tooth"] {
        done(b, &format!(r#"{{"do":"turn_adjuster","side":"{side}","notches":18}}"#));
    }
    let side = b.built().side.expect("held");
    side_row.found("18 notches each", side.preload_n);
    wheel.near("18 notches each", side.axial_mm, 0.0);
    done(b, r#"{"do":"turn_adjuster","side":"tooth","notches":0.5}"#);
    refused(b, &mut refusals, r#"{"do":"fit_lock","side":"tooth"}"#, "slot");
    done(b, r#"{"do":"turn_adjuster","side":"tooth","notches":0.5}"#);
    done(b, r#"{"do":"turn_adjuster","side":"back","notches":-1}"#);
    done(b, r#"{"do":"turn_adjuster","side":"back","notches":0}"#);
    done(b, r#"{"do":"fit_lock","side":"tooth"}"#);
    done(b, r#"{"do":"tighten_caps","to":"full"}"#);
    refused(
        b,
        &mut refusals,
        r#"{"do":"turn_adjuster","side":"back","notches":1}"#,
        "binds",
    );
    refused(b, &mut refusals, r#"{"do":"remove_caps"}"#, "lock");
    done(b, r#"{"do":"turn","what":"carrier","turns":3}"#);
    vec![refusals, depth, side_row, wheel, follows]
}

/// A worn axle comes in whole: what is read first goes stale with the strip-down.
fn a_worn_axle_is_stripped_down() -> Vec<Row> {
    let mut refusals = Row::stated(
        "A worn axle: numbers are hidden while the carrier is in",
        TRADE,
        "as stated",
    );
    let mut follows = Row::stated(
        "A worn axle: stripping down makes lash, torque and the note stale, not the wheel's runout; takes time; shows \
         numbers and mark; spoils the seal",
        TRADE,
        "as stated",
    );
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
    let setting = Arc::new(BenchSetUp::usual(axle, pair, 3, kit));
    let start = StartingState::Assembled {
        assembly: Box::new(assembly),
        packs,
    };
    let mut b = Bench::new(setting, truth, &start).expect("a start");
    let b = &mut b;
    refused(b, &mut refusals, r#"{"do":"compare_numbers"}"#, "carrier");
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
    follows.is("reading changes nothing", face.stale.is_empty());
    done(b, r#"{"do":"note","what":{"quantity":"lash","tooth":5},"value":0.2}"#);
    let apart = done(b, r#"{"do":"take_apart","to":"carrier","precautions":["hoist"]}"#);
    follows.is(
        "lash and torque, not the runout of the wheel on its carrier",
        apart.stale == [1, 2],
    );
    follows.is("the note as well", b.notes()[0].stale);
    follows.is(
        format_args!("locks, caps, carrier: {} minutes", apart.minutes),
        apart.minutes > 6.0,
    );
    let answer = done(b, r#"{"do":"compare_numbers"}"#);
    follows.is("numbers and mark", answer.noticed.len() == 2);
    done(b, r#"{"do":"take_apart","to":"pinion","precautions":["holding_bar"]}"#);
    follows.is("spacer off", matches!(b.assembly().spacer, SpacerFitted::None));
    follows.is(
        "the seal is spoiled",
        b.ledger().spoiled.iter().filter(|(_, p)| *p == Part::Seal).count() == 1,
    );
    vec![refusals, follows]
}

/// An overheated wheel is scrap; one drawn on cold sits crookedly, and one fitted warm does not.
fn heat_decides_how_the_wheel_sits() -> Vec<Row> {
    let mut cold_row = Row::range(
        "Tilt of a wheel drawn on cold, bolts not crosswise",
        TRADE,
        (Bound::Excluded(0.05), Bound::Unbounded),
        "mm",
    );
    let mut crossed_row = Row::range("Tilt of one drawn on cold crosswise", TRADE, ..0.02, "mm");
    let mut warm_row = Row::range("Tilt of one fitted warm on a clean seat", TRADE, ..0.001, "mm");
    let mut follows = Row::stated(
        "A wheel above 149 °C is scrap, at 130 °C it is not; what was not cleaned stays under it",
        Source::Practice("149 °C (300 °F) from a service sheet"),
        "as stated",
    );
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
    cold_row.found("cold", cold.tilt_mm);
    crossed_row.found("crosswise", crossed.tilt_mm);
    warm_row.found("130 °C", warm.tilt_mm);
    follows.is("130 °C and 200 °C", !sound && scrap);
    follows.is("dirty and clean seat", dirty.dirty && !warm.dirty);
    vec![cold_row, crossed_row, warm_row, follows]
}

/// A ring pressed short is not home, and the case spread too far takes a set.
fn what_is_done_too_little_or_too_much_stays() -> Vec<Row> {
    let mut ring = Row::stated(
        "A ring pressed with too little comes off again, with more stays with a gap that shrinks, at last is home; a feeler \
         finds the gap",
        TRADE,
        "order",
    );
    let mut case = Row::stated(
        "A case spread by 0.4 mm springs back, by 0.8 mm takes a set",
        TRADE,
        "order",
    );
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
        if answer.noticed.contains(&Notice::RingPartWayOn) {
            ring.is("more force, less way", gaps.is_empty());
            continue;
        }
        gaps.push(on(b));
        if on(b) == 0.0 {
            break;
        }
        done(b, r#"{"do":"pull_off","ring":"head_cone"}"#);
    }
    ring.is(
        format_args!("shrinking: {gaps:?}"),
        gaps.len() > 5 && gaps.is_sorted_by(|a, b| a > b),
    );
    ring.is("at last home", gaps[0] <= 2.0 && gaps.last() == Some(&0.0));
    let feeler = done(
        b,
        r#"{"do":"measure","what":{"quantity":"seat_gap","ring":"head_cone"},"instrument":"feeler"}"#,
    );
    ring.is(format_args!("{feeler:?}"), !feeler.readings.is_empty());
    done(b, r#"{"do":"pull_off","ring":"head_cone"}"#);
    ring.is(
        "done, but it came off",
        asked(b, r#"{"do":"press","ring":"head_cone","force_kn":2}"#).done,
    );
    ring.is("nothing is left on", b.assembly().seating.head_cone.gap_mm == 0.0);
    let seat = |b: &Bench| b.truth().deviations.get(Member::ToothSideSeat);
    let before = seat(b);
    done(b, r#"{"do":"spread_case","by_mm":0.4}"#);
    case.is("within the limit it springs back", seat(b) <= before);
    done(b, r#"{"do":"spread_case","by_mm":0.8}"#);
    case.is("beyond it does not", seat(b) > before);
    vec![ring, case]
}

fn operations_are_checked_before_they_are_done() -> Vec<Row> {
    let mut errors = Row::stated(
        "Operations out of their ranges are refused by the name of what is wrong",
        TRADE,
        "as stated",
    );
    let mut words = Row::stated(
        "The schema of operations speaks of what can be asked for",
        TRADE,
        "as stated",
    );
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
        let error = error::operation(&Operation::from_json(json).expect_err(json)).line();
        errors.is(format_args!("{json}: {error}"), error.contains(what));
    }
    let schema = Operation::schema().to_string();
    for word in ["angle_deg", "maximum", "fit_shims", "declined"] {
        words.is(word, schema.contains(word) == (word != "declined"));
    }
    vec![errors, words]
}

/// A wheel cools in still air: warm enough to drop on right after heating, cold after two hours.
fn a_warm_wheel_cools_while_time_passes() -> Vec<Row> {
    let mut heated = Row::absolute(
        "A wheel heated to 120 °C, read at once with a usual thermometer",
        TRADE,
        7.0,
        "K",
    );
    let mut cooling = Row::absolute(
        "25 minutes later, a little over a third of its warmth is left",
        Source::Law("exponential cooling"),
        12.0,
        "K",
    );
    let mut cold = Row::range("Two hours later", TRADE, ..27.0, "°C");
    let mut hazard = Row::stated("A hot wheel is warned of, a cold one is not", TRADE, "as stated");
    let mut b = bench(Layout::A, Truth::default());
    let b = &mut b;
    let read = |b: &mut Bench| {
        let json = r#"{"do":"measure","what":{"quantity":"wheel_temperature"},"instrument":"thermometer"}"#;
        done(b, json).readings[0].value.expect("a value")
    };
    done(b, r#"{"do":"heat_wheel","to_c":120,"precautions":["hot_gloves"]}"#);
    let hot = read(b);
    heated.near("just heated", hot, 120.0);
    let unmet = Operation::from_json(r#"{"do":"fit_wheel","crosswise":true}"#).expect("good");
    hazard.is("shown beforehand", b.cautions(&unmet) == [Caution::HotWheel]);
    done(b, r#"{"do":"wait","minutes":25}"#);
    let warm = read(b);
    // 63 % of its warmth is gone in 25 minutes and a little more in the 3 of the reading.
    cooling.near("in still air", warm, 20.0 + 100.0 / std::f64::consts::E);
    done(b, r#"{"do":"wait","minutes":120}"#);
    cold.found("in still air", read(b));
    hazard.is("no hazard is left", b.cautions(&unmet).is_empty());
    vec![heated, cooling, cold, hazard]
}

/// A nut is felt through its wrench: one that is too small shows nothing, a click wrench cannot be read, both turn it.
fn a_nut_is_read_while_it_turns() -> Vec<Row> {
    let mut refusals = Row::stated(
        "A nut: a wrench beyond its range and a tool that is none are refused",
        TRADE,
        "as stated",
    );
    let mut shown_row = Row::absolute(
        "What a dial wrench shows of 217 N·m set with a click wrench (4 % each, pulls, graduation)",
        TRADE,
        0.12,
        "of it",
    );
    let mut follows = Row::stated(
        "A nut without a holding bar is warned of; a click wrench shows nothing, a small dial stands at its stop",
        TRADE,
        "as stated",
    );
    let mut b = bench(Layout::C, Truth::default());
    let b = &mut b;
    press_all(b);
    fit(b, ShimPlace::Spacer, 0.8);
    done(b, r#"{"do":"fit_spacer","spacer":"own"}"#);
    done(b, r#"{"do":"insert_pinion"}"#);
    done(b, r#"{"do":"fit_nut","new":true}"#);
    refused(
        b,
        &mut refusals,
        r#"{"do":"tighten_nut","torque_nm":500,"wrench":"click_wrench"}"#,
        "340",
    );
    refused(
        b,
        &mut refusals,
        r#"{"do":"tighten_nut","torque_nm":100,"wrench":"micrometer"}"#,
        "micrometer",
    );
    let unmet = done(b, r#"{"do":"tighten_nut","torque_nm":217,"wrench":"click_wrench"}"#);
    follows.is("217 N·m on the flange", unmet.cautions == [Caution::NutReaction]);
    let read = |b: &mut Bench, wrench: &str| {
        let json = format!(r#"{{"do":"turn_nut","angle_deg":0.2,"wrench":"{wrench}","precautions":["holding_bar"]}}"#);
        done(b, &json).readings[0].value
    };
    let shown = read(b, "large_dial_wrench").expect("a value");
    // Click wrench 4 %, dial wrench 4 %, pulls 2 % each, five degrees' graduation: within 12 % of what was set.
    shown_row.near("large dial wrench", shown / 217.0, 1.0);
    follows.is("it shows nothing", read(b, "click_wrench").is_none());
    follows.is("its pointer is at the stop", read(b, "small_dial_wrench").is_none());
    vec![refusals, shown_row, follows]
}

/// The hand-over can be refused for nothing, but a verdict needs evidence that is there.
fn a_part_is_condemned_with_evidence() -> Vec<Row> {
    let mut refusals = Row::stated(
        "A part is condemned with evidence that is there, and not otherwise",
        TRADE,
        "as stated",
    );
    let mut b = bench(Layout::A, Truth::default());
    let b = &mut b;
    refused(
        b,
        &mut refusals,
        r#"{"do":"condemn","part":"gears","reason":"no match","evidence":[]}"#,
        "evidence",
    );
    refused(
        b,
        &mut refusals,
        r#"{"do":"condemn","part":"gears","reason":"no match","evidence":[4]}"#,
        "no reading 4",
    );
    done(
        b,
        r#"{"do":"measure","what":{"quantity":"shim_piece","piece":0},"instrument":"micrometer"}"#,
    );
    done(
        b,
        r#"{"do":"condemn","part":"gears","reason":"no match","evidence":[1]}"#,
    );
    refusals.is("booked", b.judgements().len() == 1);
    vec![refusals]
}

checks![
    a_light_axle_is_built_from_parts,
    a_cartridge_axle_is_built_from_parts,
    a_worn_axle_is_stripped_down,
    heat_decides_how_the_wheel_sits,
    what_is_done_too_little_or_too_much_stays,
    operations_are_checked_before_they_are_done,
    a_warm_wheel_cools_while_time_passes,
    a_nut_is_read_while_it_turns,
    a_part_is_condemned_with_evidence,
];
