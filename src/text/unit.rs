//! Units that people give by mistake.

use super::range::NumberRange;

/// Units of numbers in files: ours, and those that they are mistaken for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FileUnit {
    /// mm.
    Millimeters,
    /// µm.
    Micrometers,
    /// in.
    Inches,
    /// 0.001 in.
    Thousandths,
    /// mm².
    SquareMillimeters,
    /// in².
    SquareInches,
    /// °.
    Degrees,
    /// rad.
    Radians,
    /// N.
    Newtons,
    /// kN.
    Kilonewtons,
    /// lb.
    Pounds,
    /// N·m.
    NewtonMeters,
    /// ft·lb.
    FootPounds,
    /// in·lb.
    InchPounds,
    /// N/mm.
    NewtonsPerMillimeter,
    /// N/µm.
    NewtonsPerMicrometer,
    /// lb/in.
    PoundsPerInch,
    /// 1000 lb/in.
    KilopoundsPerInch,
}

/// A number that fits once it is taken for one of another unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MixUp {
    /// As it was given.
    pub given: f64,
    /// The unit that it was probably given in.
    pub given_in: FileUnit,
    /// What that is in the unit of the key.
    pub meant: f64,
    /// The unit of the key.
    pub unit: FileUnit,
}

/// Other units that people give by mistake: ending of the key, factor from the mistaken unit to the right one, the
/// mistaken unit, the right one. Endings are tried in this order; the longest must come first.
const MIX_UPS: [(&str, f64, FileUnit, FileUnit); 13] = {
    use FileUnit as U;
    [
        ("_n_per_um", 0.001, U::NewtonsPerMillimeter, U::NewtonsPerMicrometer),
        (
            "_n_per_um",
            0.175_126_835,
            U::KilopoundsPerInch,
            U::NewtonsPerMicrometer,
        ),
        ("_n_per_mm", 0.175_126_835, U::PoundsPerInch, U::NewtonsPerMillimeter),
        ("_mm2", 645.16, U::SquareInches, U::SquareMillimeters),
        ("_mm", 25.4, U::Inches, U::Millimeters),
        ("_mm", 0.001, U::Micrometers, U::Millimeters),
        ("_um", 25.4, U::Thousandths, U::Micrometers),
        ("_um", 1000.0, U::Millimeters, U::Micrometers),
        ("_deg", 180.0 / std::f64::consts::PI, U::Radians, U::Degrees),
        ("_n", 4.448_221_615_260_5, U::Pounds, U::Newtons),
        ("_n", 1000.0, U::Kilonewtons, U::Newtons),
        ("_nm", 1.355_817_948_331_4, U::FootPounds, U::NewtonMeters),
        ("_nm", 0.112_984_829_027_616_7, U::InchPounds, U::NewtonMeters),
    ]
};

impl MixUp {
    /// What may have been meant by a value of `key` outside its range; `None` where nothing fits.
    pub(super) fn of(key: &str, given: f64, range: NumberRange) -> Option<Self> {
        MIX_UPS
            .iter()
            .find(|(ending, factor, ..)| key.ends_with(ending) && range.holds(given * factor))
            .map(|&(_, factor, given_in, unit)| Self {
                given,
                given_in,
                meant: given * factor,
                unit,
            })
    }
}
