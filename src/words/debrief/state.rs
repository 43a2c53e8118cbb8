//! What no instrument of the bench shows by itself: a name, and what to know of it.

use crate::words::say;

/// Where the pinion stands.
pub fn pinion_depth() -> [String; 2] {
    [
        say!("debrief-state-pinion-depth"),
        say!("debrief-state-pinion-depth-note"),
    ]
}

/// Where the ring gear stands.
pub fn wheel() -> [String; 2] {
    [say!("debrief-state-ring-gear"), say!("debrief-state-ring-gear-note")]
}

/// How far the axes pass each other.
pub fn offset() -> [String; 2] {
    [say!("debrief-state-offset"), say!("debrief-state-offset-note")]
}

/// How the axes lie to each other.
pub fn shaft_angle() -> [String; 2] {
    [
        say!("debrief-state-shaft-angle"),
        say!("debrief-state-shaft-angle-note"),
    ]
}

/// Preload of the pinion bearings.
pub fn pinion_preload() -> [String; 2] {
    [
        say!("debrief-state-pinion-preload"),
        say!("debrief-state-pinion-preload-note"),
    ]
}

/// Play of the pinion bearings.
pub fn pinion_play() -> [String; 2] {
    [
        say!("debrief-state-pinion-play"),
        say!("debrief-state-pinion-play-note"),
    ]
}

/// Preload of the side bearings.
pub fn side_preload() -> [String; 2] {
    [
        say!("debrief-state-side-preload"),
        say!("debrief-state-side-preload-note"),
    ]
}

/// Force that the nut presses everything together with.
pub fn clamp() -> [String; 2] {
    [say!("debrief-state-clamp"), say!("debrief-state-clamp-note")]
}
