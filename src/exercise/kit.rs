//! The shim kit of an exercise: discrete pieces, each a little off its label.

use crate::axle::{Layout, SideSetting};
use crate::bench::{ShimPiece, ShimPlace};
use crate::numerics::random::Stream;

/// Thin pieces for depth and spacer, mm: 0.002, 0.003, 0.005, 0.010, 0.020 and 0.030 in (common practice, no source).
const THIN_MM: [f64; 6] = [0.051, 0.076, 0.127, 0.254, 0.508, 0.762];
/// How many of each.
const OF_EACH: usize = 3;
/// Thick pieces beside side bearings, mm.
const THICK_MM: [f64; 7] = [5.08, 5.334, 5.588, 5.842, 6.096, 6.35, 6.604];
/// How far a piece may be off its label, mm (0.0005 in; common practice, no source).
const OFF_LABEL_MM: f64 = 0.0127;
/// Most pieces in a pack.
pub const MOST_IN_A_PACK: usize = 4;

/// The kit of a seed.
pub(super) fn kit(layout: Layout, seed: u64) -> Vec<ShimPiece> {
    let mut labels: Vec<(ShimPlace, f64)> = Vec::new();
    let mut add = |place: ShimPlace, sizes: &[f64], count: usize| {
        labels.extend(sizes.iter().flat_map(|&size| std::iter::repeat_n((place, size), count)));
    };
    add(ShimPlace::Depth, &THIN_MM, OF_EACH);
    if !layout.has_sleeve() {
        add(ShimPlace::Spacer, &THIN_MM, OF_EACH);
    }
    if layout.side_setting() == SideSetting::Shims {
        for place in [ShimPlace::ToothSide, ShimPlace::BackSide] {
            add(place, &THICK_MM, 1);
            add(place, &THIN_MM[..4], 2);
        }
    }
    labels
        .into_iter()
        .enumerate()
        .map(|(number, (place, labelled_mm))| {
            let off = Stream::new(seed, &format!("shim piece {number}")).between(-OFF_LABEL_MM, OFF_LABEL_MM);
            ShimPiece {
                place,
                labelled_mm,
                true_mm: labelled_mm + off,
            }
        })
        .collect()
}

/// The pieces whose labels come nearest to a thickness: at most four, fewest first. Empty for next to nothing.
pub(super) fn pack_for(kit: &[ShimPiece], place: ShimPlace, wanted_mm: f64) -> Vec<u32> {
    let pieces: Vec<(u32, f64)> = (0_u32..)
        .zip(kit)
        .filter(|(_, piece)| piece.place == place)
        .map(|(number, piece)| (number, piece.labelled_mm))
        .collect();
    let mut best = (wanted_mm.abs(), Vec::new());
    let mut pack = Vec::new();
    search(&pieces, wanted_mm, &mut pack, &mut best);
    best.1
}

/// Tries every pack of pieces in rising order of their numbers, skipping a second one of the same label where the first
/// was left out.
fn search(pieces: &[(u32, f64)], left_mm: f64, pack: &mut Vec<u32>, best: &mut (f64, Vec<u32>)) {
    // A hair for the sake of fewer pieces.
    if left_mm.abs() < best.0 - 1e-9 {
        *best = (left_mm.abs(), pack.clone());
    }
    if pack.len() == MOST_IN_A_PACK || left_mm < -0.03 {
        return;
    }
    let mut last = f64::NAN;
    for (place, &(number, size)) in pieces.iter().enumerate() {
        if size.to_bits() == last.to_bits() {
            continue;
        }
        last = size;
        pack.push(number);
        search(pieces.get(place + 1..).unwrap_or_default(), left_mm - size, pack, best);
        pack.pop();
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn packs_come_near_with_four_pieces() {
        for layout in Layout::ALL {
            let kit = kit(layout, 3);
            for wanted in [0.60, 0.80, 0.90, 1.00, 1.13] {
                let pack = pack_for(&kit, ShimPlace::Depth, wanted);
                let sum: f64 = pack.iter().map(|&n| kit[n as usize].labelled_mm).sum();
                assert!(pack.len() <= MOST_IN_A_PACK, "{pack:?}");
                assert!((sum - wanted).abs() < 0.03, "{wanted}: {sum} with {pack:?}");
                let mut once = pack.clone();
                once.dedup();
                assert_eq!(once, pack, "no piece twice");
            }
            assert!(pack_for(&kit, ShimPlace::Depth, 0.0).is_empty(), "nothing for nothing");
        }
        let kit = kit(Layout::A, 3);
        let side: f64 = pack_for(&kit, ShimPlace::BackSide, 6.0)
            .iter()
            .map(|&n| kit[n as usize].labelled_mm)
            .sum();
        assert!((side - 6.0).abs() < 0.03, "{side}");
    }

    #[test]
    fn pieces_are_off_their_labels_by_no_more_than_is_usual() {
        let kit = kit(Layout::C, 9);
        assert!(
            kit.iter().all(|p| (p.true_mm - p.labelled_mm).abs() <= OFF_LABEL_MM),
            "{kit:?}"
        );
        assert!(
            kit.iter()
                .any(|p| (p.true_mm - p.labelled_mm).abs() > 0.5 * OFF_LABEL_MM),
            "they differ"
        );
    }
}
