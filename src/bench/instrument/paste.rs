//! Marking paste: what brushing and rolling make of a print.
//!
//! Paste marks where the teeth come closer than its film. A thick coat marks where they stay farther apart, and the print
//! looks larger than it is. Without drag the teeth do not press the film away: the print is faint, and drive and coast mix. A
//! few passes clear it, many smear it. Sizes are our judgement; their directions are common practice, no source.

use super::using::Use;
use crate::numerics::math;

/// How paste was brushed on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Coat {
    /// Wiped thin until the steel shines through.
    Thin,
    /// As it comes off the brush.
    Usual,
    /// Laid on.
    Thick,
}

/// The paste on the bench.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Paste {
    /// Film of a thin coat, µm.
    pub thin_um: f64,
}

/// How the gears were rolled.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Roll {
    /// Drag held against the wheel, N m at the wheel.
    pub drag_nm: f64,
    /// Passes of the painted teeth through the mesh on this side.
    pub passes: u32,
}

/// What is on the teeth afterwards.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rolled {
    /// Gap below which the paste was cleared, µm.
    pub film_um: f64,
    /// How clearly the print stands out, 0 to 1.
    pub clearness: f64,
    /// Share by which many passes have widened it, 0 for none.
    pub smear: f64,
}

/// Drag at which a print is two thirds as clear as it can be, N m.
const CLEAR_DRAG_NM: f64 = 12.0;
/// Passes at which it is.
const CLEAR_PASSES: f64 = 2.0;
/// Passes from which it smears, and by how much a pass.
const MOST_PASSES: u32 = 8;
const SMEAR_A_PASS: f64 = 0.04;

impl Paste {
    /// Yellow paste of a middling make.
    pub const USUAL: Self = Self { thin_um: 6.5 };

    /// Film of a coat, µm, before this brushing's own luck.
    pub fn film_um(&self, coat: Coat) -> f64 {
        match coat {
            Coat::Thin => self.thin_um,
            Coat::Usual => 1.3 * self.thin_um,
            Coat::Thick => 2.6 * self.thin_um,
        }
    }

    /// What rolling leaves of a coat.
    pub fn rolled(&self, coat: Coat, roll: Roll, using: Use<'_>) -> Rolled {
        let film = self.film_um(coat) * (1.0 + 0.06 * using.of_set_up("brush"));
        let over = f64::from(roll.passes.saturating_sub(MOST_PASSES));
        let smear = SMEAR_A_PASS * over;
        let drag = if roll.drag_nm > 0.0 { roll.drag_nm } else { 0.0 };
        let pressed = 1.0 - math::exp(-drag / CLEAR_DRAG_NM);
        let passed = 1.0 - math::exp(-f64::from(roll.passes) / CLEAR_PASSES);
        Rolled {
            film_um: film * (1.0 + smear),
            clearness: pressed * passed / (1.0 + smear),
            smear,
        }
    }
}

impl Rolled {
    /// A plate that was painted with care, for teaching.
    pub const PLATE: Self = Self {
        film_um: 8.0,
        clearness: 0.9,
        smear: 0.0,
    };

    /// Below this an eye cannot tell print from paste.
    pub const LEAST_CLEAR: f64 = 0.25;

    /// How far the eye goes wrong in the place of a print's middle, flank coordinates (x, y): sharp prints are read to a few
    /// hundredths, faint ones worse.
    pub fn eye_error(&self, using: Use<'_>) -> [f64; 2] {
        let blur = 0.02 + 0.10 * (1.0 - self.clearness) * (1.0 - self.clearness) + 0.1 * self.smear;
        [blur * using.of_reading("length"), blur * using.of_reading("height")]
    }
}
