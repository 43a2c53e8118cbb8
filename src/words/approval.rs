//! Words of the maker's approval prints.

use super::say;
use crate::exercise::Lean;

/// How a print leans.
pub fn lean(lean: Lean) -> String {
    match lean {
        Lean::RisingToHeel => say!("bench-lean-to-heel"),
        Lean::RisingToToe => say!("bench-lean-to-toe"),
        Lean::Level => say!("bench-lean-level"),
    }
}
