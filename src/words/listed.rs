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
    use OperationKind as Kind;

    Some(match (kind, field) {
        (Kind::Measure, "what") => say!("operations-measure-what"),
        (Kind::Measure, "instrument") => say!("operations-measure-instrument"),
        (Kind::Measure, "set_up_again") => say!("operations-measure-set-up-again"),
        (Kind::Measure, "stem") => say!("operations-measure-stem"),
        (Kind::TakeApart, "to") => say!("operations-take-apart-to"),
        (Kind::FitShims, "place") => say!("operations-fit-shims-place"),
        (Kind::FitShims, "pieces") => say!("operations-fit-shims-pieces"),
        (Kind::RemoveShims, "place") => say!("operations-remove-shims-place"),
        (Kind::Press, "ring") => say!("operations-press-ring"),
        (Kind::Press, "force_kn") => say!("operations-press-force-kn"),
        (Kind::PullOff, "ring") => say!("operations-pull-off-ring"),
        (Kind::FitSpacer, "spacer") => say!("operations-fit-spacer-spacer"),
        (Kind::FitSpacer, "new") => say!("operations-fit-spacer-new"),
        (Kind::FitNut, "new") => say!("operations-fit-nut-new"),
        (Kind::TightenNut, "torque_nm") => say!("operations-tighten-nut-torque-nm"),
        (Kind::TightenNut, "wrench") => say!("operations-tighten-nut-wrench"),
        (Kind::TurnNut, "angle_deg") => say!("operations-turn-nut-angle-deg"),
        (Kind::TurnNut, "wrench") => say!("operations-turn-nut-wrench"),
        (Kind::HeatWheel, "to_c") => say!("operations-heat-wheel-to-c"),
        (Kind::Wait, "minutes") => say!("operations-wait-minutes"),
        (Kind::FitWheel, "crosswise") => say!("operations-fit-wheel-crosswise"),
        (Kind::TightenRingBolts, "thread_lock") => say!("operations-tighten-ring-bolts-thread-lock"),
        (Kind::SetCarrierIn, "marks_out_teeth") => say!("operations-set-carrier-in-marks-out-teeth"),
        (Kind::SpreadCase, "by_mm") => say!("operations-spread-case-by-mm"),
        (Kind::FitCaps, "as_marked") => say!("operations-fit-caps-as-marked"),
        (Kind::TightenCaps, "to") => say!("operations-tighten-caps-to"),
        (Kind::TurnAdjuster, "side") => say!("operations-turn-adjuster-side"),
        (Kind::TurnAdjuster, "notches") => say!("operations-turn-adjuster-notches"),
        (Kind::FitLock, "side") => say!("operations-fit-lock-side"),
        (Kind::RemoveLock, "side") => say!("operations-remove-lock-side"),
        (Kind::Turn, "what") => say!("operations-turn-what"),
        (Kind::Turn, "turns") => say!("operations-turn-turns"),
        (Kind::Push, "what") => say!("operations-push-what"),
        (Kind::Push, "toward") => say!("operations-push-toward"),
        (Kind::Clean, "what") => say!("operations-clean-what"),
        (Kind::BrushPaste, "teeth") => say!("operations-brush-paste-teeth"),
        (Kind::BrushPaste, "film") => say!("operations-brush-paste-film"),
        (Kind::Roll, "drag_nm") => say!("operations-roll-drag-nm"),
        (Kind::Roll, "passes") => say!("operations-roll-passes"),
        (Kind::Replace, "part") => say!("operations-replace-part"),
        (Kind::Note, "what") => say!("operations-note-what"),
        (Kind::Note, "value") => say!("operations-note-value"),
        (Kind::Note, "record") => say!("operations-note-record"),
        (Kind::Note, "remark") => say!("operations-note-remark"),
        (Kind::Predict, "about") => say!("operations-predict-about"),
        (Kind::Predict, "chances") => say!("operations-predict-chances"),
        (Kind::JudgePlate, "plate") => say!("operations-judge-plate-plate"),
        (Kind::JudgePlate, "chances") => say!("operations-judge-plate-chances"),
        (Kind::Hint, "level") => say!("operations-hint-level"),
        (Kind::Condemn, "part") => say!("operations-condemn-part"),
        (Kind::Condemn, "reason") => say!("operations-condemn-reason"),
        (Kind::Condemn, "evidence") => say!("operations-condemn-evidence"),
        (
            Kind::TakeApart
            | Kind::Press
            | Kind::PullOff
            | Kind::RemoveNut
            | Kind::TightenNut
            | Kind::TurnNut
            | Kind::HeatWheel
            | Kind::FitWheel
            | Kind::SetCarrierIn
            | Kind::LiftCarrierOut
            | Kind::Clean,
            "precautions",
        ) => say!("operations-precautions"),
        _ => return None,
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
