//! What only a support file can have wrong.

use super::{Own, Told};
use crate::bearing::{FrictionConstants, FrictionSeries, LengthFault, SupportProblem};
use crate::words::say;

impl Own for SupportProblem {
    fn file() -> String {
        say!("problem-file-support")
    }

    fn told(&self) -> Told {
        match self {
            Self::OfVersionTwo { key } => Told::new(
                say!("problem-support-other-version", key = *key, other = 2, own = 1),
                say!("problem-support-version-two-cure"),
            ),
            Self::OfVersionOne { row } => Told::new(
                say!(
                    "problem-support-other-version",
                    key = "friction_series",
                    other = 1,
                    own = 2
                ),
                version_one_cure(*row),
            ),
            Self::CupTooSmall { bore_mm, outside_mm } => Told::new(
                say!(
                    "problem-support-cup",
                    outside = outside_mm.to_string(),
                    bore = bore_mm.to_string()
                ),
                say!("problem-support-cup-cure"),
            ),
            Self::UnknownSeries { word } => {
                let known: Vec<&str> = FrictionSeries::ALL.iter().map(|row| row.name()).collect();
                Told::labeled(
                    say!("problem-support-series", word = word.as_str()),
                    say!("problem-support-series-label"),
                    say!("problem-support-series-cure", known = known.join(", ")),
                )
            }
            Self::OfSleeve { key } => Told::new(
                say!("problem-support-sleeve-key", key = *key),
                say!("problem-support-sleeve-key-cure"),
            ),
            Self::Length(fault) => length(*fault),
            Self::PitchTooCoarse { pitch_mm, diameter_mm } => Told::new(
                say!(
                    "problem-support-pitch",
                    pitch = pitch_mm.to_string(),
                    diameter = diameter_mm.to_string()
                ),
                say!("problem-support-pitch-cure"),
            ),
            Self::FaceInsideThread { face_mm, diameter_mm } => Told::new(
                say!(
                    "problem-support-face",
                    face = face_mm.to_string(),
                    diameter = diameter_mm.to_string()
                ),
                say!("problem-support-face-cure"),
            ),
            Self::ThickerWhenHot {
                at_40_mm2_s,
                at_100_mm2_s,
            } => Told::labeled(
                say!(
                    "problem-support-oil",
                    cool = at_40_mm2_s.to_string(),
                    hot = at_100_mm2_s.to_string()
                ),
                say!("problem-support-oil-label"),
                say!("problem-support-oil-cure"),
            ),
            Self::TailNotBeyondHead { tail_mm, head_mm } => Told::new(
                say!(
                    "problem-support-tail",
                    tail = tail_mm.to_string(),
                    head = head_mm.to_string()
                ),
                say!("problem-support-tail-cure"),
            ),
            Self::PilotNotBeforeHead { pilot_mm, head_mm } => Told::new(
                say!(
                    "problem-support-pilot",
                    pilot = pilot_mm.to_string(),
                    head = head_mm.to_string()
                ),
                say!("problem-support-pilot-cure"),
            ),
        }
    }
}

/// How a file becomes one of version 2.
fn version_one_cure(row: Option<FrictionSeries>) -> String {
    let Some(row) = row else {
        return say!("problem-support-version-one-cure");
    };
    let FrictionConstants { r1, r2, s1, s2 } = row.constants();
    let [r1, r2, s1, s2] = [
        format!("{r1:e}"),
        format!("{r2:?}"),
        format!("{s1:?}"),
        format!("{s2:?}"),
    ];
    if row.is_steep() {
        say!(
            "problem-support-version-one-cure-steep",
            r1 = r1,
            r2 = r2,
            s1 = s1,
            s2 = s2
        )
    } else {
        say!(
            "problem-support-version-one-cure-row",
            r1 = r1,
            r2 = r2,
            s1 = s1,
            s2 = s2
        )
    }
}

/// A spacer whose length does not belong to that of the bearings.
pub fn length(fault: LengthFault) -> Told {
    match fault {
        LengthFault::TooLong {
            free_length_mm,
            zero_preload_length_mm,
            longest_mm,
            sleeve,
        } => {
            let by = format!("{:.3}", free_length_mm - zero_preload_length_mm);
            let zero = zero_preload_length_mm.to_string();
            Told::new(
                if sleeve {
                    say!("problem-spacer-too-long-sleeve", by = by, zero = zero)
                } else {
                    say!("problem-spacer-too-long-solid", by = by, zero = zero)
                },
                say!("problem-spacer-too-long-cure", longest = format!("{longest_mm:.3}")),
            )
        }
        LengthFault::TooShort {
            free_length_mm,
            zero_preload_length_mm,
            shortest_mm: _,
        } => Told::new(
            say!(
                "problem-spacer-too-short",
                by = format!("{:.3}", zero_preload_length_mm - free_length_mm),
                zero = zero_preload_length_mm.to_string()
            ),
            say!("problem-spacer-too-short-cure"),
        ),
    }
}
