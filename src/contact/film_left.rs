//! What a mesh leaves of a film of marking paste, place by place: for drawing. Numbers of a print come from
//! [`super::pattern::Pattern`].
//!
//! Source: our own definition.

use super::gap_map::GapMap;
use super::pattern::bicubic;
use super::placement::Film;
use super::resolution::coordinate;

/// Smallest gap over the roll as a multiple of the film's thickness, at even places of the flank. Below 1 the paste was
/// pressed away to that share of its thickness, from 1 on all of it is left.
#[derive(Debug, Clone, PartialEq)]
pub struct FilmLeft {
    gaps: Vec<f64>,
}

impl FilmLeft {
    /// Places from toe to heel and from root to top, the edges among them.
    pub const SIZE: [usize; 2] = [128, 64];

    /// Gaps are told up to this multiple of the film: beyond, no paste knows them.
    pub const MOST: f64 = 2.0;

    /// Of a map of gaps. A film without thickness is nowhere pressed away.
    pub fn new(map: &GapMap, film: Film) -> Self {
        let [columns, rows] = Self::SIZE;
        let gap_of_film = |i: usize, j: usize| {
            let share = gap_um(map, coordinate(i, columns - 1), coordinate(j, rows - 1))? / film.thickness_um;
            (film.thickness_um > 0.0 && share < Self::MOST).then_some(share)
        };
        let gaps = (0..rows)
            .flat_map(|j| (0..columns).map(move |i| (i, j)))
            .map(|(i, j)| gap_of_film(i, j).unwrap_or(Self::MOST))
            .collect();
        Self { gaps }
    }

    /// Gaps as multiples of the film, at most [`FilmLeft::MOST`]: row by row from root to top, in a row from toe to heel.
    pub fn gaps(&self) -> &[f64] {
        &self.gaps
    }
}

/// The gap at a place of the flank, between the points of the map as its pattern has it. None where the pinion has nothing to
/// meet it.
fn gap_um(map: &GapMap, x: f64, y: f64) -> Option<f64> {
    let (i, u) = cell(x, map.nx);
    let (j, v) = cell(y, map.ny);
    let corners = [
        map.least(i, j)?,
        map.least(i + 1, j)?,
        map.least(i + 1, j + 1)?,
        map.least(i, j + 1)?,
    ];
    let (dx, dy) = (2.0 / map.nx as f64, 2.0 / map.ny as f64);
    Some(1e3 * bicubic(&corners, u, v, dx, dy))
}

/// The cell of `count` over −1 to 1 in which a coordinate lies, and how far into it, 0 to 1.
fn cell(at: f64, count: usize) -> (usize, f64) {
    let place = 0.5 * (at + 1.0) * count as f64;
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a cast saturates, and the last cell is the last"
    )]
    let index = (place.floor() as usize).min(count.saturating_sub(1));
    (index, place - index as f64)
}
