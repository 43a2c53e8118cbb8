//! What a gear set was designed to be: the numbers of a `lashwright-gears/1` file, checked.

/// Which way the tooth depth runs along the tooth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DepthTaper {
    /// Root and face cones lean to the pitch cone: the tooth is taller at the heel.
    Tapered,
    /// Root, pitch and face cones are parallel: the tooth is as tall at the toe as at the heel.
    Uniform,
}

/// What the pinion flank is cut back by along its normal, in micrometres, at the wheel point (x, y) that it meets:
/// e(x, y) = CL x² + CP y² + CB x y + SL x + SP y.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct EaseOff {
    /// CL, relief at both ends of the tooth, µm.
    pub lengthwise_crown_um: f64,
    /// CP, relief at top and root, µm.
    pub profile_crown_um: f64,
    /// CB, diagonal relief, µm.
    pub twist_um: f64,
    /// SL, µm.
    pub lengthwise_slope_um: f64,
    /// SP, µm.
    pub profile_slope_um: f64,
}

/// A gear set as designed. Every value is finite and inside the range of the file format; whether a pair of gears
/// with these numbers exists is decided by [`crate::gear`]'s geometry.
#[derive(Debug, Clone, PartialEq)]
pub struct Design {
    /// Name shown to people, 1 to 60 characters.
    pub name: String,
    /// z1.
    pub pinion_teeth: u32,
    /// z2, more than z1.
    pub wheel_teeth: u32,
    /// a, mm; 0 for spiral bevel gears.
    pub offset_mm: f64,
    /// d_e2, mm.
    pub wheel_outer_pitch_diameter_mm: f64,
    /// b2, mm.
    pub wheel_face_width_mm: f64,
    /// β_m1, degrees.
    pub pinion_mean_spiral_angle_deg: f64,
    /// Limit radius that fixes the pitch cones, mm (the cutter radius where the file leaves it out).
    pub limit_radius_mm: f64,
    /// r_c, mean cutter radius, mm (the limit radius where the file leaves it out).
    pub cutter_radius_mm: f64,
    /// α on the drive side, degrees.
    pub pressure_angle_drive_deg: f64,
    /// α on the coast side, degrees.
    pub pressure_angle_coast_deg: f64,
    /// Tapered or uniform depth.
    pub depth: DepthTaper,
    /// k_d.
    pub depth_factor: f64,
    /// k_c.
    pub clearance_factor: f64,
    /// c_ham.
    pub wheel_addendum_factor: f64,
    /// k_t.
    pub thickness_factor: f64,
    /// j0, designed lash, mm.
    pub lash_mm: f64,
    /// Ease-off on the pinion's drive flank.
    pub ease_off_drive: EaseOff,
    /// Ease-off on the pinion's coast flank.
    pub ease_off_coast: EaseOff,
}
