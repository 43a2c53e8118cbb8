//! Measuring: what is true of a quantity in the present state, and what the instrument makes of it.

use super::answer::{Reading, Record};
use super::aspect::Aspects;
use super::consequence::{Done, Refusal, need, refuse};
use super::instrument::Rolled;
use super::measurand::Measurand;
use super::operation::{Ring, ShimPlace};
use super::shown::Shown;
use super::state::Bench;
use super::tools::StemChoice;
use crate::axle::{Turning, resistance, side_resistance_nm};
use crate::bearing::SeatGap;
use crate::contact::{self, Contact, FAST_REACH, Film, Placement, Route};
use crate::numerics::random::Stream;

/// What is true of a quantity: what an instrument works on.
#[derive(Debug, Clone, PartialEq)]
pub enum TrueValue {
    /// Transverse play of the wheel at its outer pitch radius, pinion held, mm.
    Play {
        /// mm.
        transverse_mm: f64,
    },
    /// Total indicator reading over a turn, mm.
    Swing {
        /// mm.
        total_mm: f64,
    },
    /// How far something travels under a dial, mm.
    Travel {
        /// mm.
        mm: f64,
    },
    /// A thickness between two faces, mm.
    Thickness {
        /// mm.
        mm: f64,
    },
    /// From the wheel's axis to the end of the pinion's head, mm.
    Depth {
        /// mm.
        mm: f64,
    },
    /// A gap that feelers go into or not, mm.
    Gap {
        /// mm.
        mm: f64,
    },
    /// Torque that starts something and that which keeps it turning now and once settled, N m.
    Torque {
        /// N m.
        start_nm: f64,
        /// N m.
        running_nm: f64,
    },
    /// Temperature, °C.
    Temperature {
        /// °C.
        c: f64,
    },
    /// What paste shows on both flanks.
    Print {
        /// What brushing and rolling left of the paste.
        film: Rolled,
        /// Where the gears stood while they were rolled.
        placement: Placement,
    },
    /// What a painted plate shows.
    Plate {
        /// Its number.
        plate: usize,
    },
}

/// A reading without the last bits that counting graduations leaves, and without a negative zero.
fn tidy(value: f64) -> f64 {
    (1.0e6 * value).round() / 1.0e6 + 0.0
}

/// Turns of the pinion that one reading of torque takes.
const READING_TURNS: f64 = 1.0;
/// Lash beyond this, mm, is told from none by the fast route, which is good to a tenth of it wherever prints reach an edge.
const PLAINLY_MM: f64 = 0.02;
/// Points over a pitch from which the play at one of them is taken.
const ROLL_POINTS: u16 = 24;

impl Bench {
    pub(super) fn measure(
        &mut self,
        what: Measurand,
        instrument: &str,
        set_up_again: bool,
        stem: StemChoice,
    ) -> Result<Done, Refusal> {
        self.settle_again()?;
        let tool = self.use_tool(instrument, what, set_up_again)?;
        let torque = matches!(what, Measurand::BreakawayTorque {} | Measurand::RollingTorque {});
        if torque && let Some(scrape) = self.scrapes() {
            return refuse(scrape);
        }
        let value = self.true_value(what, tool.1.readings)?;
        let shown = self.shown(&value, what, instrument, tool, stem)?;
        // A torque is read with the shaft turning.
        if torque {
            self.assembly.pinion_turns += READING_TURNS;
            if self.built.placement.is_some() {
                self.assembly.carrier_turns += READING_TURNS / self.setting.axle.ratio();
            }
        }
        Ok(Done {
            record: Some(self.record(what, instrument, shown)),
            ..Done::default()
        })
    }

    /// A record of what an instrument showed.
    pub(super) fn record(&self, what: Measurand, instrument: &str, shown: Shown) -> Record {
        let number = u32::try_from(self.records.len()).unwrap_or(u32::MAX).saturating_add(1);
        let readings = shown
            .into_iter()
            .map(|(name, value)| Reading {
                record: number,
                name,
                value: value.map(tidy),
                unit: what.unit().to_owned(),
            })
            .collect();
        Record {
            number,
            operation: self.operations,
            what,
            instrument: instrument.to_owned(),
            readings,
            stale: false,
            behind: Aspects::behind(what, &self.setting.axle, &self.assembly),
        }
    }

    /// What is true of a quantity now.
    fn true_value(&self, what: Measurand, use_count: u32) -> Result<TrueValue, Refusal> {
        let (axle, truth, built) = (&self.setting.axle, &self.truth, &self.built);
        let no_mesh = || Refusal("The gears are not in mesh.".to_owned());
        let no_pinion = || Refusal("There is no pinion held in its bearings.".to_owned());
        let no_carrier = || Refusal("There is no carrier held in its bearings.".to_owned());
        Ok(match what {
            Measurand::Lash { tooth } => {
                self.need_teeth(&[tooth])?;
                let placement = self.placement_at_tooth(tooth).ok_or_else(no_mesh)?;
                TrueValue::Play {
                    transverse_mm: self.play_mm(placement, tooth, use_count)?,
                }
            }
            Measurand::WheelFaceRunout {} => {
                need(self.assembly.wheel.is_some(), "There is no ring gear on the carrier.")?;
                need(
                    built.side.is_some(),
                    "The carrier has to turn in its bearings for that.",
                )?;
                // The dial stands at the outer edge of the back; the swing is stated at the teeth.
                let gears = axle.gears();
                let lever = gears.outer_pitch_radius_mm / gears.wheel_mean_radius_mm;
                TrueValue::Swing {
                    total_mm: 2.0 * lever * built.runout.wheel_face_amplitude_mm(),
                }
            }
            Measurand::WheelRadialRunout {} => {
                need(self.assembly.wheel.is_some(), "There is no ring gear on the carrier.")?;
                need(
                    built.side.is_some(),
                    "The carrier has to turn in its bearings for that.",
                )?;
                TrueValue::Swing {
                    total_mm: 2.0 * built.runout.wheel_radial_amplitude_mm(),
                }
            }
            Measurand::PinionRunout {} => {
                built.pinion.ok_or_else(no_pinion)?;
                TrueValue::Swing {
                    total_mm: 2.0 * built.runout.pinion_radial_amplitude_mm(),
                }
            }
            Measurand::NutTorque {} => return refuse("The nut's torque is read while the wrench turns it."),
            Measurand::BreakawayTorque {} | Measurand::RollingTorque {} => {
                let torque = |turning| {
                    resistance(axle, truth, built, turning)
                        .map(|r| r.total_nm)
                        .ok_or_else(no_pinion)
                };
                TrueValue::Torque {
                    start_nm: torque(Turning::STARTED)?,
                    running_nm: torque(Turning::BY_HAND)?,
                }
            }
            Measurand::CarrierTorque {} => {
                built.side.ok_or_else(no_carrier)?;
                need(
                    built.placement.is_none(),
                    "The pinion turns with it: that torque is felt at the pinion nut.",
                )?;
                TrueValue::Torque {
                    start_nm: side_resistance_nm(axle, truth, built, Turning::STARTED),
                    running_nm: side_resistance_nm(axle, truth, built, Turning::BY_HAND),
                }
            }
            Measurand::PinionDepth {} => {
                need(
                    !self.assembly.carrier_in,
                    "The arbor lies in the carrier's bores: lift the carrier out first.",
                )?;
                let pinion = built.pinion.ok_or_else(no_pinion)?;
                match pinion.head_distance_mm {
                    Some(mm) => TrueValue::Depth { mm },
                    None => return refuse("The cartridge is not bolted to the case."),
                }
            }
            Measurand::PinionEndPlay {} => TrueValue::Travel {
                mm: built.pinion.ok_or_else(no_pinion)?.play_mm,
            },
            Measurand::CarrierEndPlay {} => TrueValue::Travel {
                mm: built.side.ok_or_else(no_carrier)?.play_mm,
            },
            Measurand::CaseSpread {} => TrueValue::Travel {
                mm: self.assembly.spreader_mm + built.side.map_or(0.0, |s| s.case_spread_mm),
            },
            Measurand::ShimPiece { .. }
            | Measurand::ShimPack { .. }
            | Measurand::SeatGap { .. }
            | Measurand::WheelTemperature {}
            | Measurand::Plate { .. }
            | Measurand::MatchNumbers {} => return self.true_value_of_part(what),
            Measurand::Print {} => {
                let Some(paste) = &self.paste else {
                    return refuse("No paste is on the teeth.");
                };
                let Some(rolled) = paste.rolled else {
                    return refuse("The painted teeth have not been rolled through the mesh.");
                };
                TrueValue::Print {
                    film: self.rolled_film(paste.film, rolled.drag_nm, rolled.passes, paste.brushing),
                    placement: rolled.placement,
                }
            }
        })
    }

    /// What is true of a part that lies on the bench or shows itself.
    fn true_value_of_part(&self, what: Measurand) -> Result<TrueValue, Refusal> {
        Ok(match what {
            Measurand::ShimPiece { piece } => {
                let index = usize::try_from(piece).unwrap_or(usize::MAX);
                need(index < self.setting.kit.len(), "The kit has no such piece.")?;
                need(
                    !ShimPlace::ALL.into_iter().any(|p| self.packs.at(p).contains(&index)),
                    "That piece is fitted.",
                )?;
                TrueValue::Thickness {
                    mm: self.packs.height_mm(&self.setting.kit, index),
                }
            }
            Measurand::ShimPack { place } => TrueValue::Thickness {
                mm: self.packs.thickness_mm(&self.setting.kit, place),
            },
            Measurand::SeatGap { ring } => {
                need(self.ring_on(ring), "That ring is not on.")?;
                let seating = &self.assembly.seating;
                let SeatGap { gap_mm, .. } = match ring {
                    Ring::HeadCone => seating.head_cone,
                    Ring::HeadCup => seating.head_cup,
                    Ring::TailCup => seating.tail_cup,
                };
                TrueValue::Gap { mm: gap_mm }
            }
            Measurand::WheelTemperature {} => TrueValue::Temperature { c: self.wheel_c },
            Measurand::Plate { plate } => {
                let plate = usize::try_from(plate).unwrap_or(usize::MAX);
                need(
                    plate < self.setting.plates.len(),
                    "There is no such plate beside the bench.",
                )?;
                TrueValue::Plate { plate }
            }
            Measurand::MatchNumbers {} => return refuse("Numbers and marks are read by comparing them."),
            _ => return refuse("That is no quantity of a part."),
        })
    }

    /// Where the gears stand with this tooth of the wheel in mesh.
    pub(super) fn placement_at_tooth(&self, tooth: u32) -> Option<Placement> {
        let gears = self.setting.axle.gears();
        let turn = 2.0 * std::f64::consts::PI * f64::from(tooth);
        self.built.placement_at(
            turn / f64::from(gears.wheel_teeth),
            turn / f64::from(gears.pinion_teeth),
        )
    }

    /// Lash with this tooth in mesh, transverse at the outer pitch radius, mean over a pitch, mm; none out of mesh. For
    /// scoring: it is the truth.
    pub fn mean_play_mm(&self, tooth: u32) -> Option<f64> {
        let placement = self.placement_at_tooth(tooth)?;
        let curve = contact::lash_mm(&self.setting.pair, placement, Route::Exact, usize::from(ROLL_POINTS))?;
        let count = curve.len() as f64;
        let mean = curve.iter().map(|(_, play)| play).sum::<f64>() / count;
        Some(mean + self.built.timing_lash_mm(usize::try_from(tooth).unwrap_or(0)))
    }

    /// Lash where this tooth happens to stand, mm: nobody stops twice at the same place of a pitch.
    fn play_mm(&self, placement: Placement, tooth: u32, use_count: u32) -> Result<f64, Refusal> {
        let curve = contact::lash_mm(&self.setting.pair, placement, Route::Exact, usize::from(ROLL_POINTS))
            .ok_or_else(|| Refusal("The teeth do not touch at all.".to_owned()))?;
        let mut stream = Stream::new(self.setting.seed, &format!("where tooth {tooth} stopped, {use_count}"));
        let at = usize::try_from(stream.index(u64::from(ROLL_POINTS))).unwrap_or(0);
        let (_, play_mm) = curve.get(at).copied().unwrap_or((0.0, 0.0));
        let play_mm = play_mm + self.built.timing_lash_mm(usize::try_from(tooth).unwrap_or(0));
        need(
            play_mm > 0.0,
            "The gears are tight: there is no lash, and they do not turn.",
        )?;
        Ok(play_mm)
    }

    /// Why the gears do not turn, when they do not: teeth in each other's way. None out of mesh.
    pub(super) fn scrapes(&mut self) -> Option<String> {
        let placement = self.built.placement?;
        let bits = [
            placement.pinion_axial_mm,
            placement.wheel_axial_mm,
            placement.offset_mm,
            placement.shaft_angle_rad,
        ]
        .map(f64::to_bits);
        let tight = match self.tight_at {
            Some((at, tight)) if at == bits => tight,
            _ => {
                let tight = self.is_tight(placement);
                self.tight_at = Some((bits, tight));
                tight
            }
        };
        tight.then(|| "The gears do not turn: there is no lash, or the teeth do not meet as gears.".to_owned())
    }

    /// Whether lash is gone somewhere over a pitch, or the teeth do not meet as gears. The fast route decides where it is
    /// plain, the exact one where it is close.
    fn is_tight(&self, placement: Placement) -> bool {
        let least_mm = |route| {
            let curve = contact::lash_mm(&self.setting.pair, placement, route, 8)?;
            curve.into_iter().map(|(_, play_mm)| play_mm).reduce(f64::min)
        };
        let fast = FAST_REACH.holds(&placement).then(|| least_mm(Route::Fast)).flatten();
        match fast {
            Some(play_mm) if play_mm.abs() > PLAINLY_MM => play_mm < 0.0,
            _ => least_mm(Route::Exact).is_none_or(|play_mm| play_mm <= 0.0),
        }
    }

    /// Contact of both flanks under a film: what a print is read from.
    pub(super) fn contact(&self, placement: Placement, film_um: f64) -> Contact {
        contact::solve(
            &self.setting.pair,
            placement,
            Film { thickness_um: film_um },
            Route::Exact,
        )
    }
}
