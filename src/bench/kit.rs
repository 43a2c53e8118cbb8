//! The shim kit: discrete pieces, not all of them what their label says.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::choices::ShimPlace;
use crate::axle::{Axle, FittedShims, Member};
use crate::numerics::random::Stream;

/// Dirt or a burr on a piece that was not cleaned, mm (0.0005 in; common practice, no source).
pub const BURR_MM: f64 = 0.0127;

/// A piece of the kit as made.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShimPiece {
    /// Where its shape fits.
    pub place: ShimPlace,
    /// What its label says, mm.
    pub labelled_mm: f64,
    /// What it really is, mm.
    pub true_mm: f64,
}

/// Thin pieces of every kit, mm: 0.002, 0.003, 0.005, 0.010 and 0.020 in, this many of each (common practice, no source).
const THIN_MM: [f64; 5] = [0.0508, 0.0762, 0.127, 0.254, 0.508];
const OF_EACH: usize = 3;
/// Thick pieces beside the side bearings, about the nominal pack, mm.
const THICK_MM: [f64; 5] = [-0.5, -0.25, 0.0, 0.25, 0.5];
/// How good the labels of a kit are.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct KitMakeup {
    /// Most that a label is wrong when it is the right one, mm.
    pub label_error_mm: f64,
    /// Share of the pieces that lie in the wrong drawer or carry the wrong label, 0 to 1.
    pub mislabelled_share: f64,
    /// How far such a piece is off, least and most, mm.
    pub mislabelled_mm: [f64; 2],
}

impl Default for KitMakeup {
    /// Labels good to 0.0005 in, none of them wrong (common practice, no source).
    fn default() -> Self {
        Self {
            label_error_mm: 0.0127,
            mislabelled_share: 0.0,
            mislabelled_mm: [0.04, 0.12],
        }
    }
}

impl ShimPiece {
    /// The usual kit for an axle, with label errors drawn from the seed: first, one piece for each pack that is or was
    /// fitted, then thick and thin pieces for every place that this layout has.
    ///
    /// Gives the kit and the packs made of the first pieces, for depth, spacer, tooth side, behind the wheel.
    pub fn usual_kit(axle: &Axle, seed: u64, fitted: Option<FittedShims>) -> (Vec<Self>, [Vec<u32>; 4]) {
        Self::kit(axle, seed, fitted, &KitMakeup::default())
    }

    /// As [`ShimPiece::usual_kit`], with labels as good as `makeup` says. What is fitted carries no label: it is what it
    /// was made for.
    pub fn kit(axle: &Axle, seed: u64, fitted: Option<FittedShims>, makeup: &KitMakeup) -> (Vec<Self>, [Vec<u32>; 4]) {
        let mut kit = Vec::new();
        let mut packs: [Vec<u32>; 4] = Default::default();
        let nominal = |place: ShimPlace| {
            axle.nominal_mm(match place {
                ShimPlace::Depth => axle.depth_shim_member(),
                ShimPlace::Spacer => Member::SpacerShims,
                ShimPlace::ToothSide => Member::ToothSideShim,
                ShimPlace::BackSide => Member::BackSideShim,
            })
        };
        let fitted_pieces = if fitted.is_some() {
            ShimPlace::ALL
                .into_iter()
                .filter(|place| nominal(*place).is_some())
                .count()
        } else {
            0
        };
        let piece = |place: ShimPlace, labelled_mm: f64, number: usize| {
            let error = Stream::new(seed, &format!("label of shim {number}")).between(-1.0, 1.0);
            let mut wrong = Stream::new(seed, &format!("mislabelled shim {number}"));
            let there = wrong.unit() < makeup.mislabelled_share;
            let [least, most] = makeup.mislabelled_mm;
            let size = wrong.between(least, most);
            // Thinner than half its label nobody would take it for.
            let lower = wrong.unit() < 0.5 && size < 0.5 * labelled_mm;
            let off = match (there && number >= fitted_pieces, lower) {
                (false, _) => 0.0,
                (true, true) => -size,
                (true, false) => size,
            };
            Self {
                place,
                labelled_mm,
                true_mm: labelled_mm + makeup.label_error_mm * error + off,
            }
        };
        let places = ShimPlace::ALL.into_iter().filter(|p| nominal(*p).is_some());
        if let Some(fitted) = fitted {
            let sizes = [
                fitted.depth_mm,
                fitted.spacer_mm,
                fitted.sides_mm[0],
                fitted.sides_mm[1],
            ];
            for ((place, size), pack) in ShimPlace::ALL.into_iter().zip(sizes).zip(&mut packs) {
                if nominal(place).is_some() {
                    pack.push(u32::try_from(kit.len()).unwrap_or(u32::MAX));
                    kit.push(piece(place, size, kit.len()));
                }
            }
        }
        for place in places {
            let thick = nominal(place).filter(|size| *size > 2.0);
            for size in thick.into_iter().flat_map(|size| THICK_MM.map(|more| size + more)) {
                kit.push(piece(place, size, kit.len()));
            }
            for size in THIN_MM.into_iter().flat_map(|size| [size; OF_EACH]) {
                kit.push(piece(place, size, kit.len()));
            }
        }
        (kit, packs)
    }
}

/// Where all pieces are at the moment.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Packs {
    packs: [Vec<usize>; 4],
    clean: Vec<bool>,
}

/// Why a pack cannot be made up.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error, Serialize, Deserialize, JsonSchema)]
#[serde(tag = "fault", rename_all = "snake_case")]
#[error("{self:?}")]
pub enum PackFault {
    /// No such piece.
    NoSuchPiece {
        /// Its number.
        piece: u32,
    },
    /// It does not fit there.
    OtherShape {
        /// Its number.
        piece: u32,
    },
    /// It is somewhere else, or named twice.
    Fitted {
        /// Its number.
        piece: u32,
    },
}

impl Packs {
    /// All pieces of a kit in their box, as they come: not cleaned.
    pub fn new(pieces: usize) -> Self {
        Self {
            packs: Default::default(),
            clean: vec![false; pieces],
        }
    }

    /// The pieces fitted in a place.
    pub fn at(&self, place: ShimPlace) -> &[usize] {
        self.packs.get(place as usize).map_or(&[], Vec::as_slice)
    }

    /// Takes the pack out of a place.
    pub fn remove(&mut self, place: ShimPlace) {
        if let Some(pack) = self.packs.get_mut(place as usize) {
            pack.clear();
        }
    }

    /// Puts these pieces in a place, in place of what was there.
    ///
    /// # Errors
    /// [`PackFault`]; nothing is changed then.
    pub fn fit(&mut self, kit: &[ShimPiece], place: ShimPlace, pieces: &[u32]) -> Result<(), PackFault> {
        let mut pack = Vec::with_capacity(pieces.len());
        for &number in pieces {
            let index = usize::try_from(number).unwrap_or(usize::MAX);
            let piece = kit.get(index).ok_or(PackFault::NoSuchPiece { piece: number })?;
            if piece.place != place {
                return Err(PackFault::OtherShape { piece: number });
            }
            let elsewhere = ShimPlace::ALL
                .into_iter()
                .any(|other| other != place && self.at(other).contains(&index));
            if elsewhere || pack.contains(&index) {
                return Err(PackFault::Fitted { piece: number });
            }
            pack.push(index);
        }
        if let Some(slot) = self.packs.get_mut(place as usize) {
            *slot = pack;
        }
        Ok(())
    }

    /// Cleans every piece that is in the box.
    pub fn clean_box(&mut self) {
        let fitted: Vec<usize> = self.packs.iter().flatten().copied().collect();
        for (index, clean) in self.clean.iter_mut().enumerate() {
            if !fitted.contains(&index) {
                *clean = true;
            }
        }
    }

    /// Whether a piece was cleaned.
    pub fn is_clean(&self, piece: usize) -> bool {
        self.clean.get(piece).copied().unwrap_or(false)
    }

    /// True height of a piece as it lies in a pack, mm.
    pub fn height_mm(&self, kit: &[ShimPiece], piece: usize) -> f64 {
        let burr = if self.is_clean(piece) { 0.0 } else { BURR_MM };
        kit.get(piece).map_or(0.0, |p| p.true_mm + burr)
    }

    /// True thickness of the pack in a place, mm.
    pub fn thickness_mm(&self, kit: &[ShimPiece], place: ShimPlace) -> f64 {
        self.at(place).iter().map(|p| self.height_mm(kit, *p)).sum()
    }

    /// Hands everything on as bits, in a fixed order.
    pub(super) fn bits(&self, sink: &mut dyn FnMut(u64)) {
        for pack in &self.packs {
            sink(pack.len() as u64);
            for piece in pack {
                sink(*piece as u64);
            }
        }
        for clean in &self.clean {
            sink(u64::from(*clean));
        }
    }
}
