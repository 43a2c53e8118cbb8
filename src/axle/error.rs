//! Why an axle cannot be computed.

use super::layout::{DepthShim, Layout};
use crate::bearing::Overload;
use crate::numerics::root::RootError;

/// What is wrong.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{self:?}")]
pub enum AxleError {
    /// The layout has no such shim.
    NoSuchShim {
        /// Layout.
        layout: Layout,
        /// Shim.
        depth_shim: DepthShim,
    },
    /// Sleeve and solid spacer confused.
    OtherSpacer {
        /// Layout.
        layout: Layout,
    },
    /// A target outside what any axle has.
    Target,
    /// The nut cannot be turned: something is missing for it to press on.
    NothingToClamp,
    /// Something gives way.
    Overload(#[from] Overload),
    /// Values that are not numbers.
    Root(#[from] RootError),
}
