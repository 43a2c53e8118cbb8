//! A gear set made ready for contact by either route.

use std::sync::OnceLock;

use crate::gear::{GearSet, Side};

use super::fast::Tables;
use super::prepared::Prepared;
use super::resolution::Resolution;

/// A gear set ready for contact. Immutable: one may serve many threads.
#[derive(Debug, Clone)]
pub struct Pair {
    prepared: Prepared,
    /// What the fast route needs: made when it is first asked for, always the same.
    tables: OnceLock<Tables>,
}

impl Pair {
    /// Prepares a gear set at the shipped resolution.
    pub fn new(gears: GearSet) -> Self {
        Self::with_resolution(gears, Resolution::SHIPPED)
    }

    /// Prepares a gear set at another resolution.
    pub fn with_resolution(gears: GearSet, resolution: Resolution) -> Self {
        Self {
            prepared: Prepared::new(gears, resolution),
            tables: OnceLock::new(),
        }
    }

    /// Makes ready what the fast route needs, which it otherwise does when it is first asked.
    pub fn prepare_fast(&self) {
        self.tables();
    }

    pub(super) fn tables(&self) -> &Tables {
        self.tables.get_or_init(|| Tables::new(&self.prepared))
    }

    pub(super) fn prepared(&self) -> &Prepared {
        &self.prepared
    }

    /// The gears.
    pub fn gears(&self) -> &GearSet {
        &self.prepared.gears
    }

    /// How finely contact is sampled.
    pub fn resolution(&self) -> Resolution {
        self.prepared.resolution
    }

    /// ψ: the sense of wheel rotation about +z, ±1, that brings this flank toward the pinion.
    pub fn toward(&self, side: Side) -> f64 {
        self.prepared.flank(side).toward
    }
}
