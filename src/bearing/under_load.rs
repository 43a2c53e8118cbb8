//! Springs of the whole axle: where its bearings stand, and how far each gives way when the teeth push.
//!
//! They are for the contact under load: the torque of the teeth moves the pinion and the ring gear on these springs, and
//! the print with them. Preload and friction of the [`Support`](super::Support) do not ask for them, and nothing else does
//! yet.
//!
//! Source: Hooke's law; that bearing, seat, housing and shaft are one spring a bearing is our own definition.

use super::support_problem::SupportProblem;
use crate::text::{NumberRange, Problems, Table};

/// A bearing as a spring at right angles to its shaft: bearing, seat, housing and shaft together.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RadialSpring {
    /// Pressure centre along the shaft's axis from the crossing point, mm.
    pub place_mm: f64,
    /// Rate, N/mm, the same in all directions.
    pub rate_n_per_mm: f64,
}

/// Springs of pinion and ring gear. Pinion places count along the pinion's axis toward the flange, those of the ring gear
/// along its own axis, positive behind it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UnderLoad {
    /// Head bearing.
    pub head: RadialSpring,
    /// Tail bearing, farther out than the head bearing.
    pub tail: RadialSpring,
    /// Third bearing of the pinion, at the thin end of its teeth, where there is one.
    pub pilot: Option<RadialSpring>,
    /// Rate of the pinion along its axis, N/mm.
    pub pinion_axial_n_per_mm: f64,
    /// Side bearing behind the ring gear.
    pub back: RadialSpring,
    /// Side bearing in front of it.
    pub front: RadialSpring,
    /// Rate of the ring gear along its axis, N/mm.
    pub wheel_axial_n_per_mm: f64,
}

/// Farthest that a bearing stands from the crossing point, mm.
const FARTHEST_MM: f64 = 2_000.0;
/// Rates that a file may give, N/µm.
const RATES_N_PER_UM: NumberRange = NumberRange::closed(1.0, 10_000.0);

/// Reads a table `[under_load]`.
pub(super) fn read(mut table: Table<'_>, p: &mut Problems<SupportProblem>) -> Option<UnderLoad> {
    let head = read_spring(&mut table, ["head_mm", "head_n_per_um"], 1.0, FARTHEST_MM, p);
    let tail = read_spring(&mut table, ["tail_mm", "tail_n_per_um"], 1.0, FARTHEST_MM, p);
    let pinion_axial_n_per_mm = read_rate(&mut table, "pinion_axial_n_per_um", p);
    let back = read_spring(&mut table, ["back_mm", "back_n_per_um"], 1.0, FARTHEST_MM, p);
    let front = read_spring(&mut table, ["front_mm", "front_n_per_um"], -FARTHEST_MM, -1.0, p);
    let wheel_axial_n_per_mm = read_rate(&mut table, "wheel_axial_n_per_um", p);
    let pilot = read_pilot(&mut table, p);
    if let (Some(head), Some(tail)) = (head, tail)
        && tail.place_mm <= head.place_mm
    {
        p.note_own(
            table.place_of("tail_mm"),
            SupportProblem::TailNotBeyondHead {
                tail_mm: tail.place_mm,
                head_mm: head.place_mm,
            },
        );
    }
    if let (Some(head), Ok(Some(pilot))) = (head, &pilot)
        && pilot.place_mm >= head.place_mm
    {
        p.note_own(
            table.place_of("pilot_mm"),
            SupportProblem::PilotNotBeforeHead {
                pilot_mm: pilot.place_mm,
                head_mm: head.place_mm,
            },
        );
    }
    table.finish(p);
    Some(UnderLoad {
        head: head?,
        tail: tail?,
        pilot: pilot.ok()?,
        pinion_axial_n_per_mm: pinion_axial_n_per_mm?,
        back: back?,
        front: front?,
        wheel_axial_n_per_mm: wheel_axial_n_per_mm?,
    })
}

fn read_spring(
    table: &mut Table<'_>,
    [place, rate]: [&'static str; 2],
    low_mm: f64,
    high_mm: f64,
    p: &mut Problems<SupportProblem>,
) -> Option<RadialSpring> {
    let place_mm = table.number(place, NumberRange::closed(low_mm, high_mm), p);
    let rate_n_per_mm = read_rate(table, rate, p);
    Some(RadialSpring {
        place_mm: place_mm?,
        rate_n_per_mm: rate_n_per_mm?,
    })
}

fn read_rate(table: &mut Table<'_>, key: &'static str, p: &mut Problems<SupportProblem>) -> Option<f64> {
    table.number(key, RATES_N_PER_UM, p).map(|rate| 1.0e3 * rate)
}

/// The pilot bearing: both keys or none. An error where they are wrong, which then stands among the problems.
fn read_pilot(table: &mut Table<'_>, p: &mut Problems<SupportProblem>) -> Result<Option<RadialSpring>, ()> {
    let keys = ["pilot_mm", "pilot_n_per_um"];
    if keys.iter().any(|key| table.has(key)) {
        return read_spring(table, keys, -FARTHEST_MM, FARTHEST_MM, p)
            .map(Some)
            .ok_or(());
    }
    // Known all the same, so that a slip of the pen finds its neighbour.
    for key in keys {
        table.optional_number(key, RATES_N_PER_UM, p);
    }
    Ok(None)
}
