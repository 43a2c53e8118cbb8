//! The hash of a state: two attempts are alike exactly when these are.

use super::ledger::text_bits;
use super::measurand::Measurand;
use super::state::{Bench, Paste};

impl Bench {
    /// BLAKE3 over the bits of the whole state in a fixed order, as hexadecimal.
    pub fn state_hash(&self) -> String {
        let mut hasher = blake3::Hasher::new();
        let mut sink = |bits: u64| {
            hasher.update(&bits.to_le_bytes());
        };
        self.bits(&mut sink);
        hasher.finalize().to_hex().to_string()
    }

    /// Hands every number of the state on as bits, in a fixed order.
    fn bits(&self, sink: &mut dyn FnMut(u64)) {
        let Self {
            setting,
            truth,
            assembly,
            // Follows from truth and assembly.
            built: _,
            packs,
            rings_on,
            set_up_bearings,
            spacer_on,
            old_sleeve,
            nut_used,
            bolts_used,
            bolts_warm,
            bolts_locked,
            threads_clean,
            wheel_seat_clean,
            wheel_c,
            wheel_scrap,
            paste,
            ledger,
            records,
            notes,
            predictions,
            judgements,
            plates_judged,
            hints,
            uses,
            brushings,
            tightenings,
            nut_steps,
            nut_friction_times,
            // Follows from the placement.
            tight_at: _,
            operations,
            finished,
        } = self;
        sink(setting.seed);
        truth.bits(sink);
        assembly.bits(sink);
        packs.bits(sink);
        for flag in rings_on.iter().chain([
            set_up_bearings,
            spacer_on,
            nut_used,
            bolts_used,
            bolts_warm,
            bolts_locked,
            threads_clean,
            wheel_seat_clean,
            wheel_scrap,
            finished,
        ]) {
            sink(u64::from(*flag));
        }
        sink(old_sleeve.map_or(u64::MAX, |m| m.plastic_shortening_mm.to_bits()));
        sink(wheel_c.to_bits());
        sink(u64::from(paste.is_some()));
        if let Some(paste) = paste {
            paste.bits(sink);
        }
        ledger.bits(sink);
        for length in [
            records.len(),
            notes.len(),
            predictions.len(),
            judgements.len(),
            plates_judged.len(),
            hints.len(),
        ] {
            sink(length as u64);
        }
        for record in records {
            sink(u64::from(record.number));
            sink(u64::from(record.operation));
            measurand_bits(record.what, sink);
            text_bits(&record.instrument, sink);
            sink(record.readings.len() as u64);
            sink(u64::from(record.behind.number()));
            sink(u64::from(record.stale));
            for reading in &record.readings {
                sink(reading.value.map_or(u64::MAX, f64::to_bits));
            }
        }
        self.sheet_bits(sink);
        for (name, usage) in uses {
            text_bits(name, sink);
            text_bits(usage.set_up_for, sink);
            sink(u64::from(usage.readings));
            sink(u64::from(usage.set_ups));
        }
        sink(u64::from(*brushings));
        sink(*tightenings);
        sink(*nut_steps);
        sink(nut_friction_times.to_bits());
        sink(u64::from(*operations));
    }
}

impl Bench {
    /// Everything that was written and said.
    fn sheet_bits(&self, sink: &mut dyn FnMut(u64)) {
        for note in &self.notes {
            sink(u64::from(note.operation));
            measurand_bits(note.what, sink);
            sink(note.value.to_bits());
            text_bits(&note.remark, sink);
            sink(u64::from(note.stale));
        }
        for prediction in &self.predictions {
            sink(u64::from(prediction.operation));
            sink(prediction.about as u64);
            for chance in prediction.chances {
                sink(chance.to_bits());
            }
        }
        for judgement in &self.judgements {
            sink(u64::from(judgement.operation));
            sink(judgement.part as u64);
            text_bits(&judgement.reason, sink);
            sink(judgement.evidence.len() as u64);
            for record in &judgement.evidence {
                sink(u64::from(*record));
            }
        }
        for judged in &self.plates_judged {
            sink(u64::from(judged.operation));
            sink(u64::from(judged.plate));
            for chance in judged.chances {
                sink(chance.to_bits());
            }
        }
        for (operation, level) in &self.hints {
            sink(u64::from(*operation));
            sink(u64::from(*level));
        }
    }
}

impl Paste {
    fn bits(&self, sink: &mut dyn FnMut(u64)) {
        sink(self.teeth.len() as u64);
        for tooth in &self.teeth {
            sink(u64::from(*tooth));
        }
        sink(self.film as u64);
        sink(u64::from(self.brushing));
        if let Some(rolled) = self.rolled {
            sink(rolled.drag_nm.to_bits());
            sink(u64::from(rolled.passes));
            for n in [
                rolled.placement.pinion_axial_mm,
                rolled.placement.wheel_axial_mm,
                rolled.placement.offset_mm,
                rolled.placement.shaft_angle_rad,
            ] {
                sink(n.to_bits());
            }
        }
    }
}

fn measurand_bits(what: Measurand, sink: &mut dyn FnMut(u64)) {
    text_bits(what.name(), sink);
    sink(match what {
        Measurand::Lash { tooth: number }
        | Measurand::ShimPiece { piece: number }
        | Measurand::Plate { plate: number } => u64::from(number),
        Measurand::ShimPack { place } => place as u64,
        Measurand::SeatGap { ring } => ring as u64,
        _ => 0,
    });
}
