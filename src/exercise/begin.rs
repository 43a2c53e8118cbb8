//! How the bench lies when an attempt begins.

use std::sync::Arc;

use super::prepared::{Exercise, ExerciseError};
use super::scenario::Fitted;
use crate::axle::{Assembly, FittedShims, Member, Moves, Truth, sums};
use crate::bench::{BURR_MM, Bench, Setting, ShimPiece, Start};

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
        let fitted = self.fitted_before(&truth)?;
        let (kit, packs) = ShimPiece::usual_kit(axle, seed, Some(fitted));
        let torque_nm = scenario.targets.nut_torque_nm;
        let start = match scenario.start.fitted {
            Fitted::Nothing => Start::Bare,
            Fitted::Carrier => Start::without_pinion(axle, &truth, &kit, &packs, torque_nm)?,
            Fitted::Everything => Start::whole(axle, &truth, &kit, &packs, torque_nm)?,
        };
        let setting = Setting::usual(axle.clone(), pair, seed, kit);
        Ok(Bench::new(Arc::new(setting), truth, &start)?)
    }

    /// The packs that somebody had fitted before: the old depth shim of the card, and beside the spacer and the side
    /// bearings what careful hands had found for this axle, to a hundredth.
    pub(super) fn fitted_before(&self, truth: &Truth) -> Result<FittedShims, ExerciseError> {
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
        Ok(FittedShims {
            depth_mm,
            spacer_mm: pack(spacer_mm),
            sides_mm: sides_mm.map(pack),
        })
    }
}
