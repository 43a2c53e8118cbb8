//! What is written and said: numbers compared, predictions, hints, verdicts, hand-over.

use super::{Done, Refusal, need, refuse};
use crate::bench::measurand::Measurand;
use crate::bench::operation::Predicted;
use crate::bench::part::Part;
use crate::bench::plate::PlateJudged;
use crate::bench::state::{Bench, Judgement, Prediction};

impl Bench {
    pub(super) fn compare_numbers(&mut self) -> Result<Done, Refusal> {
        need(
            !self.assembly.carrier_in,
            "The carrier covers the pinion's head: lift it out first.",
        )?;
        let (pair, mark_mm) = (&self.truth.pair, self.truth.mark_etched_mm);
        let numbers = [
            ("number on the pinion", f64::from(pair.pinion_number)),
            ("number on the ring gear", f64::from(pair.wheel_number)),
            ("mark on the pinion", mark_mm),
        ];
        let shown = numbers.map(|(name, value)| (name.to_owned(), Some(value))).to_vec();
        Ok(Done {
            record: Some(self.record(Measurand::MatchNumbers {}, "eye", shown)),
            noticed: vec![
                format!(
                    "The pinion is etched {}, the ring gear {}.",
                    pair.pinion_number, pair.wheel_number
                ),
                format!("The mark on the pinion's head says {mark_mm:+.2} mm; + stands farther from the wheel axis."),
            ],
            ..Done::default()
        })
    }

    pub(super) fn judge_plate(&mut self, plate: u32, chances: [f64; 3]) -> Result<Done, Refusal> {
        let count = self.setting.plates.len();
        need(
            usize::try_from(plate).is_ok_and(|p| p < count),
            "There is no such plate beside the bench.",
        )?;
        self.plates_judged.push(PlateJudged {
            operation: self.operations,
            plate,
            chances,
        });
        Ok(Done::plain())
    }

    pub(super) fn predict(&mut self, about: Predicted, chances: [f64; 3]) -> Done {
        self.predictions.push(Prediction {
            operation: self.operations,
            about,
            chances,
            placement: self.built.placement,
        });
        Done::plain()
    }

    pub(super) fn hint(&mut self, level: u32) -> Done {
        self.hints.push((self.operations, level));
        Done::plain()
    }

    pub(super) fn condemn(&mut self, part: Part, reason: &str, evidence: &[u32]) -> Result<Done, Refusal> {
        need(
            !evidence.is_empty(),
            "A part is condemned with evidence: name the records that show it.",
        )?;
        for number in evidence {
            if !self.records.iter().any(|r| r.number == *number) {
                return refuse(format!("There is no record {number}."));
            }
        }
        self.judgements.push(Judgement {
            operation: self.operations,
            part,
            reason: reason.to_owned(),
            evidence: evidence.to_vec(),
        });
        Ok(Done::plain())
    }

    pub(super) fn finish(&mut self) -> Done {
        self.finished = true;
        Done::plain()
    }
}
