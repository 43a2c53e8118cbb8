//! Test target.
