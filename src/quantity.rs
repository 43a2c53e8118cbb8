//! Units at the border of the program, and how numbers are written for people.
//!
//! Inside, everything is in millimetres, newtons, newton metres and radians, with the unit in each name. Here the
//! shop's units come in and go out: inches and thousandths, inch-pounds and foot-pounds, degrees.

/// One inch in millimetres, exact by definition (international yard and pound agreement of 1959; NIST SP 811, B.8).
pub const MM_PER_INCH: f64 = 25.4;
/// One pound-force in newtons, exact (NIST SP 811, B.8: 4.448 221 615 260 5).
pub const N_PER_POUND_FORCE: f64 = 4.448_221_615_260_5;
/// One inch-pound of torque in newton metres (NIST SP 811, B.8: 1.129 848 E−01).
pub const NM_PER_INCH_POUND: f64 = N_PER_POUND_FORCE * 0.0254;
/// One foot-pound of torque in newton metres (NIST SP 811, B.8: 1.355 818).
pub const NM_PER_FOOT_POUND: f64 = N_PER_POUND_FORCE * 0.3048;

/// Degrees from radians.
pub fn degrees(angle_rad: f64) -> f64 {
    angle_rad * (180.0 / std::f64::consts::PI)
}

/// Radians from degrees.
pub fn radians(angle_deg: f64) -> f64 {
    angle_deg * (std::f64::consts::PI / 180.0)
}

/// Inches from millimetres.
pub fn inches(length_mm: f64) -> f64 {
    length_mm / MM_PER_INCH
}

/// Millimetres from inches.
pub fn millimetres(length_in: f64) -> f64 {
    length_in * MM_PER_INCH
}

/// Inch-pounds from newton metres.
pub fn inch_pounds(torque_nm: f64) -> f64 {
    torque_nm / NM_PER_INCH_POUND
}

/// Foot-pounds from newton metres.
pub fn foot_pounds(torque_nm: f64) -> f64 {
    torque_nm / NM_PER_FOOT_POUND
}

/// Which units the trainee reads.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Units {
    /// Millimetres and newton metres.
    #[default]
    Metric,
    /// Inches, inch-pounds by hand and foot-pounds at nuts.
    Inch,
}

impl Units {
    /// The other one.
    #[must_use]
    pub fn other(self) -> Self {
        match self {
            Self::Metric => Self::Inch,
            Self::Inch => Self::Metric,
        }
    }
}

/// A no-break space, so that a number is never parted from its unit at the end of a line.
const JOIN: char = '\u{a0}';
/// The true minus sign, as wide as a plus.
const MINUS: char = '\u{2212}';

/// `value` with `decimals` decimals, a true minus sign and no "minus zero"; a dash where there is no number.
pub fn number(value: f64, decimals: usize) -> String {
    if !value.is_finite() {
        return "\u{2013}".to_owned();
    }
    let digits = format!("{:.*}", decimals, value.abs());
    let zero = digits.chars().all(|c| c == '0' || c == '.');
    if value < 0.0 && !zero {
        format!("{MINUS}{digits}")
    } else {
        digits
    }
}

/// As [`number`], with "+" for positive values and "±" for zero: a deviation.
pub fn signed(value: f64, decimals: usize) -> String {
    let text = number(value, decimals);
    if !value.is_finite() || text.starts_with(MINUS) {
        text
    } else if text.chars().all(|c| c == '0' || c == '.') {
        format!("±{text}")
    } else {
        format!("+{text}")
    }
}

/// A length that an instrument shows: two decimals of a millimetre or three of an inch.
pub fn length(length_mm: f64, units: Units) -> String {
    match units {
        Units::Metric => format!("{}{JOIN}mm", number(length_mm, 2)),
        Units::Inch => format!("{}{JOIN}in", number(inches(length_mm), 3)),
    }
}

/// A length finer than an instrument shows, for truth and placement: three decimals of a millimetre, four of an inch.
pub fn fine_length(length_mm: f64, units: Units) -> String {
    match units {
        Units::Metric => format!("{}{JOIN}mm", number(length_mm, 3)),
        Units::Inch => format!("{}{JOIN}in", number(inches(length_mm), 4)),
    }
}

/// A deviation of position, as [`fine_length`] with its sign.
pub fn deviation(length_mm: f64, units: Units) -> String {
    match units {
        Units::Metric => format!("{}{JOIN}mm", signed(length_mm, 3)),
        Units::Inch => format!("{}{JOIN}in", signed(inches(length_mm), 4)),
    }
}

/// A torque felt by hand: two decimals of a newton metre, or one of an inch-pound.
pub fn torque(torque_nm: f64, units: Units) -> String {
    match units {
        Units::Metric => format!("{}{JOIN}N·m", number(torque_nm, 2)),
        Units::Inch => format!("{}{JOIN}in·lb", number(inch_pounds(torque_nm), 1)),
    }
}

/// Torque of a nut or bolt: whole newton metres or foot-pounds, as their wrenches are marked.
pub fn nut_torque(torque_nm: f64, units: Units) -> String {
    match units {
        Units::Metric => format!("{}{JOIN}N·m", number(torque_nm, 0)),
        Units::Inch => format!("{}{JOIN}ft·lb", number(foot_pounds(torque_nm), 0)),
    }
}

/// An angle in degrees with two decimals.
pub fn angle(angle_rad: f64) -> String {
    format!("{}°", number(degrees(angle_rad), 2))
}

#[cfg(test)]
mod tests {
    use approx::assert_relative_eq;

    use super::*;

    /// NIST Special Publication 811 (2008), appendix B.8, as printed there to seven digits.
    #[test]
    fn conversions_of_sp_811() {
        assert_relative_eq!(millimetres(1.0), 25.4);
        assert_relative_eq!(NM_PER_INCH_POUND, 1.129_848e-1, max_relative = 5e-7);
        assert_relative_eq!(NM_PER_FOOT_POUND, 1.355_818, max_relative = 5e-7);
        assert_relative_eq!(foot_pounds(216.93), 160.0, max_relative = 1e-4);
        assert_relative_eq!(inch_pounds(1.0), 8.850_75, max_relative = 1e-6);
    }

    #[test]
    fn numbers_are_written_as_the_look_says() {
        assert_eq!(number(-0.004, 2), "0.00", "no minus zero");
        assert_eq!(number(-1.5, 1), "\u{2212}1.5", "true minus");
        assert_eq!(number(f64::NAN, 1), "\u{2013}", "no number");
        assert_eq!(signed(0.0, 3), "±0.000", "zero deviation");
        assert_eq!(signed(-0.0001, 3), "±0.000", "zero to the decimals shown");
        assert_eq!(signed(0.1, 3), "+0.100", "plus");
        assert_eq!(length(0.1524, Units::Inch), "0.006\u{a0}in", "read");
        assert_eq!(fine_length(0.1397, Units::Inch), "0.0055\u{a0}in", "truth");
        assert_eq!(torque(2.25969658, Units::Inch), "20.0\u{a0}in·lb", "feel");
        assert_eq!(nut_torque(216.93, Units::Metric), "217\u{a0}N·m", "wrench");
        assert_eq!(nut_torque(216.93, Units::Inch), "160\u{a0}ft·lb", "wrench");
        assert_eq!(angle(radians(50.0)), "50.00°", "angle");
    }
}
