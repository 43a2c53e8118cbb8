//! The pair on the stage: both solids, ready for contact, and how far the wheel can be rocked.

use std::f64::consts::PI;
use std::sync::Arc;

use nalgebra::{Rotation3, Vector3};

use crate::bench::PasteLeft;
use crate::contact::{self, FAST_REACH, Film, FilmLeft, Pair, Placement, Route};
use crate::gear::{Design, Detail, FlankPoint, GearSet, Side, Solid, SolidError};
use crate::numerics::math;
use crate::quantity::radians;
use crate::words;

/// A gear set made ready for the stage. Made once, off the thread that draws; immutable.
#[derive(Clone)]
pub struct StagePair {
    /// In its own frame: axis +z, teeth toward −z.
    pub wheel: Solid,
    /// In its own frame: axis +x.
    pub pinion: Solid,
    /// Ready for both routes.
    pub pair: Pair,
}

impl core::fmt::Debug for StagePair {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        f.debug_struct("StagePair")
            .field("name", &self.design().name)
            .finish_non_exhaustive()
    }
}

/// Two gears of the same design are the same.
impl PartialEq for StagePair {
    fn eq(&self, other: &Self) -> bool {
        self.design() == other.design()
    }
}

/// What the eye should look at, in the frame of the axle, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Scene {
    /// Middle of both gears.
    pub centre_mm: Vector3<f64>,
    /// Half the height to keep in view, for a stage at least one and a half times as wide as high.
    pub radius_mm: f64,
    /// The mean point, where the teeth meet.
    pub mesh_mm: Vector3<f64>,
    /// Height of a close look at the mesh.
    pub mesh_height_mm: f64,
    /// The topmost tooth of the ring gear, clear of the pinion.
    pub tooth_mm: Vector3<f64>,
    /// From there to an eye that sees into the tooth space, on the drive and on the coast flank: unit vectors.
    pub to_flanks: [Vector3<f64>; 2],
    /// Height of a close look at that tooth.
    pub tooth_height_mm: f64,
}

impl StagePair {
    /// Gears, solids and tables of a design.
    ///
    /// # Errors
    /// Why such gears cannot exist or cannot be drawn, as a sentence.
    pub fn new(design: &Design) -> Result<Self, String> {
        let gears = GearSet::new(design.clone()).map_err(|error| sentence(&words::error::geometry(&error).line()))?;
        let drawn =
            |solid: Result<Solid, SolidError>| solid.map_err(|error| sentence(&words::error::solid(error).line()));
        let wheel = drawn(Solid::wheel(&gears, Detail::WINDOW))?;
        let pinion = drawn(Solid::pinion(&gears, Detail::WINDOW))?;
        let pair = Pair::new(gears);
        pair.prepare_fast();
        Ok(Self { wheel, pinion, pair })
    }

    /// The design.
    pub fn design(&self) -> &Design {
        self.pair.gears().design()
    }

    /// Largest radius and end along its axis of the wheel, then of the pinion, mm.
    pub fn extents_mm(&self) -> [[f64; 2]; 2] {
        let larger = |a: f64, b: f64| if b > a { b } else { a };
        let radius = |a: f64, b: f64| (a * a + b * b).sqrt();
        let wheel = self
            .wheel
            .points_mm()
            .iter()
            .fold([0.0, f64::NEG_INFINITY], |[r, end], p| {
                [larger(r, radius(p.x, p.y)), larger(end, p.z)]
            });
        let pinion = self
            .pinion
            .points_mm()
            .iter()
            .fold([0.0, f64::NEG_INFINITY], |[r, end], p| {
                [larger(r, radius(p.y, p.z)), larger(end, p.x)]
            });
        [wheel, pinion]
    }

    /// What to look at.
    pub fn scene(&self) -> Scene {
        let [[wheel_radius_mm, wheel_back_mm], [_, shaft_end_mm]] = self.extents_mm();
        let half_width_mm = 1.1 * f64::midpoint(shaft_end_mm, wheel_radius_mm);
        // A little air round the gears, and room for what the eye sees larger because it is nearer.
        let half_height_mm = half_width_mm / 1.5;
        let wheel_half_mm = 1.1 * wheel_radius_mm;
        Scene {
            centre_mm: Vector3::new(f64::midpoint(shaft_end_mm, -wheel_radius_mm), 0.0, wheel_back_mm / 2.0),
            radius_mm: if half_height_mm > wheel_half_mm {
                half_height_mm
            } else {
                wheel_half_mm
            },
            mesh_mm: self.pair.gears().cutter().mean_point_mm,
            mesh_height_mm: 1.3 * self.design().wheel_face_width_mm,
            tooth_mm: self.tooth_mm(),
            to_flanks: Side::BOTH.map(|side| self.to_flank(side)),
            tooth_height_mm: 2.0 * self.design().wheel_face_width_mm,
        }
    }

    /// Angle about +z by which a flank of a tooth of the ring gear lies beyond the flank of slot 0, rad. Tooth k follows
    /// slot k, so that the flank whose normal points back into it is that of slot k, and the other that of the next.
    pub fn flank_angle_rad(&self, tooth: u32, side: Side) -> f64 {
        let slot = if self.pair.toward(side) < 0.0 { tooth } else { tooth + 1 };
        f64::from(slot) * self.pair.gears().wheel_pitch_rad()
    }

    /// Angle of the ring gear about +z at which a tooth is the topmost, rad.
    pub fn topmost_rad(&self, tooth: u32) -> f64 {
        let middle = Side::BOTH
            .map(|side| self.middle_of_flank(side).map_or(0.0, |p| angle_about_z(p.position_mm)))
            .iter()
            .zip(Side::BOTH.map(|side| self.flank_angle_rad(tooth, side)))
            .map(|(own, more)| 0.5 * (own + more))
            .sum::<f64>();
        // Up is −y.
        -0.5 * PI - middle
    }

    /// What well rolled paste shows of a placement, by the fast route, on the three teeth that are topmost before the pair is
    /// turned.
    pub fn paste_of(&self, placement: Placement, film: Film) -> PasteLeft {
        let left = |side| {
            let map = contact::gap_map(&self.pair, placement, side, Route::Fast)?;
            Some(FilmLeft::new(&map, film))
        };
        let count = self.design().wheel_teeth;
        let off = |tooth: u32| {
            let angle = self.topmost_rad(tooth) / (2.0 * PI);
            (angle - angle.round()).abs()
        };
        let top = (0..count).min_by(|a, b| off(*a).total_cmp(&off(*b))).unwrap_or(0);
        PasteLeft {
            teeth: [count - 1, 0, 1].map(|from_top| (top + from_top) % count).to_vec(),
            clearness: 1.0,
            flanks: Side::BOTH.map(left),
        }
    }

    fn middle_of_flank(&self, side: Side) -> Option<FlankPoint> {
        self.pair.gears().pinion_flank(side).wheel().point(0.0, 0.0)
    }

    fn tooth_mm(&self) -> Vector3<f64> {
        let mean = self.pair.gears().cutter().mean_point_mm;
        let radius = (mean.x * mean.x + mean.y * mean.y).sqrt();
        Vector3::new(0.0, -radius, mean.z)
    }

    /// Between straight into the slot and along the normal of the flank across it, nearer to the slot: neither the tooth
    /// itself nor the next one hides the flank from there.
    fn to_flank(&self, side: Side) -> Vector3<f64> {
        let out_of_slot = self.pair.gears().cutter().axis;
        let Some(point) = self.middle_of_flank(side) else {
            return -Vector3::z();
        };
        let across = point.normal - out_of_slot * point.normal.dot(&out_of_slot);
        let turn = self.topmost_rad(0) + self.flank_angle_rad(0, side);
        Rotation3::from_axis_angle(&Vector3::z_axis(), turn) * (out_of_slot + 0.7 * across.normalize()).normalize()
    }
}

fn angle_about_z(point: Vector3<f64>) -> f64 {
    math::atan2(point.y, point.x)
}

/// What an error says, as a sentence of its own.
fn sentence(error: &str) -> String {
    let mut letters = error.chars();
    let first: String = letters.next().map(char::to_uppercase).into_iter().flatten().collect();
    format!("{first}{}.", letters.as_str().trim_end_matches('.'))
}

/// How far the wheel stands from its roll when it is held against one side of the pinion's teeth or the other.
#[derive(Debug, Clone, PartialEq)]
pub struct Play {
    pitch_rad: f64,
    /// Rotation of the wheel about +z at even rolls over one pitch, rad: against the drive side, against the coast side.
    ends_rad: [Vec<f64>; 2],
}

/// Samples of [`Play`] over one pitch.
const PLAY_SAMPLES: usize = 256;

impl Play {
    /// None where a flank cannot touch.
    pub fn new(pair: &Pair, placement: Placement, route: Route) -> Option<Self> {
        let curve = |side| contact::first_touch_urad(pair, placement, side, route, PLAY_SAMPLES);
        let (drive, coast) = (curve(Side::Drive)?, curve(Side::Coast)?);
        let design = pair.gears().design();
        let lash_rad = design.lash_mm / (0.5 * design.wheel_outer_pitch_diameter_mm);
        let sense = pair.toward(Side::Drive);
        let pitch_rad = pair.gears().wheel_pitch_rad();
        // The coast side is met that much further on: the pinion's tooth is thinner by the designed lash.
        let coast_values: Vec<f64> = coast.iter().map(|(_, d)| *d).collect();
        let ahead = |roll: f64| interpolated(&coast_values, roll + sense * lash_rad, pitch_rad);
        Some(Self {
            pitch_rad,
            ends_rad: [
                drive.iter().map(|(_, d)| sense * 1e-6 * d).collect(),
                drive
                    .iter()
                    .map(|(roll, _)| -sense * (1e-6 * ahead(*roll) + lash_rad))
                    .collect(),
            ],
        })
    }

    /// Rotation of the wheel about +z at a roll, rad: `share` 0 against the drive side, 1 against the coast side.
    pub fn rotation_rad(&self, roll_rad: f64, share: f64) -> f64 {
        let [drive, coast] = &self.ends_rad;
        let (a, b) = (
            interpolated(drive, roll_rad, self.pitch_rad),
            interpolated(coast, roll_rad, self.pitch_rad),
        );
        a + share * (b - a)
    }
}

/// A curve of period `pitch` given at even places, both ends included.
fn interpolated(values: &[f64], at: f64, pitch: f64) -> f64 {
    let cells = values.len().saturating_sub(1);
    let place = (at / pitch - (at / pitch).floor()) * cells as f64;
    let (index, share) = (place.floor(), place - place.floor());
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "between 0 and the number of values"
    )]
    let index = index as usize;
    let value = |i: usize| values.get(i.min(cells)).copied().unwrap_or(0.0);
    value(index) + share * (value(index + 1) - value(index))
}

/// How far both gears stand from where they were designed to, as a hand sets it.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Setting {
    /// P, mm: pinion away from the crossing point.
    pub pinion_mm: f64,
    /// G, mm: ring gear away from the pinion.
    pub wheel_mm: f64,
    /// E, mm: more offset.
    pub offset_mm: f64,
    /// Σ, degrees: wider shaft angle.
    pub shaft_angle_deg: f64,
}

impl Setting {
    /// How far each can be set either way: as far as the fast route is good.
    pub const MOST: Self = Self {
        pinion_mm: FAST_REACH.axial_mm,
        wheel_mm: FAST_REACH.axial_mm,
        offset_mm: FAST_REACH.offset_mm,
        shaft_angle_deg: 0.1,
    };

    /// Within what can be set; what is no number is 0.
    #[must_use]
    pub fn within_reach(self) -> Self {
        let kept = |value: f64, most: f64| if value.is_nan() { 0.0 } else { value.clamp(-most, most) };
        Self {
            pinion_mm: kept(self.pinion_mm, Self::MOST.pinion_mm),
            wheel_mm: kept(self.wheel_mm, Self::MOST.wheel_mm),
            offset_mm: kept(self.offset_mm, Self::MOST.offset_mm),
            shaft_angle_deg: kept(self.shaft_angle_deg, Self::MOST.shaft_angle_deg),
        }
    }

    /// As the core takes it.
    pub fn placement(&self) -> Placement {
        Placement {
            pinion_axial_mm: self.pinion_mm,
            wheel_axial_mm: self.wheel_mm,
            offset_mm: self.offset_mm,
            shaft_angle_rad: radians(self.shaft_angle_deg),
        }
    }
}

/// Marked area of one flank, in flank coordinates: x from toe −1 to heel +1, y from root −1 to top +1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Print {
    /// Share of the flank, 0 to 1.
    pub area: f64,
    /// Centroid.
    pub centre: [f64; 2],
}

/// Contact at the present setting.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SettingContact {
    /// By the exact route, or by the fast one while the exact one is under way.
    pub exact: bool,
    /// Smallest and largest lash over a pitch, mm; none where a flank cannot touch.
    pub lash_mm: Option<[f64; 2]>,
    /// Drive, then coast; none where nothing is marked.
    pub prints: [Option<Print>; 2],
}

impl SettingContact {
    /// Contact of a pair under a paste.
    pub fn new(pair: &Pair, placement: Placement, film: Film, route: Route) -> Self {
        let contact = contact::solve(pair, placement, film, route);
        Self {
            exact: route == Route::Exact,
            lash_mm: contact.lash.map(|lash| [lash.min_mm, lash.max_mm]),
            prints: Side::BOTH.map(|side| {
                contact.flank(side).pattern.map(|pattern| Print {
                    area: pattern.area_fraction,
                    centre: pattern.centroid,
                })
            }),
        }
    }
}

/// Work that takes longer than a frame, to be done elsewhere.
#[derive(Debug, Clone)]
pub enum Job {
    /// Make a set ready.
    Gears {
        /// Which wish this answers.
        revision: u64,
        /// What to make.
        design: Design,
    },
    /// Solve contact to the end.
    Contact {
        /// Which wish this answers.
        revision: u64,
        /// The gears.
        pair: Arc<StagePair>,
        /// Where they stand.
        placement: Placement,
        /// The paste.
        film: Film,
    },
}

/// What came of a [`Job`].
#[derive(Debug, Clone)]
pub enum Done {
    /// The gears, or why there are none.
    Gears {
        /// Of the job.
        revision: u64,
        /// Boxed, for they are large.
        gears: Result<Arc<StagePair>, String>,
    },
    /// The contact.
    Contact {
        /// Of the job.
        revision: u64,
        /// By the exact route.
        contact: SettingContact,
    },
}

impl Job {
    /// Does it.
    pub fn run(self) -> Done {
        match self {
            Self::Gears { revision, design } => Done::Gears {
                revision,
                gears: StagePair::new(&design).map(Arc::new),
            },
            Self::Contact {
                revision,
                pair,
                placement,
                film,
            } => Done::Contact {
                revision,
                contact: SettingContact::new(&pair.pair, placement, film, Route::Exact),
            },
        }
    }
}
