//! From what is true to what an instrument shows.

use super::consequence::Refusal;
use super::measure::TrueValue;
use super::state::Bench;
use crate::contact::Pattern;

impl Bench {
    #[expect(clippy::unnecessary_wraps, reason = "an instrument may be the wrong one")]
    /// What an instrument shows of a true value: names and values.
    pub(super) fn shown(
        &mut self,
        value: &TrueValue,
        instrument: &str,
        uses: [u64; 2],
    ) -> Result<Vec<(String, Option<f64>)>, Refusal> {
        let _ = (instrument, uses);
        let one = |name: &str, value: f64| vec![(name.to_owned(), Some(value))];
        Ok(match value {
            TrueValue::Play { transverse_mm } => one("lash", *transverse_mm),
            TrueValue::Swing { total_mm } => one("total indicator reading", *total_mm),
            TrueValue::Length { mm } => one("length", *mm),
            TrueValue::Gap { mm } => one("gap", *mm),
            TrueValue::Torque { start_nm, running_nm } => vec![
                ("breakaway torque".to_owned(), Some(*start_nm)),
                ("rolling torque".to_owned(), Some(*running_nm)),
            ],
            TrueValue::Temperature { c } => one("temperature", *c),
            TrueValue::Print { placement, .. } => {
                let contact = self.contact(*placement, 8.0);
                let mut all = Vec::new();
                for (flank, contact) in [("drive", contact.drive), ("coast", contact.coast)] {
                    let number = |of: fn(&Pattern) -> f64| contact.pattern.as_ref().map(of);
                    for (name, value) in [
                        ("centroid along the tooth", number(|p| p.centroid[0])),
                        ("centroid up the tooth", number(|p| p.centroid[1])),
                        ("area", number(|p| p.area_fraction)),
                    ] {
                        all.push((format!("{flank} {name}"), value));
                    }
                }
                all
            }
        })
    }

    /// True torque that a wrench applies when set to this, N m.
    #[expect(
        clippy::unnecessary_wraps,
        clippy::unused_self,
        reason = "a wrench may be the wrong one, and has its own error"
    )]
    pub(super) fn applied_torque_nm(&mut self, set_nm: f64, wrench: &str) -> Result<f64, Refusal> {
        let _ = wrench;
        Ok(set_nm)
    }

    /// What a wrench shows of a true torque, N m.
    #[expect(
        clippy::unnecessary_wraps,
        clippy::unused_self,
        reason = "a wrench may be the wrong one, and has its own error"
    )]
    pub(super) fn shown_torque_nm(&mut self, true_nm: f64, wrench: &str) -> Result<f64, Refusal> {
        let _ = wrench;
        Ok(true_nm)
    }
}
