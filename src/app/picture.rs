//! Pictures without a window: the same program, drawn onto an image and driven by hand.

use core::time::Duration;
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::Instant;

use bevy::app::PluginsState;
use bevy::ecs::schedule::{LogLevel, ScheduleBuildSettings};
use bevy::log::LogPlugin;
use bevy::prelude::*;
use bevy::render::RenderPlugin;
use bevy::render::pipelined_rendering::PipelinedRenderingPlugin;
use bevy::render::render_resource::{PollType, TextureFormat};
use bevy::render::renderer::RenderDevice;
use bevy::render::view::screenshot::{Screenshot, ScreenshotCaptured};
use bevy::window::{ExitCondition, RequestRedraw};
use bevy::winit::WinitPlugin;

use super::error::AppError;
use super::png_file::png_bytes;
use super::preflight::{self, Adapter};
use super::program::{load, prepare, program};
use super::room::Room;
use super::screen::StageArea;
use super::session::Session;
use super::stage::{Drawing, Easel};
use crate::bench::Operation;
use crate::job;
use crate::quantity::{Units, number};
use crate::view::{AxlePart, Command, Orbit, Place, Projection, Setting, StagePair, TextSize, Theme, Viewpoint};
use crate::words::say;

/// What to draw.
#[derive(Debug, Clone, PartialEq)]
pub struct PictureRequest {
    /// Gear set to show: an embedded name or a file. Without it, the training set.
    pub gears: Option<String>,
    /// Width and height in pixels, each from [`PictureRequest::LEAST_PX`] to [`PictureRequest::MOST_PX`].
    pub size_px: [u32; 2],
    /// Where to look from.
    pub viewpoint: Viewpoint,
    /// Perspective or flat.
    pub projection: Projection,
    /// Paper or slate.
    pub theme: Theme,
    /// Size of text.
    pub text_size: TextSize,
    /// How far the pair has been turned, teeth.
    pub turned_teeth: i32,
    /// How far both gears stand from where they were designed to.
    pub setting: Setting,
    /// Where in the program; only with the panels.
    pub place: Place,
    /// A setting to compare with in the tooth room.
    pub other: Option<Setting>,
    /// With the panels, as the window shows it; or the stage alone.
    pub panels: bool,
    /// Shaded or as parts.
    pub drawing: Drawing,
    /// Millimetres or inches.
    pub units: Units,
    /// An exercise on the bench.
    pub exercise: Option<ExerciseRequest>,
    /// How many frames are drawn after the picture with the gears turning, to learn how long they take.
    pub turning_frames: u32,
}

/// An exercise on the bench, with what was done to it.
#[derive(Debug, Clone, PartialEq)]
pub struct ExerciseRequest {
    /// Name of the exercise.
    pub scenario: String,
    /// Which axle of it.
    pub seed: u64,
    /// What is done first.
    pub operations: Vec<Operation>,
    /// The part whose work is shown.
    pub part: Option<AxlePart>,
}

impl Default for PictureRequest {
    fn default() -> Self {
        Self {
            gears: None,
            size_px: [1280, 720],
            viewpoint: Viewpoint::default(),
            projection: Projection::default(),
            theme: Theme::default(),
            text_size: TextSize::default(),
            turned_teeth: 0,
            setting: Setting::default(),
            place: Place::Gears,
            other: None,
            panels: true,
            drawing: Drawing::default(),
            units: Units::default(),
            exercise: None,
            turning_frames: 0,
        }
    }
}

impl PictureRequest {
    /// Smallest width and height, pixels.
    pub const LEAST_PX: u32 = 64;
    /// Smallest width and height for the whole window; a smaller picture shows the stage alone, pixels.
    pub const LEAST_WINDOW_PX: [u32; 2] = [960, 540];
    /// Largest width and height, pixels: what every driver can draw at once.
    pub const MOST_PX: u32 = 4096;

    /// A request from words of the command line: size as `WxH`, view as `corner`, `pinion`, `ring-gear`, `above`, `mesh` or
    /// `tooth-room`,
    /// theme as `paper` or `slate`.
    ///
    /// # Errors
    /// [`AppError::Argument`] names the word and what is allowed.
    pub fn from_words(gears: Option<String>, size: &str, view: &str, theme: &str) -> Result<Self, AppError> {
        let size_px = size
            .split_once(['x', 'X', '×'])
            .and_then(|(width, height)| Some([width.trim().parse().ok()?, height.trim().parse().ok()?]))
            .filter(|size: &[u32; 2]| size.iter().all(|px| (Self::LEAST_PX..=Self::MOST_PX).contains(px)))
            .ok_or_else(|| {
                AppError::Argument(say!(
                    "display-size",
                    size = size,
                    least = Self::LEAST_PX.to_string(),
                    most = Self::MOST_PX.to_string(),
                ))
            })?;
        let viewpoint = match view {
            "corner" => Viewpoint::Corner,
            "pinion" => Viewpoint::Pinion,
            "ring-gear" => Viewpoint::RingGear,
            "above" => Viewpoint::Above,
            "mesh" => Viewpoint::Mesh,
            "drive" => Viewpoint::Drive,
            "coast" => Viewpoint::Coast,
            "tooth-room" | "start" | "bench" | "debrief" => Viewpoint::default(),
            _ => {
                return Err(AppError::Argument(say!("display-view", view = view)));
            }
        };
        let theme = match theme {
            "paper" => Theme::Paper,
            "slate" => Theme::Slate,
            _ => {
                return Err(AppError::Argument(say!("display-theme", theme = theme)));
            }
        };
        Ok(Self {
            gears,
            size_px,
            viewpoint,
            theme,
            place: match view {
                "tooth-room" => Place::ToothRoom,
                "start" => Place::Start,
                "bench" => Place::Bench,
                "debrief" => Place::Debrief,
                _ => Place::Gears,
            },
            panels: size_px[0] >= Self::LEAST_WINDOW_PX[0] && size_px[1] >= Self::LEAST_WINDOW_PX[1],
            ..Self::default()
        })
    }
}

impl PictureRequest {
    /// Text size in percent, and units by their word: `mm` or `inch`.
    ///
    /// # Errors
    /// [`AppError::Argument`] names the word and what is allowed.
    pub fn set_text_and_units(&mut self, percent: u16, units: &str) -> Result<(), AppError> {
        if !(100..=200).contains(&percent) {
            return Err(AppError::Argument(say!("display-text", percent = percent)));
        }
        self.text_size = TextSize::nearest(percent);
        self.units = match units {
            "mm" => Units::Metric,
            "inch" => Units::Inch,
            _ => {
                return Err(AppError::Argument(say!("display-units", units = units)));
            }
        };
        Ok(())
    }

    /// An exercise, and a file with what is done to it first. A view of the gears becomes one of the bench.
    ///
    /// # Errors
    /// A file that cannot be read, and lines that are no operations.
    pub fn set_exercise(&mut self, scenario: &str, seed: u64, operations: Option<&Path>) -> Result<(), AppError> {
        let lines = operations
            .map(job::text_file::read_lines)
            .transpose()?
            .unwrap_or_default();
        let mut read = Vec::new();
        for (index, line) in lines.iter().map(|line| line.trim()).enumerate() {
            if line.is_empty() || line.starts_with('#') {
                continue;
            }
            read.push(Operation::from_json(line).map_err(|error| {
                AppError::Argument(say!(
                    "display-line",
                    line = index + 1,
                    error = crate::words::error::operation(&error).line()
                ))
            })?);
        }
        self.exercise = Some(ExerciseRequest {
            scenario: scenario.to_owned(),
            seed,
            operations: read,
            part: None,
        });
        if self.place == Place::Gears {
            self.place = Place::Bench;
        }
        Ok(())
    }
}

/// How a picture was made.
#[derive(Debug, Clone, PartialEq)]
pub struct PictureReport {
    /// The driver that drew it; pixels can differ from one to the next.
    pub adapter: Adapter,
    /// From the start until the picture was finished for the first time, with all that is prepared once.
    pub first_picture: Duration,
    /// What each further frame takes.
    pub frame: Duration,
    /// Frames with the gears turning, if any were asked for.
    pub turning: Option<TurningFrames>,
    /// How often another frame was asked for in the last two, although nothing changed. A window would never rest.
    pub redraws_asked: usize,
    /// Left, top, width and height of the stage in the picture, pixels.
    pub stage_px: [f32; 4],
    /// Where the stage was looked at from.
    pub orbit: Orbit,
    /// What was looked at.
    pub pair: Arc<StagePair>,
}

/// How long frames take while the gears turn.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TurningFrames {
    /// How many were drawn.
    pub count: usize,
    /// Half of them are faster.
    pub median: Duration,
    /// One in a hundred is slower.
    pub slow: Duration,
}

impl TurningFrames {
    fn of(mut took: Vec<Duration>) -> Option<Self> {
        took.sort_unstable();
        let rank = |percent: usize| {
            took.get((took.len().saturating_sub(1) * percent).div_ceil(100))
                .copied()
        };
        Some(Self {
            count: took.len(),
            median: rank(50)?,
            slow: rank(99)?,
        })
    }
}

impl core::fmt::Display for PictureReport {
    /// One line for people: who drew it, and how long it took.
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        let first = self.first_picture.as_millis().to_string();
        let next = self.frame.as_millis().to_string();
        let (card, driver) = (self.adapter.name.as_str(), self.adapter.driver.as_str());
        let milliseconds = |time: Duration| number(1.0e3 * time.as_secs_f64(), 2);
        f.write_str(&match self.turning {
            None => say!(
                "display-report",
                first = first,
                next = next,
                card = card,
                driver = driver,
            ),
            Some(turning) => say!(
                "display-report-turning",
                first = first,
                next = next,
                card = card,
                driver = driver,
                frames = turning.count,
                median = milliseconds(turning.median),
                slow = milliseconds(turning.slow),
            ),
        })
    }
}

impl PictureReport {
    /// Where a point of the axle lies in the picture: pixels from the left and from the top; `None` behind the eye.
    pub fn pixel_of(&self, point_mm: nalgebra::Vector3<f64>) -> Option<[f64; 2]> {
        let [left, top, width, height] = self.stage_px.map(f64::from);
        let [right, up] = self.orbit.project(point_mm)?;
        Some([left + width / 2.0 + right * height, top + height / 2.0 - up * height])
    }
}

/// A picture in memory.
#[derive(Debug, Clone, PartialEq)]
pub struct Picture {
    /// Width and height, pixels.
    pub size_px: [u32; 2],
    /// Red, green, blue and opacity of each pixel, row by row from the top.
    pub rgba: Vec<u8>,
    /// How it was made.
    pub report: PictureReport,
}

/// Draws a picture and writes it to a PNG file, whole or not at all.
///
/// # Errors
/// No graphics driver, a gear set that cannot be read or drawn, or a file that cannot be written.
pub fn picture(request: &PictureRequest, out: &Path) -> Result<PictureReport, AppError> {
    let picture = draw(request)?;
    let png = png_bytes(picture.size_px, &picture.rgba)?;
    job::picture_file::save(&PathBuf::from(out), &png)?;
    Ok(picture.report)
}

/// Draws a picture.
///
/// # Errors
/// As [`picture`], without the file.
#[expect(
    clippy::disallowed_methods,
    reason = "how long drawing takes is measured here; no result depends on it"
)]
pub fn draw(request: &PictureRequest) -> Result<Picture, AppError> {
    let start = Instant::now();
    let session = session_of(request)?;
    let pair = session.stage_pair().0.cloned().ok_or_else(|| AppError::NoGears {
        name: session
            .view()
            .chosen_gears()
            .map_or_else(String::new, |gears| gears.name.clone()),
        why: session.missing().unwrap_or_default().trim_end_matches('.').to_owned(),
    })?;
    let orbit = *session.orbit();
    let adapter = preflight::adapter()?;
    let mut easel = OffScreen::open(request, session, adapter.software);
    // The panels learn the size of the picture in the second frame, the eye learns what they leave in the third, and
    // the list has scrolled to the chosen set in the one after.
    const FRAMES_TO_SETTLE: u32 = 5;
    for _ in 0..FRAMES_TO_SETTLE {
        easel.frame()?;
    }
    // Pictures of the tooth room come from another thread, and are drawn in the frame after.
    while easel.waiting() {
        easel.frame()?;
    }
    easel.frame()?;
    let first_picture = start.elapsed();
    const FRAMES: u32 = 4;
    let start = Instant::now();
    for _ in 0..FRAMES {
        easel.frame()?;
    }
    let frame = start.elapsed() / FRAMES;
    let redraws_asked = easel.redraws_asked();
    let rgba = easel.capture()?;
    let [width, height] = request.size_px;
    let stage_px = easel.stage_px().unwrap_or([0.0, 0.0, width as f32, height as f32]);
    if request.turning_frames > 0 {
        easel.turn()?;
    }
    let mut took = Vec::new();
    for _ in 0..request.turning_frames {
        let start = Instant::now();
        easel.frame()?;
        took.push(start.elapsed());
    }
    let report = PictureReport {
        turning: TurningFrames::of(took),
        adapter,
        first_picture,
        frame,
        redraws_asked,
        stage_px,
        orbit,
        pair,
    };
    Ok(Picture {
        size_px: request.size_px,
        rgba,
        report,
    })
}

fn session_of(request: &PictureRequest) -> Result<Session, AppError> {
    let mut session = load(request.gears.as_deref())?;
    prepare(&mut session, request.theme, request.text_size);
    if let Some(exercise) = &request.exercise {
        begin(&mut session, exercise)?;
    }
    let asked = [
        Command::SetUnits(request.units),
        Command::GoTo(request.place),
        Command::LookFrom(request.viewpoint),
        Command::SetProjection(request.projection),
        Command::TurnTeeth(request.turned_teeth),
        Command::Set(request.other.unwrap_or_default()),
        Command::KeepAsOther,
        Command::Set(request.setting),
    ];
    for command in asked {
        // What is not there cannot be turned; that is told where the gears are asked for.
        session.apply(command).unwrap_or_default();
    }
    if request.other.is_none() {
        // Nothing was asked to be compared with.
        session.apply(Command::DropOther).unwrap_or_default();
    }
    session.finish();
    Ok(session)
}

/// Puts an exercise on the bench and does what is to be done to it; nothing is kept.
fn begin(session: &mut Session, exercise: &ExerciseRequest) -> Result<(), AppError> {
    if !session.choose_exercise(&exercise.scenario) {
        return Err(AppError::Argument(say!(
            "display-exercise",
            name = exercise.scenario.as_str(),
        )));
    }
    let mut carry_out = |command: Command| {
        session
            .apply(command)
            .map_err(|refusal| AppError::Argument(refusal.to_string()))?;
        session.finish();
        let view = session.view();
        match (view.desk.problem, view.bench) {
            (Some(problem), None) => Err(AppError::Argument(problem.trim_end_matches('.').to_owned())),
            _ => Ok(()),
        }
    };
    carry_out(Command::ChooseSeed(exercise.seed))?;
    carry_out(Command::Begin)?;
    for operation in &exercise.operations {
        carry_out(Command::Do(Box::new(operation.clone())))?;
    }
    carry_out(Command::ChoosePart(exercise.part))
}

/// What the driver delivered.
#[derive(Debug, Default, Resource)]
struct Delivered(Option<Image>);

/// The program with an image in place of a window.
struct OffScreen {
    app: App,
    target: Handle<Image>,
}

impl OffScreen {
    fn open(request: &PictureRequest, session: Session, software: bool) -> Self {
        let plugins = DefaultPlugins
            .build()
            .set(WindowPlugin {
                primary_window: None,
                exit_condition: ExitCondition::DontExit,
                ..default()
            })
            // Everything is ready in the first frame that needs it.
            .set(RenderPlugin {
                synchronous_pipeline_compilation: true,
                ..default()
            })
            .disable::<WinitPlugin>()
            .disable::<PipelinedRenderingPlugin>()
            .disable::<bevy::app::TerminalCtrlCHandlerPlugin>()
            // One log a process; a picture has nothing to say that is not in its report.
            .disable::<LogPlugin>();
        let mut app = App::new();
        app.add_plugins(plugins).init_resource::<Delivered>();
        let [width, height] = request.size_px;
        let image = Image::new_target_texture(width, height, TextureFormat::Rgba8UnormSrgb, None);
        let target = app.world_mut().resource_mut::<Assets<Image>>().add(image);
        let easel = Easel {
            target: Some(target.clone().into()),
            // Frames are timed as the window draws them; a picture alone is always smoothed.
            smoothing: if request.drawing == Drawing::Parts || (request.turning_frames > 0 && software) {
                Msaa::Off
            } else {
                Msaa::Sample4
            },
            drawing: request.drawing,
            panels: request.panels,
        };
        program(&mut app, session, easel);
        // Two systems of which nobody says which comes first are a mistake of the program; every picture looks for it.
        app.edit_schedule(Update, |schedule| {
            schedule.set_build_settings(ScheduleBuildSettings {
                ambiguity_detection: LogLevel::Error,
                ..default()
            });
        });
        while app.plugins_state() == PluginsState::Adding {
            bevy::tasks::tick_global_task_pools_on_main_thread();
        }
        app.finish();
        app.cleanup();
        Self { app, target }
    }

    /// Turns the gears from here on, as the key Space does.
    fn turn(&mut self) -> Result<(), AppError> {
        let mut session = self.app.world_mut().resource_mut::<Session>();
        session
            .apply(Command::SetTurning(true))
            .map_err(|error| AppError::NoPicture {
                reason: error.to_string(),
            })
    }

    /// One frame, drawn to its end.
    fn frame(&mut self) -> Result<(), AppError> {
        self.app.update();
        let device = self.app.world().resource::<RenderDevice>();
        device
            .poll(PollType::Wait {
                submission_index: None,
                timeout: Some(Duration::from_mins(1)),
            })
            .map(drop)
            .map_err(|error| AppError::NoPicture {
                reason: say!("display-driver-silent", error = error.to_string()),
            })
    }

    /// The pixels, red, green, blue and opacity each.
    fn capture(&mut self) -> Result<Vec<u8>, AppError> {
        self.app
            .world_mut()
            .spawn(Screenshot::image(self.target.clone()))
            .observe(|captured: On<ScreenshotCaptured>, mut delivered: ResMut<Delivered>| {
                delivered.0 = Some(captured.image.clone());
            });
        // It arrives one or two frames later.
        const PATIENCE: u32 = 60;
        for _ in 0..PATIENCE {
            self.frame()?;
            if let Some(image) = self.app.world_mut().resource_mut::<Delivered>().0.take() {
                return image.data.ok_or_else(|| AppError::NoPicture {
                    reason: say!("display-empty"),
                });
            }
        }
        Err(AppError::NoPicture {
            reason: say!("display-no-delivery"),
        })
    }

    fn waiting(&self) -> bool {
        self.app.world().resource::<Room>().busy()
    }

    fn redraws_asked(&self) -> usize {
        self.app.world().resource::<Messages<RequestRedraw>>().len()
    }

    fn stage_px(&self) -> Option<[f32; 4]> {
        self.app.world().resource::<StageArea>().stage_px
    }
}
