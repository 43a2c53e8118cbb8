//! Scenarios: those that ship are sound, seeds give the same bits, and nothing depends on what stands beside it.

use std::sync::Arc;

use lashwright::axle::{Assembly, Member, PerMember, Truth, settle};
use lashwright::catalogue::{self, SCENARIOS, Shelf};
use lashwright::contact::{self, Film, Pair, Placement, Route};
use lashwright::exercise::{
    ApprovalPrint, Counted, Exercise, Factor, FaultKind, Fitted, Outcome, Scenario, ScenarioProblem,
};
use lashwright::gear::{EaseOff, GearSet, Side};
use lashwright::words;
use lashwright::words::problem::told;

use super::begun::begin;

/// A scenario of layout C that slips of the pen are put into.
fn layout_c_text() -> &'static str {
    catalogue::scenario("oat-barn-tractor").expect("embedded").text
}

fn exercises() -> Vec<(&'static str, Exercise)> {
    SCENARIOS
        .iter()
        .map(|e| {
            let scenario = Scenario::from_toml(e.text).unwrap_or_else(|p| panic!("{}: {:?}", e.name, p.list()));
            let exercise = Exercise::prepare(scenario, &Shelf).unwrap_or_else(|error| panic!("{}: {error}", e.name));
            (e.name, exercise)
        })
        .collect()
}

/// Nominal sizes, with the bearing friction and seal drag in the middle of what the file says: used bearings drag half of
/// what the support file has for new ones.
fn nominal_truth(scenario: &Scenario) -> Truth {
    let mut truth = Truth::default();
    for (factor, spread) in &scenario.factors {
        let [low, high] = spread.ends();
        let middle = 0.5 * (low + high);
        match factor {
            Factor::HeadFriction => truth.friction.head_times = middle,
            Factor::TailFriction => truth.friction.tail_times = middle,
            Factor::SideFriction => truth.friction.side_times = middle,
            Factor::SealDrag => truth.friction.seal_times = middle,
            _ => {}
        }
    }
    truth
}

/// The approval print on the card is what the gears as designed show at their designed place, off the middle of the flank,
/// and stands where prints are judged by it. Old teeth are not: their card says so.
#[test]
fn cards_show_the_approval_prints_of_the_gears_as_designed() {
    for (name, exercise) in exercises() {
        let prints = exercise.approval_prints();
        let card = exercise.scenario();
        let old_teeth = card
            .faults
            .iter()
            .any(|f| matches!(f.kind, FaultKind::WornFlanks { .. }));
        let sets = match (old_teeth, card.plates.is_some()) {
            (true, _) => 0,
            (false, true) => 2,
            _ if card.counts.iter().any(|c| matches!(c, Counted::Depth | Counted::Print)) => 1,
            _ => 0,
        };
        assert_eq!(prints.len(), sets, "{name}");
        let designs = [Some(exercise.design()), exercise.other_design()];
        for (print, design) in prints.iter().zip(designs.into_iter().flatten()) {
            assert_eq!(print.gears, design.name, "{name}");
            let pair = Pair::new(GearSet::new(design.clone()).expect("gears"));
            let contact = contact::solve(&pair, Placement::NOMINAL, Film::default(), Route::Exact);
            for (side, flank) in Side::BOTH.into_iter().zip(&print.flanks) {
                let pattern = flank.map(|f| f.pattern);
                assert_eq!(pattern, contact.flank(side).pattern, "{name}, {side:?}");
                let [_, height] = pattern.expect("a print").centroid;
                println!(
                    "{name}, {side:?}: {height:+.3}, {}",
                    words::approval::lean(flank.expect("a print").leans())
                );
                assert!((0.05..0.3).contains(&height), "{name}, {side:?}: {height}");
            }
        }
    }
}

/// What no setting cures is there in the share of the seeds that the scenario gives its faults, and nowhere else.
#[test]
fn only_an_exercise_that_may_be_refused_has_seeds_that_nothing_cures() {
    const SEEDS: u32 = 500;
    for (name, exercise) in exercises() {
        let card = exercise.scenario();
        let kinds = card.faults.iter().filter(|f| f.kind.may_be_incurable());
        let share: f64 = kinds.map(|f| f.share).sum();
        let refused = (0..SEEDS).filter(|s| !exercise.incurable((*s).into()).is_empty());
        let refused = refused.count() as f64 / f64::from(SEEDS);
        println!("{name}: {refused} of the seeds, {share} by its faults");
        assert_eq!(refused > 0.0, !card.is_solvable(), "{name}");
        // Three deviations of a share of one half among so many.
        assert!((refused - share).abs() < 0.07, "{name}: {refused}, {share}");
    }
}

/// What the card shows is the same for every seed, also for one whose gears are not as designed.
#[test]
fn an_approval_print_gives_no_fault_away() {
    let all = exercises();
    let (_, exercise) = all.iter().find(|(name, _)| *name == "say-no").expect("embedded");
    let before = exercise.approval_prints().to_vec();
    let exercise = Arc::new(exercise.clone());
    let deviates = |seed: &u64| {
        let deviation = exercise.truth(*seed).pair.flank_deviation;
        deviation.iter().any(|d| *d != EaseOff::default())
    };
    let seed = (1..40).find(deviates).expect("one seed in four");
    let attempt = begin(&exercise, seed);
    assert_eq!(
        attempt.exercise().approval_prints(),
        before,
        "before and after the axle is there"
    );
    let real = ApprovalPrint::of(&attempt.bench().setting().pair);
    assert_ne!(
        real.flanks, before[0].flanks,
        "the gears in this axle would show another one"
    );
}

/// At nominal sizes with everything set to the drawing an axle is what its card wants.
#[test]
fn the_nominal_axle_is_inside_of_its_own_bands() {
    for (name, exercise) in exercises() {
        let (axle, wanted) = (exercise.axle(), exercise.scenario().targets);
        let truth = nominal_truth(exercise.scenario());
        let assembly = Assembly::nominal(axle).expect("an axle");
        let built = settle(axle, &truth, &assembly).expect("settles");
        let placement = built.placement.expect("all is in");
        let far = [placement.pinion_axial_mm, placement.wheel_axial_mm, placement.offset_mm];
        assert!(far.iter().all(|v| v.abs() < 1e-6), "{name}: {placement:?}");
        let pair = exercise.pair(&truth).expect("gears");
        let lash = contact::solve(&pair, Placement::NOMINAL, Film::default(), Route::Exact)
            .lash
            .expect("touches");
        // The card's window is in the reading of its stem, with the designed placement in its middle.
        let share = wanted.stem.stem().share(axle.gears());
        let (reading, middle) = (share * lash.min_mm, 0.5 * (wanted.lash_mm.low + wanted.lash_mm.high));
        println!("{name}: reads {reading:.3} mm with its stem, window's middle {middle:.3}");
        assert!(
            (reading - middle).abs() < 0.2 * (wanted.lash_mm.high - wanted.lash_mm.low),
            "{name}: {reading}"
        );
        let alone = Assembly {
            carrier_in: false,
            ..assembly.clone()
        };
        let pinion = settle(axle, &truth, &alone).expect("settles");
        let felt = |built| {
            lashwright::axle::resistance(axle, &truth, built, lashwright::axle::Turning::BY_HAND)
                .expect("a pinion in its bearings")
                .total_nm
        };
        let (alone, whole) = (felt(&pinion), felt(&built));
        println!(
            "{name}: pinion {alone:.2} N·m, whole {whole:.2} N·m, lash {:.3} mm",
            lash.min_mm
        );
        assert!(wanted.pinion_torque_nm.holds(alone), "{name}: {alone} N·m");
        assert!(
            wanted.side_torque_nm.holds(whole - alone),
            "{name}: {} N·m",
            whole - alone
        );
    }
}

#[test]
fn a_seed_gives_the_same_truth_and_another_seed_another() {
    for (name, exercise) in exercises() {
        let bits = |seed: u64| {
            let truth = exercise.truth(seed);
            truth.deviations.iter().map(|(_, v)| v.to_bits()).collect::<Vec<u64>>()
        };
        assert_eq!(bits(7), bits(7), "{name}");
        assert_ne!(bits(7), bits(8), "{name}");
        assert_eq!(exercise.truth(7), exercise.truth(7), "{name}: all of it");
    }
}

/// Sizes stay inside what the file says, over many seeds, and use that room.
#[test]
fn truths_keep_to_their_spreads() {
    for (name, exercise) in exercises() {
        for (member, spread) in &exercise.scenario().made {
            let [mut low, mut high] = spread.ends();
            let values: Vec<f64> = (0..300)
                .map(|seed| exercise.truth(seed).deviations.get(*member))
                .collect();
            let room = high - low;
            // A fault in the same size comes on top.
            for fault in &exercise.scenario().faults {
                if let FaultKind::Size(faulty, more) = fault.kind
                    && faulty == *member
                {
                    let [least, most] = more.ends();
                    (low, high) = (low + least.min(0.0), high + most.max(0.0));
                }
            }
            let least = values.iter().copied().fold(f64::INFINITY, f64::min);
            let most = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
            assert!(least >= low - 1e-12 && most <= high + 1e-12, "{name}: {member:?}");
            assert!(most - least > 0.5 * room, "{name}: {member:?} uses its room");
        }
    }
}

/// Taking one line out of a scenario leaves all other numbers of a seed as they are.
#[test]
fn numbers_do_not_depend_on_their_neighbours() {
    for (name, exercise) in exercises() {
        let mut scenario = exercise.scenario().clone();
        let (left_out, _) = scenario.made.remove(0);
        let fewer = Exercise::prepare(scenario, &Shelf).expect("still an exercise");
        let with = |e: &Exercise| {
            let mut all: PerMember = e.truth(5).deviations;
            all.set(left_out, 0.0);
            all
        };
        assert_eq!(with(&exercise), with(&fewer), "{name}");
    }
}

/// The truth of a seed by a text, which must read.
fn truth_by(text: &str, seed: u64) -> Truth {
    let scenario = Scenario::from_toml(text).unwrap_or_else(|p| panic!("{:?} in {text}", p.list()));
    Exercise::prepare(scenario, &Shelf)
        .unwrap_or_else(|error| panic!("{error}"))
        .truth(seed)
}

/// A text with a fault before the others.
fn with_fault_first(text: &str, fault: &str) -> String {
    let at = text.find("[[fault]]").unwrap_or(text.len());
    format!("{}\n[[fault]]\n{fault}\n{}", &text[..at], &text[at..])
}

/// A truth but for a size.
fn without(mut truth: Truth, member: Member) -> Truth {
    truth.deviations.set(member, 0.0);
    if member == Member::PinionMark {
        truth.mark_etched_mm = 0.0;
    }
    truth
}

/// A fault with a name of its own changes no other draw, though it stands before all others.
#[test]
fn a_new_fault_changes_no_other_draw() {
    for entry in SCENARIOS.iter() {
        let there = with_fault_first(
            entry.text,
            "name = \"put in by a test\"\nwhat = \"offset\"\nsize_mm = [0.2, 0.3]\nshare = 1.0\n",
        );
        let not_there = with_fault_first(
            entry.text,
            "name = \"put in by a test\"\nwhat = \"mismatched_gears\"\nflank_um = 40.0\nshare = 0.0\n",
        );
        for seed in 0..40 {
            let before = truth_by(entry.text, seed);
            let (with, out) = (truth_by(&there, seed), truth_by(&not_there, seed));
            let more = with.deviations.get(Member::Offset) - before.deviations.get(Member::Offset);
            assert!((0.199..0.301).contains(&more), "{}, {seed}: {more}", entry.name);
            assert_eq!(
                without(with, Member::Offset),
                without(before.clone(), Member::Offset),
                "{}, {seed}",
                entry.name
            );
            assert_eq!(out, before, "{}, {seed}", entry.name);
        }
    }
}

/// The same for a size that the scenario did not spread.
#[test]
fn a_new_member_changes_no_other_draw() {
    let mut tried = 0;
    for (entry, (_, exercise)) in SCENARIOS.iter().zip(exercises()) {
        let scenario = exercise.scenario();
        let chain = lashwright::axle::Chain::of(scenario.layout);
        for member in Member::ALL {
            let made = scenario.made.iter().any(|(other, _)| *other == member);
            if made || member.is_fitted() || chain.link(member).is_none() || !entry.text.contains("[made]\n") {
                continue;
            }
            let line = format!("[made]\n{} = {{ between_mm = [0.01, 0.02] }}\n", member.name());
            let text = entry.text.replacen("[made]\n", &line, 1);
            for seed in 0..3 {
                let (before, with) = (exercise.truth(seed), truth_by(&text, seed));
                assert_ne!(with, before, "{}, {member:?}, {seed}: it is drawn", entry.name);
                assert_eq!(
                    without(with, member),
                    without(before, member),
                    "{}, {member:?}, {seed}",
                    entry.name
                );
            }
            tried += 1;
        }
    }
    assert!(tried > 20, "{tried}");
}

/// What a factor set.
fn factor_of(truth: &Truth, factor: Factor) -> f64 {
    match factor {
        Factor::MarkErrorMm => truth.mark_etched_mm,
        Factor::SleeveYield => truth.sleeve.yield_times,
        Factor::SleeveHardening => truth.sleeve.hardening_times,
        Factor::NutFriction => truth.nut.friction_times,
        Factor::NutScatter => truth.nut.scatter_share,
        Factor::HeadFriction => truth.friction.head_times,
        Factor::TailFriction => truth.friction.tail_times,
        Factor::SideFriction => truth.friction.side_times,
        Factor::SealDrag => truth.friction.seal_times,
        Factor::CaseStiffness => truth.case.stiffness_times,
        Factor::ThreadSlackMm => truth.case.thread_slack_mm[0],
        Factor::WheelInterferenceMm => truth.wheel_fit.interference_mm,
        Factor::HeadConePressN => truth.press.head_cone_n,
        Factor::HeadCupPressN => truth.press.head_cup_n,
        Factor::TailCupPressN => truth.press.tail_cup_n,
    }
}

/// The same for a factor.
#[test]
fn a_new_factor_changes_no_other_draw() {
    let mut tried = 0;
    for (entry, (_, exercise)) in SCENARIOS.iter().zip(exercises()) {
        for factor in Factor::ALL {
            let given = exercise.scenario().factors.iter().any(|(other, _)| *other == factor);
            if given || !entry.text.contains("[other]\n") {
                continue;
            }
            let (name, [low, high]) = factor.name_and_range();
            let line = format!("[other]\n{name} = [{}, {high}]\n", 0.5 * (low + high));
            let text = entry.text.replacen("[other]\n", &line, 1);
            for seed in 0..3 {
                let (before, with) = (exercise.truth(seed), truth_by(&text, seed));
                let all = |t: &Truth| (t.deviations.clone(), t.phases_rad.clone(), t.pair.clone());
                assert_eq!(all(&with), all(&before), "{}, {name}, {seed}", entry.name);
                for other in Factor::ALL {
                    let same = factor_of(&with, other).to_bits() == factor_of(&before, other).to_bits();
                    assert_eq!(same, other != factor, "{}, {name}, {other:?}, {seed}", entry.name);
                }
            }
            tried += 1;
        }
    }
    assert!(tried > 20, "{tried}");
}

/// A fault without a name is called by its place, and names are there once.
#[test]
fn faults_have_names_of_their_own() {
    let named = catalogue::scenario("say-no").expect("embedded").text;
    let names = |text: &str| {
        let scenario = Scenario::from_toml(text)?;
        Ok::<_, lashwright::text::Problems<ScenarioProblem>>(
            scenario.faults.into_iter().map(|f| f.name).collect::<Vec<_>>(),
        )
    };
    assert_eq!(names(named).expect("good"), ["0", "1", "2", "3"]);
    let mut unnamed = named.to_owned();
    for place in 0..4 {
        unnamed = unnamed.replace(&format!("name = \"{place}\"\n"), "");
    }
    assert_eq!(names(&unnamed).expect("good"), ["0", "1", "2", "3"]);
    for seed in 0..40 {
        assert_eq!(truth_by(&unnamed, seed), truth_by(named, seed), "{seed}");
    }
    for (name, said, cure) in [
        ("0", "two faults are named \"0\"", "no other fault"),
        ("", "0 characters", "1 to 40 characters"),
        (&"x".repeat(41), "41 characters", "1 to 40 characters"),
        ("0 there", "cannot be named", "does not end in"),
    ] {
        let text = named.replace("name = \"2\"", &format!("name = \"{name}\""));
        let problems = names(&text).expect_err(said);
        let [problem] = problems.list() else {
            panic!("one problem: {:?}", problems.list());
        };
        assert!(
            told(problem).what.contains(said) && told(problem).cure.contains(cure),
            "{:?}",
            told(problem)
        );
        assert_eq!(
            text.get(problem.span.clone()),
            Some(format!("\"{name}\"").as_str()),
            "{problem:?}"
        );
    }
    // The place of an unnamed one may be the name of another.
    let problems = names(&unnamed.replacen("[[fault]]\n", "[[fault]]\nname = \"3\"\n", 1)).expect_err("3 twice");
    assert!(
        told(&problems.list()[0]).what.contains("two faults are named \"3\""),
        "{:?}",
        problems.list()
    );
}

#[test]
fn a_file_gives_all_its_problems_at_once() {
    let text = layout_c_text()
        .replace("layout = \"C\"", "layout = \"D\"")
        .replace("housing_depth", "housing_deph")
        .replace("lash_mm = [0.12, 0.22]", "lash_mm = [0.22, 0.12]")
        .replace("fitted = \"everything\"", "fitted = \"all\"")
        .replace("nut_friction_times = [0.9, 1.1]", "nut_friction_times = [0.9, 11]");
    let problems = Scenario::from_toml(&text).expect_err("five slips");
    let all: Vec<String> = problems.list().iter().map(|p| told(p).line()).collect();
    println!("{all:#?}");
    for said in [
        "layout",
        "housing_depth",
        "smaller to the larger",
        "fitted",
        "nut_friction_times",
    ] {
        assert!(all.iter().any(|p| p.contains(said)), "nothing about {said}: {all:#?}");
    }
}

#[test]
fn a_member_of_another_layout_is_refused() {
    let text = layout_c_text().replace("housing_depth =", "cartridge_face =");
    let problems = Scenario::from_toml(&text).expect_err("layout C has no cartridge");
    assert!(
        told(&problems.list()[0]).what.contains("cartridge_face"),
        "{:?}",
        problems.list()
    );
    assert!(Member::from_name("cartridge_face").is_some(), "a member all the same");
}

#[test]
fn what_lies_on_the_bench_is_said() {
    let fitted = |name: &str| {
        let all = exercises();
        let found = all.iter().find(|(n, _)| *n == name).expect("embedded");
        found.1.scenario().start.fitted
    };
    assert_eq!(fitted("oat-barn-tractor"), Fitted::Everything);
    assert_eq!(fitted("arbor-and-block"), Fitted::Carrier);
    assert_eq!(fitted("crush-and-stop"), Fitted::Nothing);
}

/// An axle that comes in whole has something to be done to it: of what counts, something lies outside of its band at the
/// start, in at least three of four seeds. Prints and runout are left out: the first follow depth and gears, the second has
/// no band of its own in the file.
#[test]
fn what_comes_in_whole_is_not_done_already() {
    for (name, exercise) in exercises() {
        let scenario = exercise.scenario();
        if scenario.start.fitted != Fitted::Everything || scenario.counts.is_empty() {
            continue;
        }
        let seeds = 24;
        let mut done = 0;
        for seed in 0..seeds {
            let bench = exercise
                .begin(seed)
                .unwrap_or_else(|error| panic!("{name} {seed}: {error}"));
            let (found, wanted) = (Outcome::of(&bench), scenario.targets);
            let [tightest, loosest] = found
                .lash_mm
                .unwrap_or_else(|| panic!("{name} {seed}: in mesh"))
                .map(|lash| wanted.stem.stem().share(exercise.axle().gears()) * lash);
            let depth = found.placement.map_or(0.0, |p| p.pinion_axial_mm.abs());
            println!(
                "{name} {seed}: depth {depth:.3}, lash {tightest:.3} to {loosest:.3} mm, pinion {:.2}, sides {:.2} N·m, face {:.3} mm",
                found.pinion_torque_nm.unwrap_or(0.0),
                found.side_torque_nm.unwrap_or(0.0),
                found.wheel_face_runout_mm
            );
            let in_band = |counted: &Counted| match counted {
                Counted::Depth => depth <= wanted.depth_mm[0],
                Counted::Lash => wanted.lash_mm.holds(tightest),
                Counted::Spread => loosest - tightest <= wanted.lash_spread_mm,
                Counted::PinionTorque => found.pinion_torque_nm.is_some_and(|t| wanted.pinion_torque_nm.holds(t)),
                Counted::SideTorque => found.side_torque_nm.is_some_and(|t| wanted.side_torque_nm.holds(t)),
                Counted::Print | Counted::Runout | Counted::NutTorque => true,
            };
            if scenario.counts.iter().all(in_band) && exercise.incurable(seed).is_empty() {
                done += 1;
            }
        }
        println!("{name}: {done} of {seeds} are in their bands as they come in");
        assert!(4 * done <= seeds, "{name}: {done} of {seeds}");
    }
}

/// What counts: all of a whole build without the nut, or what the file names; slips are told with what there is.
#[test]
fn what_counts_is_said_or_follows_from_the_kind_of_exercise() {
    let counts = |text: &str| Scenario::from_toml(text).map(|s| s.counts.iter().map(|c| c.name()).collect::<Vec<_>>());
    let whole = SCENARIOS
        .iter()
        .find(|e| e.text.contains("whole_build = true"))
        .expect("one");
    let all = [
        "depth",
        "lash",
        "spread",
        "runout",
        "pinion_torque",
        "side_torque",
        "print",
    ];
    assert_eq!(counts(whole.text).expect("good"), all);
    let oat_barn = SCENARIOS
        .iter()
        .find(|e| e.name == "oat-barn-tractor")
        .expect("there")
        .text;
    let line = "counts = [\"depth\", \"pinion_torque\", \"print\"]\n";
    assert_eq!(counts(oat_barn).expect("good"), ["depth", "pinion_torque", "print"]);
    assert_eq!(
        counts(&oat_barn.replace(line, "")).expect("good"),
        ["depth", "pinion_torque", "print"]
    );
    let lash = oat_barn.replace(line, "counts = [\"lash\"]\n");
    assert_eq!(counts(&lash).expect("good"), ["lash"]);
    for (bad, said) in [
        ("counts = [\"depht\"]\n", "`counts` does not take `depht`"),
        ("counts = [\"depth\", \"depth\"]\n", "twice"),
        ("counts = []\n", "counts"),
        ("face_runout_mm = 0\n", "face_runout_mm"),
    ] {
        let problems = Scenario::from_toml(&oat_barn.replace(line, bad)).expect_err(bad);
        assert!(
            problems.list().iter().any(|p| told(p).what.contains(said)),
            "{bad}: {:?}",
            problems.list()
        );
    }
    let narrow = oat_barn.replace("pinion_torque_zero_nm = [0.56", "pinion_torque_zero_nm = [2.56");
    let problems = Scenario::from_toml(&narrow).expect_err("narrower than the window");
    assert!(
        told(&problems.list()[0]).what.contains("full marks"),
        "{:?}",
        problems.list()
    );
}
