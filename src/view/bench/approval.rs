//! The maker's approval prints as the card shows them.

use super::SeenFlank;
use crate::exercise::{ApprovalPrint, ApprovedFlank, Exercise};

/// The approval print of a set.
#[derive(Debug, Clone, PartialEq)]
pub struct Approval {
    /// Name of the set.
    pub gears: String,
    /// Painted plates of this set, by their numbers.
    pub plates: Vec<u32>,
    /// Drive, then coast; none where nothing is marked.
    pub flanks: [Option<Approved>; 2],
}

/// The approval print on one flank. It is drawn by the same rule as a print that was read, so that like stands beside like.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Approved {
    /// Where it lies.
    pub print: SeenFlank,
    /// As [`super::ToothShape::lean`].
    pub lean: f64,
}

impl Approved {
    fn new(flank: &ApprovedFlank) -> Self {
        let pattern = flank.pattern;
        Self {
            print: SeenFlank {
                centre: pattern.centroid,
                along: [pattern.toe, pattern.heel],
                up: [pattern.root, pattern.top],
                area: pattern.area_fraction,
            },
            lean: flank.lean,
        }
    }

    /// Middle and share in words, as those of a print that was read.
    pub fn text(&self) -> String {
        self.print.text()
    }
}

impl Approval {
    fn new(of: &ApprovalPrint, plates: &[String]) -> Self {
        Self {
            gears: of.gears.clone(),
            plates: (0..)
                .zip(plates)
                .filter(|(_, g)| **g == of.gears)
                .map(|(n, _)| n)
                .collect(),
            flanks: of.flanks.each_ref().map(|flank| flank.as_ref().map(Approved::new)),
        }
    }

    /// Those of an exercise; `plates` names the set of each painted plate.
    pub fn all(exercise: &Exercise, plates: &[String]) -> Vec<Self> {
        let prints = exercise.approval_prints().iter();
        prints.map(|print| Self::new(print, plates)).collect()
    }
}
