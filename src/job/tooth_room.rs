//! The pictures of the tooth room: both flanks, transmission error, wall chart, fast enough to follow a drag.

use rayon::prelude::*;

use crate::contact::{Film, Pair, Placement, Route};
use crate::drawing::WallChart;
use crate::report::mesh as pages;
use crate::report::mesh::{ChartAxes, PlacementNumbers};

use super::mesh::chart::axes;

pub use crate::report::mesh::{ChartPicture, Shown, flanks, motion, sheet};

/// Prints over depth and ring gear position.
#[derive(Debug, Clone, PartialEq)]
pub struct Chart {
    chart: WallChart,
    axes: ChartAxes,
}

/// The axes of the room's chart.
const AXES: &str = "pinion=-0.2:0.2:0.1,ring-gear=-0.1:0.1:0.05";

impl Chart {
    /// Computes all cells by the fast route, at the offset and shaft angle of a placement.
    pub fn new(pair: &Pair, placement: Placement, film: Film) -> Option<Self> {
        let axes = axes(AXES).ok()?;
        let numbers = PlacementNumbers::of(placement);
        let places: Vec<Placement> = axes
            .down
            .values()
            .iter()
            .flat_map(|&down| axes.across.values().iter().map(move |&across| (across, down)))
            .map(|(across, down)| Placement {
                pinion_axial_mm: across,
                wheel_axial_mm: down,
                ..placement
            })
            .collect();
        pair.prepare_fast();
        let chart = WallChart {
            across: axes.across.chart_axis(&numbers),
            down: axes.down.chart_axis(&numbers),
            cells: places
                .par_iter()
                .map(|at| pages::cell_of(pair, *at, film, Route::Fast))
                .collect(),
            outline: pages::outline(pair.gears()),
            words: pages::chart_words(),
        };
        Some(Self { chart, axes })
    }

    /// Lays it out with the present placement marked.
    pub fn picture(&self, present: Placement, size: [f64; 2]) -> ChartPicture {
        let numbers = PlacementNumbers::of(present);
        let chart = WallChart {
            across: self.axes.across.chart_axis(&numbers),
            down: self.axes.down.chart_axis(&numbers),
            words: pages::chart_words(),
            ..self.chart.clone()
        };
        pages::room_chart(&chart, &self.axes, size)
    }
}
