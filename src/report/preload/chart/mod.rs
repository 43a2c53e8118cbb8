//! The chart beside the bench: rotating torque over spacer length, or over nut torque for a sleeve, with the windows that
//! are aimed at and the present point.

mod base;
mod curves;
mod labels;
mod scales;
mod sheet;
mod solve;

pub(crate) use sheet::picture;
