//! The real program in a real window, on a screen that nobody sees: it comes up, draws itself, hears keys, lives, and
//! ends when told to.

use std::io::{BufRead as _, BufReader, Read as _};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::Duration;

use super::folder::Folder;

/// How long the first picture may take on a machine that is busy with other tests, tries of a half second.
const PATIENCE: u32 = 180;
/// How long the window is watched, seconds.
const WATCHED_S: u64 = 20;

/// A program that does not outlive the test.
struct Running(Child);

impl Drop for Running {
    fn drop(&mut self) {
        // It may have ended by itself.
        drop(self.0.kill());
        drop(self.0.wait());
    }
}

/// A screen of memory.
struct Screen {
    _server: Running,
    display: String,
    picture: PathBuf,
}

impl Screen {
    fn open(folder: &Path) -> Self {
        let mut server = Command::new("Xvfb")
            .args([
                "-displayfd",
                "1",
                "-screen",
                "0",
                "1280x720x24",
                "-nolisten",
                "tcp",
                "-fbdir",
            ])
            .arg(folder)
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .expect("Xvfb starts; `sh .ci/setup test` installs it");
        let out = server.stdout.take().expect("piped");
        let server = Running(server);
        let mut number = String::new();
        BufReader::new(out)
            .read_line(&mut number)
            .expect("Xvfb says its display");
        Self {
            _server: server,
            display: format!(":{}", number.trim()),
            picture: folder.join("Xvfb_screen0"),
        }
    }

    /// Red, green and blue of every pixel. The file is an X window dump: a head of big-endian words, colours of 12 bytes,
    /// then rows (XWDFile.h of the X11 protocol headers).
    fn pixels(&self) -> Vec<[u8; 3]> {
        let bytes = lashwright::store::read_within(&self.picture, 64_000_000).expect("the screen's file");
        let word = |index: usize| {
            let at = 4 * index;
            let four: [u8; 4] = bytes[at..at + 4].try_into().expect("four bytes");
            usize::try_from(u32::from_be_bytes(four)).expect("fits")
        };
        let (head, width, height) = (word(0), word(4), word(5));
        let (bits, line, colours) = (word(11), word(12), word(19));
        assert_eq!(bits, 32, "four bytes a pixel");
        let start = head + 12 * colours;
        let rows = (0..height).map(|row| &bytes[start + row * line..][..4 * width]);
        rows.flat_map(|row| row.chunks_exact(4))
            .map(|pixel| [pixel[2], pixel[1], pixel[0]])
            .collect()
    }
}

/// Share of pixels that are this colour.
fn share(pixels: &[[u8; 3]], color: [u8; 3]) -> f64 {
    let count = pixels.iter().filter(|p| **p == color).count();
    count as f64 / pixels.len() as f64
}

/// What hands do, by the X server's own test extension.
fn hands(screen: &Screen, what: &[&str]) {
    let done = Command::new("xdotool")
        .env("DISPLAY", &screen.display)
        .args(what)
        .status()
        .expect("xdotool runs; `sh .ci/setup test` installs it");
    assert!(done.success(), "{what:?}");
}

/// Whether the screen comes to look so within the patience of the test.
fn comes(screen: &Screen, wanted: impl Fn(&[[u8; 3]]) -> bool) -> bool {
    (0..PATIENCE).any(|_| {
        std::thread::sleep(Duration::from_millis(500));
        wanted(&screen.pixels())
    })
}

/// Share of the pixels that differ from another picture.
fn changed(before: &[[u8; 3]], now: &[[u8; 3]]) -> f64 {
    let count = before.iter().zip(now).filter(|(a, b)| a != b).count();
    count as f64 / now.len() as f64
}

#[test]
fn the_window_comes_up_hears_keys_and_stays() {
    let folder = Folder::new("smoke");
    let screen = Screen::open(folder.path());
    let program = Command::new(env!("CARGO_BIN_EXE_lashwright"))
        .env("DISPLAY", &screen.display)
        .env_remove("WAYLAND_DISPLAY")
        .env("XDG_DATA_HOME", folder.path())
        .stdout(Stdio::null())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts");
    let mut program = Running(program);
    // Paper and ink of the look, and gears or words between them.
    let look = lashwright::view::Theme::Paper.tokens();
    let (paper, ink) = (look.panel.channels(), look.text.channels());
    let drawn = comes(&screen, |pixels| {
        share(pixels, paper) > 0.3 && share(pixels, ink) > 0.002
    });
    assert!(drawn, "the start page is on the screen");
    // In a corner of the page where nothing answers to the pointer.
    hands(&screen, &["mousemove", "3", "400"]);
    // Where no window manager runs, nobody else gives the keyboard to the window.
    hands(&screen, &["search", "--name", "Lashwright", "windowfocus"]);
    std::thread::sleep(Duration::from_secs(2));
    let start = screen.pixels();

    // A key brings the list of keys over the page, and Escape takes it away: the picture is as it was.
    hands(&screen, &["key", "F1"]);
    let listed = comes(&screen, |pixels| changed(&start, pixels) > 0.05);
    assert!(listed, "F1 brings the list of keys");
    hands(&screen, &["key", "Escape"]);
    let away = comes(&screen, |pixels| changed(&start, pixels) < 0.01);
    assert!(away, "Escape takes the list away");

    std::thread::sleep(Duration::from_secs(WATCHED_S));
    assert_eq!(program.0.try_wait().expect("it can be asked"), None, "it is alive");
    assert!(changed(&start, &screen.pixels()) < 0.01, "and at rest");
    let id = program.0.id().to_string();
    let told = Command::new("kill").args(["-TERM", &id]).status().expect("kill runs");
    assert!(told.success(), "it can be told to end");
    program.0.wait().expect("it ends");
    let mut said = String::new();
    let mut errors = program.0.stderr.take().expect("piped");
    errors.read_to_string(&mut said).expect("text");
    assert!(!said.contains("panicked"), "{said}");
}
