//! Axles that the tests build up: one of each layout, of embedded gears and supports.

use lashwright::axle::{Axle, DepthShim, Layout, Target, usual_side_bearings};
use lashwright::catalogue;
use lashwright::gear::{Design, GearSet};
use lashwright::job::supports;

/// Embedded gears.
pub(crate) fn gears(name: &str) -> GearSet {
    let file = catalogue::gear_set(name).expect("embedded");
    GearSet::new(Design::from_toml(file.text).expect("a good file")).expect("gears that exist")
}

/// Gears of each layout's axle.
pub(crate) fn gears_of(layout: Layout) -> &'static str {
    match layout {
        Layout::A => "3.55-tapered-ring-198",
        Layout::B => "5.86-uniform-ring-268",
        Layout::C => "3.73-tapered-ring-224",
    }
}

/// An axle of this layout with its depth shim in this place.
pub(crate) fn axle_with(layout: Layout, depth_shim: DepthShim) -> Axle {
    let gears = gears(gears_of(layout));
    let (support, pinion_preload_n) = match layout {
        Layout::A => ("light-axle-sleeve", 5_000.0),
        Layout::B => ("cartridge-solid", 6_000.0),
        Layout::C => ("medium-axle-solid", 5_500.0),
    };
    let side = usual_side_bearings(gears.design().wheel_outer_pitch_diameter_mm);
    let target = Target {
        pinion_preload_n,
        side_squeeze_mm: 0.20,
    };
    let support = supports::find(support).expect("embedded").support;
    Axle::new(layout, depth_shim, &gears, support, side, target).expect("parts that belong together")
}
