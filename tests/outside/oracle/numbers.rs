//! The numbers of a gear set file, as the oracles want them.

/// Lengths in mm, angles in degrees, ease-off in µm. Names as in the files of `assets/gears`, in short.
#[derive(Debug, Clone)]
pub(crate) struct Numbers {
    pub(crate) z1: f64,
    pub(crate) z2: f64,
    pub(crate) offset: f64,
    pub(crate) d_e2: f64,
    pub(crate) b2: f64,
    pub(crate) beta_m1_deg: f64,
    pub(crate) limit_radius: f64,
    pub(crate) cutter_radius: f64,
    pub(crate) alpha_drive_deg: f64,
    pub(crate) alpha_coast_deg: f64,
    pub(crate) tapered: bool,
    pub(crate) k_d: f64,
    pub(crate) k_c: f64,
    pub(crate) c_ham: f64,
    pub(crate) k_t: f64,
    pub(crate) lash: f64,
    /// CL, CP, CB, SL, SP of drive and coast.
    pub(crate) ease_um: [[f64; 5]; 2],
}
