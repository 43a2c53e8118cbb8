//! The spacer between the two cones: solid, or a sleeve that collapses and remembers it.
//!
//! Source: Hooke's law for the elastic part. The sleeve's law, a yield force that rises with plastic shortening, is our
//! own definition; patent US 9,039,287 B2 says how much force such sleeves reach.

/// Young's modulus of spacer steel, N/mm².
pub const YOUNG_N_PER_MM2: f64 = 206_000.0;

/// What happens to a spacer when it is squeezed hard.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum SpacerKind {
    /// Ground to length, with thin shims: elastic at any force.
    Solid,
    /// A sleeve that bulges: elastic up to the yield force, then ever shorter.
    Collapsible {
        /// Force at which a new sleeve begins to collapse, N.
        yield_force_n: f64,
        /// Rise of that force with plastic shortening, N/mm.
        hardening_n_per_mm: f64,
    },
}

/// A spacer as made.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spacer {
    /// Solid or collapsible.
    pub kind: SpacerKind,
    /// Length before any force, with its shims, mm.
    pub free_length_mm: f64,
    /// Cross-section that carries the force, mm².
    pub area_mm2: f64,
}

/// What a spacer has been through: all that sets it apart from a new one.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct SpacerMemory {
    /// Longest plastic shortening so far, mm; never falls, always 0 for a solid spacer.
    pub plastic_shortening_mm: f64,
}

/// A spacer that cannot belong to a support whose pair is closed at `zero_preload_length_mm`.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum LengthFault {
    /// No nut closes the pair over it.
    TooLong {
        /// Its free length, mm.
        free_length_mm: f64,
        /// Length at which the pair has neither play nor preload, mm.
        zero_preload_length_mm: f64,
        /// Longest that could be closed, mm.
        longest_mm: f64,
        /// Whether it is collapsible.
        sleeve: bool,
    },
    /// It holds nothing apart.
    TooShort {
        /// Its free length, mm.
        free_length_mm: f64,
        /// Length at which the pair has neither play nor preload, mm.
        zero_preload_length_mm: f64,
        /// Shortest that is taken for a spacer of this support, mm.
        shortest_mm: f64,
    },
}

impl LengthFault {
    /// For a spacer of `free_length_mm` in such a support; `None` where the two lengths can belong together.
    ///
    /// No steel shortens elastically by more than 1 % (that is 2000 N/mm²), and a sleeve crushed by a quarter of its
    /// length has folded.
    pub fn of(sleeve: bool, free_length_mm: f64, zero_preload_length_mm: f64) -> Option<Self> {
        let longest_mm = zero_preload_length_mm / (1.0 - if sleeve { 0.25 } else { 0.01 });
        let shortest_mm = zero_preload_length_mm / 1.05;
        if free_length_mm > longest_mm {
            Some(Self::TooLong {
                free_length_mm,
                zero_preload_length_mm,
                longest_mm,
                sleeve,
            })
        } else if free_length_mm < shortest_mm {
            Some(Self::TooShort {
                free_length_mm,
                zero_preload_length_mm,
                shortest_mm,
            })
        } else {
            None
        }
    }
}

impl Spacer {
    /// Elastic shortening per force, mm/N: L/(E A).
    pub fn compliance_mm_per_n(&self) -> f64 {
        self.free_length_mm / (YOUNG_N_PER_MM2 * self.area_mm2)
    }

    /// The same spacer at another free length: shims added, or ground down.
    #[must_use]
    pub fn with_free_length_mm(self, free_length_mm: f64) -> Self {
        Self { free_length_mm, ..self }
    }

    /// Force at which a spacer with that memory begins to collapse (further), N; infinite for a solid one.
    pub fn collapse_force_n(&self, memory: SpacerMemory) -> f64 {
        match self.kind {
            SpacerKind::Solid => f64::INFINITY,
            SpacerKind::Collapsible {
                yield_force_n,
                hardening_n_per_mm,
            } => yield_force_n + hardening_n_per_mm * memory.plastic_shortening_mm,
        }
    }

    /// Length that a spacer with that memory has when nothing presses on it, mm.
    pub fn relaxed_length_mm(&self, memory: SpacerMemory) -> f64 {
        self.free_length_mm - memory.plastic_shortening_mm
    }

    /// Force with which the spacer resists being `shortening_mm` shorter than new, N; 0 when it lies loose.
    pub fn force_n(&self, shortening_mm: f64, memory: SpacerMemory) -> f64 {
        let compliance = self.compliance_mm_per_n();
        let elastic_n = (shortening_mm - memory.plastic_shortening_mm) / compliance;
        match self.kind {
            _ if elastic_n <= 0.0 => 0.0,
            SpacerKind::Solid => elastic_n,
            SpacerKind::Collapsible {
                yield_force_n,
                hardening_n_per_mm,
            } => {
                if elastic_n <= self.collapse_force_n(memory) {
                    elastic_n
                } else {
                    yield_force_n + hardening_n_per_mm * self.plastic_at(shortening_mm)
                }
            }
        }
    }

    /// dF/d(shortening) where [`Spacer::force_n`] stands, N/mm.
    pub(super) fn stiffness_n_per_mm(&self, shortening_mm: f64, memory: SpacerMemory) -> f64 {
        let compliance = self.compliance_mm_per_n();
        let elastic_n = (shortening_mm - memory.plastic_shortening_mm) / compliance;
        match self.kind {
            _ if elastic_n <= 0.0 => 0.0,
            SpacerKind::Collapsible { hardening_n_per_mm, .. } if elastic_n > self.collapse_force_n(memory) => {
                hardening_n_per_mm / (1.0 + hardening_n_per_mm * compliance)
            }
            SpacerKind::Solid | SpacerKind::Collapsible { .. } => 1.0 / compliance,
        }
    }

    /// How much shorter than new the spacer is under a force, mm. `None` when it cannot carry that force: a sleeve
    /// that does not harden, beyond its yield force.
    pub fn shortening_mm(&self, force_n: f64, memory: SpacerMemory) -> Option<f64> {
        let elastic_mm = force_n * self.compliance_mm_per_n();
        match self.kind {
            SpacerKind::Collapsible {
                yield_force_n,
                hardening_n_per_mm,
            } if force_n > self.collapse_force_n(memory) => {
                (hardening_n_per_mm > 0.0).then(|| (force_n - yield_force_n) / hardening_n_per_mm + elastic_mm)
            }
            SpacerKind::Solid | SpacerKind::Collapsible { .. } => Some(memory.plastic_shortening_mm + elastic_mm),
        }
    }

    /// The memory after the spacer has been squeezed to `shortening_mm` shorter than new.
    #[must_use]
    pub fn remember(&self, shortening_mm: f64, memory: SpacerMemory) -> SpacerMemory {
        let plastic_shortening_mm = self.plastic_at(shortening_mm);
        if plastic_shortening_mm > memory.plastic_shortening_mm {
            SpacerMemory { plastic_shortening_mm }
        } else {
            memory
        }
    }

    /// Plastic part of a shortening on the first-loading line, mm; 0 below yield and for a solid spacer.
    fn plastic_at(&self, shortening_mm: f64) -> f64 {
        match self.kind {
            SpacerKind::Solid => 0.0,
            SpacerKind::Collapsible {
                yield_force_n,
                hardening_n_per_mm,
            } => {
                let compliance = self.compliance_mm_per_n();
                let plastic = (shortening_mm - yield_force_n * compliance) / (1.0 + hardening_n_per_mm * compliance);
                if plastic > 0.0 { plastic } else { 0.0 }
            }
        }
    }
}
