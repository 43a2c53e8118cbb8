//! What a person can ask for at the window. Panels write these, one place carries them out.

use std::path::PathBuf;

use super::{Action, AxlePart, KeyName, Place, Projection, Setting, TextSize, Theme, Viewpoint};
use crate::bench::Operation;
use crate::quantity::Units;
use crate::words::Language;

/// One wish of the person at the window.
#[derive(Debug, Clone, PartialEq)]
pub enum Command {
    /// Show the gear set with this place in the list, counted from 0.
    ChooseGears(usize),
    /// Read a gear file and show its gears.
    OpenGears(PathBuf),
    /// Put away what was said about a file.
    PutNoticeAway,
    /// Turn the pinion by itself, or stop.
    SetTurning(bool),
    /// Turn by whole teeth; negative is backward.
    TurnTeeth(i32),
    /// Turn by so many teeth, as a hand does; negative is backward.
    TurnBy(f64),
    /// Hold the pinion and rock the ring gear between both sides of its teeth, or stop.
    SetRocking(bool),
    /// Stand the gears elsewhere.
    Set(Setting),
    /// Go to a place of the program.
    GoTo(Place),
    /// Use a paste of this thickness, µm.
    SetFilm(f64),
    /// Keep the present setting as the one to compare with.
    KeepAsOther,
    /// Exchange the present setting and the one to compare with.
    SwapWithOther,
    /// Stop comparing.
    DropOther,
    /// Put away what was said about a page or a picture that was saved.
    PutSavedAway,
    /// Save the picture of the present setting, to be scaled and as points.
    SavePicture,
    /// Save the debrief as a page of HTML.
    SaveDebrief,
    /// Draw on paper or on slate.
    SetTheme(Theme),
    /// Make all text larger or smaller.
    SetTextSize(TextSize),
    /// Millimetres or inches.
    SetUnits(Units),
    /// Look from a named place, the whole pair in view.
    LookFrom(Viewpoint),
    /// Perspective or flat.
    SetProjection(Projection),
    /// Go round the pair: to the right and upward, radians.
    Orbit {
        /// To the right.
        azimuth_rad: f64,
        /// Upward.
        elevation_rad: f64,
    },
    /// Make what is seen larger by so many notches of the wheel; negative is smaller.
    Zoom(f64),
    /// Shift what is seen, as fractions of the height in view.
    Pan {
        /// To the right.
        right: f64,
        /// Upward.
        up: f64,
    },
    /// Look at the exercise with this place in the list, counted from 0.
    ChooseExercise(usize),
    /// Take this axle of it.
    ChooseSeed(u64),
    /// Begin the chosen exercise.
    Begin,
    /// Go on with the unfinished attempt with this place in the list, counted from 0.
    GoOn(usize),
    /// Look at the debrief of the finished attempt with this place in the list, counted from 0.
    OpenFinished(usize),
    /// Do something at the bench.
    Do(Box<Operation>),
    /// Show the work of a part, or of none.
    ChoosePart(Option<AxlePart>),
    /// The pointer rests on this place of the stage: to the right and up from its middle, as fractions of its height.
    PointAt(Option<[f64; 2]>),
    /// Show the work of the part that appears at this place of the stage.
    PickAt([f64; 2]),
    /// Write what instruments show beside them, or leave reading to the trainee.
    SetReadOut(bool),
    /// Draw shims this many times thicker than they are.
    SetShimsTimes(u32),
    /// List the keys, or put the list away.
    ShowHelp(bool),
    /// Give an action this key, or turn its key off.
    SetKey(Action, Option<KeyName>),
    /// Give all actions their usual keys.
    UsualKeys,
    /// Say everything in this language.
    SetLanguage(Language),
    /// A panel of this name was dragged to this width or height, points.
    KeepPanel(String, f32),
}
