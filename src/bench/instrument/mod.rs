//! Instruments: what they show of a true value.
//!
//! A reading is a pure function of the true value, the seed, the instrument's name and how often it was set up and used
//! ([`Use`]). Errors have three parts: one that belongs to the instrument and never changes, one of the set-up, one of the
//! single reading. Only the last averages away, so that reading the same thing ten times does not make a bad instrument
//! good.
//!
//! - [`Dial`]: dial indicator; [`Stem`]: what its direction does to a lash reading.
//! - [`TorqueWrench`]: reads rotating torque or tightens; only some kinds can do the first.
//! - [`Micrometer`], [`DepthGauge`], [`Feeler`]: lengths and gaps. [`Thermometer`], [`PressGauge`].
//! - [`Paste`]: from brushing and rolling to what can be seen of a print.

mod dial;
mod length;
mod paste;
mod shop;
mod torque;
mod using;

pub use dial::{Dial, Stem, flat_target_true_mm};
pub use length::{DepthGauge, Feeler, Micrometer};
pub use paste::{Coat, Paste, Roll, Rolled};
pub use shop::{PressGauge, Thermometer};
pub use torque::{CannotRead, RollingReading, TorqueWrench, WrenchKind};
pub use using::Use;
