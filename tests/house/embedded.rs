//! What is embedded is what lies in the folders, and all of it can be used.

use std::collections::BTreeSet;
use std::path::Path;

use lashwright::catalogue;
use lashwright::exercise::{Exercise, Scenario};
use lashwright::job::{gear_sets, supports};

/// Names of the TOML files in a folder, without the ending.
fn names_in(folder: &str) -> BTreeSet<String> {
    std::fs::read_dir(Path::new(env!("CARGO_MANIFEST_DIR")).join(folder))
        .expect("folder is readable")
        .map(|entry| entry.expect("entry is readable").path())
        .filter(|path| path.extension().is_some_and(|e| e == "toml"))
        .map(|path| path.file_stem().expect("a name").to_string_lossy().into_owned())
        .collect()
}

#[test]
fn every_gear_set_is_embedded_and_read() {
    let embedded: BTreeSet<String> = catalogue::GEAR_SETS.iter().map(|e| e.name.to_owned()).collect();
    assert_eq!(
        embedded,
        names_in("assets/gears"),
        "what build.rs found against the folder"
    );
    let sets = gear_sets::embedded().unwrap_or_else(|failure| panic!("{failure}"));
    let titles: BTreeSet<&str> = sets.iter().map(|s| s.design.name.as_str()).collect();
    assert_eq!(titles.len(), sets.len(), "names shown to people must differ");
}

#[test]
fn every_scenario_is_embedded_read_and_can_be_prepared() {
    let embedded: BTreeSet<String> = catalogue::SCENARIOS.iter().map(|e| e.name.to_owned()).collect();
    assert_eq!(
        embedded,
        names_in("scenarios"),
        "what build.rs found against the folder"
    );
    for entry in catalogue::SCENARIOS.iter() {
        let scenario = Scenario::from_toml(entry.text).unwrap_or_else(|p| panic!("{}: {:?}", entry.name, p.list()));
        Exercise::prepare(scenario, &catalogue::Shelf).unwrap_or_else(|error| panic!("{}: {error}", entry.name));
    }
}

#[test]
fn every_support_is_embedded_and_read() {
    let embedded: BTreeSet<String> = catalogue::SUPPORTS.iter().map(|e| e.name.to_owned()).collect();
    assert_eq!(
        embedded,
        names_in("assets/supports"),
        "what build.rs found against the folder"
    );
    let found = supports::embedded().unwrap_or_else(|failure| panic!("{failure}"));
    let titles: BTreeSet<&str> = found.iter().map(|s| s.support.name.as_str()).collect();
    assert_eq!(titles.len(), found.len(), "names shown to people must differ");
    for found in &found {
        assert!(
            found.support.meant_nut_torque_nm.is_some(),
            "{} says which nut torque it is meant for: it is of version 2 of the format",
            found.source
        );
    }
}

/// Lists come in the order that their docs say, whatever the files are called.
#[test]
fn lists_are_in_their_order() {
    let sets = gear_sets::embedded().unwrap_or_else(|failure| panic!("{failure}"));
    let ratio = |set: &gear_sets::FoundGearSet| f64::from(set.design.wheel_teeth) / f64::from(set.design.pinion_teeth);
    assert!(sets.is_sorted_by(|a, b| ratio(a) <= ratio(b)), "gear sets by ratio");
    let found = supports::embedded().unwrap_or_else(|failure| panic!("{failure}"));
    let bore = |found: &supports::FoundSupport| found.support.head_bearing.bore_mm;
    assert!(found.is_sorted_by(|a, b| bore(a) <= bore(b)), "supports by bore");
    let places: Vec<(u32, u32)> = catalogue::SCENARIOS
        .iter()
        .map(|entry| {
            let scenario = Scenario::from_toml(entry.text).unwrap_or_else(|p| panic!("{}: {:?}", entry.name, p.list()));
            (scenario.step, scenario.order.unwrap_or(u32::MAX))
        })
        .collect();
    assert!(places.is_sorted(), "exercises by step and order: {places:?}");
}
