//! The one owner of what the window shows, and the one place where commands are carried out.

use bevy::prelude::*;
use thiserror::Error;

use super::AppSystems;
use crate::gear::Design;
use crate::quantity::Units;
use crate::view::{Blanks, Command, GearEntry, Orbit, Origin, StageView, TextSize, Theme, Turn, Viewpoint, WindowView};

/// A command on its way from a panel to the session.
#[derive(Debug, Clone, Copy, PartialEq, Message)]
pub struct Asked(pub Command);

/// Why a command was not carried out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Error)]
pub enum Refusal {
    /// There is no gear set at this place of the list.
    #[error("there is no gear set number {0}")]
    NoSuchGears(usize),
    /// There is nothing on the stage to turn.
    #[error("there is nothing to turn")]
    NothingToTurn,
}

/// Everything that the window shows.
#[derive(Debug, Clone, Resource)]
pub struct Session {
    designs: Vec<Design>,
    entries: Vec<GearEntry>,
    chosen: Option<usize>,
    blanks: Result<Blanks, String>,
    turn: Turn,
    turning: bool,
    orbit: Orbit,
    theme: Theme,
    text_size: TextSize,
    units: Units,
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
            blanks: Err("No gear set is chosen.".to_owned()),
            turn: Turn::new(1, 1),
            turning: false,
            orbit: Orbit::around(nalgebra::Vector3::zeros(), 100.0, Viewpoint::default()),
            theme: Theme::default(),
            text_size: TextSize::default(),
            units: Units::default(),
        };
        if !session.designs.is_empty() {
            session.choose(0);
        }
        session
    }

    /// Carries out a command.
    ///
    /// # Errors
    /// [`Refusal`]; nothing has changed then.
    pub fn apply(&mut self, command: Command) -> Result<(), Refusal> {
        match command {
            Command::ChooseGears(index) if index >= self.designs.len() => return Err(Refusal::NoSuchGears(index)),
            Command::SetTurning(true) | Command::TurnTeeth(_) if self.blanks.is_err() => {
                return Err(Refusal::NothingToTurn);
            }
            Command::ChooseGears(index) => {
                if self.chosen != Some(index) {
                    self.choose(index);
                }
            }
            Command::SetTurning(turning) => self.turning = turning,
            Command::TurnTeeth(teeth) => self.turn.teeth(teeth),
            Command::SetTheme(theme) => self.theme = theme,
            Command::SetTextSize(text_size) => self.text_size = text_size,
            Command::SetUnits(units) => self.units = units,
            Command::LookFrom(viewpoint) => self.orbit.look_from(viewpoint),
            Command::SetProjection(projection) => self.orbit.set_projection(projection),
            Command::Orbit {
                azimuth_rad,
                elevation_rad,
            } => self.orbit.turn(azimuth_rad, elevation_rad),
            Command::Zoom(notches) => self.orbit.zoom(notches),
            Command::Pan { right, up } => self.orbit.pan(right, up),
        }
        Ok(())
    }

    fn choose(&mut self, index: usize) {
        let Some(design) = self.designs.get(index) else { return };
        self.chosen = Some(index);
        self.turn = Turn::new(design.pinion_teeth, design.wheel_teeth);
        self.blanks = Blanks::new(design).map_err(|error| sentence(&error.to_string()));
        match &self.blanks {
            Ok(blanks) => {
                let (centre_mm, radius_mm) = blanks.middle_mm();
                self.orbit = self.orbit.moved_to(centre_mm, radius_mm);
            }
            Err(_) => self.turning = false,
        }
    }

    /// Lets the pinion turn by itself for a while.
    pub fn run(&mut self, elapsed: core::time::Duration) {
        if self.turning {
            self.turn.run(elapsed);
        }
    }

    /// Whether the pinion turns by itself.
    pub fn turning(&self) -> bool {
        self.turning
    }

    /// How far the pair has been turned.
    pub fn turn(&self) -> Turn {
        self.turn
    }

    /// The place of the set on the stage in the list.
    pub fn chosen(&self) -> Option<usize> {
        self.chosen
    }

    /// The blanks on the stage.
    ///
    /// # Errors
    /// Why there are none, in a sentence.
    pub fn blanks(&self) -> Result<&Blanks, &str> {
        self.blanks.as_ref().map_err(String::as_str)
    }

    /// Where the stage is looked at from.
    pub fn orbit(&self) -> &Orbit {
        &self.orbit
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
        WindowView {
            gears: &self.entries,
            chosen: self.chosen,
            theme: self.theme,
            text_size: self.text_size,
            units: self.units,
            stage: StageView {
                turning: self.turning,
                turn: self.turn,
                missing: self.blanks.as_ref().err().map(String::as_str),
                viewpoint: self.orbit.viewpoint(),
                projection: self.orbit.projection(),
            },
        }
    }
}

/// What an error says, as a sentence of its own.
fn sentence(error: &str) -> String {
    let mut letters = error.chars();
    let first = letters.next().map(char::to_uppercase);
    format!(
        "{}{}.",
        first.into_iter().flatten().collect::<String>(),
        letters.as_str()
    )
}

/// Commands and the turning pinion. Needs a [`Session`] and Bevy's time, no window and no drawing.
pub fn plugin(app: &mut App) {
    app.add_message::<Asked>()
        .add_systems(Update, carry_out.in_set(AppSystems::Commands))
        .add_systems(Update, turn_pinion.in_set(AppSystems::Simulate));
}

fn carry_out(mut asked: MessageReader<Asked>, mut session: ResMut<Session>) {
    for Asked(command) in asked.read() {
        if let Err(refusal) = session.apply(*command) {
            warn!("{command:?} was refused: {refusal}");
        }
    }
}

/// Turns by the time since the frame before, if the pinion turned by itself then too: the wait before it was started
/// is no time of turning.
fn turn_pinion(time: Res<Time>, mut session: ResMut<Session>, mut turned_before: Local<bool>) {
    if session.turning() {
        if *turned_before {
            session.run(time.delta());
        }
        *turned_before = true;
    } else {
        *turned_before = false;
    }
}
