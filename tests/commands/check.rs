//! `lashwright check`: one line a good file, the whole list of problems of a bad one.

use super::program::run;

#[test]
fn good_files_get_a_line_each() {
    let run = run(&[
        "check",
        "3.00-tapered-ring-186",
        "assets/gears/3.08-uniform-ring-172.toml",
    ]);
    assert_eq!((run.code, run.err.as_str()), (0, ""), "exit code");
    assert_eq!(run.out.lines().count(), 2, "{}", run.out);
    assert!(run.out.lines().all(|l| l.contains("no problem found")), "{}", run.out);
}

/// The texts themselves: nothing outside can check their wording, so they are kept as snapshots.
#[test]
fn bad_files_get_all_their_problems() {
    for name in ["many_slips", "not_toml", "newer_version", "other_kind", "nearly_empty"] {
        let run = run(&["check", &format!("tests/commands/bad/{name}.toml")]);
        assert_eq!(
            (run.code, run.out.as_str()),
            (2, ""),
            "{name}: bad input prints nothing on standard output"
        );
        insta::assert_snapshot!(name, run.err);
    }
}

#[test]
fn what_is_not_there_is_named() {
    let missing = run(&["check", "no-such-set"]);
    assert_eq!((missing.code, missing.out.as_str()), (2, ""), "exit code");
    assert!(
        missing.err.contains("`no-such-set`") && missing.err.contains("3.73-tapered-ring-224"),
        "{}",
        missing.err
    );
    let file = run(&["check", "no-such-file.toml"]);
    assert_eq!((file.code, file.out.as_str()), (2, ""), "exit code");
    assert!(file.err.contains("cannot read no-such-file.toml"), "{}", file.err);
    let folder = run(&["check", "assets"]);
    assert_eq!(
        (folder.code, folder.out.as_str()),
        (2, ""),
        "a folder is no file: {}",
        folder.err
    );
}

/// The texts of an exercise in other languages: a good file, and one with every slip.
#[test]
fn texts_in_other_languages_are_checked() {
    let good = run(&["check", "tests/commands/scenarios/two_languages.toml"]);
    assert_eq!((good.code, good.err.as_str()), (0, ""), "{}", good.out);
    let bad = run(&["check", "tests/commands/scenarios/slips_in_texts.toml"]);
    assert_eq!((bad.code, bad.out.as_str()), (2, ""), "bad input");
    insta::assert_snapshot!("slips_in_texts", bad.err);
}
