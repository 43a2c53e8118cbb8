//! The one owner of what the window shows, and the one place where commands are carried out.

use core::fmt;
use std::collections::BTreeMap;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use bevy::prelude::Resource;

use super::bench::{BenchStage, Desk, Look, Looked, Task, TaskOutcome};
use super::choices::ChoiceDesk;
use super::keys::KeyDesk;
use crate::bench::PasteLeft;
use crate::contact::{Film, Route};
use crate::gear::Design;
use crate::job::{gear_sets, kept};
use crate::quantity::Units;
use crate::view::{
    AxlePart, AxleParts, BenchView, Choices, Command, Done, FILM_UM, GearEntry, Job, KeyTaken, Orbit, Origin, Place,
    Play, RoomView, Saved, Setting, SettingContact, StagePair, StageView, TextSize, Theme, Turn, Viewpoint, WindowView,
};
use crate::words::{self, Language, say};

/// Why a command was not carried out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Refusal {
    /// There is no gear set at this place of the list.
    NoSuchGears(usize),
    /// There is nothing on the stage to turn.
    NothingToTurn,
    /// There is no exercise at this place of the list.
    NoSuchExercise(usize),
    /// There is no unfinished attempt at this place of the list.
    NoSuchAttempt(usize),
    /// There is no finished attempt at this place of the list.
    NoSuchFinished(usize),
    /// There is no attempt under way that takes operations.
    NoAttempt,
    /// Another action has this key at the same place.
    KeyTaken(KeyTaken),
}

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&match self {
            Self::NoSuchGears(number) => say!("notices-no-such-gears", number = *number),
            Self::NothingToTurn => say!("notices-nothing-to-turn"),
            Self::NoSuchExercise(number) => say!("notices-no-such-exercise", number = *number),
            Self::NoSuchAttempt(number) => say!("notices-no-such-attempt", number = *number),
            Self::NoSuchFinished(number) => say!("notices-no-such-finished", number = *number),
            Self::NoAttempt => say!("notices-no-attempt"),
            Self::KeyTaken(taken) => taken.to_string(),
        })
    }
}

impl core::error::Error for Refusal {}

impl From<KeyTaken> for Refusal {
    fn from(taken: KeyTaken) -> Self {
        Self::KeyTaken(taken)
    }
}

/// Everything that the window shows.
#[derive(Debug, Resource)]
#[expect(clippy::struct_excessive_bools, reason = "each says of one thing whether it goes on")]
pub struct Session {
    designs: Vec<Design>,
    entries: Vec<GearEntry>,
    chosen: Option<usize>,
    /// What is on the stage: the gears of the last choice that are ready.
    pair: Option<Arc<StagePair>>,
    /// Why there is nothing on the stage, or what is waited for.
    missing: Option<String>,
    /// Counts the gears on the stage, so that it is seen when others have come.
    shown: u64,
    /// Counts choices: results of earlier ones are put aside.
    choice: u64,
    gears_asked: u64,
    settled_choice: u64,
    /// Counts settings, in the same way.
    setting_revision: u64,
    contact_asked: u64,
    setting: Setting,
    contact: Option<SettingContact>,
    play: Option<Play>,
    /// What paste shows of the setting, on the teeth.
    paste: Option<Arc<PasteLeft>>,
    place: Place,
    film_um: f64,
    other: Option<Setting>,
    /// Whether a picture is to be saved.
    saving: bool,
    turn: Turn,
    turning: bool,
    rocking: bool,
    /// How far the wheel has been rocked, in seconds of rocking.
    rocked_s: f64,
    orbit: Orbit,
    theme: Theme,
    text_size: TextSize,
    units: Units,
    desk: Desk,
    help: bool,
    file_over: bool,
    notice: Option<String>,
    keys: KeyDesk,
    choices: ChoiceDesk,
    /// Sizes that panels were dragged to, points.
    panels: BTreeMap<String, f32>,
    /// The language that was chosen in the window; none for that of the environment.
    language: Option<Language>,
}

impl Session {
    /// With these gear sets, the first of them on the stage.
    pub fn new(gears: Vec<(Design, Origin)>) -> Self {
        let entries = gears
            .iter()
            .map(|(design, origin)| GearEntry::new(design, origin.clone()))
            .collect();
        let mut session = Self {
            designs: gears.into_iter().map(|(design, _)| design).collect(),
            entries,
            chosen: None,
            pair: None,
            missing: Some(say!("stage-no-gears")),
            shown: 0,
            choice: 0,
            gears_asked: 0,
            settled_choice: 0,
            setting_revision: 0,
            contact_asked: 0,
            setting: Setting::default(),
            contact: None,
            play: None,
            paste: None,
            place: Place::default(),
            film_um: FILM_UM[1],
            other: None,
            saving: false,
            turn: Turn::new(1, 1),
            turning: false,
            rocking: false,
            rocked_s: 0.0,
            orbit: Orbit::around(nalgebra::Vector3::zeros(), 100.0, Viewpoint::default()),
            theme: Theme::default(),
            text_size: TextSize::default(),
            units: Units::default(),
            desk: Desk::new(),
            help: false,
            file_over: false,
            notice: None,
            keys: KeyDesk::default(),
            choices: ChoiceDesk::default(),
            panels: BTreeMap::new(),
            language: None,
        };
        if !session.designs.is_empty() {
            session.choose(0);
        }
        session
    }

    /// The same with the attempts of this folder, and new ones kept there.
    #[must_use]
    pub fn with_attempts_in(mut self, folder: Option<PathBuf>) -> Self {
        self.desk.keep_in(folder);
        self
    }

    /// The same with pages and pictures saved in this folder; without one, where the program was started.
    #[must_use]
    pub fn with_pages_in(mut self, folder: Option<PathBuf>) -> Self {
        self.desk.save_in(folder);
        self
    }

    /// The same with the keys that are kept in this folder, and changed ones kept there.
    #[must_use]
    pub fn with_keys_in(mut self, folder: Option<PathBuf>) -> Self {
        self.keys = KeyDesk::kept_in(folder);
        self
    }

    /// The same as a person wanted it last: theme, text size, units, language, sizes of panels are kept in this folder. Where
    /// the environment names a language for this program alone, that one is spoken.
    #[must_use]
    pub fn with_choices_in(mut self, folder: Option<PathBuf>, language_is_set: bool) -> Self {
        self.choices = ChoiceDesk::kept_in(folder);
        let kept = self.choices.kept().clone();
        self.theme = kept.theme;
        self.text_size = kept.text_size;
        self.units = kept.units;
        self.desk.set_read_out(kept.read_out);
        self.panels = kept.panels;
        self.language = kept.language.as_deref().and_then(Language::of);
        if let Some(language) = self.language.filter(|_| !language_is_set) {
            self.set_language(language);
        }
        self
    }

    /// How the window is wanted now.
    fn chosen_now(&self) -> Choices {
        Choices {
            theme: self.theme,
            text_size: self.text_size,
            units: self.units,
            language: self.language.map(|language| language.tag().to_owned()),
            read_out: self.desk.read_out(),
            panels: self.panels.clone(),
        }
    }

    /// Whether the window is wanted otherwise than it is kept.
    pub fn choices_changed(&self) -> bool {
        *self.choices.kept() != self.chosen_now()
    }

    /// Keeps how the window is wanted.
    pub fn keep_choices(&mut self) {
        let now = self.chosen_now();
        self.choices.keep(&now);
    }

    /// Says everything in this language from now on. What was made of words before is made again.
    fn set_language(&mut self, language: Language) {
        words::speak(language);
        self.language = Some(language);
        self.desk.words_changed();
        // Why there is nothing on the stage is said where the gears are made.
        match self.chosen {
            Some(index) if self.pair.is_none() => self.choose(index),
            None => self.missing = Some(say!("stage-no-gears")),
            Some(_) => {}
        }
    }

    /// Whether keys were changed and are not kept yet.
    pub fn keys_changed(&self) -> bool {
        self.keys.changed()
    }

    /// Keeps the keys in their folder; where that cannot be done, the view says why.
    pub fn keep_keys(&mut self) {
        self.keys.keep();
    }

    /// Chooses an exercise by its name; says whether there is one.
    pub fn choose_exercise(&mut self, source: &str) -> bool {
        self.desk.choose_named(source)
    }

    fn bench_stage(&self) -> Option<&BenchStage> {
        self.desk.on_stage(self.place)
    }

    /// Turn and eye of what is on the stage.
    fn on_stage_mut(&mut self) -> (&mut Turn, &mut Orbit) {
        match &mut self.desk.stage {
            Some(stage) if matches!(self.place, Place::Bench | Place::Debrief) => (&mut stage.turn, &mut stage.orbit),
            _ => (&mut self.turn, &mut self.orbit),
        }
    }

    /// Carries out a command.
    ///
    /// # Errors
    /// [`Refusal`]; nothing has changed then.
    pub fn apply(&mut self, command: Command) -> Result<(), Refusal> {
        match command {
            Command::ChooseGears(index) if index >= self.designs.len() => return Err(Refusal::NoSuchGears(index)),
            Command::SetTurning(true) | Command::SetRocking(true) | Command::TurnTeeth(_) | Command::TurnBy(_)
                if self.stage_pair().0.is_none() =>
            {
                return Err(Refusal::NothingToTurn);
            }
            Command::ChooseGears(index) => {
                if self.chosen != Some(index) {
                    self.choose(index);
                }
            }
            Command::OpenGears(path) => self.open_gears(&path),
            Command::PutNoticeAway => self.notice = None,
            Command::SetTurning(turning) => {
                self.turning = turning;
                // The pinion is held while the wheel is rocked.
                self.rocking &= !turning;
            }
            Command::SetRocking(rocking) => {
                self.rocking = rocking;
                self.rocked_s = 0.0;
                self.turning &= !rocking;
            }
            Command::Set(setting) => self.set(setting.within_reach()),
            Command::GoTo(place) => self.go_to(place),
            Command::SetFilm(film_um) => {
                let [thinnest, usual, thickest] = FILM_UM;
                let film_um = if film_um.is_nan() { usual } else { film_um };
                self.film_um = film_um.clamp(thinnest, thickest);
                self.settle_contact();
            }
            Command::KeepAsOther => self.other = Some(self.setting),
            Command::SwapWithOther => {
                if let Some(other) = self.other.replace(self.setting) {
                    self.set(other);
                } else {
                    self.other = None;
                }
            }
            Command::DropOther => self.other = None,
            Command::SaveDebrief => {
                if !self.desk.save_page() {
                    return Err(Refusal::NoAttempt);
                }
            }
            Command::SavePicture => {
                self.saving = self.pair.is_some();
                if self.saving {
                    self.desk.say_saved(Some(Saved::UnderWay));
                }
            }
            Command::PutSavedAway => self.desk.say_saved(None),
            Command::TurnTeeth(teeth) => self.on_stage_mut().0.teeth(teeth),
            Command::TurnBy(teeth) => self.on_stage_mut().0.by(teeth),
            Command::SetTheme(theme) => self.theme = theme,
            Command::SetTextSize(text_size) => self.text_size = text_size,
            Command::SetUnits(units) => self.units = units,
            Command::LookFrom(viewpoint) => self.look_from(viewpoint),
            Command::SetProjection(projection) => self.on_stage_mut().1.set_projection(projection),
            Command::Orbit {
                azimuth_rad,
                elevation_rad,
            } => self.on_stage_mut().1.turn(azimuth_rad, elevation_rad),
            Command::Zoom(notches) => self.on_stage_mut().1.zoom(notches),
            Command::Pan { right, up } => self.on_stage_mut().1.pan(right, up),
            Command::ChooseExercise(index) => {
                if !self.desk.choose(index) {
                    return Err(Refusal::NoSuchExercise(index));
                }
            }
            Command::ChooseSeed(seed) => self.desk.choose_seed(seed),
            Command::Begin => self.desk.begin(),
            Command::GoOn(index) => {
                if !self.desk.go_on(index) {
                    return Err(Refusal::NoSuchAttempt(index));
                }
            }
            Command::OpenFinished(index) => {
                if !self.desk.open_finished(index) {
                    return Err(Refusal::NoSuchFinished(index));
                }
            }
            Command::Do(operation) => {
                if !self.desk.ask(*operation) {
                    return Err(Refusal::NoAttempt);
                }
            }
            Command::ChoosePart(part) => self.desk.choose_part(part),
            Command::PointAt(place) => {
                let part = place.and_then(|place| self.desk.part_at(place));
                self.desk.point_at(part);
            }
            Command::PickAt(place) => {
                if let Some(part) = self.desk.part_at(place) {
                    self.desk.choose_part(Some(part));
                }
            }
            Command::SetReadOut(read_out) => self.desk.set_read_out(read_out),
            Command::SetShimsTimes(times) => self.desk.set_shims_times(times),
            Command::ShowHelp(help) => self.help = help,
            Command::SetKey(action, key) => self.keys.set(action, key)?,
            Command::UsualKeys => self.keys.usual(),
            Command::SetLanguage(language) => self.set_language(language),
            Command::KeepPanel(name, points) => {
                let mut now = self.chosen_now();
                now.keep_panel(&name, points);
                self.panels = now.panels;
            }
        }
        Ok(())
    }

    /// Reads a gear file and shows its gears first in the list; one that was opened before is read again.
    fn open_gears(&mut self, path: &Path) {
        let source = path.to_string_lossy().into_owned();
        let found = match gear_sets::open(path) {
            Ok(found) => found,
            Err(failure) => {
                self.notice = Some(kept::sentence(&failure));
                return;
            }
        };
        let origin = Origin::File(source);
        let entry = GearEntry::new(&found.design, origin.clone());
        let before = self.entries.iter().position(|entry| entry.origin == origin);
        let place = if let Some((at, design)) = before.and_then(|at| Some((at, self.designs.get_mut(at)?))) {
            *design = found.design;
            if let Some(old) = self.entries.get_mut(at) {
                *old = entry;
            }
            at
        } else {
            self.designs.insert(0, found.design);
            self.entries.insert(0, entry);
            0
        };
        self.choose(place);
        if self.place != Place::ToothRoom {
            self.go_to(Place::Gears);
        }
    }

    /// A file hangs over the window, or no longer.
    pub(super) fn hold_over(&mut self, file_over: bool) {
        self.file_over = file_over;
    }

    /// Nothing goes on turning where nobody sees it.
    fn go_to(&mut self, place: Place) {
        self.turning &= self.place == place;
        self.rocking &= self.place == place;
        self.place = place;
    }

    fn look_from(&mut self, viewpoint: Viewpoint) {
        if viewpoint.flank().is_some() {
            self.turn_paste_up();
        }
        self.on_stage_mut().1.look_from(viewpoint);
    }

    /// Turns the pair so that the painted teeth of the ring gear stand clear of the pinion.
    fn turn_paste_up(&mut self) {
        let tooth = self.paste().map_or(0, |paste| middle_tooth(&paste.teeth));
        if let Some(angle_rad) = self.stage_pair().0.map(|pair| pair.topmost_rad(tooth)) {
            self.turning = false;
            self.rocking = false;
            self.on_stage_mut().0.wheel_to(angle_rad);
        }
    }

    fn choose(&mut self, index: usize) {
        if index < self.designs.len() {
            self.chosen = Some(index);
            self.choice += 1;
            if self.pair.is_none() {
                self.missing = Some(say!("stage-computing"));
            }
        }
    }

    fn set(&mut self, setting: Setting) {
        if self.setting != setting {
            self.setting = setting;
            self.settle_contact();
        }
    }

    /// Contact and play of the present setting by the fast route, at once.
    fn settle_contact(&mut self) {
        self.setting_revision += 1;
        let Some(pair) = &self.pair else { return };
        let placement = self.setting.placement();
        self.contact = Some(SettingContact::new(&pair.pair, placement, self.film(), Route::Fast));
        self.play = Play::new(&pair.pair, placement, Route::Fast);
        self.paste = Some(Arc::new(pair.paste_of(placement, self.film())));
    }

    /// What is to be done elsewhere next; each wish is handed out once.
    pub fn next_job(&mut self) -> Option<Job> {
        if self.gears_asked != self.choice {
            self.gears_asked = self.choice;
            let design = self.designs.get(self.chosen?)?.clone();
            return Some(Job::Gears {
                revision: self.choice,
                design,
            });
        }
        if self.contact_asked != self.setting_revision {
            self.contact_asked = self.setting_revision;
            return Some(Job::Contact {
                revision: self.setting_revision,
                pair: self.pair.clone()?,
                placement: self.setting.placement(),
                film: self.film(),
            });
        }
        None
    }

    /// Takes what came of a job, unless something else has been wished for since.
    pub fn take(&mut self, done: Done) {
        match done {
            Done::Gears { revision, gears } if revision == self.choice => {
                self.shown += 1;
                self.settled_choice = revision;
                self.contact = None;
                self.play = None;
                self.paste = None;
                match gears {
                    Ok(pair) => {
                        let design = pair.design();
                        self.turn = Turn::new(design.pinion_teeth, design.wheel_teeth);
                        self.orbit = self.orbit.moved_to(&pair.scene());
                        self.missing = None;
                        self.pair = Some(pair);
                        self.settle_contact();
                    }
                    Err(why) => {
                        self.pair = None;
                        self.missing = Some(why);
                        self.turning = false;
                        self.rocking = false;
                    }
                }
            }
            Done::Contact { revision, contact } if revision == self.setting_revision => self.contact = Some(contact),
            Done::Gears { .. } | Done::Contact { .. } => {}
        }
    }

    /// Work on the attempt that is to be done elsewhere next.
    pub(super) fn next_task(&mut self) -> Option<Task> {
        self.desk.next_task()
    }

    /// Takes what came of it. An attempt that has begun is gone to, one that has been handed over is talked through.
    pub(super) fn take_task(&mut self, came: TaskOutcome) {
        let before = self.desk.debrief().is_some();
        let paste_before = self.desk.paste().cloned();
        if self.desk.take(came) {
            self.turning = false;
            self.rocking = false;
            self.go_to(Place::Bench);
        }
        // Whoever brushes paste on or looks for what rolling left of it has turned the teeth to where they can be seen.
        if self.place == Place::Bench && self.desk.paste().is_some() && self.desk.paste() != paste_before.as_ref() {
            self.turn_paste_up();
        }
        if !before && self.desk.debrief().is_some() {
            self.go_to(Place::Debrief);
        }
    }

    /// The list of attempts that is to be read elsewhere.
    pub(super) fn next_look(&mut self) -> Option<Look> {
        self.desk.next_look()
    }

    /// Takes what lies in the folder.
    pub(super) fn take_look(&mut self, looked: Looked) {
        self.desk.take_look(looked);
    }

    /// Does all that is to be done, here and now.
    pub fn finish(&mut self) {
        loop {
            if let Some(job) = self.next_job() {
                self.take(job.run());
            } else if let Some(task) = self.next_task() {
                self.take_task(task.run());
            } else if let Some(look) = self.next_look() {
                self.take_look(look.run());
            } else {
                break;
            }
        }
    }

    /// Lets the pinion turn by itself, or the wheel be rocked, for a while.
    pub fn run(&mut self, elapsed: core::time::Duration) {
        if self.turning {
            self.on_stage_mut().0.run(elapsed);
        }
        if self.rocking {
            self.rocked_s = (self.rocked_s + elapsed.as_secs_f64()) % ROCK_S;
        }
    }

    /// Whether anything moves by itself or is being computed, so that frames must follow each other.
    pub fn moving(&self) -> bool {
        self.turning || self.rocking || self.waiting()
    }

    /// Whether something is being computed.
    pub fn waiting(&self) -> bool {
        let gears = self.settled_choice != self.choice;
        gears
            || self.desk.busy()
            || self.desk.looking()
            || (self.pair.is_some() && self.contact.is_none_or(|contact| !contact.exact))
    }

    /// Whether the pinion turns by itself or the wheel is rocked.
    pub(super) fn turning_or_rocked(&self) -> bool {
        self.turning || self.rocking
    }

    /// Whether the pinion turns by itself.
    pub fn turning(&self) -> bool {
        self.turning
    }

    /// How far the pair has been turned.
    pub fn turn(&self) -> Turn {
        self.bench_stage().map_or(self.turn, |stage| stage.turn)
    }

    /// The place of the set on the stage in the list.
    pub fn chosen(&self) -> Option<usize> {
        self.chosen
    }

    /// The pair on the stage, and the count of pairs that have stood there.
    pub fn stage_pair(&self) -> (Option<&Arc<StagePair>>, u64) {
        // Counts of both kinds never meet.
        match self.bench_stage() {
            Some(stage) => (Some(&stage.pair), OF_EXERCISES | self.desk.shown),
            None => (self.pair.as_ref(), self.shown),
        }
    }

    /// The paste on the teeth of what is on the stage.
    pub fn paste(&self) -> Option<&Arc<PasteLeft>> {
        match self.bench_stage() {
            Some(_) => self.desk.paste(),
            None => self.paste.as_ref(),
        }
    }

    /// What lies on the bench, where it is the bench that the stage shows.
    pub fn board(&self) -> Option<&BenchView> {
        self.bench_stage()?;
        self.desk.board()
    }

    /// The parts around the gears of the exercise, where it is the bench that the stage shows, and the count of their
    /// changes.
    pub fn axle_parts(&self) -> (Option<&AxleParts>, u64) {
        match self.bench_stage() {
            Some(stage) => (Some(&stage.parts), OF_EXERCISES | self.desk.shown),
            None => (None, 0),
        }
    }

    /// The part whose work is shown, and the one that the pointer rests on.
    pub fn parts_at_hand(&self) -> [Option<AxlePart>; 2] {
        let view = self.desk.view();
        [view.part, view.pointed]
    }

    /// Why there is nothing on the stage, in a sentence.
    pub fn missing(&self) -> Option<&str> {
        self.missing.as_deref()
    }

    /// How far both gears stand from where they were designed to.
    pub fn setting(&self) -> Setting {
        // The gears of an exercise are drawn at their designed place: where they really stand is not known here.
        if self.bench_stage().is_some() {
            Setting::default()
        } else {
            self.setting
        }
    }

    /// The paste.
    pub fn film(&self) -> Film {
        Film {
            thickness_um: self.film_um,
        }
    }

    /// Where in the program.
    pub fn place(&self) -> Place {
        self.place
    }

    /// The setting to compare with.
    pub fn other(&self) -> Option<Setting> {
        self.other
    }

    /// Whether a picture was asked for; asked once.
    pub fn take_saving(&mut self) -> bool {
        std::mem::take(&mut self.saving)
    }

    /// Says what became of a picture.
    pub(super) fn saved(&mut self, saved: Saved) {
        self.desk.say_saved(Some(saved));
    }

    /// Where pages and pictures are saved.
    pub(super) fn pages(&self) -> PathBuf {
        self.desk.pages()
    }

    /// What comes of the setting.
    pub fn contact(&self) -> Option<SettingContact> {
        self.contact
    }

    /// Angle of the wheel about +z, rad: its roll, and what it stands away from that by the play. At rest the pinion's
    /// drive side pushes it; rocked, it goes over to the coast side and back.
    pub fn wheel_angle_rad(&self) -> f64 {
        let roll = self.turn().wheel_angle_rad();
        let share = rock_share(self.rocked_s);
        let play = match self.bench_stage() {
            Some(stage) => &stage.play,
            None => &self.play,
        };
        roll + play.as_ref().map_or(0.0, |play| play.rotation_rad(roll, share))
    }

    /// Where the stage is looked at from.
    pub fn orbit(&self) -> &Orbit {
        self.bench_stage().map_or(&self.orbit, |stage| &stage.orbit)
    }

    /// Paper or slate.
    pub fn theme(&self) -> Theme {
        self.theme
    }

    /// Size of text.
    pub fn text_size(&self) -> TextSize {
        self.text_size
    }

    /// What the panels show.
    pub fn view(&self) -> WindowView<'_> {
        let on_bench = self.bench_stage().is_some();
        let mut start = self.desk.start_view();
        start.said = start.said.or(self.keys.said()).or(self.choices.said());
        WindowView {
            start,
            bench: self.desk.board(),
            desk: self.desk.view(),
            debrief: self.desk.debrief(),
            help: self.help,
            file_over: self.file_over,
            notice: self.notice.as_deref(),
            saved: self.desk.saved(),
            keys: self.keys.keys(),
            keys_said: self.keys.said(),
            panels: &self.panels,
            gears: &self.entries,
            chosen: self.chosen,
            theme: self.theme,
            text_size: self.text_size,
            units: self.units,
            place: self.place,
            room: RoomView {
                film_um: self.film_um,
                other: self.other,
            },
            stage: StageView {
                turning: self.turning,
                turn: self.turn(),
                rocking: self.rocking,
                setting: self.setting(),
                contact: self.contact,
                missing: self.missing.as_deref().filter(|_| !on_bench),
                viewpoint: self.orbit().viewpoint(),
                projection: self.orbit().projection(),
            },
        }
    }
}

/// The tooth in the middle of a row of neighbours, as they were named.
fn middle_tooth(teeth: &[u32]) -> u32 {
    teeth.get(teeth.len().saturating_sub(1) / 2).copied().unwrap_or(0)
}

/// Marks the counts of gears that belong to exercises.
const OF_EXERCISES: u64 = 1 << 63;

/// Seconds of one rock over to the coast side and back.
const ROCK_S: f64 = 2.0;

/// Where the wheel stands while it is rocked: 0 on the drive side, 1 on the coast side. It rests a moment on either, as
/// under a hand that feels for the stop.
fn rock_share(rocked_s: f64) -> f64 {
    let phase = rocked_s / ROCK_S;
    let there = 1.0 - (2.0 * phase - 1.0).abs();
    let t = (1.6 * there - 0.3).clamp(0.0, 1.0);
    t * t * (3.0 - 2.0 * t)
}
