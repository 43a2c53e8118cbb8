//! Paste, and what follows from a print.

use super::chart::FlankChart;
use super::person::{ReadPrint, Technician};
use crate::bench::{Answer, Brushing, Measurand, Operation, Predicted, StemChoice, Tool};
use crate::exercise::judgement::{FLANK_WEIGHTS, PRINT_FULL};
use crate::gear::Side as Flank;

/// Drag and passes that leave a clear print.
const DRAG_NM: f64 = 20.0;
const PASSES: u32 = 5;
/// Times that a print is looked at.
const LOOKS: usize = 4;
/// Change of a print's height that can be told.
const TOLD: f64 = 0.06;

/// Middle of the print on drive and coast, flank coordinates.
pub(in crate::exercise) type Middles = [[f64; 2]; 2];

/// Middles of both prints in an answer; none where one does not show.
pub(in crate::exercise) fn middles(answer: &Answer) -> Option<Middles> {
    Some([answer.centroid(Flank::Drive)?, answer.centroid(Flank::Coast)?])
}

/// How much deeper both prints ask to go by a chart, mm, and how unlike the approved ones they would still be then.
pub(in crate::exercise) fn asks(charts: [FlankChart; 2], middles: Middles) -> (f64, f64) {
    let (mut slopes, mut distances) = (0.0, 0.0);
    let each = || {
        charts
            .iter()
            .zip(middles)
            .zip(FLANK_WEIGHTS)
            .flat_map(|((chart, middle), weight)| {
                [0, 1].map(|k: usize| {
                    let slope = chart.deeper[k] / PRINT_FULL[k];
                    let off = (middle[k] - chart.approved[k]) / PRINT_FULL[k];
                    (weight, slope, off)
                })
            })
    };
    for (weight, slope, off) in each() {
        slopes += weight * slope * slope;
        distances += weight * slope * off;
    }
    let deeper = if slopes > 1e-9 { -distances / slopes } else { 0.0 };
    let left = each()
        .map(|(weight, slope, off)| {
            let after = off + slope * deeper;
            weight * after * after
        })
        .sum();
    (deeper, left)
}

impl Technician {
    /// Paints, rolls, looks, and writes the height on the drive flank down. `deeper_mm` says where the shims stand. None
    /// where no print shows.
    pub(super) fn look_at_print(&mut self, deeper_mm: f64) -> Option<ReadPrint> {
        let teeth = self.hands.drawing().axle().gears().wheel_teeth;
        self.hands.does(Operation::BrushPaste {
            teeth: (0..3).map(|more| (self.tight_tooth + more) % teeth).collect(),
            film: Brushing::Usual,
        });
        let rolled = self.hands.does(Operation::Roll {
            drag_nm: DRAG_NM,
            passes: PASSES,
        });
        if !rolled.done {
            return None;
        }
        let looks: Vec<(u32, Middles)> = (0..LOOKS)
            .filter_map(|_| {
                let answer = self.hands.does(Operation::Measure {
                    what: Measurand::Print {},
                    instrument: Tool::EYE.to_owned(),
                    set_up_again: false,
                    stem: StemChoice::default(),
                });
                Some((answer.record()?, middles(&answer)?))
            })
            .collect();
        let (record, _) = *looks.first()?;
        let count = looks.len() as f64;
        let mut mean: Middles = [[0.0; 2]; 2];
        for (_, middles) in &looks {
            for (sum, one) in mean.iter_mut().flatten().zip(middles.iter().flatten()) {
                *sum += one / count;
            }
        }
        self.hands.does(Operation::Note {
            what: Measurand::Print {},
            value: mean[0][1],
            record: Some(record),
            remark: String::new(),
        });
        let (asks_mm, left) = asks([self.chart.drive, self.chart.coast], mean);
        let print = ReadPrint {
            record,
            deeper_mm,
            asks_mm,
            left,
        };
        self.prints.push(print);
        Some(print)
    }

    /// Says what a change of depth will do to the print.
    pub(super) fn predict_print(&mut self, deeper_mm: f64) {
        for (about, chart) in [
            (Predicted::DriveHeight, self.chart.drive),
            (Predicted::CoastHeight, self.chart.coast),
        ] {
            let change = deeper_mm * chart.deeper[1];
            let chances = if change > TOLD {
                [0.03, 0.07, 0.90]
            } else if change < -TOLD {
                [0.90, 0.07, 0.03]
            } else if change > 0.0 {
                [0.05, 0.45, 0.50]
            } else {
                [0.50, 0.45, 0.05]
            };
            self.predict(about, chances);
        }
    }
}
