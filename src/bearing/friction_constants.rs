//! What the friction formulas need to know of a bearing's inside.
//!
//! Source: General Catalogue of rolling bearings (2005/2008), friction chapter.

/// Geometry constants of a tapered roller bearing in the formulas of [`super::friction`]. The third constants
/// of the source's other kinds of bearing have no place in these formulas.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FrictionConstants {
    /// R1, of the rolling moment: N mm for d_m in mm, loads in N and ν n in mm²/s · r/min.
    pub r1: f64,
    /// R2, share of Y F_a in the load of the rolling moment.
    pub r2: f64,
    /// S1, of the sliding moment: N mm for d_m in mm and loads in N.
    pub s1: f64,
    /// S2, share of Y F_a in the load of the sliding moment.
    pub s2: f64,
}
