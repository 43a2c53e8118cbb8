//! The parts of an axle around its gears, as turned bodies: bearings, spacer, shims, seal, flange, nut, carrier, adjusters,
//! caps, case, cut open toward the usual place of the eye.
//!
//! Sizes are those of the drawing: the nominal chain, the bearings of the support's file. What the chain does not say (wall
//! thicknesses, the flange) is proportion for the eye. Nothing is computed from them, and no true size comes in.

mod revolve;

use std::f64::consts::PI;

use nalgebra::Vector3;

use self::revolve::{Axis, Sector, revolve};
use super::bench::{AxlePart, CapsOn, Laid};
use super::{Orbit, Scene, StagePair};
use crate::axle::{Axle, DepthShim, Layout, Member, SideSetting};
use crate::bearing::TaperedBearing;
use crate::numerics::math;

pub use revolve::Mesh;

/// What a body looks like.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Look {
    /// Rough steel or cast iron.
    Cast,
    /// Turned steel.
    Steel,
    /// Ground rings.
    Ring,
    /// Rollers.
    Roller,
    /// Shims.
    Shim,
    /// Where a body is cut open.
    Section,
}

/// What a body moves with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Group {
    /// Stays.
    Case,
    /// What holds the pinion's bearings: a part of the case, or the cartridge that is bolted to it.
    Nose,
    /// The pinion and what is on its shaft.
    Pinion,
    /// The carrier and what is on it.
    Carrier,
    /// The ring gear itself.
    Wheel,
}

/// When a body is there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum When {
    Always,
    /// A ring of the pinion bearings by its number, or all of them as set-up bearings.
    Ring(usize),
    Pack(usize),
    Spacer,
    Seal,
    Nut,
    CarrierRings,
    Caps,
    Bolts,
    Wheel,
}

/// One body.
#[derive(Debug, Clone, PartialEq)]
pub struct Body {
    /// Which part it belongs to.
    pub part: AxlePart,
    /// What it looks like.
    pub look: Look,
    /// What it moves with.
    pub group: Group,
    /// Its surface; empty for one that is only pointed at.
    pub mesh: Mesh,
    /// Whether it is only there to be pointed at: the gears are drawn by others.
    pub unseen: bool,
    when: When,
}

impl Body {
    /// Whether it is there as the axle lies.
    pub fn is_there(&self, laid: &Laid) -> bool {
        match self.when {
            When::Always => true,
            When::Ring(ring) => laid.set_up_bearings || laid.rings_on.get(ring).copied().unwrap_or(false),
            When::Pack(place) => laid.packs_in.get(place).copied().unwrap_or(false),
            When::Spacer => laid.spacer_on,
            When::Seal => laid.seal_in,
            When::Nut => laid.nut_on,
            When::CarrierRings => laid.carrier_in,
            When::Caps => laid.caps != CapsOn::Off,
            When::Bolts => laid.wheel_on && laid.wheel_bolted,
            When::Wheel => laid.wheel_on,
        }
    }
}

/// All bodies of an axle.
#[derive(Debug, Clone, PartialEq)]
pub struct AxleParts {
    /// All of them.
    pub bodies: Vec<Body>,
    /// Where the pinion's own solid ends, along its axis, mm: the shaft behind it is a body of its own.
    pub pinion_back_mm: f64,
    wheel_radius_mm: f64,
}

/// Sector that is kept of what is cut open about the pinion's axis, counted from up toward the front.
const PINION_SECTOR: Sector = [0.56 * PI, 1.94 * PI];
/// The same about the ring gear's axis, counted from up toward the flange.
const WHEEL_SECTOR: Sector = [0.44 * PI, 1.56 * PI];
/// How far the gear's own solid reaches behind the back of its head at most, mm.
pub const SHOULDER_MM: f64 = 1.5;
/// Facets of a whole turn.
const FACETS: u32 = 72;

impl AxleParts {
    /// Of an axle as drawn; depth and spacer shims this many times thicker than they are.
    pub fn new(axle: &Axle, pair: &StagePair, shims_times: u32) -> Self {
        let [[wheel_radius_mm, wheel_back_mm], _] = pair.extents_mm();
        let bore = |points: &[Vector3<f64>]| {
            points
                .iter()
                .map(|p| (p.x * p.x + p.y * p.y).sqrt())
                .fold(f64::INFINITY, |a, b| if b < a { b } else { a })
        };
        let mut shop = Shop {
            axle,
            times: f64::from(shims_times),
            collar: seat_radius(pair, axle.gears().pinion_back_distance_mm),
            bodies: Vec::new(),
            pinion: Axis {
                origin: Vector3::new(0.0, axle.gears().offset_mm, 0.0),
                along: Vector3::x(),
                zero: -Vector3::y(),
                quarter: -Vector3::z(),
            },
            wheel: Axis {
                origin: Vector3::zeros(),
                along: Vector3::z(),
                zero: -Vector3::y(),
                quarter: Vector3::x(),
            },
        };
        shop.pinion_side();
        shop.carrier_side(wheel_radius_mm, wheel_back_mm, bore(pair.wheel.points_mm()));
        Self {
            bodies: shop.bodies,
            pinion_back_mm: axle.gears().pinion_back_distance_mm,
            wheel_radius_mm,
        }
    }

    /// What to look at: everything that is there, where it lies.
    pub fn scene(&self, gears: &Scene, laid: &Laid) -> Scene {
        let mut low = Vector3::repeat(f64::INFINITY);
        let mut high = Vector3::repeat(f64::NEG_INFINITY);
        for body in self.bodies.iter().filter(|b| b.is_there(laid)) {
            let shift = self.shift_mm(body.group, laid);
            for point in &body.mesh.points {
                low = low.inf(&(point + shift));
                high = high.sup(&(point + shift));
            }
        }
        let gears = Scene {
            tooth_mm: gears.tooth_mm + self.shift_mm(Group::Wheel, laid),
            ..*gears
        };
        // Nothing is there at all.
        if low.x > high.x {
            return gears;
        }
        let size = high - low;
        // As wide as it shows from any side, in a stage one and a half times as wide as high.
        let by_width = 0.5 * (0.86 * size.x + 0.5 * size.z) / 1.5;
        let by_height = 0.65 * size.y + 0.07 * size.z;
        Scene {
            centre_mm: 0.5 * (low + high),
            radius_mm: if by_width > by_height { by_width } else { by_height },
            ..gears
        }
    }

    /// How far a group stands from its place as the axle lies: what is out lies beside.
    pub fn shift_mm(&self, group: Group, laid: &Laid) -> Vector3<f64> {
        let carrier = if laid.carrier_in {
            Vector3::zeros()
        } else {
            Vector3::new(-0.7, 0.0, 0.0) * self.wheel_radius_mm
        };
        let nose = if laid.layout == Layout::B && !laid.cartridge_bolted {
            Vector3::new(0.75, 0.0, 0.0) * self.wheel_radius_mm
        } else {
            Vector3::zeros()
        };
        match group {
            Group::Case => Vector3::zeros(),
            Group::Nose => nose,
            Group::Pinion if laid.pinion_in => nose,
            Group::Pinion => Vector3::new(-0.1, 1.05, -0.2) * self.wheel_radius_mm,
            Group::Carrier => carrier,
            Group::Wheel if laid.wheel_on => carrier,
            Group::Wheel => carrier + Vector3::new(-1.5, 0.0, -0.6) * self.wheel_radius_mm,
        }
    }

    /// The part that a look along a ray meets first; `right` and `up` as fractions of the height in view.
    pub fn part_at(&self, orbit: &Orbit, right: f64, up: f64, laid: &Laid) -> Option<AxlePart> {
        let (origin, way) = orbit.ray(right, up);
        let mut nearest: Option<(f64, AxlePart)> = None;
        for body in self.bodies.iter().filter(|b| b.is_there(laid)) {
            let shift = self.shift_mm(body.group, laid);
            for corners in body.mesh.corners() {
                if let Some(distance) = meets(origin - shift, way, corners)
                    && nearest.is_none_or(|(least, _)| distance < least)
                {
                    nearest = Some((distance, body.part));
                }
            }
        }
        nearest.map(|(_, part)| part)
    }
}

/// Largest radius of the pinion's solid behind its head.
fn seat_radius(pair: &StagePair, back_mm: f64) -> f64 {
    let behind = pair.pinion.points_mm().iter().filter(|p| p.x > back_mm + SHOULDER_MM);
    behind
        .map(|p| (p.y * p.y + p.z * p.z).sqrt())
        .fold(0.0, |a, b| if b > a { b } else { a })
}

/// How far along a ray a triangle is met, if it is.
fn meets(origin: Vector3<f64>, way: Vector3<f64>, [a, b, c]: [Vector3<f64>; 3]) -> Option<f64> {
    let (ab, ac) = (b - a, c - a);
    let across = way.cross(&ac);
    let scale = ab.dot(&across);
    if scale.abs() < 1e-12 {
        return None;
    }
    let from = origin - a;
    let u = from.dot(&across) / scale;
    let side = from.cross(&ab);
    let v = way.dot(&side) / scale;
    let distance = ac.dot(&side) / scale;
    (u >= 0.0 && v >= 0.0 && u + v <= 1.0 && distance > 0.0).then_some(distance)
}

struct Shop<'a> {
    axle: &'a Axle,
    times: f64,
    /// Radius of the seat behind the pinion's head in the gear's own solid, which is left out: the shaft closes the head.
    collar: f64,
    bodies: Vec<Body>,
    pinion: Axis,
    wheel: Axis,
}

/// What a body is, before its shape.
#[derive(Clone, Copy)]
struct Tag {
    part: AxlePart,
    look: Look,
    group: Group,
    when: When,
}

const fn tag(part: AxlePart, look: Look, group: Group, when: When) -> Tag {
    Tag {
        part,
        look,
        group,
        when,
    }
}

impl Shop<'_> {
    fn add(&mut self, tag: Tag, axis: Axis, outline: &[[f64; 2]], sector: Option<Sector>, facets: u32) {
        let (skin, cut) = revolve(&axis, outline, sector, facets);
        self.bodies.push(Body {
            part: tag.part,
            look: tag.look,
            group: tag.group,
            mesh: skin,
            unseen: false,
            when: tag.when,
        });
        if !cut.triangles.is_empty() {
            self.bodies.push(Body {
                part: tag.part,
                look: Look::Section,
                group: tag.group,
                mesh: cut,
                unseen: false,
                when: tag.when,
            });
        }
    }

    fn nominal(&self, member: Member) -> f64 {
        self.axle.nominal_mm(member).unwrap_or(0.0)
    }

    /// Everything on the pinion's axis.
    fn pinion_side(&mut self) {
        let support = self.axle.support().clone();
        let (head, tail) = (support.head_bearing, support.tail_bearing);
        let pinion = self.pinion;
        let shim = self.nominal(self.axle.depth_shim_member()) * self.times;
        let spacer_shims = self.nominal(Member::SpacerShims) * self.times;
        let at = |shim_of: DepthShim| if self.axle.depth_shim() == shim_of { shim } else { 0.0 };
        let (head_shim, cup_shim) = (at(DepthShim::Head), at(DepthShim::Cup));
        let cartridge_shim = at(DepthShim::Cartridge);
        let stands = [
            self.nominal(Member::HeadBearingStand),
            self.nominal(Member::TailBearingStand),
        ];
        let apart = self.nominal(Member::ShoulderDistance);
        // Cones are what the stands and the spacer leave of the way from back to back.
        let cones = stands[0] + apart + stands[1] - support.zero_preload_length_mm;
        let widths = stands.map(|stand| cones * stand / (stands[0] + stands[1]));
        let back = self.axle.gears().pinion_back_distance_mm;
        let cone = back + head_shim;
        let cup_back = cone + stands[0];
        let shoulder = cup_back + cup_shim;
        let far_shoulder = shoulder + apart;
        let tail_back = far_shoulder + stands[1];
        let inner = [cone + widths[0], tail_back - widths[1]];
        let bores = [0.5 * head.bore_mm, 0.5 * tail.bore_mm];
        let outer = [0.5 * head.outside_diameter_mm, 0.5 * tail.outside_diameter_mm];

        // Depth shim.
        let depth = |look_when: Group| tag(AxlePart::DepthShim, Look::Shim, look_when, When::Pack(0));
        match self.axle.depth_shim() {
            DepthShim::Head => {
                let ring = tube(back, cone, [bores[0], bores[0] + 0.42 * (outer[0] - bores[0])]);
                self.add(depth(Group::Pinion), pinion, &ring, None, FACETS);
            }
            DepthShim::Cup => {
                let ring = tube(cup_back, shoulder, [outer[0] - 7.0, outer[0]]);
                self.add(depth(Group::Nose), pinion, &ring, Some(PINION_SECTOR), FACETS);
            }
            DepthShim::Cartridge => {}
        }
        // Both bearings.
        let head_at = Seat {
            back: cone,
            way: 1.0,
            stand: stands[0],
            cone_width: widths[0],
        };
        let tail_at = Seat {
            back: tail_back,
            way: -1.0,
            stand: stands[1],
            cone_width: widths[1],
        };
        let (h, t) = (AxlePart::HeadBearing, AxlePart::TailBearing);
        self.bearing(pinion, &head, head_at, h, Group::Pinion, [When::Ring(0), When::Ring(1)]);
        // The tail cone goes on with the flange.
        self.bearing(pinion, &tail, tail_at, t, Group::Nose, [When::Nut, When::Ring(2)]);
        // Spacer and its shims.
        let spacer_end = inner[1] - spacer_shims;
        let wall = [bores[1] + 1.0, bores[1] + 5.5];
        let outline = if self.axle.layout().has_sleeve() {
            sleeve(inner[0], spacer_end, wall)
        } else {
            tube(inner[0], spacer_end, wall)
        };
        let spacer = tag(AxlePart::Spacer, Look::Steel, Group::Pinion, When::Spacer);
        self.add(spacer, pinion, &outline, None, FACETS);
        if spacer_shims > 0.0 {
            let shims = tag(AxlePart::Spacer, Look::Shim, Group::Pinion, When::Pack(1));
            self.add(shims, pinion, &tube(spacer_end, inner[1], wall), None, FACETS);
        }
        let behind = AxialPlaces {
            back,
            bores,
            outer,
            inner,
            tail_back,
            shoulders: [shoulder, far_shoulder],
            cup_front: cup_back - 0.86 * stands[0],
        };
        self.shaft_and_housing(&behind, cartridge_shim);
    }

    /// Shaft, seal, flange, nut, and what holds the cups.
    fn shaft_and_housing(&mut self, behind: &AxialPlaces, cartridge_shim: f64) {
        let support = self.axle.support().clone();
        let pinion = self.pinion;
        let AxialPlaces {
            back,
            bores,
            outer,
            inner,
            tail_back,
            shoulders,
            cup_front,
        } = *behind;
        let hub = 0.5 * support.seal_shaft_diameter_mm;
        let hub_end = tail_back + 30.0;
        let thread = 0.5 * support.nut.pitch_diameter_mm;
        let nut_end = hub_end + 15.0;
        let shaft = [
            [back - 4.0, 0.0],
            [back - 4.0, self.collar],
            [back - 0.2, self.collar],
            [back - 0.2, bores[0] - 0.2],
            [inner[0], bores[0] - 0.2],
            [inner[0] + 1.0, bores[1] + 0.4],
            [inner[1], bores[1] - 0.2],
            [tail_back, bores[1] - 0.2],
            [tail_back + 2.0, thread],
            [nut_end + 5.0, thread],
            [nut_end + 6.0, thread - 1.0],
            [nut_end + 6.0, 0.0],
        ];
        let shaft_tag = tag(AxlePart::Pinion, Look::Steel, Group::Pinion, When::Always);
        self.add(shaft_tag, pinion, &shaft, None, FACETS);
        let plate = outer[1] + 16.0;
        let flange = [
            [tail_back, thread + 0.4],
            [tail_back, hub],
            [hub_end - 10.0, hub],
            [hub_end - 8.0, plate - 1.0],
            [hub_end - 7.0, plate],
            [hub_end + 1.0, plate],
            [hub_end + 1.0, thread + 12.0],
            [hub_end - 2.0, thread + 11.0],
            [hub_end - 2.0, thread + 0.4],
        ];
        let nut_tag = |look| tag(AxlePart::Nut, look, Group::Nose, When::Nut);
        self.add(nut_tag(Look::Steel), pinion, &flange, None, FACETS);
        let nut = tube(hub_end - 2.0, nut_end, [thread, 1.75 * thread]);
        self.add(nut_tag(Look::Ring), pinion, &nut, None, 6);
        let seal_at = tail_back + 4.0;
        let seal = tag(AxlePart::Seal, Look::Roller, Group::Nose, When::Seal);
        let lip = tube(seal_at, seal_at + 9.0, [hub, outer[1] - 1.0]);
        self.add(seal, pinion, &lip, Some(PINION_SECTOR), FACETS);
        // Housing or cartridge.
        let housing = Nose {
            start: cup_front,
            shoulders,
            end: seal_at + 10.0,
            outer,
        };
        self.nose(&housing, cartridge_shim);
        // The gear itself, to be pointed at.
        let gears = self.axle.gears();
        let tip = 0.92 * (outer[0] + 6.0);
        let (skin, _) = revolve(
            &pinion,
            &[
                [gears.pinion_head_distance_mm, 0.0],
                [gears.pinion_head_distance_mm, 0.75 * tip],
                [back, tip],
                [back, 0.0],
            ],
            None,
            24,
        );
        self.unseen(AxlePart::Pinion, Group::Pinion, skin, When::Always);
    }

    fn unseen(&mut self, part: AxlePart, group: Group, mesh: Mesh, when: When) {
        self.bodies.push(Body {
            part,
            look: Look::Steel,
            group,
            mesh,
            unseen: true,
            when,
        });
    }

    /// The tube that holds both cups: a nose of the case, or a cartridge with its flange and shim.
    fn nose(&mut self, nose: &Nose, cartridge_shim: f64) {
        let [s1, s2] = nose.shoulders;
        let [o1, o2] = nose.outer;
        let (w1, w2) = (o1 + 11.0, o2 + 11.0);
        let lip = if o1 < o2 { o1 } else { o2 } - 6.0;
        let cartridge = self.axle.layout().has_cartridge();
        let flange = s1 - 4.0;
        let collar = w1 + 20.0;
        let mut outline = vec![[nose.start, o1], [nose.start, w1]];
        if cartridge {
            outline.extend([
                [flange, w1],
                [flange, collar],
                [flange + 12.0, collar],
                [flange + 14.0, w1],
            ]);
        } else {
            outline.push([s1 + 4.0, w1]);
        }
        outline.extend([
            [s2 - 6.0, w2],
            [nose.end, w2],
            [nose.end, o2],
            [s2, o2],
            [s2, lip],
            [s1, lip],
            [s1, o1],
        ]);
        let part = if cartridge { AxlePart::Cartridge } else { AxlePart::Case };
        let pinion = self.pinion;
        let body = tag(part, Look::Cast, Group::Nose, When::Always);
        self.add(body, pinion, &outline, Some(PINION_SECTOR), FACETS);
        if cartridge {
            let shim = tag(AxlePart::DepthShim, Look::Shim, Group::Case, When::Pack(0));
            let ring = tube(flange - cartridge_shim, flange, [w1 + 1.0, collar]);
            self.add(shim, pinion, &ring, Some(PINION_SECTOR), FACETS);
            // What it is bolted to.
            let face = tube(
                flange - cartridge_shim - 14.0,
                flange - cartridge_shim,
                [w1 + 1.0, collar + 6.0],
            );
            let case = tag(AxlePart::Case, Look::Cast, Group::Case, When::Always);
            self.add(case, pinion, &face, Some(PINION_SECTOR), FACETS);
        }
    }

    /// Cone, cup and rollers.
    fn bearing(
        &mut self,
        axis: Axis,
        bearing: &TaperedBearing,
        seat: Seat,
        part: AxlePart,
        group: Group,
        [cone_when, cup_when]: [When; 2],
    ) {
        let (bore, outer) = (0.5 * bearing.bore_mm, 0.5 * bearing.outside_diameter_mm);
        let mean = 0.5 * (bore + outer);
        let count = if bearing.roller_count > 3 {
            bearing.roller_count
        } else {
            3
        };
        let most = 0.27 * (outer - bore);
        let by_count = 0.88 * PI * mean / f64::from(count);
        let roller = if by_count < most { by_count } else { most };
        let tilt = 0.8 * bearing.contact_angle_rad();
        let (sin, cos) = math::sin_cos(tilt);
        let middle = 0.5 * seat.stand;
        // Along from the cone's back; the way decides which end of the axis that is.
        let x = |along: f64| seat.back + seat.way * along;
        let race = |along: f64, out: f64| mean + out * roller / cos - (along - middle) * sin / cos;
        let rib = 0.14 * seat.cone_width;
        let foot = seat.cone_width;
        let cone: Vec<[f64; 2]> = [
            [0.0, bore],
            [0.0, race(rib, -1.0) + 0.7 * roller],
            [rib, race(rib, -1.0) + 0.7 * roller],
            [rib, race(rib, -1.0)],
            [foot - 1.2, race(foot - 1.2, -1.0)],
            [foot - 1.2, race(foot, -1.0) + 0.4 * roller],
            [foot, race(foot, -1.0) + 0.3 * roller],
            [foot, bore],
        ]
        .map(|[along, r]| [x(along), r])
        .to_vec();
        let cup_width = 0.78 * seat.stand;
        let start = seat.stand - cup_width;
        let cup: Vec<[f64; 2]> = [
            [start, race(start, 1.0)],
            [start, outer],
            [seat.stand, outer],
            [seat.stand, race(seat.stand, 1.0)],
        ]
        .map(|[along, r]| [x(along), r])
        .to_vec();
        self.add(tag(part, Look::Ring, group, cone_when), axis, &cone, None, FACETS);
        let cup_sector = if axis == self.pinion {
            PINION_SECTOR
        } else {
            WHEEL_SECTOR
        };
        // The pinion's cups go with what holds them.
        let cup_group = if axis == self.pinion {
            Group::Nose
        } else {
            Group::Carrier
        };
        self.add(
            tag(part, Look::Ring, cup_group, cup_when),
            axis,
            &cup,
            Some(cup_sector),
            FACETS,
        );
        let half = 0.46 * bearing.roller_length_mm;
        let mut rollers = Mesh::default();
        for k in 0..count {
            let angle = 2.0 * PI * f64::from(k) / f64::from(count);
            let outward = axis.outward(angle);
            let along = (axis.along * (seat.way * cos) - outward * sin).normalize();
            let own = Axis {
                origin: axis.place([x(middle), mean], angle),
                along,
                zero: axis.outward(angle + 0.5 * PI),
                quarter: along.cross(&axis.outward(angle + 0.5 * PI)),
            };
            let outline = [[-half, 0.0], [-half, 1.04 * roller], [half, 0.92 * roller], [half, 0.0]];
            rollers.join(&revolve(&own, &outline, None, 14).0);
        }
        self.bodies.push(Body {
            part,
            look: Look::Roller,
            group,
            mesh: rollers,
            unseen: false,
            when: cone_when,
        });
    }

    /// Everything on the ring gear's axis.
    fn carrier_side(&mut self, wheel_radius: f64, seat: f64, bore: f64) {
        let side = *self.axle.side();
        let wheel = self.wheel;
        let shoulders = [
            seat - self.nominal(Member::CarrierToothSide),
            seat + self.nominal(Member::CarrierBackSide),
        ];
        let stands = [
            self.nominal(Member::ToothBearingStand),
            self.nominal(Member::BackBearingStand),
        ];
        let bearings = [side.tooth_side, side.back_side];
        let trunnion = 0.5 * bearings[0].bore_mm - 0.2;
        let hole = 0.62 * trunnion;
        let drum = if bore - 1.0 > trunnion + 8.0 {
            bore - 1.0
        } else {
            trunnion + 8.0
        };
        let flange = bore + 0.55 * (wheel_radius - bore);
        let neck = trunnion + 7.0;
        let [low, high] = shoulders;
        let carrier = [
            [low - stands[0] - 1.0, hole],
            [low - stands[0] - 1.0, trunnion],
            [low, trunnion],
            [low, neck],
            [low + 10.0, neck + 2.0],
            [seat - 24.0, drum],
            [seat, drum],
            [seat, flange],
            [seat + 11.0, flange],
            [seat + 13.0, drum + 3.0],
            [high - 10.0, neck + 4.0],
            [high, neck],
            [high, trunnion],
            [high + stands[1] + 1.0, trunnion],
            [high + stands[1] + 1.0, hole],
        ];
        let body = tag(AxlePart::Carrier, Look::Cast, Group::Carrier, When::Always);
        self.add(body, wheel, &carrier, None, FACETS);
        self.ring_bolts(seat + 11.0, bore + 0.36 * (wheel_radius - bore));
        let adjusters = self.axle.layout().side_setting() == SideSetting::Adjusters;
        let thickness = [self.nominal(Member::ToothSideShim), self.nominal(Member::BackSideShim)];
        for (k, part) in [(0_usize, AxlePart::ToothSide), (1, AxlePart::BackSide)] {
            let way = if k == 0 { -1.0 } else { 1.0 };
            let pick = |pair: [f64; 2]| pair.get(k).copied().unwrap_or(0.0);
            let (Some(bearing), stand, shoulder) = (bearings.get(k), pick(stands), pick(shoulders)) else {
                continue;
            };
            let outer = 0.5 * bearing.outside_diameter_mm;
            let at = Seat {
                back: shoulder,
                way,
                stand,
                cone_width: 0.86 * stand,
            };
            self.bearing(
                wheel,
                bearing,
                at,
                AxlePart::Carrier,
                Group::Carrier,
                [When::Always, When::CarrierRings],
            );
            let face = shoulder + way * stand;
            let (ring_end, look, when) = if adjusters {
                (face + way * 10.0, Look::Steel, When::Caps)
            } else {
                (face + way * pick(thickness), Look::Shim, When::Pack(2 + k))
            };
            let ring = tube(face, ring_end, [0.72 * outer, outer]);
            self.add(
                tag(part, look, Group::Case, when),
                wheel,
                &ring,
                Some(WHEEL_SECTOR),
                FACETS,
            );
            // Saddle of the case toward the pinion, cap on the other side, both cut away above.
            let holder = tube(shoulder + way * 3.0, ring_end + way * 2.0, [outer, outer + 13.0]);
            let saddle = tag(AxlePart::Case, Look::Cast, Group::Case, When::Always);
            self.add(saddle, wheel, &holder, Some([0.56 * PI, 0.99 * PI]), FACETS);
            let cap = tag(AxlePart::Caps, Look::Steel, Group::Case, When::Caps);
            self.add(cap, wheel, &holder, Some([1.01 * PI, 1.62 * PI]), FACETS);
        }
        // The ring gear, to be pointed at.
        let (skin, _) = revolve(
            &wheel,
            &[
                [seat - 36.0, 0.78 * wheel_radius],
                [seat - 20.0, wheel_radius],
                [seat, wheel_radius],
                [seat, bore],
                [seat - 20.0, bore],
            ],
            None,
            48,
        );
        self.unseen(AxlePart::RingGear, Group::Wheel, skin, When::Wheel);
    }

    fn ring_bolts(&mut self, face: f64, radius: f64) {
        const BOLTS: u32 = 10;
        let wheel = self.wheel;
        let mut heads = Mesh::default();
        for k in 0..BOLTS {
            let angle = 2.0 * PI * (f64::from(k) + 0.5) / f64::from(BOLTS);
            let own = Axis {
                origin: wheel.place([face, radius], angle),
                ..wheel
            };
            heads.join(&revolve(&own, &[[0.0, 0.0], [0.0, 7.5], [6.0, 7.5], [6.0, 0.0]], None, 6).0);
        }
        self.bodies.push(Body {
            part: AxlePart::RingGear,
            look: Look::Ring,
            group: Group::Carrier,
            mesh: heads,
            unseen: false,
            when: When::Bolts,
        });
    }
}

/// Where a bearing sits: the back of its cone, which way it goes from there, and how much room it takes.
#[derive(Clone, Copy)]
struct Seat {
    back: f64,
    way: f64,
    stand: f64,
    cone_width: f64,
}

/// Places along the pinion's axis that follow from the chain, and radii.
#[derive(Clone, Copy)]
struct AxialPlaces {
    back: f64,
    bores: [f64; 2],
    outer: [f64; 2],
    inner: [f64; 2],
    tail_back: f64,
    shoulders: [f64; 2],
    cup_front: f64,
}

struct Nose {
    start: f64,
    shoulders: [f64; 2],
    end: f64,
    outer: [f64; 2],
}

fn tube(from: f64, to: f64, [inner, outer]: [f64; 2]) -> Vec<[f64; 2]> {
    vec![[from, inner], [from, outer], [to, outer], [to, inner]]
}

/// A sleeve with the bulge at which it yields.
fn sleeve(from: f64, to: f64, [inner, outer]: [f64; 2]) -> Vec<[f64; 2]> {
    let length = to - from;
    let bulge = [[0.30, 0.0], [0.42, 4.0], [0.58, 4.0], [0.70, 0.0]];
    let mut outline = vec![[from, inner], [from, outer]];
    outline.extend(bulge.map(|[share, out]| [from + share * length, outer + out]));
    outline.extend([[to, outer], [to, inner]]);
    outline.extend(
        bulge
            .iter()
            .rev()
            .map(|[share, out]| [from + share * length, inner + out]),
    );
    outline
}
