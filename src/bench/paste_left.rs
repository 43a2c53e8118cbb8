//! What is to be seen of marking paste on the teeth by whoever stands at the bench.

use super::state::Bench;
use crate::contact::{self, Film, FilmLeft, Route};
use crate::gear::Side;

/// Marking paste on teeth of the ring gear, as it lies there.
#[derive(Debug, Clone, PartialEq)]
pub struct PasteLeft {
    /// Teeth with paste on both flanks.
    pub teeth: Vec<u32>,
    /// How clearly the print stands out, 0 to 1; 0 before the teeth were rolled.
    pub clearness: f64,
    /// What rolling left on the drive and the coast flank; none where the film is whole.
    pub flanks: [Option<FilmLeft>; 2],
}

impl Bench {
    /// The paste on the teeth, if there is any. Both flanks are solved by the exact route: some 10 ms.
    pub fn paste_left(&self) -> Option<PasteLeft> {
        let paste = self.carrier.paste.as_ref()?;
        let whole = PasteLeft {
            teeth: paste.teeth.clone(),
            clearness: 0.0,
            flanks: [None, None],
        };
        let Some(rolled) = paste.rolled else {
            return Some(whole);
        };
        let film = self.rolled_film(paste.film, rolled.drag_nm, rolled.passes, paste.brushing);
        let left = |side| {
            let map = contact::gap_map(&self.setting.pair, rolled.placement, side, Route::Exact)?;
            Some(FilmLeft::new(
                &map,
                Film {
                    thickness_um: film.film_um,
                },
            ))
        };
        Some(PasteLeft {
            clearness: film.clearness,
            flanks: Side::BOTH.map(left),
            ..whole
        })
    }
}
