//! What is written and said: numbers compared, notes, predictions, hints, verdicts.

use super::done::{Done, Shown};
use crate::bench::aspect::Aspects;
use crate::bench::choices::Predicted;
use crate::bench::measurand::Measurand;
use crate::bench::notice::Notice;
use crate::bench::part::Part;
use crate::bench::plate::PlateJudged;
use crate::bench::reading::ReadingPart;
use crate::bench::refusal::{Refusal, need};
use crate::bench::sheet::{Judgement, Note, Prediction, Sheet};
use crate::bench::state::Bench;
use crate::bench::tools::Tool;

impl Sheet {
    pub(super) fn judge_plate(&mut self, judged: PlateJudged, plates: usize) -> Result<Done, Refusal> {
        need(
            usize::try_from(judged.plate).is_ok_and(|p| p < plates),
            Refusal::NoSuchPlate,
        )?;
        self.plates_judged.push(judged);
        Ok(Done::plain())
    }

    pub(super) fn write(&mut self, note: Note) -> Result<Done, Refusal> {
        self.need_records(note.record.as_slice())?;
        self.notes.push(note);
        Ok(Done::plain())
    }

    pub(super) fn condemn(
        &mut self,
        operation: u32,
        part: Part,
        reason: &str,
        evidence: &[u32],
    ) -> Result<Done, Refusal> {
        need(!evidence.is_empty(), Refusal::NoEvidence)?;
        self.need_records(evidence)?;
        self.judgements.push(Judgement {
            operation,
            part,
            reason: reason.to_owned(),
            evidence: evidence.to_vec(),
        });
        Ok(Done::plain())
    }

    /// Whether all these records are there.
    fn need_records(&self, numbers: &[u32]) -> Result<(), Refusal> {
        numbers
            .iter()
            .try_for_each(|&record| need(self.has_record(record), Refusal::NoSuchRecord { record }))
    }
}

impl Bench {
    pub(super) fn compare_numbers(&self) -> Result<Done, Refusal> {
        need(!self.carrier.carrier_in, Refusal::CarrierCoversPinion)?;
        let (pair, mark_mm) = (&self.truth.pair, self.truth.mark_etched_mm);
        let (pinion, ring_gear) = (pair.pinion_number, pair.wheel_number);
        let what = Measurand::MatchNumbers {};
        Ok(Done {
            noticed: vec![
                Notice::NumbersEtched { pinion, ring_gear },
                Notice::MarkEtched { mark_mm },
            ],
            ..Done::showing(Shown {
                what,
                instrument: Tool::EYE.to_owned(),
                values: vec![
                    (ReadingPart::PinionNumber, Some(f64::from(pinion))),
                    (ReadingPart::RingGearNumber, Some(f64::from(ring_gear))),
                    (ReadingPart::PinionMark, Some(mark_mm)),
                ],
                behind: Aspects::behind(what, &self.setting.axle, self.carrier.carrier_in),
            })
        })
    }

    pub(super) fn note(
        &mut self,
        what: Measurand,
        value: f64,
        record: Option<u32>,
        remark: &str,
    ) -> Result<Done, Refusal> {
        let behind = Aspects::behind(what, &self.setting.axle, self.carrier.carrier_in);
        self.sheet.write(Note {
            operation: self.operations,
            what,
            value,
            record,
            remark: remark.to_owned(),
            stale: false,
            behind,
        })
    }

    pub(super) fn predict(&mut self, about: Predicted, chances: [f64; 3]) -> Done {
        self.sheet.predictions.push(Prediction {
            operation: self.operations,
            about,
            chances,
            placement: self.built.placement,
        });
        Done::plain()
    }
}
