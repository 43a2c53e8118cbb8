//! The wall chart: one small pair of prints for each placement, over two axes of placement.

use super::ink::Ink;
use super::mark::Mark;
use super::path::{Path, Point, Rect};
use super::picture::{Anchor, Fill, Item, LineStyle, Stroke, Text};
use super::tooth::{Outline, Print};
use super::tooth_view::ToothView;
use crate::quantity::number;

/// Type of labels.
const SMALL: f64 = 12.0;
/// Type of axis names.
const BODY: f64 = 13.0;
/// Space around a tooth in a cell with its lash, and in a smaller one.
const PAD: f64 = 4.0;
const NARROW_PAD: f64 = 2.5;
/// Height of the line with the lash in a cell.
const LASH_LINE: f64 = 15.0;
/// Narrowest cell that holds its lash.
const NARROWEST_WITH_LASH: f64 = 44.0;
/// Narrowest cell whose teeth carry the lines of their flanks.
const NARROWEST_WITH_FLANK_LINES: f64 = 70.0;
/// Widest cell: more shows nothing more.
const WIDEST: f64 = 176.0;
/// Space for row labels at the left, column labels above, and the lash of a row at the right.
const LEFT: f64 = 104.0;
const ABOVE: f64 = 78.0;
const RIGHT_WITH_ROW_LASH: f64 = 104.0;
/// How near to a cell's own placement the present one counts as the same, in steps of the axis.
const SAME: f64 = 0.01;

/// A scale of the chart, at equal steps.
#[derive(Debug, Clone, PartialEq)]
pub struct ChartAxis {
    /// What it measures, with the unit.
    pub name: String,
    /// What the first end means.
    pub less: String,
    /// What the last end means.
    pub more: String,
    /// Value of each column or row.
    pub labels: Vec<String>,
    /// The same in another unit; empty where there is none.
    pub second_labels: Vec<String>,
    /// Place of the present placement, in steps from the first value.
    pub present: f64,
}

/// One flank in a cell.
#[derive(Debug, Clone, PartialEq)]
pub struct CellFlank {
    /// What the paste shows.
    pub print: Print,
    /// Whether an edge touches over part of the roll.
    pub on_edge: bool,
}

/// One placement.
#[derive(Debug, Clone, PartialEq)]
pub struct Cell {
    /// Upper tooth.
    pub drive: CellFlank,
    /// Lower tooth.
    pub coast: CellFlank,
    /// Tightest and loosest lash, mm; none where a flank cannot touch.
    pub lash_mm: Option<[f64; 2]>,
}

/// Words that stand on a chart.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ChartWords {
    /// What the tightest lash of a row stands under.
    pub row_lash: String,
    /// Instead of a row's lash, where no cell has any.
    pub none: String,
    /// Instead of a cell's lash, where a flank cannot touch.
    pub no_lash: String,
}

/// Small prints over two axes.
#[derive(Debug, Clone, PartialEq)]
pub struct WallChart {
    /// First axis, to the right.
    pub across: ChartAxis,
    /// Second axis, downward.
    pub down: ChartAxis,
    /// Row after row from the left; as many as the axes have labels.
    pub cells: Vec<Cell>,
    /// Shape of the tooth, for the shape of the cells.
    pub outline: Outline,
    /// What is written.
    pub words: ChartWords,
}

/// A wall chart on a sheet.
#[derive(Debug, Clone, Copy)]
pub struct ChartLayout<'c> {
    chart: &'c WallChart,
    corner: Point,
    cell: [f64; 2],
    /// Height of the line with the lash in each cell; 0 where the row says it.
    lash_line: f64,
    pad: f64,
}

impl WallChart {
    /// How many columns and rows.
    pub fn size(&self) -> (usize, usize) {
        (self.across.labels.len(), self.down.labels.len())
    }

    /// As large as an area allows, from its upper left corner.
    pub fn fitted(&self, area: Rect) -> ChartLayout<'_> {
        let (columns, rows) = self.size();
        let (columns, rows) = (columns.max(1) as f64, rows.max(1) as f64);
        let [low, high] = self.outline.reach();
        let slender = self.outline.face_width_mm / (high - low);
        let width_in = |right: f64, lash: f64, pad: f64| {
            let by_width = (area.width() - LEFT - right) / columns;
            let tooth = 0.5 * ((area.height() - ABOVE) / rows - 3.0 * pad - lash);
            let by_height = tooth * slender + 2.0 * pad;
            let width = if by_width < by_height { by_width } else { by_height };
            if width > WIDEST { WIDEST } else { width }
        };
        let with_lash = width_in(0.0, LASH_LINE, PAD);
        let (width, lash, pad) = if with_lash >= NARROWEST_WITH_LASH {
            (with_lash, LASH_LINE, PAD)
        } else {
            (width_in(RIGHT_WITH_ROW_LASH, 0.0, NARROW_PAD), 0.0, NARROW_PAD)
        };
        let height = 2.0 * (width - 2.0 * pad) / slender + 3.0 * pad + lash;
        ChartLayout {
            chart: self,
            corner: Point::new(area.left + LEFT, area.top + ABOVE),
            cell: [width, height],
            lash_line: lash,
            pad,
        }
    }

    /// Where the present placement stands, in columns and rows; none where it lies off the chart.
    pub fn present(&self) -> Option<[f64; 2]> {
        let (columns, rows) = self.size();
        let within = |place: f64, count: usize| place >= -0.5 && place <= count as f64 - 0.5;
        let at = [self.across.present, self.down.present];
        (within(at[0], columns) && within(at[1], rows)).then_some(at)
    }
}

impl ChartLayout<'_> {
    /// Width of a cell, points.
    pub fn cell_width(&self) -> f64 {
        self.cell[0]
    }

    /// Whether each cell says its own lash; otherwise each row does.
    pub fn lash_in_cells(&self) -> bool {
        self.lash_line > 0.0
    }

    /// Whether a touching edge is said by a triangle; in small cells a heavy outline says it.
    pub fn marks_edges_by_triangle(&self) -> bool {
        self.cell[0] >= NARROWEST_WITH_FLANK_LINES
    }

    /// The rectangle of all cells.
    pub fn grid(&self) -> Rect {
        let (columns, rows) = self.chart.size();
        Rect {
            left: self.corner.x,
            top: self.corner.y,
            right: self.corner.x + columns as f64 * self.cell[0],
            bottom: self.corner.y + rows as f64 * self.cell[1],
        }
    }

    /// The rectangle of one cell.
    pub fn cell(&self, column: usize, row: usize) -> Rect {
        let left = self.corner.x + column as f64 * self.cell[0];
        let top = self.corner.y + row as f64 * self.cell[1];
        Rect {
            left,
            top,
            right: left + self.cell[0],
            bottom: top + self.cell[1],
        }
    }

    /// The whole chart.
    pub fn items(&self) -> Vec<Item> {
        let (columns, rows) = self.chart.size();
        let mut items = vec![Item::filled(
            self.grid().path(),
            Fill::Plain {
                ink: Ink::Inset,
                opacity: 1.0,
            },
        )];
        for (k, cell) in self.chart.cells.iter().enumerate() {
            let (column, row) = (k % columns.max(1), k / columns.max(1));
            items.extend(self.cell_items(cell, self.cell(column, row)));
        }
        items.extend(self.rules(columns, rows));
        items.extend(self.column_labels());
        items.extend(self.row_labels());
        if !self.lash_in_cells() {
            items.extend(self.row_lash(columns));
        }
        items.extend(self.present());
        items
    }

    fn cell_items(&self, cell: &Cell, rect: Rect) -> Vec<Item> {
        let pad = self.pad;
        let tall = 0.5 * (rect.height() - self.lash_line - 3.0 * pad);
        let mut items = Vec::new();
        let flank_lines = self.cell[0] >= NARROWEST_WITH_FLANK_LINES;
        for (flank, top) in [
            (&cell.drive, rect.top + pad),
            (&cell.coast, rect.top + 2.0 * pad + tall),
        ] {
            let area = Rect {
                left: rect.left + pad,
                right: rect.right - pad,
                top,
                bottom: top + tall,
            };
            let view = ToothView::fitted(&flank.print, area);
            items.extend(view.small(flank_lines));
            if flank.on_edge && self.marks_edges_by_triangle() {
                // The empty corner above the toe.
                let at = Point::new(area.left + 6.0, area.top + 5.0);
                items.extend(Mark::Off.items(at, 12.0, Ink::Off, Ink::Inset));
            } else if flank.on_edge {
                items.push(Item::stroked(view.outline(), Stroke::full(Ink::Off, 2.0)));
            }
        }
        if self.lash_in_cells() {
            let at = Point::new(0.5 * (rect.left + rect.right), rect.bottom - 4.5);
            items.push(self.lash_text(at, cell.lash_mm.map(|[min, _]| min)));
        }
        items
    }

    fn rules(&self, columns: usize, rows: usize) -> Vec<Item> {
        let grid = self.grid();
        let mut items = Vec::new();
        for column in 1..columns {
            let x = grid.left + column as f64 * self.cell[0];
            let path = Path::line(Point::new(x, grid.top), Point::new(x, grid.bottom));
            items.push(Item::stroked(path, Stroke::full(Ink::Hairline, 1.0)));
        }
        for row in 1..rows {
            let y = grid.top + row as f64 * self.cell[1];
            let path = Path::line(Point::new(grid.left, y), Point::new(grid.right, y));
            items.push(Item::stroked(path, Stroke::full(Ink::Line, 1.0)));
        }
        items.push(Item::stroked(grid.path(), Stroke::full(Ink::Line, 1.4)));
        items
    }

    fn column_labels(&self) -> Vec<Item> {
        let grid = self.grid();
        let axis = &self.chart.across;
        let mut items = vec![Item::Text(
            Text::new(Point::new(grid.left, grid.top - 60.0), axis.name.clone(), BODY).bold(),
        )];
        let narrow = grid.width() < 240.0;
        let (more_at, anchor) = if narrow {
            (grid.left, Anchor::Start)
        } else {
            (grid.right, Anchor::End)
        };
        if narrow {
            let words = format!("{} … {}", axis.less, axis.more);
            items.push(Item::Text(
                Text::new(Point::new(more_at, grid.top - 43.0), words, SMALL)
                    .ink(Ink::Muted)
                    .anchored(anchor),
            ));
        } else {
            for (x, words, anchor) in [
                (grid.left, format!("← {}", axis.less), Anchor::Start),
                (more_at, format!("{} →", axis.more), anchor),
            ] {
                items.push(Item::Text(
                    Text::new(Point::new(x, grid.top - 43.0), words, SMALL)
                        .ink(Ink::Muted)
                        .anchored(anchor),
                ));
            }
        }
        let second = !axis.second_labels.is_empty();
        let wide = axis
            .labels
            .iter()
            .chain(&axis.second_labels)
            .map(|label| Text::new(Point::new(0.0, 0.0), label.clone(), SMALL).bold().width())
            .fold(0.0, |a: f64, b| if b > a { b } else { a });
        let every = [1, 2, 3, 4, 5]
            .into_iter()
            .find(|&n| n as f64 * self.cell[0] > wide + 6.0)
            .unwrap_or(6);
        let mut line = |labels: &[String], y: f64, first: bool| {
            for (k, label) in labels.iter().enumerate().step_by(every) {
                let x = grid.left + (k as f64 + 0.5) * self.cell[0];
                let text = Text::new(Point::new(x, y), label.clone(), SMALL).anchored(Anchor::Middle);
                items.push(Item::Text(if first { text.bold() } else { text.ink(Ink::Muted) }));
            }
        };
        line(&axis.labels, grid.top - if second { 22.0 } else { 8.0 }, true);
        line(&axis.second_labels, grid.top - 8.0, false);
        items
    }

    fn row_labels(&self) -> Vec<Item> {
        let grid = self.grid();
        let axis = &self.chart.down;
        let mut items = Vec::new();
        let second = !axis.second_labels.is_empty() && self.cell[1] >= 30.0;
        for (k, label) in axis.labels.iter().enumerate() {
            let middle = grid.top + (k as f64 + 0.5) * self.cell[1];
            let x = grid.left - 8.0;
            let y = middle + if second { -2.0 } else { 4.5 };
            items.push(Item::Text(
                Text::new(Point::new(x, y), label.clone(), SMALL)
                    .bold()
                    .anchored(Anchor::End),
            ));
            if let Some(label) = axis.second_labels.get(k).filter(|_| second) {
                let text = Text::new(Point::new(x, middle + 12.0), label.clone(), SMALL);
                items.push(Item::Text(text.ink(Ink::Muted).anchored(Anchor::End)));
            }
        }
        // The name reads upward at the far left, the meaning of its ends beside the first and the last row.
        let x = grid.left - LEFT + 12.0;
        let middle = 0.5 * (grid.top + grid.bottom);
        let name = Text::new(Point::new(x, middle), axis.name.clone(), BODY).bold();
        items.push(Item::Text(name.turned_upward().anchored(Anchor::Middle)));
        let x = x + 18.0;
        for (y, words, anchor) in [
            (grid.top, format!("{} →", axis.less), Anchor::End),
            (grid.bottom, format!("← {}", axis.more), Anchor::Start),
        ] {
            let text = Text::new(Point::new(x, y), words, SMALL).ink(Ink::Muted);
            items.push(Item::Text(text.turned_upward().anchored(anchor)));
        }
        items
    }

    /// The range of lash over each row, beside it.
    fn row_lash(&self, columns: usize) -> Vec<Item> {
        let grid = self.grid();
        let x = grid.right + 8.0;
        let mut items = vec![Item::Text(
            Text::new(Point::new(x, grid.top - 43.0), self.chart.words.row_lash.clone(), SMALL).ink(Ink::Muted),
        )];
        for (row, cells) in self.chart.cells.chunks(columns.max(1)).enumerate() {
            let mut range: Option<[f64; 2]> = None;
            for lash in cells.iter().filter_map(|cell| cell.lash_mm).map(|[min, _]| min) {
                let [low, high] = range.unwrap_or([lash, lash]);
                range = Some([
                    if lash < low { lash } else { low },
                    if lash > high { lash } else { high },
                ]);
            }
            let words = range.map_or_else(
                || self.chart.words.none.clone(),
                |[low, high]| [&number(low, 2), " \u{2026} ", &number(high, 2)].concat(),
            );
            let y = grid.top + (row as f64 + 0.5) * self.cell[1] + 4.5;
            items.push(Item::Text(Text::new(Point::new(x, y), words, SMALL)));
        }
        items
    }

    /// The present placement: a frame around its cell, or a dot where it stands between cells.
    fn present(&self) -> Vec<Item> {
        let Some([column, row]) = self.chart.present() else {
            return Vec::new();
        };
        let grid = self.grid();
        let middle = Point::new(
            grid.left + (column + 0.5) * self.cell[0],
            grid.top + (row + 0.5) * self.cell[1],
        );
        let exact = (column - column.round()).abs() < SAME && (row - row.round()).abs() < SAME;
        if exact {
            let (half_wide, half_tall) = (0.5 * self.cell[0], 0.5 * self.cell[1]);
            let frame = Rect {
                left: middle.x - half_wide,
                right: middle.x + half_wide,
                top: middle.y - half_tall,
                bottom: middle.y + half_tall,
            };
            return vec![Item::stroked(frame.path(), Stroke::full(Ink::Accent, 3.5))];
        }
        let cross = Path::line(Point::new(grid.left, middle.y), Point::new(grid.right, middle.y)).and(Path::line(
            Point::new(middle.x, grid.top),
            Point::new(middle.x, grid.bottom),
        ));
        let mut items = vec![Item::stroked(
            cross,
            Stroke::full(Ink::Accent, 1.2).styled(LineStyle::Dotted),
        )];
        items.extend(Mark::Dot.items(middle, 13.0, Ink::Accent, Ink::Inset));
        items
    }

    /// A tightest lash; interference stands out by its sign, its weight and its colour.
    fn lash_text(&self, at: Point, lash_mm: Option<f64>) -> Item {
        let text = |words: String| Text::new(at, words, SMALL).anchored(Anchor::Middle);
        Item::Text(match lash_mm {
            None => text(self.chart.words.no_lash.clone()).ink(Ink::Muted),
            Some(lash) if lash < 0.0 => text(number(lash, 2)).bold().ink(Ink::Off),
            Some(lash) => text(number(lash, 2)),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::drawing::tooth::{Flank, tests::sample};

    fn chart(columns: usize, rows: usize, present: [f64; 2]) -> WallChart {
        let axis = |count: usize, present| ChartAxis {
            name: "depth".to_owned(),
            less: "deeper".to_owned(),
            more: "shallower".to_owned(),
            labels: (0..count).map(|k| format!("{k}.00")).collect(),
            second_labels: Vec::new(),
            present,
        };
        let flank = |flank| CellFlank {
            print: sample(flank, 0.0, 0.0),
            on_edge: false,
        };
        WallChart {
            across: axis(columns, present[0]),
            down: axis(rows, present[1]),
            cells: (0..columns * rows)
                .map(|k| Cell {
                    drive: flank(Flank::Drive),
                    coast: flank(Flank::Coast),
                    lash_mm: Some([0.01 * k as f64, 0.5]),
                })
                .collect(),
            outline: sample(Flank::Drive, 0.0, 0.0).outline,
            words: ChartWords {
                row_lash: "lash, mm".to_owned(),
                none: "none".to_owned(),
                no_lash: "no lash".to_owned(),
            },
        }
    }

    const SHEET: Rect = Rect {
        left: 40.0,
        top: 100.0,
        right: 1000.0,
        bottom: 700.0,
    };

    fn words(items: &[Item]) -> Vec<String> {
        items
            .iter()
            .filter_map(|item| match item {
                Item::Text(text) => Some(text.words.clone()),
                Item::Shape { .. } | Item::Clipped { .. } => None,
            })
            .collect()
    }

    #[test]
    fn charts_of_every_size_stay_on_their_sheet() {
        for (columns, rows) in [(1, 1), (5, 5), (25, 3), (3, 25), (25, 25)] {
            let chart = chart(columns, rows, [0.0, 0.0]);
            let layout = chart.fitted(SHEET);
            let grid = layout.grid();
            assert!(
                grid.right <= SHEET.right + 1e-9 && grid.bottom <= SHEET.bottom + 1e-9,
                "{columns} × {rows}: {grid:?}"
            );
            assert!(
                layout.cell_width() > 15.0,
                "{columns} × {rows}: {}",
                layout.cell_width()
            );
        }
    }

    #[test]
    fn each_cell_or_each_row_says_its_lash() {
        let large = chart(3, 2, [0.0, 0.0]);
        let layout = large.fitted(SHEET);
        assert!(layout.lash_in_cells());
        let said = words(&layout.items());
        for lash in ["0.00", "0.01", "0.02", "0.03", "0.04", "0.05"] {
            assert!(said.iter().any(|w| w == lash), "{lash} in {said:?}");
        }
        let small = chart(25, 25, [0.0, 0.0]);
        let layout = small.fitted(SHEET);
        assert!(!layout.lash_in_cells());
        let said = words(&layout.items());
        assert!(said.iter().any(|w| w == "0.25 … 0.49"), "second row: {said:?}");
    }

    #[test]
    fn the_present_placement_is_framed_dotted_or_off() {
        let framed = chart(3, 3, [1.0, 2.0]);
        let layout = framed.fitted(SHEET);
        let cell = layout.cell(1, 2);
        let Some(Item::Shape { path, .. }) = layout.items().last().cloned() else {
            panic!("a frame");
        };
        assert_eq!(path, cell.path(), "around its cell");
        let between = chart(3, 3, [0.4, 1.0]);
        assert_eq!(between.present(), Some([0.4, 1.0]));
        assert!(between.fitted(SHEET).present().len() > 1, "a dot on crossing lines");
        assert_eq!(chart(3, 3, [-0.6, 1.0]).present(), None, "off the chart");
        assert_eq!(chart(3, 3, [1.0, 2.6]).present(), None, "off the chart");
    }
}
