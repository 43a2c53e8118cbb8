//! What is meshed, and how: what every page about it is made of.

use crate::contact::{self, Contact, Film, Pair, Route};
use crate::gear::GearSet;

use super::numbers::PlacementNumbers;

/// Gears under paste.
#[derive(Debug)]
pub struct Meshing {
    /// The gears in contact.
    pub pair: Pair,
    /// The paste.
    pub film: Film,
    /// How the contact is found.
    pub route: Route,
}

impl Meshing {
    /// The gears.
    pub fn gears(&self) -> &GearSet {
        self.pair.gears()
    }

    /// Contact at a placement.
    pub fn contact(&self, numbers: &PlacementNumbers) -> Contact {
        contact::solve(&self.pair, numbers.placement(), self.film, self.route)
    }
}
