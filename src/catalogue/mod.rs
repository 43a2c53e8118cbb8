//! What ships inside the program: the files of `assets/` and `scenarios/`, embedded when it is built.

use crate::exercise::{Source, Sources};

/// An embedded file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Embedded {
    /// Its name on the command line: the file name without the ending.
    pub name: &'static str,
    /// Its text.
    pub text: &'static str,
}

/// Embeds files of one folder by name; a test compares the list with the folder.
macro_rules! embed {
    ($folder:literal, [$($name:literal),* $(,)?]) => {
        &[$(Embedded { name: $name, text: include_str!(concat!("../../", $folder, "/", $name, ".toml")) }),*]
    };
}

/// All gear sets, by ratio.
pub const GEAR_SETS: &[Embedded] = embed!(
    "assets/gears",
    [
        "3.00-tapered-ring-186",
        "3.08-uniform-ring-172",
        "3.23-tapered-ring-162",
        "3.42-uniform-ring-180",
        "3.55-tapered-ring-198",
        "3.73-tapered-ring-224",
        "3.89-uniform-ring-194",
        "4.11-tapered-ring-178",
        "4.56-uniform-ring-238",
        "4.88-uniform-ring-226",
        "5.29-tapered-ring-250",
        "5.86-uniform-ring-268",
        "6.43-uniform-ring-280",
        "7.33-tapered-ring-298",
    ]
);

/// The embedded gear set of this name.
pub fn gear_set(name: &str) -> Option<&'static Embedded> {
    GEAR_SETS.iter().find(|e| e.name == name)
}

/// All pinion supports, from light to heavy.
pub const SUPPORTS: &[Embedded] = embed!(
    "assets/supports",
    [
        "light-axle-sleeve",
        "medium-axle-solid",
        "cartridge-solid",
        "heavy-axle-solid",
    ]
);

/// Nut torque that an embedded pinion support is meant for, N m; the file format has no key for it.
pub fn meant_nut_torque_nm(support: &str) -> Option<f64> {
    match support {
        "light-axle-sleeve" | "medium-axle-solid" => Some(217.0),
        "cartridge-solid" => Some(500.0),
        "heavy-axle-solid" => Some(1000.0),
        _ => None,
    }
}

/// All exercises, from reading to saying no: by step and then as they come.
pub const SCENARIOS: &[Embedded] = embed!(
    "scenarios",
    [
        "what-the-dial-says",
        "feel-then-read",
        "twelve-prints",
        "shim-drawer",
        "oat-barn-tractor",
        "lash-without-losing-preload",
        "one-notch-too-many",
        "crush-and-stop",
        "grind-or-shim",
        "arbor-and-block",
        "dairy-van-light-axle",
        "feed-lorry-cartridge",
        "depth-stole-my-preload",
        "same-chart-wrong-family",
        "moved-after-the-final-nut",
        "tight-once-a-turn",
        "leave-it-where-it-ran",
        "say-no",
    ]
);

/// The embedded scenario of this name.
pub fn scenario(name: &str) -> Option<&'static Embedded> {
    SCENARIOS.iter().find(|e| e.name == name)
}

/// Gear sets and supports of the catalogue, for exercises.
#[derive(Debug, Clone, Copy, Default)]
pub struct Shelf;

impl Sources for Shelf {
    fn text(&self, kind: Source, name: &str) -> Option<String> {
        let found = match kind {
            Source::Gears => gear_set(name),
            Source::Support => support(name),
        };
        found.map(|e| e.text.to_owned())
    }
}

/// The embedded pinion support of this name.
pub fn support(name: &str) -> Option<&'static Embedded> {
    SUPPORTS.iter().find(|e| e.name == name)
}
