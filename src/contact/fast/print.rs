//! The print from the forms.
//!
//! A node's gap over the roll is a parabola less the wheel's motion. Its depth, its roll and its bend are smooth over the
//! flank and interpolated inside a cell; the motion, whose change-over between pairs is sharp, is taken at every point
//! itself.
//!
//! Source: our own method.

use crate::contact::gap_map::{GapMap, SmallestGap};
use crate::contact::motion::{Envelope, Lookup};
use crate::contact::pattern::{Marked, Pattern};
use crate::contact::resolution::coordinate;

use super::form::{CELLS, COLUMNS, Column, ROWS};

/// Parts into which a cell on the edge of the print is cut, each way.
const PARTS: usize = 2;
/// How far from the film a cell's corners may all lie, mm, before the film's edge cannot run through the cell.
const MARGIN_MM: f64 = 0.4e-3;
/// No change-over is higher than this between two nodes, mm.
const HIGHEST_RIDGE_MM: f64 = 30e-3;
/// Farthest roll from a parabola's bottom to where the pinion's tip passes, rad.
const FARTHEST_TIP: f64 = 0.3;

/// A node's parabola over the roll, and the pinion's tip.
#[derive(Debug, Clone, Copy)]
struct Valley {
    /// Least rotation toward the pinion at which the point touches, rad, and the roll of it.
    toward: f64,
    roll: f64,
    bend: f64,
    lever: f64,
    /// Height under the pinion's tip at that roll, mm, and its derivative to the roll.
    tip: f64,
    tip_slope: f64,
}

impl Valley {
    fn of(column: &Column, row: usize) -> Option<Self> {
        let (slope, bend) = (column.slope[row], column.bend[row]);
        let step = -slope / bend;
        (column.regular[row] && bend > 0.0).then(|| Self {
            toward: column.touch[row] + 0.5 * slope * step,
            roll: column.meeting[row] + step,
            bend,
            lever: column.lever[row],
            tip: column.tip[row] + column.tip_slope[row] * step,
            tip_slope: column.tip_slope[row],
        })
    }

    /// Smallest gap over the roll, mm, the roll of it and the slope of the motion there.
    fn least(&self, envelope: &Lookup<'_>) -> (f64, f64, f64) {
        let (value, slope) = envelope.at(self.roll);
        let step = slope / self.bend;
        let tip = self.tip + self.tip_slope * step;
        if tip >= 0.0 {
            let gap = self.lever * (self.toward - value - 0.5 * slope * step);
            return (gap, self.roll + step, slope);
        }
        // The partner leaves the pinion's tooth: only rolls on one side count, and the nearest is where its tip passes.
        let step = (-self.tip / self.tip_slope).clamp(-FARTHEST_TIP, FARTHEST_TIP);
        let step = if step.is_nan() { FARTHEST_TIP } else { step };
        let roll = self.roll + step;
        let (value, slope) = envelope.at(roll);
        let gap = self.lever * (self.toward + 0.5 * self.bend * step * step - value);
        (gap, roll, slope)
    }
}

/// A flank that moves by this envelope.
pub(super) struct FlankPrint<'a> {
    motion: Lookup<'a>,
    pitch: f64,
    valleys: Vec<Option<Valley>>,
    /// Rolls of the change-overs and by how much the slope jumps there.
    kinks: Vec<(f64, f64)>,
}

impl<'a> FlankPrint<'a> {
    pub(super) fn new(columns: &[Column], envelope: &'a Envelope) -> Self {
        let valleys = columns
            .iter()
            .flat_map(|column| (0..ROWS).map(|row| Valley::of(column, row)))
            .collect();
        Self {
            motion: envelope.lookup(),
            pitch: envelope.pitch(),
            valleys,
            kinks: envelope.kinks_and_jumps(),
        }
    }

    fn valley(&self, i: usize, j: usize) -> Option<&Valley> {
        self.valleys.get(i * ROWS + j).and_then(Option::as_ref)
    }

    /// The pattern under a film. None where nothing is marked.
    pub(super) fn pattern(&self, film_um: f64) -> Option<Pattern> {
        let film = 1e-3 * film_um;
        let gaps: Vec<Option<f64>> = self
            .valleys
            .iter()
            .map(|valley| valley.as_ref().map(|v| v.least(&self.motion).0))
            .collect();
        let gap = |i: usize, j: usize| gaps.get(i * ROWS + j).copied().flatten();
        let mut marked = Marked::new();
        for i in 0..CELLS[0] {
            let x = [coordinate(i, CELLS[0]), coordinate(i + 1, CELLS[0])];
            for j in 0..CELLS[1] {
                let y = [coordinate(j, CELLS[1]), coordinate(j + 1, CELLS[1])];
                let corners = [gap(i, j), gap(i + 1, j), gap(i + 1, j + 1), gap(i, j + 1)];
                let [Some(a), Some(b), Some(c), Some(d)] = corners else {
                    marked.add_ragged(corners, x, y, film);
                    continue;
                };
                let low = least(least(a, b), least(c, d));
                let high = -least(least(-a, -b), least(-c, -d));
                if high < film {
                    // A change-over only makes gaps smaller than a parabola between the corners.
                    marked.add_whole(x, y);
                } else if low < film + HIGHEST_RIDGE_MM && low < film + MARGIN_MM + self.ridge_mm(i, j) {
                    self.add_cell(&mut marked, (i, j), x, y, film);
                }
            }
        }
        marked.pattern()
    }

    /// By how much a change-over inside a cell may lie under its corners, mm.
    fn ridge_mm(&self, i: usize, j: usize) -> f64 {
        let corners = [(i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1)].map(|(i, j)| self.valley(i, j));
        let (mut low, mut high, mut lever) = (f64::INFINITY, f64::NEG_INFINITY, 0.0);
        for valley in corners.into_iter().flatten() {
            low = least(low, valley.roll);
            high = -least(-high, -valley.roll);
            lever = -least(-lever, -valley.lever);
        }
        let pitch = self.pitch;
        let mut ridge = 0.0;
        for &(roll, jump) in &self.kinks {
            if ((low - roll) / pitch).floor() < ((high - roll) / pitch).floor() {
                ridge += 0.25 * jump * (high - low) * lever;
            }
        }
        ridge
    }

    /// By how much twice a line between two nodes lies above the curve, rad, at mid-cell: the mean second difference of
    /// the depths along one axis, of what the node and the next one have.
    fn sag(&self, (i, j): (usize, usize), lengthwise: bool) -> f64 {
        let at = |k: i64| {
            let step = |index: usize| usize::try_from(i64::try_from(index).ok()? + k).ok();
            let (i, j) = if lengthwise { (step(i)?, j) } else { (i, step(j)?) };
            if j < ROWS { self.valley(i, j) } else { None }
        };
        let difference = |k: i64| Some(at(k - 1)?.toward + at(k + 1)?.toward - 2.0 * at(k)?.toward);
        match (difference(0), difference(1)) {
            (Some(a), Some(b)) => 0.5 * (a + b),
            (a, b) => a.or(b).unwrap_or(0.0),
        }
    }

    fn add_cell(&self, marked: &mut Marked, (i, j): (usize, usize), x: [f64; 2], y: [f64; 2], film: f64) {
        let corners = [(i, j), (i + 1, j), (i + 1, j + 1), (i, j + 1)].map(|(i, j)| self.valley(i, j));
        let [Some(a), Some(b), Some(c), Some(d)] = corners else {
            return;
        };
        let sag_x = [self.sag((i, j), true), self.sag((i, j + 1), true)];
        let sag_y = [self.sag((i, j), false), self.sag((i + 1, j), false)];
        // Depth, roll and tip run through the cell; what changes little is taken at its middle.
        let mean = |of: fn(&Valley) -> f64| 0.25 * (of(a) + of(b) + of(c) + of(d));
        let (bend, lever, tip_slope) = (mean(|v| v.bend), mean(|v| v.lever), mean(|v| v.tip_slope));
        let mut gaps = [[0.0; PARTS + 1]; PARTS + 1];
        for (q, row) in gaps.iter_mut().enumerate() {
            let v = q as f64 / PARTS as f64;
            for (p, gap) in row.iter_mut().enumerate() {
                let u = p as f64 / PARTS as f64;
                let mix = |of: fn(&Valley) -> f64| {
                    let (low, high) = (of(a) + u * (of(b) - of(a)), of(d) + u * (of(c) - of(d)));
                    low + v * (high - low)
                };
                let sag = u * (1.0 - u) * ((1.0 - v) * sag_x[0] + v * sag_x[1])
                    + v * (1.0 - v) * ((1.0 - u) * sag_y[0] + u * sag_y[1]);
                let valley = Valley {
                    toward: mix(|v| v.toward) - 0.5 * sag,
                    roll: mix(|v| v.roll),
                    tip: mix(|v| v.tip),
                    bend,
                    lever,
                    tip_slope,
                };
                *gap = valley.least(&self.motion).0;
            }
        }
        let part = |ends: [f64; 2], k: usize| ends[0] + (ends[1] - ends[0]) * k as f64 / PARTS as f64;
        for q in 0..PARTS {
            for p in 0..PARTS {
                let values = [gaps[q][p], gaps[q][p + 1], gaps[q + 1][p + 1], gaps[q + 1][p]];
                marked.add_square(values, [part(x, p), part(x, p + 1)], [part(y, q), part(y, q + 1)], film);
            }
        }
    }

    /// Smallest gaps on the grid, with slopes.
    pub(super) fn map(&self) -> GapMap {
        let mut nodes = Vec::with_capacity(COLUMNS * ROWS);
        for i in 0..COLUMNS {
            for j in 0..ROWS {
                nodes.push(self.node(i, j));
            }
        }
        GapMap {
            nx: CELLS[0],
            ny: CELLS[1],
            nodes,
        }
    }

    fn node(&self, i: usize, j: usize) -> Option<SmallestGap> {
        let here = self.valley(i, j)?;
        let (gap, _, motion) = here.least(&self.motion);
        // The parabola's depth and the roll of its bottom are smooth; the motion enters by its own slope.
        let along = |low: Option<&Valley>, high: Option<&Valley>, cell: f64| {
            let (low, high, cells) = match (low, high) {
                (Some(low), Some(high)) => (low, high, 2.0),
                (Some(low), None) => (low, here, 1.0),
                (None, Some(high)) => (here, high, 1.0),
                (None, None) => return 0.0,
            };
            here.lever * ((high.toward - low.toward) - motion * (high.roll - low.roll)) / (cells * cell)
        };
        let before = |k: usize| k.checked_sub(1);
        Some(SmallestGap {
            gap,
            slope: [
                along(
                    before(i).and_then(|i| self.valley(i, j)),
                    self.valley(i + 1, j),
                    2.0 / CELLS[0] as f64,
                ),
                along(
                    before(j).and_then(|j| self.valley(i, j)),
                    if j + 1 < ROWS { self.valley(i, j + 1) } else { None },
                    2.0 / CELLS[1] as f64,
                ),
            ],
        })
    }
}

/// The smaller of two numbers.
fn least(a: f64, b: f64) -> f64 {
    if b < a { b } else { a }
}
