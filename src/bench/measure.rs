//! Measuring: what is true of a quantity in the present state, and whether an instrument gets at it.

use super::aspect::Aspects;
use super::choices::{Ring, ShimPlace};
use super::consequence::{Done, Shown};
use super::instrument::Rolled;
use super::measurand::Measurand;
use super::refusal::{Refusal, need};
use super::state::Bench;
use super::tools::StemChoice;
use crate::axle::{Turning, resistance, side_resistance_nm};
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
    /// Torque that would turn a nut on, N m.
    Nut {
        /// N m.
        torque_nm: f64,
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
    /// Numbers etched on both gears and the mark on the pinion's head.
    Etched {
        /// On the pinion.
        pinion: u32,
        /// On the wheel.
        wheel: u32,
        /// mm.
        mark_mm: f64,
    },
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
        let tool = self.shop.use_tool(&self.setting, instrument, what, set_up_again)?;
        self.measurable(what)?;
        let turns_pinion = matches!(what, Measurand::BreakawayTorque {} | Measurand::RollingTorque {});
        need(!(turns_pinion && self.scrapes()), Refusal::GearsDoNotTurn)?;
        let value = match what {
            Measurand::Lash { tooth } => TrueValue::Play {
                transverse_mm: self.play_mm(tooth, tool.1.readings)?,
            },
            // What is measurable has a value.
            other => self.true_value(other).ok_or(Refusal::CannotBe)?,
        };
        let values = self.shown(&value, what, instrument, tool, stem)?;
        let behind = Aspects::behind(what, &self.setting.axle, self.carrier.carrier_in);
        // A torque is read with the shaft turning.
        if turns_pinion {
            self.pinion.turns += READING_TURNS;
            if self.built.placement.is_some() {
                self.carrier.turns += READING_TURNS / self.setting.axle.ratio();
            }
        }
        Ok(Done::showing(Shown {
            what,
            instrument: instrument.to_owned(),
            values,
            behind,
        }))
    }

    /// Whether a quantity can be measured as things stand, as anybody sees: what has to be together is, and an instrument
    /// gets at it.
    pub(super) fn measurable(&self, what: Measurand) -> Result<(), Refusal> {
        let built = &self.built;
        let pinion_held = || need(built.pinion.is_some(), Refusal::PinionNotHeld);
        let carrier_held = || need(built.side.is_some(), Refusal::CarrierNotHeld);
        match what {
            Measurand::Lash { tooth } => {
                self.need_teeth(&[tooth])?;
                need(built.placement.is_some(), Refusal::NotInMesh)
            }
            Measurand::WheelFaceRunout {} | Measurand::WheelRadialRunout {} => {
                need(self.carrier.wheel.is_some(), Refusal::NoRingGear)?;
                need(built.side.is_some(), Refusal::CarrierMustTurn)
            }
            Measurand::NutTorque {} => Err(Refusal::NutTorqueReadTurning),
            Measurand::PinionRunout {}
            | Measurand::BreakawayTorque {}
            | Measurand::RollingTorque {}
            | Measurand::PinionEndPlay {} => pinion_held(),
            Measurand::CarrierTorque {} => {
                carrier_held()?;
                need(built.placement.is_none(), Refusal::PinionTurnsToo)
            }
            Measurand::PinionDepth {} => {
                need(!self.carrier.carrier_in, Refusal::ArborBlocked)?;
                pinion_held()?;
                let in_case = self.pinion.cartridge_bolted || !self.setting.axle.layout().has_cartridge();
                need(in_case, Refusal::CartridgeNotBolted)
            }
            Measurand::CarrierEndPlay {} => carrier_held(),
            Measurand::CaseSpread {} | Measurand::WheelTemperature {} | Measurand::ShimPack { .. } => Ok(()),
            Measurand::ShimPiece { piece } => {
                let index = usize::try_from(piece).unwrap_or(usize::MAX);
                need(index < self.setting.kit.len(), Refusal::NoSuchPiece)?;
                let fitted = ShimPlace::ALL
                    .into_iter()
                    .any(|p| self.shop.packs.at(p).contains(&index));
                need(!fitted, Refusal::PieceFitted)
            }
            Measurand::SeatGap { ring } => need(self.pinion.ring_on(ring), Refusal::RingNotOn { ring }),
            Measurand::Print {} => {
                let paste = self.carrier.paste.as_ref().ok_or(Refusal::NoPaste)?;
                need(paste.rolled.is_some(), Refusal::NotRolled)
            }
            Measurand::Plate { plate } => {
                let there = usize::try_from(plate).is_ok_and(|p| p < self.setting.plates.len());
                need(there, Refusal::NoSuchPlate)
            }
            Measurand::MatchNumbers {} => Err(Refusal::NumbersAreCompared),
        }
    }

    /// What is true of a quantity now, whether an instrument gets at it or not; none where what it speaks of is not together.
    /// Lash is the mean over a pitch. For instruments and scoring, never for a trainee.
    pub fn true_value(&self, what: Measurand) -> Option<TrueValue> {
        let (axle, truth, built) = (&self.setting.axle, &self.truth, &self.built);
        let gears = axle.gears();
        Some(match what {
            Measurand::Lash { tooth } => TrueValue::Play {
                transverse_mm: self.mean_play_mm(tooth)?,
            },
            Measurand::WheelFaceRunout {} => {
                self.carrier.wheel?;
                // The dial stands at the outer edge of the back; the swing is stated at the teeth.
                let lever = gears.outer_pitch_radius_mm / gears.wheel_mean_radius_mm;
                TrueValue::Swing {
                    total_mm: 2.0 * lever * built.runout.wheel_face_amplitude_mm(),
                }
            }
            Measurand::WheelRadialRunout {} => {
                self.carrier.wheel?;
                TrueValue::Swing {
                    total_mm: 2.0 * built.runout.wheel_radial_amplitude_mm(),
                }
            }
            Measurand::PinionRunout {} => {
                built.pinion?;
                TrueValue::Swing {
                    total_mm: 2.0 * built.runout.pinion_radial_amplitude_mm(),
                }
            }
            Measurand::NutTorque {} => TrueValue::Nut {
                torque_nm: self.nut_torque_nm()?,
            },
            Measurand::BreakawayTorque {} | Measurand::RollingTorque {} => {
                let torque = |turning| resistance(axle, truth, built, turning).map(|r| r.total_nm);
                TrueValue::Torque {
                    start_nm: torque(Turning::STARTED)?,
                    running_nm: torque(Turning::BY_HAND)?,
                }
            }
            Measurand::CarrierTorque {} => {
                built.side?;
                if built.placement.is_some() {
                    return None;
                }
                TrueValue::Torque {
                    start_nm: side_resistance_nm(axle, truth, built, Turning::STARTED),
                    running_nm: side_resistance_nm(axle, truth, built, Turning::BY_HAND),
                }
            }
            Measurand::PinionDepth {} => TrueValue::Depth {
                mm: built.pinion?.head_distance_mm?,
            },
            Measurand::PinionEndPlay {} => TrueValue::Travel {
                mm: built.pinion?.play_mm,
            },
            Measurand::CarrierEndPlay {} => TrueValue::Travel {
                mm: built.side?.play_mm,
            },
            Measurand::CaseSpread {} => TrueValue::Travel {
                mm: self.carrier.spreader_mm + built.side.map_or(0.0, |s| s.case_spread_mm),
            },
            Measurand::ShimPiece { piece } => {
                let index = usize::try_from(piece).ok()?;
                self.setting.kit.get(index)?;
                TrueValue::Thickness {
                    mm: self.shop.packs.height_mm(&self.setting.kit, index),
                }
            }
            Measurand::ShimPack { place } => TrueValue::Thickness {
                mm: self.shop.packs.thickness_mm(&self.setting.kit, place),
            },
            Measurand::SeatGap { ring } => {
                let seating = &self.assembly().seating;
                let gap = match ring {
                    Ring::HeadCone => seating.head_cone,
                    Ring::HeadCup => seating.head_cup,
                    Ring::TailCup => seating.tail_cup,
                };
                TrueValue::Gap { mm: gap.gap_mm }
            }
            Measurand::WheelTemperature {} => TrueValue::Temperature {
                c: self.carrier.wheel_c,
            },
            Measurand::Print {} => {
                let paste = self.carrier.paste.as_ref()?;
                let rolled = paste.rolled?;
                TrueValue::Print {
                    film: self.rolled_film(paste.film, rolled.drag_nm, rolled.passes, paste.brushing),
                    placement: rolled.placement,
                }
            }
            Measurand::Plate { plate } => {
                let plate = usize::try_from(plate).ok()?;
                self.setting.plates.get(plate)?;
                TrueValue::Plate { plate }
            }
            Measurand::MatchNumbers {} => TrueValue::Etched {
                pinion: truth.pair.pinion_number,
                wheel: truth.pair.wheel_number,
                mark_mm: truth.mark_etched_mm,
            },
        })
    }

    /// What an instrument without error would show of a quantity now, its stem laid so; none where what it speaks of is not
    /// together and for what is no single number. For scoring, never for a trainee.
    pub fn true_reading(&self, what: Measurand, stem: StemChoice) -> Option<f64> {
        let gears = self.setting.axle.gears();
        Some(match self.true_value(what)? {
            TrueValue::Play { transverse_mm } => {
                stem.stem().travel_mm(transverse_mm, gears.outer_pitch_radius_mm, gears)
            }
            TrueValue::Swing { total_mm: value }
            | TrueValue::Travel { mm: value }
            | TrueValue::Thickness { mm: value }
            | TrueValue::Depth { mm: value }
            | TrueValue::Gap { mm: value }
            | TrueValue::Nut { torque_nm: value }
            | TrueValue::Temperature { c: value } => value,
            TrueValue::Torque { start_nm, running_nm } => match what {
                Measurand::BreakawayTorque {} => start_nm,
                // Of every other quantity a torque is what keeps it turning.
                _ => running_nm,
            },
            TrueValue::Print { .. } | TrueValue::Plate { .. } | TrueValue::Etched { .. } => return None,
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
    fn play_mm(&self, tooth: u32, use_count: u32) -> Result<f64, Refusal> {
        let placement = self.placement_at_tooth(tooth).ok_or(Refusal::NotInMesh)?;
        let curve = contact::lash_mm(&self.setting.pair, placement, Route::Exact, usize::from(ROLL_POINTS))
            .ok_or(Refusal::TeethDoNotTouch)?;
        let mut stream = Stream::new(self.setting.seed, &format!("where tooth {tooth} stopped, {use_count}"));
        let at = usize::try_from(stream.index(u64::from(ROLL_POINTS))).unwrap_or(0);
        let (_, play_mm) = curve.get(at).copied().unwrap_or((0.0, 0.0));
        let play_mm = play_mm + self.built.timing_lash_mm(usize::try_from(tooth).unwrap_or(0));
        need(play_mm > 0.0, Refusal::NoLash)?;
        Ok(play_mm)
    }

    /// Whether the gears do not turn: teeth in each other's way. Not so out of mesh.
    pub(super) fn scrapes(&mut self) -> bool {
        let Some(placement) = self.built.placement else {
            return false;
        };
        let bits = [
            placement.pinion_axial_mm,
            placement.wheel_axial_mm,
            placement.offset_mm,
            placement.shaft_angle_rad,
        ]
        .map(f64::to_bits);
        match self.tight_at {
            Some((at, tight)) if at == bits => tight,
            _ => {
                let tight = self.is_tight(placement);
                self.tight_at = Some((bits, tight));
                tight
            }
        }
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
