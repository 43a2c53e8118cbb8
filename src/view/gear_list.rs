//! The gear sets that were found, and the numbers of each as the trade reads them.

use crate::gear::{DepthTaper, Design, Hunting, HuntingKind, PitchCones, PitchInput};
use crate::words::say;

/// Where a gear set came from.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub enum Origin {
    /// It ships with the program.
    BuiltIn,
    /// A file, as it was named.
    File(String),
}

impl Origin {
    /// As the list says it.
    pub fn label(&self) -> String {
        match self {
            Self::BuiltIn => say!("gears-built-in"),
            Self::File(name) => name.clone(),
        }
    }
}

/// How a set hunts, as the trade says it.
pub fn hunting_label(kind: HuntingKind) -> String {
    match kind {
        HuntingKind::Hunting => say!("gears-hunting"),
        HuntingKind::PartlyHunting => say!("gears-partly-hunting"),
        HuntingKind::NonHunting => say!("gears-non-hunting"),
    }
}

/// What a pinion move does to the pattern: the two families of training sets, and what lies between.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Family {
    /// Cutter radius at least 1.3 × the ring gear's mean cone distance: pinion out sends drive to the heel, coast to
    /// the toe.
    LargeCutter,
    /// Cutter radius at most 0.65 × the mean cone distance: pinion out sends drive to the toe, coast to the heel.
    SmallCutter,
    /// Between them neither rule holds in general.
    Between,
}

impl Family {
    /// After cutter radius and mean cone distance of the ring gear, mm.
    pub fn of(cutter_radius_mm: f64, wheel_mean_cone_distance_mm: f64) -> Self {
        let share = cutter_radius_mm / wheel_mean_cone_distance_mm;
        if share >= 1.3 {
            Self::LargeCutter
        } else if share <= 0.65 {
            Self::SmallCutter
        } else {
            Self::Between
        }
    }

    /// As the list says it.
    pub fn label(self) -> String {
        match self {
            Self::LargeCutter => say!("gears-large-cutter"),
            Self::SmallCutter => say!("gears-small-cutter"),
            Self::Between => say!("gears-cutter-between"),
        }
    }

    /// What to expect of it.
    pub fn rule(self) -> String {
        match self {
            Self::LargeCutter => say!("gears-large-cutter-rule"),
            Self::SmallCutter => say!("gears-small-cutter-rule"),
            Self::Between => say!("gears-cutter-between-rule"),
        }
    }
}

/// The numbers of a gear set.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GearNumbers {
    /// z1.
    pub pinion_teeth: u32,
    /// z2.
    pub wheel_teeth: u32,
    /// z2/z1.
    pub ratio: f64,
    /// Which teeth meet.
    pub hunting: HuntingKind,
    /// d_e2, mm.
    pub ring_gear_diameter_mm: f64,
    /// b2, mm.
    pub face_width_mm: f64,
    /// a, mm; 0 for spiral bevel gears.
    pub offset_mm: f64,
    /// β_m1, degrees.
    pub pinion_spiral_angle_deg: f64,
    /// r_c, mm.
    pub cutter_radius_mm: f64,
    /// How the tooth depth runs.
    pub depth: DepthTaper,
    /// What a pinion move does; unknown where no such gears exist.
    pub family: Option<Family>,
    /// j0, mm.
    pub lash_mm: f64,
}

impl GearNumbers {
    /// How the tooth depth runs, in words.
    pub fn depth_label(&self) -> String {
        match self.depth {
            DepthTaper::Tapered => say!("gears-tapered"),
            DepthTaper::Uniform => say!("gears-uniform"),
        }
    }
}

/// One line of the list of gear sets.
#[derive(Debug, Clone, PartialEq)]
pub struct GearEntry {
    /// Its name.
    pub name: String,
    /// Where it came from.
    pub origin: Origin,
    /// Its numbers.
    pub numbers: GearNumbers,
}

impl GearEntry {
    /// The line for a gear set.
    pub fn new(design: &Design, origin: Origin) -> Self {
        let ratio = f64::from(design.wheel_teeth) / f64::from(design.pinion_teeth.max(1));
        let pitch = PitchCones::solve(&PitchInput::from(design)).ok();
        Self {
            name: design.name.clone(),
            origin,
            numbers: GearNumbers {
                pinion_teeth: design.pinion_teeth,
                wheel_teeth: design.wheel_teeth,
                ratio,
                hunting: Hunting::of(design.pinion_teeth, design.wheel_teeth).map_or(HuntingKind::Hunting, |h| h.kind),
                ring_gear_diameter_mm: design.wheel_outer_pitch_diameter_mm,
                face_width_mm: design.wheel_face_width_mm,
                offset_mm: design.offset_mm,
                pinion_spiral_angle_deg: design.pinion_mean_spiral_angle_deg,
                cutter_radius_mm: design.cutter_radius_mm,
                depth: design.depth,
                family: pitch.map(|p| Family::of(design.cutter_radius_mm, p.wheel_cone_distance_mm)),
                lash_mm: design.lash_mm,
            },
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn families_lie_apart() {
        assert_eq!(Family::of(122.0, 85.0), Family::LargeCutter);
        assert_eq!(Family::of(44.0, 78.5), Family::SmallCutter);
        assert_eq!(Family::of(78.5, 78.5), Family::Between);
    }
}
