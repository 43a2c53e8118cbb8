//! Motion of the wheel: the curve of first touch of one pair, and the lower envelope of all pairs.
//!
//! Source: transmission error as the wheel's lag, and its change-over between pairs, are in F. L. Litvin and A.
//! Fuentes, Gear Geometry and Applied Theory, 2nd ed., 2004; that all pairs in reach and their edges count, in T. J.
//! Krenzer, SAE paper 810688 (1981). The envelope of Hermite cubics is our own method.

use super::touch::{FirstTouch, NodeAtPlacement, TouchSearch, TouchStart};

/// How far the trapezoid rule may miss the difference of two neighbouring samples before another is put between, rad.
const SAMPLE_TOLERANCE: f64 = 1e-7;
/// How far above the first of all pairs a pair is still sampled densely, rad: between two samples the envelope moves less.
const NEAR_ENVELOPE: f64 = 5e-5;
/// Halvings of a sampling interval at a jump.
const MOST_HALVINGS: u32 = 7;
/// How near to an edge of the flank counts as edge contact.
const EDGE_WIDTH: f64 = 0.02;

/// The curve of first touch of one pair: samples by rising roll.
#[derive(Debug, Clone)]
pub(crate) struct Curve {
    samples: Vec<Sample>,
}

#[derive(Debug, Clone, Copy)]
pub(crate) struct Sample {
    pub(crate) roll: f64,
    /// None where nothing touches.
    pub(crate) touch: Option<FirstTouch>,
}

impl Curve {
    /// Samples the pair over its range; more densely where the touching point jumps or an edge begins, as far as other
    /// pairs do not touch long before.
    pub(crate) fn new(search: &TouchSearch<'_>, first: i64, last: i64, step: f64, rolls: usize) -> Self {
        let nodes = search.nodes();
        let mut samples: Vec<Sample> = Vec::new();
        if nodes.is_empty() {
            return Self { samples };
        }
        let mut base: Vec<(Sample, Option<TouchStart>)> = Vec::new();
        let mut neighbour: Option<TouchStart> = None;
        for k in first..=last {
            let roll = k as f64 * step;
            let found = search.first(roll, &nodes, neighbour);
            neighbour = found.map(|(_, start)| start);
            let touch = found.map(|(touch, _)| touch);
            base.push((Sample { roll, touch }, neighbour));
        }
        let least = least_of_pairs(&base, rolls);
        let near = |i: usize, sample: &Sample| {
            sample
                .touch
                .is_none_or(|t| least.get(i % rolls).is_none_or(|l| t.toward < l + NEAR_ENVELOPE))
        };
        for (i, pair) in base.windows(2).enumerate() {
            let [(before, start), (after, _)] = pair else { continue };
            samples.push(*before);
            if near(i, before) || near(i + 1, after) {
                refine(search, &nodes, *start, *before, *after, MOST_HALVINGS, &mut samples);
            }
        }
        samples.extend(base.last().map(|(sample, _)| *sample));
        Self { samples }
    }
}

impl Curve {
    /// From samples by rising roll.
    pub(crate) fn from_samples(samples: Vec<Sample>) -> Self {
        Self { samples }
    }

    /// By rising roll.
    pub(crate) fn samples(&self) -> &[Sample] {
        &self.samples
    }
}

/// For each sample of a pitch the smallest rotation of all pairs, infinite where none touches.
fn least_of_pairs(base: &[(Sample, Option<TouchStart>)], rolls: usize) -> Vec<f64> {
    let mut least = vec![f64::INFINITY; rolls];
    for (i, (sample, _)) in base.iter().enumerate() {
        if let (Some(touch), Some(slot)) = (&sample.touch, least.get_mut(i % rolls))
            && touch.toward < *slot
        {
            *slot = touch.toward;
        }
    }
    least
}

fn refine(
    search: &TouchSearch<'_>,
    nodes: &[NodeAtPlacement],
    start: Option<TouchStart>,
    before: Sample,
    after: Sample,
    halvings: u32,
    samples: &mut Vec<Sample>,
) {
    let smooth = match (&before.touch, &after.touch) {
        (Some(a), Some(b)) => {
            let trapezoid = 0.5 * (after.roll - before.roll) * (a.slope + b.slope);
            (b.toward - a.toward - trapezoid).abs() < SAMPLE_TOLERANCE
                && a.on_tip == b.on_tip
                && a.on_border == b.on_border
        }
        (None, None) => true,
        _ => false,
    };
    if smooth || halvings == 0 {
        return;
    }
    let roll = 0.5 * (before.roll + after.roll);
    let found = search.first(roll, nodes, start);
    let middle = Sample {
        roll,
        touch: found.map(|(touch, _)| touch),
    };
    refine(search, nodes, start, before, middle, halvings - 1, samples);
    samples.push(middle);
    let start = found.map(|(_, s)| s).or(start);
    refine(search, nodes, start, middle, after, halvings - 1, samples);
}

/// A cubic between two rolls from values and slopes at its ends.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Span {
    pub(crate) from: f64,
    pub(crate) to: f64,
    /// a0 + a1 t + a2 t² + a3 t³, t the roll from `from`.
    pub(crate) cubic: [f64; 4],
    /// Shares of the span in edge contact: wheel, pinion tip.
    edge: [f64; 2],
    /// Which pair: rolls that it is ahead of the first, in pitches.
    pair: i64,
}

fn value(cubic: &[f64; 4], t: f64) -> f64 {
    cubic[0] + t * (cubic[1] + t * (cubic[2] + t * cubic[3]))
}

fn slope(cubic: &[f64; 4], t: f64) -> f64 {
    cubic[1] + t * (2.0 * cubic[2] + t * 3.0 * cubic[3])
}

fn hermite(h: f64, d0: f64, s0: f64, d1: f64, s1: f64) -> [f64; 4] {
    let rise = (d1 - d0) / h;
    [
        d0,
        s0,
        (3.0 * rise - 2.0 * s0 - s1) / h,
        (s0 + s1 - 2.0 * rise) / (h * h),
    ]
}

/// The cubic seen from another origin.
fn shifted(cubic: &[f64; 4], by: f64) -> [f64; 4] {
    [
        value(cubic, by),
        slope(cubic, by),
        cubic[2] + 3.0 * by * cubic[3],
        cubic[3],
    ]
}

impl Span {
    pub(crate) fn at(&self, roll: f64) -> (f64, f64) {
        let t = roll - self.from;
        (value(&self.cubic, t), slope(&self.cubic, t))
    }

    /// Values at the ends and at extremes between.
    fn extremes(&self) -> [f64; 4] {
        let h = self.to - self.from;
        let [a0, a1, a2, a3] = self.cubic;
        let end = value(&self.cubic, h);
        let inner = |t: f64| if t > 0.0 && t < h { value(&self.cubic, t) } else { a0 };
        let root = (a2 * a2 - 3.0 * a1 * a3).sqrt();
        // Of 3 a3 t² + 2 a2 t + a1 = 0, in the form without cancellation; NaN compares false.
        let q = -(a2 + if a2 >= 0.0 { root } else { -root });
        [a0, end, inner(q / (3.0 * a3)), inner(a1 / q)]
    }

    fn mean(&self) -> f64 {
        let h = self.to - self.from;
        let [a0, a1, a2, a3] = self.cubic;
        a0 + h * (a1 / 2.0 + h * (a2 / 3.0 + h * a3 / 4.0))
    }
}

/// Lower envelope of the curves of all pairs, periodic with the pitch.
#[derive(Debug, Clone)]
pub(crate) struct Envelope {
    start: f64,
    pitch: f64,
    spans: Vec<Span>,
}

impl Envelope {
    /// None where at some roll no pair can touch.
    pub(crate) fn new(curve: &Curve, pitch: f64) -> Option<Self> {
        let pieces: Vec<Span> = curve
            .samples
            .windows(2)
            .filter_map(|w| match w {
                [a, b] => piece(a, b),
                _ => None,
            })
            .collect();
        let (first, last) = (pieces.first()?, pieces.last()?);
        let start = 0.5 * (first.from + last.to - pitch);
        // Everything brought into one pitch from `start`, cut at its border.
        let mut shifted_pieces: Vec<Span> = Vec::new();
        let mut breaks = vec![start, start + pitch];
        for p in &pieces {
            let turns = ((p.from - start) / pitch).floor();
            for extra in [0.0, 1.0] {
                let by = (turns + extra) * pitch;
                let (from, to) = (p.from - by, p.to - by);
                if to <= start || from >= start + pitch {
                    continue;
                }
                shifted_pieces.push(Span {
                    from,
                    to,
                    pair: whole(turns + extra),
                    ..*p
                });
                for roll in [from, to] {
                    if roll > start && roll < start + pitch {
                        breaks.push(roll);
                    }
                }
            }
        }
        breaks.sort_by(f64::total_cmp);
        breaks.dedup_by(|a, b| (*a - *b).abs() < 1e-12);
        shifted_pieces.sort_by(|a, b| a.from.total_cmp(&b.from));
        let mut spans: Vec<Span> = Vec::new();
        for w in breaks.windows(2) {
            let &[from, to] = w else { continue };
            let middle = 0.5 * (from + to);
            let here: Vec<Span> = shifted_pieces
                .iter()
                .take_while(|p| p.from < middle)
                .filter(|p| p.to > middle)
                .map(|p| Span {
                    from,
                    to,
                    cubic: shifted(&p.cubic, from - p.from),
                    ..*p
                })
                .collect();
            lowest(from, to, &here, 12, &mut spans)?;
        }
        Some(Self { start, pitch, spans })
    }

    /// Value and slope at a roll.
    pub(crate) fn at(&self, roll: f64) -> (f64, f64) {
        let (span, roll) = self.span(roll);
        span.at(roll)
    }

    fn span(&self, roll: f64) -> (&Span, f64) {
        let turns = ((roll - self.start) / self.pitch).floor();
        let inside = roll - turns * self.pitch;
        let place = self.spans.partition_point(|s| s.to <= inside);
        let last = self.spans.len().saturating_sub(1);
        let place = if place > last { last } else { place };
        (&self.spans[place], inside)
    }

    /// Rolls in one pitch where the slope jumps down: the change-over between pairs, and jumps of the touching point.
    pub(crate) fn kinks(&self) -> Vec<f64> {
        self.kinks_and_jumps().into_iter().map(|(roll, _)| roll).collect()
    }

    /// The same with how far the slope jumps down.
    pub(crate) fn kinks_and_jumps(&self) -> Vec<(f64, f64)> {
        let mut kinks = Vec::new();
        let mut before = self.spans.last();
        for span in &self.spans {
            if let Some(b) = before {
                let jump = slope(&b.cubic, b.to - b.from) - slope(&span.cubic, 0.0);
                if jump > 1e-6 {
                    kinks.push((span.from, jump));
                }
            }
            before = Some(span);
        }
        kinks
    }

    pub(crate) fn pitch(&self) -> f64 {
        self.pitch
    }

    /// Smallest and largest value.
    pub(crate) fn range(&self) -> (f64, f64) {
        range(&self.spans)
    }

    /// Shares of the pitch in edge contact: wheel's edges, pinion's tip.
    pub(crate) fn edge_shares(&self) -> [f64; 2] {
        let mut shares = [0.0; 2];
        for span in &self.spans {
            let part = (span.to - span.from) / self.pitch;
            for (share, edge) in shares.iter_mut().zip(span.edge) {
                *share += part * edge;
            }
        }
        // Rounding of many parts.
        shares.map(|share| if share > 1.0 - 1e-12 { 1.0 } else { share })
    }

    /// Smallest, mean and largest of this envelope plus another that is taken `lead` further on.
    pub(crate) fn sum(&self, other: &Self, lead: f64) -> (f64, f64, f64) {
        let mut breaks: Vec<f64> = self.spans.iter().map(|s| s.from).collect();
        breaks.push(self.start + self.pitch);
        for s in &other.spans {
            let roll = s.from - lead;
            breaks.push(roll - ((roll - self.start) / self.pitch).floor() * self.pitch);
        }
        breaks.sort_by(f64::total_cmp);
        let mut total = 0.0;
        let mut sums = Vec::with_capacity(breaks.len());
        for w in breaks.windows(2) {
            let &[from, to] = w else { continue };
            if to - from < 1e-13 {
                continue;
            }
            let middle = 0.5 * (from + to);
            let (a, inside) = self.span(middle);
            let first = shifted(&a.cubic, from + (inside - middle) - a.from);
            let (b, inside) = other.span(middle + lead);
            let second = shifted(&b.cubic, from + (inside - middle) - b.from);
            let sum = Span {
                from,
                to,
                cubic: [0, 1, 2, 3].map(|i| first[i] + second[i]),
                edge: [0.0; 2],
                pair: 0,
            };
            total += sum.mean() * (to - from);
            sums.push(sum);
        }
        let (low, high) = range(&sums);
        (low, total / self.pitch, high)
    }

    /// Values at even rolls over one pitch from the roll 0 on, both ends.
    pub(crate) fn values(&self, count: usize) -> Vec<(f64, f64)> {
        (0..=count)
            .map(|i| {
                let roll = self.pitch * i as f64 / count as f64;
                (roll, self.at(roll).0)
            })
            .collect()
    }
}

/// Parts of a pitch for which a [`Lookup`] knows where to begin.
const LOOKUP_PARTS: usize = 64;

/// An envelope that is asked at a great many rolls.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Lookup<'a> {
    spans: &'a [Span],
    start: f64,
    pitch: f64,
    inverse_pitch: f64,
    /// First span that may hold a part of the pitch.
    first: [u16; LOOKUP_PARTS],
}

impl Lookup<'_> {
    /// Value and slope at a roll.
    pub(crate) fn at(&self, roll: f64) -> (f64, f64) {
        let turns = (roll - self.start) * self.inverse_pitch;
        let inside = roll - below(turns) * self.pitch;
        let part = part_of(inside - self.start, self.inverse_pitch);
        let mut place = usize::from(self.first.get(part).copied().unwrap_or(0));
        let last = self.spans.len().saturating_sub(1);
        while place < last && self.spans.get(place).is_some_and(|s| s.to <= inside) {
            place += 1;
        }
        self.spans.get(place).map_or((0.0, 0.0), |span| span.at(inside))
    }
}

/// The whole number at or below x, without the call that `floor` is on processors of long ago.
fn below(x: f64) -> f64 {
    let cut = whole(x) as f64;
    if cut > x { cut - 1.0 } else { cut }
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a cast saturates at 0, and the largest index is held"
)]
fn part_of(inside: f64, inverse_pitch: f64) -> usize {
    let part = (inside * inverse_pitch * LOOKUP_PARTS as f64) as usize;
    part.min(LOOKUP_PARTS - 1)
}

impl Envelope {
    /// The same for a great many questions.
    pub(crate) fn lookup(&self) -> Lookup<'_> {
        let mut first = [0; LOOKUP_PARTS];
        for (part, slot) in first.iter_mut().enumerate() {
            let from = self.start + self.pitch * part as f64 / LOOKUP_PARTS as f64;
            let place = self.spans.partition_point(|s| s.to <= from - 1e-12);
            *slot = u16::try_from(place).unwrap_or(0);
        }
        Lookup {
            spans: &self.spans,
            start: self.start,
            pitch: self.pitch,
            inverse_pitch: 1.0 / self.pitch,
            first,
        }
    }
}

fn range(spans: &[Span]) -> (f64, f64) {
    let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
    for v in spans.iter().flat_map(Span::extremes) {
        if v < low {
            low = v;
        }
        if v > high {
            high = v;
        }
    }
    (low, high)
}

#[expect(clippy::cast_possible_truncation, reason = "pairs are counted in single digits")]
fn whole(x: f64) -> i64 {
    x as i64
}

fn piece(a: &Sample, b: &Sample) -> Option<Span> {
    let (ta, tb) = (a.touch?, b.touch?);
    let h = b.roll - a.roll;
    let margin = |t: &FirstTouch| {
        let (ax, ay) = (t.x.abs(), t.y.abs());
        let most = if ax > ay { ax } else { ay };
        if t.on_border { -1.0 } else { 1.0 - EDGE_WIDTH - most }
    };
    let share = |f: f64, t: f64| match (f <= 0.0, t <= 0.0) {
        (true, true) => 1.0,
        (false, false) => 0.0,
        // The part of the line from f to t that lies at or below 0.
        (true, false) => f / (f - t),
        (false, true) => t / (t - f),
    };
    let tip = |t: &FirstTouch| if t.on_tip { -1.0 } else { 1.0 };
    Some(Span {
        from: a.roll,
        to: b.roll,
        cubic: hermite(h, ta.toward, ta.slope, tb.toward, tb.slope),
        edge: [share(margin(&ta), margin(&tb)), share(tip(&ta), tip(&tb))],
        pair: 0,
    })
}

/// Adds the lowest of several cubics over one interval, cut where they cross. None where there is none.
fn lowest(from: f64, to: f64, here: &[Span], depth: u32, spans: &mut Vec<Span>) -> Option<()> {
    let least_at = |roll: f64| {
        let mut best: Option<(f64, &Span)> = None;
        for p in here {
            let v = p.at(roll).0;
            if best.is_none_or(|(b, _)| v < b) {
                best = Some((v, p));
            }
        }
        best.map(|(_, p)| p)
    };
    let inset = 1e-9 * (to - from);
    let (a, b) = (least_at(from + inset)?, least_at(to - inset)?);
    let cut = |p: &Span, from: f64, to: f64| Span {
        from,
        to,
        cubic: shifted(&p.cubic, from - p.from),
        ..*p
    };
    if a.pair == b.pair {
        spans.push(cut(a, from, to));
        return Some(());
    }
    // a is lower at the left end, b at the right one.
    let (mut low, mut high) = (from, to);
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if a.at(middle).0 <= b.at(middle).0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    let cross = 0.5 * (low + high);
    let third = least_at(cross)?;
    if depth > 0 && third.pair != a.pair && third.pair != b.pair {
        lowest(from, cross, here, depth - 1, spans)?;
        return lowest(cross, to, here, depth - 1, spans);
    }
    spans.push(cut(a, from, cross));
    spans.push(cut(b, cross, to));
    Some(())
}
