//! Lashwright: a teaching simulator for setting up a ring and pinion.
//!
//! Somebody who builds up final drives chooses a depth shim and a spacer, presses bearings, torques the nut, sets the
//! ring gear, reads lash, paints teeth and reads the print, and goes again, because no housing, bearing or gear is
//! exactly nominal. Here the same work is done on a computed axle whose errors are hidden. The physics is computed,
//! never scripted: the print comes from the contact of real tooth surfaces, the rotating torque from a friction model,
//! the preload from a stack of springs.
//!
//! # Words
//! *Wheel* and *pinion* are the ring gear and its mate. *Drive* is the wheel's convex flank, *coast* the concave one.
//! *Toe* and *heel* are the inner and outer end of a tooth, *top* and *root* its edge and bottom. *Depth* is the
//! pinion's axial place, *lash* the transverse play at the wheel's outer pitch radius, the *print* or *pattern* what
//! marking paste shows. *Truth* is the hidden number, a *reading* what an instrument showed, *belief* what the trainee
//! wrote down.
//!
//! # Frames, signs, units
//! Wheel axis: +z through the origin, its body at z > 0. Pinion axis: direction +x through (0, a, 0), shaft toward
//! +x. The common perpendicular is the y axis; a > 0 is below centre. The wheel turns φ2 about +z and the pinion φ1
//! about +x, φ2 = −(z1/z2) φ1. Lengths are millimetres, forces newtons, torques newton metres, angles radians; names
//! end in the unit.
//!
//! # What to read first
//! [`gear`] (what a gear set is), then [`text`] (how files are read), [`job`] (what the program does for people) and
//! [`cli`]. The core floors know no screen, no clock and no file: same inputs, same bits.

#[cfg(feature = "window")]
pub mod app;
pub mod axle;
pub mod bearing;
pub mod bench;
pub mod catalogue;
pub mod cli;
pub mod contact;
pub mod document;
pub mod drawing;
pub mod exercise;
pub mod gear;
pub mod job;
pub mod numerics;
#[cfg(feature = "panels")]
pub mod panels;
pub mod quantity;
pub mod report;
pub mod store;
pub mod text;
pub mod view;
pub mod words;
