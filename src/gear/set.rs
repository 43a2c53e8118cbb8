//! A gear set: everything that follows from a design.
//!
//! Source: arithmetic of tooth numbers; all else is in the files that it puts together.

use super::warning::{check_flank, check_lands, check_second_cut};
use super::{Blank, Cutter, Design, GeometryError, PinionFlank, PitchCones, PitchInput, Side, Warning, WheelFlank};

/// Both members of a ring and pinion, as designed.
#[derive(Debug, Clone, PartialEq)]
pub struct GearSet {
    design: Design,
    pitch: PitchCones,
    blank: Blank,
    cutter: Cutter,
    flanks: [PinionFlank; 2],
    warnings: Vec<Warning>,
}

impl GearSet {
    /// The gears of a design.
    ///
    /// # Errors
    /// [`GeometryError`] where they do not exist: no pitch cones, no point width, no regular contact anywhere. Doubtful
    /// geometry is no error but listed in [`GearSet::warnings`].
    pub fn new(design: Design) -> Result<Self, GeometryError> {
        let pitch = PitchCones::solve(&PitchInput::from(&design))?;
        let blank = Blank::new(&design, &pitch)?;
        let cutter = Cutter::new(&design, &pitch, &blank)?;
        let flank = |side| WheelFlank::new(&cutter, &blank, side).map(|wheel| PinionFlank::new(&design, wheel));
        let flanks = [flank(Side::Drive)?, flank(Side::Coast)?];
        let mut warnings = Vec::new();
        for pinion in &flanks {
            let check = check_flank(pinion);
            if check.regular_points == 0 {
                return Err(GeometryError::NoRegularContact {
                    side: pinion.wheel().side,
                });
            }
            warnings.extend(check.undercut);
        }
        warnings.extend(check_lands(&design, &pitch, &blank, &flanks));
        warnings.extend(check_second_cut(&cutter, &blank, &flanks));
        Ok(Self {
            design,
            pitch,
            blank,
            cutter,
            flanks,
            warnings,
        })
    }

    /// What it was designed to be.
    pub fn design(&self) -> &Design {
        &self.design
    }

    /// Pitch cones.
    pub fn pitch(&self) -> &PitchCones {
        &self.pitch
    }

    /// Tooth proportions and bounding cones.
    pub fn blank(&self) -> &Blank {
        &self.blank
    }

    /// The wheel's cutter.
    pub fn cutter(&self) -> &Cutter {
        &self.cutter
    }

    /// A flank of the wheel.
    pub fn wheel_flank(&self, side: Side) -> &WheelFlank {
        self.pinion_flank(side).wheel()
    }

    /// The pinion's flank that meets this side of the wheel.
    pub fn pinion_flank(&self, side: Side) -> &PinionFlank {
        let [drive, coast] = &self.flanks;
        match side {
            Side::Drive => drive,
            Side::Coast => coast,
        }
    }

    /// m = −z1/z2: wheel angle for a unit of pinion angle.
    pub fn ratio(&self) -> f64 {
        -f64::from(self.design.pinion_teeth) / f64::from(self.design.wheel_teeth)
    }

    /// Wheel angle from one tooth to the next, rad.
    pub fn wheel_pitch_rad(&self) -> f64 {
        2.0 * std::f64::consts::PI / f64::from(self.design.wheel_teeth)
    }

    /// What is doubtful about it, in a fixed order: undercut (drive, coast), tips (toe to heel), second cut.
    pub fn warnings(&self) -> &[Warning] {
        &self.warnings
    }
}
