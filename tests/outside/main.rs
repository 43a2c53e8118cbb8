//! Checks against the outside world: one module a source; the deviation from each number is printed
//! (`cargo test --test outside -- --nocapture`), the largest of each row is written into `tests/GUIDE.md` (see `guide`).

mod axle;
mod axles;
mod bearing;
mod bench;
mod core;
mod core_surfaces;
mod crown_gear;
mod crown_gear_core;
mod explicit_pinion;
mod fast_route;
mod gauge_study;
mod guide;
mod handbook_bevels;
mod hunting_tooth;
mod iso_23509;
mod lash_slopes;
mod marking_film;
mod oracle;
mod row;
mod sets;
mod worked_build;
