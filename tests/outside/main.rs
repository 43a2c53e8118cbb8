//! Checks against the outside world: one module a source; the deviation from each number is printed
//! (`cargo test --test outside -- --nocapture`).

mod crown_gear;
mod hunting_tooth;
mod iso_23509;
mod lash_slopes;
mod marking_film;
mod oracle;
mod sets;
