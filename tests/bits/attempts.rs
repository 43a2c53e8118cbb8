//! Bits of attempts: 24 of them, 8 seeds of each embedded exercise, every answer and every state.
//!
//! Each attempt reads an axle that came in whole, takes it apart, builds it up again with another depth shim and reads it
//! again; in between it does things in any order, most of which are refused.

use lashwright::axle::Layout;
use lashwright::bench::{Answer, Bench, Operation};
use lashwright::contact::PHYSICS_VERSION;
use lashwright::exercise::Exercise;
use lashwright::job::scenarios;
use lashwright::numerics::random::Stream;
use serde_json::Value;

use super::whole::whole;

/// The physics version that the hashes below belong to.
const VERSION: u32 = 2;
/// BLAKE3 over answers and state hashes, by exercise.
const ATTEMPTS: [(&str, &str); 3] = [
    (
        "oat-barn-tractor",
        "635f907b60f5a3d3dabac4b0a38bb249de684e0ed81610987e3ab83a03dfb1cb",
    ),
    (
        "crush-and-stop",
        "7acf1e2e64c80f39e3e11989eb9467539aa7ae4357f5e64885774554f4dd76ab",
    ),
    (
        "feed-lorry-cartridge",
        "4d42e1446741f93098c4e28284dfbd6fdec3f0242c9f210c42327babd385721c",
    ),
];

const READ: &[&str] = &[
    r#"{"do":"turn","what":"pinion","turns":12}"#,
    r#"{"do":"measure","what":{"quantity":"rolling_torque"},"instrument":"small_dial_wrench"}"#,
    r#"{"do":"measure","what":{"quantity":"lash","tooth":0},"instrument":"dial_indicator"}"#,
    r#"{"do":"measure","what":{"quantity":"lash","tooth":11},"instrument":"dial_indicator"}"#,
    r#"{"do":"measure","what":{"quantity":"wheel_face_runout"},"instrument":"dial_indicator"}"#,
    r#"{"do":"brush_paste","teeth":[0,1,2,3,20,21],"film":"usual"}"#,
    r#"{"do":"roll","drag_nm":25,"passes":6}"#,
    r#"{"do":"measure","what":{"quantity":"print"},"instrument":"eye"}"#,
];

const APART: &[&str] = &[
    r#"{"do":"take_apart","to":"bearings","precautions":["hoist","holding_bar","eye_protection"]}"#,
    r#"{"do":"compare_numbers"}"#,
    r#"{"do":"clean","what":"shims"}"#,
    r#"{"do":"clean","what":"wheel_seat"}"#,
    r#"{"do":"clean","what":"threads"}"#,
];

const PINION: &[&str] = &[
    r#"{"do":"press","ring":"head_cup","force_kn":24,"precautions":["eye_protection","press_guard"]}"#,
    r#"{"do":"press","ring":"tail_cup","force_kn":24,"precautions":["eye_protection","press_guard"]}"#,
    r#"{"do":"press","ring":"head_cone","force_kn":24,"precautions":["eye_protection","press_guard"]}"#,
    r#"{"do":"fit_spacer","spacer":"own","new":true}"#,
    r#"{"do":"insert_pinion"}"#,
    r#"{"do":"fit_seal"}"#,
    r#"{"do":"fit_nut","new":true}"#,
];

const WHEEL: &[&str] = &[
    r#"{"do":"heat_wheel","to_c":120,"precautions":["hot_gloves"]}"#,
    r#"{"do":"fit_wheel","crosswise":true,"precautions":["hot_gloves"]}"#,
    r#"{"do":"wait","minutes":120}"#,
    r#"{"do":"tighten_ring_bolts","thread_lock":true}"#,
    r#"{"do":"spread_case","by_mm":0.4}"#,
    r#"{"do":"set_carrier_in","precautions":["hoist"]}"#,
    r#"{"do":"release_spreader"}"#,
    r#"{"do":"fit_caps","as_marked":true}"#,
    r#"{"do":"turn_adjuster","side":"back","notches":18}"#,
    r#"{"do":"turn_adjuster","side":"tooth","notches":18}"#,
    r#"{"do":"tighten_caps","to":"full"}"#,
    r#"{"do":"turn","what":"carrier","turns":4}"#,
];

const ANYHOW: &[&str] = &[
    r#"{"do":"push","what":"pinion","toward":"mesh"}"#,
    r#"{"do":"turn_nut","angle_deg":-3,"wrench":"large_dial_wrench"}"#,
    r#"{"do":"turn_nut","angle_deg":2.5,"wrench":"large_dial_wrench"}"#,
    r#"{"do":"measure","what":{"quantity":"pinion_depth"},"instrument":"depth_gauge"}"#,
    r#"{"do":"measure","what":{"quantity":"carrier_end_play"},"instrument":"worn_dial"}"#,
    r#"{"do":"measure","what":{"quantity":"shim_piece","piece":7},"instrument":"micrometer"}"#,
    r#"{"do":"measure","what":{"quantity":"seat_gap","ring":"head_cone"},"instrument":"feeler"}"#,
    r#"{"do":"loosen_caps"}"#,
    r#"{"do":"turn_adjuster","side":"tooth","notches":-1}"#,
    r#"{"do":"turn_adjuster","side":"back","notches":1}"#,
    r#"{"do":"tighten_caps","to":"full"}"#,
    r#"{"do":"turn","what":"pinion","turns":4}"#,
    r#"{"do":"note","what":{"quantity":"lash","tooth":0},"value":0.2}"#,
    r#"{"do":"predict","about":"lash","chances":[0.2,0.5,0.3]}"#,
    r#"{"do":"remove_seal"}"#,
    r#"{"do":"insert_pinion"}"#,
];

/// The numbers of an answer: what is seen and why something is refused are values of their own, which may be told otherwise.
fn values(answer: &Answer) -> String {
    let mut value = serde_json::to_value(answer).expect("an answer is JSON");
    let answer = value.as_object_mut().expect("an object");
    answer.retain(|key, _| key != "noticed" && key != "refused");
    for reading in answer
        .get_mut("readings")
        .and_then(Value::as_array_mut)
        .into_iter()
        .flatten()
    {
        let reading = reading.as_object_mut().expect("an object");
        reading.retain(|key, _| key != "name" && key != "quantity");
    }
    value.to_string()
}

struct Attempt {
    bench: Bench,
    hash: blake3::Hasher,
    stream: Stream,
    done: u32,
}

impl Attempt {
    fn does(&mut self, json: &str) {
        let operation = Operation::from_json(json).unwrap_or_else(|e| panic!("{json}: {e}"));
        let answer = self.bench.apply(&operation);
        self.done += u32::from(answer.done);
        self.hash.update(values(&answer).as_bytes());
    }

    fn all(&mut self, operations: &[&str]) {
        for json in operations {
            self.does(json);
        }
    }

    fn anyhow(&mut self, count: u32) {
        for _ in 0..count {
            let at = self.stream.index(u64::try_from(ANYHOW.len()).expect("small"));
            self.does(ANYHOW[usize::try_from(at).expect("small")]);
        }
    }

    /// The old pack of a place with one of its thin pieces added, or without.
    fn shims(&mut self, place: &str, old: &[u32], thin: bool) {
        let Some(first) = old.first() else { return };
        let kit = &self.bench.setting().kit;
        let own = kit[usize::try_from(*first).expect("small")].place;
        let thinnest = kit
            .iter()
            .position(|p| p.place == own && p.labelled_mm < 0.06)
            .expect("thin pieces");
        let pieces = if thin {
            format!("[{first},{thinnest}]")
        } else {
            format!("[{first}]")
        };
        self.does(&format!(r#"{{"do":"fit_shims","place":"{place}","pieces":{pieces}}}"#));
    }
}

/// One attempt: hash, operations done.
fn play(exercise: &Exercise, seed: u64) -> (String, u32) {
    let layout = exercise.axle().layout();
    let mut a = Attempt {
        bench: whole(exercise, seed, exercise.scenario().start.old_depth_shim_mm),
        hash: blake3::Hasher::new(),
        stream: Stream::new(seed, "any order"),
        done: 0,
    };
    a.all(READ);
    a.anyhow(12);
    a.all(APART);
    // The first pieces of the kit are the packs that came with the axle, in the order of the places.
    let packs: [&[u32]; 4] = match layout {
        Layout::A => [&[0], &[], &[1], &[2]],
        Layout::B | Layout::C => [&[0], &[1], &[], &[]],
    };
    a.shims("depth", packs[0], true);
    a.shims("spacer", packs[1], layout == Layout::C);
    a.all(PINION);
    match layout {
        Layout::A => {
            a.does(r#"{"do":"tighten_nut","torque_nm":150,"wrench":"click_wrench","precautions":["holding_bar"]}"#);
            for _ in 0..30 {
                a.does(r#"{"do":"turn_nut","angle_deg":4,"wrench":"large_dial_wrench","precautions":["holding_bar"]}"#);
            }
        }
        Layout::B => {
            a.does(
                r#"{"do":"tighten_nut","torque_nm":500,"wrench":"multiplier_wrench","precautions":["holding_bar"]}"#,
            );
            a.does(r#"{"do":"bolt_cartridge"}"#);
        }
        Layout::C => {
            a.does(r#"{"do":"tighten_nut","torque_nm":217,"wrench":"click_wrench","precautions":["holding_bar"]}"#);
        }
    }
    a.shims("tooth_side", packs[2], false);
    a.shims("back_side", packs[3], false);
    a.all(WHEEL);
    a.all(READ);
    a.anyhow(12);
    a.does(r#"{"do":"finish"}"#);
    (a.hash.finalize().to_hex().to_string(), a.done)
}

#[test]
fn attempts_have_the_committed_bits() {
    assert_eq!(
        PHYSICS_VERSION, VERSION,
        "the hashes below belong to another physics version"
    );
    let mut wrong = Vec::new();
    for (name, committed) in ATTEMPTS {
        let exercise = scenarios::find(name).expect("embedded").exercise;
        let mut hash = blake3::Hasher::new();
        for seed in 0..8 {
            let (attempt, done) = play(&exercise, seed);
            println!("{name} {seed}: {done} operations done");
            assert!(done > 40, "{name} {seed}: only {done} operations were done");
            hash.update(attempt.as_bytes());
        }
        let hash = hash.finalize().to_hex().to_string();
        if hash != committed {
            wrong.push((name, hash));
        }
    }
    assert!(wrong.is_empty(), "bits of attempts: {wrong:#?}");
}
