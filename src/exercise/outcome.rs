//! What an axle has become: true numbers, for the end of an attempt.

use std::f64::consts::TAU;

use crate::axle::{Turning, resistance, settle};
use crate::bench::Bench;
use crate::contact::{self, Film, FlankContact, Placement, Route};

/// Places around the wheel at which lash is taken.
const PLACES: u32 = 8;
/// Turns after which everything has settled.
const SETTLED_TURNS: f64 = 100.0;

/// True numbers of an axle as it stands; what is not together has none.
#[derive(Debug, Clone, PartialEq)]
pub struct Outcome {
    /// Mean placement of the gears.
    pub placement: Option<Placement>,
    /// P, mm, with the pinion held and its cartridge bolted, in mesh or not.
    pub pinion_axial_mm: Option<f64>,
    /// Tightest and loosest lash around the wheel, transverse at the outer pitch radius, mm.
    pub lash_mm: Option<[f64; 2]>,
    /// Difference of the mean lash between the tightest and the loosest place around the wheel, as above, mm.
    pub lash_spread_mm: Option<f64>,
    /// Both flanks under a usual film, at the mean placement: drive, coast.
    pub flanks: Option<[FlankContact; 2]>,
    /// Rotating torque of the pinion alone, bearings turned, N m.
    pub pinion_torque_nm: Option<f64>,
    /// What the side bearings add to it at the pinion, N m.
    pub side_torque_nm: Option<f64>,
    /// Preload of the pinion's pair, N.
    pub pinion_preload_n: Option<f64>,
    /// End play of the pinion, mm.
    pub pinion_play_mm: Option<f64>,
    /// Preload of the side bearings, N.
    pub side_preload_n: Option<f64>,
    /// Clamp of the nut, N.
    pub clamp_n: Option<f64>,
    /// Face runout of the wheel at its teeth, total, mm.
    pub wheel_face_runout_mm: f64,
}

impl Outcome {
    /// Of the axle on a bench.
    pub fn of(bench: &Bench) -> Self {
        let axle = &bench.setting().axle;
        let mut settled = bench.assembly().clone();
        settled.pinion_turns = SETTLED_TURNS;
        settled.carrier_turns = SETTLED_TURNS;
        // The same parts turned until they have settled; a state that was reached settles again.
        let built = settle(axle, bench.truth(), &settled).unwrap_or_else(|_| bench.built().clone());
        let felt = resistance(axle, bench.truth(), &built, Turning::BY_HAND);
        let pair = &bench.setting().pair;
        let around = built.placement.and_then(|_| {
            // Tightest and loosest, then least and largest of the places' means.
            let mut ends: Option<[f64; 4]> = None;
            for place in 0..PLACES {
                let angle = TAU * f64::from(place) / f64::from(PLACES);
                let at = built.placement_at(angle, -angle * axle.ratio())?;
                let lash = contact::solve(pair, at, Film::default(), Route::Exact).lash?;
                ends = Some(match ends {
                    None => [lash.min_mm, lash.max_mm, lash.mean_mm, lash.mean_mm],
                    Some([low, high, least, largest]) => [
                        if lash.min_mm < low { lash.min_mm } else { low },
                        if lash.max_mm > high { lash.max_mm } else { high },
                        if lash.mean_mm < least { lash.mean_mm } else { least },
                        if lash.mean_mm > largest { lash.mean_mm } else { largest },
                    ],
                });
            }
            ends
        });
        let flanks = built.placement.map(|placement| {
            let contact = contact::solve(pair, placement, Film::default(), Route::Exact);
            [contact.drive, contact.coast]
        });
        Self {
            placement: built.placement,
            pinion_axial_mm: built.pinion.and_then(|p| p.axial_mm),
            lash_mm: around.map(|[low, high, _, _]| [low, high]),
            lash_spread_mm: around.map(|[_, _, least, largest]| largest - least),
            flanks,
            pinion_torque_nm: felt.map(|f| f.total_nm - f.side_bearings_nm),
            side_torque_nm: felt.filter(|_| built.placement.is_some()).map(|f| f.side_bearings_nm),
            pinion_preload_n: built.pinion.map(|p| p.tightened.preload_n),
            pinion_play_mm: built.pinion.map(|p| p.play_mm),
            side_preload_n: built.side.map(|s| s.preload_n),
            clamp_n: built.pinion.map(|p| p.tightened.clamp_n),
            wheel_face_runout_mm: 2.0 * built.runout.wheel_face_amplitude_mm(),
        }
    }
}
