//! Understanding: what was foreseen, by a proper rule.
//!
//! A build in which something moved and was looked at again is an occasion to predict. On each, chances p of the three
//! outcomes are worth 1 − Σ (p − o)²/2, o being 1 for what came and 0 for the others (the quadratic rule: Brier, Monthly
//! Weather Review 78, 1950; whoever says what he thinks can expect most). Who says nothing is taken to have said 1/3 each,
//! which is worth 2/3: so predicting wins on the average only by knowing. One prediction a build counts, the first; nothing
//! counts where nothing moved, and nothing where the change is too weak to be told.

use super::marks::Mark;
use super::reason::UnderstandingReason;
use super::sheet;
use crate::bench::{Measurand, Predicted, Prediction};
use crate::contact::{self, Contact, Film, Pair, Placement, Route};
use crate::exercise::attempt::Attempt;
use crate::exercise::history::{Deed, Moment};

/// Worth of "nothing known".
const NOTHING_KNOWN: f64 = 2.0 / 3.0;
/// Placements closer than this are the same, mm.
const SAME_PLACE_MM: f64 = 0.005;
/// Angles closer than this are the same, rad.
const SAME_ANGLE_RAD: f64 = 2.0e-5;
/// Preloads closer than this share are the same.
const SAME_PRELOAD_SHARE: f64 = 0.02;
/// Changes up to this are "unchanged", from twice this on they have a direction; what lies between cannot be asked: lash,
/// mm; torque, as a share; centroids of prints, where an eye is off by as much.
const SAME_LASH_MM: f64 = 0.01;
const SAME_TORQUE_SHARE: f64 = 0.03;
const SAME_PRINT: f64 = 0.03;

/// What is looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Evidence {
    Lash,
    Torque,
    Print,
}

impl Evidence {
    fn of(what: Measurand) -> Option<Self> {
        match what {
            Measurand::Lash { .. } => Some(Self::Lash),
            Measurand::RollingTorque {} | Measurand::BreakawayTorque {} => Some(Self::Torque),
            Measurand::Print {} => Some(Self::Print),
            Measurand::WheelFaceRunout {}
            | Measurand::WheelRadialRunout {}
            | Measurand::PinionRunout {}
            | Measurand::NutTorque {}
            | Measurand::CarrierTorque {}
            | Measurand::PinionDepth {}
            | Measurand::PinionEndPlay {}
            | Measurand::CarrierEndPlay {}
            | Measurand::CaseSpread {}
            | Measurand::ShimPiece { .. }
            | Measurand::ShimPack { .. }
            | Measurand::SeatGap { .. }
            | Measurand::WheelTemperature {}
            | Measurand::Plate { .. }
            | Measurand::MatchNumbers {} => None,
        }
    }

    fn about(about: Predicted) -> Self {
        match about {
            Predicted::Lash => Self::Lash,
            Predicted::PinionTorque => Self::Torque,
            Predicted::DriveLength | Predicted::DriveHeight | Predicted::CoastLength | Predicted::CoastHeight => {
                Self::Print
            }
        }
    }
}

/// A second look at something that had moved since the first.
struct Occasion<'a> {
    look: Evidence,
    before: &'a Moment,
    after: &'a Moment,
}

pub(super) fn marks(attempt: &Attempt) -> Vec<Mark> {
    if attempt.exercise().scenario().plates.is_some() {
        return plates(attempt);
    }
    let occasions = occasions(attempt.history());
    let mut builds: Vec<u32> = occasions.iter().map(|o| o.after.tear_downs).collect();
    builds.dedup();
    if builds.is_empty() {
        return vec![Mark::new(1.0, NOTHING_KNOWN, None, || {
            UnderstandingReason::NothingToPredict {}
        })];
    }
    let pair = &attempt.bench().setting().pair;
    builds
        .into_iter()
        .map(|build| {
            let of_build = || occasions.iter().filter(|o| o.after.tear_downs == build);
            let mut predictions = attempt.bench().predictions().iter();
            let judged = predictions.find_map(|p| judge(pair, of_build(), p));
            judged.unwrap_or_else(|| {
                let looked = of_build().next().map(|o| o.after.operation);
                Mark::new(1.0, NOTHING_KNOWN, looked, || UnderstandingReason::NotPredicted {
                    operation: looked.unwrap_or(0),
                })
            })
        })
        .collect()
}

/// Judgements of painted plates are predictions too; a plate that nobody judged counts as 1/3 for each.
fn plates(attempt: &Attempt) -> Vec<Mark> {
    sheet::judged(attempt)
        .into_iter()
        .map(|(plate, needed, said)| {
            let chances = said.map_or([1.0 / 3.0; 3], |s| s.chances);
            Mark::new(1.0, worth(chances, needed.index()), said.map(|s| s.operation), || {
                UnderstandingReason::Plate {
                    plate,
                    needs: needed,
                    chance: chances.get(needed.index()).copied().unwrap_or(0.0),
                }
            })
        })
        .collect()
}

/// Worth of chances when this came: 1 for certainty, 0 for certainty of something else.
fn worth(chances: [f64; 3], came: usize) -> f64 {
    let mut missed = 0.0;
    for (outcome, chance) in chances.iter().enumerate() {
        let far = chance - if outcome == came { 1.0 } else { 0.0 };
        missed += far * far;
    }
    1.0 - 0.5 * missed
}

/// All second looks at something that had moved, in order.
fn occasions(history: &[Moment]) -> Vec<Occasion<'_>> {
    let mut last: [Option<&Moment>; 3] = [None; 3];
    let mut found = Vec::new();
    for moment in history {
        let Deed::Looked { what, .. } = &moment.deed else {
            continue;
        };
        let Some(look) = Evidence::of(*what) else { continue };
        let Some(place) = last.get_mut(look as usize) else {
            continue;
        };
        if let Some(before) = *place
            && moved(look, before, moment)
        {
            found.push(Occasion {
                look,
                before,
                after: moment,
            });
        }
        *place = Some(moment);
    }
    found
}

/// Whether what a look depends on had moved, so that there was something to foresee.
fn moved(look: Evidence, before: &Moment, after: &Moment) -> bool {
    let places = match look {
        Evidence::Lash => (before.placement, after.placement),
        Evidence::Print => (before.rolled_at, after.rolled_at),
        Evidence::Torque => {
            // The same parts have to be turned.
            let alike = before.placement.is_some() == after.placement.is_some();
            let preloads = before.pinion_preload_n.zip(after.pinion_preload_n);
            let differs = preloads.is_some_and(|(a, b)| (a - b).abs() > SAME_PRELOAD_SHARE * a.abs().max(b.abs()));
            let moved = before
                .placement
                .zip(after.placement)
                .is_some_and(|(a, b)| !same(&a, &b));
            return alike && (differs || moved);
        }
    };
    match places {
        (Some(a), Some(b)) => !same(&a, &b),
        _ => false,
    }
}

fn same(a: &Placement, b: &Placement) -> bool {
    let near = |x: f64, y: f64| (x - y).abs() < SAME_PLACE_MM;
    near(a.pinion_axial_mm, b.pinion_axial_mm)
        && near(a.wheel_axial_mm, b.wheel_axial_mm)
        && near(a.offset_mm, b.offset_mm)
        && (a.shaft_angle_rad - b.shaft_angle_rad).abs() < SAME_ANGLE_RAD
}

/// What a prediction is worth, if it was made between the two looks of one of these occasions and the change can be told.
fn judge<'a>(
    pair: &Pair,
    mut occasions: impl Iterator<Item = &'a Occasion<'a>>,
    prediction: &Prediction,
) -> Option<Mark> {
    let look = Evidence::about(prediction.about);
    let made = prediction.operation;
    let occasion = occasions.find(|o| o.look == look && o.before.operation < made && made < o.after.operation)?;
    let (change, limit) = change(pair, occasion, prediction.about)?;
    let came = if change.abs() <= limit {
        1
    } else if change.abs() < 2.0 * limit {
        return None;
    } else if change < 0.0 {
        0
    } else {
        2
    };
    let chance = prediction.chances.get(came).copied().unwrap_or(0.0);
    Some(Mark::new(1.0, worth(prediction.chances, came), Some(made), || {
        UnderstandingReason::Predicted {
            operation: made,
            chance,
            about: prediction.about,
            change,
        }
    }))
}

/// How much something truly changed between two looks, and up to what change it counts as the same. None where it cannot
/// be told.
fn change(pair: &Pair, occasion: &Occasion<'_>, about: Predicted) -> Option<(f64, f64)> {
    let (before, after) = (occasion.before, occasion.after);
    let (along, drive) = match about {
        Predicted::Lash => {
            let least = |at: Option<Placement>| {
                let curve = contact::lash_mm(pair, at?, Route::Exact, 8)?;
                curve.into_iter().map(|(_, lash)| lash).reduce(f64::min)
            };
            return Some((least(after.placement)? - least(before.placement)?, SAME_LASH_MM));
        }
        Predicted::PinionTorque => {
            let (was, is) = (before.rolling_nm?, after.rolling_nm?);
            return (was > 0.0).then_some((is / was - 1.0, SAME_TORQUE_SHARE));
        }
        Predicted::DriveLength => (0, true),
        Predicted::DriveHeight => (1, true),
        Predicted::CoastLength => (0, false),
        Predicted::CoastHeight => (1, false),
    };
    let place = |at: Option<Placement>| {
        let Contact { drive: d, coast: c, .. } = contact::solve(pair, at?, Film::default(), Route::Exact);
        let pattern = if drive { d.pattern } else { c.pattern };
        pattern?.centroid.get(along).copied()
    };
    Some((place(after.rolled_at)? - place(before.rolled_at)?, SAME_PRINT))
}
