//! The rows of the friction table for tapered roller bearings: what files of the format `lashwright-support/1` name.
//!
//! Source: General Catalogue of rolling bearings (2005/2008 text), friction chapter, table 3d.

use super::friction_constants::FrictionConstants;

/// Which row of the table a bearing belongs to: the ISO dimension series, or the prefix of an inch bearing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FrictionSeries {
    /// 302
    S302,
    /// 303
    S303,
    /// 313 (X), steep
    S313,
    /// 320 X
    S320,
    /// 322
    S322,
    /// 322 B, steep
    S322B,
    /// 323
    S323,
    /// 323 B, steep
    S323B,
    /// 329
    S329,
    /// 330
    S330,
    /// 331
    S331,
    /// 332
    S332,
    /// Inch, very light
    InchLl,
    /// Inch, light
    InchL,
    /// Inch, light to medium
    InchLm,
    /// Inch, medium
    InchM,
    /// Inch, heavy to medium
    InchHm,
    /// Inch, heavy
    InchH,
    /// Inch, very heavy
    InchHh,
    /// Every bearing that the table does not name
    Other,
}

impl FrictionSeries {
    /// Every row, in the order of the table.
    pub const ALL: [Self; 20] = [
        Self::S302,
        Self::S303,
        Self::S313,
        Self::S320,
        Self::S322,
        Self::S322B,
        Self::S323,
        Self::S323B,
        Self::S329,
        Self::S330,
        Self::S331,
        Self::S332,
        Self::InchLl,
        Self::InchL,
        Self::InchLm,
        Self::InchM,
        Self::InchHm,
        Self::InchH,
        Self::InchHh,
        Self::Other,
    ];

    /// The name a support file uses.
    pub fn name(self) -> &'static str {
        match self {
            Self::S302 => "302",
            Self::S303 => "303",
            Self::S313 => "313",
            Self::S320 => "320",
            Self::S322 => "322",
            Self::S322B => "322B",
            Self::S323 => "323",
            Self::S323B => "323B",
            Self::S329 => "329",
            Self::S330 => "330",
            Self::S331 => "331",
            Self::S332 => "332",
            Self::InchLl => "LL",
            Self::InchL => "L",
            Self::InchLm => "LM",
            Self::InchM => "M",
            Self::InchHm => "HM",
            Self::InchH => "H",
            Self::InchHh => "HH",
            Self::Other => "other",
        }
    }

    /// The row of that name; `None` when there is none. Blanks do not count, and the X that catalogues append to
    /// 313 and 320 may be there or not ("320 X", "320X", "320").
    pub fn from_name(name: &str) -> Option<Self> {
        let plain: String = name.chars().filter(|c| !c.is_whitespace()).collect();
        let plain = match plain.as_str() {
            "313X" => "313",
            "320X" => "320",
            other => other,
        };
        Self::ALL.into_iter().find(|s| s.name() == plain)
    }

    /// Whether bearings of this row are steep: their starting torque "may be up to four times higher" than computed, says
    /// the source of this table.
    pub fn is_steep(self) -> bool {
        matches!(self, Self::S313 | Self::S322B | Self::S323B)
    }

    /// The constants of this row.
    pub fn constants(self) -> FrictionConstants {
        let (r1, r2, s1) = match self {
            Self::S302 => (1.76e-6, 10.9, 0.017),
            Self::S303 => (1.69e-6, 10.9, 0.017),
            Self::S313 => (1.84e-6, 10.9, 0.048),
            Self::S320 => (2.38e-6, 10.9, 0.014),
            Self::S322 => (2.27e-6, 10.9, 0.018),
            Self::S322B => (2.38e-6, 10.9, 0.026),
            Self::S323 => (2.38e-6, 10.9, 0.019),
            Self::S323B => (2.79e-6, 10.9, 0.030),
            Self::S329 => (2.31e-6, 10.9, 0.009),
            Self::S330 => (2.71e-6, 11.3, 0.010),
            Self::S331 => (2.71e-6, 10.9, 0.015),
            Self::S332 => (2.71e-6, 10.9, 0.018),
            Self::InchLl => (1.72e-6, 10.9, 0.0057),
            Self::InchL => (2.19e-6, 10.9, 0.0093),
            Self::InchLm => (2.25e-6, 10.9, 0.011),
            Self::InchM => (2.48e-6, 10.9, 0.015),
            Self::InchHm => (2.60e-6, 10.9, 0.020),
            Self::InchH => (2.66e-6, 10.9, 0.025),
            Self::InchHh => (2.51e-6, 10.9, 0.027),
            Self::Other => (2.31e-6, 10.9, 0.019),
        };
        FrictionConstants { r1, r2, s1, s2: 2.0 }
    }
}
