//! The file format `lashwright-scenario/1`: reading and checking.

use super::card::{Factor, Fault, FaultKind, Scenario, Start, Targets, Window};
use super::problem::ScenarioProblem;
use super::wanted::DepthFrom;
use super::wanted_file::{read_counts, read_options};
use crate::axle::{DepthShim, Layout, Member, Target};
use crate::bench::StemChoice;
use crate::exercise::counted::Counted;
use crate::exercise::fitted::Fitted;
use crate::exercise::spread::Spread;
use crate::exercise::texts_file::{read_english, read_translated};
use crate::quantity::radians;
use crate::text::{Document, Limits, NumberRange, Problems, Table};

/// Largest deviation of a size that a file may give, mm.
const MOST_MM: f64 = 2.0;
/// Face runout that a card allows where it does not say, mm (light axle; common practice, no source).
const USUAL_FACE_RUNOUT_MM: f64 = 0.05;
/// Largest deviation of an angle, degrees.
const MOST_DEG: f64 = 0.5;

impl Scenario {
    /// How large a scenario file may be.
    pub const LIMITS: Limits = Limits { bytes: 64 * 1024 };

    /// Reads a scenario file.
    ///
    /// # Errors
    /// Everything that is wrong with the text: what is not TOML, unknown and missing keys, wrong kinds, values out of range,
    /// parts that this layout does not have.
    pub fn from_toml(text: &str) -> Result<Self, Problems<ScenarioProblem>> {
        let document = Document::parse(text)?;
        let mut problems = Problems::new();
        let p = &mut problems;
        let mut root = document.root();
        if !root.format("lashwright-scenario", 1, p) {
            return Err(problems);
        }
        let english = read_english(&mut root, p);
        let step = root.integer("step", 1..=4, p);
        let order = if root.has("order") {
            root.integer("order", 1..=999, p)
        } else {
            // Known all the same, so that a slip of the pen finds its neighbour.
            root.optional_number("order", NumberRange::closed(0.0, 0.0), p);
            None
        };
        let layouts: Vec<(&str, Layout)> = Layout::ALL.into_iter().map(|l| (l.name(), l)).collect();
        let layout = root.choice("layout", &layouts, p);
        let depth_shim = read_depth_shim(&mut root, layout, p);
        let gears = root.text("gears", 1..=60, p);
        let support = root.text("support", 1..=60, p);
        let whole_build = root.flag("whole_build", false, p);
        let translated = read_translated(&mut root, &english, p);
        let wanted = root.table("wanted", p).and_then(|t| read_wanted(t, p));
        let start = root.table("start", p).and_then(|t| read_start(t, p));
        let made = root
            .optional_table("made", p)
            .map(|t| read_made(t, layout, p))
            .unwrap_or_default();
        let factors = root
            .optional_table("other", p)
            .map(|t| read_factors(t, p))
            .unwrap_or_default();
        let faults = read_faults(&mut root, layout, p);
        let options = read_options(&mut root, p);
        root.finish(p);
        let scenario = (|| {
            let (target, targets, counts, depth_from) = wanted?;
            let (whole_build, start) = (whole_build?, start?);
            Some(Self {
                counts: match counts {
                    Some(counts) => counts,
                    // Without an axle to hand over nothing of it counts.
                    None if options.asks_otherwise() => Vec::new(),
                    None => Counted::usual(whole_build, start.fitted),
                },
                depth_from,
                asked: options.asked,
                pack: options.pack,
                plates: options.plates,
                kit: options.kit,
                tools: options.tools,
                weights: options.weights,
                minutes: options.minutes,
                prices: options.prices,
                cautions: english.cautions?,
                translated,
                title: english.title?,
                step: step?,
                order,
                layout: layout?,
                depth_shim: depth_shim?,
                gears: gears?,
                support: support?,
                whole_build,
                told: english.told?,
                aims: english.aims?,
                hints: english.hints?,
                target,
                targets,
                start,
                made,
                factors,
                faults,
            })
        })();
        problems.verdict(scenario)
    }
}

/// Where the depth shim lies; the layout's usual place where the file does not say.
fn read_depth_shim(
    root: &mut Table<'_>,
    layout: Option<Layout>,
    p: &mut Problems<ScenarioProblem>,
) -> Option<DepthShim> {
    if !root.has("depth_shim") {
        return layout?.depth_shims().first().copied();
    }
    let names: Vec<(&str, DepthShim)> = DepthShim::ALL.into_iter().map(|s| (s.name(), s)).collect();
    let shim = root.choice("depth_shim", &names, p)?;
    if let Some(layout) = layout
        && !layout.depth_shims().contains(&shim)
    {
        p.note_own(
            root.place_of("depth_shim"),
            ScenarioProblem::NoSuchShim {
                layout,
                depth_shim: shim,
            },
        );
        return None;
    }
    Some(shim)
}

fn read_window(
    table: &mut Table<'_>,
    key: &'static str,
    range: NumberRange,
    p: &mut Problems<ScenarioProblem>,
) -> Option<Window> {
    match table.numbers(key, &(2..=2), range, p)?.as_slice() {
        &[low, high] if low < high => Some(Window { low, high }),
        _ => {
            p.note_own(table.place_of(key), ScenarioProblem::NotAscending { key });
            None
        }
    }
}

/// A window beyond which there are no marks: it has to hold the one with full marks.
fn read_zero(
    table: &mut Table<'_>,
    key: &'static str,
    range: NumberRange,
    full: Option<Window>,
    usual: fn(Window) -> Window,
    p: &mut Problems<ScenarioProblem>,
) -> Option<Window> {
    if !table.has(key) {
        return full.map(usual);
    }
    let zero = read_window(table, key, range, p)?;
    let full = full?;
    if zero.low <= full.low && zero.high >= full.high {
        return Some(zero);
    }
    p.note_own(table.place_of(key), ScenarioProblem::ZeroInsideFull { key, full });
    None
}

/// What `[wanted]` says: the designed state, the windows, what counts, from where depth is judged.
type Wanted = (Target, Targets, Option<Vec<Counted>>, DepthFrom);

fn read_wanted(mut table: Table<'_>, p: &mut Problems<ScenarioProblem>) -> Option<Wanted> {
    let torque = NumberRange::closed(1.0, 3000.0);
    let nut_torque_nm = table.number("nut_torque_nm", torque, p);
    let most_nut_torque_nm = table.number("most_nut_torque_nm", torque, p);
    let pinion_preload_n = table.number("pinion_preload_n", NumberRange::closed(0.0, 100_000.0), p);
    let side_squeeze_mm = table.number("side_squeeze_mm", NumberRange::closed(0.0, 1.0), p);
    let stem = if table.has("stem") {
        table.choice(
            "stem",
            &[
                ("square_to_trace", StemChoice::SquareToTrace),
                ("along_motion", StemChoice::AlongMotion),
                ("along_normal", StemChoice::AlongNormal),
            ],
            p,
        )
    } else {
        Some(StemChoice::default())
    };
    let lash_mm = read_window(&mut table, "lash_mm", NumberRange::closed(0.0, 2.0), p);
    let lash_spread_mm = table.number("lash_spread_mm", NumberRange::closed(0.0, 1.0), p);
    let felt = NumberRange::closed(0.0, 30.0);
    let pinion_torque_nm = read_window(&mut table, "pinion_torque_nm", felt, p);
    let side_torque_nm = read_window(&mut table, "side_torque_nm", felt, p);
    // Ends without marks as usual beside such windows: 10 of 16 and 40 of 30 in-lb; 0 and about twice (common practice, no
    // source).
    let pinion_torque_zero_nm = read_zero(
        &mut table,
        "pinion_torque_zero_nm",
        felt,
        pinion_torque_nm,
        |full| Window {
            low: 0.6 * full.low,
            high: 1.35 * full.high,
        },
        p,
    );
    let side_torque_zero_nm = read_zero(
        &mut table,
        "side_torque_zero_nm",
        felt,
        side_torque_nm,
        |full| Window {
            low: 0.0,
            high: 2.0 * full.high,
        },
        p,
    );
    let runout = NumberRange::above(0.0, 1.0);
    let face_runout_mm = if table.has("face_runout_mm") {
        table.number("face_runout_mm", runout, p)
    } else {
        Some(USUAL_FACE_RUNOUT_MM)
    };
    let depth_mm = read_window(&mut table, "depth_mm", NumberRange::closed(0.0, 1.0), p);
    let (counts, depth_from) = read_counts(&mut table, p);
    table.finish(p);
    let target = Target {
        pinion_preload_n: pinion_preload_n?,
        side_squeeze_mm: side_squeeze_mm?,
    };
    let depth = depth_mm?;
    let targets = Targets {
        nut_torque_nm: nut_torque_nm?,
        most_nut_torque_nm: most_nut_torque_nm?,
        stem: stem?,
        lash_mm: lash_mm?,
        lash_spread_mm: lash_spread_mm?,
        pinion_torque_nm: pinion_torque_nm?,
        side_torque_nm: side_torque_nm?,
        pinion_torque_zero_nm: pinion_torque_zero_nm?,
        side_torque_zero_nm: side_torque_zero_nm?,
        face_runout_mm: face_runout_mm?,
        depth_mm: [depth.low, depth.high],
    };
    Some((target, targets, counts, depth_from))
}

fn read_start(mut table: Table<'_>, p: &mut Problems<ScenarioProblem>) -> Option<Start> {
    let fitted = table.choice(
        "fitted",
        &[
            ("nothing", Fitted::Nothing),
            ("rings", Fitted::Rings),
            ("carrier", Fitted::Carrier),
            ("everything", Fitted::Everything),
        ],
        p,
    );
    let new_bearings = table.flag("new_bearings", true, p);
    let old_depth_shim_mm = table.number("old_depth_shim_mm", NumberRange::closed(0.0, 5.0), p);
    let mut off = |key| {
        if table.has(key) {
            read_ends(&mut table, key, NumberRange::closed(-1.0, 1.0), p)
        } else {
            Some(Spread::fixed(0.0))
        }
    };
    let wheel_off_mm = off("wheel_off_mm");
    let squeeze_off_mm = off("squeeze_off_mm");
    table.finish(p);
    Some(Start {
        fitted: fitted?,
        new_bearings: new_bearings?,
        old_depth_shim_mm: old_depth_shim_mm?,
        wheel_off_mm: wheel_off_mm?,
        squeeze_off_mm: squeeze_off_mm?,
    })
}

/// A spread written as `{ within_mm = … }`, `{ between_mm = [low, high] }`, `{ beyond_mm = [least, most] }` (to either side) or `{ normal_mm = …, most_mm = … }`.
fn read_spread(mut table: Table<'_>, p: &mut Problems<ScenarioProblem>) -> Option<Spread> {
    let size = NumberRange::closed(0.0, MOST_MM);
    let spread = if table.has("within_mm") {
        let most = table.number("within_mm", size, p);
        most.map(|most| Spread::Even { low: -most, high: most })
    } else if table.has("between_mm") {
        read_ends(&mut table, "between_mm", NumberRange::closed(-MOST_MM, MOST_MM), p)
    } else if table.has("beyond_mm") {
        read_ends(&mut table, "beyond_mm", size, p).map(|ends| {
            let [least, most] = ends.ends();
            Spread::Beyond { least, most }
        })
    } else if table.has("within_deg") {
        let most = table.number("within_deg", NumberRange::closed(0.0, MOST_DEG), p);
        most.map(|most| Spread::Even {
            low: -radians(most),
            high: radians(most),
        })
    } else {
        let deviation = table.number("normal_mm", NumberRange::above(0.0, MOST_MM), p);
        let most = table.number("most_mm", NumberRange::above(0.0, MOST_MM), p);
        (|| {
            Some(Spread::Normal {
                middle: 0.0,
                deviation: deviation?,
                most: most?,
            })
        })()
    };
    table.finish(p);
    spread
}

fn read_ends(
    table: &mut Table<'_>,
    key: &'static str,
    range: NumberRange,
    p: &mut Problems<ScenarioProblem>,
) -> Option<Spread> {
    let ends = table.numbers(key, &(2..=2), range, p)?;
    match ends.as_slice() {
        &[low, high] if low <= high => Some(Spread::Even { low, high }),
        _ => {
            p.note_own(table.place_of(key), ScenarioProblem::NotAscending { key });
            None
        }
    }
}

/// Members that a scenario may spread: those of the layout that are not chosen while building.
fn read_made(mut table: Table<'_>, layout: Option<Layout>, p: &mut Problems<ScenarioProblem>) -> Vec<(Member, Spread)> {
    let mut made = Vec::new();
    for member in Member::ALL.into_iter().filter(|m| !m.is_fitted()) {
        if !table.has(member.name()) {
            // Known all the same, so that a slip of the pen finds its neighbour.
            table.optional_number(member.name(), NumberRange::closed(0.0, 0.0), p);
            continue;
        }
        let place = table.place_of(member.name());
        let Some(inner) = table.optional_table(member.name(), p) else {
            continue;
        };
        if layout.is_some_and(|l| crate::axle::Chain::of(l).link(member).is_none()) {
            p.note_own(place, ScenarioProblem::NoSuchMember { member });
        }
        if let Some(spread) = read_spread(inner, p) {
            made.push((member, spread));
        }
    }
    table.finish(p);
    made
}

fn read_factors(mut table: Table<'_>, p: &mut Problems<ScenarioProblem>) -> Vec<(Factor, Spread)> {
    let mut factors = Vec::new();
    for factor in Factor::ALL {
        let (name, [low, high]) = factor.name_and_range();
        if table.has(name)
            && let Some(spread) = read_ends(&mut table, name, NumberRange::closed(low, high), p)
        {
            factors.push((factor, spread));
        } else if !table.has(name) {
            table.optional_number(name, NumberRange::closed(0.0, 0.0), p);
        }
    }
    table.finish(p);
    factors
}

/// Which fault a file names, before its numbers are read.
#[derive(Clone, Copy)]
enum Named {
    Size(Member),
    MismatchedGears,
    SwappedCaps,
    ChipUnderWheel,
    WornFlanks,
}

/// Faults with their names, each of which may be there once.
fn read_faults(root: &mut Table<'_>, layout: Option<Layout>, p: &mut Problems<ScenarioProblem>) -> Vec<Fault> {
    let mut taken: Vec<String> = Vec::new();
    let mut faults = Vec::new();
    for (place, mut table) in root.tables("fault", 12, p).into_iter().enumerate() {
        let name = read_fault_name(&mut table, place, &taken, p);
        taken.extend(name.clone());
        faults.extend(read_fault(table, name, layout, p));
    }
    faults
}

/// What a fault is called, and what keys its random streams: one for its size, and one more for whether it is there.
fn read_fault_name(
    table: &mut Table<'_>,
    place: usize,
    taken: &[String],
    p: &mut Problems<ScenarioProblem>,
) -> Option<String> {
    let name = if table.has("name") {
        table.text("name", 1..=40, p)?
    } else {
        // Known all the same, so that a slip of the pen finds its neighbour.
        table.optional_number("name", NumberRange::closed(0.0, 0.0), p);
        place.to_string()
    };
    if taken.contains(&name) {
        p.note_own(
            table.place_of("name"),
            ScenarioProblem::FaultTwice { name: name.clone() },
        );
    }
    if name.ends_with(" there") {
        p.note_own(
            table.place_of("name"),
            ScenarioProblem::FaultNamedThere { name: name.clone() },
        );
    }
    Some(name)
}

fn read_fault(
    mut table: Table<'_>,
    name: Option<String>,
    layout: Option<Layout>,
    p: &mut Problems<ScenarioProblem>,
) -> Option<Fault> {
    let names: Vec<(&str, Named)> = Member::ALL
        .into_iter()
        .filter(|m| layout.is_none_or(|l| crate::axle::Chain::of(l).link(*m).is_some()))
        .map(|m| (m.name(), Named::Size(m)))
        .chain([
            ("mismatched_gears", Named::MismatchedGears),
            ("swapped_caps", Named::SwappedCaps),
            ("chip_under_wheel", Named::ChipUnderWheel),
            ("worn_flanks", Named::WornFlanks),
        ])
        .collect();
    let named = table.choice("what", &names, p);
    let share = table.number("share", NumberRange::closed(0.0, 1.0), p);
    let kind = match named {
        Some(Named::Size(member)) => table
            .numbers("size_mm", &(2..=2), NumberRange::closed(-MOST_MM, MOST_MM), p)
            .and_then(|ends| match ends.as_slice() {
                &[low, high] => Some(FaultKind::Size(member, Spread::Even { low, high })),
                _ => None,
            }),
        Some(Named::MismatchedGears) => table
            .number("flank_um", NumberRange::closed(0.0, 200.0), p)
            .map(|flank_um| FaultKind::MismatchedGears { flank_um }),
        Some(Named::WornFlanks) => table
            .number("flank_um", NumberRange::closed(0.0, 60.0), p)
            .map(|flank_um| FaultKind::WornFlanks { flank_um }),
        Some(Named::SwappedCaps) => Some(FaultKind::SwappedCaps),
        Some(Named::ChipUnderWheel) => Some(FaultKind::ChipUnderWheel),
        None => None,
    };
    let one_of = if table.has("one_of") {
        table.integer("one_of", 1..=9, p)
    } else {
        None
    };
    table.finish(p);
    Some(Fault {
        name: name?,
        one_of,
        kind: kind?,
        share: share?,
    })
}
