//! Independent routes to the numbers of the core, sharing no code with it: plain vectors, the standard library's own
//! sine and cosine, finite differences instead of derivatives.
#![expect(
    clippy::disallowed_methods,
    reason = "an oracle must not go through the core's door to sine and cosine"
)]

pub(crate) mod blank;
pub(crate) mod contact;
pub(crate) mod flank;
pub(crate) mod numbers;
pub(crate) mod pitch_iteration;
pub(crate) mod pitch_vectors;
pub(crate) mod vector;
