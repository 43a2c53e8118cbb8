//! Drag of the shaft seal.
//!
//! Source: ISO 14179-2 (read second hand); the lip load form is mechanics, its values from memory.

/// Drag torque of a lip seal on a shaft, N m: 7.34e-5 d², d in mm, whatever the speed.
///
/// Source: ISO 14179-2 (read second hand), as loss P = 7.69e-6 d² n in W at n r/min. New and dry seals drag two to four
/// times as much in practice.
pub fn drag_nm(shaft_diameter_mm: f64) -> f64 {
    7.34e-5 * shaft_diameter_mm * shaft_diameter_mm
}

/// Drag torque from the lip's radial load, N m: π d w µ d/2, with w in newtons per millimetre of circumference (0.05 to
/// 0.15) and µ 0.2 to 0.5 (values from memory).
pub fn drag_from_lip_load_nm(shaft_diameter_mm: f64, lip_load_n_per_mm: f64, coefficient: f64) -> f64 {
    let lip_n = std::f64::consts::PI * shaft_diameter_mm * lip_load_n_per_mm;
    1.0e-3 * lip_n * coefficient * 0.5 * shaft_diameter_mm
}
