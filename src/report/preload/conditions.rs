//! Under which a support is looked at, in one line.

use crate::quantity::{foot_pounds, inches, number};
use crate::words::say;

use super::case::{Over, Preload};

/// The conditions in one line.
pub(super) fn conditions_line(case: &Preload, of_row: Option<Over>, default_torque: bool) -> String {
    let c = &case.conditions;
    let mut parts = Vec::new();
    if of_row != Some(Over::Spacer) {
        parts.push(say!(
            "preload-spacer",
            mm = number(c.spacer_mm, 3),
            inches = number(inches(c.spacer_mm), 4)
        ));
    }
    if of_row != Some(Over::NutTorque) {
        let (nm, ft_lb) = (number(c.nut_torque_nm, 1), number(foot_pounds(c.nut_torque_nm), 0));
        parts.push(if default_torque {
            say!("preload-nut-usual", nm = nm, ft_lb = ft_lb)
        } else {
            say!("preload-nut", nm = nm, ft_lb = ft_lb)
        });
    }
    parts.push(say!("preload-turned", rpm = number(c.turn_rpm, 0)));
    parts.push(say!(
        "preload-temperature",
        celsius = number(c.temperature_c, 0),
        viscosity = number(case.running.viscosity_mm2_s, 0)
    ));
    parts.join(", ")
}
