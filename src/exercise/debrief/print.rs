//! Prints of a build, and what the rule of the trade makes of them.

use super::period::Period;
use crate::bench::Measurand;
use crate::contact::{self, Contact, Film, Pair, Placement, Route};
use crate::exercise::attempt::Attempt;
use crate::exercise::history::Deed;
use crate::exercise::technician::{Chart, LARGEST_STEP_MM, LEAST_STEP_MM, Middles, asks, middles};

/// A print of a build.
#[derive(Debug, Clone)]
pub struct BuildPrint {
    /// The operation that rolled it; none for what nobody rolled before hand-over.
    pub rolled: Option<u32>,
    /// Where the gears stood.
    pub placement: Placement,
    /// What is true of both flanks there under a usual film.
    pub truth: Contact,
    /// Whether the gears were moved after it and before the build ended.
    pub moved_since: bool,
    /// Middles of both prints as the trainee saw them, mean of all looks.
    pub seen: Option<Middles>,
    /// How often it was looked at.
    pub looks: u32,
    /// What the rule asks for.
    pub asks: Asks,
}

/// How much deeper the rule of the trade asks the pinion to go, mm, negative for shallower: the heights of both prints,
/// drive counted double, over the slopes of the set's chart, at most 0.254 mm at once and nothing below 0.05 mm.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Asks {
    /// By the prints as they were seen.
    pub seen_mm: Option<f64>,
    /// By the true prints.
    pub truth_mm: Option<f64>,
}

/// All of a build whose gears stand at `stands` in the end. Of what was handed over, the last place counts even if nobody
/// rolled there.
pub(super) fn prints(
    attempt: &Attempt,
    span: Period,
    chart: &Chart,
    stands: Option<Placement>,
    handed_over: bool,
) -> Vec<BuildPrint> {
    let pair = &attempt.bench().setting().pair;
    let mut prints: Vec<BuildPrint> = Vec::new();
    for moment in span.moments(attempt) {
        match &moment.deed {
            Deed::Rolled => {
                let Some(placement) = moment.rolled_at else { continue };
                if let Some(last) = prints.last_mut()
                    && last.placement == placement
                {
                    continue;
                }
                prints.push(BuildPrint::new(pair, placement, Some(moment.operation)));
            }
            Deed::Looked {
                what: Measurand::Print {},
                ..
            } => {
                let place = usize::try_from(moment.operation).unwrap_or(0).saturating_sub(1);
                let middles = attempt.steps().get(place).and_then(|s| middles(&s.answer));
                if let (Some(print), Some(middles)) = (prints.last_mut(), middles) {
                    print.look(middles);
                }
            }
            _ => {}
        }
    }
    for print in &mut prints {
        print.moved_since = stands.is_none_or(|at| !near(at, print.placement));
    }
    if handed_over
        && let Some(placement) = stands
        && prints.last().is_none_or(|p| p.moved_since)
    {
        prints.push(BuildPrint::new(pair, placement, None));
    }
    let charts = [chart.drive, chart.coast];
    let step = |middles: Middles| {
        let (deeper, _) = asks(charts, middles);
        let deeper = deeper.clamp(-LARGEST_STEP_MM, LARGEST_STEP_MM);
        if deeper.abs() < LEAST_STEP_MM { 0.0 } else { deeper }
    };
    for print in &mut prints {
        let flanks = [&print.truth.drive, &print.truth.coast].map(|f| f.pattern.map(|p| p.centroid));
        let [drive, coast] = flanks;
        print.asks = Asks {
            seen_mm: print.seen.map(step),
            truth_mm: drive.zip(coast).map(|(d, c)| step([d, c])),
        };
    }
    prints
}

/// Whether two places are the same to a print.
fn near(a: Placement, b: Placement) -> bool {
    const SAME_MM: f64 = 0.002;
    (a.pinion_axial_mm - b.pinion_axial_mm).abs() < SAME_MM && (a.wheel_axial_mm - b.wheel_axial_mm).abs() < SAME_MM
}

impl BuildPrint {
    fn new(pair: &Pair, placement: Placement, rolled: Option<u32>) -> Self {
        Self {
            rolled,
            placement,
            truth: contact::solve(pair, placement, Film::default(), Route::Exact),
            moved_since: false,
            seen: None,
            looks: 0,
            asks: Asks::default(),
        }
    }

    /// One more look: the mean of all.
    fn look(&mut self, middles: Middles) {
        let before = f64::from(self.looks);
        self.looks = self.looks.saturating_add(1);
        let count = f64::from(self.looks);
        self.seen = Some(match self.seen {
            None => middles,
            Some(mut mean) => {
                for (mean, new) in mean.iter_mut().flatten().zip(middles.iter().flatten()) {
                    *mean = (*mean * before + new) / count;
                }
                mean
            }
        });
    }
}
