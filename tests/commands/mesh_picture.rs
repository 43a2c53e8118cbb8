//! `lashwright mesh --picture` and `--chart`: what is drawn agrees with the numbers of the JSON document.
#![expect(
    clippy::disallowed_methods,
    reason = "a test reads the pictures that the program wrote"
)]

use std::path::PathBuf;

use serde_json::Value;

use super::program::run;

const SET: &str = "3.73-tapered-ring-224";
const STEEL: &str = "fill=\"#69717a\"";

/// A file of its own in the build's folder for temporary files.
fn scratch(name: &str) -> PathBuf {
    let file = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(name);
    match std::fs::remove_file(&file) {
        Err(error) if error.kind() != std::io::ErrorKind::NotFound => panic!("{error}"),
        _ => file,
    }
}

fn drawn(name: &str, arguments: &[&str]) -> String {
    let file = scratch(name);
    let path = file.to_str().expect("a plain name");
    let run = run(&[&["mesh"], arguments, &["--picture", path]].concat());
    assert_eq!((run.code, run.err.as_str()), (0, ""), "{arguments:?}");
    assert!(run.out.contains("Picture written to "), "{}", run.out);
    std::fs::read_to_string(&file).expect("the picture is there")
}

fn document(arguments: &[&str]) -> Value {
    let run = run(&[&["mesh"], arguments, &["--json"]].concat());
    assert_eq!((run.code, run.err.as_str()), (0, ""), "{arguments:?}");
    serde_json::from_str(&run.out).expect("one JSON document")
}

/// Whether every element is closed, and everything that could end text or an attribute is escaped.
fn assert_whole(svg: &str) {
    assert!(svg.starts_with("<svg ") && svg.ends_with("</svg>\n"), "whole");
    assert!(
        !svg.contains("NaN") && !svg.contains("inf\""),
        "every place is a number"
    );
    assert!(
        !svg.contains("href") && !svg.contains("url(http"),
        "nothing from outside"
    );
    let mut open: Vec<&str> = Vec::new();
    for part in svg.split('<').skip(1) {
        let (tag, text) = part.split_once('>').expect("every element ends");
        assert!(!text.contains('>'), "text is escaped: {text}");
        assert_eq!(tag.matches('"').count() % 2, 0, "attributes end: {tag}");
        let name = tag.trim_start_matches('/').split([' ', '/']).next().expect("a name");
        if tag.starts_with('/') {
            assert_eq!(open.pop(), Some(name), "elements end in order");
        } else if !tag.ends_with('/') {
            open.push(name);
        }
        for entity in text.split('&').skip(1) {
            assert!(
                ["amp;", "lt;", "gt;", "quot;"].iter().any(|e| entity.starts_with(e)),
                "escaped: {entity}"
            );
        }
    }
    assert!(open.is_empty(), "left open: {open:?}");
}

/// The rings of a path without curves.
fn rings(line: &str) -> Vec<Vec<[f64; 2]>> {
    let outline = line
        .split("d=\"")
        .nth(1)
        .and_then(|d| d.split('"').next())
        .expect("a path");
    outline
        .split('M')
        .filter(|ring| !ring.is_empty())
        .map(|ring| {
            let numbers: Vec<f64> = ring
                .split(['L', ' ', 'Z'])
                .filter(|n| !n.is_empty())
                .map(|n| n.parse().expect("a number"))
                .collect();
            numbers.chunks(2).map(|p| [p[0], p[1]]).collect()
        })
        .collect()
}

/// From the picture back to flank coordinates, by the tooth's drawn outline.
struct Tooth {
    corners: Vec<[f64; 2]>,
}

impl Tooth {
    fn coordinates(&self, [px, py]: [f64; 2]) -> [f64; 2] {
        let [toe_root, heel_root, heel_top, toe_top] = self.corners.as_slice() else {
            panic!("four corners");
        };
        let part = (px - toe_root[0]) / (heel_root[0] - toe_root[0]);
        let root = toe_root[1] + part * (heel_root[1] - toe_root[1]);
        let top = toe_top[1] + part * (heel_top[1] - toe_top[1]);
        [2.0 * part - 1.0, 2.0 * (py - root) / (top - root) - 1.0]
    }
}

/// Area fraction and centroid of rings in flank coordinates.
fn measured(rings: &[Vec<[f64; 2]>]) -> (f64, [f64; 2]) {
    let (mut area, mut moment) = (0.0, [0.0; 2]);
    for ring in rings {
        for (k, a) in ring.iter().enumerate() {
            let b = ring[(k + 1) % ring.len()];
            let cross = a[0] * b[1] - b[0] * a[1];
            area += 0.5 * cross;
            moment[0] += cross * (a[0] + b[0]) / 6.0;
            moment[1] += cross * (a[1] + b[1]) / 6.0;
        }
    }
    (area / 4.0, moment.map(|m| m / area))
}

/// The drawn print, measured on the sheet, has the area, middle and ends that the document states.
#[test]
fn what_is_drawn_is_what_was_computed() {
    let mut worst = [0.0_f64; 3];
    for (k, arguments) in [
        &[SET] as &[&str],
        &[SET, "--pinion-axial", "0.1", "--wheel-axial", "0.05"],
        &["3.55-tapered-ring-198", "--pinion-axial", "-0.3"],
        &["4.88-uniform-ring-226", "--pinion-axial", "-0.1"],
        &[
            "4.11-tapered-ring-178",
            "--pinion-axial",
            "0.3",
            "--shaft-angle-shift",
            "0.3",
        ],
        &["3.00-tapered-ring-186", "--paste", "15"],
    ]
    .into_iter()
    .enumerate()
    {
        let svg = drawn(&format!("mesh_{k}.svg"), arguments);
        assert_whole(&svg);
        let document = document(arguments);
        let lines: Vec<&str> = svg.lines().collect();
        // Each tooth begins with its outline under the hatch; the print is the next thing that is steel.
        let outlines: Vec<usize> = (0..lines.len())
            .filter(|&l| lines[l].contains("fill=\"url(#crossed-line)\"") && lines[l].matches('L').count() == 3)
            .take(2)
            .collect();
        assert_eq!(outlines.len(), 2, "two teeth");
        for (side, at) in ["drive", "coast"].into_iter().zip(outlines) {
            let tooth = Tooth {
                corners: rings(lines[at]).concat(),
            };
            let pattern = &document[side]["pattern"];
            let number = |key: &str| pattern[key].as_f64().expect("a number");
            let steel = lines[at..]
                .iter()
                .find(|line| line.contains(STEEL))
                .expect("a print on this tooth");
            let print: Vec<Vec<[f64; 2]>> = rings(steel)
                .iter()
                .map(|ring| ring.iter().map(|&p| tooth.coordinates(p)).collect())
                .collect();
            let (area, centroid) = measured(&print);
            let ends = print.iter().flatten();
            let toe = ends.clone().map(|p| p[0]).fold(f64::INFINITY, f64::min);
            let heel = ends.map(|p| p[0]).fold(f64::NEG_INFINITY, f64::max);
            let off = |k: usize| (centroid[k] - pattern["centroid"][k].as_f64().expect("a number")).abs();
            let ends_off = (toe - number("toe")).abs().max((heel - number("heel")).abs());
            println!(
                "{arguments:?} {side}: area off by {:.5}, middle by {:.5} and {:.5}, ends by {ends_off:.5}",
                (area - number("area_fraction")).abs(),
                off(0),
                off(1)
            );
            worst[0] = worst[0].max((area - number("area_fraction")).abs());
            worst[1] = worst[1].max(off(0)).max(off(1));
            worst[2] = worst[2].max(ends_off);
            // The white cross stands on the middle.
            let cross = lines[at..]
                .iter()
                .find(|l| l.contains("stroke=\"#fffcf4\" stroke-width=\"2\""))
                .expect("the cross");
            let cross = rings(cross);
            let middle = tooth.coordinates([
                0.5 * (cross[0][0][0] + cross[0][1][0]),
                0.5 * (cross[1][0][1] + cross[1][1][1]),
            ]);
            for k in 0..2 {
                let wanted = pattern["centroid"][k].as_f64().expect("a number");
                assert!((middle[k] - wanted).abs() < 0.003, "{side}: {middle:?}");
            }
        }
        for words in [
            ">toe<",
            ">heel<",
            ">face (top)<",
            ">flank (root)<",
            "never a specification",
            "Backlash over one pitch",
        ] {
            assert!(svg.contains(words), "{words}");
        }
        for side in ["drive", "coast"] {
            let error = document[side]["transmission_error_urad"].as_f64().expect("a number");
            assert!(
                svg.contains(&format!(">{error:.0}\u{a0}µrad<")),
                "{error:.0} µrad is written"
            );
        }
    }
    println!(
        "largest: area {:.5}, middle {:.5}, ends {:.5}",
        worst[0], worst[1], worst[2]
    );
    assert!(worst[0] < 0.002 && worst[1] < 0.003 && worst[2] < 0.01, "{worst:?}");
}

#[test]
fn the_same_picture_has_the_same_bytes() {
    let arguments = [SET, "--pinion-axial", "0.05", "--chart", "P=-0.1:0.1:0.1,G=0:0.05:0.05"];
    let words = [
        SET,
        "--pinion-axial",
        "0.05",
        "--chart",
        "pinion=-0.1:0.1:0.1,ring-gear=0:0.05:0.05",
    ];
    let (one, two) = (drawn("chart_1.svg", &arguments), drawn("chart_2.svg", &words));
    assert_eq!(one, two, "axes by the letters of before and by words");
    assert_whole(&one);
}

#[test]
fn gears_that_cannot_touch_are_drawn_without_a_print() {
    let svg = drawn("mesh_far.svg", &[SET, "--pinion-axial", "30"]);
    assert_whole(&svg);
    assert_eq!(
        svg.matches(">cannot touch: the pinion does not reach<").count(),
        4,
        "words and rims"
    );
    assert!(svg.contains(">no pattern<"));
}

/// A cell shows the tightest lash of its placement; the present one is framed; words say the directions.
#[test]
fn chart_cells_say_what_single_runs_say() {
    let svg = drawn(
        "chart_cells.svg",
        &[SET, "--chart", "pinion=-0.1:0.1:0.1,ring-gear=-0.05:0.05:0.05"],
    );
    assert_whole(&svg);
    let mut lashes = Vec::new();
    for g in ["-0.05", "0", "0.05"] {
        for p in ["-0.1", "0", "0.1"] {
            let document = document(&[SET, "--pinion-axial", p, "--wheel-axial", g]);
            lashes.push(format!("{:.2}", document["lash_mm"]["min"].as_f64().expect("a number")));
        }
    }
    let written: Vec<&str> = svg
        .lines()
        .filter(|l| l.starts_with("<text") && l.contains("text-anchor=\"middle\"") && !l.contains("bold"))
        .filter_map(|l| l.split(['>', '<']).nth(2))
        .filter(|words| words.len() == 4 && words.parse::<f64>().is_ok())
        .collect();
    assert_eq!(written, lashes, "row after row");
    for words in [
        "toward (deeper)",
        "away (shallower)",
        "toward the pinion",
        "away (more backlash)",
        "Pinion depth, mm (in)",
        "Ring gear, mm (in)",
        "−0.10",
        "+0.0039",
        "present placement",
    ] {
        assert!(svg.contains(words), "{words}");
    }
    let frame = svg
        .lines()
        .find(|l| l.contains("stroke=\"#562b99\" stroke-width=\"3.5\""))
        .expect("a frame around the present placement");
    let corners = rings(frame).concat();
    let middle = 0.25 * corners.iter().map(|c| c[0]).sum::<f64>();
    let label = svg
        .lines()
        .find(|l| l.contains(">±0.00<"))
        .expect("the middle column's label");
    let x: f64 = label
        .split("x=\"")
        .nth(1)
        .and_then(|t| t.split('"').next())
        .and_then(|t| t.parse().ok())
        .expect("a place");
    assert!(
        (middle - x).abs() < 0.02,
        "the frame {middle} stands under its label {x}"
    );
    let off = drawn(
        "chart_off.svg",
        &[SET, "--pinion-axial", "0.5", "--chart", "P=-0.1:0.1:0.1,G=0:0:1"],
    );
    assert!(off.contains("lies off this chart"));
}

#[test]
fn bad_charts_are_refused_and_nothing_is_written() {
    let file = scratch("chart_bad.svg");
    let path = file.to_str().expect("a plain name");
    for (chart, why) in [
        ("P=-0.2:0.2:0.1", "give two axes"),
        ("P=0:1:0.5,P=0:1:0.5", "same"),
        ("P=0:1:0.01,G=0:1:0.5", "more than 25"),
        ("P=0:5000:1000,G=0:1:0.5", "at most 1000"),
    ] {
        let run = run(&["mesh", SET, "--picture", path, "--chart", chart]);
        assert_eq!((run.code, run.out.as_str()), (2, ""), "{chart}");
        assert!(run.err.contains(why), "{chart}: {}", run.err);
        assert!(!file.exists(), "{chart}: nothing is left behind");
    }
    for (arguments, why) in [
        (&["--chart", "P=0:1:1,G=0:1:1"] as &[&str], "--picture"),
        (
            &["--picture", path, "--placements", "tests/commands/mesh_inputs/good.csv"],
            "does not go together with",
        ),
    ] {
        let run = run(&[&["mesh", SET], arguments].concat());
        assert_eq!((run.code, run.out.as_str()), (2, ""), "{arguments:?}");
        assert!(run.err.contains(why), "{arguments:?}: {}", run.err);
        assert!(!file.exists(), "nothing is left behind");
    }
}

#[test]
fn a_picture_that_cannot_be_written_leaves_nothing() {
    let run = run(&["mesh", SET, "--picture", "no-such-folder/mesh.svg"]);
    assert_eq!((run.code, run.out.as_str()), (1, ""), "{}", run.err);
    assert!(run.err.contains("cannot write no-such-folder/mesh.svg"), "{}", run.err);
}

#[test]
fn json_stays_one_document_beside_a_picture() {
    let file = scratch("mesh_json.svg");
    let run = run(&["mesh", SET, "--json", "--picture", file.to_str().expect("a plain name")]);
    assert_eq!((run.code, run.err.as_str()), (0, ""));
    let beside: Value = serde_json::from_str(&run.out).expect("one JSON document");
    assert_eq!(beside, document(&[SET]));
    assert!(file.exists(), "the picture is there");
}
