//! The gap near a designed meeting, as a quadratic form: made once a pair and flank.
//!
//! Around every grid point the gap is g = c + b·u + ½ uᵀA u in six unknowns: P, G, E, Σ, the wheel's rotation toward the
//! pinion, and the roll from the point's designed meeting. Its coefficients are differences of the whole exact gap, so
//! that the ease-off travels with the pinion. The steps of the differences are as large as the moves that are asked about,
//! which leaves cubic terms the least room.
//!
//! Source: our own; central differences and the implicit function theorem are textbook analysis. A form of second order
//! near a contact is an idea of M. L. Baxter, Basic Geometry and Tooth Contact of Hypoid Gears, Industrial Mathematics
//! 11 (1961).

use nalgebra::Vector3;

use crate::contact::gap::{Gap, PlacedPair};
use crate::contact::placement::Placement;
use crate::contact::prepared::PreparedFlank;
use crate::contact::resolution::coordinate;
use crate::gear::{GearSet, Roll};

/// Grid cells along the tooth and up the tooth.
pub(super) const CELLS: [usize; 2] = [20, 19];
/// Nodes along the tooth and up the tooth.
pub(super) const COLUMNS: usize = CELLS[0] + 1;
pub(super) const ROWS: usize = CELLS[1] + 1;

/// One number for every node of a column, root first.
pub(super) type Row = [f64; ROWS];

/// Steps of the differences: P, G, E in mm, Σ in rad.
const PLACEMENT_STEPS: [f64; 4] = [0.16, 0.10, 0.045, 7.0e-4];
/// Step of the wheel's rotation, rad.
const TURN_STEP: f64 = 1.5e-3;
/// Step of the roll, rad.
const ROLL_STEP: f64 = 4.0e-3;
/// Where the surfaces end before the steps do, the steps are shortened by these.
const SHARES: [f64; 4] = [1.0, 0.5, 0.25, 0.0625];

/// Terms of a quadratic in P, G, E, Σ: 1, four first powers, ten products.
const QUADRATIC: usize = 15;
/// Terms of a linear form in P, G, E, Σ.
const LINEAR: usize = 5;
/// The pairs of unknowns of P, G, E, Σ that are multiplied, in the order of the products.
const PRODUCTS: [(usize, usize); 10] = [
    (0, 0),
    (0, 1),
    (0, 2),
    (0, 3),
    (1, 1),
    (1, 2),
    (1, 3),
    (2, 2),
    (2, 3),
    (3, 3),
];

/// Coefficients of the nodes of a column.
#[derive(Debug, Clone)]
struct ColumnForm {
    /// Gap without rotation at the designed roll: 1; P, G, E, Σ; the products.
    gap: [Row; QUADRATIC],
    /// Its derivative to the rotation toward the pinion: 1; P, G, E, Σ.
    turn: [Row; LINEAR],
    /// Its derivative to the roll: 1; P, G, E, Σ.
    roll: [Row; LINEAR],
    /// Its second derivatives: rotation twice, rotation and roll, roll twice.
    second: [Row; 3],
    /// Height of the partner under the pinion's tip: 1; P, G, E, Σ; rotation; roll.
    tip: [Row; LINEAR + 2],
    meeting: Row,
    regular: [bool; ROWS],
}

impl ColumnForm {
    /// Harmless numbers where there is nothing.
    const EMPTY: Self = Self {
        gap: [[0.0; ROWS]; QUADRATIC],
        turn: [[-1.0; ROWS], [0.0; ROWS], [0.0; ROWS], [0.0; ROWS], [0.0; ROWS]],
        roll: [[0.0; ROWS]; LINEAR],
        second: [[0.0; ROWS], [0.0; ROWS], [1.0; ROWS]],
        tip: [[0.0; ROWS]; LINEAR + 2],
        meeting: [0.0; ROWS],
        regular: [false; ROWS],
    };
}

/// The nodes of a column at a placement. Rotation toward the pinion at which a node touches:
/// D = touch + slope t + ½ bend t², t the roll from its designed meeting.
#[derive(Debug, Clone)]
pub(super) struct Column {
    /// Roll of the designed meetings, rad.
    pub(super) meeting: Row,
    pub(super) touch: Row,
    pub(super) slope: Row,
    pub(super) bend: Row,
    /// mm of gap for a radian of rotation away from the pinion.
    pub(super) lever: Row,
    /// Height under the pinion's tip, mm, at the designed roll, and its derivative to the roll.
    pub(super) tip: Row,
    pub(super) tip_slope: Row,
    /// Whether there is a node at all.
    pub(super) regular: [bool; ROWS],
}

/// The forms of one flank.
#[derive(Debug, Clone)]
pub(super) struct Forms {
    columns: Vec<ColumnForm>,
}

impl Forms {
    pub(super) fn new(gears: &GearSet, flank: &PreparedFlank) -> Self {
        let stencils = SHARES.map(|share| Stencil::new(gears, share));
        let columns = (0..COLUMNS).map(|i| {
            let mut column = ColumnForm::EMPTY;
            for row in 0..ROWS {
                let (x, y) = (coordinate(i, CELLS[0]), coordinate(row, CELLS[1]));
                if let Some(node) = Node::at(flank, x, y)
                    && let Some(form) = stencils.iter().find_map(|stencil| stencil.form(flank, &node))
                {
                    form.put(&mut column, row, node.roll);
                }
            }
            column
        });
        Self {
            columns: columns.collect(),
        }
    }

    /// All nodes at a placement.
    pub(super) fn at(&self, placement: Placement) -> Vec<Column> {
        let u = unknowns(placement);
        let mut products = [0.0; 10];
        for (product, (k, l)) in products.iter_mut().zip(PRODUCTS) {
            *product = u[k] * u[l];
        }
        self.columns.iter().map(|form| form.at(&u, &products)).collect()
    }
}

fn unknowns(placement: Placement) -> [f64; 4] {
    [
        placement.pinion_axial_mm,
        placement.wheel_axial_mm,
        placement.offset_mm,
        placement.shaft_angle_rad,
    ]
}

impl ColumnForm {
    fn at(&self, u: &[f64; 4], products: &[f64; 10]) -> Column {
        let linear = |form: &[Row], row: usize| {
            form[0][row] + u[0] * form[1][row] + u[1] * form[2][row] + u[2] * form[3][row] + u[3] * form[4][row]
        };
        let mut column = Column {
            meeting: self.meeting,
            touch: [0.0; ROWS],
            slope: [0.0; ROWS],
            bend: [0.0; ROWS],
            lever: [0.0; ROWS],
            tip: [0.0; ROWS],
            tip_slope: self.tip[LINEAR + 1],
            regular: self.regular,
        };
        // One loop over the nodes a sum, so that several nodes go through the processor at once.
        let mut gap: Row = std::array::from_fn(|row| linear(&self.gap, row));
        for (product, form) in products.iter().zip(&self.gap[LINEAR..]) {
            for (sum, coefficient) in gap.iter_mut().zip(form) {
                *sum += product * coefficient;
            }
        }
        for (row, &gap) in gap.iter().enumerate() {
            let by_turn = linear(&self.turn, row);
            let by_roll = linear(&self.roll, row);
            let [turn_turn, turn_roll, roll_roll] = [0, 1, 2].map(|k| self.second[k][row]);
            // g(D) = 0: one step of Newton's method from the linear solution.
            let first = -gap / by_turn;
            let at_first = by_turn + turn_turn * first;
            let touch = first - 0.5 * turn_turn * first * first / at_first;
            // The implicit function theorem, twice.
            let along = by_turn + turn_turn * touch;
            let inverse = -1.0 / along;
            let slope = (by_roll + turn_roll * touch) * inverse;
            let bend = (roll_roll + slope * (2.0 * turn_roll + turn_turn * slope)) * inverse;
            column.touch[row] = touch;
            column.slope[row] = slope;
            column.bend[row] = bend;
            column.lever[row] = -along;
            column.tip[row] = linear(&self.tip, row) + self.tip[LINEAR][row] * touch;
        }
        column
    }
}

/// A wheel point at its designed meeting.
struct Node {
    w: Vector3<f64>,
    n: Vector3<f64>,
    roll: f64,
}

impl Node {
    fn at(flank: &PreparedFlank, x: f64, y: f64) -> Option<Self> {
        let patch = flank.pinion.wheel().patch(x, y)?;
        let meeting = flank.pinion.meeting(x, y)?;
        Some(Self {
            w: patch.w,
            n: patch.n,
            roll: meeting.roll_rad,
        })
    }
}

/// What is asked of a node at one place of the stencil.
#[derive(Debug, Clone, Copy)]
struct NodeQuery {
    gap: f64,
    by_turn: f64,
    by_roll: f64,
    tip: f64,
    near: Roll,
}

/// The placements of the differences.
struct Stencil {
    inverse_ratio: f64,
    middle: PlacedPair,
    /// Each unknown one step down and up.
    single: [[PlacedPair; 2]; 4],
    /// Two unknowns both down and both up, in the order of [`PRODUCTS`] without squares.
    double: Vec<(usize, usize, [PlacedPair; 2])>,
    steps: [f64; 4],
    turn_step: f64,
    roll_step: f64,
}

impl Stencil {
    fn new(gears: &GearSet, share: f64) -> Self {
        let steps = PLACEMENT_STEPS.map(|step| share * step);
        let stand = |moves: &[(usize, f64)]| {
            let mut u = [0.0; 4];
            for &(k, sense) in moves {
                u[k] = sense * steps[k];
            }
            let placement = Placement {
                pinion_axial_mm: u[0],
                wheel_axial_mm: u[1],
                offset_mm: u[2],
                shaft_angle_rad: u[3],
            };
            PlacedPair::new(gears, placement)
        };
        let mixed = PRODUCTS.iter().filter(|(k, l)| k != l);
        Self {
            inverse_ratio: 1.0 / gears.ratio(),
            middle: stand(&[]),
            single: [0, 1, 2, 3].map(|k| [stand(&[(k, -1.0)]), stand(&[(k, 1.0)])]),
            double: mixed
                .map(|&(k, l)| (k, l, [stand(&[(k, -1.0), (l, -1.0)]), stand(&[(k, 1.0), (l, 1.0)])]))
                .collect(),
            steps,
            turn_step: share * TURN_STEP,
            roll_step: share * ROLL_STEP,
        }
    }

    /// The form of a node. None where the surfaces end within the steps.
    fn form(&self, flank: &PreparedFlank, node: &Node) -> Option<NodeForm> {
        let look = |stand: &PlacedPair, roll: &Roll, toward: f64, near: Roll| -> Option<NodeQuery> {
            let gap: Gap = stand.gap(&flank.pinion, node.w, node.n, roll, flank.toward * toward, near)?;
            Some(NodeQuery {
                gap: gap.mm,
                by_turn: flank.toward * gap.by_turn(),
                by_roll: gap.slope(0.0),
                tip: flank.pinion.depth_under_tip_mm(gap.p),
                near: gap.near,
            })
        };
        let roll = Roll::new(node.roll, self.inverse_ratio);
        let middle = look(&self.middle, &roll, 0.0, roll)?;
        let at = |stand: &PlacedPair| look(stand, &roll, 0.0, middle.near);
        let mut form = NodeForm::default();
        form.gap[0] = middle.gap;
        form.tip[0] = middle.tip;
        form.roll[0] = middle.by_roll;

        let mut ends = [[middle; 2]; 4];
        for (k, [down, up]) in self.single.iter().enumerate() {
            let (low, high) = (at(down)?, at(up)?);
            let twice = 2.0 * self.steps[k];
            form.gap[1 + k] = (high.gap - low.gap) / twice;
            form.turn[1 + k] = (high.by_turn - low.by_turn) / twice;
            form.roll[1 + k] = (high.by_roll - low.by_roll) / twice;
            form.tip[1 + k] = (high.tip - low.tip) / twice;
            ends[k] = [low, high];
        }
        // How far an unknown's both ends together lie above the middle.
        let rise = |k: usize| ends[k][0].gap + ends[k][1].gap - 2.0 * middle.gap;
        let mut mixed = self.double.iter();
        for (place, (k, l)) in PRODUCTS.into_iter().enumerate() {
            form.gap[LINEAR + place] = if k == l {
                0.5 * rise(k) / (self.steps[k] * self.steps[k])
            } else {
                let (_, _, [down, up]) = mixed.next()?;
                let both = at(down)?.gap + at(up)?.gap - 2.0 * middle.gap;
                0.5 * (both - rise(k) - rise(l)) / (self.steps[k] * self.steps[l])
            };
        }

        let turned = |sense: f64| look(&self.middle, &roll, sense * self.turn_step, middle.near);
        let (low, high) = (turned(-1.0)?, turned(1.0)?);
        let step = self.turn_step;
        form.turn[0] = (high.gap - low.gap) / (2.0 * step);
        form.second[0] = (high.gap + low.gap - 2.0 * middle.gap) / (step * step);
        form.second[1] = (high.by_roll - low.by_roll) / (2.0 * step);
        form.tip[LINEAR] = (high.tip - low.tip) / (2.0 * step);

        let rolled = |sense: f64| {
            let step = sense * self.roll_step;
            let there = roll.advanced(step, self.inverse_ratio);
            look(
                &self.middle,
                &there,
                0.0,
                middle.near.advanced(step, self.inverse_ratio),
            )
        };
        let (low, high) = (rolled(-1.0)?, rolled(1.0)?);
        let step = self.roll_step;
        form.second[2] = (high.by_roll - low.by_roll) / (2.0 * step);
        form.tip[LINEAR + 1] = (high.tip - low.tip) / (2.0 * step);
        (form.second[2] > 0.0 && form.turn[0] < 0.0).then_some(form)
    }
}

/// Coefficients of one node, as in [`ColumnForm`].
#[derive(Debug, Clone, Copy, Default)]
struct NodeForm {
    gap: [f64; QUADRATIC],
    turn: [f64; LINEAR],
    roll: [f64; LINEAR],
    second: [f64; 3],
    tip: [f64; LINEAR + 2],
}

impl NodeForm {
    fn put(&self, column: &mut ColumnForm, row: usize, meeting: f64) {
        fn spread(rows: &mut [Row], values: &[f64], row: usize) {
            for (target, value) in rows.iter_mut().zip(values) {
                target[row] = *value;
            }
        }
        spread(&mut column.gap, &self.gap, row);
        spread(&mut column.turn, &self.turn, row);
        spread(&mut column.roll, &self.roll, row);
        spread(&mut column.second, &self.second, row);
        spread(&mut column.tip, &self.tip, row);
        column.meeting[row] = meeting;
        column.regular[row] = true;
    }
}
