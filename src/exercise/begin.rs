//! How the bench lies when an attempt begins.

use std::sync::Arc;

use super::fitted::Fitted;
use super::prepared::{Exercise, ExerciseError};
use super::spread::Spread;
use crate::axle::{Assembly, DepthShim, FittedShims, Member, Moves, Truth, sums};
use crate::bench::{BURR_MM, Bench, BenchSetUp, Plate, ShimPiece, StartingState};
use crate::contact::{Pair, Placement};
use crate::numerics::random::Stream;

impl Exercise {
    /// The bench of a seed as the trainee finds it.
    ///
    /// # Errors
    /// [`ExerciseError`] for a truth whose gears or whose axle cannot be.
    pub fn begin(&self, seed: u64) -> Result<Bench, ExerciseError> {
        let (axle, scenario) = (self.axle(), self.scenario());
        let truth = self.truth(seed);
        let pair = Arc::new(self.pair(&truth)?);
        // Whether gears bind is asked of the fast route; it is made ready before the first operation and not during it.
        pair.prepare_fast();
        let fitted = self.fitted_before(&truth, seed)?;
        let (kit, packs) = ShimPiece::kit(axle, seed, Some(fitted), &scenario.kit);
        let torque_nm = scenario.targets.nut_torque_nm;
        let start = match scenario.start.fitted {
            Fitted::Nothing => StartingState::Bare,
            Fitted::Rings => {
                let gaps = [Member::HeadConeGap, Member::HeadCupGap, Member::TailCupGap];
                let behind_a_ring = axle.depth_shim() != DepthShim::Cartridge;
                let [depth_pack, ..] = &packs;
                let laid = if behind_a_ring { depth_pack.clone() } else { Vec::new() };
                StartingState::rings(&truth, gaps.map(|gap| truth.deviations.get(gap)), laid)
            }
            Fitted::Carrier => {
                StartingState::without_pinion(axle, &truth, &kit, &packs, fitted.adjusters_off_mm, torque_nm)?
            }
            Fitted::Everything => StartingState::whole(axle, &truth, &kit, &packs, fitted.adjusters_off_mm, torque_nm)?,
        };
        let mut setting = BenchSetUp::usual(axle.clone(), pair, seed, kit);
        setting.plates = self.plates(seed)?;
        setting.tariff.minutes.clone_from(&scenario.minutes);
        setting.tariff.prices.clone_from(&scenario.prices);
        for off in &scenario.tools {
            for tool in setting.tools.iter_mut().filter(|tool| tool.name == off.name) {
                tool.instrument = tool.instrument.less_exact(off.error_times);
            }
        }
        Ok(Bench::new(Arc::new(setting), truth, &start)?)
    }

    /// Painted plates: turn by turn of this set and of the other one, at depths of all three kinds.
    fn plates(&self, seed: u64) -> Result<Vec<Plate>, ExerciseError> {
        let Some(wanted) = &self.scenario().plates else {
            return Ok(Vec::new());
        };
        let sets: Vec<(String, Arc<Pair>)> = [Some(self.design()), self.other_design()]
            .into_iter()
            .flatten()
            .map(|design| Ok((design.name.clone(), Arc::new(self.pair_of(design)?))))
            .collect::<Result<_, ExerciseError>>()?;
        let mut kinds = Stream::new(seed, "kinds of plates");
        Ok((0..wanted.count)
            .zip(sets.iter().cycle())
            .map(|(number, (gears, pair))| {
                let mut stream = Stream::new(seed, &format!("plate {number}"));
                let size = stream.between(0.5, 1.0) * wanted.depth_mm;
                let pinion_axial_mm = match kinds.index(3) {
                    0 => -size,
                    1 => stream.between(-0.2, 0.2) * wanted.depth_mm,
                    _ => size,
                };
                let placement = Placement {
                    pinion_axial_mm,
                    wheel_axial_mm: stream.between(-0.03, 0.03),
                    ..Placement::NOMINAL
                };
                Plate {
                    gears: gears.clone(),
                    pair: pair.clone(),
                    placement,
                }
            })
            .collect())
    }

    /// The packs that somebody had fitted before: the old depth shim of the card, and beside the spacer and the side
    /// bearings what careful hands had found for this axle, to a hundredth.
    pub(super) fn fitted_before(&self, truth: &Truth, seed: u64) -> Result<FittedShims, ExerciseError> {
        let (axle, scenario) = (self.axle(), self.scenario());
        let nominal = |member| axle.nominal_mm(member).unwrap_or(0.0);
        let depth_mm = scenario.start.old_depth_shim_mm;
        let assembly = Assembly {
            depth_shim_mm: depth_mm,
            ..Assembly::nominal(axle)?
        };
        // What the parts that are there add up to without the packs that are looked for.
        let found = sums(axle, truth, &assembly);
        let pack = |size_mm: f64| (100.0 * (size_mm - BURR_MM)).round() / 100.0;
        let spacer_mm =
            nominal(Member::SpacerShims) + found.get(Moves::ZeroPreloadLength) - found.get(Moves::SpacerLength);
        // The wheel stands at its drawing and the case is spread as designed when each stack makes up for its own side.
        let wheel_mm = found.get(Moves::WheelAxial);
        let sides_mm = [
            nominal(Member::ToothSideShim) - wheel_mm - found.get(Moves::ToothStack),
            nominal(Member::BackSideShim) + wheel_mm - found.get(Moves::BackStack),
        ];
        let drawn = |spread: Spread, name| spread.draw(&mut Stream::new(seed, name));
        let wheel_mm = drawn(scenario.start.wheel_off_mm, "wheel off");
        let squeeze_mm = drawn(scenario.start.squeeze_off_mm, "squeeze off");
        let off_mm = [wheel_mm + 0.5 * squeeze_mm, -wheel_mm + 0.5 * squeeze_mm];
        let [tooth_mm, back_mm] = sides_mm;
        Ok(FittedShims {
            depth_mm,
            spacer_mm: pack(spacer_mm),
            sides_mm: [pack(tooth_mm + off_mm[0]), pack(back_mm + off_mm[1])],
            adjusters_off_mm: off_mm,
        })
    }
}
