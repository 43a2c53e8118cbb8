//! What each feature pulls in, asked of cargo itself.

use std::collections::BTreeSet;
use std::process::Command;

/// The lines of `cargo tree` for this package: one `package version|features` a line, without repeats.
fn tree(arguments: &[&str]) -> BTreeSet<String> {
    let output = Command::new(env!("CARGO"))
        .args([
            "tree",
            "--locked",
            "--offline",
            "--prefix",
            "none",
            "--format",
            "{p}|{f}",
        ])
        .args(arguments)
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .expect("cargo runs");
    assert!(
        output.status.success(),
        "cargo tree {arguments:?}: {}",
        String::from_utf8_lossy(&output.stderr)
    );
    String::from_utf8(output.stdout)
        .expect("cargo prints text")
        .lines()
        .map(|line| line.trim_end_matches(" (*)").to_owned())
        .filter(|line| !line.is_empty())
        .collect()
}

/// Names of the packages in a tree.
fn packages(tree: &BTreeSet<String>) -> BTreeSet<&str> {
    tree.iter().filter_map(|line| line.split(' ').next()).collect()
}

/// Packages whose names start with one of `starts`.
fn found<'a>(tree: &'a BTreeSet<String>, starts: &[&str]) -> Vec<&'a str> {
    packages(tree)
        .into_iter()
        .filter(|name| starts.iter().any(|s| name.starts_with(s)))
        .collect()
}

const WINDOWING: &[&str] = &["bevy", "wgpu", "winit", "naga"];
const PANELS: &[&str] = &["egui", "epaint", "ecolor", "emath"];

#[test]
fn without_features_there_is_no_window_and_no_panel() {
    let core = tree(&["--edges", "normal", "--no-default-features"]);
    assert!(packages(&core).contains("nalgebra"), "this is the tree of the core");
    assert_eq!(found(&core, WINDOWING), [""; 0], "window crates in the core");
    assert_eq!(found(&core, PANELS), [""; 0], "panel crates in the core");
}

#[test]
fn panels_need_no_window() {
    let panels = tree(&["--edges", "normal", "--no-default-features", "--features", "panels"]);
    assert!(!found(&panels, PANELS).is_empty(), "panels have egui");
    assert_eq!(found(&panels, WINDOWING), [""; 0], "window crates in the panels");
}

#[test]
fn there_is_one_egui_and_one_bevy() {
    let window = tree(&["--edges", "normal"]);
    for name in ["egui", "bevy_ecs", "wgpu", "nalgebra", "glam", "winit"] {
        let versions: BTreeSet<&str> = window
            .iter()
            .filter_map(|line| line.split('|').next())
            .filter(|line| line.starts_with(&format!("{name} ")))
            .collect();
        assert_eq!(versions.len(), 1, "versions of {name}: {versions:?}");
    }
}

/// Linking must not ask for development packages of the system: no sound, no device events, no Wayland at link time.
#[test]
fn nothing_needs_a_development_package() {
    let window = tree(&["--edges", "normal"]);
    assert_eq!(
        found(&window, &["alsa", "cpal", "libudev", "gilrs"]),
        [""; 0],
        "packages that link system libraries"
    );
    if found(&window, &["wayland-sys"]).is_empty() {
        return;
    }
    let wayland = window
        .iter()
        .find(|line| line.starts_with("wayland-sys "))
        .expect("just seen");
    assert!(
        wayland.contains("dlopen"),
        "wayland-sys must be opened at run time, not linked: {wayland}"
    );
}

/// `cargo test --release` after `cargo build --release` (or the other way round) must not compile Bevy a second time.
/// Cargo shares a compiled package only where both ask for the same features, so every package of the program must
/// have the same features with and without the packages that only tests use.
#[test]
fn tests_share_the_build_of_the_program() {
    let program = tree(&["--edges", "normal,build"]);
    let with_tests = tree(&["--edges", "normal,build,dev"]);
    let own = format!("{} v", env!("CARGO_PKG_NAME"));
    let changed: Vec<&String> = program
        .difference(&with_tests)
        .filter(|line| !line.starts_with(&own))
        .collect();
    assert!(
        changed.is_empty(),
        "tests ask for other features of these packages, so all that stand on them are built twice; name the missing \
         features in Cargo.toml under `window`:\n{changed:#?}"
    );
}
