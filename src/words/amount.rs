//! Numbers that a trainee types and reads, each in the unit of its kind.

use crate::quantity::{
    NM_PER_FOOT_POUND, NM_PER_INCH_POUND, Units, foot_pounds, inch_pounds, inches, millimetres, number,
};

/// What kind of number something is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Amount {
    /// Length that an instrument shows, mm.
    Length,
    /// Length to a thousandth: micrometer, fine dial, mm.
    FineLength,
    /// Torque felt by hand, N m.
    HandTorque,
    /// Torque of a nut, N m.
    NutTorque,
    /// Angle, degrees.
    Degrees,
    /// Force of a press, kN.
    Kilonewtons,
    /// Temperature, °C.
    Celsius,
    /// Minutes.
    Minutes,
    /// Notches of an adjuster.
    Notches,
    /// Turns.
    Turns,
    /// A whole number of something.
    Count,
    /// A share of a flank's half length or height.
    Share,
}

impl Amount {
    /// Its unit.
    pub const fn unit(self, units: Units) -> &'static str {
        match (self, units) {
            (Self::Length | Self::FineLength, Units::Metric) => "mm",
            (Self::Length | Self::FineLength, Units::Inch) => "in",
            (Self::HandTorque | Self::NutTorque, Units::Metric) => "N·m",
            (Self::HandTorque, Units::Inch) => "in·lb",
            (Self::NutTorque, Units::Inch) => "ft·lb",
            (Self::Degrees, _) => "°",
            (Self::Kilonewtons, _) => "kN",
            (Self::Celsius, _) => "°C",
            (Self::Minutes, _) => "min",
            (Self::Notches, _) => "notches",
            (Self::Turns, _) => "turns",
            (Self::Count | Self::Share, _) => "",
        }
    }

    /// The number in the trainee's units.
    pub fn shown(self, value: f64, units: Units) -> f64 {
        match (self, units) {
            (Self::Length | Self::FineLength, Units::Inch) => inches(value),
            (Self::HandTorque, Units::Inch) => inch_pounds(value),
            (Self::NutTorque, Units::Inch) => foot_pounds(value),
            _ => value,
        }
    }

    /// The number of the core for one in the trainee's units.
    pub fn of_shown(self, shown: f64, units: Units) -> f64 {
        match (self, units) {
            (Self::Length | Self::FineLength, Units::Inch) => millimetres(shown),
            (Self::HandTorque, Units::Inch) => shown * NM_PER_INCH_POUND,
            (Self::NutTorque, Units::Inch) => shown * NM_PER_FOOT_POUND,
            _ => shown,
        }
    }

    const fn decimals(self, units: Units) -> usize {
        match (self, units) {
            (Self::Length | Self::HandTorque, Units::Metric) | (Self::Share, _) => 2,
            (Self::Length, Units::Inch) | (Self::FineLength, Units::Metric) => 3,
            (Self::FineLength, Units::Inch) => 4,
            (Self::HandTorque, Units::Inch) | (Self::Kilonewtons, _) => 1,
            _ => 0,
        }
    }

    /// Only the digits.
    pub fn digits(self, value: f64, units: Units) -> String {
        let shown = self.shown(value, units);
        let decimals = match self {
            // As many as it needs, but no noise.
            Self::Degrees | Self::Turns | Self::Notches | Self::Minutes if (shown - shown.round()).abs() > 0.05 => 1,
            _ => self.decimals(units),
        };
        number(shown, decimals)
    }

    /// Digits and unit.
    pub fn text(self, value: f64, units: Units) -> String {
        let unit = self.unit(units);
        let join = if unit.is_empty() || self == Self::Degrees {
            ""
        } else {
            "\u{a0}"
        };
        let digits = self.digits(value, units);
        let one = matches!(digits.as_str(), "1" | "\u{2212}1");
        let unit = match self {
            Self::Notches if one => "notch",
            Self::Turns if one => unit.trim_end_matches('s'),
            _ => unit,
        };
        format!("{digits}{join}{unit}")
    }

    /// What was typed, in the core's units: point or comma, any minus sign.
    ///
    /// # Errors
    /// What is wrong with it, in a sentence.
    pub fn read(self, typed: &str, units: Units) -> Result<f64, String> {
        let plain = typed.trim().replace(',', ".").replace('\u{2212}', "-");
        if plain.is_empty() {
            return Err("A number is missing.".to_owned());
        }
        let value: f64 = plain
            .parse()
            .ok()
            .filter(|v: &f64| v.is_finite())
            .ok_or_else(|| format!("“{}” is no number.", typed.trim()))?;
        if self == Self::Count && (value < 0.0 || (value - value.round()).abs() > 1.0e-9) {
            return Err("A whole number is wanted.".to_owned());
        }
        Ok(self.of_shown(value, units))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_written_is_read_again() {
        for units in [Units::Metric, Units::Inch] {
            for (amount, value) in [
                (Amount::Length, 0.17),
                (Amount::HandTorque, 2.05),
                (Amount::NutTorque, 217.0),
                (Amount::Degrees, -7.5),
            ] {
                let read = amount.read(&amount.digits(value, units), units).expect("a number");
                let graduation = amount.of_shown(1.0, units).abs();
                assert!((read - value).abs() < graduation, "{amount:?} {units:?}: {read}");
            }
        }
        assert_eq!(Amount::Length.read("0,15", Units::Metric), Ok(0.15), "a comma");
        assert_eq!(
            Amount::Degrees.read("\u{2212}3", Units::Metric),
            Ok(-3.0),
            "a true minus"
        );
        assert!(Amount::Count.read("1.5", Units::Metric).is_err(), "no half teeth");
        assert!(Amount::Count.read("", Units::Metric).is_err(), "nothing typed");
        assert!(Amount::Length.read("NaN", Units::Metric).is_err(), "no number");
    }
}
