//! Without a display or a driver there is one sentence and exit code 1.

use assert_cmd::Command;

fn program() -> Command {
    Command::cargo_bin("lashwright").expect("the program was built")
}

/// Standard error without what Mesa's own layers print there about the machine they run on.
fn said(output: &std::process::Output) -> String {
    String::from_utf8_lossy(&output.stderr)
        .lines()
        .filter(|line| !line.contains("XDG_RUNTIME_DIR"))
        .collect::<Vec<_>>()
        .join("\n")
}

#[test]
fn no_display_is_one_sentence() {
    for (name, display) in [("none", None), ("a server that is not there", Some(":4077"))] {
        let mut command = program();
        command.env_remove("DISPLAY").env_remove("WAYLAND_DISPLAY");
        if let Some(display) = display {
            command.env("DISPLAY", display);
        }
        let output = command.output().expect("the program ran");
        let said = said(&output);
        println!("{name}: {said}");
        assert_eq!(output.status.code(), Some(1), "{name}: {said}");
        assert_eq!(said.lines().count(), 1, "{name}: {said}");
        assert!(said.starts_with("error: cannot open a window: "), "{name}: {said}");
        assert!(!said.contains("panicked"), "{name}: {said}");
        assert!(output.stdout.is_empty(), "{name}: nothing on standard output");
    }
}

#[test]
fn no_driver_is_one_sentence() {
    let out = std::env::temp_dir().join(format!("lashwright-no-driver-{}.png", std::process::id()));
    let output = program()
        .args(["picture", "--size", "64x64", "--out"])
        .arg(&out)
        // The Vulkan loader finds no driver there.
        .env("VK_DRIVER_FILES", "/nonexistent")
        .env("VK_ICD_FILENAMES", "/nonexistent")
        .output()
        .expect("the program ran");
    let said = said(&output);
    println!("{said}");
    assert_eq!(output.status.code(), Some(1), "{said}");
    assert_eq!(said.lines().count(), 1, "{said}");
    assert!(
        said.starts_with("error: cannot draw: no Vulkan driver was found."),
        "{said}"
    );
    assert!(!out.exists(), "no picture is left behind");
}

#[test]
fn bad_words_are_bad_input() {
    for (arguments, wanted) in [
        (["--size", "12", "--view", "above"], "the size `12` cannot be used"),
        (
            ["--size", "99999x9", "--view", "above"],
            "the size `99999x9` cannot be used",
        ),
        (["--size", "640x360", "--view", "below"], "there is no view `below`"),
        (["--size", "640x360", "--theme", "blue"], "there is no theme `blue`"),
    ] {
        let output = program()
            .args(["picture", "--out", "unused.png"])
            .args(arguments)
            .output()
            .expect("the program ran");
        let said = said(&output);
        assert_eq!(output.status.code(), Some(2), "{arguments:?}: {said}");
        assert!(said.contains(wanted), "{arguments:?}: {said}");
    }
}
