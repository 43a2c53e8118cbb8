//! Packs of few pieces, measured and made up.

use super::person::Technician;
use crate::bench::{Measurand, Operation, ShimPlace};

/// Pieces that a pack may have.
const MOST_PIECES: usize = 4;

impl Technician {
    /// Measures every piece of a place that lies in the box, once.
    pub(super) fn measure_pieces(&mut self, place: ShimPlace) {
        let own: Vec<u32> = self
            .drawer
            .labels
            .iter()
            .filter(|(number, p, _)| *p == place && !self.drawer.measured.contains_key(number))
            .map(|(number, ..)| *number)
            .collect();
        for piece in own {
            let what = Measurand::ShimPiece { piece };
            if let Some(mm) = self.hands.reads(what, "micrometer") {
                self.drawer.measured.insert(piece, mm);
            }
        }
    }

    /// Makes up and fits a pack; its thickness as measured, none where it could not be fitted.
    pub(super) fn fit_pack(&mut self, place: ShimPlace, wanted_mm: f64) -> Option<f64> {
        // What is fitted comes out first, so that it can be measured as well.
        self.hands.does(Operation::RemoveShims { place });
        self.hands.clean_shims();
        self.measure_pieces(place);
        let pieces = self.drawer.choose(place, wanted_mm, MOST_PIECES);
        let done = self.hands.does(Operation::FitShims {
            place,
            pieces: pieces.clone(),
        });
        if !done.done {
            return None;
        }
        self.drawer.fitted.insert(place, pieces);
        Some(self.drawer.thickness_mm(place))
    }
}
