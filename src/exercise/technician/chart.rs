//! What the card and the drawings of an axle let anybody work out beforehand: the set's chart of prints over depth, lash
//! over the wheel's travel, torque over spacer shims.

use crate::axle::{
    Assembly, Axle, Member, Moves, Nut, NutMove, SpacerFitted, Truth, Turning, resistance, settle, turn_nut,
};
use crate::contact::{self, Contact, Film, FlankContact, Placement, Route};
use crate::exercise::prepared::{Exercise, ExerciseError};
use crate::exercise::score::approval;
use crate::gear::Design;

/// Where a print lies and how far it moves with depth, at equal lash.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlankChart {
    /// Middle of the print at the designed place.
    pub approved: [f64; 2],
    /// How far it moves in length and height for a millimetre deeper.
    pub deeper: [f64; 2],
}

/// The chart of an axle.
#[derive(Debug, Clone, PartialEq)]
pub struct Chart {
    /// Wheel's convex flank.
    pub drive: FlankChart,
    /// Wheel's concave flank.
    pub coast: FlankChart,
    /// The same of the other set on painted plates; of this one where there is none.
    pub other: [FlankChart; 2],
    /// Lash for a millimetre of wheel travel away, transverse.
    pub lash_over_wheel: f64,
    /// Rotating torque of the pinion over a change of the spacer's shims, mm against N m; falling. Empty with a sleeve.
    torque: Vec<(f64, f64)>,
    /// Torque at the pinion over squeeze of the side stacks, mm against N m; rising.
    side: Vec<(f64, f64)>,
    /// Rise of the rotating torque for a degree of the nut on a sleeve that yields, N m.
    pub torque_a_degree_nm: f64,
    /// Distance from the wheel's axis to the pinion's head at the designed place, mm.
    pub head_distance_mm: f64,
    /// How much deeper a millimetre of the depth shim sets the pinion.
    pub deeper_by_shim: f64,
    /// How much thicker the spacer's shims have to become with a millimetre of the depth shim.
    pub spacer_follows: f64,
}

/// Half the step over which slopes are taken, mm.
const STEP_MM: f64 = 0.05;

impl Chart {
    /// Of an exercise.
    ///
    /// # Errors
    /// [`ExerciseError`] for a design that makes no gears or an axle that cannot be set.
    pub fn of(exercise: &Exercise) -> Result<Self, ExerciseError> {
        let axle = exercise.axle();
        let (own, lash_over_wheel) = flanks(exercise, exercise.design())?;
        let other = match exercise.other_design() {
            Some(design) => flanks(exercise, design)?.0,
            None => own,
        };
        let [drive, coast] = own;
        let member = axle.depth_shim_member();
        let chain = axle.chain();
        let per_shim = chain.per_unit(member, Moves::PinionAxial);
        let tighter = chain.per_unit(member, Moves::ZeroPreloadLength);
        Ok(Self {
            drive,
            coast,
            other,
            lash_over_wheel,
            torque: torque_over_shims(exercise)?,
            side: side_torque(axle)?,
            torque_a_degree_nm: torque_a_degree(axle)?,
            head_distance_mm: axle.gears().pinion_head_distance_mm,
            deeper_by_shim: -per_shim,
            spacer_follows: tighter,
        })
    }

    /// How much thicker the spacer's shims have to become for the torque to come from one value to another, mm.
    pub fn shims_for(&self, from_nm: f64, to_nm: f64) -> f64 {
        place_of(&self.torque, to_nm) - place_of(&self.torque, from_nm)
    }

    /// How much thicker the spacer's shims have to become for play to vanish and the torque to come to a value, mm.
    pub fn shims_for_play(&self, play_mm: f64, to_nm: f64) -> f64 {
        // At the first thickness without any torque the pair has just no preload.
        let none = place_of(&self.torque, 0.0);
        place_of(&self.torque, to_nm) - none - play_mm
    }

    /// What the side bearings add at the pinion at a squeeze, N m.
    pub fn side_at(&self, squeeze_mm: f64) -> f64 {
        let turned: Vec<(f64, f64)> = self.side.iter().map(|(x, y)| (*y, *x)).collect();
        place_of(&turned, squeeze_mm)
    }

    /// Squeeze of the side stacks at which they add this torque at the pinion, mm.
    pub fn squeeze_for(&self, side_nm: f64) -> f64 {
        place_of(&self.side, side_nm)
    }
}

/// The chart of a set: drive and coast, and lash over the wheel's travel.
fn flanks(exercise: &Exercise, design: &Design) -> Result<([FlankChart; 2], f64), ExerciseError> {
    let pair = exercise.pair_of(design)?;
    let solve = |p: f64, g: f64| {
        let at = Placement {
            pinion_axial_mm: p,
            wheel_axial_mm: g,
            ..Placement::NOMINAL
        };
        contact::solve(&pair, at, Film::default(), Route::Fast)
    };
    let lash = |p: f64, g: f64| solve(p, g).lash.map_or(0.0, |l| l.min_mm);
    let over_wheel = (lash(0.0, STEP_MM) - lash(0.0, -STEP_MM)) / (2.0 * STEP_MM);
    let over_pinion = (lash(STEP_MM, 0.0) - lash(-STEP_MM, 0.0)) / (2.0 * STEP_MM);
    // The wheel follows so that lash stays.
    let follows = if over_wheel > 0.0 {
        -over_pinion / over_wheel
    } else {
        0.0
    };
    let approved = approval(&pair);
    let [deep, shallow] = [-STEP_MM, STEP_MM].map(|p| solve(p, follows * p));
    let chart = |of: fn(&Contact) -> &FlankContact| {
        let middle = |c: &Contact| of(c).pattern.map_or([0.0; 2], |p| p.centroid);
        let ([xd, yd], [xs, ys]) = (middle(&deep), middle(&shallow));
        FlankChart {
            approved: middle(&approved),
            deeper: [(xd - xs) / (2.0 * STEP_MM), (yd - ys) / (2.0 * STEP_MM)],
        }
    };
    Ok(([chart(|c| &c.drive), chart(|c| &c.coast)], over_wheel))
}

/// Where a falling or rising table takes a value; its end where it never does.
fn place_of(table: &[(f64, f64)], value: f64) -> f64 {
    for pair in table.windows(2) {
        if let &[(x0, y0), (x1, y1)] = pair
            && (y0 - value) * (y1 - value) <= 0.0
            && (y1 - y0).abs() > 1e-12
        {
            return x0 + (x1 - x0) * (value - y0) / (y1 - y0);
        }
    }
    let ends = (table.first(), table.last());
    match ends {
        (Some((x0, y0)), Some((x1, y1))) => {
            if (y0 - value).abs() < (y1 - value).abs() {
                *x0
            } else {
                *x1
            }
        }
        _ => 0.0,
    }
}

/// The pinion alone as drawn, seal in, its nut at the card's torque, over changed spacer shims.
fn torque_over_shims(exercise: &Exercise) -> Result<Vec<(f64, f64)>, ExerciseError> {
    let axle = exercise.axle();
    let Some(usual_mm) = axle
        .nominal_mm(Member::SpacerShims)
        .filter(|_| !axle.layout().has_sleeve())
    else {
        return Ok(Vec::new());
    };
    let truth = Truth::default();
    let torque_nm = exercise.scenario().targets.nut_torque_nm;
    let mut table = Vec::new();
    for step in -40..=40 {
        let more_mm = 0.005 * f64::from(step);
        let assembly = Assembly {
            carrier_in: false,
            nut: Nut::Off,
            spacer: SpacerFitted::Solid {
                shims_mm: usual_mm + more_mm,
            },
            ..Assembly::nominal(axle)?
        };
        let turned = turn_nut(axle, &truth, &assembly, NutMove::ToTorque { torque_nm }, 1.0)?;
        let mut after = turned.after;
        after.pinion_turns = 100.0;
        let built = settle(axle, &truth, &after)?;
        let preload = built.pinion.map_or(0.0, |p| p.tightened.preload_n);
        let felt = resistance(axle, &truth, &built, Turning::BY_HAND).map_or(0.0, |r| r.total_nm);
        table.push((more_mm, if preload > 0.0 { felt } else { 0.0 }));
    }
    Ok(table)
}

/// What the side bearings add at the pinion over the squeeze of their stacks.
fn side_torque(axle: &Axle) -> Result<Vec<(f64, f64)>, ExerciseError> {
    let truth = Truth::default();
    let mut table = Vec::new();
    for step in 0..=30 {
        let squeeze_mm = 0.02 * f64::from(step);
        let mut assembly = Assembly::nominal(axle)?;
        let more = 0.5 * (squeeze_mm - axle.target().side_squeeze_mm);
        for stack in &mut assembly.side {
            if axle.layout().side_setting() == crate::axle::SideSetting::Shims {
                stack.shim_mm += more;
            } else {
                stack.adjuster_deg += 360.0 * more / axle.adjuster().pitch_mm;
            }
        }
        assembly.carrier_turns = 100.0;
        let built = settle(axle, &truth, &assembly)?;
        let felt = resistance(axle, &truth, &built, Turning::BY_HAND).map_or(0.0, |r| r.side_bearings_nm);
        table.push((squeeze_mm, felt));
    }
    Ok(table)
}

/// Rise of the rotating torque for a degree of the nut while a sleeve yields: its pitch goes into the bearings.
fn torque_a_degree(axle: &Axle) -> Result<f64, ExerciseError> {
    if !axle.layout().has_sleeve() {
        return Ok(0.0);
    }
    let truth = Truth::default();
    let assembly = Assembly {
        carrier_in: false,
        ..Assembly::nominal(axle)?
    };
    let felt = |degrees: f64| -> Result<f64, ExerciseError> {
        let turned = turn_nut(axle, &truth, &assembly, NutMove::ByAngle { angle_deg: degrees }, 1.0)?;
        let mut after = turned.after;
        after.pinion_turns = 100.0;
        let built = settle(axle, &truth, &after)?;
        Ok(resistance(axle, &truth, &built, Turning::BY_HAND).map_or(0.0, |r| r.total_nm))
    };
    Ok((felt(4.0)? - felt(0.0)?) / 4.0)
}
