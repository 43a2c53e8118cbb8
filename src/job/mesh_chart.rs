//! The wall chart: prints over two axes of placement, the present placement marked.

use std::path::Path as FilePath;

use rayon::prelude::*;

use crate::contact;
use crate::drawing::{
    Cell, CellFlank, ChartAxis, ChartLayout, Fill, Ink, Item, Mark, Picture, Point, Rect, Stroke, Text, Theme,
    WallChart, svg,
};
use crate::gear::Side;
use crate::quantity::{self, inches};
use crate::store;
use crate::words::say;

use super::Failure;
use super::mesh::{Mesh, MeshRequest};
use super::mesh_sheet::{Axis, HEADING_BOTTOM, MARGIN, SMALL, chart_words, foot, heading, on_edge, outline, print_of};
use super::placements::PlacementNumbers;

/// Most cells each way.
const MOST_CELLS: usize = 25;
/// The two sheets that are tried, points: both fit A4 and Letter.
const SHEETS: [[f64; 2]; 2] = [[1040.0, 800.0], [800.0, 1030.0]];
/// More cells than this one way want a larger sheet, whose smallest type is 7 points high when printed on A4.
const MANY_CELLS: usize = 12;
const LARGER: f64 = 1.3;
/// Space under the chart for what its marks mean.
const BELOW: f64 = 96.0;

/// Values of one axis, at equal steps.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Range {
    axis: Axis,
    from: f64,
    step: f64,
    pub(super) values: Vec<f64>,
}

/// Which placements a chart shows: first axis across, second axis down.
#[derive(Debug, Clone, PartialEq)]
pub struct ChartRequest {
    pub(super) across: Range,
    pub(super) down: Range,
}

fn refused(text: &str, why: String) -> Failure {
    Failure::bad_input(say!("chart-refused", given = text, why = why, most = MOST_CELLS))
}

impl ChartRequest {
    /// Reads `AXIS=from:to:step,AXIS=from:to:step`.
    ///
    /// # Errors
    /// What is wrong with it, and how it is written.
    pub fn read(text: &str) -> Result<Self, Failure> {
        let parts: Vec<&str> = text.split(',').map(str::trim).collect();
        let [across, down] = parts.as_slice() else {
            return Err(refused(text, say!("chart-two-axes")));
        };
        let (across, down) = (
            Range::read(across).map_err(|why| refused(text, why))?,
            Range::read(down).map_err(|why| refused(text, why))?,
        );
        if across.axis == down.axis {
            return Err(refused(text, say!("chart-same-axes")));
        }
        Ok(Self { across, down })
    }
}

impl Range {
    fn read(text: &str) -> Result<Self, String> {
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
        Ok(Self {
            axis,
            from,
            step,
            values,
        })
    }

    /// The scale on the sheet.
    pub(super) fn chart_axis(&self, numbers: &PlacementNumbers) -> ChartAxis {
        let decimals = |step: f64, most: usize| {
            (2..most)
                .find(|&d| {
                    let scale = (0..d).fold(1.0, |s, _| 10.0 * s);
                    [step, self.from]
                        .iter()
                        .all(|v| (v * scale - (v * scale).round()).abs() < 1.0e-6)
                })
                .unwrap_or(most)
        };
        let places = decimals(self.step, 4);
        let labels = self.values.iter().map(|&v| quantity::signed(v, places)).collect();
        let [less, more] = ends(self.axis);
        let (name, second_labels) = if self.axis.is_angle() {
            (say!("chart-axis-degrees", name = self.axis.name()), Vec::new())
        } else {
            (
                say!("chart-axis-mm", name = self.axis.name()),
                self.values.iter().map(|&v| quantity::signed(inches(v), 4)).collect(),
            )
        };
        ChartAxis {
            name,
            less,
            more,
            labels,
            second_labels,
            present: (self.axis.of(numbers) - self.from) / self.step,
        }
    }
}

/// What the first and the last value of an axis mean.
fn ends(axis: Axis) -> [String; 2] {
    match axis {
        Axis::PinionAxial => [say!("chart-deeper"), say!("chart-shallower")],
        Axis::WheelAxial => [say!("chart-toward-pinion"), say!("chart-from-pinion")],
        Axis::Offset => [say!("chart-less-offset"), say!("chart-more-offset")],
        Axis::ShaftAngle => [say!("chart-angle-closed"), say!("chart-angle-opened")],
    }
}

/// Draws the wall chart of a gear set and writes it as an SVG file, whole or not at all.
///
/// # Errors
/// As [`super::mesh::at`] for the present placement and for every cell's, and a file that cannot be written.
pub fn write(
    request: &MeshRequest,
    numbers: PlacementNumbers,
    chart: &ChartRequest,
    file: &FilePath,
) -> Result<(), Failure> {
    let numbers = numbers.checked()?;
    let placements = chart.placements(&numbers)?;
    let mesh = Mesh::prepare(request)?;
    let text = svg::write(&picture(&mesh, &numbers, chart, &placements), Theme::Paper);
    Ok(store::write_whole(file, text.as_bytes())?)
}

impl ChartRequest {
    /// The placement of every cell, row after row.
    fn placements(&self, numbers: &PlacementNumbers) -> Result<Vec<PlacementNumbers>, Failure> {
        let mut placements = Vec::new();
        for &down in &self.down.values {
            for &across in &self.across.values {
                let mut at = *numbers;
                self.across.axis.set(&mut at, across);
                self.down.axis.set(&mut at, down);
                placements.push(at.checked()?);
            }
        }
        Ok(placements)
    }
}

fn cell(mesh: &Mesh, numbers: &PlacementNumbers) -> Cell {
    let film = contact::Film {
        thickness_um: mesh.film_um(),
    };
    cell_of(mesh.pair(), numbers.placement(), film, mesh.route())
}

/// The cell of a placement.
pub(super) fn cell_of(
    pair: &contact::Pair,
    placement: contact::Placement,
    film: contact::Film,
    route: contact::Route,
) -> Cell {
    let contact = contact::solve(pair, placement, film, route);
    let flank = |side: Side| {
        let map = contact::gap_map(pair, placement, side, route);
        let flank = contact.flank(side);
        CellFlank {
            print: print_of(pair.gears(), film.thickness_um, side, map.as_ref(), flank),
            on_edge: on_edge(flank.edge_contact),
        }
    };
    Cell {
        drive: flank(Side::Drive),
        coast: flank(Side::Coast),
        lash_mm: contact.lash.map(|lash| [lash.min_mm, lash.max_mm]),
    }
}

fn picture(
    mesh: &Mesh,
    numbers: &PlacementNumbers,
    request: &ChartRequest,
    placements: &[PlacementNumbers],
) -> Picture {
    let chart = WallChart {
        across: request.across.chart_axis(numbers),
        down: request.down.chart_axis(numbers),
        cells: placements.par_iter().map(|at| cell(mesh, at)).collect(),
        outline: outline(mesh.gears()),
        words: chart_words(),
    };
    // The sheet on which the cells are larger.
    let area = |[width, height]: [f64; 2]| Rect {
        left: MARGIN,
        top: HEADING_BOTTOM,
        right: width - MARGIN,
        bottom: height - BELOW,
    };
    let many = request.across.values.len() > MANY_CELLS || request.down.values.len() > MANY_CELLS;
    let [landscape, portrait] = SHEETS.map(|sheet| if many { sheet.map(|side| LARGER * side) } else { sheet });
    let sheet = if chart.fitted(area(portrait)).cell_width() > chart.fitted(area(landscape)).cell_width() {
        portrait
    } else {
        landscape
    };
    let layout = chart.fitted(area(sheet));
    let grid = layout.grid();
    let contact = mesh.contact(numbers);
    let design = mesh.gears().design();
    let mut picture = Picture::on(
        Ink::Panel,
        sheet[0],
        grid.bottom + BELOW,
        say!("chart-title", gears = design.name.clone()),
        say!(
            "chart-description",
            across = request.across.axis.name(),
            columns = request.across.values.len(),
            down = request.down.axis.name(),
            rows = request.down.values.len()
        ),
    );
    heading(&mut picture, say!("chart-heading"), mesh, numbers, contact.lash);
    for item in layout.items().into_iter().chain(legend(&chart, &layout)) {
        picture.draw(item);
    }
    foot(&mut picture, mesh);
    picture
}

/// What the marks mean, in two lines under the chart.
fn legend(chart: &WallChart, layout: &ChartLayout<'_>) -> Vec<Item> {
    let grid = layout.grid();
    let mut items = Vec::new();
    let first = Point::new(MARGIN, grid.bottom + 24.0);
    let words = if layout.lash_in_cells() {
        say!("chart-legend-backlash-in-cells")
    } else {
        say!("chart-legend-backlash-beside")
    };
    items.push(Item::Text(Text::new(first, words, SMALL)));
    let second = Point::new(MARGIN, first.y + 20.0);
    let mut x = second.x;
    if layout.marks_edges_by_triangle() {
        items.extend(Mark::Off.items(Point::new(x + 6.0, second.y - 4.5), 12.0, Ink::Off, Ink::Inset));
    } else {
        let frame = Rect {
            left: x,
            top: second.y - 9.0,
            right: x + 13.0,
            bottom: second.y,
        };
        items.push(Item::stroked(frame.path(), Stroke::full(Ink::Off, 2.0)));
    }
    let edge = Text::new(Point::new(x + 18.0, second.y), say!("chart-legend-edge"), SMALL);
    x += 18.0 + edge.width() + 14.0;
    items.push(Item::Text(edge));
    let plain = |ink| Fill::Plain { ink, opacity: 1.0 };
    let swatch = |x: f64| Rect {
        left: x,
        top: second.y - 10.0,
        right: x + 20.0,
        bottom: second.y + 1.0,
    };
    items.push(Item::Shape {
        path: swatch(x).path(),
        fill: Some(plain(Ink::Hairline)),
        stroke: Some(Stroke::full(Ink::Line, 0.8)),
    });
    let nothing = Text::new(Point::new(x + 26.0, second.y), say!("chart-legend-no-reach"), SMALL);
    x += 26.0 + nothing.width() + 14.0;
    items.push(Item::Text(nothing));
    let present = match chart.present() {
        None => {
            let at = Point::new(x, second.y);
            items.push(Item::Text(Text::new(at, say!("chart-legend-off"), SMALL).bold()));
            return items;
        }
        Some([column, row]) if (column - column.round()).abs() < 0.01 && (row - row.round()).abs() < 0.01 => {
            items.push(Item::stroked(swatch(x).path(), Stroke::full(Ink::Accent, 3.0)));
            say!("chart-legend-present")
        }
        Some(_) => {
            let at = Point::new(x + 10.0, second.y - 4.5);
            items.extend(Mark::Dot.items(at, 12.0, Ink::Accent, Ink::Inset));
            say!("chart-legend-between")
        }
    };
    items.push(Item::Text(Text::new(Point::new(x + 28.0, second.y), present, SMALL)));
    items
}

#[cfg(test)]
mod tests {
    use super::*;

    fn values(text: &str) -> Vec<f64> {
        Range::read(text).expect("good text").values
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
            let range = |name: &str| Range::read(&format!("{name}=-0.1:0.1:0.1")).expect("an axis");
            for letter in letters {
                assert_eq!(range(word), range(letter), "{letter}");
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
            let failure = ChartRequest::read(text).expect_err(text);
            assert!(failure.text.contains(why), "{text}: {}", failure.text);
            assert!(
                failure.text.contains("pinion=-0.2:0.2:0.1,ring-gear=-0.1:0.1:0.05"),
                "{text}: how to write it"
            );
        }
    }

    #[test]
    fn labels_have_the_decimals_of_their_steps() {
        let at = PlacementNumbers {
            pinion_axial_mm: 0.05,
            ..PlacementNumbers::default()
        };
        let axis = Range::read("P=-0.1:0.1:0.1").expect("good").chart_axis(&at);
        assert_eq!(axis.labels, ["−0.10", "±0.00", "+0.10"]);
        assert_eq!(axis.second_labels, ["−0.0039", "±0.0000", "+0.0039"]);
        assert!((axis.present - 1.5).abs() < 1e-12);
        let fine = Range::read("G=0.005:0.01:0.0025").expect("good").chart_axis(&at);
        assert_eq!(fine.labels, ["+0.0050", "+0.0075", "+0.0100"]);
    }
}
