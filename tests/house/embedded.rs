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
        "list in src/catalogue against the folder"
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
        "list in src/catalogue against the folder"
    );
    for entry in catalogue::SCENARIOS {
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
        "list in src/catalogue against the folder"
    );
    let found = supports::embedded().unwrap_or_else(|failure| panic!("{failure}"));
    let titles: BTreeSet<&str> = found.iter().map(|s| s.support.name.as_str()).collect();
    assert_eq!(titles.len(), found.len(), "names shown to people must differ");
    for found in &found {
        let torque = catalogue::meant_nut_torque_nm(&found.source);
        assert!(
            torque.is_some(),
            "{} says which nut torque it is meant for",
            found.source
        );
    }
}
