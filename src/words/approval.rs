//! Words of the maker's approval prints.

use crate::exercise::Lean;

/// How a print leans.
pub fn lean(lean: Lean) -> &'static str {
    match lean {
        Lean::RisingToHeel => "rising to the heel",
        Lean::RisingToToe => "rising to the toe",
        Lean::Level => "level",
    }
}
