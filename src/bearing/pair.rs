//! Two opposed tapered bearings and the structure between them: what preload does to a pair.
//!
//! Each bearing gives way by C F^0.9, and shaft, housing and seats by a spring in series. Half of that spring belongs
//! to either side: it is the stiffness of a bearing's whole position that counts, not that of the bearing alone.
//!
//! Source: two springs against each other, as in the General Catalogue of rolling bearings (2005/2008), p. 206–217; the
//! spring of a bearing is that of `stiffness`. Half of the structure's spring on either side is our own definition.

use super::stiffness::{APPROACH_EXPONENT, AxialApproach};
use crate::numerics::newton;
use crate::numerics::root::RootError;

/// Forces are found to this share of the largest force in play.
const ACCURACY: f64 = 1.0e-12;

/// Two opposed bearings with the structure that joins them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OpposedPair {
    /// The bearing that an outside force toward it loads further.
    pub near: AxialApproach,
    /// The bearing that it relieves.
    pub far: AxialApproach,
    /// Give of shaft, housing and seats, mm/N; 0 for rigid.
    pub structure_mm_per_n: f64,
}

/// The two axial forces of a preloaded pair under an outside force.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SharedLoad {
    /// On the bearing toward which the outside force points, N.
    pub near_n: f64,
    /// On the other, N; 0 when it is slack.
    pub far_n: f64,
}

impl OpposedPair {
    /// Both bearings' share of the closing per F^0.9.
    fn coefficient(&self) -> f64 {
        self.near.coefficient + self.far.coefficient
    }

    /// How far the pair must be closed beyond "neither play nor preload" to hold a preload, mm, and the slope
    /// d(closing)/d(preload), mm/N.
    pub(super) fn closing_and_slope(&self, preload_n: f64) -> (f64, f64) {
        if preload_n <= 0.0 {
            return (0.0, f64::INFINITY);
        }
        let bearings = self.near.approach_mm(preload_n) + self.far.approach_mm(preload_n);
        (
            bearings + preload_n * self.structure_mm_per_n,
            APPROACH_EXPONENT * bearings / preload_n + self.structure_mm_per_n,
        )
    }

    /// How far the pair must be closed to hold a preload, mm; 0 for none.
    pub fn closing_mm(&self, preload_n: f64) -> f64 {
        self.closing_and_slope(preload_n).0
    }

    /// Preload of a pair closed by `closing_mm`, N; 0 when it is not closed.
    ///
    /// # Errors
    /// [`RootError`] for a closing that is not a number.
    pub fn preload_n(&self, closing_mm: f64) -> Result<f64, RootError> {
        position_force_n(self.coefficient(), self.structure_mm_per_n, closing_mm)
    }

    /// dF/d(closing) under a preload above 0, N/mm: what the nut or a shim works against.
    pub fn stiffness_n_per_mm(&self, preload_n: f64) -> f64 {
        1.0 / self.closing_and_slope(preload_n).1
    }

    /// Work stored in both bearings and the structure, N mm.
    pub fn stored_energy_nmm(&self, preload_n: f64) -> f64 {
        self.near.stored_energy_nmm(preload_n)
            + self.far.stored_energy_nmm(preload_n)
            + 0.5 * preload_n * preload_n * self.structure_mm_per_n
    }

    /// How far one side of the pair gives, mm: the bearing and half the structure.
    fn side_mm(&self, bearing: AxialApproach, force_n: f64) -> f64 {
        bearing.approach_mm(force_n) + 0.5 * self.structure_mm_per_n * force_n
    }

    /// How an outside axial force of `outside_n` ≥ 0, toward the near bearing, is shared by a pair that is closed to
    /// `preload_n`.
    ///
    /// # Errors
    /// [`RootError`] for forces that are not numbers.
    pub fn share(&self, preload_n: f64, outside_n: f64) -> Result<SharedLoad, RootError> {
        let closing = self.closing_mm(preload_n);
        // Both sides together keep the closing. What the near side takes up is the far side's loss.
        let surplus = |far_n: f64| {
            let near_n = far_n + outside_n;
            self.side_mm(self.near, near_n) + self.side_mm(self.far, far_n) - closing
        };
        if surplus(0.0) >= 0.0 {
            return Ok(SharedLoad {
                near_n: outside_n,
                far_n: 0.0,
            });
        }
        let with_slope = |far_n: f64| {
            let near_n = far_n + outside_n;
            let slope = |b: AxialApproach, f: f64| {
                if f > 0.0 {
                    APPROACH_EXPONENT * b.approach_mm(f) / f
                } else {
                    f64::INFINITY
                }
            };
            (
                surplus(far_n),
                slope(self.near, near_n) + slope(self.far, far_n) + self.structure_mm_per_n,
            )
        };
        let start = if outside_n < preload_n {
            preload_n - 0.5 * outside_n
        } else {
            0.5 * preload_n
        };
        // For an outside force of next to nothing rounding may put the root a hair above the preload.
        let far_n = newton::in_bracket(with_slope, 0.0, 1.000_001 * preload_n, start, ACCURACY * preload_n)?;
        Ok(SharedLoad {
            near_n: far_n + outside_n,
            far_n,
        })
    }

    /// The outside force toward the near bearing at which the far bearing falls slack, N.
    ///
    /// # Errors
    /// [`RootError`] for a preload that is not a number.
    pub fn slackening_load_n(&self, preload_n: f64) -> Result<f64, RootError> {
        position_force_n(
            self.near.coefficient,
            0.5 * self.structure_mm_per_n,
            self.closing_mm(preload_n),
        )
    }

    /// How far an outside force moves the shaft toward the near bearing, mm.
    ///
    /// # Errors
    /// [`RootError`] for forces that are not numbers.
    pub fn yielding_mm(&self, preload_n: f64, outside_n: f64) -> Result<f64, RootError> {
        let shared = self.share(preload_n, outside_n)?;
        Ok(self.side_mm(self.near, shared.near_n) - self.side_mm(self.near, preload_n))
    }
}

/// F in C F^0.9 + F c = give, N; 0 for no give.
fn position_force_n(coefficient: f64, compliance_mm_per_n: f64, give_mm: f64) -> Result<f64, RootError> {
    if give_mm.is_nan() {
        return Err(RootError::NotANumber { at: give_mm });
    }
    if give_mm <= 0.0 {
        return Ok(0.0);
    }
    // Either spring alone would need at least the true force to give way that far.
    let bearings_only = AxialApproach { coefficient }.force_n(give_mm);
    let spring_only = give_mm / compliance_mm_per_n;
    let most = if bearings_only < spring_only {
        bearings_only
    } else {
        spring_only
    };
    let residual = |force_n: f64| {
        if force_n <= 0.0 {
            return (-give_mm, f64::INFINITY);
        }
        let bearings = AxialApproach { coefficient }.approach_mm(force_n);
        (
            bearings + force_n * compliance_mm_per_n - give_mm,
            APPROACH_EXPONENT * bearings / force_n + compliance_mm_per_n,
        )
    };
    // Rounding may leave the upper end a hair below the root where one spring does all the giving.
    newton::in_bracket(residual, 0.0, 1.000_001 * most, 0.5 * most, ACCURACY * most)
}
