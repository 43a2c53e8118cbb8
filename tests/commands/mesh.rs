//! `lashwright mesh`: contact of a gear set at a placement, for people and for scripts.

use std::collections::BTreeSet;

use lashwright::catalogue::GEAR_SETS;
use lashwright::contact::FAST_ACCURACY;
use serde_json::{Value, json};

use super::program::{has_no_number, run};

const SET: &str = "3.73-tapered-ring-224";

fn document(arguments: &[&str]) -> Value {
    let run = run(&[&["mesh"], arguments, &["--json"]].concat());
    assert_eq!((run.code, run.err.as_str()), (0, ""), "{arguments:?}");
    serde_json::from_str(&run.out).expect("one JSON document")
}

/// All paths of keys in a document.
fn keys(value: &Value, path: &str, found: &mut BTreeSet<String>) {
    if let Value::Object(map) = value {
        for (key, inner) in map {
            let path = format!("{path}/{key}");
            found.insert(path.clone());
            keys(inner, &path, found);
        }
    }
}

fn all_keys(value: &Value) -> BTreeSet<String> {
    let mut found = BTreeSet::new();
    keys(value, "", &mut found);
    found
}

/// The contract with scripts: exactly these keys, nested so.
fn contract() -> Value {
    let flank = json!({
        "pattern": {"area_fraction": 0, "centroid": [0, 0], "toe": 0, "heel": 0, "root": 0, "top": 0},
        "transmission_error_urad": 0,
        "edge_contact": {"wheel": 0, "pinion_tip": 0}
    });
    json!({
        "gears": "", "route": "exact", "paste_um": 8.0, "warnings": [],
        "placement": {"pinion_axial_mm": 0, "wheel_axial_mm": 0, "offset_mm": 0, "shaft_angle_deg": 0},
        "geometry": {
            "pinion_pitch_angle_deg": 0, "wheel_pitch_angle_deg": 0, "pinion_spiral_angle_deg": 0,
            "wheel_spiral_angle_deg": 0, "offset_angle_pitch_plane_deg": 0, "limit_pressure_angle_deg": 0,
            "limit_radius_mm": 0, "mean_normal_module_mm": 0, "wheel_mean_radius_mm": 0, "pinion_mean_radius_mm": 0,
            "wheel_face_angle_deg": 0, "wheel_root_angle_deg": 0, "pinion_face_angle_deg": 0, "point_width_mm": 0,
            "blade_angle_drive_deg": 0, "blade_angle_coast_deg": 0
        },
        "lash_mm": {"min": 0, "mean": 0, "max": 0},
        "drive": flank, "coast": flank, "note": ""
    })
}

#[test]
fn json_has_exactly_the_keys_of_the_contract() {
    let document = document(&[SET]);
    assert_eq!(all_keys(&document), all_keys(&contract()), "keys");
    assert_eq!(document["gears"], SET);
    assert_eq!(document["route"], "exact");
    assert_eq!(document["paste_um"], 8.0);
    assert_eq!(document["warnings"], json!([]), "shipped sets have no warning");
}

#[test]
fn limit_radius_is_null_without_offset() {
    let bevel = document(&["3.00-tapered-ring-186"]);
    assert_eq!(bevel["geometry"]["limit_radius_mm"], Value::Null);
    assert_eq!(all_keys(&bevel), all_keys(&contract()), "the key is there all the same");
}

/// The published schema names the same keys, all of them required where they are always there.
#[test]
fn schema_is_that_of_the_document() {
    let printed = run(&["schema", "mesh"]);
    assert_eq!((printed.code, printed.err.as_str()), (0, ""));
    let schema: Value = serde_json::from_str(&printed.out).expect("one JSON document");
    fn walk(schema: &Value, root: &Value, path: &str, found: &mut BTreeSet<String>) {
        if let Some(reference) = schema["$ref"].as_str() {
            let target = root
                .pointer(reference.trim_start_matches('#'))
                .expect("the reference leads somewhere");
            return walk(target, root, path, found);
        }
        for option in schema["anyOf"].as_array().into_iter().flatten() {
            walk(option, root, path, found);
        }
        for (key, inner) in schema["properties"].as_object().into_iter().flatten() {
            let path = format!("{path}/{key}");
            found.insert(path.clone());
            walk(inner, root, &path, found);
        }
    }
    let mut found = BTreeSet::new();
    walk(&schema, &schema, "", &mut found);
    assert_eq!(found, all_keys(&contract()), "keys of the schema");
    let unknown = run(&["schema", "mash"]);
    assert_eq!((unknown.code, unknown.out.as_str()), (2, ""));
    assert!(unknown.err.contains("mesh"), "{}", unknown.err);
}

#[test]
fn shipped_sets_are_sound() {
    for set in GEAR_SETS.iter() {
        let document = document(&[set.name]);
        assert_eq!(document["warnings"], json!([]), "{}", set.name);
        for side in ["drive", "coast"] {
            let flank = &document[side];
            let area = flank["pattern"]["area_fraction"].as_f64().expect("a print");
            let error = flank["transmission_error_urad"].as_f64().expect("motion");
            let centroid = &flank["pattern"]["centroid"];
            let (x, y) = (centroid[0].as_f64().expect("x"), centroid[1].as_f64().expect("y"));
            println!(
                "{} {side}: area {area:.3}, x {x:+.3}, y {y:+.3}, {error:.1} µrad",
                set.name
            );
            assert!(
                (0.25..0.42).contains(&area) && x.abs() < 0.09 && (0.11..0.20).contains(&y),
                "{}",
                set.name
            );
            assert!((43.0..138.0).contains(&error), "{}: {error}", set.name);
            assert_eq!(
                flank["edge_contact"],
                json!({"wheel": 0.0, "pinion_tip": 0.0}),
                "{}",
                set.name
            );
        }
        assert_eq!(run(&["check", set.name]).code, 0, "{}", set.name);
    }
}

/// People read units, signs in words, both flanks, and lash in inches beside millimetres.
#[test]
fn people_read_words_and_units() {
    let run = run(&["mesh", SET, "--pinion-axial", "-0.1", "--wheel-axial", "0.05"]);
    assert_eq!((run.code, run.err.as_str()), (0, ""));
    for part in [
        "toward the ring gear (deeper)",
        "away from the pinion (more backlash)",
        "Backlash at the ring gear’s outer pitch diameter",
        "Drive side (convex",
        "Coast side (concave",
        "µrad",
        "\u{a0}in)",
        "No edge contact",
        "Tightest",
    ] {
        assert!(run.out.contains(part), "{part:?} in\n{}", run.out);
    }
    assert!(!run.out.contains("NaN"), "{}", run.out);
}

#[test]
fn placements_come_in_order_and_equal_single_runs() {
    let lines = run(&["mesh", SET, "--placements", "tests/commands/mesh_inputs/good.csv"]);
    assert_eq!((lines.code, lines.err.as_str()), (0, ""));
    let rows: Vec<Value> = lines
        .out
        .lines()
        .map(|line| serde_json::from_str(line).expect("one document a line"))
        .collect();
    let asked = [
        [0.1, 0.0, 0.0, 0.0],
        [-0.1, 0.05, 0.0, 0.0],
        [0.0, -0.1, 0.02, 0.01],
        [0.0, 0.0, 0.0, 0.0],
    ];
    assert_eq!(rows.len(), asked.len());
    for (row, [p, g, e, sigma]) in rows.iter().zip(asked) {
        assert_eq!(
            row["placement"],
            json!({"pinion_axial_mm": p, "wheel_axial_mm": g, "offset_mm": e, "shaft_angle_deg": sigma})
        );
        assert!(
            row.get("geometry").is_none(),
            "geometry belongs to the set, not to the row"
        );
        let mut alone = document(&[
            SET,
            &format!("--pinion-axial={p}"),
            &format!("--wheel-axial={g}"),
            &format!("--offset-shift={e}"),
            &format!("--shaft-angle-shift={sigma}"),
        ]);
        alone.as_object_mut().expect("an object").remove("geometry");
        assert_eq!(row, &alone, "a row says what a single run says, bit for bit");
    }
}

#[test]
fn threads_change_nothing() {
    let with = |threads: &str| {
        let output = assert_cmd::Command::cargo_bin("lashwright")
            .expect("the program was built")
            .current_dir(env!("CARGO_MANIFEST_DIR"))
            .env("RAYON_NUM_THREADS", threads)
            .args(["mesh", SET, "--placements", "tests/commands/mesh_inputs/good.csv"])
            .output()
            .expect("it runs");
        assert!(output.status.success());
        output.stdout
    };
    let one = with("1");
    assert_eq!(one, with("2"));
    assert_eq!(one, with("7"));
}

#[test]
fn bad_rows_are_reported_with_their_lines() {
    let run = run(&["mesh", SET, "--placements", "tests/commands/mesh_inputs/bad.csv"]);
    assert_eq!((run.code, run.out.as_str()), (2, ""), "nothing on standard output");
    insta::assert_snapshot!("bad_placements", run.err);
}

#[test]
fn bad_input_says_what_to_do_and_prints_nothing() {
    let header = "tests/commands/mesh_inputs/other_header.csv";
    for (arguments, said) in [
        (&[SET, "--route", "quick"] as &[&str], "Choose from: exact, fast"),
        (&[SET, "--paste", "0"], "--paste"),
        (&[SET, "--paste", "nan"], "--paste"),
        (&[SET, "--pinion-axial", "inf"], "--pinion-axial"),
        (&[SET, "--shaft-angle-shift", "60"], "--shaft-angle-shift"),
        (&[SET, "--placements", header], "header"),
        (&[SET, "--placements", "no-such.csv"], "no-such.csv"),
        (
            &[SET, "--placements", header, "--wheel-axial", "1"],
            "does not go together with",
        ),
        (&["no-such-set"], "3.73-tapered-ring-224"),
    ] {
        let run = run(&[&["mesh"], arguments].concat());
        assert_eq!((run.code, run.out.as_str()), (2, ""), "{arguments:?}");
        assert!(run.err.contains(said), "{arguments:?}: {}", run.err);
    }
}

/// The fast route answers in the same words and numbers as the exact one, as near as it promises.
#[test]
fn the_fast_route_says_what_the_exact_one_says() {
    let place = [
        "--pinion-axial",
        "0.06",
        "--wheel-axial",
        "-0.04",
        "--offset-shift",
        "0.02",
    ];
    let ask = |route: &str| document(&[&[SET, "--route", route], &place as &[&str]].concat());
    let (fast, exact) = (ask("fast"), ask("exact"));
    assert_eq!((&fast["route"], &exact["route"]), (&"fast".into(), &"exact".into()));
    assert_eq!(fast["geometry"], exact["geometry"]);
    let near = |pointer: &str, tolerance: f64| {
        let number = |d: &Value| d.pointer(pointer).and_then(Value::as_f64).expect("a number");
        let (a, b) = (number(&fast), number(&exact));
        assert!((a - b).abs() < tolerance, "{pointer}: fast {a}, exact {b}");
        assert!(
            a.to_bits() != b.to_bits(),
            "{pointer}: the fast route must not be the exact one"
        );
    };
    near("/lash_mm/mean", 1e-3 * FAST_ACCURACY.lash_um);
    for flank in ["drive", "coast"] {
        near(&format!("/{flank}/pattern/area_fraction"), FAST_ACCURACY.area_fraction);
        near(&format!("/{flank}/pattern/centroid/0"), FAST_ACCURACY.centroid[0]);
        near(&format!("/{flank}/pattern/centroid/1"), FAST_ACCURACY.centroid[1]);
        near(
            &format!("/{flank}/transmission_error_urad"),
            FAST_ACCURACY.transmission_error_urad,
        );
    }
}

/// Far out the fast route says that it is not to be trusted; the exact one has nothing to say.
#[test]
fn the_fast_route_warns_beyond_its_reach() {
    for (route, wheel, warned) in [
        ("fast", "0.31", true),
        ("fast", "-0.3", false),
        ("exact", "0.31", false),
    ] {
        let document = document(&[SET, "--route", route, "--wheel-axial", wheel]);
        let warnings = document["warnings"].as_array().expect("a list");
        let found = warnings
            .iter()
            .any(|w| w.as_str().is_some_and(|w| w.contains("fast route")));
        assert_eq!(found, warned, "{route} {wheel}: {warnings:?}");
    }
}

/// A reader that has seen enough ends the program quietly.
#[test]
fn many_rows_stream_until_nobody_reads() {
    use std::io::{BufRead, BufReader};
    let folder = std::env::temp_dir().join(format!("lashwright-rows-{}", std::process::id()));
    std::fs::create_dir_all(&folder).expect("a folder");
    let file = folder.join("many.csv");
    let rows: Vec<String> = (0..20_000)
        .map(|k| format!("{},0,0,0\n", 0.2 * f64::from(k) / 20_000.0))
        .collect();
    let text = format!(
        "pinion_axial_mm,wheel_axial_mm,offset_mm,shaft_angle_deg\n{}",
        rows.concat()
    );
    lashwright::store::write_whole(&file, text.as_bytes()).expect("written");
    let mut child = std::process::Command::new(env!("CARGO_BIN_EXE_lashwright"))
        .args(["mesh", SET, "--route", "fast", "--placements"])
        .arg(&file)
        .stdout(std::process::Stdio::piped())
        .spawn()
        .expect("it runs");
    let mut lines = BufReader::new(child.stdout.take().expect("piped")).lines();
    for k in 0..5 {
        let line = lines.next().expect("a line").expect("text");
        let row: Value = serde_json::from_str(&line).expect("one document a line");
        let moved = row["placement"]["pinion_axial_mm"].as_f64().expect("a number");
        assert!((moved - 0.2 * f64::from(k) / 20_000.0).abs() < 1e-12, "in order");
    }
    drop(lines);
    assert!(child.wait().expect("it ends").success(), "ends quietly");
    std::fs::remove_dir_all(&folder).expect("removed");
}

/// A file that reads well and whose gears cannot exist.
#[test]
fn impossible_gears_are_refused_by_mesh_and_check() {
    for command in ["mesh", "check"] {
        let run = run(&[command, "tests/commands/mesh_inputs/impossible.toml"]);
        assert_eq!((run.code, run.out.as_str()), (2, ""), "{command}");
        assert!(run.err.contains("impossible.toml"), "names the file: {}", run.err);
        assert!(run.err.contains("offset"), "says what to change: {}", run.err);
    }
}

/// Doubtful gears are computed, with a warning in both documents and in `check`.
#[test]
fn doubtful_gears_are_computed_with_a_warning() {
    let file = "tests/commands/mesh_inputs/doubtful.toml";
    let document = document(&[file]);
    let warnings = document["warnings"].as_array().expect("a list");
    assert!(!warnings.is_empty(), "an undercut or pointed set warns");
    assert!(document["lash_mm"]["mean"].is_number(), "computed all the same");
    let people = run(&["mesh", file]);
    assert!(people.out.contains("Warning: "), "{}", people.out);
    let check = run(&["check", file]);
    assert_eq!(check.code, 0, "doubtful is not wrong");
    assert!(check.out.to_lowercase().contains("warning"), "{}", check.out);
}

/// Far placements are stated results: numbers or null, never NaN, never a crash.
#[test]
fn far_placements_are_stated() {
    let run = run(&["mesh", SET, "--placements", "tests/commands/mesh_inputs/far.csv"]);
    assert_eq!((run.code, run.err.as_str()), (0, ""));
    assert!(!has_no_number(&run.out), "{}", run.out);
    let rows: Vec<Value> = run
        .out
        .lines()
        .map(|line| serde_json::from_str(line).expect("one document a line"))
        .collect();
    assert_eq!(
        rows[0]["drive"]["pattern"]["centroid"],
        Value::Null,
        "gears far apart print nothing"
    );
    assert!(
        rows[1]["lash_mm"]["max"]
            .as_f64()
            .expect("overlapping gears have a number")
            < 0.0,
        "interference"
    );
}
