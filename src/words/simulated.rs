//! What simulated values are not.

use super::say;

/// The note that goes with everything that is computed, in whatever form it is put out: texts, documents, tables, pictures,
/// pages.
pub fn simulated() -> String {
    say!("caution-simulated")
}
