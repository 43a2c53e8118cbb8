//! Scenarios: those that ship are sound, seeds give the same bits, and nothing depends on what stands beside it.

use lashwright::axle::{Assembly, Member, PerMember, Truth, settle};
use lashwright::catalogue::{SCENARIOS, Shelf};
use lashwright::contact::Placement;
use lashwright::exercise::{Exercise, Fitted, Scenario};

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

/// At nominal sizes with everything set to the drawing an axle is what its card wants.
#[test]
fn the_nominal_axle_is_inside_of_its_own_bands() {
    for (name, exercise) in exercises() {
        let (axle, wanted) = (exercise.axle(), exercise.scenario().targets);
        let truth = Truth::default();
        let assembly = Assembly::nominal(axle).expect("an axle");
        let built = settle(axle, &truth, &assembly).expect("settles");
        let placement = built.placement.expect("all is in");
        let far = [placement.pinion_axial_mm, placement.wheel_axial_mm, placement.offset_mm];
        assert!(far.iter().all(|v| v.abs() < 1e-6), "{name}: {placement:?}");
        let pair = exercise.pair(&truth).expect("gears");
        let lash = lashwright::contact::solve(
            &pair,
            Placement::NOMINAL,
            lashwright::contact::Film::default(),
            lashwright::contact::Route::Exact,
        )
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
            let [low, high] = spread.ends();
            let values: Vec<f64> = (0..300)
                .map(|seed| exercise.truth(seed).deviations.get(*member))
                .collect();
            let least = values.iter().copied().fold(f64::INFINITY, f64::min);
            let most = values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
            assert!(least >= low - 1e-12 && most <= high + 1e-12, "{name}: {member:?}");
            assert!(most - least > 0.5 * (high - low), "{name}: {member:?} uses its room");
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

#[test]
fn a_file_gives_all_its_problems_at_once() {
    let text = SCENARIOS[0]
        .text
        .replace("layout = \"C\"", "layout = \"D\"")
        .replace("housing_depth", "housing_deph")
        .replace("lash_mm = [0.12, 0.22]", "lash_mm = [0.22, 0.12]")
        .replace("fitted = \"everything\"", "fitted = \"all\"")
        .replace("nut_friction_times = [0.9, 1.1]", "nut_friction_times = [0.9, 11]");
    let problems = Scenario::from_toml(&text).expect_err("five slips");
    let all: Vec<String> = problems
        .list()
        .iter()
        .map(|p| format!("{}: {}", p.what, p.remedy))
        .collect();
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
    let text = SCENARIOS[0].text.replace("housing_depth =", "cartridge_face =");
    let problems = Scenario::from_toml(&text).expect_err("layout C has no cartridge");
    assert!(
        problems.list()[0].what.contains("cartridge_face"),
        "{:?}",
        problems.list()
    );
    assert!(Member::from_name("cartridge_face").is_some(), "a member all the same");
}

#[test]
fn what_lies_on_the_bench_is_said() {
    let fitted: Vec<Fitted> = exercises().iter().map(|(_, e)| e.scenario().start.fitted).collect();
    assert_eq!(fitted, [Fitted::Everything, Fitted::Nothing, Fitted::Nothing]);
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
    let oat_barn = SCENARIOS[0].text;
    let line = "counts = [\"depth\", \"pinion_torque\", \"print\"]\n";
    assert_eq!(counts(oat_barn).expect("good"), ["depth", "pinion_torque", "print"]);
    assert_eq!(
        counts(&oat_barn.replace(line, "")).expect("good"),
        ["depth", "pinion_torque", "print"]
    );
    let lash = oat_barn.replace(line, "counts = [\"lash\"]\n");
    assert_eq!(counts(&lash).expect("good"), ["lash"]);
    for (bad, said) in [
        ("counts = [\"depht\"]\n", "not known"),
        ("counts = [\"depth\", \"depth\"]\n", "twice"),
        ("counts = []\n", "counts"),
        ("face_runout_mm = 0\n", "face_runout_mm"),
    ] {
        let problems = Scenario::from_toml(&oat_barn.replace(line, bad)).expect_err(bad);
        assert!(
            problems.list().iter().any(|p| p.what.contains(said)),
            "{bad}: {:?}",
            problems.list()
        );
    }
    let narrow = oat_barn.replace("pinion_torque_zero_nm = [0.56", "pinion_torque_zero_nm = [2.56");
    let problems = Scenario::from_toml(&narrow).expect_err("narrower than the window");
    assert!(problems.list()[0].what.contains("full marks"), "{:?}", problems.list());
}
