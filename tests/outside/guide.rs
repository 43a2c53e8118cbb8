//! The test guide, `tests/GUIDE.md`: what is checked against what, and how far off it is.
//!
//! A check is a function that gives rows. Each [`Row`] states what it checks, its source and its tolerance, and takes the
//! numbers that are compared. `checks!` at the end of a module makes a test of each check; the guide asks the same
//! functions, so that what is asserted and what is written are one number. A check is worked out once a run, whoever asks
//! first.
//!
//! The core gives the same bits everywhere, but the oracles use the standard library's sine, which may differ in its last
//! bits between machines. So a deviation below a thousandth of its tolerance is given as a bound, and where the tolerance
//! itself is as small as rounding, only that it is rounding.

use std::fmt::Write as _;

pub(crate) use super::row::{Row, Source};

use super::row::KINDS;
use super::{
    axle, bearing, bench, crown_gear, crown_gear_core, explicit_pinion, fast_route, gauge_study, handbook_bevels,
    hunting_tooth, iso_23509, lash_slopes, marking_film, worked_build,
};

/// What a check's test does: fails with all that is off.
#[track_caller]
pub(crate) fn assert_hold(rows: &[Row]) {
    assert!(!rows.is_empty(), "a check without rows checks nothing");
    let mut wrong = String::new();
    for row in rows {
        println!("{} at {}", row.line(), row.place);
        if !row.holds() {
            let numbers = row.numbers;
            writeln!(
                wrong,
                "{} ({numbers} compared):\n  {}",
                row.what,
                row.misses.join("\n  ")
            )
            .expect("text");
        }
    }
    assert!(wrong.is_empty(), "{wrong}");
}

/// Makes of check functions (`fn() -> Vec<Row>`) a test each, and gives their rows to the guide.
macro_rules! checks {
    ($($check:ident),+ $(,)?) => {
        /// Rows of this module's checks, each worked out once a run.
        pub(crate) fn rows() -> Vec<&'static $crate::guide::Row> {
            let mut rows = Vec::new();
            $(rows.extend(once::$check());)+
            rows
        }

        mod once {
            $(pub(super) fn $check() -> &'static [$crate::guide::Row] {
                static ROWS: std::sync::OnceLock<Vec<$crate::guide::Row>> = std::sync::OnceLock::new();
                ROWS.get_or_init(super::$check)
            })+
        }

        mod tests {
            $(#[test]
            fn $check() {
                $crate::guide::assert_hold(super::once::$check());
            })+
        }
    };
}
pub(crate) use checks;

type Module = fn() -> Vec<&'static Row>;

/// The guide's groups, with the modules that fill them.
const GROUPS: [(&str, &[Module]); 19] = [
    ("Pitch cones", &[iso_23509::rows]),
    ("Bevel gears of handbooks", &[handbook_bevels::rows]),
    ("Tooth numbers", &[hunting_tooth::rows]),
    ("Crown-gear benchmark", &[crown_gear::rows, crown_gear_core::rows]),
    ("Contact by explicit pinion points", &[explicit_pinion::rows]),
    ("The fast route of contact", &[fast_route::rows]),
    ("Lash and axial movement", &[lash_slopes::rows]),
    ("Marked band", &[marking_film::rows]),
    (
        "Bearing friction",
        &[
            bearing::friction_catalogue::rows,
            bearing::rib_friction::rows,
            bearing::road_speed::rows,
        ],
    ),
    (
        "Bearing stiffness",
        &[bearing::stiffness_catalogue::rows, bearing::load_zone::rows],
    ),
    (
        "Preloaded pairs and their setting",
        &[bearing::pair_solution::rows, bearing::setting_manual::rows],
    ),
    ("Nuts, threads, sleeves", &[bearing::nut_handbooks::rows]),
    ("Press fits and heat", &[bearing::fit_tables::rows]),
    ("Oil and seal", &[bearing::oil_and_seal::rows]),
    ("Preload as the shop knows it", &[bearing::trade::rows]),
    ("Axles as the trade knows them", &[axle::rows]),
    ("A build worked through by hand", &[worked_build::rows]),
    ("Builds at the bench", &[bench::rows]),
    ("Instruments", &[gauge_study::rows]),
];

/// Words of the guide's columns.
const WORDS: [(&str, &str); 6] = [
    ("numbers", "how many numbers or facts the row compares"),
    ("< ...", "the largest deviation is below a thousandth of the tolerance"),
    (
        "rounding",
        "both sides are to be equal, and are but for their last bits",
    ),
    ("found", "least and greatest number of a row that allows a range"),
    (
        "sign, order, equal, as stated",
        "the answer is yes or no; the deviation counts the wrong ones",
    ),
    (
        "Yardstick",
        "the row checks a second route or a source's own arithmetic, not the program",
    ),
];

const COMMAND: &str = "LASHWRIGHT_WRITE_GUIDE=1 cargo test --release --no-default-features --test outside guide";

fn guide() -> String {
    let groups: Vec<(&str, Vec<&Row>)> = GROUPS
        .iter()
        .map(|(name, modules)| (*name, modules.iter().flat_map(|rows| rows()).collect()))
        .collect();
    let all: Vec<&Row> = groups.iter().flat_map(|(_, rows)| rows.iter().copied()).collect();
    let numbers = |rows: &[&Row]| rows.iter().map(|r| r.numbers).sum::<usize>();
    let mut text = format!(
        "# Test guide\n\n\
         Each row is a check of Lashwright against something outside it, with the largest deviation that was found; the \
         tests write this file and fail when it is out of date ({} rows, {} numbers). \
         To write it anew: `{COMMAND}`. \
         Deviations are in the unit of their tolerance; the words are explained in the two tables below.\n\n\
         | kind of source | rows | numbers | meaning |\n|---|---|---|---|\n",
        all.len(),
        numbers(&all),
    );
    for (kind, (name, meaning)) in KINDS.iter().enumerate() {
        let of_kind: Vec<&Row> = all.iter().copied().filter(|r| r.source.kind() == kind).collect();
        writeln!(
            text,
            "| {name} | {} | {} | {meaning} |",
            of_kind.len(),
            numbers(&of_kind)
        )
        .expect("text");
    }
    text.push_str("\n| word | meaning |\n|---|---|\n");
    for (word, meaning) in WORDS {
        writeln!(text, "| {word} | {meaning} |").expect("text");
    }
    for (name, rows) in &groups {
        let mut whats: Vec<&str> = rows.iter().map(|r| r.what).collect();
        whats.sort_unstable();
        for pair in whats.windows(2) {
            assert_ne!(pair[0], pair[1], "two rows of \"{name}\" cannot be told apart");
        }
        write!(
            text,
            "\n## {name}\n\n| check | source | numbers | tolerance | largest deviation | result |\n|---|---|---|---|---|---|\n"
        )
        .expect("text");
        for row in rows {
            writeln!(text, "{}", row.line()).expect("text");
        }
    }
    text
}

#[test]
#[expect(
    clippy::disallowed_methods,
    reason = "the guide is a file of the repository, which its test compares and writes"
)]
fn guide_is_up_to_date() {
    let file = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/GUIDE.md");
    let guide = guide();
    if std::env::var_os("LASHWRIGHT_WRITE_GUIDE").is_some_and(|v| v == "1") {
        std::fs::write(file, &guide).expect("the guide can be written");
        return;
    }
    let committed = std::fs::read_to_string(file).unwrap_or_default();
    let mut lines = committed.lines();
    for (number, line) in guide.lines().enumerate() {
        let there = lines.next().unwrap_or("(nothing)");
        assert_eq!(
            there,
            line,
            "tests/GUIDE.md is out of date from line {}; write it anew with {COMMAND}",
            number + 1
        );
    }
    assert_eq!(
        lines.next(),
        None,
        "tests/GUIDE.md is longer than it should be: {COMMAND}"
    );
}
