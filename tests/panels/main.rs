//! The panels without a screen: what they show by its name, and what they ask for when something is pressed.

mod bench;
mod debrief;
mod dock;
mod fit;
mod gears;
mod hands;
mod head;
mod keys;
mod palette;
mod room;
mod seen;
mod setting;
mod stage;
mod start;

use egui::Vec2;
use egui_kittest::Harness;
use lashwright::gear::{DepthTaper, Design, EaseOff};
use lashwright::panels::{RoomPictures, RoomSizes, theme, window_panel};
use lashwright::quantity::Units;
use lashwright::view::bench::{ExerciseLine, KeptLine};
use lashwright::view::{
    AxlePart, BenchView, Command, DebriefView, DeskView, GearEntry, Keys, Origin, Place, Print, Projection, RoomView,
    Saved, Setting, SettingContact, StageView, StartView, TextSize, Theme, Turn, Viewpoint, WindowView,
};

/// What a test shows, and what was asked for.
#[expect(clippy::struct_excessive_bools, reason = "each says of one thing whether it goes on")]
struct Desk {
    gears: Vec<GearEntry>,
    chosen: Option<usize>,
    theme: Theme,
    text_size: TextSize,
    units: Units,
    turn: Turn,
    turning: bool,
    rocking: bool,
    setting: Setting,
    place: Place,
    film_um: f64,
    other: Option<Setting>,
    pictures: Option<RoomPictures>,
    room: Option<RoomSizes>,
    projection: Projection,
    exercises: Vec<ExerciseLine>,
    kept: Vec<KeptLine>,
    finished: Vec<KeptLine>,
    saved: Option<Saved>,
    chosen_exercise: usize,
    seed: u64,
    board: Option<BenchView>,
    debrief: Option<DebriefView>,
    part: Option<AxlePart>,
    read_out: bool,
    help: bool,
    file_over: bool,
    notice: Option<&'static str>,
    keys: Keys,
    keys_said: Option<&'static str>,
    panels: std::collections::BTreeMap<String, f32>,
    asked: Vec<Command>,
}

impl Desk {
    fn with_sets(count: u32) -> Self {
        let gears = (0..count)
            .map(|i| GearEntry::new(&design(i), Origin::BuiltIn))
            .collect();
        Self {
            gears,
            chosen: (count > 0).then_some(0),
            theme: Theme::Paper,
            text_size: TextSize::default(),
            units: Units::Metric,
            turn: Turn::new(11, 41),
            turning: false,
            rocking: false,
            setting: Setting::default(),
            place: Place::Gears,
            film_um: 8.0,
            other: None,
            pictures: None,
            room: None,
            projection: Projection::Perspective,
            exercises: Vec::new(),
            kept: Vec::new(),
            finished: Vec::new(),
            saved: None,
            chosen_exercise: 0,
            seed: 1,
            board: None,
            debrief: None,
            part: None,
            read_out: false,
            help: false,
            file_over: false,
            notice: None,
            keys: Keys::default(),
            keys_said: None,
            panels: std::collections::BTreeMap::new(),
            asked: Vec::new(),
        }
    }

    fn view(&self) -> WindowView<'_> {
        WindowView {
            gears: &self.gears,
            chosen: self.chosen,
            theme: self.theme,
            text_size: self.text_size,
            units: self.units,
            place: self.place,
            start: StartView {
                exercises: &self.exercises,
                chosen: self.chosen_exercise,
                seed: self.seed,
                kept: &self.kept,
                finished: &self.finished,
                saved_in: "Pages and pictures are saved in /somewhere/else",
                kept_in: "Attempts are kept in /somewhere",
                said: None,
                busy: false,
            },
            bench: self.board.as_ref(),
            desk: DeskView {
                part: self.part,
                read_out: self.read_out,
                shims_times: 10,
                ..DeskView::default()
            },
            debrief: self.debrief.as_ref(),
            help: self.help,
            file_over: self.file_over,
            notice: self.notice,
            saved: self.saved.as_ref(),
            keys: &self.keys,
            keys_said: self.keys_said,
            panels: &self.panels,
            room: RoomView {
                film_um: self.film_um,
                other: self.other,
            },
            stage: StageView {
                turning: self.turning,
                turn: self.turn,
                rocking: self.rocking,
                setting: self.setting,
                contact: self.chosen.is_some().then_some(CONTACT),
                missing: self.chosen.is_none().then_some("No gear set is chosen."),
                viewpoint: Some(Viewpoint::Corner),
                projection: self.projection,
            },
        }
    }
}

/// Numbers that nobody computed: panels only show them.
const CONTACT: SettingContact = SettingContact {
    exact: true,
    lash_mm: Some([0.198, 0.2203]),
    prints: [
        Some(Print {
            area: 0.264,
            centre: [-0.022, 0.16],
        }),
        None,
    ],
};

/// Invented sets: 11 teeth against 41, 42, 43 …
fn design(number: u32) -> Design {
    Design {
        name: format!("Invented set {}", number + 1),
        pinion_teeth: 11,
        wheel_teeth: 41 + number,
        offset_mm: 36.0,
        wheel_outer_pitch_diameter_mm: 224.0,
        wheel_face_width_mm: 32.0,
        pinion_mean_spiral_angle_deg: 50.0,
        limit_radius_mm: 101.0,
        cutter_radius_mm: 134.0,
        pressure_angle_drive_deg: 20.0,
        pressure_angle_coast_deg: 20.0,
        depth: DepthTaper::Tapered,
        depth_factor: 2.0,
        clearance_factor: 0.125,
        wheel_addendum_factor: 0.23,
        thickness_factor: 0.04,
        lash_mm: 0.2,
        ease_off_drive: EaseOff::default(),
        ease_off_coast: EaseOff::default(),
    }
}

/// The window of `size` points with `desk` in it.
fn window(size: Vec2, desk: Desk) -> Harness<'static, Desk> {
    let mut dressed = None;
    Harness::builder().with_size(size).build_ui_state(
        move |ui, desk: &mut Desk| {
            let style = (desk.theme, desk.text_size);
            if dressed != Some(style) {
                theme::apply(ui.ctx(), desk.theme, desk.text_size);
                if dressed.replace(style).is_none() {
                    // Fonts are there from the next pass on.
                    theme::install_fonts(ui.ctx());
                    ui.ctx().request_repaint();
                    return;
                }
            }
            let mut asked = Vec::new();
            let mut whole = egui::Ui::new(
                ui.ctx().clone(),
                egui::Id::new("window"),
                egui::UiBuilder::new()
                    .layer_id(egui::LayerId::background())
                    .max_rect(ui.ctx().content_rect()),
            );
            let left = window_panel(&mut whole, &desk.view(), desk.pictures.as_ref(), &mut asked);
            desk.room = left.room;
            desk.asked.extend(asked);
        },
        desk,
    )
}

const USUAL: Vec2 = Vec2::new(1280.0, 720.0);

/// What was asked for since the last look.
fn asked(harness: &mut Harness<'_, Desk>) -> Vec<Command> {
    std::mem::take(&mut harness.state_mut().asked)
}
