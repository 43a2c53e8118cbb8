//! `lashwright preload`: one case, tables, the chart, and what is refused.
#![expect(
    clippy::disallowed_methods,
    reason = "a test reads the pictures that the program wrote"
)]

use std::path::PathBuf;

use lashwright::bearing::{FrictionConstants, FrictionSeries};
use lashwright::job::supports;
use serde_json::Value;

use super::program::{has_no_number, run};

/// Supports whose texts for people are kept.
const KEPT: [&str; 4] = [
    "light-axle-sleeve",
    "medium-axle-solid",
    "cartridge-solid",
    "heavy-axle-solid",
];

fn json(arguments: &[&str]) -> Value {
    let run = run(&[&["preload"], arguments, &["--json"]].concat());
    assert_eq!((run.code, run.err.as_str()), (0, ""), "{arguments:?}");
    serde_json::from_str(&run.out).expect("one JSON document")
}

fn number(value: &Value, path: &str) -> f64 {
    value
        .pointer(path)
        .and_then(Value::as_f64)
        .unwrap_or_else(|| panic!("{path} in {value}"))
}

/// A file of its own in the build's folder for temporary files.
fn scratch(name: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name)
}

/// The keys and their order are the published ones.
#[test]
fn the_document_has_the_published_keys() {
    let case = run(&["preload", "medium-axle-solid", "--json"]);
    let mut at = 0;
    for key in [
        "support",
        "spacer_length_mm",
        "nut_torque_nm",
        "turn_rpm",
        "temperature_c",
        "clamp_n",
        "spacer_n",
        "preload_n",
        "play_um",
        "spacer_loaded_length_mm",
        "head_deflection_um",
        "tail_deflection_um",
        "pinion_shift_um",
        "oil_viscosity_mm2_s",
        "rolling_torque_nm",
        "head_bearing",
        "tail_bearing",
        "seal",
        "total",
        "breakaway_nm",
        "head_bearing",
        "tail_bearing",
        "seal",
        "total",
        "note",
    ] {
        let quoted = format!("\"{key}\":");
        at += case.out[at..]
            .find(&quoted)
            .unwrap_or_else(|| panic!("{key} after byte {at} of {}", case.out));
    }
    assert_eq!(case.out.matches("\":").count(), 25, "no other key: {}", case.out);
}

/// The sample of the file format's description against an independent computation (Python, SciPy).
#[test]
fn the_sample_gives_the_independent_numbers() {
    let case = json(&[
        "tests/commands/supports/sample.toml",
        "--spacer-mm",
        "44.957",
        "--nut-torque-nm",
        "217",
    ]);
    for (path, want) in [
        ("/clamp_n", 64_321.928_003_407_97),
        ("/spacer_n", 56_346.002_600_859_225),
        ("/preload_n", 7_975.925_402_548_748),
        ("/spacer_loaded_length_mm", 44.924_639_917_744_93),
        ("/head_deflection_um", 15.524_692_787_121_113),
        ("/pinion_shift_um", 37.680_041_127_534_3),
        ("/oil_viscosity_mm2_s", 489.450_082_874_311_5),
        ("/rolling_torque_nm/head_bearing", 0.924_903_956_161_469_4),
        ("/rolling_torque_nm/total", 1.998_442_912_322_938_8),
        ("/breakaway_nm/total", 2.515_990_012_222_974),
    ] {
        let got = number(&case, path);
        println!("{path}: {got} (deviation {:.1e})", got / want - 1.0);
        assert!((got / want - 1.0).abs() < 1e-8, "{path}: {got} for {want}");
    }
    assert!(number(&case, "/play_um") == 0.0, "no play: {case}");
}

/// The texts for people, whole: nothing outside can check their wording.
#[test]
fn people_get_one_case_of_each_support() {
    for support in KEPT {
        let case = run(&["preload", support]);
        assert_eq!((case.code, case.err.as_str()), (0, ""), "{support}");
        insta::assert_snapshot!(support, case.out);
        let script = json(&[support]);
        let kilonewtons = format!("{:.2}", 1e-3 * number(&script, "/preload_n"));
        assert!(
            case.out.contains(&kilonewtons),
            "{support}: text and JSON agree on {kilonewtons} kN"
        );
    }
}

/// Every support that ships, and every file that says it, is tightened to what it is meant for; a file of version 1 of the
/// format does not say.
#[test]
fn the_usual_nut_torque_is_what_the_support_is_meant_for() {
    for found in supports::embedded().unwrap_or_else(|failure| panic!("{failure}")) {
        let meant = found.support.meant_nut_torque_nm.expect("version 2");
        let path = format!("assets/supports/{}.toml", found.source);
        for source in [found.source.as_str(), path.as_str()] {
            let used = number(&json(&[source]), "/nut_torque_nm");
            assert_eq!(used.to_bits(), meant.to_bits(), "{source}: {meant}");
        }
    }
    let old = scratch("version_1.toml");
    std::fs::write(&old, version_1(FrictionSeries::InchM)).expect("written");
    let old = json(&[old.to_str().expect("a plain name")]);
    assert_eq!(number(&old, "/nut_torque_nm").to_bits(), 217_f64.to_bits(), "{old}");
    let help = run(&["preload", "--help"]).out;
    let words = help.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(words.contains(&supports::names().join(", ")), "{help}");
}

/// The sample as a file of version 1 of the format, both bearings of one row.
fn version_1(row: FrictionSeries) -> String {
    version_2(row)
        .replace("lashwright-support/2", "lashwright-support/1")
        .lines()
        .filter(|line| !line.starts_with("nut_torque_nm") && !line.starts_with("steep"))
        .map(|line| {
            if line.starts_with("friction = ") {
                format!("friction_series = \"{}\"\n", row.name())
            } else {
                format!("{line}\n")
            }
        })
        .collect()
}

/// The sample with both bearings of one row, in its constants.
fn version_2(row: FrictionSeries) -> String {
    let sample = std::fs::read_to_string("tests/commands/supports/sample.toml").expect("the sample");
    let FrictionConstants { r1, r2, s1, s2 } = row.constants();
    let constants = format!(
        "friction = {{ r1 = {r1:e}, r2 = {r2}, s1 = {s1}, s2 = {s2} }}\nsteep = {}",
        row.is_steep()
    );
    let text = sample.replace(
        "friction = { r1 = 2.48e-6, r2 = 10.9, s1 = 0.015, s2 = 2.0 }",
        &constants,
    );
    assert_eq!(text.matches(&constants).count(), 2, "both bearings: {text}");
    text
}

/// For each row of the friction table a file that names it and a file with its constants give the same bits, and the same
/// words.
#[test]
fn both_versions_of_the_format_give_the_same_bits() {
    let file = scratch("either_version.toml");
    let name = file.to_str().expect("a plain name");
    let mut answers = Vec::new();
    for row in FrictionSeries::ALL {
        let [old, new] = [version_1(row), version_2(row)].map(|text| {
            std::fs::write(&file, text).expect("written");
            ["--json", "--csv"].map(|form| {
                // A table, so that both torques of new and run-in bearings are in it.
                let table = [
                    "--nut-torque-from",
                    "180",
                    "--nut-torque-to",
                    "220",
                    "--step",
                    "20",
                    form,
                ];
                let run = run(&[&["preload", name], &table[..]].concat());
                assert_eq!((run.code, run.err.as_str()), (0, ""), "{row:?}");
                run.out
            })
        });
        assert_eq!(old, new, "{row:?}");
        answers.push(new);
        let people = run(&["preload", name, "--nut-torque-nm", "217"]).out;
        assert_eq!(
            people.contains("up to four times the breakaway"),
            row.is_steep(),
            "{people}"
        );
    }
    answers.dedup();
    assert_eq!(answers.len(), FrictionSeries::ALL.len(), "neighbouring rows differ");
}

#[test]
fn end_play_is_a_stated_result() {
    let case = run(&["preload", "heavy-axle-solid", "--nut-torque-nm", "217"]);
    assert!(
        case.out
            .contains("Note: The spacer holds the bearings apart: end play, no preload."),
        "{}",
        case.out
    );
    let script = json(&["heavy-axle-solid", "--nut-torque-nm", "217"]);
    assert!(
        number(&script, "/play_um") > 10.0 && number(&script, "/preload_n") == 0.0,
        "{script}"
    );
    let seal = number(&script, "/rolling_torque_nm/seal");
    assert!(
        (number(&script, "/rolling_torque_nm/total") - seal).abs() < 1e-15,
        "only the seal drags: {script}"
    );
}

/// Where formulas are outside their range the numbers come with a warning, or not at all.
#[test]
fn numbers_beyond_their_range_are_flagged() {
    for (arguments, words) in [
        (
            &["medium-axle-solid", "--spacer-mm", "51.5"][..],
            "it lies loose: the bearings carry the whole clamp",
        ),
        (&["medium-axle-solid", "--turn-rpm", "300"], "Above 120 r/min"),
        (&["medium-axle-solid", "--temperature-c", "-40"], "all but solid"),
        (
            &["light-axle-sleeve", "--nut-torque-nm", "120"],
            "has not begun to crush",
        ),
        (
            &["light-axle-sleeve", "--nut-torque-nm", "1500"],
            "In a shop the bearings would be crushed",
        ),
        (
            &["tests/commands/supports/steep.toml"],
            "up to four times the breakaway torque",
        ),
    ] {
        let case = run(&[&["preload"], arguments].concat());
        assert_eq!((case.code, case.err.as_str()), (0, ""), "{arguments:?}");
        assert!(
            case.out.lines().any(|l| l.starts_with("Note: ") && l.contains(words)),
            "{arguments:?}: {}",
            case.out
        );
    }
}

#[test]
fn tables_run_over_spacer_length_and_nut_torque() {
    let by_length = [
        "preload",
        "medium-axle-solid",
        "--spacer-from",
        "52.30",
        "--spacer-to",
        "52.40",
        "--step",
        "0.0127",
    ];
    let people = run(&by_length);
    assert_eq!((people.code, people.err.as_str()), (0, ""), "table");
    insta::assert_snapshot!("table_over_spacer", people.out);
    let by_torque = [
        "preload",
        "light-axle-sleeve",
        "--nut-torque-from",
        "180",
        "--nut-torque-to",
        "230",
        "--step",
        "5",
    ];
    insta::assert_snapshot!("table_over_nut_torque", run(&by_torque).out);

    let csv = run(&[&by_length[..], &["--csv"]].concat());
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_reader(csv.out.as_bytes());
    let head = reader.headers().expect("a header").clone();
    let column = |name: &str| head.iter().position(|h| h == name).expect("the column");
    let (length, preload, play) = (column("spacer_length_mm"), column("preload_n"), column("play_um"));
    let rows: Vec<Vec<f64>> = reader
        .records()
        .map(|row| {
            row.expect("a row")
                .iter()
                .map(|v| v.parse().expect("a number"))
                .collect()
        })
        .collect();
    assert_eq!(rows.len(), 8, "0.0127 from 52.30 to 52.40");
    for pair in rows.windows(2) {
        assert!((pair[1][length] - pair[0][length] - 0.0127).abs() < 1e-9, "step");
        assert!(pair[1][preload] <= pair[0][preload], "more shim, less preload");
    }
    assert!(
        rows.iter().all(|r| (r[play] > 0.0) != (r[preload] > 0.0)),
        "either play or preload"
    );
    let documents = json(&by_length[1..]);
    assert_eq!(documents.as_array().map(Vec::len), Some(8), "one document a row");
    assert!(
        (number(&documents, "/3/preload_n") - rows[3][preload]).abs() < 1e-9,
        "CSV and JSON agree"
    );
    // A row is the case itself.
    let one = json(&[
        "medium-axle-solid",
        "--spacer-mm",
        &documents[3]["spacer_length_mm"].to_string(),
    ]);
    assert_eq!(one, documents[3], "row and case");
}

#[test]
fn the_chart_is_written_whole_and_shows_what_was_computed() {
    for found in supports::embedded().unwrap_or_else(|failure| panic!("{failure}")) {
        let support = found.source.as_str();
        let file = scratch(&format!("{support}.svg"));
        let name = file.to_str().expect("a plain name");
        let case = run(&["preload", support, "--picture", name]);
        assert_eq!((case.code, case.err.as_str()), (0, ""), "{support}");
        let svg = std::fs::read_to_string(&file).expect("the picture is there");
        assert!(svg.starts_with("<svg ") && svg.ends_with("</svg>\n"), "whole");
        assert!(!has_no_number(&svg), "every place is a number");
        for words in [
            "window, new",
            "window, run in",
            "end play:",
            "Present: ",
            "never a specification",
        ] {
            assert!(svg.contains(words), "{support} says {words}");
        }
        let torque = number(&json(&[support]), "/rolling_torque_nm/total");
        assert!(
            svg.contains(&format!("{torque:.2} N·m")),
            "{support} shows {torque:.2} N·m"
        );
        // The present point stands at its torque on the scale: 0 at y = 496, 1.3 times the window's upper end at 140.
        let highest = if found.support.has_sleeve() {
            1.3 * 29.0
        } else {
            1.3 * 36.0
        };
        let in_lb = torque / 0.112_984_829;
        let dot = svg
            .lines()
            .find(|l| l.contains("fill=\"#562b99\"") && l.starts_with("<path"))
            .expect("the dot");
        let start = dot
            .split(['"', 'M', 'C', ' '])
            .filter_map(|t| t.parse::<f64>().ok())
            .nth(1)
            .expect("its height");
        let wanted = 496.0 - 356.0 * in_lb / highest;
        assert!(
            (start - wanted).abs() < 0.02,
            "{support}: the dot stands at {start}, {in_lb} in·lb belong at {wanted}"
        );
        let again = scratch(&format!("{support}-again.svg"));
        run(&["preload", support, "--picture", again.to_str().expect("a plain name")]);
        assert_eq!(std::fs::read_to_string(&again).ok(), Some(svg), "same bytes");
    }
}

#[test]
fn a_chart_that_cannot_be_written_leaves_nothing() {
    let case = run(&["preload", "medium-axle-solid", "--picture", "no-such-folder/chart.svg"]);
    assert_eq!((case.code, case.out.as_str()), (1, ""), "{}", case.err);
    assert!(
        case.err.contains("cannot write no-such-folder/chart.svg"),
        "{}",
        case.err
    );
}

/// All problems of a file at once, each with line, caret and what to do; nothing on standard output.
#[test]
fn bad_files_get_all_their_problems() {
    for name in [
        "inches",
        "many_slips",
        "does_not_fit_together",
        "solid_with_sleeve_keys",
        "empty",
        "keys_of_version_1",
        "keys_of_version_2",
        "slips_under_load",
    ] {
        let case = run(&["preload", &format!("tests/commands/supports/{name}.toml")]);
        assert_eq!(
            (case.code, case.out.as_str()),
            (2, ""),
            "{name}: nothing on standard output"
        );
        insta::assert_snapshot!(format!("bad_{name}"), case.err);
    }
}

#[test]
fn bad_arguments_get_all_their_problems() {
    let case = run(&[
        "preload",
        "medium-axle-solid",
        "--spacer-mm",
        "2.06",
        "--nut-torque-nm",
        "-5",
        "--turn-rpm",
        "0",
        "--temperature-c",
        "212",
    ]);
    assert_eq!((case.code, case.out.as_str()), (2, ""), "{}", case.err);
    insta::assert_snapshot!("bad_arguments", case.err);
    for arguments in [
        &["preload", "no-such-support"][..],
        &["preload", "no-such-file.toml"],
        &["preload", "medium-axle-solid", "--spacer-mm", "NaN"],
        &["preload", "medium-axle-solid", "--nut-torque-nm", "inf"],
        &["preload", "medium-axle-solid", "--step", "1"],
        &["preload", "medium-axle-solid", "--csv"],
        &[
            "preload",
            "medium-axle-solid",
            "--spacer-from",
            "52.3",
            "--step",
            "0.01",
        ],
        &[
            "preload",
            "medium-axle-solid",
            "--spacer-from",
            "52.3",
            "--spacer-to",
            "52.4",
            "--step",
            "0",
        ],
        &[
            "preload",
            "medium-axle-solid",
            "--spacer-from",
            "52.3",
            "--spacer-to",
            "52.4",
            "--step",
            "NaN",
        ],
        &[
            "preload",
            "medium-axle-solid",
            "--spacer-from",
            "52.4",
            "--spacer-to",
            "52.3",
            "--step",
            "0.01",
        ],
        &[
            "preload",
            "medium-axle-solid",
            "--spacer-from",
            "52.3",
            "--spacer-to",
            "52.4",
            "--step",
            "1e-9",
        ],
        &[
            "preload",
            "medium-axle-solid",
            "--nut-torque-from",
            "0",
            "--nut-torque-to",
            "300",
            "--step",
            "10",
        ],
        // M22 does not stand this.
        &["preload", "medium-axle-solid", "--nut-torque-nm", "9000"],
    ] {
        let case = run(arguments);
        assert_eq!((case.code, case.out.as_str()), (2, ""), "{arguments:?}: {}", case.err);
        assert!(!case.err.is_empty(), "{arguments:?} is told why");
    }
}

#[test]
fn check_knows_supports() {
    let case = run(&["check", "light-axle-sleeve", "assets/supports/cartridge-solid.toml"]);
    assert_eq!((case.code, case.err.as_str()), (0, ""), "{}", case.out);
    assert!(
        case.out.contains("collapsible (crush) spacer: no problem found") && case.out.contains("solid spacer"),
        "{}",
        case.out
    );
    let bad = run(&["check", "tests/commands/supports/many_slips.toml"]);
    assert_eq!((bad.code, bad.out.as_str()), (2, ""), "{}", bad.err);
    assert!(bad.err.contains("problems"), "{}", bad.err);
}
