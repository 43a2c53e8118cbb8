//! The shim drawer: pieces by label until they are measured.

use std::collections::BTreeMap;

use super::hands::Hands;
use crate::bench::ShimPlace;

/// Distance that a pack may be off, mm, for one piece less.
const PIECE_WORTH_MM: f64 = 0.002;

/// What is known of the kit.
pub(super) struct Drawer {
    pub(super) labels: Vec<(u32, ShimPlace, f64)>,
    pub(super) measured: BTreeMap<u32, f64>,
    pub(super) fitted: BTreeMap<ShimPlace, Vec<u32>>,
}

impl Drawer {
    pub(super) fn new(hands: &Hands) -> Self {
        let kit = hands.sees().kit;
        let mut fitted: BTreeMap<ShimPlace, Vec<u32>> = BTreeMap::new();
        for piece in kit.iter().filter(|p| p.fitted) {
            fitted.entry(piece.place).or_default().push(piece.number);
        }
        Self {
            labels: kit.iter().map(|p| (p.number, p.place, p.labelled_mm)).collect(),
            measured: BTreeMap::new(),
            fitted,
        }
    }

    fn size_mm(&self, piece: u32) -> f64 {
        self.measured.get(&piece).copied().unwrap_or_else(|| {
            self.labels
                .iter()
                .find(|(number, ..)| *number == piece)
                .map_or(0.0, |(_, _, label)| *label)
        })
    }

    /// Thickness of the pack that is fitted, as far as it is known, mm.
    pub(super) fn thickness_mm(&self, place: ShimPlace) -> f64 {
        self.fitted
            .get(&place)
            .map_or(0.0, |pieces| pieces.iter().map(|p| self.size_mm(*p)).sum())
    }

    /// Whether any pack is known to be fitted there.
    pub(super) fn is_fitted(&self, place: ShimPlace) -> bool {
        self.fitted.get(&place).is_some_and(|p| !p.is_empty())
    }

    /// Pieces that come nearest to a thickness; few rather than many.
    pub(super) fn choose(&self, place: ShimPlace, wanted_mm: f64, most: usize) -> Vec<u32> {
        let own: Vec<(u32, f64)> = self
            .labels
            .iter()
            .filter(|(_, p, _)| *p == place)
            .map(|(number, ..)| (*number, self.size_mm(*number)))
            .collect();
        let mut best = (f64::INFINITY, Vec::new());
        let mut pack = Vec::new();
        search(&own, wanted_mm, most, &mut pack, 0.0, &mut best);
        best.1
    }
}

/// Depth first over the pieces from here on.
fn search(
    left: &[(u32, f64)],
    wanted_mm: f64,
    most: usize,
    pack: &mut Vec<u32>,
    sum_mm: f64,
    best: &mut (f64, Vec<u32>),
) {
    let cost = (sum_mm - wanted_mm).abs() + PIECE_WORTH_MM * pack.len() as f64;
    if !pack.is_empty() && cost < best.0 {
        *best = (cost, pack.clone());
    }
    if pack.len() == most || sum_mm > wanted_mm + 0.1 {
        return;
    }
    for (index, (number, size)) in left.iter().enumerate() {
        // Pieces of the same size, one of them is as good as the other unless they were measured.
        let same_before = left
            .get(..index)
            .is_some_and(|before| before.iter().any(|(_, s)| (s - size).abs() < 1e-9));
        if same_before {
            continue;
        }
        pack.push(*number);
        search(
            left.get(index + 1..).unwrap_or_default(),
            wanted_mm,
            most,
            pack,
            sum_mm + size,
            best,
        );
        pack.pop();
    }
}
