//! The fast route against the exact one, on random placements of every shipped set: within [`FAST_ACCURACY`], where the
//! exact print keeps off the edges of the flank, and as far from the designed placement as [`FAST_REACH`].

use lashwright::contact::{Contact, FAST_ACCURACY, FAST_REACH, Film, Pair, Placement, Route, solve};
use lashwright::gear::{GearSet, Side};
use lashwright::job::gear_sets;
use lashwright::numerics::random::Stream;
use rayon::prelude::*;

const PLACEMENTS: usize = 200;
/// Placements up to `most`: P, G, E in mm, Σ in degrees.
fn random_placement(stream: &mut Stream, most: [f64; 4]) -> Placement {
    let [p, g, e, s] = most.map(|m| stream.between(-m, m));
    Placement {
        pinion_axial_mm: p,
        wheel_axial_mm: g,
        offset_mm: e,
        shaft_angle_rad: s.to_radians(),
    }
}

/// Largest deviations over what is compared, each in units of its tolerance.
#[derive(Debug, Clone, Copy, Default)]
struct Largest {
    values: [f64; 5],
    compared: usize,
}

const NAMES: [&str; 5] = ["centroid x", "centroid y", "area", "transmission error", "lash"];

impl Largest {
    fn note(&mut self, k: usize, deviation: f64) {
        if deviation > self.values[k] {
            self.values[k] = deviation;
        }
    }

    fn compare(&mut self, fast: &Contact, exact: &Contact) {
        let mut whole = true;
        for side in Side::BOTH {
            let (f, e) = (fast.flank(side), exact.flank(side));
            let Some(q) = e.pattern.filter(|print| FAST_ACCURACY.holds_for(print)) else {
                whole = false;
                continue;
            };
            let p = f
                .pattern
                .expect("the exact route sees a print off the edges, the fast one none");
            self.compared += 1;
            for k in 0..2 {
                self.note(k, (p.centroid[k] - q.centroid[k]).abs() / FAST_ACCURACY.centroid[k]);
            }
            self.note(
                2,
                (p.area_fraction - q.area_fraction).abs() / FAST_ACCURACY.area_fraction,
            );
            let (t, u) = (
                f.transmission_error_urad.expect("a print, so motion"),
                e.transmission_error_urad.expect("a print, so motion"),
            );
            self.note(3, (t - u).abs() / FAST_ACCURACY.transmission_error_urad);
        }
        if whole && let (Some(a), Some(b)) = (fast.lash, exact.lash) {
            for (x, y) in [(a.min_mm, b.min_mm), (a.mean_mm, b.mean_mm), (a.max_mm, b.max_mm)] {
                self.note(4, 1e3 * (x - y).abs() / FAST_ACCURACY.lash_um);
            }
        }
    }
}

fn compare_all(most: [f64; 4], count: usize) {
    let mut broken = Vec::new();
    for found in gear_sets::embedded().unwrap_or_else(|failure| panic!("{failure}")) {
        let name = found.source.clone();
        let pair = Pair::new(GearSet::new(found.design).unwrap_or_else(|error| panic!("{error}")));
        let mut stream = Stream::new(20, &name);
        let placements: Vec<Placement> = (0..count).map(|_| random_placement(&mut stream, most)).collect();
        let both: Vec<[Contact; 2]> = placements
            .par_iter()
            .map(|p| [Route::Fast, Route::Exact].map(|route| solve(&pair, *p, Film::default(), route)))
            .collect();
        let mut largest = Largest::default();
        for [fast, exact] in &both {
            largest.compare(fast, exact);
        }
        println!(
            "{name}: {} flanks, {:.3?} of the tolerances",
            largest.compared, largest.values
        );
        assert!(
            largest.compared > count / 8,
            "{name}: too few prints keep off the edges to compare"
        );
        for (what, value) in NAMES.iter().zip(largest.values) {
            if value > 1.0 {
                broken.push(format!("{name}: {what} {value:.2} of its tolerance"));
            }
        }
    }
    assert!(broken.is_empty(), "{broken:#?}");
}

/// Where an axle is after a first build.
#[test]
fn fast_is_as_good_as_exact_where_axles_are_built() {
    compare_all([0.2, 0.1, 0.05, 0.05], PLACEMENTS);
}

/// As far as the fast route is said to be good.
#[test]
fn fast_is_as_good_as_exact_to_its_limits() {
    let reach = FAST_REACH;
    let most = [
        reach.axial_mm,
        reach.axial_mm,
        reach.offset_mm,
        reach.shaft_angle_rad.to_degrees(),
    ];
    compare_all(most, 60);
}

/// What people read of it are these numbers.
#[test]
fn the_readme_promises_what_is_kept() {
    let words: Vec<&str> = include_str!("../../README.md").split_whitespace().collect();
    let (accuracy, reach) = (FAST_ACCURACY, FAST_REACH);
    let promises = [
        format!(
            "up to {} mm along the axes, {} mm of offset and {}° of shaft angle",
            reach.axial_mm,
            reach.offset_mm,
            (1e9 * reach.shaft_angle_rad.to_degrees()).round() / 1e9
        ),
        format!(
            "within {} in area, {} in the center along the tooth and {} up it",
            accuracy.area_fraction, accuracy.centroid[0], accuracy.centroid[1]
        ),
        format!(
            "{} µrad (of 45 to 180) in transmission error",
            accuracy.transmission_error_urad
        ),
        format!(
            "{} µm in backlash wherever the pattern keeps off the edges",
            accuracy.lash_um
        ),
    ];
    let readme = words.join(" ");
    for promise in promises {
        assert!(readme.contains(&promise), "README.md does not say: {promise}");
    }
}
