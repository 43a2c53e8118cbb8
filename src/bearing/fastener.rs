//! Nut and thread: torque to force and back.
//!
//! Forces N, torques N m, lengths mm. Only a tenth of the torque or less goes into stretch; the rest is friction, which
//! is why the same torque gives a clamp that scatters with every tightening.
//!
//! Source: VDI 2230 part 1 (torque, clamp, 90 % of the yield strength); ISO 724 (thread dimensions); Machinery's
//! Handbook, 31st ed., p. 1665 (short form); J. E. Shigley, Mechanical Engineering Design, chapter 8 (screw form, nut
//! factor).

use crate::numerics::math;

/// Cosine of half the flank angle of a 60° thread.
const COS_30: f64 = 0.866_025_403_784_438_6;

/// A 60° thread under a nut or head, with both frictions.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThreadJoint {
    /// p, mm.
    pub pitch_mm: f64,
    /// d2, mm.
    pub pitch_diameter_mm: f64,
    /// D_f, mean of outer and inner diameter of the turning face, mm.
    pub face_mean_diameter_mm: f64,
    /// µ_t, in the thread.
    pub friction_thread: f64,
    /// µ_f, under the face.
    pub friction_face: f64,
}

impl ThreadJoint {
    /// The same joint with both frictions `times` as high: dry, oiled, or another draw of the scatter that every
    /// tightening has.
    #[must_use]
    pub fn with_friction_times(self, times: f64) -> Self {
        Self {
            friction_thread: times * self.friction_thread,
            friction_face: times * self.friction_face,
            ..self
        }
    }

    /// Torque per clamp while tightening, N mm/N: p/2π + µ_t d2/(2 cos 30°) + µ_f D_f/2 (VDI 2230).
    pub fn tightening_arm_mm(&self) -> f64 {
        self.pitch_arm_mm() + self.friction_arm_mm()
    }

    /// Torque per clamp while backing off, N mm/N: friction still hinders, the pitch now helps. Negative would mean a
    /// nut that spins off by itself.
    pub fn loosening_arm_mm(&self) -> f64 {
        self.friction_arm_mm() - self.pitch_arm_mm()
    }

    /// Clamp that a tightening torque reaches, N.
    pub fn clamp_n(&self, tightening_nm: f64) -> f64 {
        1.0e3 * tightening_nm / self.tightening_arm_mm()
    }

    /// Torque that tightens to a clamp, N m.
    pub fn tightening_torque_nm(&self, clamp_n: f64) -> f64 {
        1.0e-3 * clamp_n * self.tightening_arm_mm()
    }

    /// Torque that starts the nut backwards under a clamp, N m, were friction the same both ways.
    pub fn loosening_torque_nm(&self, clamp_n: f64) -> f64 {
        1.0e-3 * clamp_n * self.loosening_arm_mm()
    }

    /// Tension in the thread under a clamp, N/mm²: over the circle of the mean of pitch and root diameter, d2 − 0.2887 p.
    pub fn thread_stress_n_per_mm2(&self, clamp_n: f64) -> f64 {
        let d = self.pitch_diameter_mm - 0.288_675 * self.pitch_mm;
        clamp_n / (0.25 * std::f64::consts::PI * d * d)
    }

    /// K in T = K F d for the nominal diameter d: usually 0.13 to 0.25.
    pub fn nut_factor(&self, nominal_diameter_mm: f64) -> f64 {
        self.tightening_arm_mm() / nominal_diameter_mm
    }

    /// Axial travel of the nut, mm, for a turn of `angle_deg`.
    pub fn travel_mm(&self, angle_deg: f64) -> f64 {
        self.pitch_mm * angle_deg / 360.0
    }

    fn pitch_arm_mm(&self) -> f64 {
        self.pitch_mm / (2.0 * std::f64::consts::PI)
    }

    fn friction_arm_mm(&self) -> f64 {
        self.friction_thread * self.pitch_diameter_mm / (2.0 * COS_30)
            + 0.5 * self.friction_face * self.face_mean_diameter_mm
    }
}

/// Torque per clamp with the rounded numbers of VDI 2230: 0.16 P + 0.58 d2 µ_G + D_Km µ_K/2, mm.
pub fn rounded_arm_mm(joint: &ThreadJoint) -> f64 {
    0.16 * joint.pitch_mm
        + 0.58 * joint.pitch_diameter_mm * joint.friction_thread
        + 0.5 * joint.face_mean_diameter_mm * joint.friction_face
}

/// Short form for a 60° thread with d2 = 0.92 d and a bearing face out to 1.5 d: 0.159 l + 1.156 µ d, for one friction
/// everywhere (Machinery's Handbook 31, p. 1665). Any one unit of length.
pub fn short_form_arm(lead: f64, friction: f64, nominal_diameter: f64) -> f64 {
    0.159 * lead + 1.156 * friction * nominal_diameter
}

/// Torque per clamp of a screw, exact in lead and friction: (`d_m`/2)(tan λ + f sec α)/(1 − f tan λ sec α) + `f_c` `r_c`
/// (Shigley, chapter 8). Any one unit of length; `flank_half_angle_rad` is α, `collar_radius` the mean radius of the
/// face.
pub fn screw_arm(
    mean_diameter: f64,
    lead_angle_rad: f64,
    flank_half_angle_rad: f64,
    friction_thread: f64,
    friction_collar: f64,
    collar_radius: f64,
) -> f64 {
    let wedge = friction_thread / math::cos(flank_half_angle_rad);
    let lead = math::tan(lead_angle_rad);
    0.5 * mean_diameter * (lead + wedge) / (1.0 - wedge * lead) + friction_collar * collar_radius
}

/// Basic dimensions of a metric thread (ISO 724).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MetricThread {
    /// d, mm.
    pub nominal_diameter_mm: f64,
    /// P, mm.
    pub pitch_mm: f64,
}

impl MetricThread {
    /// d2 = d − 0.64952 P, mm.
    pub fn pitch_diameter_mm(&self) -> f64 {
        self.nominal_diameter_mm - 0.649_519 * self.pitch_mm
    }

    /// d3 = d − 1.22687 P, mm.
    pub fn root_diameter_mm(&self) -> f64 {
        self.nominal_diameter_mm - 1.226_869 * self.pitch_mm
    }

    /// A_s, mm²: circle of the mean of d2 and d3.
    pub fn stress_area_mm2(&self) -> f64 {
        let d = self.stress_diameter_mm();
        0.25 * std::f64::consts::PI * d * d
    }

    /// Clamp at which tension and torsion together use 90 % of the yield strength, N: `F_M` = 0.9 Rp A_s/√(1 + 3 [(3/2)
    /// (d2/d_s)(P/(π d2) + 1.155 µ)]²) (VDI 2230).
    pub fn assembly_clamp_n(&self, yield_n_per_mm2: f64, friction_thread: f64) -> f64 {
        let d2 = self.pitch_diameter_mm();
        let twist = 1.5 * d2 / self.stress_diameter_mm()
            * (self.pitch_mm / (std::f64::consts::PI * d2) + 1.155 * friction_thread);
        0.9 * yield_n_per_mm2 * self.stress_area_mm2() / (1.0 + 3.0 * twist * twist).sqrt()
    }

    fn stress_diameter_mm(&self) -> f64 {
        0.5 * (self.pitch_diameter_mm() + self.root_diameter_mm())
    }
}
