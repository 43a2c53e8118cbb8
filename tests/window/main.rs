//! The window's program without a window: the session, the order of its systems, pictures drawn off-screen.

mod bench;
mod by_hand;
mod folder;
mod keys;
mod picture;
mod screenless;
mod session;
mod smoke;
