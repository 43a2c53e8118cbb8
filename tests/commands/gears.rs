//! `lashwright gears`: what ships with the program.

use super::program::run;

#[test]
fn people_get_a_line_a_set_and_scripts_a_document() {
    let people = run(&["gears"]);
    let script = run(&["gears", "--json"]);
    assert_eq!((people.code, script.code), (0, 0), "exit codes");
    let rows: Vec<serde_json::Value> = serde_json::from_str(&script.out).expect("one JSON document");
    assert_eq!(rows.len(), people.out.lines().count(), "the same sets");
    for (row, line) in rows.iter().zip(people.out.lines()) {
        let name = row["name"].as_str().expect("a name");
        assert!(line.starts_with(name), "{line}");
        let ratio = row["wheel_teeth"].as_f64().expect("number") / row["pinion_teeth"].as_f64().expect("number");
        assert!((row["ratio"].as_f64().expect("number") - ratio).abs() < 1e-12, "{row}");
        assert_eq!(run(&["check", name]).code, 0, "{name} can be asked for by its name");
    }
}
