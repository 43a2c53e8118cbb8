//! The bearing floor against published numbers, one module a source.
//!
//! Rows are named as in the list that they were collected in: T torque, S stiffness, P pairs, N nuts, H fits.

pub(crate) mod fit_tables;
pub(crate) mod friction_catalogue;
pub(crate) mod load_zone;
pub(crate) mod nut_handbooks;
pub(crate) mod oil_and_seal;
pub(crate) mod pair_solution;
mod parts;
pub(crate) mod rib_friction;
pub(crate) mod road_speed;
pub(crate) mod setting_manual;
pub(crate) mod stiffness_catalogue;
pub(crate) mod trade;
