//! The hidden numbers of one axle: how its parts were really made.

use super::member::PerMember;
use crate::gear::{Design, EaseOff};

/// Everything about an axle that nobody can see: sizes, frictions, stiffnesses, faults. Fixed for an attempt; what changes
/// while parts are fitted stands in [`super::Assembly`]. Faults are larger entries of the same members.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Truth {
    /// Deviations from nominal, mm (rad for squareness); entries of members that are fitted are not looked at.
    pub deviations: PerMember,
    /// For runouts: wheel angle (pinion angle for the pinion's) of the farthest swing to the positive side, rad.
    pub phases_rad: PerMember,
    /// What is etched on the pinion's head, mm, positive for "stands farther from the wheel axis". The true one is the
    /// deviation of `PinionMark`.
    pub mark_etched_mm: f64,
    /// The sleeve.
    pub sleeve: SleeveTruth,
    /// The pinion nut.
    pub nut: NutTruth,
    /// Bearings and seal.
    pub friction: FrictionTruth,
    /// Case, caps and side adjusters.
    pub case: CaseTruth,
    /// Press fits of the pinion's bearings.
    pub press: PressTruth,
    /// The wheel on its carrier.
    pub wheel_fit: WheelFitTruth,
    /// Which gears lie on the bench.
    pub pair: PairTruth,
}

/// A sleeve against its drawing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SleeveTruth {
    /// Force at which it yields, times nominal.
    pub yield_times: f64,
    /// Rise of the force with crushing, times nominal.
    pub hardening_times: f64,
}

/// Nut and thread.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NutTruth {
    /// Friction of this nut, times nominal.
    pub friction_times: f64,
    /// Standard deviation of the friction from one tightening to the next, as a share of it.
    pub scatter_share: f64,
}

/// What resists turning.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FrictionTruth {
    /// Head bearing, times what the support file says.
    pub head_times: f64,
    /// Tail bearing, times what the support file says.
    pub tail_times: f64,
    /// Side bearings, times nominal.
    pub side_times: f64,
    /// How much more bearings drag that have not been turned since they were set, as a share.
    pub unturned_share: f64,
    /// Turns in which that falls to 1/e.
    pub turns_to_settle: f64,
    /// Torque to start, times what the formula for a seated bearing says.
    pub start_times: f64,
    /// Drag of the seal, times the formula for a run-in one: 2 to 4 when new or dry.
    pub seal_times: f64,
    /// Side bearing friction with the caps changed round, times that with the caps in place.
    pub swapped_caps_times: f64,
}

/// Case, caps, side adjusters.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CaseTruth {
    /// Stiffness of the case against being spread, times nominal.
    pub stiffness_times: f64,
    /// Share of that stiffness which is there while the caps are only snug.
    pub snug_share: f64,
    /// Share of the spread that happens on the tooth side, 0 to 1.
    pub tooth_side_share: f64,
    /// Slack of the adjusters' threads, mm: tooth side, behind the wheel.
    pub thread_slack_mm: [f64; 2],
    /// Whether the caps were changed round when the axle came in.
    pub caps_found_swapped: bool,
}

/// Forces that move rings on their seats, N.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PressTruth {
    /// Cone of the head bearing on the pinion.
    pub head_cone_n: f64,
    /// Cup of the head bearing in its bore.
    pub head_cup_n: f64,
    /// Cup of the tail bearing in its bore.
    pub tail_cup_n: f64,
}

/// The wheel on the carrier's register.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WheelFitTruth {
    /// Interference on the register's diameter, mm; not positive: slides on.
    pub interference_mm: f64,
    /// Half the face runout left when the wheel is drawn on cold and tight, bolt after bolt round the circle, mm.
    pub cold_tilt_mm: f64,
    /// Share of that left when the bolts are drawn up crosswise, 0 to 1.
    pub crossed_share: f64,
    /// Whether the wheel sat on a chip when the axle came in.
    pub found_dirty: bool,
}

/// The gears on the bench.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PairTruth {
    /// Match number etched on the pinion.
    pub pinion_number: u32,
    /// Match number etched on the wheel.
    pub wheel_number: u32,
    /// What the pinion's flanks (drive, coast) differ from the design by, added to its ease-off: a mismatched pinion, worn
    /// teeth.
    pub flank_deviation: [EaseOff; 2],
    /// Pitch errors lapped into the classes of teeth that meet only each other, µm at the outer pitch radius; as many as
    /// the greatest common divisor of the tooth numbers. Matched timing marks cancel them.
    pub class_errors_um: Vec<f64>,
}

impl Default for SleeveTruth {
    fn default() -> Self {
        Self {
            yield_times: 1.0,
            hardening_times: 1.0,
        }
    }
}

impl Default for NutTruth {
    fn default() -> Self {
        Self {
            friction_times: 1.0,
            scatter_share: 0.07,
        }
    }
}

impl Default for FrictionTruth {
    fn default() -> Self {
        Self {
            head_times: 1.0,
            tail_times: 1.0,
            side_times: 1.0,
            unturned_share: 0.35,
            turns_to_settle: 6.0,
            start_times: 1.15,
            seal_times: 2.0,
            swapped_caps_times: 3.0,
        }
    }
}

impl Default for CaseTruth {
    fn default() -> Self {
        Self {
            stiffness_times: 1.0,
            snug_share: 0.6,
            tooth_side_share: 0.5,
            thread_slack_mm: [0.06, 0.06],
            caps_found_swapped: false,
        }
    }
}

impl Default for PressTruth {
    /// Middle of the 9 to 18 kN that friction of such fits comes to.
    fn default() -> Self {
        Self {
            head_cone_n: 13_000.0,
            head_cup_n: 11_000.0,
            tail_cup_n: 10_000.0,
        }
    }
}

impl Default for WheelFitTruth {
    fn default() -> Self {
        Self {
            interference_mm: 0.05,
            cold_tilt_mm: 0.06,
            crossed_share: 0.25,
            found_dirty: false,
        }
    }
}

impl Truth {
    /// The gears that are really there: the design with the flanks' deviations.
    #[must_use]
    pub fn design_of(&self, design: &Design) -> Design {
        let [drive, coast] = self.pair.flank_deviation;
        Design {
            ease_off_drive: sum(design.ease_off_drive, drive),
            ease_off_coast: sum(design.ease_off_coast, coast),
            ..design.clone()
        }
    }

    /// Hands every number on as bits, in a fixed order: for hashes of a state.
    pub fn bits(&self, sink: &mut dyn FnMut(u64)) {
        let Self {
            deviations,
            phases_rad,
            mark_etched_mm,
            sleeve,
            nut,
            friction,
            case,
            press,
            wheel_fit,
            pair,
        } = self;
        for (_, value) in deviations.iter().chain(phases_rad.iter()) {
            sink(value.to_bits());
        }
        let numbers = [
            *mark_etched_mm,
            sleeve.yield_times,
            sleeve.hardening_times,
            nut.friction_times,
            nut.scatter_share,
            friction.head_times,
            friction.tail_times,
            friction.side_times,
            friction.unturned_share,
            friction.turns_to_settle,
            friction.start_times,
            friction.seal_times,
            friction.swapped_caps_times,
            case.stiffness_times,
            case.snug_share,
            case.tooth_side_share,
            case.thread_slack_mm[0],
            case.thread_slack_mm[1],
            press.head_cone_n,
            press.head_cup_n,
            press.tail_cup_n,
            wheel_fit.interference_mm,
            wheel_fit.cold_tilt_mm,
            wheel_fit.crossed_share,
        ];
        for n in numbers {
            sink(n.to_bits());
        }
        sink(u64::from(case.caps_found_swapped));
        sink(u64::from(wheel_fit.found_dirty));
        sink(u64::from(pair.pinion_number));
        sink(u64::from(pair.wheel_number));
        for e in pair.flank_deviation {
            for n in [
                e.lengthwise_crown_um,
                e.profile_crown_um,
                e.twist_um,
                e.lengthwise_slope_um,
                e.profile_slope_um,
            ] {
                sink(n.to_bits());
            }
        }
        for n in &pair.class_errors_um {
            sink(n.to_bits());
        }
    }

    /// Whether the etched numbers of the gears belong together.
    pub fn numbers_match(&self) -> bool {
        self.pair.pinion_number == self.pair.wheel_number
    }
}

fn sum(a: EaseOff, b: EaseOff) -> EaseOff {
    EaseOff {
        lengthwise_crown_um: a.lengthwise_crown_um + b.lengthwise_crown_um,
        profile_crown_um: a.profile_crown_um + b.profile_crown_um,
        twist_um: a.twist_um + b.twist_um,
        lengthwise_slope_um: a.lengthwise_slope_um + b.lengthwise_slope_um,
        profile_slope_um: a.profile_slope_um + b.profile_slope_um,
    }
}
