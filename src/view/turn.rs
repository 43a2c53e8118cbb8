//! How far the pair has been turned, exactly.
//!
//! Two gears turn tooth by tooth, so that the state is one whole number: how many small steps of a tooth pitch have
//! passed the mesh. Both angles follow from that number, and their ratio is the ratio of the tooth counts after any
//! time; nothing adds up rounding errors.

use core::f64::consts::TAU;
use core::time::Duration;

/// Steps in one tooth pitch.
pub const STEPS_PER_TOOTH: i64 = 5040;

/// Turns of the pinion in a minute when it turns by itself: slow enough to follow a marked tooth by eye.
pub const PINION_TURNS_PER_MINUTE: u32 = 10;

const NANOS_PER_MINUTE: u128 = 60_000_000_000;

/// How far a pair has been turned from the designed position, in which a tooth trace of either gear passes through
/// the mean point.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Turn {
    pinion_teeth: u32,
    wheel_teeth: u32,
    steps: i64,
    // What has been waited of the next step, in steps × nanoseconds per minute.
    waited: u128,
}

impl Turn {
    /// A pair at rest in the designed position. A gear without teeth counts as one with a single tooth.
    pub fn new(pinion_teeth: u32, wheel_teeth: u32) -> Self {
        Self {
            pinion_teeth: pinion_teeth.max(1),
            wheel_teeth: wheel_teeth.max(1),
            steps: 0,
            waited: 0,
        }
    }

    /// Turns the pinion by whole teeth.
    pub fn teeth(&mut self, teeth: i32) {
        self.steps = self.steps.saturating_add(i64::from(teeth) * STEPS_PER_TOOTH);
    }

    /// Turns by a share of a tooth, to the nearest step; what is no number turns nothing.
    pub fn by(&mut self, teeth: f64) {
        #[expect(clippy::cast_possible_truncation, reason = "a cast saturates, and no number is 0")]
        let steps = (teeth * STEPS_PER_TOOTH as f64).round() as i64;
        self.steps = self.steps.saturating_add(steps);
    }

    /// Turns on or back, whichever is shorter, until the ring gear stands at this angle about +z, to the nearest step.
    pub fn wheel_to(&mut self, angle_rad: f64) {
        if !angle_rad.is_finite() {
            return;
        }
        let steps_per_turn = STEPS_PER_TOOTH * i64::from(self.wheel_teeth);
        #[expect(
            clippy::cast_possible_truncation,
            reason = "a share of a turn, times a few hundred thousand steps"
        )]
        let wanted = (-angle_rad / TAU * steps_per_turn as f64).round() as i64;
        let on = wanted.saturating_sub(self.steps).rem_euclid(steps_per_turn);
        let shorter = if 2 * on > steps_per_turn {
            on - steps_per_turn
        } else {
            on
        };
        self.steps = self.steps.saturating_add(shorter);
    }

    /// Lets the pinion turn by itself for a while. Time that does not fill a step is kept for the next call.
    pub fn run(&mut self, elapsed: Duration) {
        let steps_per_minute = u128::from(PINION_TURNS_PER_MINUTE)
            * u128::from(self.pinion_teeth)
            * u128::from(STEPS_PER_TOOTH.unsigned_abs());
        // An hour at most: longer waits are a suspended machine, and the product stays far inside 128 bits.
        let nanos = elapsed.as_nanos().min(60 * NANOS_PER_MINUTE);
        let waited = self.waited + nanos * steps_per_minute;
        self.steps = self
            .steps
            .saturating_add(i64::try_from(waited / NANOS_PER_MINUTE).unwrap_or(i64::MAX));
        self.waited = waited % NANOS_PER_MINUTE;
    }

    /// Steps of a tooth pitch that have passed the mesh since the designed position.
    pub fn steps(&self) -> i64 {
        self.steps
    }

    /// φ1 about +x, radians, 0 to 2π.
    pub fn pinion_angle_rad(&self) -> f64 {
        Self::angle_rad(self.steps, self.pinion_teeth)
    }

    /// φ2 = −(z1/z2) φ1 about +z, radians, 0 to 2π.
    pub fn wheel_angle_rad(&self) -> f64 {
        Self::angle_rad(self.steps.saturating_neg(), self.wheel_teeth)
    }

    /// Whole turns and teeth of the pinion since the designed position; teeth are 0 to z1 − 1.
    pub fn pinion_turns_and_teeth(&self) -> (i64, i64) {
        let teeth = self.steps.div_euclid(STEPS_PER_TOOTH);
        (
            teeth.div_euclid(i64::from(self.pinion_teeth)),
            teeth.rem_euclid(i64::from(self.pinion_teeth)),
        )
    }

    /// Whole turns and teeth of the ring gear, counted like the pinion's: both have passed the same teeth.
    pub fn wheel_turns_and_teeth(&self) -> (i64, i64) {
        let teeth = self.steps.div_euclid(STEPS_PER_TOOTH);
        (
            teeth.div_euclid(i64::from(self.wheel_teeth)),
            teeth.rem_euclid(i64::from(self.wheel_teeth)),
        )
    }

    fn angle_rad(steps: i64, teeth: u32) -> f64 {
        let steps_per_turn = STEPS_PER_TOOTH * i64::from(teeth);
        TAU * (steps.rem_euclid(steps_per_turn) as f64 / steps_per_turn as f64)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_turn_of_the_pinion_passes_its_teeth_at_the_ring_gear() {
        let mut turn = Turn::new(11, 41);
        turn.teeth(11);
        assert_eq!(turn.pinion_turns_and_teeth(), (1, 0));
        assert_eq!(turn.wheel_turns_and_teeth(), (0, 11));
        assert!(turn.pinion_angle_rad().abs() < 1e-15, "a whole turn");
        let wanted = TAU * (41.0 - 11.0) / 41.0;
        assert!(
            (turn.wheel_angle_rad() - wanted).abs() < 1e-15,
            "the ring gear turns the other way"
        );
        turn.teeth(-12);
        assert_eq!(turn.pinion_turns_and_teeth(), (-1, 10), "one tooth back");
    }

    #[test]
    fn the_ring_gear_is_brought_to_an_angle_the_shorter_way() {
        let mut turn = Turn::new(11, 41);
        turn.teeth(40);
        turn.wheel_to(-0.25 * TAU);
        assert!(
            (turn.wheel_angle_rad() - 0.75 * TAU).abs() < TAU / (41.0 * 5040.0),
            "there"
        );
        assert_eq!(turn.wheel_turns_and_teeth().0, 1, "on by a quarter, not back by three");
        let before = turn;
        turn.wheel_to(f64::NAN);
        turn.wheel_to(0.75 * TAU);
        assert_eq!(turn, before, "nonsense and what is there already change nothing");
    }

    /// A day of turning in uneven frames: the same number as one division says, and the ratio to the last digit.
    #[test]
    fn neither_time_nor_ratio_drifts() {
        let mut turn = Turn::new(9, 37);
        let mut elapsed = Duration::ZERO;
        for frame in 0..1_000_000_u64 {
            let frame = Duration::from_nanos(1_000_000 + (frame * 7919) % 31_000_017);
            elapsed += frame;
            turn.run(frame);
        }
        let steps = elapsed.as_nanos() * u128::from(PINION_TURNS_PER_MINUTE) * 9 * 5040 / NANOS_PER_MINUTE;
        assert_eq!(
            u128::try_from(turn.steps()).expect("forward"),
            steps,
            "after {elapsed:?}"
        );
        let teeth = turn.steps() as f64 / STEPS_PER_TOOTH as f64;
        let pinion = turn.pinion_angle_rad() / TAU + turn.pinion_turns_and_teeth().0 as f64;
        let wheel = 1.0 - turn.wheel_angle_rad() / TAU + turn.wheel_turns_and_teeth().0 as f64;
        assert!(
            (pinion * 9.0 - teeth).abs() < 1e-9 * teeth,
            "pinion {pinion}, teeth {teeth}"
        );
        assert!(
            (wheel * 37.0 - teeth).abs() < 1e-9 * teeth,
            "ring gear {wheel}, teeth {teeth}"
        );
    }

    #[test]
    fn a_suspended_machine_and_empty_gears_do_no_harm() {
        let mut turn = Turn::new(0, 0);
        turn.run(Duration::MAX);
        turn.teeth(i32::MIN);
        assert!(
            turn.pinion_angle_rad().is_finite() && turn.wheel_angle_rad().is_finite(),
            "finite angles"
        );
    }
}
