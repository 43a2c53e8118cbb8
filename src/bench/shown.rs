//! From what is true to what an instrument on the bench shows.

use super::choices::Brushing;
use super::instrument::{self, Coat, PressGauge, Roll, Use};
use super::measurand::Measurand;
use super::measure::TrueValue;
use super::reading::{PatternPart, ReadingPart};
use super::refusal::Refusal;
use super::shop::Usage;
use super::state::Bench;
use super::tools::{Instrument, StemChoice, Tool};
use crate::contact::{self, Contact, Film, FlankContact, Pattern, Route};
use crate::gear::Side as Flank;

/// Values that an instrument showed.
type Values = Vec<(ReadingPart, Option<f64>)>;

impl Bench {
    /// One use as the instruments know it.
    fn using<'a>(&self, name: &'a str, usage: Usage) -> Use<'a> {
        Use {
            seed: self.setting.seed,
            instrument: name,
            set_up: usage.set_ups.saturating_sub(1),
            reading: usage.readings.saturating_sub(1),
        }
    }

    /// What an instrument shows of a true value.
    pub(super) fn shown(
        &self,
        value: &TrueValue,
        what: Measurand,
        name: &str,
        (tool, usage): (Instrument, Usage),
        stem: StemChoice,
    ) -> Result<Values, Refusal> {
        let using = self.using(name, usage);
        let one = |part: ReadingPart, value: f64| vec![(part, Some(value))];
        Ok(match (value, tool) {
            (TrueValue::Play { transverse_mm }, Instrument::Dial(dial)) => {
                let gears = self.setting.axle.gears();
                let travel = stem
                    .stem()
                    .travel_mm(*transverse_mm, gears.outer_pitch_radius_mm, gears);
                one(ReadingPart::Lash, dial.reads_mm(travel, false, using))
            }
            // Over a whole turn the needle goes both ways.
            (TrueValue::Swing { total_mm }, Instrument::Dial(dial)) => {
                // The two ends of its swing are read, whichever comes first.
                one(
                    ReadingPart::TotalIndicatorReading,
                    dial.reads_mm(*total_mm, true, using).abs(),
                )
            }
            (TrueValue::Travel { mm }, Instrument::Dial(dial)) => {
                one(ReadingPart::Travel, dial.reads_mm(*mm, false, using))
            }
            (TrueValue::Thickness { mm }, Instrument::Micrometer(micrometer)) => {
                one(ReadingPart::Thickness, micrometer.reads_mm(*mm, using))
            }
            (TrueValue::Depth { mm }, Instrument::DepthGauge(gauge)) => {
                one(ReadingPart::Distance, gauge.reads_mm(*mm, using))
            }
            (TrueValue::Gap { mm }, Instrument::Feeler(feeler)) => {
                vec![(ReadingPart::ThickestLeaf, feeler.goes_in_mm(*mm, using))]
            }
            (TrueValue::Torque { start_nm, running_nm }, Instrument::Wrench(wrench)) => {
                let reading = wrench.rolling(*start_nm, *running_nm, using)?;
                vec![
                    (ReadingPart::Breakaway, Some(reading.start_nm)),
                    (ReadingPart::Rolling, Some(reading.running_nm)),
                ]
            }
            (TrueValue::Temperature { c }, Instrument::Thermometer(thermometer)) => {
                one(ReadingPart::Temperature, thermometer.reads_c(*c, using))
            }
            (TrueValue::Print { film, placement }, Instrument::Eye) => {
                both_flanks(&self.contact(*placement, film.film_um), film, using)
            }
            (TrueValue::Plate { plate }, Instrument::Eye) => {
                let Some(plate) = self.setting.plates.get(*plate) else {
                    return Err(Refusal::NoSuchPlate);
                };
                let film = instrument::Rolled::PLATE;
                let contact = contact::solve(
                    &plate.pair,
                    plate.placement,
                    Film {
                        thickness_um: film.film_um,
                    },
                    Route::Exact,
                );
                both_flanks(&contact, &film, using)
            }
            (_, tool) => {
                return Err(Refusal::DoesNotShow {
                    instrument: tool.kind(),
                    what: what.kind(),
                });
            }
        })
    }

    /// True torque that a wrench applies when set to this, N m.
    pub(super) fn applied_torque_nm(&mut self, set_nm: f64, name: &str) -> Result<f64, Refusal> {
        let (tool, usage) = self
            .shop
            .use_tool(&self.setting, name, Measurand::NutTorque {}, false)?;
        let Instrument::Wrench(wrench) = tool else {
            return Err(Refusal::DoesNotTighten {
                instrument: tool.kind(),
            });
        };
        Ok(wrench.applies_nm(set_nm, self.using(name, usage))?)
    }

    /// What a wrench shows of a true torque, N m; none where its pointer shows nothing.
    pub(super) fn shown_torque_nm(&mut self, true_nm: f64, name: &str) -> Result<Option<f64>, Refusal> {
        let (tool, usage) = self
            .shop
            .use_tool(&self.setting, name, Measurand::NutTorque {}, false)?;
        let Instrument::Wrench(wrench) = tool else {
            return Err(Refusal::DoesNotTurn {
                instrument: tool.kind(),
            });
        };
        Ok(wrench.reads_nm(true_nm, self.using(name, usage)).ok())
    }

    /// True force of the press when its gauge shows this, N.
    pub(super) fn pressed_n(&self, shown_n: f64) -> f64 {
        let gauge = PressGauge {
            graduation_n: 0.0,
            ..PressGauge::USUAL
        };
        let usage = Usage::default();
        shown_n / gauge.reads_n(1.0, self.using(Tool::PRESS_GAUGE, usage))
    }

    /// What brushing and rolling left on the teeth.
    pub(super) fn rolled_film(&self, film: Brushing, drag_nm: f64, passes: u32, brushing: u32) -> instrument::Rolled {
        let coat = match film {
            Brushing::Thin => Coat::Thin,
            Brushing::Usual => Coat::Usual,
            Brushing::Thick => Coat::Thick,
        };
        let usage = Usage {
            readings: brushing,
            set_ups: brushing,
            set_up_for: "",
        };
        instrument::Paste::USUAL.rolled(coat, Roll { drag_nm, passes }, self.using("brush", usage))
    }
}

/// What an eye makes of a print: both flanks are looked at, each for itself.
fn both_flanks(contact: &Contact, film: &instrument::Rolled, using: Use<'_>) -> Values {
    let mut all = vec![(ReadingPart::Clearness, Some(hundredths(film.clearness)))];
    for (flank, half) in [(Flank::Drive, 0), (Flank::Coast, 1)] {
        let look = Use {
            reading: using.reading.saturating_mul(2).saturating_add(half),
            ..using
        };
        all.extend(seen(flank, contact.flank(flank), film, look));
    }
    all
}

/// What an eye makes of the print on one flank: nothing of one that is too faint.
fn seen(flank: Flank, contact: &FlankContact, film: &instrument::Rolled, using: Use<'_>) -> Values {
    let clear = film.clearness >= instrument::Rolled::LEAST_CLEAR;
    let print = contact.pattern.as_ref().filter(|_| clear);
    let [along, up] = film.eye_error(using);
    let value = |part: PatternPart, print: &Pattern| match part {
        PatternPart::CentroidAlong => print.centroid[0] + along,
        PatternPart::CentroidUp => print.centroid[1] + up,
        PatternPart::Toe => print.toe + along,
        PatternPart::Heel => print.heel + along,
        PatternPart::Root => print.root + up,
        PatternPart::Top => print.top + up,
        PatternPart::Area => print.area_fraction,
    };
    PatternPart::ALL
        .into_iter()
        .map(|part| {
            let shown = print.map(|print| hundredths(value(part, print)));
            (ReadingPart::Pattern(flank, part), shown)
        })
        .collect()
}

/// No eye tells less than a hundredth of half a tooth.
fn hundredths(value: f64) -> f64 {
    (100.0 * value).round() / 100.0
}
