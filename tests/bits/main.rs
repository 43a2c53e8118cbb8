//! The same bits on every machine, in every profile, with any number of threads.
//!
//! One committed hash a group. An intended change of results raises `contact::PHYSICS_VERSION`, kept beside the hashes,
//! in the same commit.

mod attempts;
mod contact;
mod preload;
#[path = "../shared/whole.rs"]
mod whole;
