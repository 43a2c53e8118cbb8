//! What instruments show, as values: which quantity, how much, in which unit.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use crate::gear::Side as Flank;

/// One value that an instrument showed.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
pub struct Reading {
    /// Number of the record, from 1; readings of one measurement share it.
    pub record: u32,
    /// Which of the values of that measurement.
    pub quantity: ReadingPart,
    /// The value; none where the instrument showed nothing.
    pub value: Option<f64>,
    /// Its unit.
    pub unit: Unit,
}

/// Unit of a reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub enum Unit {
    /// Millimetres.
    #[serde(rename = "mm")]
    Millimeter,
    /// Newton metres.
    #[serde(rename = "N·m")]
    NewtonMeter,
    /// Degrees Celsius.
    #[serde(rename = "°C")]
    Celsius,
    /// A number without a unit: shares, flank coordinates, numbers etched.
    #[serde(rename = "")]
    One,
}

impl Unit {
    /// As it is written behind a number; empty for a number without one.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Millimeter => "mm",
            Self::NewtonMeter => "N·m",
            Self::Celsius => "°C",
            Self::One => "",
        }
    }
}

/// One of the values that a measurement gives. In files a name such as `drive_centroid_along`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(try_from = "String", into = "String")]
#[schemars(with = "String")]
pub enum ReadingPart {
    /// Travel of a dial while the wheel rocks by its lash, mm.
    Lash,
    /// Swing of a needle over a whole turn, mm.
    TotalIndicatorReading,
    /// Travel of a dial, mm.
    Travel,
    /// Between the anvils of a micrometer, mm.
    Thickness,
    /// By arbor and gauge, mm.
    Distance,
    /// The thickest feeler leaf that goes in, mm.
    ThickestLeaf,
    /// Torque that starts something, N m.
    Breakaway,
    /// Torque that keeps it turning, N m.
    Rolling,
    /// Torque on a nut while it turns, N m.
    NutTorque,
    /// °C.
    Temperature,
    /// Number etched on the pinion.
    PinionNumber,
    /// Number etched on the ring gear.
    RingGearNumber,
    /// Mark etched on the pinion's head, mm.
    PinionMark,
    /// How clearly a print stands out, 0 to 1.
    Clearness,
    /// Where the print on a flank lies.
    Pattern(Flank, PatternPart),
}

/// A number of the print on one flank, in flank coordinates.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PatternPart {
    /// Middle along the tooth, from toe −1 to heel 1.
    CentroidAlong,
    /// Middle up the tooth, from root −1 to top 1.
    CentroidUp,
    /// End toward the toe.
    Toe,
    /// End toward the heel.
    Heel,
    /// End toward the root.
    Root,
    /// End toward the top.
    Top,
    /// Marked share of the flank.
    Area,
}

impl PatternPart {
    /// All of them, in the order in which an eye tells them.
    pub const ALL: [Self; 7] = [
        Self::CentroidAlong,
        Self::CentroidUp,
        Self::Toe,
        Self::Heel,
        Self::Root,
        Self::Top,
        Self::Area,
    ];
}

impl ReadingPart {
    /// All of them.
    pub fn all() -> impl Iterator<Item = Self> {
        let plain = [
            Self::Lash,
            Self::TotalIndicatorReading,
            Self::Travel,
            Self::Thickness,
            Self::Distance,
            Self::ThickestLeaf,
            Self::Breakaway,
            Self::Rolling,
            Self::NutTorque,
            Self::Temperature,
            Self::PinionNumber,
            Self::RingGearNumber,
            Self::PinionMark,
            Self::Clearness,
        ];
        let patterns = Flank::BOTH
            .into_iter()
            .flat_map(|flank| PatternPart::ALL.map(|part| Self::Pattern(flank, part)));
        plain.into_iter().chain(patterns)
    }

    /// Its name in files.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Lash => "lash",
            Self::TotalIndicatorReading => "total_indicator_reading",
            Self::Travel => "travel",
            Self::Thickness => "thickness",
            Self::Distance => "distance",
            Self::ThickestLeaf => "thickest_leaf",
            Self::Breakaway => "breakaway_torque",
            Self::Rolling => "rolling_torque",
            Self::NutTorque => "nut_torque",
            Self::Temperature => "temperature",
            Self::PinionNumber => "pinion_number",
            Self::RingGearNumber => "ring_gear_number",
            Self::PinionMark => "pinion_mark",
            Self::Clearness => "clearness",
            Self::Pattern(Flank::Drive, part) => match part {
                PatternPart::CentroidAlong => "drive_centroid_along",
                PatternPart::CentroidUp => "drive_centroid_up",
                PatternPart::Toe => "drive_toe",
                PatternPart::Heel => "drive_heel",
                PatternPart::Root => "drive_root",
                PatternPart::Top => "drive_top",
                PatternPart::Area => "drive_area",
            },
            Self::Pattern(Flank::Coast, part) => match part {
                PatternPart::CentroidAlong => "coast_centroid_along",
                PatternPart::CentroidUp => "coast_centroid_up",
                PatternPart::Toe => "coast_toe",
                PatternPart::Heel => "coast_heel",
                PatternPart::Root => "coast_root",
                PatternPart::Top => "coast_top",
                PatternPart::Area => "coast_area",
            },
        }
    }
}

impl From<ReadingPart> for String {
    fn from(part: ReadingPart) -> Self {
        part.key().to_owned()
    }
}

/// No reading has a value of that name.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{self:?}")]
pub struct NoSuchPart(pub String);

impl TryFrom<String> for ReadingPart {
    type Error = NoSuchPart;

    fn try_from(key: String) -> Result<Self, NoSuchPart> {
        Self::all().find(|part| part.key() == key).ok_or(NoSuchPart(key))
    }
}

/// The value of a part among readings.
pub(super) fn value_of(readings: &[Reading], part: ReadingPart) -> Option<f64> {
    readings.iter().find(|reading| reading.quantity == part)?.value
}

/// The middle of a print among readings.
pub(super) fn centroid_of(readings: &[Reading], flank: Flank) -> Option<[f64; 2]> {
    let of = |part| value_of(readings, ReadingPart::Pattern(flank, part));
    Some([of(PatternPart::CentroidAlong)?, of(PatternPart::CentroidUp)?])
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_of_reading_parts_go_both_ways() {
        let mut seen = Vec::new();
        for part in ReadingPart::all() {
            assert_eq!(
                ReadingPart::try_from(part.key().to_owned()),
                Ok(part),
                "{part:?} by name"
            );
            assert!(!seen.contains(&part.key()), "{part:?} has a name of its own");
            seen.push(part.key());
        }
        assert_eq!(seen.len(), 14 + 2 * PatternPart::ALL.len(), "all of them");
    }
}
