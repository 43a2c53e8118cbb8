//! Tooth depths and cones of `lashwright::gear::Blank`, our own definition, written down a second time.

use super::numbers::Numbers;
use super::pitch_vectors::Pitch;

/// Lengths in mm, angles in radians.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Blank {
    pub(crate) h_a2: f64,
    pub(crate) h_f2: f64,
    pub(crate) clearance: f64,
    pub(crate) theta_a2: f64,
    pub(crate) theta_f2: f64,
    pub(crate) face_angle2: f64,
    pub(crate) root_angle2: f64,
    /// Half face width along the generator.
    pub(crate) half: f64,
    pub(crate) r_m2: f64,
    pub(crate) z_p: f64,
    pub(crate) delta2: f64,
    /// Pinion's face cone: two points (x1, r1).
    pub(crate) face1: [[f64; 2]; 2],
}

impl Blank {
    /// The wheel's axial section (r, z) of a place along and square to the pitch generator.
    pub(crate) fn section(&self, s: f64, h: f64) -> [f64; 2] {
        [
            self.r_m2 + s * self.delta2.sin() + h * self.delta2.cos(),
            self.z_p + s * self.delta2.cos() - h * self.delta2.sin(),
        ]
    }

    fn height_limits(&self, s: f64) -> [f64; 2] {
        [
            -self.h_f2 - s * self.theta_f2.tan() + self.clearance,
            self.h_a2 + s * self.theta_a2.tan(),
        ]
    }

    /// (r, z) of the flank coordinates.
    pub(crate) fn section_of(&self, x: f64, y: f64) -> [f64; 2] {
        let s = x * self.half;
        let [low, high] = self.height_limits(s);
        self.section(s, low + 0.5 * (y + 1.0) * (high - low))
    }

    /// Flank coordinates (x, y) of (r, z).
    pub(crate) fn coordinates_of(&self, r: f64, z: f64) -> [f64; 2] {
        let (dr, dz) = (r - self.r_m2, z - self.z_p);
        let s = dr * self.delta2.sin() + dz * self.delta2.cos();
        let h = dr * self.delta2.cos() - dz * self.delta2.sin();
        let [low, high] = self.height_limits(s);
        [s / self.half, 2.0 * (h - low) / (high - low) - 1.0]
    }

    /// How far a pinion point at axial place x1 and radius r1 stands inside the pinion's face cone, mm (radially).
    pub(crate) fn inside_face1(&self, x1: f64, r1: f64) -> f64 {
        let [[xa, ra], [xb, rb]] = self.face1;
        ra + (rb - ra) * (x1 - xa) / (xb - xa) - r1
    }

    pub(crate) fn face_angle1(&self) -> f64 {
        let [[xa, ra], [xb, rb]] = self.face1;
        ((rb - ra) / (xb - xa)).atan()
    }
}

pub(crate) fn blank(n: &Numbers, pitch: &Pitch) -> Blank {
    let m_mn = pitch.m_mn[0];
    let h_w = n.k_d * m_mn;
    let clearance = n.k_c * h_w;
    let h_a2 = n.c_ham * h_w;
    let h_a1 = h_w - h_a2;
    let (h_f2, h_f1) = (h_a1 + clearance, h_a2 + clearance);
    let cone = pitch.r_m2 / pitch.delta2.sin();
    let outer_cone = cone + n.b2 / 2.0;
    let theta = if n.tapered {
        let standard = (h_f1 / cone).atan() + (h_f2 / cone).atan();
        let alpha_n = (0.5 * (n.alpha_drive_deg + n.alpha_coast_deg)).to_radians();
        let rho = pitch.rho_lim.unwrap_or(n.cutter_radius);
        let slot = (90.0 * (n.d_e2 / n.z2) / (outer_cone * alpha_n.tan() * pitch.beta2.cos())
            * (1.0 - cone * pitch.beta2.sin() / rho))
            .to_radians();
        slot.min(1.3 * standard).max(0.0)
    } else {
        0.0
    };
    let theta_a2 = theta * h_a2 / h_w;
    let theta_f2 = theta - theta_a2;
    let mut blank = Blank {
        h_a2,
        h_f2,
        clearance,
        theta_a2,
        theta_f2,
        face_angle2: pitch.delta2 + theta_a2,
        root_angle2: pitch.delta2 - theta_f2,
        half: n.b2 / 2.0,
        r_m2: pitch.r_m2,
        z_p: pitch.p.2,
        delta2: pitch.delta2,
        face1: [[0.0; 2]; 2],
    };
    let end = |x: f64| {
        let [r, z] = blank.section_of(x, -1.0);
        let (sf, cf) = blank.root_angle2.sin_cos();
        let tau = (n.offset * sf / (r * sf + z * cf)).asin();
        let across = r * tau.sin() - n.offset;
        [r * tau.cos(), (across * across + z * z).sqrt()]
    };
    blank.face1 = [end(-1.0), end(1.0)];
    blank
}
