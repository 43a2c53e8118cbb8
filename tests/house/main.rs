//! The house keeps its order: floors, dependencies, embedded files.

mod dependencies;
mod embedded;
mod floors;
