//! Which pinion tooth meets which wheel tooth, and whether the set needs timing marks.
//!
//! Source: arithmetic (Euclid's algorithm); the words and which sets get timing marks are common workshop practice.

/// How a set hunts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HuntingKind {
    /// No common factor: each pinion tooth meets every wheel tooth. No timing marks.
    Hunting,
    /// A common factor smaller than the pinion's tooth number: each pinion tooth meets some of the wheel's teeth. The
    /// set runs in with them and has timing marks.
    PartlyHunting,
    /// The wheel's tooth number is a multiple of the pinion's: each wheel tooth meets one and the same pinion tooth.
    /// Timing marks.
    NonHunting,
}

/// After how much turning the same two teeth meet again.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Hunting {
    /// Greatest common divisor of the tooth numbers: the number of classes that never mix.
    pub classes: u32,
    /// Pinion turns until the same pair meets again, z2/gcd.
    pub pinion_turns: u32,
    /// Wheel turns until the same pair meets again, z1/gcd.
    pub wheel_turns: u32,
    /// Tooth contacts until then, the least common multiple of z1 and z2.
    pub contacts: u64,
    /// How the set hunts.
    pub kind: HuntingKind,
}

impl Hunting {
    /// The meetings of a set with these tooth numbers; `None` where one of them is 0.
    ///
    /// ```
    /// use lashwright::gear::{Hunting, HuntingKind};
    /// let hunting = Hunting::of(10, 35).expect("both members have teeth");
    /// assert_eq!((hunting.pinion_turns, hunting.wheel_turns, hunting.contacts), (7, 2, 70));
    /// assert_eq!(hunting.kind, HuntingKind::PartlyHunting);
    /// ```
    pub fn of(pinion_teeth: u32, wheel_teeth: u32) -> Option<Self> {
        let (mut classes, mut rest) = (pinion_teeth, wheel_teeth);
        while rest != 0 {
            (classes, rest) = (rest, classes.checked_rem(rest)?);
        }
        let pinion_turns = wheel_teeth.checked_div(classes)?;
        let wheel_turns = pinion_teeth.checked_div(classes)?;
        if pinion_turns == 0 || wheel_turns == 0 {
            return None;
        }
        let kind = match (classes, wheel_turns) {
            (1, _) => HuntingKind::Hunting,
            (_, 1) => HuntingKind::NonHunting,
            _ => HuntingKind::PartlyHunting,
        };
        let contacts = u64::from(wheel_teeth) * u64::from(wheel_turns);
        Some(Self {
            classes,
            pinion_turns,
            wheel_turns,
            contacts,
            kind,
        })
    }

    /// Whether the set must be put together by its timing marks.
    pub fn needs_timing_marks(&self) -> bool {
        self.kind != HuntingKind::Hunting
    }
}
