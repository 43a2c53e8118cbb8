//! The dimension chain of each layout, as data.
//!
//! A table a layout: every member with its nominal size, the deviation that inspection lets pass, when it counts, and
//! what it moves by how much. The solver only adds up; no sign stands anywhere else.
//!
//! Along the pinion's axis, outward from the wheel: head, head shim, cone, cup, cup shim, shoulder. What is thicker between
//! head and shoulder lets the pinion stand deeper; what carries the shoulder outward lets it stand shallower. Along the
//! wheel's axis, from the pinion: tooth-side seat of the case, shim or adjuster, bearing, carrier, wheel's seat, carrier,
//! bearing, shim or adjuster, seat behind the wheel.
//!
//! Source: our own layouts; which way a shim, a cup or a seat moves the gears follows from where it stands, and agrees
//! with common practice (no source).

use super::assembly::{Assembly, Bearings, Caps};
use super::layout::Layout;
use super::member::{Member, PerMember};

/// What a member moves.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Moves {
    /// P, mm: the pinion, positive away from the crossing point.
    PinionAxial,
    /// G, mm: the wheel relative to the carrier, positive away from the pinion.
    WheelAxial,
    /// E, mm.
    Offset,
    /// Σ, rad.
    ShaftAngle,
    /// Length at which the pinion's pair has neither play nor preload, mm.
    ZeroPreloadLength,
    /// Free length of the spacer with its shims, mm.
    SpacerLength,
    /// Stack from the case's tooth-side seat to the wheel's seat, mm: presses the pair and pushes the wheel away.
    ToothStack,
    /// Stack from the case's back seat to the wheel's seat, mm: presses the pair and pushes the wheel to the pinion.
    BackStack,
    /// The wheel along the pinion's axis, mm, positive away from the pinion's head: as if the pinion stood shallower.
    WheelAcross,
    /// Swing of the wheel's teeth along its axis, mm, once a turn.
    WheelFace,
    /// Swing of the wheel's teeth across its axis, mm, once a turn.
    WheelRadial,
    /// Swing of the pinion across its axis, mm, once a turn.
    PinionRadial,
}

impl Moves {
    /// How many there are.
    const COUNT: usize = 12;
}

/// When a member counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum When {
    /// Always.
    Always,
    /// With the bearings that stay in the axle.
    RealBearings,
    /// With set-up bearings.
    SetUpBearings,
    /// While the caps are not at full torque.
    CapsNotTorqued,
    /// While the caps stand in each other's place.
    CapsSwapped,
    /// When the wheel was fitted to a seat that had not been cleaned.
    WheelSeatDirty,
}

impl When {
    /// Whether that is so.
    pub fn holds(self, assembly: &Assembly) -> bool {
        match self {
            Self::Always => true,
            Self::RealBearings => assembly.bearings != Bearings::SetUp,
            Self::SetUpBearings => assembly.bearings == Bearings::SetUp,
            Self::CapsNotTorqued => assembly.caps != Caps::Torqued,
            Self::CapsSwapped => assembly.caps_swapped,
            Self::WheelSeatDirty => assembly.wheel.is_some_and(|w| w.dirty),
        }
    }
}

/// Nominal size of a member.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Nominal {
    /// This many mm (rad for squareness).
    Size(f64),
    /// What closes the chain of the axle at hand: it depends on gears and bearings, see [`super::Axle::nominal_mm`].
    Closes,
}

/// What a member moves, per unit of its deviation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Effect {
    /// What.
    pub moves: Moves,
    /// By how much for one unit, with its sign.
    pub per_unit: f64,
}

/// One row of a chain.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Link {
    /// Which size.
    pub member: Member,
    /// Its nominal size.
    pub nominal: Nominal,
    /// Deviation that inspection lets pass, mm (rad); 0 for what is fitted by choice.
    pub tolerance: f64,
    /// When it counts.
    pub when: When,
    /// What it moves.
    pub effects: &'static [Effect],
}

/// The chain of a layout.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Chain {
    links: &'static [&'static [Link]],
}

const fn by(moves: Moves, per_unit: f64) -> Effect {
    Effect { moves, per_unit }
}

const fn link(member: Member, nominal_mm: f64, tolerance: f64, effects: &'static [Effect]) -> Link {
    Link {
        member,
        nominal: Nominal::Size(nominal_mm),
        tolerance,
        when: When::Always,
        effects,
    }
}

const fn closing(member: Member, tolerance: f64, effects: &'static [Effect]) -> Link {
    Link {
        member,
        nominal: Nominal::Closes,
        tolerance,
        when: When::Always,
        effects,
    }
}

const fn when(when: When, link: Link) -> Link {
    Link { when, ..link }
}

const OUT: &[Effect] = &[by(Moves::PinionAxial, 1.0)];
const DEEPER: &[Effect] = &[by(Moves::PinionAxial, -1.0)];
/// Deeper, and the cups come closer together, so that the pair closes at a longer spacer.
const DEEPER_AND_TIGHTER: &[Effect] = &[by(Moves::PinionAxial, -1.0), by(Moves::ZeroPreloadLength, 1.0)];
const TIGHTER: &[Effect] = &[by(Moves::ZeroPreloadLength, 1.0)];
const LONGER_SPACER: &[Effect] = &[by(Moves::SpacerLength, 1.0)];
const TOOTH_STACK: &[Effect] = &[by(Moves::ToothStack, 1.0)];
const BACK_STACK: &[Effect] = &[by(Moves::BackStack, 1.0)];
const TOOTH_ROOM: &[Effect] = &[by(Moves::ToothStack, -1.0)];
const BACK_ROOM: &[Effect] = &[by(Moves::BackStack, -1.0)];
const TO_PINION: &[Effect] = &[by(Moves::WheelAxial, -1.0)];
const WHEEL_ACROSS: &[Effect] = &[by(Moves::WheelAcross, 1.0)];
const WHEEL_FACE: &[Effect] = &[by(Moves::WheelFace, 1.0)];

/// Bearings, spacer, gears: the same in all layouts.
const COMMON: &[Link] = &[
    link(Member::ShoulderDistance, 46.0, 0.05, TIGHTER),
    when(
        When::RealBearings,
        link(Member::HeadBearingStand, 26.0, 0.10, DEEPER_AND_TIGHTER),
    ),
    when(When::RealBearings, link(Member::TailBearingStand, 24.0, 0.10, TIGHTER)),
    when(
        When::SetUpBearings,
        link(Member::SetUpHeadStand, 26.0, 0.10, DEEPER_AND_TIGHTER),
    ),
    when(When::SetUpBearings, link(Member::SetUpTailStand, 24.0, 0.10, TIGHTER)),
    link(Member::PinionMark, 0.0, 0.15, DEEPER),
    closing(Member::SpacerLength, 0.05, LONGER_SPACER),
    link(Member::HeadConeGap, 0.0, 0.0, DEEPER),
    link(Member::HeadCupGap, 0.0, 0.0, DEEPER_AND_TIGHTER),
    link(Member::TailCupGap, 0.0, 0.0, TIGHTER),
    closing(Member::Offset, 0.05, &[by(Moves::Offset, 1.0)]),
    link(Member::Squareness, 0.0, 3.0e-4, &[by(Moves::ShaftAngle, 1.0)]),
    closing(Member::ToothSideSeat, 0.10, TOOTH_ROOM),
    closing(Member::BackSideSeat, 0.10, BACK_ROOM),
    link(Member::CarrierToothSide, 60.0, 0.05, TOOTH_STACK),
    link(Member::CarrierBackSide, 55.0, 0.05, BACK_STACK),
    link(Member::ToothBearingStand, 20.0, 0.10, TOOTH_STACK),
    link(Member::BackBearingStand, 20.0, 0.10, BACK_STACK),
    link(Member::WheelThickness, 35.0, 0.05, TO_PINION),
    link(Member::WheelFaceRunout, 0.0, 0.025, WHEEL_FACE),
    link(Member::WheelRadialRunout, 0.0, 0.03, &[by(Moves::WheelRadial, 1.0)]),
    when(When::WheelSeatDirty, link(Member::WheelSeatChip, 0.0, 0.0, WHEEL_FACE)),
    link(Member::WheelTilt, 0.0, 0.0, WHEEL_FACE),
    link(
        Member::CaseSpreader,
        0.0,
        0.0,
        &[by(Moves::ToothStack, -0.5), by(Moves::BackStack, -0.5)],
    ),
    link(Member::PinionRunout, 0.0, 0.01, &[by(Moves::PinionRadial, 1.0)]),
    when(When::CapsNotTorqued, link(Member::CapFloat, 0.0, 0.03, WHEEL_ACROSS)),
    when(When::CapsSwapped, link(Member::CapMismatch, 0.0, 0.08, WHEEL_ACROSS)),
];

const ONE_PIECE: &[Link] = &[closing(Member::HousingDepth, 0.15, OUT)];

const CARTRIDGE: &[Link] = &[
    closing(Member::CartridgeFace, 0.15, OUT),
    link(Member::CartridgeDepth, 42.0, 0.08, DEEPER),
    link(Member::CartridgeShim, 0.60, 0.0, OUT),
];

const HEAD_SHIM: &[Link] = &[link(Member::HeadShim, 0.90, 0.0, DEEPER)];
const CUP_SHIM: &[Link] = &[link(Member::CupShim, 1.00, 0.0, DEEPER_AND_TIGHTER)];
const SPACER_SHIMS: &[Link] = &[link(Member::SpacerShims, 0.80, 0.0, LONGER_SPACER)];

const SIDE_SHIMS: &[Link] = &[
    link(Member::ToothSideShim, 6.0, 0.0, TOOTH_STACK),
    link(Member::BackSideShim, 6.0, 0.0, BACK_STACK),
];
const ADJUSTERS: &[Link] = &[
    link(Member::ToothSideAdjuster, 0.0, 0.0, TOOTH_STACK),
    link(Member::BackSideAdjuster, 0.0, 0.0, BACK_STACK),
];

impl Chain {
    /// The chain of a layout.
    pub fn of(layout: Layout) -> Self {
        const A: &[&[Link]] = &[ONE_PIECE, HEAD_SHIM, CUP_SHIM, COMMON, SIDE_SHIMS];
        const B: &[&[Link]] = &[CARTRIDGE, COMMON, SPACER_SHIMS, ADJUSTERS];
        const C: &[&[Link]] = &[ONE_PIECE, CUP_SHIM, COMMON, SPACER_SHIMS, ADJUSTERS];
        Self {
            links: match layout {
                Layout::A => A,
                Layout::B => B,
                Layout::C => C,
            },
        }
    }

    /// All rows, in a fixed order.
    pub fn links(&self) -> impl Iterator<Item = &'static Link> + use<> {
        self.links.iter().copied().flatten()
    }

    /// The row of a member; none where this layout has no such part.
    pub fn link(&self, member: Member) -> Option<&'static Link> {
        self.links().find(|l| l.member == member)
    }

    /// How much a unit of a member moves something; 0 for what it does not move.
    pub fn per_unit(&self, member: Member, moves: Moves) -> f64 {
        self.link(member).map_or(0.0, |l| {
            l.effects.iter().filter(|e| e.moves == moves).map(|e| e.per_unit).sum()
        })
    }

    /// What all deviations together move, with the members that count for this assembly. Runouts are added by
    /// [`Chain::swing`] instead, since they have a direction.
    pub fn sums(&self, deviations: &PerMember, assembly: &Assembly) -> Sums {
        let mut sums = Sums::default();
        for link in self.links().filter(|l| l.when.holds(assembly)) {
            for effect in link.effects {
                sums.add(effect.moves, effect.per_unit * deviations.get(link.member));
            }
        }
        sums
    }

    /// The swing once a turn that all deviations together make: cosine and sine part, mm. The phase of a member is the
    /// wheel (or pinion) angle at which it swings farthest to the positive side.
    pub fn swing(&self, moves: Moves, deviations: &PerMember, phases_rad: &PerMember, assembly: &Assembly) -> [f64; 2] {
        let mut swing = [0.0; 2];
        for link in self.links().filter(|l| l.when.holds(assembly)) {
            for effect in link.effects.iter().filter(|e| e.moves == moves) {
                let size = effect.per_unit * deviations.get(link.member);
                let (sin, cos) = crate::numerics::math::sin_cos(phases_rad.get(link.member));
                swing = [swing[0] + size * cos, swing[1] + size * sin];
            }
        }
        swing
    }
}

/// What a chain adds up to.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Sums([f64; Moves::COUNT]);

impl Sums {
    /// The sum for one of the things moved, mm (rad).
    pub fn get(&self, moves: Moves) -> f64 {
        self.0.get(moves as usize).copied().unwrap_or(0.0)
    }

    fn add(&mut self, moves: Moves, by: f64) {
        if let Some(place) = self.0.get_mut(moves as usize) {
            *place += by;
        }
    }
}
