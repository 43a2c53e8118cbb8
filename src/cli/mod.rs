//! The command line: arguments in, people's text or JSON out. One file a command.
//!
//! A command builds its whole answer before the first byte is printed, or checks its whole input before it prints row by
//! row, so that bad input prints nothing on standard output. Exit codes: 0 fine, 2 bad input, 1 anything else.

mod arguments;
mod attempt;
mod command;
mod frame;
mod help;
mod language;
mod mesh;
mod mistake;
mod page;
mod preload;
mod replay;
mod run;

pub use arguments::{PictureArguments, Request, parse};
pub use attempt::AttemptArguments;
pub use command::Command;
pub use language::speak_as_environment_says;
pub use mesh::{MeshArguments, RouteArgument};
pub use page::{fail, no_window, print};
pub use preload::PreloadArguments;
pub use run::run;
