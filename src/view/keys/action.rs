//! What single keys ask for.

use core::fmt;

use super::name::KeyName;
use crate::view::orbit::Viewpoint;
use crate::view::place::Place;
use crate::words::say;

/// Something that a single key asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Action {
    /// Look from a named place.
    LookFrom(Viewpoint),
    /// Change between flat and perspective.
    Flat,
    /// Make what is seen larger.
    Nearer,
    /// Make what is seen smaller.
    Farther,
    /// Turn the pinion, or stop.
    Turn,
    /// Rock the ring gear, or stop.
    Rock,
    /// Turn back by one tooth.
    ToothBack,
    /// Turn on by one tooth.
    ToothOn,
    /// Go to the tooth room, and from there to the gears.
    ToothRoom,
    /// Choose the next part of the axle.
    NextPart,
    /// Choose the part before.
    PartBefore,
    /// Bring the keyboard to the work of the chosen part.
    ToWork,
    /// Take the last reading in hand.
    TakeInHand,
    /// Hold what is in hand up over the stage, or put it down again.
    Enlarge,
    /// Write what instruments show beside them, or not.
    ReadOut,
    /// Ask whether the axle is to be signed off.
    SignOff,
    /// Keep the present setting as the one to compare with.
    KeepAsOther,
    /// Exchange both settings.
    SwapWithOther,
    /// Stop comparing.
    DropOther,
    /// Save the picture of the tooth room.
    SavePicture,
}

/// Where the gears stand on the stage.
const STAGE: &[Place] = &[Place::Bench, Place::Gears];
const BENCH: &[Place] = &[Place::Bench];
const ROOM: &[Place] = &[Place::ToothRoom];

/// Usual keys of the named places to look from, in their order.
const DIGITS: [&str; 9] = ["1", "2", "3", "4", "5", "6", "7", "8", "9"];

impl Action {
    /// All but the looks from named places, in the order in which they are listed.
    const OTHERS: [Self; 19] = [
        Self::Flat,
        Self::Nearer,
        Self::Farther,
        Self::Turn,
        Self::Rock,
        Self::ToothBack,
        Self::ToothOn,
        Self::ToothRoom,
        Self::NextPart,
        Self::PartBefore,
        Self::ToWork,
        Self::TakeInHand,
        Self::Enlarge,
        Self::ReadOut,
        Self::SignOff,
        Self::KeepAsOther,
        Self::SwapWithOther,
        Self::DropOther,
        Self::SavePicture,
    ];

    /// All of them, in the order in which they are listed.
    pub fn all() -> impl Iterator<Item = Self> {
        Viewpoint::ALL.into_iter().map(Self::LookFrom).chain(Self::OTHERS)
    }

    /// Where it acts.
    pub const fn places(self) -> &'static [Place] {
        match self {
            Self::LookFrom(_)
            | Self::Flat
            | Self::Nearer
            | Self::Farther
            | Self::Turn
            | Self::Rock
            | Self::ToothBack
            | Self::ToothOn => STAGE,
            Self::ToothRoom => &[Place::Bench, Place::Gears, Place::ToothRoom],
            Self::NextPart
            | Self::PartBefore
            | Self::ToWork
            | Self::TakeInHand
            | Self::Enlarge
            | Self::ReadOut
            | Self::SignOff => BENCH,
            Self::KeepAsOther | Self::SwapWithOther | Self::DropOther | Self::SavePicture => ROOM,
        }
    }

    /// Whether it acts at a place.
    pub fn acts_at(self, place: Place) -> bool {
        self.places().contains(&place)
    }

    /// Whether there is a place where both act.
    pub fn meets(self, other: Self) -> bool {
        self.places().iter().any(|place| other.acts_at(*place))
    }

    /// The key that it has unless a trainee gives it another one.
    pub fn usual_key(self) -> Option<KeyName> {
        KeyName::named(match self {
            Self::LookFrom(viewpoint) => {
                let at = Viewpoint::ALL.iter().position(|of| *of == viewpoint)?;
                DIGITS.get(at)?
            }
            Self::Flat => "F",
            Self::Nearer => "Plus",
            Self::Farther => "Minus",
            Self::Turn => "Space",
            Self::Rock => "R",
            Self::ToothBack => "Comma",
            Self::ToothOn => "Period",
            Self::ToothRoom => "T",
            Self::NextPart => "P",
            Self::PartBefore => "O",
            Self::ToWork => "W",
            Self::TakeInHand => "I",
            Self::Enlarge => "M",
            Self::ReadOut => "V",
            Self::SignOff => "S",
            Self::KeepAsOther => "B",
            Self::SwapWithOther => "X",
            Self::DropOther => "N",
            Self::SavePicture => "E",
        })
    }

    /// Its name in the file of keys.
    pub fn name(self) -> String {
        match self {
            Self::LookFrom(viewpoint) => {
                return format!("look-from-{}", viewpoint.key());
            }
            Self::Flat => "flat-or-perspective",
            Self::Nearer => "nearer",
            Self::Farther => "farther",
            Self::Turn => "turn-pinion",
            Self::Rock => "rock-ring-gear",
            Self::ToothBack => "one-tooth-back",
            Self::ToothOn => "one-tooth-on",
            Self::ToothRoom => "tooth-room",
            Self::NextPart => "next-part",
            Self::PartBefore => "part-before",
            Self::ToWork => "to-the-work",
            Self::TakeInHand => "take-last-reading",
            Self::Enlarge => "enlarge-instrument",
            Self::ReadOut => "say-values",
            Self::SignOff => "sign-off",
            Self::KeepAsOther => "keep-as-b",
            Self::SwapWithOther => "swap-a-and-b",
            Self::DropOther => "without-b",
            Self::SavePicture => "save-picture",
        }
        .to_owned()
    }

    /// The action of this name in the file of keys.
    pub fn named(name: &str) -> Option<Self> {
        Self::all().find(|action| action.name() == name)
    }
}

/// As the list of keys says it.
impl fmt::Display for Action {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&match self {
            Self::LookFrom(viewpoint) => say!("keys-look-from", view = viewpoint.label()),
            Self::Flat => say!("keys-flat"),
            Self::Nearer => say!("keys-nearer"),
            Self::Farther => say!("keys-farther"),
            Self::Turn => say!("keys-turn"),
            Self::Rock => say!("keys-rock"),
            Self::ToothBack => say!("keys-tooth-back"),
            Self::ToothOn => say!("keys-tooth-on"),
            Self::ToothRoom => say!("keys-tooth-room"),
            Self::NextPart => say!("keys-next-part"),
            Self::PartBefore => say!("keys-part-before"),
            Self::ToWork => say!("keys-to-work"),
            Self::TakeInHand => say!("keys-take-in-hand"),
            Self::Enlarge => say!("keys-enlarge"),
            Self::ReadOut => say!("keys-read-out"),
            Self::SignOff => say!("keys-sign-off"),
            Self::KeepAsOther => say!("keys-keep-as-b"),
            Self::SwapWithOther => say!("keys-swap"),
            Self::DropOther => say!("keys-drop-b"),
            Self::SavePicture => say!("keys-save-picture"),
        })
    }
}
