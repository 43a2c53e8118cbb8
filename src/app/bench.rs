//! The bench's side of the session: exercises, the attempt at hand, and the work on it that takes longer than a frame.
//!
//! An attempt goes away with its task and comes back with what came of it, so that only one place ever holds it. Operations
//! asked for meanwhile wait in their order.

use std::collections::VecDeque;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use crate::bench::{Operation, Paste, PasteLeft};
use crate::contact::{Placement, Route};
use crate::exercise::{Debrief, Exercise};
use crate::job::attempt::OpenAttempt as Attempt;
use crate::job::kept::{self, Kept};
use crate::job::{Failure, saved_files, scenarios};
use crate::view::bench::{ExerciseLine, KeptLine, Laid, ToothShape};
use crate::view::{
    AxlePart, AxleParts, BenchView, DebriefView, DeskView, Orbit, Place, Play, Saved, StagePair, StartView, Turn,
    Viewpoint,
};
use crate::words::{self, say};

/// How many times thicker than true shims are drawn at first.
const SHIMS_TIMES: u32 = 10;

/// The attempt with what belongs to it.
#[derive(Debug)]
pub(super) struct Held {
    attempt: Attempt,
    tooth: ToothShape,
    /// The paste that was last on the teeth, and what was to be seen of it.
    paste: Option<(Paste, Arc<PasteLeft>)>,
}

/// What is to be seen of an attempt.
#[derive(Debug)]
pub(super) struct AttemptView {
    board: BenchView,
    debrief: Option<DebriefView>,
    paste: Option<Arc<PasteLeft>>,
}

impl Held {
    /// What is shown, and why there is no debrief although the axle was handed over.
    fn view(&mut self) -> (Box<AttemptView>, Option<String>) {
        let paste = self.paste_left();
        let attempt = self.attempt.attempt();
        let board = BenchView::new(attempt, self.tooth);
        let (debrief, problem) = if attempt.is_finished() {
            match Debrief::of(attempt) {
                Ok(debrief) => (Some(DebriefView::new(attempt, &debrief)), None),
                Err(error) => (
                    None,
                    Some(say!(
                        "notices-no-debrief",
                        error = words::error::exercise(&error).line()
                    )),
                ),
            }
        } else {
            (None, None)
        };
        (Box::new(AttemptView { board, debrief, paste }), problem)
    }

    /// What is left of the paste; solved again only when the paste has changed.
    fn paste_left(&mut self) -> Option<Arc<PasteLeft>> {
        let bench = self.attempt.attempt().bench();
        let now = bench.paste()?;
        match &self.paste {
            Some((before, left)) if before == now => Some(Arc::clone(left)),
            _ => {
                let left = Arc::new(bench.paste_left()?);
                self.paste = Some((now.clone(), Arc::clone(&left)));
                Some(left)
            }
        }
    }

    /// Writes the debrief as a page into a folder.
    fn save_page(&self, folder: &Path) -> Saved {
        let attempt = self.attempt.attempt();
        // A scenario that is a file goes by its name.
        let name = Path::new(self.attempt.source()).file_stem().unwrap_or_default();
        let name = format!("debrief-{}-axle-{}", name.to_string_lossy(), attempt.seed());
        let written = saved_files::new_files(folder, &name, &["html"]).and_then(|files| {
            for file in &files {
                self.attempt.write_debrief(file)?;
            }
            Ok(files)
        });
        saved(written)
    }
}

/// What became of files that were to be written.
pub(super) fn saved(written: Result<Vec<PathBuf>, Failure>) -> Saved {
    match written {
        Ok(files) => Saved::There(files.iter().map(|file| file.display().to_string()).collect()),
        Err(failure) => Saved::Not(kept::sentence(&failure)),
    }
}

/// Looking for the attempts that are kept in a folder.
#[derive(Debug)]
pub(super) struct Look {
    folder: PathBuf,
}

/// What lies there.
#[derive(Debug)]
pub(super) struct Looked {
    kept: Vec<Kept>,
    problems: Vec<String>,
}

impl Look {
    /// Reads them.
    pub(super) fn run(self) -> Looked {
        let (kept, problems) = kept::list(&self.folder);
        Looked { kept, problems }
    }
}

/// Work on an attempt.
#[derive(Debug)]
pub(super) enum Task {
    /// Begin one, kept in this folder.
    Begin {
        source: String,
        seed: u64,
        folder: Option<PathBuf>,
    },
    /// Open one again.
    GoOn { path: PathBuf },
    /// Do something.
    Do { held: Box<Held>, operation: Operation },
    /// Write the debrief as a page into this folder.
    SavePage { held: Box<Held>, folder: PathBuf },
}

/// What came of it.
#[derive(Debug)]
pub(super) enum TaskOutcome {
    /// An attempt has begun or goes on.
    Opened(Result<Box<OpenedAttempt>, String>),
    /// The debrief was written, or could not be.
    Saved { held: Box<Held>, saved: Saved },
    /// Something was done, or could not even be kept.
    Did {
        held: Box<Held>,
        shown: Option<Box<AttemptView>>,
        problem: Option<String>,
    },
}

/// An attempt that has just begun or goes on.
#[derive(Debug)]
pub(super) struct OpenedAttempt {
    held: Held,
    shown: Box<AttemptView>,
    stage: Arc<StagePair>,
    notice: Option<String>,
}

impl Task {
    /// Does it.
    pub(super) fn run(self) -> TaskOutcome {
        match self {
            Self::Begin { source, seed, folder } => {
                let begun = begin(&source, seed, folder.as_deref()).map_err(|failure| kept::sentence(&failure));
                TaskOutcome::Opened(begun.and_then(|attempt| there(attempt, None)))
            }
            Self::GoOn { path } => {
                let resumed = Attempt::resume(&path).map_err(|failure| kept::sentence(&failure));
                TaskOutcome::Opened(resumed.and_then(|(attempt, notice)| there(attempt, notice)))
            }
            Self::SavePage { held, folder } => TaskOutcome::Saved {
                saved: held.save_page(&folder),
                held,
            },
            Self::Do { mut held, operation } => match held.attempt.apply(operation) {
                Ok(_) => {
                    let (seen, problem) = held.view();
                    TaskOutcome::Did {
                        held,
                        shown: Some(seen),
                        problem,
                    }
                }
                Err(failure) => TaskOutcome::Did {
                    held,
                    shown: None,
                    problem: Some(kept::sentence(&failure)),
                },
            },
        }
    }
}

fn begin(source: &str, seed: u64, folder: Option<&Path>) -> Result<Attempt, Failure> {
    let path = folder
        .map(|folder| kept::new_journal(folder, source, seed))
        .transpose()?;
    Attempt::begin(source, seed, path.as_deref())
}

fn there(attempt: Attempt, notice: Option<String>) -> Result<Box<OpenedAttempt>, String> {
    // The gears as designed: what is really there is nobody's business on the stage.
    let stage = StagePair::new(attempt.attempt().exercise().design())?;
    let mut held = Held {
        tooth: ToothShape::of(&stage.pair),
        attempt,
        paste: None,
    };
    let (shown, problem) = held.view();
    Ok(Box::new(OpenedAttempt {
        shown,
        held,
        stage: Arc::new(stage),
        notice: notice.or(problem),
    }))
}

/// The gears of the exercise on the stage.
#[derive(Debug, Clone)]
pub(super) struct BenchStage {
    pub(super) pair: Arc<StagePair>,
    pub(super) play: Option<Play>,
    pub(super) turn: Turn,
    pub(super) orbit: Orbit,
    pub(super) parts: AxleParts,
    axle: Arc<Exercise>,
}

/// Attempts in a list, with what is shown of each.
#[derive(Debug, Default)]
struct Listed {
    paths: Vec<PathBuf>,
    lines: Vec<KeptLine>,
}

/// All exercises that ship with the program by step, as they are listed, and what is wrong with them.
fn exercises() -> (Vec<ExerciseLine>, Option<String>) {
    // A test reads them all; should one fail all the same, the start page says so.
    let (found, said) = match scenarios::embedded() {
        Ok(found) => (found, None),
        Err(failure) => (Vec::new(), Some(kept::sentence(&failure))),
    };
    let mut exercises: Vec<ExerciseLine> = found
        .iter()
        .map(|found| ExerciseLine::new(&found.source, found.exercise.scenario()))
        .collect();
    exercises.sort_by_key(|exercise| exercise.step);
    (exercises, said)
}

/// Where attempts are kept, in words.
fn kept_in(folder: Option<&Path>) -> String {
    folder.map_or_else(
        || say!("notices-attempts-not-kept"),
        |folder| say!("notices-attempts-kept", folder = folder.display().to_string()),
    )
}

/// Where pages and pictures are saved, in words; nothing where that is the folder that the program was started in.
fn saved_in(folder: Option<&Path>) -> String {
    folder.map_or_else(String::new, |folder| {
        say!("notices-pages-saved", folder = folder.display().to_string())
    })
}

/// Everything about the bench.
#[derive(Debug)]
#[expect(
    clippy::struct_excessive_bools,
    reason = "each says of one thing whether it is wanted or goes on"
)]
pub(super) struct Desk {
    exercises: Vec<ExerciseLine>,
    folder: Option<PathBuf>,
    kept_in: String,
    /// Own unfinished attempts with their lines, and finished ones.
    unfinished: Listed,
    finished: Listed,
    /// Exercise and axle of every attempt that is kept.
    tried: Vec<(String, u64)>,
    /// Whether the folder is to be read, and whether that is under way.
    look_wanted: bool,
    looking: bool,
    chosen: usize,
    seed: u64,
    /// Whether somebody chose this axle, or it is the next one.
    seed_chosen: bool,
    held: Option<Box<Held>>,
    away: bool,
    queue: VecDeque<Operation>,
    page_wanted: bool,
    /// Where pages and pictures go, and the same in words.
    pages: Option<PathBuf>,
    saved_in: String,
    saved: Option<Saved>,
    wanted: Option<Task>,
    board: Option<BenchView>,
    debrief: Option<DebriefView>,
    paste: Option<Arc<PasteLeft>>,
    pub(super) stage: Option<BenchStage>,
    /// Counts the gears of exercises that have stood on the stage.
    pub(super) shown: u64,
    said: Option<String>,
    part: Option<AxlePart>,
    pointed: Option<AxlePart>,
    read_out: bool,
    shims_times: u32,
}

impl Desk {
    /// All exercises that ship with the program; attempts are kept nowhere.
    pub(super) fn new() -> Self {
        let (exercises, said) = exercises();
        Self {
            exercises,
            folder: None,
            kept_in: kept_in(None),
            unfinished: Listed::default(),
            finished: Listed::default(),
            tried: Vec::new(),
            look_wanted: false,
            looking: false,
            chosen: 0,
            seed: 1,
            seed_chosen: false,
            held: None,
            away: false,
            queue: VecDeque::new(),
            page_wanted: false,
            pages: None,
            saved_in: String::new(),
            saved: None,
            wanted: None,
            board: None,
            debrief: None,
            paste: None,
            stage: None,
            shown: 0,
            said,
            part: None,
            pointed: None,
            read_out: false,
            shims_times: SHIMS_TIMES,
        }
    }

    /// Keeps attempts in this folder, and finds those that are there.
    pub(super) fn keep_in(&mut self, folder: Option<PathBuf>) {
        self.kept_in = kept_in(folder.as_deref());
        self.folder = folder;
        self.look_wanted = true;
    }

    /// Saves pages and pictures in this folder; without one, where the program was started.
    pub(super) fn save_in(&mut self, folder: Option<PathBuf>) {
        self.saved_in = saved_in(folder.as_deref());
        self.pages = folder;
    }

    /// Where pages and pictures are saved.
    pub(super) fn pages(&self) -> PathBuf {
        self.pages.clone().unwrap_or_else(|| PathBuf::from("."))
    }

    /// What became of the last page or picture that was saved.
    pub(super) fn saved(&self) -> Option<&Saved> {
        self.saved.as_ref()
    }

    /// Says what became of a page or a picture, or puts that away.
    pub(super) fn say_saved(&mut self, saved: Option<Saved>) {
        self.saved = saved;
    }

    /// The folder to be read, if it is to be read again; handed out once at a time.
    pub(super) fn next_look(&mut self) -> Option<Look> {
        if !self.look_wanted || self.looking {
            return None;
        }
        self.look_wanted = false;
        let folder = self.folder.clone()?;
        self.looking = true;
        Some(Look { folder })
    }

    /// Takes what lies in the folder, unless it is to be read once more.
    pub(super) fn take_look(&mut self, Looked { kept, problems }: Looked) {
        self.looking = false;
        if self.look_wanted {
            return;
        }
        for exercise in &mut self.exercises {
            let own = || kept.iter().filter(|k| k.scenario == exercise.source && k.finished);
            exercise.finished = own().count();
            exercise.best = own().filter_map(|k| k.score).reduce(|a, b| if b > a { b } else { a });
        }
        self.tried = kept.iter().map(|k| (k.scenario.clone(), k.seed)).collect();
        (self.unfinished, self.finished) = (Listed::default(), Listed::default());
        for attempt in kept {
            let exercise = self.exercises.iter().find(|e| e.source == attempt.scenario);
            let list = if attempt.finished {
                &mut self.finished
            } else {
                &mut self.unfinished
            };
            list.lines.push(KeptLine {
                title: exercise.map_or(attempt.scenario, |e| e.title.clone()),
                seed: attempt.seed,
                operations: attempt.operations,
                points: attempt.score,
            });
            list.paths.push(attempt.path);
        }
        if !self.seed_chosen {
            self.seed = self.next_seed();
        }
        if self.said.is_none() {
            self.said = problems.into_iter().next();
        }
    }

    /// The first axle of the chosen exercise that nobody has tried yet.
    fn next_seed(&self) -> u64 {
        let Some(exercise) = self.exercises.get(self.chosen) else {
            return 1;
        };
        let tried = |seed: &u64| {
            self.tried
                .iter()
                .any(|(name, of)| *name == exercise.source && of == seed)
        };
        // So many at most are tried, and one more is not.
        let most = u64::try_from(self.tried.len()).unwrap_or(0).saturating_add(1);
        (1..=most).find(|seed| !tried(seed)).unwrap_or(most)
    }

    /// Offers the next axle of the chosen exercise.
    fn next_axle(&mut self) {
        self.seed_chosen = false;
        self.seed = self.next_seed();
    }

    /// Whether there is an exercise with this place.
    pub(super) fn choose(&mut self, index: usize) -> bool {
        let there = index < self.exercises.len();
        if there && self.chosen != index {
            self.chosen = index;
            self.next_axle();
        }
        there
    }

    /// Chooses an exercise by name.
    pub(super) fn choose_named(&mut self, source: &str) -> bool {
        let index = self.exercises.iter().position(|e| e.source == source);
        index.is_some_and(|index| self.choose(index))
    }

    pub(super) fn choose_seed(&mut self, seed: u64) {
        self.seed = seed.max(1);
        self.seed_chosen = true;
    }

    /// Begins the chosen exercise.
    pub(super) fn begin(&mut self) {
        if let Some(source) = self.exercises.get(self.chosen).map(|e| e.source.clone()) {
            self.let_go();
            self.wanted = Some(Task::Begin {
                source,
                seed: self.seed,
                folder: self.folder.clone(),
            });
        }
    }

    /// Goes on with an unfinished attempt; says whether there is one with this place.
    pub(super) fn go_on(&mut self, index: usize) -> bool {
        let path = self.unfinished.paths.get(index).cloned();
        self.open(path)
    }

    /// Opens a finished attempt to be looked at; says whether there is one with this place.
    pub(super) fn open_finished(&mut self, index: usize) -> bool {
        let path = self.finished.paths.get(index).cloned();
        self.open(path)
    }

    fn open(&mut self, path: Option<PathBuf>) -> bool {
        let there = path.is_some();
        if let Some(path) = path {
            self.let_go();
            self.wanted = Some(Task::GoOn { path });
        }
        there
    }

    /// Puts the attempt at hand away; its journal holds it.
    fn let_go(&mut self) {
        self.held = None;
        self.queue.clear();
        // A page that was asked for and not begun is not written any more.
        if std::mem::take(&mut self.page_wanted) {
            self.saved = None;
        }
        self.board = None;
        self.debrief = None;
        self.paste = None;
        self.stage = None;
        self.part = None;
        self.pointed = None;
        self.said = None;
        self.shown += 1;
    }

    /// Asks for an operation; says whether there is an attempt that takes one.
    pub(super) fn ask(&mut self, operation: Operation) -> bool {
        let open = self.board.as_ref().is_some_and(|board| !board.finished);
        if open {
            self.queue.push_back(operation);
        }
        open
    }

    /// Asks for the debrief as a page; says whether there is one.
    pub(super) fn save_page(&mut self) -> bool {
        self.page_wanted = self.debrief.is_some();
        if self.page_wanted {
            self.saved = Some(Saved::UnderWay);
        }
        self.page_wanted
    }

    pub(super) fn choose_part(&mut self, part: Option<AxlePart>) {
        self.part = part;
    }

    pub(super) fn point_at(&mut self, part: Option<AxlePart>) {
        self.pointed = part;
    }

    pub(super) fn read_out(&self) -> bool {
        self.read_out
    }

    pub(super) fn set_read_out(&mut self, read_out: bool) {
        self.read_out = read_out;
    }

    pub(super) fn set_shims_times(&mut self, times: u32) {
        let times = times.clamp(1, 20);
        if self.shims_times != times {
            self.shims_times = times;
            self.shown += 1;
            if let Some(stage) = &mut self.stage {
                stage.parts = AxleParts::new(stage.axle.axle(), &stage.pair, times);
            }
        }
    }

    /// The part that appears at a place of the stage.
    pub(super) fn part_at(&self, [right, up]: [f64; 2]) -> Option<AxlePart> {
        let (stage, board) = (self.stage.as_ref()?, self.board.as_ref()?);
        stage.parts.part_at(&stage.orbit, right, up, &board.laid)
    }

    /// What is to be done elsewhere next.
    pub(super) fn next_task(&mut self) -> Option<Task> {
        if self.away {
            return None;
        }
        let page = std::mem::take(&mut self.page_wanted);
        let task = self.wanted.take().or_else(|| {
            if page && let Some(held) = self.held.take() {
                return Some(Task::SavePage {
                    held,
                    folder: self.pages(),
                });
            }
            // Taken only together, so that nothing is lost.
            self.held.as_ref()?;
            let operation = self.queue.pop_front()?;
            Some(Task::Do {
                held: self.held.take()?,
                operation,
            })
        });
        self.away = task.is_some();
        task
    }

    /// Takes what came of a task. Says whether an attempt has just come on the bench.
    pub(super) fn take(&mut self, came: TaskOutcome) -> bool {
        self.away = false;
        match came {
            // Another attempt was asked for meanwhile.
            TaskOutcome::Opened(_) if self.wanted.is_some() => false,
            TaskOutcome::Opened(Ok(there)) => {
                let OpenedAttempt {
                    held,
                    shown,
                    stage,
                    notice,
                } = *there;
                let AttemptView { board, debrief, paste } = *shown;
                let design = stage.design();
                let axle = Arc::clone(held.attempt.attempt().exercise());
                let parts = AxleParts::new(axle.axle(), &stage, self.shims_times);
                let scene = parts.scene(&stage.scene(), &board.laid);
                self.stage = Some(BenchStage {
                    play: Play::new(&stage.pair, Placement::NOMINAL, Route::Fast),
                    turn: Turn::new(design.pinion_teeth, design.wheel_teeth),
                    orbit: Orbit::around(scene.centre_mm, scene.radius_mm, Viewpoint::default()).moved_to(&scene),
                    pair: stage,
                    parts,
                    axle,
                });
                self.shown += 1;
                self.held = Some(Box::new(held));
                self.board = Some(board);
                self.debrief = debrief;
                self.paste = paste;
                self.look_wanted = true;
                self.said = notice;
                true
            }
            TaskOutcome::Opened(Err(problem)) => {
                self.look_wanted = true;
                self.said = Some(problem);
                false
            }
            TaskOutcome::Saved { held, saved } => {
                // The page is written even where another attempt was asked for meanwhile.
                self.saved = Some(saved);
                if self.wanted.is_none() {
                    self.held = Some(held);
                }
                false
            }
            TaskOutcome::Did { held, shown, problem } => {
                // Another attempt was asked for meanwhile: this one is safe in its journal.
                if self.wanted.is_some() {
                    return false;
                }
                self.held = Some(held);
                if let Some(shown) = shown {
                    let AttemptView { board, debrief, paste } = *shown;
                    self.look_at_what_lies(&board.laid);
                    if board.finished {
                        self.queue.clear();
                        self.look_wanted = true;
                        self.seed_chosen = false;
                    }
                    self.board = Some(board);
                    self.debrief = debrief;
                    self.paste = paste;
                }
                self.said = problem;
                false
            }
        }
    }

    /// When something large has come in or out, all of it is in view again, from where it was looked at.
    fn look_at_what_lies(&mut self, laid: &Laid) {
        let large = |laid: &Laid| [laid.carrier_in, laid.wheel_on, laid.pinion_in, laid.nut_on];
        let before = self.board.as_ref().map(|board| large(&board.laid));
        if before != Some(large(laid))
            && let Some(stage) = &mut self.stage
        {
            stage.orbit = stage.orbit.moved_to(&stage.parts.scene(&stage.pair.scene(), laid));
        }
    }

    /// Makes what is shown of exercises and of the attempt at hand again, as words have changed.
    pub(super) fn words_changed(&mut self) {
        self.kept_in = kept_in(self.folder.as_deref());
        self.saved_in = saved_in(self.pages.as_deref());
        for now in exercises().0 {
            if let Some(line) = self.exercises.iter_mut().find(|line| line.source == now.source) {
                *line = ExerciseLine {
                    best: line.best,
                    finished: line.finished,
                    ..now
                };
            }
        }
        // Titles of attempts are those of their exercises.
        self.look_wanted = true;
        if let Some(held) = &mut self.held {
            let (shown, problem) = held.view();
            self.board = Some(shown.board);
            self.debrief = shown.debrief;
            self.said = problem;
        }
    }

    /// Whether something is under way or waits.
    pub(super) fn busy(&self) -> bool {
        self.away || self.wanted.is_some() || self.page_wanted || !self.queue.is_empty()
    }

    /// Whether the list of attempts is being read, or will be.
    pub(super) fn looking(&self) -> bool {
        self.looking || (self.look_wanted && self.folder.is_some())
    }

    pub(super) fn board(&self) -> Option<&BenchView> {
        self.board.as_ref()
    }

    /// The paste on the teeth.
    pub(super) fn paste(&self) -> Option<&Arc<PasteLeft>> {
        self.paste.as_ref()
    }

    pub(super) fn debrief(&self) -> Option<&DebriefView> {
        self.debrief.as_ref()
    }

    /// Whether the gears of the exercise are what the stage of a place shows.
    pub(super) fn on_stage(&self, place: Place) -> Option<&BenchStage> {
        self.stage
            .as_ref()
            .filter(|_| matches!(place, Place::Bench | Place::Debrief))
    }

    pub(super) fn start_view(&self) -> StartView<'_> {
        StartView {
            exercises: &self.exercises,
            chosen: self.chosen,
            seed: self.seed,
            kept: &self.unfinished.lines,
            finished: &self.finished.lines,
            kept_in: &self.kept_in,
            saved_in: &self.saved_in,
            said: self.said.as_deref(),
            busy: self.busy(),
        }
    }

    pub(super) fn view(&self) -> DeskView<'_> {
        DeskView {
            part: self.part,
            pointed: self.pointed,
            read_out: self.read_out,
            shims_times: self.shims_times,
            busy: self.busy(),
            problem: self.said.as_deref(),
        }
    }
}
