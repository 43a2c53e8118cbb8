//! What an attempt starts from and what does not change during it.

use std::sync::Arc;

use super::choices::ShimPlace;
use super::kit::{PackFault, Packs, ShimPiece};
use super::part::Part;
use super::plate::Plate;
use super::refusal::Refusal;
use super::tariff::Tariff;
use super::tools::{Instrument, Tool};
use crate::axle::{Assembly, Axle, AxleError, Bearings, FittedShims, Truth};
use crate::bearing::SeatGap;
use crate::contact::Pair;

/// The fixed side of an attempt.
#[derive(Debug, Clone)]
pub struct BenchSetUp {
    /// The axle as designed.
    pub axle: Axle,
    /// The gears that are really there, made ready for contact ([`crate::axle::Truth::design_of`]).
    pub pair: Arc<Pair>,
    /// Seed of everything that is drawn during the attempt.
    pub seed: u64,
    /// The shim kit.
    pub kit: Vec<ShimPiece>,
    /// Instruments on the bench.
    pub tools: Vec<Tool>,
    /// Painted plates beside the bench.
    pub plates: Vec<Plate>,
    /// Minutes and prices.
    pub tariff: Tariff,
    /// Parts that the card allows to be used only once.
    pub single_use: Vec<Part>,
    /// How far the case may be spread, mm; beyond, it takes a set.
    pub spread_limit_mm: f64,
    /// Mass of carrier and wheel above which lifting by hand is unsafe is taken from this diameter of the wheel, mm.
    pub hoist_from_diameter_mm: f64,
}

impl BenchSetUp {
    /// An attempt with the usual tools, tariff and rules.
    pub fn usual(axle: Axle, pair: Arc<Pair>, seed: u64, kit: Vec<ShimPiece>) -> Self {
        Self {
            axle,
            pair,
            seed,
            kit,
            tools: Tool::usual(),
            plates: Vec::new(),
            tariff: Tariff::default(),
            single_use: vec![Part::Sleeve, Part::Nut, Part::Seal, Part::RingBolts],
            spread_limit_mm: 0.45,
            hoist_from_diameter_mm: 210.0,
        }
    }

    /// The instrument of this name on the bench.
    pub(super) fn instrument(&self, name: &str) -> Result<Instrument, Refusal> {
        let found = self.tools.iter().find(|tool| tool.name == name);
        found.map(|tool| tool.instrument).ok_or_else(|| Refusal::NoSuchTool {
            name: name.to_owned(),
            there: self.tools.iter().map(|tool| tool.name.clone()).collect(),
        })
    }
}

/// How the axle lies on the bench when the attempt begins.
#[derive(Debug, Clone, PartialEq)]
pub enum StartingState {
    /// In parts: nothing fitted.
    Bare,
    /// Assembled. Shim thicknesses follow from the pieces named, for depth, spacer, tooth side, behind the wheel.
    Assembled {
        /// What is fitted.
        assembly: Box<Assembly>,
        /// Numbers of the pieces in each pack.
        packs: [Vec<u32>; 4],
    },
}

impl StartingState {
    /// A whole axle as careful hands left it ([`Assembly::set_up`]), its packs made of these pieces of the kit, its
    /// adjusters off by so much.
    ///
    /// # Errors
    /// [`StartError`] for pieces that do not fit and parts that cannot be put together.
    pub fn whole(
        axle: &Axle,
        truth: &Truth,
        kit: &[ShimPiece],
        packs: &[Vec<u32>; 4],
        adjusters_off_mm: [f64; 2],
        nut_torque_nm: f64,
    ) -> Result<Self, StartError> {
        let mut made = Packs::new(kit.len());
        for (place, pieces) in ShimPlace::ALL.into_iter().zip(packs) {
            made.fit(kit, place, pieces)?;
        }
        let thickness = |place| made.thickness_mm(kit, place);
        let shims = FittedShims {
            depth_mm: thickness(ShimPlace::Depth),
            spacer_mm: thickness(ShimPlace::Spacer),
            sides_mm: [thickness(ShimPlace::ToothSide), thickness(ShimPlace::BackSide)],
            adjusters_off_mm,
        };
        Ok(Self::Assembled {
            assembly: Box::new(Assembly::set_up(axle, truth, shims, nut_torque_nm)?),
            packs: packs.clone(),
        })
    }

    /// As [`StartingState::whole`] with the pinion and everything on its shaft still beside the case: bearings, spacer, nut, seal
    /// and the packs among them are out.
    ///
    /// # Errors
    /// As [`StartingState::whole`].
    pub fn without_pinion(
        axle: &Axle,
        truth: &Truth,
        kit: &[ShimPiece],
        packs: &[Vec<u32>; 4],
        adjusters_off_mm: [f64; 2],
        nut_torque_nm: f64,
    ) -> Result<Self, StartError> {
        let bare = Assembly::bare();
        Ok(
            match Self::whole(axle, truth, kit, packs, adjusters_off_mm, nut_torque_nm)? {
                Self::Bare => Self::Bare,
                Self::Assembled { assembly, packs } => {
                    let [_, _, tooth, back] = packs;
                    Self::Assembled {
                        assembly: Box::new(Assembly {
                            wheel: assembly.wheel,
                            carrier_in: assembly.carrier_in,
                            side: assembly.side,
                            caps: assembly.caps,
                            caps_swapped: assembly.caps_swapped,
                            carrier_turns: assembly.carrier_turns,
                            ..bare
                        }),
                        packs: [Vec::new(), Vec::new(), tooth, back],
                    }
                }
            },
        )
    }
}

impl StartingState {
    /// Cups and head cone pressed on by somebody, everything else beside the case. Gaps behind the rings, mm: head cone, head
    /// cup, tail cup. `depth_pack` names the pieces that were laid between, where the depth shim lies behind a ring.
    pub fn rings(truth: &Truth, gaps_mm: [f64; 3], depth_pack: Vec<u32>) -> Self {
        let press = truth.press;
        let gap = |gap_mm: f64, holding_n| SeatGap {
            gap_mm: if gap_mm > 0.0 { gap_mm } else { 0.0 },
            holding_n,
        };
        let [cone, head, tail] = gaps_mm;
        let mut assembly = Assembly::bare();
        assembly.bearings = Bearings::Real;
        assembly.seating.head_cone = gap(cone, press.head_cone_n);
        assembly.seating.head_cup = gap(head, press.head_cup_n);
        assembly.seating.tail_cup = gap(tail, press.tail_cup_n);
        Self::Assembled {
            assembly: Box::new(assembly),
            packs: [depth_pack, Vec::new(), Vec::new(), Vec::new()],
        }
    }
}

/// Why an attempt cannot begin so.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum StartError {
    /// A pack of what is fitted cannot be made up from the kit.
    Pack(#[from] PackFault),
    /// The axle cannot be.
    Axle(#[from] AxleError),
}
