//! Whole axles: one at its nominal sizes, and one that somebody set up before, as it stands when it comes in.
//!
//! Source: our own definition of careful hands; common practice, no source.

use super::assembly::{Assembly, Bearings, Caps, Nut, SideStack, SpacerFitted, WheelSeat};
use super::chain::Moves;
use super::design::Axle;
use super::error::AxleError;
use super::layout::SideSetting;
use super::member::Member;
use super::settle::{settle, sums, support_as_built};
use super::tighten::{NutMove, turn_nut};
use super::truth::Truth;
use crate::bearing::SpacerMemory;

/// Packs that were fitted, mm; those that a layout has no place for are not looked at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FittedShims {
    /// Depth shim.
    pub depth_mm: f64,
    /// Beside a solid spacer.
    pub spacer_mm: f64,
    /// Beside the side bearings: tooth side, behind the wheel.
    pub sides_mm: [f64; 2],
    /// How far side adjusters stand in beyond where careful hands would have left them, mm: tooth side, behind the wheel.
    pub adjusters_off_mm: [f64; 2],
}

impl Assembly {
    /// A whole axle with everything fitted at its nominal size and set to its target, cleaned, turned until settled.
    ///
    /// # Errors
    /// [`AxleError`] for an axle with values that are not numbers.
    pub fn nominal(axle: &Axle) -> Result<Self, AxleError> {
        let support = axle.support();
        let closing_mm = support.pair().closing_mm(axle.target().pinion_preload_n);
        let seat_distance_mm = support.zero_preload_length_mm - closing_mm;
        let nominal = |member| axle.nominal_mm(member).unwrap_or(0.0);
        let side = [Member::ToothSideShim, Member::BackSideShim].map(|member| SideStack {
            shim_mm: nominal(member),
            locked: true,
            ..SideStack::default()
        });
        Ok(Self {
            bearings: Bearings::Real,
            depth_shim_mm: nominal(axle.depth_shim_member()),
            spacer: if support.has_sleeve() {
                let crushed = support.closed_to(seat_distance_mm, SpacerMemory::default())?;
                SpacerFitted::Sleeve(crushed.memory)
            } else {
                SpacerFitted::Solid {
                    shims_mm: nominal(Member::SpacerShims),
                }
            },
            pinion_in: true,
            nut: Nut::On {
                seat_distance_mm,
                friction_times: 1.0,
            },
            seal: true,
            cartridge_bolted: axle.layout().has_cartridge(),
            pinion_turns: 100.0,
            wheel: Some(WheelSeat {
                bolted: true,
                ..WheelSeat::default()
            }),
            carrier_in: true,
            side,
            caps: Caps::Torqued,
            carrier_turns: 100.0,
            ..Self::bare()
        })
    }

    /// A whole axle with these packs, set up by careful hands: nut at its torque (a sleeve crushed until the pair holds
    /// the designed preload), adjusters on the slots next to the designed squeeze and wheel position, turned until
    /// settled.
    ///
    /// # Errors
    /// [`AxleError`] for parts that cannot be put together.
    pub fn set_up(axle: &Axle, truth: &Truth, shims: FittedShims, nut_torque_nm: f64) -> Result<Self, AxleError> {
        let nominal = Self::nominal(axle)?;
        let mut assembly = Self {
            depth_shim_mm: shims.depth_mm,
            nut: Nut::Off,
            spacer: match nominal.spacer {
                SpacerFitted::Sleeve(_) => SpacerFitted::Sleeve(SpacerMemory::default()),
                SpacerFitted::None | SpacerFitted::Solid { .. } => SpacerFitted::Solid {
                    shims_mm: shims.spacer_mm,
                },
            },
            ..nominal
        };
        match axle.layout().side_setting() {
            SideSetting::Shims => {
                for (stack, shim_mm) in assembly.side.iter_mut().zip(shims.sides_mm) {
                    stack.shim_mm = shim_mm;
                }
            }
            SideSetting::Adjusters => {
                // At these travels G is 0 and the squeeze as designed; the lock takes the next slot.
                let sums = sums(axle, truth, &assembly);
                let wheel_mm = sums.get(Moves::WheelAxial);
                let travels = [
                    -wheel_mm - sums.get(Moves::ToothStack),
                    wheel_mm - sums.get(Moves::BackStack),
                ];
                let adjuster = axle.adjuster();
                for ((stack, travel_mm), off_mm) in assembly.side.iter_mut().zip(travels).zip(shims.adjusters_off_mm) {
                    let notches = (travel_mm + off_mm) / adjuster.travel_mm(adjuster.notch_deg());
                    stack.adjuster_deg = notches.round() * adjuster.notch_deg();
                }
            }
        }
        let turns = assembly.pinion_turns;
        if let SpacerFitted::Sleeve(_) = assembly.spacer {
            let support = support_as_built(axle, truth, &assembly);
            let closing_mm = support.pair().closing_mm(axle.target().pinion_preload_n);
            assembly.nut = Nut::On {
                seat_distance_mm: support.zero_preload_length_mm - closing_mm,
                friction_times: truth.nut.friction_times,
            };
        } else {
            let torque = NutMove::ToTorque {
                torque_nm: nut_torque_nm,
            };
            assembly = turn_nut(axle, truth, &assembly, torque, truth.nut.friction_times)?.after;
        }
        assembly.pinion_turns = turns;
        Ok(settle(axle, truth, &assembly)?.after)
    }
}
