//! From what is true to what an instrument on the bench shows.

use super::consequence::{Refusal, refuse};
use super::instrument::{self, Coat, PressGauge, Roll, Use};
use super::measurand::Measurand;
use super::measure::TrueValue;
use super::operation::Brushing;
use super::state::Bench;
use super::tools::{Instrument, StemChoice};
use crate::contact::{self, Contact, Film, FlankContact, Pattern, Route};

/// Names and values that an instrument showed.
pub(super) type Shown = Vec<(String, Option<f64>)>;

/// How often an instrument was used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub(super) struct Usage {
    /// Readings taken.
    pub(super) readings: u32,
    /// Times that it was set up.
    pub(super) set_ups: u32,
    /// What it was set up for.
    pub(super) set_up_for: &'static str,
}

impl Bench {
    /// Counts one use of an instrument. It is set up again for another quantity, or where asked to.
    pub(super) fn use_tool(
        &mut self,
        name: &str,
        what: Measurand,
        set_up_again: bool,
    ) -> Result<(Instrument, Usage), Refusal> {
        let Some(tool) = self.setting.tools.iter().find(|t| t.name == name) else {
            let names: Vec<&str> = self.setting.tools.iter().map(|t| t.name.as_str()).collect();
            return refuse(format!(
                "There is no `{name}` on the bench. There are: {}.",
                names.join(", ")
            ));
        };
        let instrument = tool.instrument;
        let usage = self.uses.entry(name.to_owned()).or_default();
        if set_up_again || usage.set_ups == 0 || usage.set_up_for != what.name() {
            usage.set_ups = usage.set_ups.saturating_add(1);
        }
        usage.readings = usage.readings.saturating_add(1);
        usage.set_up_for = what.name();
        Ok((instrument, *usage))
    }

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
    ) -> Result<Shown, Refusal> {
        let using = self.using(name, usage);
        let one = |of: &str, value: f64| vec![(of.to_owned(), Some(value))];
        Ok(match (value, tool) {
            (TrueValue::Play { transverse_mm }, Instrument::Dial(dial)) => {
                let gears = self.setting.axle.gears();
                let travel = stem
                    .stem()
                    .travel_mm(*transverse_mm, gears.outer_pitch_radius_mm, gears);
                one("lash", dial.reads_mm(travel, false, using))
            }
            // Over a whole turn the needle goes both ways.
            (TrueValue::Swing { total_mm }, Instrument::Dial(dial)) => {
                // The two ends of its swing are read, whichever comes first.
                one("total indicator reading", dial.reads_mm(*total_mm, true, using).abs())
            }
            (TrueValue::Travel { mm }, Instrument::Dial(dial)) => one("travel", dial.reads_mm(*mm, false, using)),
            (TrueValue::Thickness { mm }, Instrument::Micrometer(micrometer)) => {
                one("thickness", micrometer.reads_mm(*mm, using))
            }
            (TrueValue::Depth { mm }, Instrument::DepthGauge(gauge)) => one("distance", gauge.reads_mm(*mm, using)),
            (TrueValue::Gap { mm }, Instrument::Feeler(feeler)) => {
                vec![("thickest leaf that goes in".to_owned(), feeler.goes_in_mm(*mm, using))]
            }
            (TrueValue::Torque { start_nm, running_nm }, Instrument::Wrench(wrench)) => {
                let reading = wrench
                    .rolling(*start_nm, *running_nm, using)
                    .map_err(|e| Refusal(sentence(&e.to_string())))?;
                vec![
                    ("breakaway torque".to_owned(), Some(reading.start_nm)),
                    ("rolling torque".to_owned(), Some(reading.running_nm)),
                ]
            }
            (TrueValue::Temperature { c }, Instrument::Thermometer(thermometer)) => {
                one("temperature", thermometer.reads_c(*c, using))
            }
            (TrueValue::Print { film, placement }, Instrument::Eye) => {
                both_flanks(&self.contact(*placement, film.film_um), film, using)
            }
            (TrueValue::Plate { plate }, Instrument::Eye) => {
                let Some(plate) = self.setting.plates.get(*plate) else {
                    return refuse("There is no such plate beside the bench.");
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
                return refuse(format!("A {} does not show {}.", tool.words(), what.words()));
            }
        })
    }

    /// True torque that a wrench applies when set to this, N m.
    pub(super) fn applied_torque_nm(&mut self, set_nm: f64, name: &str) -> Result<f64, Refusal> {
        let (tool, usage) = self.use_tool(name, Measurand::NutTorque {}, false)?;
        let Instrument::Wrench(wrench) = tool else {
            return refuse(format!("A {} does not tighten a nut.", tool.words()));
        };
        wrench
            .applies_nm(set_nm, self.using(name, usage))
            .map_err(|e| Refusal(sentence(&e.to_string())))
    }

    /// What a wrench shows of a true torque, N m; none where its pointer shows nothing.
    pub(super) fn shown_torque_nm(&mut self, true_nm: f64, name: &str) -> Result<Option<f64>, Refusal> {
        let (tool, usage) = self.use_tool(name, Measurand::NutTorque {}, false)?;
        let Instrument::Wrench(wrench) = tool else {
            return refuse(format!("A {} does not turn a nut.", tool.words()));
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
        shown_n / gauge.reads_n(1.0, self.using("press_gauge", usage))
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
fn both_flanks(contact: &Contact, film: &instrument::Rolled, using: Use<'_>) -> Shown {
    let mut all = vec![("clearness".to_owned(), Some(hundredths(film.clearness)))];
    for (flank, contact, half) in [("drive", &contact.drive, 0), ("coast", &contact.coast, 1)] {
        let look = Use {
            reading: using.reading.saturating_mul(2).saturating_add(half),
            ..using
        };
        all.extend(seen(flank, contact, film, look));
    }
    all
}

/// What an eye makes of the print on one flank: nothing of one that is too faint.
fn seen(flank: &str, contact: &FlankContact, film: &instrument::Rolled, using: Use<'_>) -> Shown {
    let clear = film.clearness >= instrument::Rolled::LEAST_CLEAR;
    let print = contact.pattern.as_ref().filter(|_| clear);
    let [along, up] = film.eye_error(using);
    let value = |of: fn(&Pattern) -> f64, error: f64| print.map(|p| hundredths(of(p) + error));
    [
        ("centroid along the tooth", value(|p| p.centroid[0], along)),
        ("centroid up the tooth", value(|p| p.centroid[1], up)),
        ("toe end", value(|p| p.toe, along)),
        ("heel end", value(|p| p.heel, along)),
        ("root end", value(|p| p.root, up)),
        ("top end", value(|p| p.top, up)),
        ("area", value(|p| p.area_fraction, 0.0)),
    ]
    .into_iter()
    .map(|(of, value)| (format!("{flank} {of}"), value))
    .collect()
}

/// No eye tells less than a hundredth of half a tooth.
fn hundredths(value: f64) -> f64 {
    (100.0 * value).round() / 100.0
}

/// As a sentence: large at the start, a stop at the end.
fn sentence(text: &str) -> String {
    let mut letters = text.chars();
    let first = letters.next().map(|c| c.to_uppercase().to_string()).unwrap_or_default();
    format!("{first}{}.", letters.as_str().trim_end_matches('.'))
}
