//! Placements from outside: four numbers on the command line, or a CSV file with one placement a row.

use crate::job::Failure;
use crate::report::mesh::PlacementNumbers;
use crate::report::problem::{error_line, problem_text};
use crate::text::{Limits, Problems, decode};
use crate::words::problem::{Own, Told};
use crate::words::say;

/// The header of a placements file, exactly: the names of the options with their units.
pub const HEADER: [&str; 4] = [
    "pinion_axial_mm",
    "wheel_axial_mm",
    "offset_shift_mm",
    "shaft_angle_shift_deg",
];
/// The header of earlier files, read as well: the keys of the document.
const KEYS: [&str; 4] = ["pinion_axial_mm", "wheel_axial_mm", "offset_mm", "shaft_angle_deg"];
/// How large a placements file may be.
pub const LIMITS: Limits = Limits {
    bytes: 16 * 1024 * 1024,
};
/// Most rows of a placements file: what its size allows, and a bound on memory.
pub const MOST_ROWS: usize = 1_000_000;
/// Farthest placement, mm: far beyond any axle, near enough for honest arithmetic.
const FARTHEST_MM: f64 = 1000.0;
/// Largest change of the shaft angle, degrees.
const LARGEST_DEG: f64 = 45.0;

/// Why a number is no part of a placement.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Unfit {
    NotANumber,
    TooFar,
}

impl Unfit {
    /// What to do.
    fn cure(self) -> String {
        match self {
            Self::NotANumber => say!("problem-placements-no-number-cure"),
            Self::TooFar => say!(
                "problem-placements-too-far-cure",
                millimeters = FARTHEST_MM.to_string(),
                degrees = LARGEST_DEG.to_string()
            ),
        }
    }
}

/// What only a placements file can have wrong.
#[derive(Debug, Clone, PartialEq, Eq)]
enum PlacementsProblem {
    /// It cannot be read as CSV.
    NotCsv,
    /// Its first line is another one.
    Header {
        /// Whether it is parted by semicolons.
        semicolons: bool,
    },
    /// More rows than are read.
    TooMany,
    /// No row.
    NoRows,
    /// A row of more or fewer fields.
    Fields {
        line: usize,
        count: usize,
        columns: [&'static str; 4],
    },
    /// A field that is no part of a placement.
    Number {
        line: usize,
        given: String,
        column: &'static str,
        unfit: Unfit,
    },
}

impl Own for PlacementsProblem {
    fn file() -> String {
        say!("problem-file-placements")
    }

    fn told(&self) -> Told {
        let header = HEADER.join(",");
        match self {
            Self::NotCsv => Told::new(
                say!("problem-placements-not-csv"),
                say!("problem-placements-not-csv-cure"),
            ),
            Self::Header { semicolons } => Told::new(
                say!("problem-placements-header"),
                if *semicolons {
                    say!("problem-placements-header-semicolons-cure", header = header)
                } else {
                    say!("problem-placements-header-cure", header = header)
                },
            ),
            Self::TooMany => Told::new(
                say!("problem-placements-too-many", most = MOST_ROWS.to_string()),
                say!("problem-placements-too-many-cure"),
            ),
            Self::NoRows => Told::new(
                say!("problem-placements-none"),
                say!("problem-placements-none-cure", header = header),
            ),
            Self::Fields { line, count, columns } => Told::new(
                say!(
                    "problem-placements-fields",
                    line = *line,
                    count = *count,
                    wanted = HEADER.len()
                ),
                say!("problem-placements-fields-cure", columns = columns.join(", ")),
            ),
            Self::Number {
                line,
                given,
                column,
                unfit,
            } => Told::new(
                say!(
                    "problem-placements-number",
                    line = *line,
                    given = given.as_str(),
                    column = *column
                ),
                unfit.cure(),
            ),
        }
    }
}

/// The largest size of the number in this column.
fn farthest(column: usize) -> f64 {
    if column == 3 { LARGEST_DEG } else { FARTHEST_MM }
}

fn fit(column: usize, value: f64) -> Result<f64, Unfit> {
    if !value.is_finite() {
        Err(Unfit::NotANumber)
    } else if value.abs() > farthest(column) {
        Err(Unfit::TooFar)
    } else {
        Ok(value)
    }
}

/// Checks numbers that came from outside.
///
/// # Errors
/// Which number is not finite or farther than anybody can mean, by the name of its command-line option.
pub fn checked(numbers: PlacementNumbers) -> Result<PlacementNumbers, Failure> {
    let options = [
        "--pinion-axial",
        "--wheel-axial",
        "--offset-shift",
        "--shaft-angle-shift",
    ];
    let texts: Vec<String> = options
        .into_iter()
        .zip(numbers.row())
        .enumerate()
        .filter_map(|(column, (option, value))| {
            let unfit = fit(column, value).err()?;
            let option = format!("{option} {value}");
            let told = Told::new(say!("problem-placements-option", option = option), unfit.cure());
            Some(error_line(told.line()))
        })
        .collect();
    if texts.is_empty() {
        Ok(numbers)
    } else {
        Err(Failure::input(texts.join("\n")))
    }
}

/// The placements in a CSV file shown to people as `source`, in order.
///
/// # Errors
/// A file that is too large or not text, another header than [`HEADER`], no row or more than [`MOST_ROWS`], and every
/// row that is not four numbers within reach, each with its line.
pub fn read(source: &str, bytes: &[u8]) -> Result<Vec<PlacementNumbers>, Failure> {
    let text = decode::<PlacementsProblem>(bytes, LIMITS)
        .map_err(|problems| Failure::input(problem_text(source, &String::from_utf8_lossy(bytes), &problems)))?;
    rows(text).map_err(|problems| Failure::input(problem_text(source, text, &problems)))
}

fn rows(text: &str) -> Result<Vec<PlacementNumbers>, Problems<PlacementsProblem>> {
    let mut problems = Problems::new();
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .trim(csv::Trim::All)
        .comment(Some(b'#'))
        .from_reader(text.as_bytes());
    let mut placements = Vec::new();
    let mut count = 0_usize;
    let mut names: Option<[&'static str; 4]> = None;
    // Where the reader is: byte and line, for the rows below.
    let (mut at, mut line) = (0_usize, 1_usize);
    for record in reader.records() {
        let Ok(record) = record else {
            // The text is UTF-8 and rows may have any length, so that reading from memory does not fail; if it ever
            // does, the rows that were read are not all there are.
            problems.note_own(0..0, PlacementsProblem::NotCsv);
            break;
        };
        let start = record.position().map_or(0, |p| usize::try_from(p.byte()).unwrap_or(0));
        let span = line_at(text, start);
        line += text.get(at..span.start).unwrap_or("").matches('\n').count();
        at = span.start;
        let Some(names) = names else {
            names = [HEADER, KEYS].into_iter().find(|names| record.iter().eq(*names));
            if names.is_none() {
                let semicolons = record.iter().any(|field| field.contains(';'));
                problems.note_own(span, PlacementsProblem::Header { semicolons });
                return problems.verdict(None);
            }
            continue;
        };
        count += 1;
        if count > MOST_ROWS {
            problems.note_own(span, PlacementsProblem::TooMany);
            break;
        }
        if let Some(placement) = row(&record, names, line, span, &mut problems) {
            placements.push(placement);
        }
    }
    if count == 0 && problems.is_empty() {
        problems.note_own(0..0, PlacementsProblem::NoRows);
    }
    problems.verdict(Some(placements))
}

/// The line of `text` in which the byte `at` stands, or the next one that is neither empty nor a comment.
fn line_at(text: &str, at: usize) -> std::ops::Range<usize> {
    let mut start = at;
    loop {
        let rest = text.get(start..).unwrap_or("");
        start += rest.len() - rest.trim_start_matches(['\r', '\n']).len();
        let rest = text.get(start..).unwrap_or("");
        let length = rest.find(['\r', '\n']).unwrap_or(rest.len());
        if length == 0 || !rest.starts_with('#') {
            return start..start + length;
        }
        start += length;
    }
}

fn row(
    record: &csv::StringRecord,
    names: [&'static str; 4],
    line: usize,
    span: std::ops::Range<usize>,
    problems: &mut Problems<PlacementsProblem>,
) -> Option<PlacementNumbers> {
    if record.len() != names.len() {
        problems.note_own(
            span,
            PlacementsProblem::Fields {
                line,
                count: record.len(),
                columns: names,
            },
        );
        return None;
    }
    let mut numbers = [0.0; 4];
    let mut good = true;
    for (column, (field, number)) in record.iter().zip(&mut numbers).enumerate() {
        let value = field
            .parse()
            .map_err(|_why: std::num::ParseFloatError| Unfit::NotANumber);
        match value.and_then(|v| fit(column, v)) {
            Ok(v) => *number = v,
            Err(unfit) => {
                good = false;
                problems.note_own(
                    span.clone(),
                    PlacementsProblem::Number {
                        line,
                        given: field.chars().take(40).collect(),
                        column: names.get(column).copied().unwrap_or_default(),
                        unfit,
                    },
                );
            }
        }
    }
    let [pinion_axial_mm, wheel_axial_mm, offset_mm, shaft_angle_deg] = numbers;
    good.then_some(PlacementNumbers {
        pinion_axial_mm,
        wheel_axial_mm,
        offset_mm,
        shaft_angle_deg,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::problem;

    const GOOD: &str = "pinion_axial_mm,wheel_axial_mm,offset_mm,shaft_angle_deg\n";

    fn problems(text: &str) -> Vec<String> {
        rows(text)
            .expect_err("must be refused")
            .list()
            .iter()
            .map(|p| problem::told(p).what)
            .collect()
    }

    #[test]
    fn rows_come_in_order() {
        let found = rows(&format!("{GOOD}0.1, -0.2,0,1e-1\r\n\n-0.05,0,0.3,0\n")).expect("good rows");
        let all: Vec<[f64; 4]> = found.iter().map(PlacementNumbers::row).collect();
        assert_eq!(all, [[0.1, -0.2, 0.0, 0.1], [-0.05, 0.0, 0.3, 0.0]]);
    }

    /// A table that the program prints begins with a comment; one that a person wrote may have more of them.
    #[test]
    fn comments_are_no_rows_and_count_as_lines() {
        let found = rows(&format!(
            "# a note, with a comma\n{GOOD}# more\n0.1,0,0,0\n\n# the end\n"
        ))
        .expect("good rows");
        assert_eq!(
            found.iter().map(PlacementNumbers::row).collect::<Vec<_>>(),
            [[0.1, 0.0, 0.0, 0.0]]
        );
        let wrong = format!("# a note\n{GOOD}0,0,0,0\n# one\n\n# two\n0,x,0,0\n");
        assert_eq!(problems(&wrong), ["line 7: `x` cannot be `wheel_axial_mm`"]);
    }

    #[test]
    fn columns_are_named_as_the_options_or_as_the_keys() {
        let row = "0.1,-0.2,0,1e-1\n";
        let [options, keys] = [HEADER, KEYS].map(|names| rows(&format!("{}\n{row}", names.join(","))).expect("read"));
        assert_eq!(options, keys);
        let mixed =
            rows("pinion_axial_mm,wheel_axial_mm,offset_mm,shaft_angle_shift_deg\n0,0,0,0\n").expect_err("refused");
        assert!(
            problem::told(&mixed.list()[0]).cure.contains(&HEADER.join(",")),
            "how it is written"
        );
    }

    #[test]
    fn bad_rows_are_named_by_line() {
        let text = format!("{GOOD}0,0,0,0\n0,x,0,0\n1,2,3\n\n0,nan,2000,90\n");
        assert_eq!(
            problems(&text),
            [
                "line 3: `x` cannot be `wheel_axial_mm`",
                "line 4 has 3 fields, not 4",
                "line 6: `nan` cannot be `wheel_axial_mm`",
                "line 6: `2000` cannot be `offset_mm`",
                "line 6: `90` cannot be `shaft_angle_deg`",
            ]
        );
    }

    #[test]
    fn the_header_is_exact() {
        for text in [
            "",
            "0,0,0,0\n",
            "wheel_axial_mm,pinion_axial_mm,offset_mm,shaft_angle_deg\n0,0,0,0\n",
        ] {
            assert_eq!(problems(text).len(), 1, "{text:?}");
        }
        let semicolons = rows("pinion_axial_mm;wheel_axial_mm;offset_mm;shaft_angle_deg\n").expect_err("refused");
        assert!(
            problem::told(&semicolons.list()[0]).cure.contains("semicolons"),
            "says what is wrong"
        );
    }

    #[test]
    fn size_limits() {
        let mut text = GOOD.to_owned();
        text.push_str(&"0,0,0,0\n".repeat(MOST_ROWS));
        assert_eq!(rows(&text).expect("as many as are allowed").len(), MOST_ROWS);
        text.push_str("0,0,0,0\n");
        assert_eq!(problems(&text), ["more than 1000000 placements"]);
        assert!(read("big.csv", &vec![b'0'; LIMITS.bytes + 1]).is_err(), "too large");
    }
}
