//! From truth and assembly to what the axle is: the solver.
//!
//! Source: our own solver: sums of the chain, and springs whose sources stand in `bearing`. What seats, adjusters on
//! the slack of their threads and bearings not yet turned do is common practice, no source; its numbers are our own.

use super::assembly::{Assembly, Bearings, Caps, Nut, SpacerFitted};
use super::built::{Built, PinionBuilt, Resistance, Runout, SideBuilt};
use super::chain::{Moves, Sums};
use super::design::Axle;
use super::error::AxleError;
use super::member::{Member, PerMember};
use super::truth::Truth;
use crate::bearing::friction::{self, Running};
use crate::bearing::{SideBearings, SpacerKind, SpacerMemory, Support, seal};
use crate::contact::Placement;
use crate::numerics::math;

/// A spacer this share of the room between the cones carries nothing: stands for none at all.
const NO_SPACER_SHARE: f64 = 0.5;

/// What the axle is with these parts fitted. Pure: the same numbers for the same state.
///
/// # Errors
/// [`AxleError`] for numbers that are none, and where something would have given way.
pub fn settle(axle: &Axle, truth: &Truth, assembly: &Assembly) -> Result<Built, AxleError> {
    let mut after = assembly.clone();
    let side = settle_side(axle, truth, &mut after)?;
    let pinion = settle_pinion(axle, truth, &mut after)?;
    let deviations = deviations(axle, truth, &after);
    let chain = axle.chain();
    let sums = chain.sums(&deviations, &after);
    let swing = |moves| chain.swing(moves, &deviations, &truth.phases_rad, &after);
    let runout = Runout {
        wheel_face_mm: swing(Moves::WheelFace),
        wheel_radial_mm: swing(Moves::WheelRadial),
        pinion_radial_mm: swing(Moves::PinionRadial),
    };
    let placement = match (pinion.and_then(|p| p.axial_mm), side, after.wheel) {
        (Some(pinion_axial_mm), Some(side), Some(_)) => Some(Placement {
            pinion_axial_mm: pinion_axial_mm + sums.get(Moves::WheelAcross),
            wheel_axial_mm: side.axial_mm,
            offset_mm: sums.get(Moves::Offset),
            shaft_angle_rad: sums.get(Moves::ShaftAngle),
        }),
        _ => None,
    };
    Ok(Built {
        pinion,
        side,
        placement,
        runout,
        class_lash_mm: class_lash_mm(truth, after.timing_offset),
        after,
    })
}

/// Deviation of every member, those of fitted parts included.
pub fn deviations(axle: &Axle, truth: &Truth, assembly: &Assembly) -> PerMember {
    let mut all = PerMember::default();
    for (member, value) in truth.deviations.iter().filter(|(m, _)| !m.is_fitted()) {
        all.set(member, value);
    }
    let beyond = |member: Member, size: f64| axle.nominal_mm(member).map_or(0.0, |nominal| size - nominal);
    let shim = axle.depth_shim_member();
    all.set(shim, beyond(shim, assembly.depth_shim_mm));
    if let SpacerFitted::Solid { shims_mm } = assembly.spacer {
        all.set(Member::SpacerShims, beyond(Member::SpacerShims, shims_mm));
    }
    for (member, gap) in [
        (Member::HeadConeGap, assembly.seating.head_cone),
        (Member::HeadCupGap, assembly.seating.head_cup),
        (Member::TailCupGap, assembly.seating.tail_cup),
    ] {
        all.set(member, gap.gap_mm);
    }
    let members = [
        (Member::ToothSideShim, Member::ToothSideAdjuster),
        (Member::BackSideShim, Member::BackSideAdjuster),
    ];
    for ((shim, adjuster), (stack, slack_mm)) in members
        .into_iter()
        .zip(assembly.side.iter().zip(truth.case.thread_slack_mm))
    {
        all.set(shim, beyond(shim, stack.shim_mm));
        let slack_mm = if stack.on_slack { slack_mm } else { 0.0 };
        all.set(adjuster, axle.adjuster().travel_mm(stack.adjuster_deg) + slack_mm);
    }
    all.set(Member::CaseSpreader, assembly.spreader_mm);
    all.set(Member::WheelTilt, assembly.wheel.map_or(0.0, |w| w.tilt_mm));
    all
}

/// What all deviations add up to for this assembly.
pub fn sums(axle: &Axle, truth: &Truth, assembly: &Assembly) -> Sums {
    axle.chain().sums(&deviations(axle, truth, assembly), assembly)
}

/// The pinion support that is really there: sizes from the chain, sleeve and frictions of the truth. Gaps behind the
/// rings are left out of the zero-preload length; [`Support::with_seating`] adds them.
pub fn support_as_built(axle: &Axle, truth: &Truth, assembly: &Assembly) -> Support {
    let home = Assembly {
        seating: assembly.seating.settled(),
        ..assembly.clone()
    };
    let sums = sums(axle, truth, &home);
    let mut support = axle.support().clone();
    support.zero_preload_length_mm += sums.get(Moves::ZeroPreloadLength);
    support.spacer.free_length_mm = match assembly.spacer {
        SpacerFitted::None => NO_SPACER_SHARE * support.zero_preload_length_mm,
        SpacerFitted::Sleeve(_) | SpacerFitted::Solid { .. } => {
            support.spacer.free_length_mm + sums.get(Moves::SpacerLength)
        }
    };
    if let SpacerKind::Collapsible {
        yield_force_n,
        hardening_n_per_mm,
    } = support.spacer.kind
    {
        support.spacer.kind = SpacerKind::Collapsible {
            yield_force_n: truth.sleeve.yield_times * yield_force_n,
            hardening_n_per_mm: truth.sleeve.hardening_times * hardening_n_per_mm,
        };
    }
    let settling = unturned_times(truth, assembly.pinion_turns);
    for (bearing, times) in [
        (&mut support.head_bearing, truth.friction.head_times),
        (&mut support.tail_bearing, truth.friction.tail_times),
    ] {
        bearing.friction_factor *= times * settling;
    }
    support
}

/// What the fitted spacer has been through.
pub(super) fn memory(assembly: &Assembly) -> SpacerMemory {
    match assembly.spacer {
        SpacerFitted::Sleeve(memory) => memory,
        SpacerFitted::None | SpacerFitted::Solid { .. } => SpacerMemory::default(),
    }
}

fn settle_pinion(axle: &Axle, truth: &Truth, after: &mut Assembly) -> Result<Option<PinionBuilt>, AxleError> {
    let Nut::On { seat_distance_mm, .. } = after.nut else {
        return Ok(None);
    };
    if after.bearings == Bearings::None || !after.pinion_in {
        return Ok(None);
    }
    let support = support_as_built(axle, truth, after);
    drive_cups_home(&support, seat_distance_mm, after)?;
    let tightened = support
        .with_seating(&after.seating)
        .closed_to(seat_distance_mm, memory(after))?;
    if let SpacerFitted::Sleeve(memory) = &mut after.spacer {
        *memory = tightened.memory;
    }
    let in_case = after.cartridge_bolted || !axle.layout().has_cartridge();
    let sums = sums(axle, truth, after);
    let outward_mm = sums.get(Moves::PinionAxial) + tightened.pinion_shift_mm - axle.preloaded_shift_mm();
    let axial_mm = outward_mm - (1.0 - after.pinion_push.share()) * tightened.play_mm;
    // P counts from where this pinion runs best; a gauge sees its head.
    let mark_mm =
        axle.chain().per_unit(Member::PinionMark, Moves::PinionAxial) * truth.deviations.get(Member::PinionMark);
    Ok(Some(PinionBuilt {
        tightened,
        axial_mm: in_case.then_some(axial_mm),
        head_distance_mm: in_case.then_some(axle.gears().pinion_head_distance_mm + axial_mm - mark_mm),
        play_mm: tightened.play_mm,
    }))
}

/// Preload above a cup's fit drives it on until the preload has fallen to that, or the cup is home.
fn drive_cups_home(support: &Support, seat_distance_mm: f64, after: &mut Assembly) -> Result<(), AxleError> {
    for _ in 0..2 {
        let state = support
            .with_seating(&after.seating)
            .closed_to(seat_distance_mm, memory(after))?;
        let zero_mm = support.zero_preload_length_mm;
        let seating = &mut after.seating;
        let (cup, other_mm) = if seating.head_cup.gap_mm > 0.0 && state.preload_n > seating.head_cup.holding_n && {
            seating.tail_cup.gap_mm <= 0.0 || seating.head_cup.holding_n <= seating.tail_cup.holding_n
        } {
            let other = seating.tail_cup.gap_mm;
            (&mut seating.head_cup, other)
        } else if seating.tail_cup.gap_mm > 0.0 && state.preload_n > seating.tail_cup.holding_n {
            let other = seating.head_cup.gap_mm;
            (&mut seating.tail_cup, other)
        } else {
            return Ok(());
        };
        let stops_mm = support.pair().closing_mm(cup.holding_n) + seat_distance_mm - zero_mm - other_mm;
        cup.gap_mm = stops_mm.clamp(0.0, cup.gap_mm);
    }
    Ok(())
}

/// The side bearings and the case that are really there.
pub fn side_as_built(axle: &Axle, truth: &Truth, assembly: &Assembly) -> SideBearings {
    let snug = if assembly.caps == Caps::Torqued {
        1.0
    } else {
        truth.case.snug_share
    };
    let caps = if assembly.caps_swapped {
        truth.friction.swapped_caps_times
    } else {
        1.0
    };
    let times = truth.friction.side_times * caps * unturned_times(truth, assembly.carrier_turns);
    let mut side = *axle.side();
    side.case_stiffness_n_per_mm *= truth.case.stiffness_times * snug;
    side.tooth_side.friction_factor *= times;
    side.back_side.friction_factor *= times;
    side
}

fn settle_side(axle: &Axle, truth: &Truth, after: &mut Assembly) -> Result<Option<SideBuilt>, AxleError> {
    if !after.carrier_in || after.caps == Caps::Off {
        return Ok(None);
    }
    // A loaded bearing presses its ring outward on to the thread; so does turning the carrier with the caps drawn up.
    let seated = |assembly: &Assembly| {
        let mut seated = assembly.clone();
        for stack in &mut seated.side {
            stack.on_slack = false;
        }
        seated
    };
    let on_threads = seated(after);
    let sums_seated = sums(axle, truth, &on_threads);
    let squeeze =
        |sums: &Sums| axle.target().side_squeeze_mm + sums.get(Moves::ToothStack) + sums.get(Moves::BackStack);
    if squeeze(&sums_seated) > 0.0 || (after.caps == Caps::Torqued && after.carrier_turns >= 1.0) {
        *after = on_threads;
    }
    let sums = sums(axle, truth, after);
    let side = side_as_built(axle, truth, after);
    // Rings that rest on the slack side of their thread give way before they press, one as much as the other.
    let crowded_mm = if squeeze(&sums_seated) <= 0.0 && squeeze(&sums) > 0.0 {
        squeeze(&sums)
    } else {
        0.0
    };
    let squeeze_mm = squeeze(&sums) - crowded_mm;
    let state = side.squeezed_by(squeeze_mm)?;
    let tooth_give_mm = state.tooth_side_deflection_mm + truth.case.tooth_side_share * state.case_spread_mm;
    let against_tooth_side = sums.get(Moves::ToothStack) + axle.tooth_side_give_mm() - tooth_give_mm - 0.5 * crowded_mm;
    Ok(Some(SideBuilt {
        preload_n: state.preload_n,
        squeeze_mm,
        play_mm: state.play_mm,
        case_spread_mm: state.case_spread_mm,
        axial_mm: sums.get(Moves::WheelAxial) + against_tooth_side + after.carrier_push.share() * state.play_mm,
    }))
}

/// What bearings drag that have turned that often since they were set, times what they drag once settled.
pub fn unturned_times(truth: &Truth, turns: f64) -> f64 {
    let settle = truth.friction.turns_to_settle;
    let left = if settle > 0.0 { math::exp(-turns / settle) } else { 0.0 };
    1.0 + truth.friction.unturned_share * left
}

/// Torque at the pinion nut that keeps everything turning at this pinion speed, or starts it.
///
/// The side bearings are felt only while wheel and pinion are in mesh. None without a pinion in its bearings.
pub fn resistance(axle: &Axle, truth: &Truth, built: &Built, turning: Turning) -> Option<Resistance> {
    let pinion = built.pinion?;
    let assembly = &built.after;
    let support = support_as_built(axle, truth, assembly);
    let preload_n = pinion.tightened.preload_n;
    let running = support.running(turning.speed_rpm, turning.temperature_c);
    let torque = |bearing| {
        if turning.start {
            truth.friction.start_times * friction::breakaway_nmm(bearing, preload_n)
        } else {
            friction::turning(bearing, preload_n, running).total_nmm
        }
    };
    let (head_bearing_nm, tail_bearing_nm) = (
        1.0e-3 * torque(&support.head_bearing),
        1.0e-3 * torque(&support.tail_bearing),
    );
    let seal_nm = if assembly.seal {
        truth.friction.seal_times * seal::drag_nm(support.seal_shaft_diameter_mm)
    } else {
        0.0
    };
    let side_bearings_nm = match (built.placement, built.side) {
        (Some(_), Some(_)) => side_resistance_nm(axle, truth, built, turning) / axle.ratio(),
        _ => 0.0,
    };
    Some(Resistance {
        head_bearing_nm,
        tail_bearing_nm,
        seal_nm,
        side_bearings_nm,
        total_nm: head_bearing_nm + tail_bearing_nm + seal_nm + side_bearings_nm,
    })
}

/// Torque at the wheel that keeps the carrier turning by itself, or starts it, N m; `turning` holds the pinion's speed, the
/// wheel turns slower by the ratio. 0 without a carrier between its bearings.
pub fn side_resistance_nm(axle: &Axle, truth: &Truth, built: &Built, turning: Turning) -> f64 {
    let Some(state) = built.side else {
        return 0.0;
    };
    let side = side_as_built(axle, truth, &built.after);
    if turning.start {
        return truth.friction.start_times * side.breakaway_torque_nm(state.preload_n);
    }
    let running = Running {
        speed_rpm: turning.speed_rpm / axle.ratio(),
        viscosity_mm2_s: axle.support().oil.viscosity_mm2_s(turning.temperature_c),
    };
    side.rolling_torque_nm(state.preload_n, running)
}

/// How an axle is turned by hand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Turning {
    /// Whether the torque asked for is that which starts it; else that which keeps it turning.
    pub start: bool,
    /// Speed of the pinion, r/min, above 0.
    pub speed_rpm: f64,
    /// °C.
    pub temperature_c: f64,
}

impl Turning {
    /// Kept turning by hand at 20 r/min and 20 °C.
    pub const BY_HAND: Self = Self {
        start: false,
        speed_rpm: 20.0,
        temperature_c: 20.0,
    };

    /// Started by hand.
    pub const STARTED: Self = Self {
        start: true,
        ..Self::BY_HAND
    };
}

/// Lash that mistimed marks add for each class of wheel teeth, mm: each class now meets the errors of another.
fn class_lash_mm(truth: &Truth, offset: u32) -> Vec<f64> {
    let errors = &truth.pair.class_errors_um;
    let at = |class: usize| {
        class
            .checked_rem(errors.len())
            .and_then(|c| errors.get(c))
            .copied()
            .unwrap_or(0.0)
    };
    let offset = usize::try_from(offset)
        .unwrap_or(0)
        .checked_rem(errors.len())
        .unwrap_or(0);
    (0..errors.len())
        .map(|class| 1.0e-3 * (at(class + offset) - at(class)))
        .collect()
}
