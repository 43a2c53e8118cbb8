//! What the list of operations tells of each and of its fields. A new operation does not compile before it has its line here,
//! and a test finds a field without one.

use super::say;
use crate::bench::OperationKind;

/// What an operation does.
pub fn operation(kind: OperationKind) -> String {
    match kind {
        OperationKind::Measure => say!("operations-measure"),
        OperationKind::CompareNumbers => say!("operations-compare-numbers"),
        OperationKind::TakeApart => say!("operations-take-apart"),
        OperationKind::FitShims => say!("operations-fit-shims"),
        OperationKind::RemoveShims => say!("operations-remove-shims"),
        OperationKind::Press => say!("operations-press"),
        OperationKind::PullOff => say!("operations-pull-off"),
        OperationKind::FitSetUpBearings => say!("operations-fit-set-up-bearings"),
        OperationKind::RemoveSetUpBearings => say!("operations-remove-set-up-bearings"),
        OperationKind::FitSpacer => say!("operations-fit-spacer"),
        OperationKind::RemoveSpacer => say!("operations-remove-spacer"),
        OperationKind::InsertPinion => say!("operations-insert-pinion"),
        OperationKind::RemovePinion => say!("operations-remove-pinion"),
        OperationKind::FitSeal => say!("operations-fit-seal"),
        OperationKind::RemoveSeal => say!("operations-remove-seal"),
        OperationKind::FitNut => say!("operations-fit-nut"),
        OperationKind::RemoveNut => say!("operations-remove-nut"),
        OperationKind::TightenNut => say!("operations-tighten-nut"),
        OperationKind::TurnNut => say!("operations-turn-nut"),
        OperationKind::BoltCartridge => say!("operations-bolt-cartridge"),
        OperationKind::UnboltCartridge => say!("operations-unbolt-cartridge"),
        OperationKind::HeatWheel => say!("operations-heat-wheel"),
        OperationKind::Wait => say!("operations-wait"),
        OperationKind::FitWheel => say!("operations-fit-wheel"),
        OperationKind::RemoveWheel => say!("operations-remove-wheel"),
        OperationKind::TightenRingBolts => say!("operations-tighten-ring-bolts"),
        OperationKind::SetCarrierIn => say!("operations-set-carrier-in"),
        OperationKind::LiftCarrierOut => say!("operations-lift-carrier-out"),
        OperationKind::SpreadCase => say!("operations-spread-case"),
        OperationKind::ReleaseSpreader => say!("operations-release-spreader"),
        OperationKind::FitCaps => say!("operations-fit-caps"),
        OperationKind::TightenCaps => say!("operations-tighten-caps"),
        OperationKind::LoosenCaps => say!("operations-loosen-caps"),
        OperationKind::RemoveCaps => say!("operations-remove-caps"),
        OperationKind::TurnAdjuster => say!("operations-turn-adjuster"),
        OperationKind::FitLock => say!("operations-fit-lock"),
        OperationKind::RemoveLock => say!("operations-remove-lock"),
        OperationKind::Turn => say!("operations-turn"),
        OperationKind::Push => say!("operations-push"),
        OperationKind::Clean => say!("operations-clean"),
        OperationKind::BrushPaste => say!("operations-brush-paste"),
        OperationKind::Roll => say!("operations-roll"),
        OperationKind::Replace => say!("operations-replace"),
        OperationKind::Note => say!("operations-note"),
        OperationKind::Predict => say!("operations-predict"),
        OperationKind::JudgePlate => say!("operations-judge-plate"),
        OperationKind::Hint => say!("operations-hint"),
        OperationKind::Condemn => say!("operations-condemn"),
        OperationKind::Finish => say!("operations-finish"),
    }
}

/// What a field of an operation takes; none where the operation has no such field.
pub fn field(kind: OperationKind, field: &str) -> Option<String> {
    Some(match kind {
        OperationKind::Measure => match field {
            "what" => say!("operations-measure-what"),
            "instrument" => say!("operations-measure-instrument"),
            "set_up_again" => say!("operations-measure-set-up-again"),
            "stem" => say!("operations-measure-stem"),
            _ => return None,
        },
        OperationKind::TakeApart => match field {
            "to" => say!("operations-take-apart-to"),
            "precautions" => say!("operations-precautions"),
            _ => return None,
        },
        OperationKind::FitShims => match field {
            "place" => say!("operations-fit-shims-place"),
            "pieces" => say!("operations-fit-shims-pieces"),
            _ => return None,
        },
        OperationKind::RemoveShims => match field {
            "place" => say!("operations-remove-shims-place"),
            _ => return None,
        },
        OperationKind::Press => match field {
            "ring" => say!("operations-press-ring"),
            "force_kn" => say!("operations-press-force-kn"),
            "precautions" => say!("operations-precautions"),
            _ => return None,
        },
        OperationKind::PullOff => match field {
            "ring" => say!("operations-pull-off-ring"),
            "precautions" => say!("operations-precautions"),
            _ => return None,
        },
        OperationKind::FitSpacer => match field {
            "spacer" => say!("operations-fit-spacer-spacer"),
            "new" => say!("operations-fit-spacer-new"),
            _ => return None,
        },
        OperationKind::FitNut => match field {
            "new" => say!("operations-fit-nut-new"),
            _ => return None,
        },
        OperationKind::RemoveNut => match field {
            "precautions" => say!("operations-precautions"),
            _ => return None,
        },
        OperationKind::TightenNut => match field {
            "torque_nm" => say!("operations-tighten-nut-torque-nm"),
            "wrench" => say!("operations-tighten-nut-wrench"),
            "precautions" => say!("operations-precautions"),
            _ => return None,
        },
        OperationKind::TurnNut => match field {
            "angle_deg" => say!("operations-turn-nut-angle-deg"),
            "wrench" => say!("operations-turn-nut-wrench"),
            "precautions" => say!("operations-precautions"),
            _ => return None,
        },
        OperationKind::HeatWheel => match field {
            "to_c" => say!("operations-heat-wheel-to-c"),
            "precautions" => say!("operations-precautions"),
            _ => return None,
        },
        OperationKind::Wait => match field {
            "minutes" => say!("operations-wait-minutes"),
            _ => return None,
        },
        OperationKind::FitWheel => match field {
            "crosswise" => say!("operations-fit-wheel-crosswise"),
            "precautions" => say!("operations-precautions"),
            _ => return None,
        },
        OperationKind::TightenRingBolts => match field {
            "thread_lock" => say!("operations-tighten-ring-bolts-thread-lock"),
            _ => return None,
        },
        OperationKind::SetCarrierIn => match field {
            "marks_out_teeth" => say!("operations-set-carrier-in-marks-out-teeth"),
            "precautions" => say!("operations-precautions"),
            _ => return None,
        },
        OperationKind::LiftCarrierOut => match field {
            "precautions" => say!("operations-precautions"),
            _ => return None,
        },
        OperationKind::SpreadCase => match field {
            "by_mm" => say!("operations-spread-case-by-mm"),
            _ => return None,
        },
        OperationKind::FitCaps => match field {
            "as_marked" => say!("operations-fit-caps-as-marked"),
            _ => return None,
        },
        OperationKind::TightenCaps => match field {
            "to" => say!("operations-tighten-caps-to"),
            _ => return None,
        },
        OperationKind::TurnAdjuster => match field {
            "side" => say!("operations-turn-adjuster-side"),
            "notches" => say!("operations-turn-adjuster-notches"),
            _ => return None,
        },
        OperationKind::FitLock => match field {
            "side" => say!("operations-fit-lock-side"),
            _ => return None,
        },
        OperationKind::RemoveLock => match field {
            "side" => say!("operations-remove-lock-side"),
            _ => return None,
        },
        OperationKind::Turn => match field {
            "what" => say!("operations-turn-what"),
            "turns" => say!("operations-turn-turns"),
            _ => return None,
        },
        OperationKind::Push => match field {
            "what" => say!("operations-push-what"),
            "toward" => say!("operations-push-toward"),
            _ => return None,
        },
        OperationKind::Clean => match field {
            "what" => say!("operations-clean-what"),
            "precautions" => say!("operations-precautions"),
            _ => return None,
        },
        OperationKind::BrushPaste => match field {
            "teeth" => say!("operations-brush-paste-teeth"),
            "film" => say!("operations-brush-paste-film"),
            _ => return None,
        },
        OperationKind::Roll => match field {
            "drag_nm" => say!("operations-roll-drag-nm"),
            "passes" => say!("operations-roll-passes"),
            _ => return None,
        },
        OperationKind::Replace => match field {
            "part" => say!("operations-replace-part"),
            _ => return None,
        },
        OperationKind::Note => match field {
            "what" => say!("operations-note-what"),
            "value" => say!("operations-note-value"),
            "record" => say!("operations-note-record"),
            "remark" => say!("operations-note-remark"),
            _ => return None,
        },
        OperationKind::Predict => match field {
            "about" => say!("operations-predict-about"),
            "chances" => say!("operations-predict-chances"),
            _ => return None,
        },
        OperationKind::JudgePlate => match field {
            "plate" => say!("operations-judge-plate-plate"),
            "chances" => say!("operations-judge-plate-chances"),
            _ => return None,
        },
        OperationKind::Hint => match field {
            "level" => say!("operations-hint-level"),
            _ => return None,
        },
        OperationKind::Condemn => match field {
            "part" => say!("operations-condemn-part"),
            "reason" => say!("operations-condemn-reason"),
            "evidence" => say!("operations-condemn-evidence"),
            _ => return None,
        },
        OperationKind::CompareNumbers
        | OperationKind::FitSetUpBearings
        | OperationKind::RemoveSetUpBearings
        | OperationKind::RemoveSpacer
        | OperationKind::InsertPinion
        | OperationKind::RemovePinion
        | OperationKind::FitSeal
        | OperationKind::RemoveSeal
        | OperationKind::BoltCartridge
        | OperationKind::UnboltCartridge
        | OperationKind::RemoveWheel
        | OperationKind::ReleaseSpreader
        | OperationKind::LoosenCaps
        | OperationKind::RemoveCaps
        | OperationKind::Finish => return None,
    })
}

#[cfg(test)]
mod tests {
    use std::collections::{BTreeMap, BTreeSet};

    use super::*;
    use crate::bench::Operation;

    /// Names of the fields of every operation, as its schema has them.
    fn fields() -> BTreeMap<String, BTreeSet<String>> {
        let schema = Operation::schema();
        let operations = schema["oneOf"].as_array().expect("all operations");
        operations
            .iter()
            .map(|operation| {
                let properties = operation["properties"].as_object().expect("fields");
                let names = properties.keys().filter(|name| *name != "do").cloned().collect();
                let name = properties["do"]["const"].as_str().expect("a name");
                (name.to_owned(), names)
            })
            .collect()
    }

    #[test]
    fn every_field_of_every_operation_has_words_and_no_other() {
        let fields = fields();
        let all: BTreeSet<&String> = fields.values().flatten().collect();
        assert_eq!(fields.len(), OperationKind::ALL.len(), "all operations");
        for kind in OperationKind::ALL {
            let own = &fields[kind.key()];
            assert!(!operation(*kind).is_empty(), "{}", kind.key());
            for name in &all {
                let words = field(*kind, name);
                assert_eq!(
                    words.is_some(),
                    own.contains(*name),
                    "{}: {name}: {words:?}",
                    kind.key()
                );
            }
        }
    }
}
