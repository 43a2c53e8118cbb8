//! The wall chart: prints over two axes of placement, the present placement marked.

use crate::drawing::{
    Cell, ChartLayout, ChartWords, Fill, Ink, Item, Mark, Picture, Point, Rect, Stroke, Text, WallChart,
};
use crate::report::type_size::SMALL;
use crate::words::say;

use super::axes::ChartAxes;
use super::meshing::Meshing;
use super::numbers::PlacementNumbers;
use super::sheet::{HEADING_BOTTOM, MARGIN, foot, foot_note, heading};
use super::tooth::outline;

/// The two sheets that are tried, points: both fit A4 and Letter.
const SHEETS: [[f64; 2]; 2] = [[1040.0, 800.0], [800.0, 1030.0]];

/// More cells than this one way want a larger sheet, whose smallest type is 7 points high when printed on A4.
const MANY_CELLS: usize = 12;

const LARGER: f64 = 1.3;

/// Space under the chart for what its marks mean and a note of one line.
const BELOW: f64 = 96.0;

/// The chart of `axes` with its cells, row after row, on a sheet of its own.
pub(crate) fn picture(mesh: &Meshing, numbers: &PlacementNumbers, axes: &ChartAxes, cells: Vec<Cell>) -> Picture {
    let chart = WallChart {
        across: axes.across.chart_axis(numbers),
        down: axes.down.chart_axis(numbers),
        cells,
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
    let many = axes.across.values().len() > MANY_CELLS || axes.down.values().len() > MANY_CELLS;
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
        grid.bottom + BELOW + foot_note(sheet[0]).more(),
        say!("chart-title", gears = design.name.clone()),
        say!(
            "chart-description",
            across = axes.across.axis().name(),
            columns = axes.across.values().len(),
            down = axes.down.axis().name(),
            rows = axes.down.values().len()
        ),
    );
    heading(&mut picture, say!("chart-heading"), mesh, numbers, contact.lash);
    for item in layout.items().into_iter().chain(legend(&chart, &layout)) {
        picture.draw(item);
    }
    foot(&mut picture, mesh);
    picture
}

/// What stands on a wall chart.
pub(crate) fn chart_words() -> ChartWords {
    ChartWords {
        row_lash: say!("chart-row-backlash"),
        none: say!("chart-none"),
        no_lash: say!("chart-no-backlash"),
    }
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
