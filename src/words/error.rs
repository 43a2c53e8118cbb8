//! What can go wrong, in words: typed errors of the core, and doubtful gears.

use super::problem::gear_set::pressure_angle;
use super::problem::{Own as _, Told};
use super::say;
use crate::axle::AxleError;
use crate::bearing::Overload;
use crate::bench::instrument::CannotRead;
use crate::bench::{OperationError, PackFault, StartError, UnknownField, WrongFields};
use crate::exercise::journal::{Damage, FORMAT, JournalError};
use crate::exercise::{ExerciseError, Source, Unread};
use crate::gear::{Along, FlankPlace, GeometryError, Side, SolidError, ToothedPart, Up, Warning};
use crate::numerics::root::RootError;

/// Most fields that are told; a longer list helps nobody.
const MOST_TOLD: usize = 12;

/// The operation that ends an attempt, as it is written.
const FINISH: &str = r#"{"do":"finish"}"#;

/// Why a journal takes no more.
pub fn journal_full() -> String {
    say!("error-journal-full")
}

/// Why a journal cannot be read.
pub fn journal(of: &JournalError) -> Told {
    match of {
        JournalError::TooLarge { bytes, most } => Told::new(
            say!("error-journal-too-large", bytes = *bytes, most = *most),
            say!("error-journal-too-large-cure"),
        ),
        JournalError::NotAJournal => Told::new(
            say!("error-journal-none", format = FORMAT),
            say!("error-journal-none-cure"),
        ),
        JournalError::Newer { format } => Told::new(
            say!("error-journal-newer", format = format.as_str(), newest = FORMAT),
            say!("error-journal-newer-cure"),
        ),
        JournalError::NoSuchVersion { format } => Told::new(
            say!("error-journal-version", format = format.as_str()),
            say!("error-journal-version-cure", newest = FORMAT),
        ),
        JournalError::Damaged { line, what } => Told::new(damaged(*line, *what), say!("error-journal-damaged-cure")),
    }
}

fn damaged(line: usize, what: Damage) -> String {
    match what {
        Damage::AfterSeal => say!("error-journal-damaged-after-seal", line = line),
        Damage::TooLong => say!("error-journal-damaged-too-long", line = line),
        Damage::NoText => say!("error-journal-damaged-no-text", line = line),
        Damage::Seal => say!("error-journal-damaged-seal", line = line),
        Damage::Unreadable => say!("error-journal-damaged-unreadable", line = line),
        Damage::Chain => say!("error-journal-damaged-chain", line = line),
        Damage::Unfinished => say!("error-journal-damaged-unfinished", line = line),
        Damage::NoFormat => say!("error-journal-damaged-no-format", line = line),
        Damage::NoHash => say!("error-journal-damaged-no-hash", line = line),
        Damage::Hash => say!("error-journal-damaged-hash", line = line),
        Damage::Version => say!("error-journal-damaged-version", line = line),
    }
}

/// Why a scenario cannot be played, or not be told of yet. What to do in its file is said by
/// [`Own`](super::problem::Own), which it is as well.
pub fn exercise(of: &ExerciseError) -> Told {
    match of {
        ExerciseError::NotThere { what, name } => Told::bare(match what {
            Source::Gears => say!("error-exercise-no-gears", name = name.as_str()),
            Source::Support => say!("error-exercise-no-support", name = name.as_str()),
        }),
        ExerciseError::Unreadable { name, problems } => Told::bare(match problems {
            Unread::Gears(_) => say!("error-exercise-bad-gears", name = name.as_str()),
            Unread::Support(_) => say!("error-exercise-bad-support", name = name.as_str()),
        }),
        ExerciseError::Gears { name, error } => Told::bare(say!(
            "error-exercise-impossible-gears",
            name = name.as_str(),
            why = geometry(error).what
        )),
        ExerciseError::Axle(error) => axle(error),
        ExerciseError::Start(error) => start(error),
        ExerciseError::NotFinished => Told::new(
            say!("error-exercise-not-finished"),
            say!("error-exercise-not-finished-cure", command = FINISH),
        ),
    }
}

/// Why gears cannot exist.
pub fn geometry(of: &GeometryError) -> Told {
    of.told()
}

/// Why an axle cannot be computed.
pub fn axle(of: &AxleError) -> Told {
    match of {
        AxleError::NoSuchShim { layout, depth_shim } => Told::bare(say!(
            "error-axle-shim",
            layout = layout.name(),
            shim = depth_shim.name()
        )),
        AxleError::OtherSpacer { layout } => Told::bare(if layout.has_sleeve() {
            say!("error-axle-collapsible", layout = layout.name())
        } else {
            say!("error-axle-solid", layout = layout.name())
        }),
        AxleError::Target => Told::bare(say!("error-axle-target")),
        AxleError::NothingToClamp => Told::bare(say!("error-axle-nothing-to-clamp")),
        AxleError::Overload(of) => Told::bare(overload(*of)),
        AxleError::Root(of) => root(*of),
    }
}

/// Why an attempt cannot begin so.
pub fn start(of: &StartError) -> Told {
    match of {
        StartError::Pack(fault) => Told::bare(say!("error-start-pack", why = pack(*fault).what)),
        StartError::Axle(error) => axle(error),
    }
}

/// What would give way: a clause.
pub fn overload(of: Overload) -> String {
    match of {
        Overload::Thread {
            clamp_n,
            stress_n_per_mm2,
        } => say!(
            "error-overload-thread",
            force = format!("{clamp_n:.0}"),
            stress = format!("{stress_n_per_mm2:.0}")
        ),
        Overload::Spacer {
            spacer_n,
            stress_n_per_mm2,
        } => say!(
            "error-overload-spacer",
            force = format!("{spacer_n:.0}"),
            stress = format!("{stress_n_per_mm2:.0}")
        ),
        Overload::Folded { plastic_mm } => say!("error-overload-folded", plastic = format!("{plastic_mm:.1}")),
        Overload::Bearings { preload_n, closing_mm } => say!(
            "error-overload-bearings",
            force = format!("{preload_n:.0}"),
            closing = format!("{closing_mm:.2}")
        ),
    }
}

/// Why nothing can be computed for some numbers.
pub fn root(of: RootError) -> Told {
    match of {
        RootError::NoBracket {
            low,
            high,
            value_low,
            value_high,
        } => Told::new(
            say!(
                "error-root-bracket",
                low = low.to_string(),
                high = high.to_string(),
                valuelow = value_low.to_string(),
                valuehigh = value_high.to_string()
            ),
            say!("error-root-bracket-cure"),
        ),
        RootError::NotANumber { at } => Told::new(
            say!("error-root-number", at = at.to_string()),
            say!("error-root-number-cure"),
        ),
        RootError::BadAccuracy { accuracy } => Told::new(
            say!("error-root-accuracy", accuracy = accuracy.to_string()),
            say!("error-root-accuracy-cure"),
        ),
    }
}

/// Why a pack of shims cannot be made up.
pub fn pack(of: PackFault) -> Told {
    match of {
        PackFault::NoSuchPiece { piece } => Told::new(
            say!("error-pack-no-piece", piece = piece),
            say!("error-pack-no-piece-cure"),
        ),
        PackFault::OtherShape { piece } => {
            Told::new(say!("error-pack-shape", piece = piece), say!("error-pack-shape-cure"))
        }
        PackFault::Fitted { piece } => {
            Told::new(say!("error-pack-fitted", piece = piece), say!("error-pack-fitted-cure"))
        }
    }
}

/// Why a wrench shows nothing of use.
pub fn wrench(of: CannotRead) -> Told {
    match of {
        CannotRead::Clicks => Told::new(say!("error-wrench-clicks"), say!("error-wrench-clicks-cure")),
        CannotRead::TooLarge { least_nm } => Told::new(
            say!("error-wrench-too-large", torque = format!("{least_nm:.1}")),
            say!("error-wrench-too-large-cure"),
        ),
        CannotRead::TooSmall { most_nm } => Told::new(
            say!("error-wrench-too-small", torque = format!("{most_nm:.1}")),
            say!("error-wrench-too-small-cure"),
        ),
    }
}

/// Why something is no operation.
pub fn operation(of: &OperationError) -> Told {
    match of {
        OperationError::Unreadable { reason } => Told::new(
            say!("error-operation-unreadable", reason = reason.as_str()),
            say!("error-operation-list-cure"),
        ),
        OperationError::WrongFields { places } => {
            let clauses: Vec<String> = places.iter().map(wrong_fields).collect();
            Told::new(clauses.join("; "), say!("error-operation-list-cure"))
        }
        OperationError::NotANumber { field } => Told::new(
            say!("error-operation-no-number", field = field.as_str()),
            say!("error-operation-no-number-cure"),
        ),
        OperationError::OutOfRange {
            field,
            value,
            least,
            greatest,
        } => Told::new(
            say!(
                "error-operation-range",
                field = field.as_str(),
                value = value.to_string(),
                least = least.to_string(),
                greatest = greatest.to_string()
            ),
            say!("error-operation-range-cure"),
        ),
        OperationError::TooLong { field, most } => Told::new(
            say!("error-operation-too-long", field = field.as_str(), most = *most),
            say!("error-operation-too-long-cure"),
        ),
        OperationError::Chances { sum } => Told::new(
            say!("error-operation-chances", sum = sum.to_string()),
            say!("error-operation-chances-cure"),
        ),
    }
}

fn wrong_fields(of: &WrongFields) -> String {
    let operation = of.operation.as_str();
    let unknown = (!of.unknown.is_empty()).then(|| fields(of.unknown.iter().map(unknown_field)));
    let missing = (!of.missing.is_empty()).then(|| fields(of.missing.iter().map(|name| format!("`{name}`"))));
    match (of.within.as_deref(), unknown, missing) {
        (None, Some(unknown), Some(missing)) => say!(
            "error-operation-unknown-and-missing",
            operation = operation,
            unknown = unknown,
            missing = missing
        ),
        (None, Some(unknown), None) => say!("error-operation-unknown", operation = operation, fields = unknown),
        (None, None, missing) => say!(
            "error-operation-missing",
            operation = operation,
            fields = missing.unwrap_or_default()
        ),
        (Some(within), Some(unknown), Some(missing)) => say!(
            "error-operation-unknown-and-missing-within",
            operation = operation,
            within = within,
            unknown = unknown,
            missing = missing
        ),
        (Some(within), Some(unknown), None) => say!(
            "error-operation-unknown-within",
            operation = operation,
            within = within,
            fields = unknown
        ),
        (Some(within), None, missing) => say!(
            "error-operation-missing-within",
            operation = operation,
            within = within,
            fields = missing.unwrap_or_default()
        ),
    }
}

fn unknown_field(of: &UnknownField) -> String {
    of.near.as_deref().map_or_else(
        || format!("`{}`", of.name),
        |near| say!("error-operation-meant", name = of.name.as_str(), near = near),
    )
}

fn fields(all: impl Iterator<Item = String>) -> String {
    let mut all: Vec<String> = all.collect();
    let more = all.len().saturating_sub(MOST_TOLD);
    all.truncate(MOST_TOLD);
    let shown = all.join(", ");
    if more == 0 {
        shown
    } else {
        say!("error-operation-more-fields", fields = shown, count = more)
    }
}

/// Why gears that exist cannot be drawn.
pub fn solid(of: SolidError) -> Told {
    match of {
        SolidError::WheelFlank { side, x } => {
            let x = format!("{x:.2}");
            Told::new(
                match side {
                    Side::Drive => say!("error-solid-wheel-drive", x = x),
                    Side::Coast => say!("error-solid-wheel-coast", x = x),
                },
                say!("error-solid-wheel-cure"),
            )
        }
        SolidError::PinionFlank { side, along } => {
            let along = format!("{along:.0}");
            Told::new(
                match side {
                    Side::Drive => say!("error-solid-pinion-drive", along = along),
                    Side::Coast => say!("error-solid-pinion-coast", along = along),
                },
                say!("error-solid-pinion-cure", key = pressure_angle(side)),
            )
        }
        SolidError::NoTooth { member } => Told::new(
            match member {
                ToothedPart::Wheel => say!("error-solid-no-wheel-tooth"),
                ToothedPart::Pinion => say!("error-solid-no-pinion-tooth"),
            },
            say!("error-solid-no-tooth-cure"),
        ),
    }
}

/// What is doubtful about gears, and what helps.
pub fn warning(of: &Warning) -> Told {
    match *of {
        Warning::Undercut {
            side,
            ref places,
            share,
        } => {
            let places: Vec<String> = places.iter().map(|place| flank_place(*place)).collect();
            let (share, places) = (format!("{:.0}", 100.0 * share), places.join(", "));
            Told::new(
                match side {
                    Side::Drive => say!("error-gears-undercut-drive", share = share, places = places),
                    Side::Coast => say!("error-gears-undercut-coast", share = share, places = places),
                },
                say!("error-gears-undercut-cure"),
            )
        }
        Warning::PinionTip {
            place,
            land_mm,
            narrow_mm,
        } => Told::new(
            if land_mm <= 0.0 {
                say!("error-gears-pointed-pinion", place = along(place))
            } else {
                say!(
                    "error-gears-narrow-pinion",
                    place = along(place),
                    land = format!("{land_mm:.2}"),
                    narrow = format!("{narrow_mm:.2}")
                )
            },
            say!("error-gears-land-pinion-cure"),
        ),
        Warning::WheelTip {
            place,
            land_mm,
            narrow_mm,
        } => Told::new(
            if land_mm <= 0.0 {
                say!("error-gears-pointed-wheel", place = along(place))
            } else {
                say!(
                    "error-gears-narrow-wheel",
                    place = along(place),
                    land = format!("{land_mm:.2}"),
                    narrow = format!("{narrow_mm:.2}")
                )
            },
            say!("error-gears-land-wheel-cure"),
        ),
        Warning::SecondCut { place, depth_mm } => Told::new(
            say!(
                "error-gears-second-cut",
                place = along(place),
                depth = format!("{depth_mm:.2}")
            ),
            say!("error-gears-second-cut-cure"),
        ),
    }
}

/// A third of the tooth's length.
fn along(of: Along) -> String {
    match of {
        Along::Toe => say!("error-gears-place-toe"),
        Along::Middle => say!("error-gears-place-middle"),
        Along::Heel => say!("error-gears-place-heel"),
    }
}

/// A ninth of a flank.
fn flank_place(of: FlankPlace) -> String {
    match (of.along, of.up) {
        (place, Up::Middle) => along(place),
        (Along::Toe, Up::Root) => say!("error-gears-place-toe-root"),
        (Along::Middle, Up::Root) => say!("error-gears-place-middle-root"),
        (Along::Heel, Up::Root) => say!("error-gears-place-heel-root"),
        (Along::Toe, Up::Top) => say!("error-gears-place-toe-top"),
        (Along::Middle, Up::Top) => say!("error-gears-place-middle-top"),
        (Along::Heel, Up::Top) => say!("error-gears-place-heel-top"),
    }
}
