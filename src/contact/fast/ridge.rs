//! Motion of the wheel from the forms: where each height of the tooth touches first, and the first of all heights.
//!
//! At a fixed roll the rotation D has its least value along a height where dD/dx = 0. Each node gives the roll at which
//! that place is itself, and D and dD/dφ there (of the least value too, since dD/dx = 0), so that one height's least
//! D over the roll is a cubic from node to node. Beyond its ends the end of the flank touches. The first touch at a
//! roll is the least over the heights, between them by a parabola, as far as the pinion's tip allows.
//!
//! Source: our own method; Hermite's cubics are textbook analysis.

use crate::contact::motion::{Curve, Sample};
use crate::contact::resolution::coordinate;
use crate::contact::touch::FirstTouch;

use super::form::{CELLS, COLUMNS, Column, ROWS};

/// Rolls in one pitch.
const ROLLS: usize = 16;
/// Pairs that touch this much later than the first one, rad, need no motion of their own.
const NEAR_ENVELOPE: f64 = 2.0e-4;
/// How far rolls are looked at beyond those at which nodes touch, in samples.
const BEYOND: f64 = ROLLS as f64 / 2.0;
/// Most samples of a pair: more than any gear set has.
const MOST_SAMPLES: i64 = 4096;

/// A node on the ridge of its height.
#[derive(Debug, Clone, Copy)]
struct Stop {
    roll: f64,
    toward: f64,
    slope: f64,
    bend: f64,
    tip: f64,
    tip_slope: f64,
    x: f64,
}

/// One height of the tooth, by rising roll.
#[derive(Debug, Clone, Default)]
struct Height {
    stops: Vec<Stop>,
    /// Whether the first and the last stop lie at the border of what is regular rather than at an end of the flank.
    on_border: [bool; 2],
}

/// What a height says at a roll.
#[derive(Debug, Clone, Copy)]
struct Word {
    toward: f64,
    slope: f64,
    tip: f64,
    x: f64,
    on_border: bool,
}

/// D seen from a roll t after another node's meeting: (value, slope, bend).
fn seen_from(column: &Column, row: usize, roll: f64) -> [f64; 3] {
    let t = roll - column.meeting[row];
    let (slope, bend) = (column.slope[row], column.bend[row]);
    [column.touch[row] + t * (slope + 0.5 * bend * t), slope + bend * t, bend]
}

/// The roll from a node's meeting at which dD/dx = 0 there. `derivative` holds the quadratic dD/dx in that roll.
fn level_roll(derivative: [f64; 3]) -> Option<f64> {
    let [a, b, c] = derivative;
    let first = -a / b;
    let second = first - 0.5 * c * first * first / (b + c * first);
    (second.is_finite() && second.abs() < 0.5).then_some(second)
}

/// The ridge of one height.
fn height(columns: &[Column], row: usize) -> Height {
    let regular = |i: usize| columns.get(i).is_some_and(|c| c.regular[row]);
    let mut stops: Vec<Stop> = Vec::with_capacity(COLUMNS);
    let (mut first, mut last) = (None, 0);
    for (i, column) in columns.iter().enumerate() {
        if !regular(i) {
            continue;
        }
        let roll = column.meeting[row];
        let other = |k: usize| columns.get(k).map_or([0.0; 3], |c| seen_from(c, row, roll));
        let (before, after) = (i > 0 && regular(i - 1), regular(i + 1));
        let derivative = match (before, after) {
            (true, true) => {
                let (low, high) = (other(i - 1), other(i + 1));
                [0, 1, 2].map(|k| high[k] - low[k])
            }
            (false, true) if regular(i + 2) => {
                let (here, one, two) = (other(i), other(i + 1), other(i + 2));
                [0, 1, 2].map(|k| 4.0 * one[k] - 3.0 * here[k] - two[k])
            }
            (true, false) if i > 1 && regular(i - 2) => {
                let (here, one, two) = (other(i), other(i - 1), other(i - 2));
                [0, 1, 2].map(|k| 4.0 * one[k] - 3.0 * here[k] - two[k])
            }
            _ => continue,
        };
        let Some(t) = level_roll(derivative) else { continue };
        let [toward, slope, bend] = seen_from(column, row, roll + t);
        stops.push(Stop {
            roll: roll + t,
            toward,
            slope,
            bend,
            tip: column.tip[row] + column.tip_slope[row] * t,
            tip_slope: column.tip_slope[row],
            x: coordinate(i, CELLS[0]),
        });
        if first.is_none() {
            first = Some(i);
        }
        last = i;
    }
    let mut on_border = [first.is_some_and(|i| i > 0), last + 1 < COLUMNS];
    if let (Some(a), Some(b)) = (stops.first(), stops.last())
        && a.roll > b.roll
    {
        stops.reverse();
        on_border.reverse();
    }
    // Far from the designed placement the ridge may fold: what does not go on is left out.
    let mut highest = f64::NEG_INFINITY;
    stops.retain(|stop| {
        let goes_on = stop.roll > highest + 1e-9;
        if goes_on {
            highest = stop.roll;
        }
        goes_on
    });
    Height { stops, on_border }
}

/// Beyond an end of a height the end itself touches.
fn beyond(stop: &Stop, roll: f64, on_border: bool) -> Word {
    let t = roll - stop.roll;
    Word {
        toward: stop.toward + t * (stop.slope + 0.5 * stop.bend * t),
        slope: stop.slope + stop.bend * t,
        tip: stop.tip + stop.tip_slope * t,
        x: stop.x,
        on_border,
    }
}

impl Height {
    /// What it says at a roll; `from` is the stop before which the last roll lay: rolls are asked for in rising order.
    fn at(&self, roll: f64, from: &mut usize) -> Option<Word> {
        while self.stops.get(*from).is_some_and(|stop| stop.roll < roll) {
            *from += 1;
        }
        let Some(after) = self.stops.get(*from) else {
            return self.stops.last().map(|stop| beyond(stop, roll, self.on_border[1]));
        };
        let Some(before) = from.checked_sub(1).and_then(|i| self.stops.get(i)) else {
            return Some(beyond(after, roll, self.on_border[0]));
        };
        let h = after.roll - before.roll;
        let inverse = 1.0 / h;
        let u = (roll - before.roll) * inverse;
        let rise = after.toward - before.toward;
        let (a, b) = (h * before.slope - rise, rise - h * after.slope);
        let v = 1.0 - u;
        Some(Word {
            toward: before.toward + u * rise + u * v * (v * a + u * b),
            slope: (rise + (v - u) * (v * a + u * b) + u * v * (b - a)) * inverse,
            tip: before.tip + u * (after.tip - before.tip),
            x: before.x + u * (after.x - before.x),
            on_border: false,
        })
    }
}

/// The first of all heights at one roll.
fn first_touch(words: &[Option<Word>; ROWS]) -> Option<FirstTouch> {
    let on_tooth = |word: &Option<Word>| word.is_some_and(|w| w.tip >= 0.0);
    let mut best: Option<(usize, f64)> = None;
    for (row, word) in words.iter().enumerate() {
        if let Some(word) = word
            && word.tip >= 0.0
            && best.is_none_or(|(_, least)| word.toward < least)
        {
            best = Some((row, word.toward));
        }
    }
    let (row, _) = best?;
    let here = words[row]?;
    let neighbour = |up: bool| {
        let other = if up { row + 1 } else { row.wrapping_sub(1) };
        words.get(other).copied().flatten()
    };
    let (below, above) = (neighbour(false), neighbour(true));
    // How far the height may go, in cells, before the tooth of the pinion ends.
    let reach = |other: &Option<Word>| match other {
        Some(other) if other.tip < 0.0 => here.tip / (here.tip - other.tip),
        Some(_) => 1.0,
        None => 0.0,
    };
    let (down, up) = (reach(&below), reach(&above));
    let touch = |step: f64, toward: f64, slope: f64, x: f64, on_tip: bool, on_border: bool| FirstTouch {
        x: x.clamp(-1.0, 1.0),
        y: (coordinate(row, CELLS[1]) + step * 2.0 / CELLS[1] as f64).clamp(-1.0, 1.0),
        toward,
        slope,
        on_tip,
        on_border,
    };
    let (low, high, at_end) = match (below, above) {
        (Some(low), Some(high)) => (low, high, 0.0),
        // At the end of the flank the parabola is laid through the two rows inside.
        (None, Some(one)) => match words.get(row + 2).copied().flatten() {
            Some(two) => (one, two, 1.0),
            None => return Some(touch(0.0, here.toward, here.slope, here.x, false, here.on_border)),
        },
        (Some(one), None) => match row.checked_sub(2).and_then(|r| words.get(r).copied().flatten()) {
            Some(two) => (one, two, -1.0),
            None => return Some(touch(0.0, here.toward, here.slope, here.x, false, here.on_border)),
        },
        (None, None) => return Some(touch(0.0, here.toward, here.slope, here.x, false, here.on_border)),
    };
    // Slope and half curvature of a quantity over the step in cells.
    let parabola = |here: f64, low: f64, high: f64| {
        if at_end == 0.0 {
            (0.5 * (high - low), 0.5 * (high + low) - here)
        } else {
            (
                at_end * (2.0 * low - 1.5 * here - 0.5 * high),
                0.5 * (here + high) - low,
            )
        }
    };
    let value = |(slope, half): (f64, f64), start: f64, step: f64| start + step * (slope + half * step);
    let run = parabola(here.toward, low.toward, high.toward);
    let wanted = if run.1 > 0.0 { -0.5 * run.0 / run.1 } else { 0.0 };
    let step = if wanted.is_nan() { 0.0 } else { wanted.clamp(-down, up) };
    let held_by_tip = (step > wanted && below.is_some() && !on_tooth(&below))
        || (step < wanted && above.is_some() && !on_tooth(&above));
    Some(touch(
        step,
        value(run, here.toward, step),
        value(parabola(here.slope, low.slope, high.slope), here.slope, step),
        value(parabola(here.x, low.x, high.x), here.x, step),
        held_by_tip,
        here.on_border,
    ))
}

/// The curve of first touch of one pair on one flank, from its columns, as far as no other pair forestalls it.
pub(super) fn curve(columns: &[Column], pitch: f64) -> Option<Curve> {
    let heights: Vec<Height> = (0..ROWS).map(|row| height(columns, row)).collect();
    let (mut lowest, mut highest) = (f64::INFINITY, f64::NEG_INFINITY);
    for height in &heights {
        if let (Some(a), Some(b)) = (height.stops.first(), height.stops.last()) {
            if a.roll < lowest {
                lowest = a.roll;
            }
            if b.roll > highest {
                highest = b.roll;
            }
        }
    }
    if lowest > highest {
        return None;
    }
    let step = pitch / ROLLS as f64;
    let first = whole((lowest / step - BEYOND).floor());
    let last = whole((highest / step + BEYOND).ceil());
    if last - first > MOST_SAMPLES {
        return None;
    }
    let mut from = [0; ROWS];
    let mut samples: Vec<Sample> = Vec::with_capacity(64);
    for k in first..=last {
        let roll = k as f64 * step;
        let mut words = [None; ROWS];
        for ((word, height), from) in words.iter_mut().zip(&heights).zip(&mut from) {
            *word = height.at(roll, from);
        }
        samples.push(Sample {
            roll,
            touch: first_touch(&words),
        });
    }
    Some(Curve::from_samples(near_first(samples)))
}

/// Leaves out samples that other pairs forestall, with both of their neighbours.
fn near_first(samples: Vec<Sample>) -> Vec<Sample> {
    let mut least = [f64::INFINITY; ROLLS];
    for (i, sample) in samples.iter().enumerate() {
        if let Some(touch) = &sample.touch
            && touch.toward < least[i % ROLLS]
        {
            least[i % ROLLS] = touch.toward;
        }
    }
    let near = |i: usize| {
        samples
            .get(i)
            .and_then(|s| s.touch)
            .is_some_and(|t| t.toward < least[i % ROLLS] + NEAR_ENVELOPE)
    };
    samples
        .iter()
        .enumerate()
        .map(|(i, sample)| Sample {
            roll: sample.roll,
            touch: sample
                .touch
                .filter(|_| near(i) || near(i + 1) || i.checked_sub(1).is_some_and(near)),
        })
        .collect()
}

/// A count of samples.
#[expect(
    clippy::cast_possible_truncation,
    reason = "a cast saturates, and far too many samples are refused"
)]
fn whole(x: f64) -> i64 {
    x as i64
}
