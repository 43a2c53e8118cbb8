//! A whole exercise as a person does it: pointer and keys go into the panels, what the panels ask for goes to the session,
//! and nothing else moves anything. Once by pointer, once by keyboard alone; both ways must be the same attempt.
//!
//! The test looks at the session only as a person looks at the window: which part is chosen, where the needle stands.

use egui::accesskit::Role;
use egui::{Event, Key, Modifiers, PointerButton, Pos2, Vec2};
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use egui_kittest::{Harness, Node};
use lashwright::app::Session;
use lashwright::bench::{Measurand, StemChoice};
use lashwright::job::attempt::replay;
use lashwright::panels::{theme, window_panel};
use lashwright::view::bench::{BenchView, Reading, measurand_words, stem as stem_words, tool_words};
use lashwright::view::{AxlePart, Command, DebriefView, Place};

use super::bench::session;
use super::folder::Folder;

/// The exercise, and how its page of the start list is called.
const EXERCISE: [&str; 2] = ["what-the-dial-says", "What the dial says"];
/// Teeth that are read, spread round the ring gear; people number them from 1.
const TEETH: [u32; 3] = [0, 12, 24];
/// The work that reads them, and what is chosen in its form.
const WORK: &str = "Check backlash";

/// The dial: what the choice shows at first, and what is chosen.
fn dial() -> [String; 2] {
    [
        format!("Instrument: {}", tool_words("dial_indicator")),
        tool_words("lever_dial"),
    ]
}

/// How its stem lies: what the choice shows at first, and what is chosen.
fn stem() -> [String; 2] {
    [
        format!("Stem: {}", stem_words(StemChoice::SquareToTrace)),
        stem_words(StemChoice::AlongMotion),
    ]
}

/// A reading of a tooth as the list names it.
fn reading(number: usize, tooth: u32) -> String {
    format!("Reading {number}: {}", measurand_words(Measurand::Lash { tooth }))
}

/// Session and what the panels of the last frame asked of it.
struct Window {
    session: Session,
    asked: Vec<Command>,
}

/// Someone at the window.
struct Person {
    harness: Harness<'static, Window>,
    folder: Folder,
}

/// What came of it.
struct Outcome {
    board: BenchView,
    debrief: DebriefView,
    journal: Vec<u8>,
}

impl Person {
    fn sits_down(name: &str) -> Self {
        let folder = Folder::new(name);
        let session = session(&folder);
        let mut dressed = false;
        let harness = Harness::builder().with_size(Vec2::new(1280.0, 720.0)).build_ui_state(
            move |ui, window: &mut Window| {
                if !std::mem::replace(&mut dressed, true) {
                    theme::apply(ui.ctx(), window.session.theme(), window.session.text_size());
                    theme::install_fonts(ui.ctx());
                    // As in the window: what was asked for in a frame is asked for once.
                    ui.ctx()
                        .options_mut(|options| options.max_passes = core::num::NonZeroUsize::MIN);
                    // Fonts are there from the next frame on.
                    return;
                }
                let mut whole = egui::Ui::new(
                    ui.ctx().clone(),
                    egui::Id::new("window"),
                    egui::UiBuilder::new()
                        .layer_id(egui::LayerId::background())
                        .max_rect(ui.ctx().content_rect()),
                );
                window_panel(&mut whole, &window.session.view(), None, &mut window.asked);
            },
            Window {
                session,
                asked: Vec::new(),
            },
        );
        let mut person = Self { harness, folder };
        person.rests();
        assert_eq!(person.place(), Place::Start, "the program opens there");
        person
    }

    /// One frame with these events, then what the panels asked for.
    fn frame(&mut self, events: impl IntoIterator<Item = Event>) {
        self.harness.input_mut().events.extend(events);
        self.harness.step();
        let window = self.harness.state_mut();
        for command in std::mem::take(&mut window.asked) {
            let said = format!("{command:?}");
            window
                .session
                .apply(command)
                .unwrap_or_else(|refusal| panic!("{said}: {refusal}"));
            window.session.finish();
        }
    }

    /// Frames in which nothing is done, so that what came is laid out.
    fn rests(&mut self) {
        for _ in 0..3 {
            self.frame([]);
        }
    }

    fn place(&self) -> Place {
        self.harness.state().session.place()
    }

    /// The part that is shown as chosen.
    fn part(&self) -> Option<AxlePart> {
        self.harness.state().session.view().desk.part
    }

    fn board(&self) -> &BenchView {
        self.harness
            .state()
            .session
            .view()
            .bench
            .expect("an attempt is under way")
    }

    /// All that can be pressed or written in under this name.
    fn things<'b>(&'b self, label: &'b str) -> impl Iterator<Item = Node<'b>> {
        self.harness
            .query_all_by_label(label)
            .filter(|node| node.accesskit_node().role() != Role::Label)
    }

    /// Where the thing of this name stands: there must be one, and only one.
    fn place_of(&self, label: &str) -> Pos2 {
        let places: Vec<Pos2> = self.things(label).map(|node| node.rect().center()).collect();
        let [one] = places[..] else {
            panic!("“{label}” is to be seen once: {places:?}");
        };
        one
    }

    /// What the needle of the last reading shows, to the graduation of the lever dial: two thousandths.
    fn needle(&self) -> String {
        let value = self.board().readings.last().and_then(Reading::main_value);
        format!("{:.3}", value.expect("the needle stands somewhere"))
    }

    /// The pointer goes to the thing of this name and its button goes down and up.
    fn clicks(&mut self, label: &str) {
        let pos = self.place_of(label);
        self.frame([Event::PointerMoved(pos)]);
        for pressed in [true, false] {
            self.frame([Event::PointerButton {
                pos,
                button: PointerButton::Primary,
                pressed,
                modifiers: Modifiers::NONE,
            }]);
        }
        self.rests();
    }

    /// A key goes down and up, with the text that a keyboard sends along.
    fn presses(&mut self, key: Key, modifiers: Modifiers, text: Option<char>) {
        let event = |pressed| Event::Key {
            key,
            physical_key: None,
            pressed,
            repeat: false,
            modifiers,
        };
        let down = [
            Some(Event::ModifiersChanged(modifiers)),
            Some(event(true)),
            text.map(|c| Event::Text(c.to_string())),
        ];
        self.frame(down.into_iter().flatten());
        self.frame([event(false), Event::ModifiersChanged(Modifiers::NONE)]);
        self.rests();
    }

    fn key(&mut self, key: Key) {
        self.presses(key, Modifiers::NONE, None);
    }

    /// Types over what stands in the box that has the keyboard.
    fn types(&mut self, digits: &str) {
        self.presses(Key::A, Modifiers::COMMAND, None);
        for digit in digits.chars() {
            let name = digit.to_string();
            let key = Key::from_name(&name).expect("a key of the keyboard");
            self.presses(key, Modifiers::NONE, Some(digit));
        }
    }

    fn has_keyboard(&self, label: &str) -> bool {
        self.things(label).any(|node| node.accesskit_node().is_focused())
    }

    /// Presses a key until the thing of this name has the keyboard.
    fn goes_on_to(&mut self, label: &str, key: Key) {
        // More things than a page has.
        for _ in 0..150 {
            if self.has_keyboard(label) {
                return;
            }
            self.key(key);
        }
        panic!("{key:?} does not lead to “{label}”");
    }

    /// To the thing of this name by Tab, and Enter on it.
    fn enters(&mut self, label: &str) {
        self.goes_on_to(label, Key::Tab);
        self.key(Key::Enter);
    }

    /// After the hand-over.
    fn outcome(self, written: &str) -> Outcome {
        assert_eq!(self.place(), Place::Debrief, "the axle is talked through");
        let board = self.board().clone();
        let view = self.harness.state().session.view();
        let debrief = view.debrief.expect("the debrief is there").clone();
        let note = board.notes.last().expect("something stands on the sheet");
        let value: f64 = written.parse().expect("a number was typed");
        assert!(
            (note.value - value).abs() < 1e-12,
            "typed {value}, on the sheet {}",
            note.value
        );
        let wanted = board.wanted.iter().find(|wanted| wanted.name.starts_with("Backlash"));
        assert_eq!(
            wanted.and_then(|wanted| wanted.written),
            Some(value),
            "it stands beside what is wanted"
        );
        assert!(
            self.harness.query_by_label_contains("Score ").is_some(),
            "the page is drawn"
        );
        let [kept] = &self.folder.files()[..] else {
            panic!("one journal: {:?}", self.folder.files());
        };
        let read = replay(kept).expect("a journal");
        assert!(read.identical && read.sealed, "{read:?}");
        assert_eq!(
            (read.scenario.as_str(), read.seed),
            (EXERCISE[0], board.seed),
            "of this axle"
        );
        let journal = lashwright::store::read_within(kept, 1 << 20).expect("a journal");
        Outcome {
            board,
            debrief,
            journal,
        }
    }
}

/// The number that goes on the sheet: the smallest that was read.
fn smallest(read: &[String]) -> usize {
    (1..read.len()).fold(0, |least, i| if read[i] < read[least] { i } else { least })
}

fn by_pointer() -> Outcome {
    let mut person = Person::sits_down("pointer");
    person.clicks("Shim drawer");
    person.clicks(EXERCISE[1]);
    person.clicks("Begin");
    assert_eq!(person.place(), Place::Bench, "the axle is there");
    person.clicks("Ring gear");
    let mut read = Vec::new();
    for tooth in TEETH {
        person.clicks(WORK);
        person.clicks("Tooth in mesh");
        person.types(&(tooth + 1).to_string());
        // As it was chosen for the first tooth it stays.
        for [shown, wanted] in [dial(), stem()].into_iter().filter(|_| tooth == TEETH[0]) {
            person.clicks(&shown);
            person.clicks(&wanted);
        }
        person.clicks("Take the reading");
        read.push(person.needle());
    }
    let least = smallest(&read);
    println!("{read:?}");
    let reading = reading(least + 1, TEETH[least]);
    person.clicks("Show: Readings");
    person.clicks(&reading);
    person.clicks("Value you read");
    person.types(&read[least]);
    person.clicks("Write down");
    person.clicks("Sign off");
    person.clicks("Sign off now");
    person.outcome(&read[least])
}

fn by_keyboard() -> Outcome {
    let mut person = Person::sits_down("keyboard");
    person.enters("Shim drawer");
    person.enters(EXERCISE[1]);
    person.enters("Begin");
    assert_eq!(person.place(), Place::Bench, "the axle is there");
    for _ in 0..2 {
        person.key(Key::P);
    }
    assert_eq!(person.part(), Some(AxlePart::RingGear), "P goes from part to part");
    let mut read = Vec::new();
    for tooth in TEETH {
        // The box of the reading before has the keyboard; Escape lets go of it and of nothing else.
        if person.has_keyboard("Value you read") {
            person.key(Key::Escape);
        }
        assert_eq!(person.part(), Some(AxlePart::RingGear), "the part stays chosen");
        person.key(Key::W);
        person.goes_on_to(WORK, Key::ArrowDown);
        person.key(Key::Enter);
        assert!(person.has_keyboard("Tooth in mesh"), "the keyboard is in the first box");
        person.types(&(tooth + 1).to_string());
        for [shown, wanted] in [dial(), stem()].into_iter().filter(|_| tooth == TEETH[0]) {
            person.enters(&shown);
            person.enters(&wanted);
            let name = shown.split(':').next().unwrap_or_default();
            let now = format!("{name}: {wanted}");
            assert!(person.has_keyboard(&now), "the keyboard is where it was before: {now}");
        }
        person.enters("Take the reading");
        assert!(person.has_keyboard("Value you read"), "the value can be typed");
        read.push(person.needle());
    }
    let least = smallest(&read);
    println!("{read:?}");
    let reading = reading(least + 1, TEETH[least]);
    person.enters("Show: Readings");
    person.enters(&reading);
    assert!(person.has_keyboard("Value you read"), "the value can be typed");
    person.types(&read[least]);
    person.key(Key::Enter);
    person.enters("Sign off");
    person.enters("Sign off now");
    person.outcome(&read[least])
}

#[test]
fn pointer_and_keyboard_do_the_same_exercise() {
    let pointer = by_pointer();
    let keyboard = by_keyboard();
    assert_eq!(pointer.board.readings.len(), TEETH.len(), "each tooth was read once");
    for (reading, tooth) in pointer.board.readings.iter().zip(TEETH) {
        assert_eq!(reading.what, Measurand::Lash { tooth });
        assert_eq!(reading.tool, "lever_dial");
        assert_eq!(reading.stem.as_ref(), Some(&stem()[1]));
    }
    assert_eq!(pointer.board, keyboard.board, "the same answers");
    assert_eq!(pointer.debrief, keyboard.debrief, "the same debrief");
    assert_eq!(pointer.journal, keyboard.journal, "the same journal, byte for byte");
}
