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
use crate::job::{Failure, scenarios};
use crate::view::bench::{ExerciseLine, KeptLine, Laid, ToothShape};
use crate::view::{
    AxlePart, AxleParts, BenchView, DebriefView, DeskView, Orbit, Place, Play, StagePair, StartView, Turn, Viewpoint,
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

    /// Writes the debrief as a page beside the others of its exercise, and says where.
    fn save_page(&self, folder: &Path) -> String {
        let attempt = self.attempt.attempt();
        let (name, seed) = (self.attempt.source(), attempt.seed());
        let free = (1..1000)
            .map(|number| folder.join(format!("debrief-{name}-{seed}-{number}.html")))
            .find(|path| !path.exists());
        let Some(path) = free else {
            return say!("notices-too-many-pages");
        };
        match self.attempt.write_debrief(&path) {
            Ok(()) => say!("notices-saved-page", file = path.display().to_string()),
            Err(failure) => say!("notices-not-saved", why = kept::sentence(&failure)),
        }
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
    /// The debrief was written, or could not be: in words.
    Saved { held: Box<Held>, said: String },
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
                said: held.save_page(&folder),
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

/// Everything about the bench.
#[derive(Debug)]
pub(super) struct Desk {
    exercises: Vec<ExerciseLine>,
    folder: Option<PathBuf>,
    kept_in: String,
    kept: Vec<Kept>,
    kept_lines: Vec<KeptLine>,
    /// Exercise and axle of every attempt that is kept.
    tried: Vec<(String, u64)>,
    chosen: usize,
    seed: u64,
    held: Option<Box<Held>>,
    away: bool,
    queue: VecDeque<Operation>,
    page_wanted: bool,
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
        Self {
            exercises,
            folder: None,
            kept_in: say!("notices-attempts-not-kept"),
            kept: Vec::new(),
            kept_lines: Vec::new(),
            tried: Vec::new(),
            chosen: 0,
            seed: 1,
            held: None,
            away: false,
            queue: VecDeque::new(),
            page_wanted: false,
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
        self.kept_in = folder.as_ref().map_or_else(
            || say!("notices-attempts-not-kept"),
            |folder| say!("notices-attempts-kept", folder = folder.display().to_string()),
        );
        self.folder = folder;
        if let Some(problem) = self.look_for_kept() {
            self.said = Some(problem);
        }
        self.seed = self.next_seed();
    }

    /// Reads the folder again, and answers what is wrong in it first.
    fn look_for_kept(&mut self) -> Option<String> {
        let (kept, problems) = self.folder.as_deref().map(kept::list).unwrap_or_default();
        for exercise in &mut self.exercises {
            let own = || kept.iter().filter(|k| k.scenario == exercise.source && k.finished);
            exercise.finished = own().count();
            exercise.best = own().filter_map(|k| k.score).reduce(|a, b| if b > a { b } else { a });
        }
        self.tried = kept.iter().map(|k| (k.scenario.clone(), k.seed)).collect();
        self.kept = kept.iter().filter(|k| !k.finished).cloned().collect();
        self.kept_lines = self
            .kept
            .iter()
            .map(|k| KeptLine {
                title: self
                    .exercises
                    .iter()
                    .find(|e| e.source == k.scenario)
                    .map_or_else(|| k.scenario.clone(), |e| e.title.clone()),
                seed: k.seed,
                operations: k.operations,
            })
            .collect();
        problems.into_iter().next()
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

    /// Whether there is an exercise with this place.
    pub(super) fn choose(&mut self, index: usize) -> bool {
        let there = index < self.exercises.len();
        if there && self.chosen != index {
            self.chosen = index;
            self.seed = self.next_seed();
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
        let Some(kept) = self.kept.get(index) else {
            return false;
        };
        let path = kept.path.clone();
        self.let_go();
        self.wanted = Some(Task::GoOn { path });
        true
    }

    /// Puts the attempt at hand away; its journal holds it.
    fn let_go(&mut self) {
        self.held = None;
        self.queue.clear();
        self.page_wanted = false;
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
                // Without a folder of one's own, where the program was started.
                let folder = self.folder.clone().unwrap_or_else(|| PathBuf::from("."));
                return Some(Task::SavePage { held, folder });
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
                let in_folder = self.look_for_kept();
                self.said = notice.or(in_folder);
                true
            }
            TaskOutcome::Opened(Err(problem)) => {
                self.look_for_kept();
                self.said = Some(problem);
                false
            }
            TaskOutcome::Saved { held, said } => {
                if self.wanted.is_none() {
                    self.held = Some(held);
                    self.said = Some(said);
                }
                false
            }
            TaskOutcome::Did { held, shown, problem } => {
                // Another attempt was asked for meanwhile: this one is safe in its journal.
                if self.wanted.is_some() {
                    return false;
                }
                self.held = Some(held);
                let mut in_folder = None;
                if let Some(shown) = shown {
                    let AttemptView { board, debrief, paste } = *shown;
                    self.look_at_what_lies(&board.laid);
                    if board.finished {
                        self.queue.clear();
                        in_folder = self.look_for_kept();
                        self.seed = self.next_seed();
                    }
                    self.board = Some(board);
                    self.debrief = debrief;
                    self.paste = paste;
                }
                self.said = problem.or(in_folder);
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

    /// Makes what is shown of the attempt at hand again, as its words have changed.
    pub(super) fn words_changed(&mut self) {
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
            kept: &self.kept_lines,
            kept_in: &self.kept_in,
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
