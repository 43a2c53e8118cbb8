//! How the bench lies when an attempt begins.

use std::sync::Arc;

use super::kit::{kit, pack_for};
use super::prepared::{Exercise, ExerciseError};
use super::scenario::Fitted;
use crate::axle::{
    Assembly, Axle, Caps, Member, Moves, Nut, NutMove, SideSetting, SideStack, SpacerFitted, Truth, WheelSeat,
};
use crate::axle::{settle, sums, turn_nut};
use crate::bench::{Bench, Setting, ShimPiece, ShimPlace, Start};

/// Turns after which bearings have settled.
const SETTLED_TURNS: f64 = 100.0;
/// How often the places of the side adjusters are corrected for the case's own spring.
const CORRECTIONS: u32 = 4;

impl Exercise {
    /// The bench of a seed as the trainee finds it.
    ///
    /// # Errors
    /// [`ExerciseError`] for a truth whose gears or whose axle cannot be.
    pub fn begin(&self, seed: u64) -> Result<Bench, ExerciseError> {
        let truth = self.truth(seed);
        let scenario = self.scenario();
        let kit = kit(scenario.layout, seed);
        let pair = Arc::new(self.pair(&truth)?);
        let start = match scenario.start.fitted {
            Fitted::Nothing => Start::Bare,
            fitted => self.assembled(&truth, &kit, fitted)?,
        };
        let setting = Setting::usual(self.axle().clone(), pair, seed, kit);
        Ok(Bench::new(Arc::new(setting), truth, &start)?)
    }

    /// What somebody has put together before: the old depth shim, a spacer that gives the wanted preload, the carrier set to
    /// its drawing as well as the truth lets it.
    fn assembled(&self, truth: &Truth, kit: &[ShimPiece], fitted: Fitted) -> Result<Start, ExerciseError> {
        let axle = self.axle();
        let scenario = self.scenario();
        let mut packs: [Vec<u32>; 4] = Default::default();
        let thickness = |pack: &[u32]| -> f64 {
            pack.iter()
                .filter_map(|&number| kit.get(usize::try_from(number).ok()?))
                .map(|piece| piece.true_mm + crate::bench::BURR_MM)
                .sum()
        };
        let mut assembly = Assembly::nominal(axle)?;
        assembly.caps_swapped = truth.case.caps_found_swapped;
        // Side bearings: each stack takes up what its parts are off the drawing.
        let stacks = [Moves::ToothStack, Moves::BackStack];
        match scenario.layout.side_setting() {
            SideSetting::Shims => {
                let found = sums(axle, truth, &assembly);
                let members = [Member::ToothSideShim, Member::BackSideShim];
                let places = [ShimPlace::ToothSide, ShimPlace::BackSide];
                for (k, (member, place)) in members.into_iter().zip(places).enumerate() {
                    let nominal = axle.nominal_mm(member).unwrap_or(0.0);
                    let pack = pack_for(kit, place, nominal - found.get(stacks[k]));
                    assembly.side[k].shim_mm = thickness(&pack);
                    packs[place as usize] = pack;
                }
            }
            SideSetting::Adjusters => adjust(axle, truth, &mut assembly)?,
        }
        if fitted == Fitted::Everything {
            packs[ShimPlace::Depth as usize] = pack_for(kit, ShimPlace::Depth, scenario.start.old_depth_shim_mm);
            assembly.depth_shim_mm = thickness(&packs[ShimPlace::Depth as usize]);
            if matches!(assembly.spacer, SpacerFitted::Solid { .. }) {
                let pack = self.spacer_pack(truth, kit, &assembly, &thickness)?;
                assembly.spacer = SpacerFitted::Solid {
                    shims_mm: thickness(&pack),
                };
                packs[ShimPlace::Spacer as usize] = pack;
            }
            let loose = Assembly {
                nut: Nut::Off,
                spacer: match assembly.spacer {
                    // A sleeve is crushed by the tightening itself.
                    SpacerFitted::Sleeve(_) => SpacerFitted::Sleeve(crate::bearing::SpacerMemory::default()),
                    other => other,
                },
                ..assembly.clone()
            };
            let to = NutMove::ToTorque {
                torque_nm: scenario.targets.nut_torque_nm,
            };
            assembly = turn_nut(axle, truth, &loose, to, truth.nut.friction_times)?.after;
            assembly.pinion_turns = SETTLED_TURNS;
        } else {
            let bare = Assembly::bare();
            assembly.bearings = bare.bearings;
            assembly.pinion_in = false;
            assembly.nut = bare.nut;
            assembly.spacer = bare.spacer;
            assembly.seal = false;
            assembly.cartridge_bolted = false;
            assembly.depth_shim_mm = 0.0;
        }
        Ok(Start::Assembled {
            assembly: Box::new(assembly),
            packs,
        })
    }

    /// Spacer shims that bring the pair nearest to the wanted preload at the wanted nut torque.
    fn spacer_pack(
        &self,
        truth: &Truth,
        kit: &[ShimPiece],
        assembly: &Assembly,
        thickness: &dyn Fn(&[u32]) -> f64,
    ) -> Result<Vec<u32>, ExerciseError> {
        let axle = self.axle();
        let nominal = axle.nominal_mm(Member::SpacerShims).unwrap_or(0.0);
        // More shims than nominal by as much as the pair closes at a longer spacer, less what the spacer itself is longer.
        let found = sums(axle, truth, assembly);
        let wanted = nominal + found.get(Moves::ZeroPreloadLength)
            - (found.get(Moves::SpacerLength) - (shims_of(assembly) - nominal));
        let pack = pack_for(kit, ShimPlace::Spacer, wanted);
        // Burrs stand in every pack of pieces that nobody cleaned.
        let off = thickness(&pack) - wanted;
        Ok(if off.abs() > 0.008 {
            pack_for(kit, ShimPlace::Spacer, wanted - off)
        } else {
            pack
        })
    }
}

fn shims_of(assembly: &Assembly) -> f64 {
    match assembly.spacer {
        SpacerFitted::Solid { shims_mm } => shims_mm,
        SpacerFitted::None | SpacerFitted::Sleeve(_) => 0.0,
    }
}

/// Turns both adjusters until wheel and side preload are what the drawing asks for, to the nearest slots.
fn adjust(axle: &Axle, truth: &Truth, assembly: &mut Assembly) -> Result<(), ExerciseError> {
    let notch = axle.adjuster().notch_deg();
    let degrees_a_mm = 360.0 / axle.adjuster().pitch_mm;
    let mut wanted_deg = [0.0; 2];
    for _ in 0..CORRECTIONS {
        let built = settle(axle, truth, assembly)?;
        let Some(side) = built.side else { break };
        // Both together make the preload, against each other they move the wheel.
        let together_mm = axle.target().side_squeeze_mm - side.squeeze_mm;
        let apart_mm = -side.axial_mm;
        wanted_deg[0] += degrees_a_mm * (0.5 * together_mm + apart_mm);
        wanted_deg[1] += degrees_a_mm * (0.5 * together_mm - apart_mm);
        for (stack, deg) in assembly.side.iter_mut().zip(wanted_deg) {
            *stack = SideStack {
                adjuster_deg: deg,
                ..*stack
            };
        }
    }
    for (stack, deg) in assembly.side.iter_mut().zip(wanted_deg) {
        stack.adjuster_deg = (deg / notch).round() * notch;
        stack.locked = true;
        stack.on_slack = false;
    }
    assembly.caps = Caps::Torqued;
    assembly.carrier_turns = SETTLED_TURNS;
    assembly.wheel = Some(WheelSeat {
        bolted: true,
        ..WheelSeat::default()
    });
    Ok(())
}
