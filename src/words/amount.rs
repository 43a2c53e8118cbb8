//! Numbers that a trainee types and reads, each in the unit of its kind.

use super::say;
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
    /// Its unit alone; empty for a number without one.
    pub fn unit(self, units: Units) -> String {
        match (self, units) {
            (Self::Length | Self::FineLength, Units::Metric) => say!("amount-unit-millimeters"),
            (Self::Length | Self::FineLength, Units::Inch) => say!("amount-unit-inches"),
            (Self::HandTorque | Self::NutTorque, Units::Metric) => say!("amount-unit-newton-meters"),
            (Self::HandTorque, Units::Inch) => say!("amount-unit-inch-pounds"),
            (Self::NutTorque, Units::Inch) => say!("amount-unit-foot-pounds"),
            (Self::Degrees, _) => say!("amount-unit-degrees"),
            (Self::Kilonewtons, _) => say!("amount-unit-kilonewtons"),
            (Self::Celsius, _) => say!("amount-unit-celsius"),
            (Self::Minutes, _) => say!("amount-unit-minutes"),
            (Self::Notches, _) => say!("amount-unit-notches"),
            (Self::Turns, _) => say!("amount-unit-turns"),
            (Self::Count | Self::Share, _) => String::new(),
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
        let digits = self.digits(value, units);
        match (self, units) {
            (Self::Length | Self::FineLength, Units::Metric) => say!("amount-millimeters", digits = digits),
            (Self::Length | Self::FineLength, Units::Inch) => say!("amount-inches", digits = digits),
            (Self::HandTorque | Self::NutTorque, Units::Metric) => say!("amount-newton-meters", digits = digits),
            (Self::HandTorque, Units::Inch) => say!("amount-inch-pounds", digits = digits),
            (Self::NutTorque, Units::Inch) => say!("amount-foot-pounds", digits = digits),
            (Self::Degrees, _) => say!("amount-degrees", digits = digits),
            (Self::Kilonewtons, _) => say!("amount-kilonewtons", digits = digits),
            (Self::Celsius, _) => say!("amount-celsius", digits = digits),
            (Self::Minutes, _) => say!("amount-minutes", digits = digits),
            (Self::Notches, _) => say!("amount-notches", count = as_shown(&digits), digits = digits),
            (Self::Turns, _) => say!("amount-turns", count = as_shown(&digits), digits = digits),
            (Self::Count | Self::Share, _) => digits,
        }
    }

    /// What was typed, in the core's units: point or comma, any minus sign.
    ///
    /// # Errors
    /// What is wrong with it, in a sentence.
    pub fn read(self, typed: &str, units: Units) -> Result<f64, String> {
        let plain = typed.trim().replace(',', ".").replace('\u{2212}', "-");
        if plain.is_empty() {
            return Err(say!("amount-empty"));
        }
        let value: f64 = plain
            .parse()
            .ok()
            .filter(|v: &f64| v.is_finite())
            .ok_or_else(|| say!("amount-not-a-number", typed = typed.trim()))?;
        if self == Self::Count && (value < 0.0 || (value - value.round()).abs() > 1.0e-9) {
            return Err(say!("amount-not-whole", typed = typed.trim()));
        }
        Ok(self.of_shown(value, units))
    }
}

/// The number that digits show, which is what a plural goes by.
fn as_shown(digits: &str) -> f64 {
    digits.replace('\u{2212}', "-").parse().unwrap_or(0.0)
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

    #[test]
    fn units_follow_their_numbers() {
        for (amount, value, text) in [
            (Amount::Notches, 1.0, "1\u{a0}notch"),
            (Amount::Notches, -1.0, "\u{2212}1\u{a0}notch"),
            (Amount::Notches, 1.5, "1.5\u{a0}notches"),
            (Amount::Notches, 0.99, "1\u{a0}notch"),
            (Amount::Turns, 12.0, "12\u{a0}turns"),
            (Amount::Turns, 1.0, "1\u{a0}turn"),
            (Amount::Degrees, 7.5, "7.5°"),
            (Amount::Share, 0.25, "0.25"),
        ] {
            assert_eq!(amount.text(value, Units::Metric), text);
        }
        assert_eq!(Amount::NutTorque.text(217.0, Units::Inch), "160\u{a0}ft·lb");
    }
}
