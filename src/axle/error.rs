//! Why an axle cannot be computed.

use super::layout::{DepthShim, Layout};
use crate::bearing::Overload;
use crate::numerics::root::RootError;

/// What is wrong.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum AxleError {
    /// The layout has no such shim.
    #[error("layout {} has no {} shim", .layout.name(), .depth_shim.name())]
    NoSuchShim {
        /// Layout.
        layout: Layout,
        /// Shim.
        depth_shim: DepthShim,
    },
    /// Sleeve and solid spacer confused.
    #[error("layout {} takes a {} spacer", .layout.name(), if .layout.has_sleeve() { "collapsible" } else { "solid" })]
    OtherSpacer {
        /// Layout.
        layout: Layout,
    },
    /// A target outside what any axle has.
    #[error("the target preload must lie between 0 and 1 MN and the side squeeze within 5 mm")]
    Target,
    /// The nut cannot be turned: something is missing for it to press on.
    #[error("the nut has nothing to press on")]
    NothingToClamp,
    /// Something gives way.
    #[error("{0}")]
    Overload(#[from] Overload),
    /// Values that are not numbers.
    #[error("{0}")]
    Root(#[from] RootError),
}
