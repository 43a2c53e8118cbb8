//! The flanks of a tooth and their edges, as they are named beside pictures and in lists.

use super::say;

/// Heading of the convex flank of the ring gear.
pub fn drive_side() -> String {
    say!("tooth-drive-side")
}

/// Heading of the concave flank of the ring gear.
pub fn coast_side() -> String {
    say!("tooth-coast-side")
}

/// The inner end.
pub fn toe() -> String {
    say!("tooth-toe")
}

/// The outer end.
pub fn heel() -> String {
    say!("tooth-heel")
}

/// The upper edge.
pub fn face() -> String {
    say!("tooth-face")
}

/// The lower edge.
pub fn flank() -> String {
    say!("tooth-flank")
}
