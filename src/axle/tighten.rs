//! Turning the pinion nut.
//!
//! The nut's place is the state: the distance of the cones' inner faces. A torque decides it by the clamp at which the nut
//! stops, an angle by its travel. Clamp above the friction of the head cone's fit drives the cone home and takes up travel;
//! a sleeve remembers how far it was crushed.
//!
//! Source: our own model of a nut, a fit and a sleeve, whose sources stand in `bearing`.

use super::assembly::{Assembly, Bearings, Nut, SpacerFitted};
use super::design::Axle;
use super::error::AxleError;
use super::settle::{memory, support_as_built};
use super::truth::Truth;
use crate::bearing::{Support, Tightened};
use crate::numerics::root;

/// How the nut is turned.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NutMove {
    /// On until the wrench shows this torque; a nut that is tighter already does not move.
    ToTorque {
        /// True torque, N m.
        torque_nm: f64,
    },
    /// By an angle, degrees; negative backs it off.
    ByAngle {
        /// Degrees.
        angle_deg: f64,
    },
}

/// What turning the nut came to.
#[derive(Debug, Clone, PartialEq)]
pub struct NutTurned {
    /// The assembly afterwards.
    pub after: Assembly,
    /// Torque on the nut at the end, N m: while tightening or while backing off.
    pub torque_nm: f64,
    /// Greatest torque on the way, N m: what breaks a sleeve's resistance is felt here.
    pub peak_torque_nm: f64,
    /// How far the nut went, degrees; positive tightens.
    pub angle_deg: f64,
}

/// Turns the nut. `friction_times` is the friction of this tightening, times nominal.
///
/// # Errors
/// [`AxleError::NothingToClamp`] without bearings or pinion, [`AxleError::Overload`] where something gives way first.
pub fn turn_nut(
    axle: &Axle,
    truth: &Truth,
    assembly: &Assembly,
    nut_move: NutMove,
    friction_times: f64,
) -> Result<NutTurned, AxleError> {
    if assembly.bearings == Bearings::None || !assembly.pinion_in {
        return Err(AxleError::NothingToClamp);
    }
    let mut support = support_as_built(axle, truth, assembly);
    support.nut = support.nut.with_friction_times(friction_times);
    let from_mm = match assembly.nut {
        Nut::On { seat_distance_mm, .. } => seat_distance_mm,
        Nut::Off => touching_mm(&support, assembly),
    };
    let mut after = assembly.clone();
    let gaps_before_mm = after.seating.head_cone.gap_mm;
    let (to_mm, state) = match nut_move {
        NutMove::ToTorque { torque_nm } => to_torque(&support, &mut after, from_mm, torque_nm)?,
        NutMove::ByAngle { angle_deg } => by_travel(&support, &mut after, from_mm, support.nut.travel_mm(angle_deg))?,
    };
    if let Some(overload) = support.with_seating(&after.seating).overload(&state) {
        return Err(overload.into());
    }
    if let SpacerFitted::Sleeve(memory) = &mut after.spacer {
        *memory = state.memory;
    }
    let travel_mm = from_mm - to_mm + gaps_before_mm - after.seating.head_cone.gap_mm;
    let tightened = travel_mm >= 0.0;
    after.nut = Nut::On {
        seat_distance_mm: to_mm,
        friction_times,
    };
    let torque_nm = if tightened {
        support.nut.tightening_torque_nm(state.clamp_n)
    } else {
        support.nut.loosening_torque_nm(state.clamp_n)
    };
    let peak_torque_nm = if tightened {
        torque_nm
    } else {
        let before = support
            .with_seating(&assembly.seating)
            .closed_to(from_mm, memory(assembly))?;
        support.nut.loosening_torque_nm(before.clamp_n)
    };
    Ok(NutTurned {
        after,
        torque_nm,
        peak_torque_nm,
        angle_deg: 360.0 * travel_mm / support.nut.pitch_mm,
    })
}

/// Distance of the cones' faces when the nut, run up by hand, begins to press.
fn touching_mm(support: &Support, assembly: &Assembly) -> f64 {
    let closed = support.with_seating(&assembly.seating).zero_preload_length_mm;
    let spacer = support.spacer.relaxed_length_mm(memory(assembly));
    if assembly.spacer != SpacerFitted::None && spacer > closed {
        spacer
    } else {
        closed
    }
}

fn to_torque(
    support: &Support,
    after: &mut Assembly,
    from_mm: f64,
    torque_nm: f64,
) -> Result<(f64, Tightened), AxleError> {
    let memory = memory(after);
    let (state, left) = support.tightened_with_gaps(torque_nm, memory, &after.seating)?;
    let to_mm = if state.spacer_loose {
        let seated = support.with_seating(&left);
        seated.zero_preload_length_mm + state.play_mm - seated.pair().closing_mm(state.preload_n)
    } else {
        state.spacer_loaded_length_mm
    };
    if to_mm > from_mm {
        // Already tighter than that torque brings it: the wrench gives before the nut moves.
        let held = support.with_seating(&after.seating).closed_to(from_mm, memory)?;
        return Ok((from_mm, held));
    }
    after.seating = left;
    Ok((to_mm, state))
}

fn by_travel(
    support: &Support,
    after: &mut Assembly,
    from_mm: f64,
    travel_mm: f64,
) -> Result<(f64, Tightened), AxleError> {
    let memory = memory(after);
    let seated = support.with_seating(&after.seating);
    let to_mm = from_mm - travel_mm;
    let free = seated.closed_to(to_mm, memory)?;
    let cone = after.seating.head_cone;
    if cone.gap_mm <= 0.0 || free.clamp_n <= cone.holding_n || travel_mm <= 0.0 {
        return Ok((to_mm, free));
    }
    // The cone slides on at the force of its fit; travel that it takes does not press the stack.
    let home_mm = to_mm + cone.gap_mm;
    let home = seated.closed_to(home_mm, memory)?;
    if home.clamp_n >= cone.holding_n {
        after.seating.head_cone.gap_mm = 0.0;
        return Ok((home_mm, home));
    }
    let excess = |at_mm: f64| {
        seated
            .closed_to(at_mm, memory)
            .map_or(f64::NAN, |s| s.clamp_n - cone.holding_n)
    };
    let stop_mm = root::in_bracket(excess, to_mm, home_mm, 1.0e-12)?;
    after.seating.head_cone.gap_mm = (cone.gap_mm - (stop_mm - to_mm)).clamp(0.0, cone.gap_mm);
    Ok((stop_mm, seated.closed_to(stop_mm, memory)?))
}
