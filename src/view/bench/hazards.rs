//! What to mind with a piece of work: the hazards that the bench knows of, and those that it does not judge.

use serde_json::{Value, json};

use super::work::{Field, Hazard};
use crate::bench::{Bench, Caution, Precaution};
use crate::words::{answer, bench as words};

/// Hazards of the operation with any option of its first choice.
pub(super) fn hazards(bench: &Bench, template: &Value, fields: &[Field]) -> Vec<Hazard> {
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
    let mut cautions: Vec<Caution> = Vec::new();
    for operation in tried.into_iter().filter_map(|v| serde_json::from_value(v).ok()) {
        for caution in bench.cautions(&operation) {
            if !cautions.contains(&caution) {
                cautions.push(caution);
            }
        }
    }
    let washing = template.get("do") == Some(&json!("clean"))
        && ["bearings", "threads"]
            .iter()
            .any(|what| template.get("what") == Some(&json!(what)));
    // However the nut stands: a few degrees on it is at full torque.
    if template.get("do") == Some(&json!("turn_nut")) && !cautions.contains(&Caution::NutReaction) {
        cautions.push(Caution::NutReaction);
    }
    if washing {
        // Eyes are in danger from the solvent here, and not from steel.
        cautions.retain(|caution| *caution != Caution::Splinters);
    }
    let solvent = washing.then_some((words::solvent(), Precaution::EyeProtection));
    let others = cautions
        .into_iter()
        .map(|caution| (answer::caution(caution), caution.precaution()));
    solvent
        .into_iter()
        .chain(others)
        .map(|(text, precaution)| Hazard {
            text,
            precaution: words::precaution(precaution),
            value: json!(precaution),
        })
        .collect()
}
