//! The wall chart of a gear set as a file.

use std::path::Path;

use rayon::prelude::*;

use crate::drawing::{Cell, Theme, svg};
use crate::job::Failure;
use crate::report::mesh::{self as pages, Axis, ChartAxes, PlacementNumbers, Range};
use crate::store;
use crate::words::say;

use super::placements::checked;
use super::request::{Mesh, MeshRequest};

/// Most cells each way.
const MOST_CELLS: usize = 25;

fn refused(text: &str, why: String) -> Failure {
    Failure::bad_input(say!("chart-refused", given = text, why = why, most = MOST_CELLS))
}

/// Reads `AXIS=from:to:step,AXIS=from:to:step`.
///
/// # Errors
/// What is wrong with it, and how it is written.
pub fn axes(text: &str) -> Result<ChartAxes, Failure> {
    let parts: Vec<&str> = text.split(',').map(str::trim).collect();
    let [across, down] = parts.as_slice() else {
        return Err(refused(text, say!("chart-two-axes")));
    };
    let (across, down) = (
        range(across).map_err(|why| refused(text, why))?,
        range(down).map_err(|why| refused(text, why))?,
    );
    if across.axis() == down.axis() {
        return Err(refused(text, say!("chart-same-axes")));
    }
    Ok(ChartAxes { across, down })
}

/// The values of one axis.
fn range(text: &str) -> Result<Range, String> {
    let (name, numbers) = text
        .split_once('=')
        .ok_or_else(|| say!("chart-no-equals", text = text))?;
    let axis = Axis::named(name.trim()).ok_or_else(|| say!("chart-no-axis", axis = name.trim()))?;
    let parts: Vec<&str> = numbers.split(':').map(str::trim).collect();
    let [from, to, step] = parts.as_slice() else {
        return Err(say!("chart-not-from-to-step", text = text));
    };
    let read = |part: &str| {
        part.parse::<f64>()
            .ok()
            .filter(|v| v.is_finite())
            .ok_or_else(|| say!("chart-not-a-number", text = part))
    };
    let (from, to, step) = (read(from)?, read(to)?, read(step)?);
    if step <= 0.0 {
        return Err(say!("chart-step", text = text));
    }
    if to < from {
        return Err(say!("chart-backward", text = text));
    }
    // A hair more, so that 0.2 in steps of 0.1 is reached.
    let steps = ((to - from) / step + 1.0e-6).floor();
    if steps >= MOST_CELLS as f64 {
        return Err(say!("chart-too-many", text = text, most = MOST_CELLS));
    }
    let values = (0..MOST_CELLS)
        .map(|k| k as f64)
        .take_while(|k| *k <= steps)
        .map(|k| {
            let value = from + k * step;
            // What rounding left of zero is zero.
            if value.abs() < 1.0e-9 * step { 0.0 } else { value }
        })
        .collect();
    Ok(Range::new(axis, from, step, values))
}

/// Draws the wall chart of a gear set and writes it as an SVG file, whole or not at all.
///
/// # Errors
/// As [`super::text`] for the present placement and for every cell's, and a file that cannot be written.
pub fn write(request: &MeshRequest, numbers: PlacementNumbers, axes: &ChartAxes, file: &Path) -> Result<(), Failure> {
    let numbers = checked(numbers)?;
    let placements = placements(axes, &numbers)?;
    let mesh = Mesh::prepare(request)?.meshing;
    let cells: Vec<Cell> = placements
        .par_iter()
        .map(|at| pages::cell_of(&mesh.pair, at.placement(), mesh.film, mesh.route))
        .collect();
    let text = svg::write(&pages::chart(&mesh, &numbers, axes, cells), Theme::Paper);
    Ok(store::write_whole(file, text.as_bytes())?)
}

/// The placement of every cell, row after row.
fn placements(axes: &ChartAxes, numbers: &PlacementNumbers) -> Result<Vec<PlacementNumbers>, Failure> {
    let mut placements = Vec::new();
    for &down in axes.down.values() {
        for &across in axes.across.values() {
            let mut at = *numbers;
            axes.across.axis().set(&mut at, across);
            axes.down.axis().set(&mut at, down);
            placements.push(checked(at)?);
        }
    }
    Ok(placements)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn values(text: &str) -> Vec<f64> {
        range(text).expect("good text").values().to_vec()
    }

    #[test]
    fn values_reach_both_ends() {
        let close = |got: &[f64], wanted: &[f64]| {
            assert_eq!(got.len(), wanted.len(), "{got:?}");
            for (g, w) in got.iter().zip(wanted) {
                assert!((g - w).abs() < 1e-12, "{got:?}");
            }
        };
        close(&values("P=-0.2:0.2:0.1"), &[-0.2, -0.1, 0.0, 0.1, 0.2]);
        close(&values("G=-0.1:0.1:0.05"), &[-0.1, -0.05, 0.0, 0.05, 0.1]);
        close(&values(" E = 0 : 0.1 : 0.04 "), &[0.0, 0.04, 0.08]);
        close(&values("S=0.1:0.1:1"), &[0.1]);
        assert_eq!(values("P=-0.12:0.12:0.01").len(), MOST_CELLS);
        assert_eq!(values("P=-0.3:0.3:0.1")[3].to_bits(), 0, "zero is plain zero");
    }

    #[test]
    fn axes_are_named_by_words_or_by_the_letters_of_before() {
        for (word, letters) in [
            ("pinion", ["P", "p"]),
            ("ring-gear", ["G", "g"]),
            ("offset", ["E", "e"]),
            ("shaft-angle", ["S", "Σ"]),
        ] {
            let read = |name: &str| range(&format!("{name}=-0.1:0.1:0.1")).expect("an axis");
            for letter in letters {
                assert_eq!(read(word), read(letter), "{letter}");
            }
        }
    }

    #[test]
    fn bad_text_is_refused_with_how_to_write_it() {
        for (text, why) in [
            ("", "two axes"),
            ("P=0:1:1", "two axes"),
            ("P=0:1:1,G=0:1:1,E=0:1:1", "two axes"),
            ("P=0:1:1,P=0:1:1", "same"),
            ("pinion=0:1:1,Q=0:1:1", "no axis `Q`"),
            ("P 0:1:1,G=0:1:1", "no `=`"),
            ("P=0:1,G=0:1:1", "from:to:step"),
            ("P=0:one:1,G=0:1:1", "`one` is no number"),
            ("P=0:nan:1,G=0:1:1", "`nan` is no number"),
            ("P=0:1:0,G=0:1:1", "greater than 0"),
            ("P=0:1:-1,G=0:1:1", "greater than 0"),
            ("P=1:0:1,G=0:1:1", "backward"),
            ("P=0:1:0.04,G=0:1:1", "more than 25"),
            ("P=0:1:1e-300,G=0:1:1", "more than 25"),
        ] {
            let failure = axes(text).expect_err(text);
            assert!(failure.text.contains(why), "{text}: {}", failure.text);
            assert!(
                failure.text.contains("pinion=-0.2:0.2:0.1,ring-gear=-0.1:0.1:0.05"),
                "{text}: how to write it"
            );
        }
    }
}
