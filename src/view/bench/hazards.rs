//! What can hurt with a piece of work: what the bench judges, with what is worn or used for it, and what only has to be known.

use serde_json::{Value, json};

use super::work::{Field, Hazard};
use crate::bench::{Bench, Caution, Hazard as Danger, Operation};
use crate::words::{self, bench::precaution};

/// Hazards of a piece of work.
#[derive(Debug, Default)]
pub(super) struct Hazards {
    /// Those that are really there, each with what meets it.
    pub(super) met: Vec<Hazard>,
    /// Those that only have to be known.
    pub(super) told: Vec<String>,
}

impl Hazards {
    /// Of the operation with any option of its first choice.
    pub(super) fn of(bench: &Bench, template: &Value, fields: &[Field]) -> Self {
        let mut tried = vec![template.clone()];
        if let Some(field) = fields.iter().find(|f| !f.options.is_empty()) {
            for option in &field.options {
                let mut other = template.clone();
                if let Some(place) = other.pointer_mut(field.at) {
                    place.clone_from(option);
                }
                tried.push(other);
            }
        }
        let mut judged: Vec<Danger> = Vec::new();
        let mut known: Vec<Danger> = Vec::new();
        let add = |to: &mut Vec<Danger>, danger: Danger| {
            if !to.contains(&danger) {
                to.push(danger);
            }
        };
        for operation in tried
            .into_iter()
            .filter_map(|v| serde_json::from_value::<Operation>(v).ok())
        {
            for caution in bench.cautions(&operation) {
                add(&mut judged, caution.hazard());
            }
            // However the nut stands: a few degrees on it is at full torque.
            if matches!(operation, Operation::TurnNut { .. }) {
                add(&mut judged, Caution::NutReaction.hazard());
            }
            for danger in operation.hazards() {
                add(&mut known, danger);
            }
        }
        // Eyes are in danger from the solvent where something is washed, and not from steel.
        if known.contains(&Danger::Solvent) && template.get("do") == Some(&json!("clean")) {
            judged.retain(|danger| *danger != Danger::Splinters);
            known.retain(|danger| *danger != Danger::Splinters);
            if template.get("what") != Some(&json!("teeth")) {
                judged.insert(0, Danger::Solvent);
            }
        }
        known.retain(|danger| !judged.contains(danger));
        let met = judged.into_iter().filter_map(|danger| {
            let meets = danger.precaution()?;
            Some(Hazard {
                text: words::hazard(danger),
                precaution: precaution(meets),
                value: json!(meets),
            })
        });
        Self {
            met: met.collect(),
            told: known.into_iter().map(words::hazard).collect(),
        }
    }
}
