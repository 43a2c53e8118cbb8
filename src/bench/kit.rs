//! The shim kit: discrete pieces, not all of them what their label says.

use super::operation::ShimPlace;

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

/// Where all pieces are at the moment.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Packs {
    packs: [Vec<usize>; 4],
    clean: Vec<bool>,
}

/// Why a pack cannot be made up.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum PackFault {
    /// No such piece.
    #[error("the kit has no piece {0}")]
    NoSuchPiece(u32),
    /// It does not fit there.
    #[error("piece {0} has another shape: it does not fit there")]
    OtherShape(u32),
    /// It is somewhere else, or named twice.
    #[error("piece {0} is not in the kit: it is fitted")]
    Fitted(u32),
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
            let piece = kit.get(index).ok_or(PackFault::NoSuchPiece(number))?;
            if piece.place != place {
                return Err(PackFault::OtherShape(number));
            }
            let elsewhere = ShimPlace::ALL
                .into_iter()
                .any(|other| other != place && self.at(other).contains(&index));
            if elsewhere || pack.contains(&index) {
                return Err(PackFault::Fitted(number));
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
