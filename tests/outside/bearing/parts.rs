//! Catalogue rows of nine bearings (Timken Tapered Roller Bearing Catalog), as test objects only.
//!
//! Roller count and length are not published; 17 rollers and lengths derived from the static rating stand in.

use lashwright::bearing::{BearingKind, FrictionSeries, TaperedBearing};

/// A catalogue row.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Part {
    pub(crate) name: &'static str,
    pub(crate) bore: f64,
    pub(crate) outside: f64,
    pub(crate) cone_width: f64,
    pub(crate) series: FrictionSeries,
    pub(crate) y: f64,
    pub(crate) k: f64,
    pub(crate) contact_angle_deg: f64,
    pub(crate) roller_length: f64,
    pub(crate) g1: f64,
    pub(crate) g2: f64,
}

const fn part(
    name: &'static str,
    bore: f64,
    outside: f64,
    cone_width: f64,
    series: FrictionSeries,
    y_k_angle: (f64, f64, f64),
    roller_length: f64,
    g: (f64, f64),
) -> Part {
    let (y, k, contact_angle_deg) = y_k_angle;
    Part {
        name,
        bore,
        outside,
        cone_width,
        series,
        y,
        k,
        contact_angle_deg,
        roller_length,
        g1: g.0,
        g2: g.1,
    }
}

use FrictionSeries::{InchHm, InchLm, InchM};

pub(crate) const M88048: Part = part(
    "M88048",
    33.337,
    68.262,
    22.225,
    InchM,
    (1.10, 1.07, 19.98),
    16.0,
    (19.4, 10.0),
);
pub(crate) const HM89449: Part = part(
    "HM89449",
    36.512,
    76.200,
    28.575,
    InchHm,
    (1.10, 1.07, 19.98),
    22.2,
    (28.9, 9.9),
);
pub(crate) const M802048: Part = part(
    "M802048",
    41.275,
    82.550,
    25.654,
    InchM,
    (1.10, 1.07, 19.98),
    19.0,
    (30.9, 11.9),
);
pub(crate) const HM803146: Part = part(
    "HM803146",
    41.275,
    88.900,
    29.370,
    InchHm,
    (1.10, 1.07, 19.98),
    23.3,
    (39.2, 10.6),
);
pub(crate) const HM804846: Part = part(
    "HM804846",
    47.625,
    95.250,
    29.370,
    InchHm,
    (1.10, 1.07, 19.98),
    23.1,
    (44.8, 13.8),
);
pub(crate) const LM501349: Part = part(
    "LM501349",
    41.275,
    73.431,
    19.812,
    InchLm,
    (1.50, 1.46, 14.92),
    13.3,
    (23.3, 13.3),
);
pub(crate) const LM603049: Part = part(
    "LM603049",
    45.242,
    77.788,
    19.842,
    InchLm,
    (1.41, 1.37, 15.85),
    13.1,
    (26.4, 14.4),
);
pub(crate) const LM102949: Part = part(
    "LM102949",
    45.242,
    73.431,
    19.812,
    InchLm,
    (1.97, 1.91, 11.51),
    13.0,
    (31.1, 18.8),
);

pub(crate) const ALL: [Part; 8] = [
    M88048, HM89449, M802048, HM803146, HM804846, LM501349, LM603049, LM102949,
];

impl Part {
    pub(crate) fn bearing(&self) -> TaperedBearing {
        self.with_rollers(17, self.roller_length)
    }

    pub(crate) fn with_rollers(&self, roller_count: u32, roller_length_mm: f64) -> TaperedBearing {
        TaperedBearing {
            kind: BearingKind::Tapered,
            bore_mm: self.bore,
            outside_diameter_mm: self.outside,
            friction: self.series.constants(),
            steep: self.series.is_steep(),
            thrust_factor_y: self.y,
            roller_count,
            roller_length_mm,
            friction_factor: 1.0,
        }
    }
}
