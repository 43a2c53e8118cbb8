//! Exercises without an axle to hand over: plates, packs, values.

use super::person::Technician;
use super::print::{asks, middles};
use crate::bench::{Measurand, Operation, ShimPlace, StemChoice, Tool};
use crate::exercise::scenario::AskedFor;
use crate::exercise::score::PLATE_TOLERANCE_MM;
use crate::numerics::math;

/// How far a place read off a plate may be wrong, mm: what an eye and a chart leave.
const READ_WITHIN_MM: f64 = 0.015;
/// Times that a plate is looked at.
const LOOKS: usize = 4;

impl Technician {
    /// Looks at every plate and says what its pinion needs, with the chart of its set.
    pub(super) fn judge_plates(&mut self) {
        let plates = self.hands.sees().plates;
        for (plate, gears) in (0_u32..).zip(plates) {
            let charts = if gears == self.hands.drawing().design().name {
                [self.chart.drive, self.chart.coast]
            } else {
                self.chart.other
            };
            let looks: Vec<f64> = (0..LOOKS)
                .filter_map(|_| {
                    let answer = self.hands.does(Operation::Measure {
                        what: Measurand::Plate { plate },
                        instrument: Tool::EYE.to_owned(),
                        set_up_again: false,
                        stem: StemChoice::default(),
                    });
                    Some(asks(charts, middles(&answer)?).0)
                })
                .collect();
            let deeper = looks.iter().sum::<f64>() / looks.len().max(1) as f64;
            let sure = |over: f64| 1.0 / (1.0 + math::exp(-over / READ_WITHIN_MM));
            let down = sure(deeper - PLATE_TOLERANCE_MM);
            let up = sure(-deeper - PLATE_TOLERANCE_MM);
            let chances = [down, (1.0 - down - up).max(0.0), up];
            let sum: f64 = chances.iter().sum();
            self.hands.does(Operation::JudgePlate {
                plate,
                chances: chances.map(|c| c / sum),
            });
        }
    }

    /// Makes up the pack that is asked for, of pieces that were measured, and measures it.
    pub(super) fn make_pack(&mut self) {
        let Some(wanted) = self.hands.card().pack else {
            return;
        };
        let place = wanted.place;
        self.hands.clean_shims();
        self.measure_pieces(place);
        let mut aim_mm = wanted.size_mm;
        for _ in 0..3 {
            let most = usize::try_from(wanted.pieces).unwrap_or(1);
            let pieces = self.drawer.choose(place, aim_mm, most);
            self.hands.does(Operation::FitShims { place, pieces });
            let read = self.measure_pack(place);
            let Some(read) = read else { return };
            let off = read - wanted.size_mm;
            if off.abs() < 0.006 {
                break;
            }
            aim_mm -= off;
        }
    }

    fn measure_pack(&mut self, place: ShimPlace) -> Option<f64> {
        let read: Vec<f64> = (0..2)
            .filter_map(|_| self.hands.reads(Measurand::ShimPack { place }, "micrometer"))
            .collect();
        (!read.is_empty()).then(|| read.iter().sum::<f64>() / read.len() as f64)
    }

    /// Reads what the card asks for, several times, and writes the mean down.
    pub(super) fn read_what_is_asked(&mut self) {
        let asked = self.hands.card().asked.clone();
        if asked.is_empty() {
            return;
        }
        self.hands.settle();
        for asked in asked {
            let stem = self.hands.card().targets.stem;
            let (what, value) = match asked.what {
                AskedFor::Lash => {
                    let what = Measurand::Lash { tooth: 0 };
                    (what, self.mean(what, "lever_dial", stem))
                }
                AskedFor::RollingTorque => (Measurand::RollingTorque {}, self.torque_by_several()),
                AskedFor::PinionDepth => {
                    let what = Measurand::PinionDepth {};
                    (what, self.mean(what, "depth_gauge", stem))
                }
                AskedFor::PinionEndPlay => {
                    let what = Measurand::PinionEndPlay {};
                    (what, self.mean(what, "lever_dial", stem))
                }
                AskedFor::WheelFaceRunout => {
                    let what = Measurand::WheelFaceRunout {};
                    (what, self.mean(what, "lever_dial", stem))
                }
            };
            if let Some(value) = value {
                self.hands.does(Operation::Note {
                    what,
                    value,
                    record: self.hands.record_of(what),
                    remark: String::new(),
                });
            }
        }
    }

    fn mean(&mut self, what: Measurand, instrument: &str, stem: StemChoice) -> Option<f64> {
        let read: Vec<f64> = (0..8)
            .filter_map(|_| self.hands.reads_with(what, instrument, stem))
            .collect();
        (!read.is_empty()).then(|| read.iter().sum::<f64>() / read.len() as f64)
    }

    /// Rotating torque by every instrument that shows it: the middle one, so that a false one does not lead.
    fn torque_by_several(&mut self) -> Option<f64> {
        let mut means = Vec::new();
        for wrench in ["small_dial_wrench", "cord_and_scale", "small_beam_wrench"] {
            if let Some(mean) = self.mean(Measurand::RollingTorque {}, wrench, StemChoice::default()) {
                means.push(mean);
            }
        }
        means.sort_by(f64::total_cmp);
        means.get(means.len() / 2).copied()
    }
}
