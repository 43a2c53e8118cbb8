//! What no instrument of the bench shows by itself: a name, and what to know of it.

/// Where the pinion stands.
pub const PINION_DEPTH: [&str; 2] = ["Pinion depth P", "from the designed place, + stands shallower"];
/// Where the ring gear stands.
pub const WHEEL: [&str; 2] = ["Ring gear G", "from the designed place, + stands away from the pinion"];
/// How far the axes pass each other.
pub const OFFSET: [&str; 2] = ["Offset E", "+ is more offset; no shim changes it"];
/// How the axes lie to each other.
pub const SHAFT_ANGLE: [&str; 2] = ["Shaft angle \u{3a3}", "+ is opened; no shim changes it"];
/// Preload of the pinion bearings.
pub const PINION_PRELOAD: [&str; 2] = ["Pinion preload", "felt only as rotating torque"];
/// Play of the pinion bearings.
pub const PINION_PLAY: [&str; 2] = ["Pinion end play", "0 when there is preload"];
/// Preload of the side bearings.
pub const SIDE_PRELOAD: [&str; 2] = ["Side preload", "felt only as torque that is added"];
/// Force that the nut presses everything together with.
pub const CLAMP: [&str; 2] = [
    "Clamp of the pinion nut",
    "what the nut\u{2019}s torque leaves after friction",
];
