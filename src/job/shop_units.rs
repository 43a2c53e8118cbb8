//! Numbers in the shop's units for those floors that know no core: the same functions as in `quantity`.

pub use crate::quantity::{foot_pounds, inch_pounds, inches, number, signed};

/// Pounds-force from newtons.
pub fn pounds_force(force_n: f64) -> f64 {
    force_n / crate::quantity::N_PER_POUND_FORCE
}
