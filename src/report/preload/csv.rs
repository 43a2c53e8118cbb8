//! A table as comma-separated values.

use crate::words;

use super::case::Preload;

/// Under the note as a comment: plain numbers with a full stop, one row a line.
pub(crate) fn csv(rows: &[Preload]) -> String {
    let mut lines = vec![
        format!("# {}", words::simulated()),
        "spacer_length_mm,nut_torque_nm,nut_past_touching_deg,clamp_n,spacer_n,preload_n,play_um,spacer_loaded_length_mm,\
         pinion_shift_um,rolling_torque_nm,breakaway_nm,rolling_new_nm,rolling_run_in_nm"
            .to_owned(),
    ];
    for row in rows {
        let s = &row.state;
        let values = [
            row.conditions.spacer_mm,
            row.conditions.nut_torque_nm,
            row.nut_past_touching_deg(),
            s.clamp_n,
            s.spacer_n,
            s.preload_n,
            1.0e3 * s.play_mm,
            s.spacer_loaded_length_mm,
            1.0e3 * s.pinion_shift_mm,
            row.rolling.total_nm,
            row.breakaway.total_nm,
            row.rolling_new_nm,
            row.rolling_run_in_nm,
        ];
        lines.push(values.map(|v| v.to_string()).join(","));
    }
    lines.join("\n")
}
