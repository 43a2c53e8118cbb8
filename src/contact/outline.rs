//! The ends of a print, found on the surfaces themselves.
//!
//! The change-over between pairs leaves a ridge in the smallest gap, and the ends of a print lie on that ridge: a grid
//! cuts it off. Here the outline is followed near each end by solving for the smallest gap where the film ends.
//!
//! Source: our own method; the golden section search is that of J. Kiefer, Sequential Minimax Search for a Maximum,
//! Proceedings of the American Mathematical Society 4 (1953).

use super::gap::PlacedPair;
use super::gap_map::{GapSearch, NeighbourStart};
use super::prepared::Node;

/// How far across the outline is followed, in cells of the grid.
const CELLS_ACROSS: f64 = 1.25;
/// How far the end may lie from where the grid saw it, in cells.
const CELLS_ALONG: f64 = 1.25;
/// Steps of the golden section: they leave a hundredth of a cell.
const SECTIONS: u32 = 11;
/// 1/φ of the golden section.
const GOLDEN: f64 = 0.618_033_988_749_894_8;
/// When the film's end is found, in flank coordinates.
const ACCURACY: f64 = 2e-4;
const MOST_STEPS: u32 = 10;

/// What the outline of one print is followed with.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Outline<'a> {
    pub(crate) search: GapSearch<'a>,
    /// The two gears as designed.
    pub(crate) designed: PlacedPair,
    pub(crate) film_mm: f64,
    /// Cells of the grid, in flank coordinates.
    pub(crate) cell: [f64; 2],
}

impl Outline<'_> {
    /// How far the print reaches along coordinate `axis` (0: x, 1: y) in the direction `sense` (±1), from the marked
    /// point that the grid saw farthest out. Where the outline cannot be followed (the print ends at the edge of the
    /// flank, or at the border of what the pinion covers), it is what the grid saw.
    pub(crate) fn end(&self, seen: [f64; 2], axis: usize, sense: f64) -> f64 {
        let (along, across) = if axis == 0 {
            (seen[0], seen[1])
        } else {
            (seen[1], seen[0])
        };
        if along.abs() >= 1.0 - 1e-9 {
            return along;
        }
        let other = 1 - axis;
        let reach = CELLS_ACROSS * self.cell.get(other).copied().unwrap_or(0.0);
        let (mut low, mut high) = ((across - reach).clamp(-1.0, 1.0), (across + reach).clamp(-1.0, 1.0));
        // How far out the film reaches at a place across; what cannot be found is as good as nothing.
        let out = |across: f64| {
            self.film_end(axis, across, along)
                .map_or(f64::NEG_INFINITY, |end| sense * end)
        };
        let (mut a, mut b) = (high - GOLDEN * (high - low), low + GOLDEN * (high - low));
        let (mut fa, mut fb) = (out(a), out(b));
        let mut best = if fa > fb { fa } else { fb };
        for _ in 0..SECTIONS {
            if fa > fb {
                (high, b, fb) = (b, a, fa);
                a = high - GOLDEN * (high - low);
                fa = out(a);
            } else {
                (low, a, fa) = (a, b, fb);
                b = low + GOLDEN * (high - low);
                fb = out(b);
            }
            for f in [fa, fb] {
                if f > best {
                    best = f;
                }
            }
        }
        if best == f64::NEG_INFINITY { along } else { sense * best }
    }

    /// Where the smallest gap passes the film along coordinate `axis`, at `across` on the other one, near `start`.
    fn film_end(&self, axis: usize, across: f64, start: f64) -> Option<f64> {
        let farthest = CELLS_ALONG * self.cell.get(axis).copied()?;
        let mut along = start;
        let mut lead = NeighbourStart::default();
        for _ in 0..MOST_STEPS {
            let (x, y) = if axis == 0 { (along, across) } else { (across, along) };
            let node = Node::at(&self.search.flank.pinion, &self.designed, x, y)?;
            let least = self.search.least(&node, &mut lead)?;
            let step = (self.film_mm - least.gap) / least.slope.get(axis).copied()?;
            let next = (along + step).clamp(-1.0, 1.0);
            if next.is_nan() || (next - start).abs() > farthest {
                return None;
            }
            let moved = (next - along).abs();
            along = next;
            if moved < ACCURACY {
                return Some(along);
            }
        }
        None
    }
}
