//! What fits and heat do to the setting of a bearing pair: how much end play they take away.
//!
//! Lengths mm, temperature differences K. A loss of end play is preload gained. K is the bearing's ratio of radial to
//! thrust rating; K/0.39 is the cotangent of the contact angle in these sources.
//!
//! Source: Tapered Roller Bearing Catalog, p. 28–31, and the Engineering Manual that belongs to it, p. 121.

/// Expansion of steel in the setting formulas, 1/K (the manual).
pub const EXPANSION_STEEL_PER_K: f64 = 12.0e-6;

/// How the two bearings face each other.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mounting {
    /// Back to back (O): the pinion's; cups lie between the cones' backs, a longer shaft loosens.
    Indirect,
    /// Face to face (X): the usual carrier's; a longer shaft tightens.
    Direct,
}

/// One bearing of a pair as the setting formulas see it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Seat {
    /// K of the bearing.
    pub rating_ratio_k: f64,
    /// D_o, mean raceway diameter of the cup, mm.
    pub cup_raceway_diameter_mm: f64,
}

/// End play lost by pressing a cone on a solid steel shaft, mm: 0.5 (K/0.39)(d/d_o) δ (the catalog, p. 28–30).
/// `cone_raceway_diameter_mm` is d_o.
pub fn lost_by_cone_fit_mm(
    rating_ratio_k: f64,
    bore_mm: f64,
    cone_raceway_diameter_mm: f64,
    interference_mm: f64,
) -> f64 {
    0.5 * axial_per_radial(rating_ratio_k) * bore_mm / cone_raceway_diameter_mm * interference_mm
}

/// End play lost by pressing a cup into a heavy steel housing, mm: 0.5 (K/0.39)(D_o/D) δ (same source; a thin housing
/// takes less).
pub fn lost_by_cup_fit_mm(seat: Seat, outside_diameter_mm: f64, interference_mm: f64) -> f64 {
    0.5 * axial_per_radial(seat.rating_ratio_k) * seat.cup_raceway_diameter_mm / outside_diameter_mm * interference_mm
}

/// End play lost when the shaft is warmer than the housing, mm, steady state, both of steel: α ΔT [Σ (K/0.39)(D_o/2) ∓
/// L] (the catalog, p. 31). While warming up, take L = 0: the radial term comes first.
pub fn lost_by_warm_shaft_mm(seats: [Seat; 2], mounting: Mounting, spread_mm: f64, shaft_warmer_by_k: f64) -> f64 {
    let along = match mounting {
        Mounting::Indirect => -spread_mm,
        Mounting::Direct => spread_mm,
    };
    EXPANSION_STEEL_PER_K * shaft_warmer_by_k * (neutral_spread_mm(seats) + along)
}

/// Spread of an indirect mounting at which a warm shaft neither tightens nor loosens, mm: Σ (K/0.39)(D_o/2).
pub fn neutral_spread_mm(seats: [Seat; 2]) -> f64 {
    seats
        .iter()
        .map(|s| axial_per_radial(s.rating_ratio_k) * 0.5 * s.cup_raceway_diameter_mm)
        .sum()
}

/// How much more than steel a housing grows over the span of the bearings, mm, for a rise of `rise_k` everywhere.
pub fn housing_outgrows_mm(housing_expansion_per_k: f64, span_mm: f64, rise_k: f64) -> f64 {
    (housing_expansion_per_k - EXPANSION_STEEL_PER_K) * span_mm * rise_k
}

/// Axial shift of the setting for a change of radius: K/0.39 (these sources take cot α so).
pub fn axial_per_radial(rating_ratio_k: f64) -> f64 {
    rating_ratio_k / 0.39
}
