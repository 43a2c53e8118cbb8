//! Somebody who does this daily: what is known in the middle of the work.

use super::chart::Chart;
use super::drawer::Drawer;
use super::hands::Hands;
use crate::exercise::counted::Counted;
use crate::exercise::fitted::Fitted;

/// Most times that the pinion is taken out again before what there is is handed over: by the rules, and by rules that lead
/// nowhere.
const MOST_BUILDS: u32 = 6;
const MOST_BUILDS_ASTRAY: u32 = 4;

/// Somebody who does this daily.
#[expect(clippy::struct_excessive_bools, reason = "each says of one part whether it is on")]
pub(super) struct Technician {
    pub(super) hands: Hands,
    pub(super) chart: Chart,
    pub(super) reversed: bool,
    pub(super) drawer: Drawer,
    /// What is etched on the pinion, mm.
    pub(super) mark_mm: f64,
    /// Place of the pinion by the gauge in the present build, mm.
    pub(super) gauged_mm: Option<f64>,
    /// The gauge's distance when the axle came in, mm.
    pub(super) found_mm: Option<f64>,
    /// Torque of the pinion alone in the present build, N m.
    pub(super) pinion_nm: Option<f64>,
    /// Largest lash reading less the smallest one's tooth: where it is tightest.
    pub(super) tight_tooth: u32,
    pub(super) builds: u32,
    pub(super) rings_on: bool,
    pub(super) seal_in: bool,
    pub(super) wheel_on: bool,
    pub(super) carrier_in: bool,
    pub(super) bolts_used: bool,
    /// Squeeze of the side stacks as it was felt out with the rings, mm.
    pub(super) squeeze_mm: Option<f64>,
    /// How far the adjusters are screwed in, notches from where they stand when a carrier is set in.
    pub(super) rings_in: Option<[f64; 2]>,
    /// Prints seen: record, place by shims, what they ask for.
    pub(super) prints: Vec<ReadPrint>,
}

/// A print that was read, with what followed from it.
#[derive(Debug, Clone, Copy)]
pub(super) struct ReadPrint {
    pub(super) record: u32,
    /// Sum of the changes of depth before it, mm, deeper positive.
    pub(super) deeper_mm: f64,
    /// How much deeper the print asks to go, mm.
    pub(super) asks_mm: f64,
    /// How unlike it would still be at best: squares of distances over full bands.
    pub(super) left: f64,
}

impl Technician {
    pub(super) fn new(hands: Hands, chart: Chart, reversed: bool) -> Self {
        let drawer = Drawer::new(&hands);
        let fitted = hands.card().start.fitted;
        let carrier = matches!(fitted, Fitted::Carrier | Fitted::Everything);
        Self {
            rings_on: matches!(fitted, Fitted::Rings | Fitted::Everything),
            seal_in: fitted == Fitted::Everything,
            wheel_on: carrier,
            carrier_in: carrier,
            bolts_used: carrier,
            rings_in: None,
            squeeze_mm: None,
            hands,
            chart,
            reversed,
            drawer,
            mark_mm: 0.0,
            gauged_mm: None,
            found_mm: None,
            pinion_nm: None,
            tight_tooth: 0,
            builds: 0,
            prints: Vec::new(),
        }
    }

    pub(super) fn counts(&self, counted: Counted) -> bool {
        self.hands.card().counts.contains(&counted)
    }

    pub(super) fn judges_depth(&self) -> bool {
        self.counts(Counted::Depth) || self.counts(Counted::Print)
    }

    pub(super) fn needs_mesh(&self) -> bool {
        [
            Counted::Lash,
            Counted::Spread,
            Counted::Runout,
            Counted::SideTorque,
            Counted::Print,
        ]
        .into_iter()
        .any(|c| self.counts(c))
    }

    /// Whether the pinion's side is judged at all.
    pub(super) fn judges_pinion(&self) -> bool {
        self.judges_depth() || self.counts(Counted::PinionTorque)
    }

    /// Whether there is nothing left to try.
    pub(super) fn has_had_enough(&self) -> bool {
        self.builds >= if self.reversed { MOST_BUILDS_ASTRAY } else { MOST_BUILDS }
    }

    /// Which way a change of depth is made: a reversed rule goes the other way.
    pub(super) fn rule(&self, deeper_mm: f64) -> f64 {
        if self.reversed { -deeper_mm } else { deeper_mm }
    }
}
