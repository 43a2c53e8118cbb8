//! What must be there before Bevy is started: a display for a window, a driver for any drawing. Bevy itself ends with
//! a panic where one of them is missing.

use core::ops::Deref;

use bevy::render::renderer::RenderInstance;
use bevy::tasks::block_on;

use super::AppError;

/// wgpu's instance. Bevy hands it out inside of wrappers and does not export its name.
type Instance = <<<RenderInstance as Deref>::Target as Deref>::Target as Deref>::Target;

/// The driver that will draw.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Adapter {
    /// Name of the card, or of the software that stands in for one.
    pub name: String,
    /// Name and version of the driver.
    pub driver: String,
    /// Whether the processor does the drawing.
    pub software: bool,
}

/// Checks that there is an X display.
///
/// # Errors
/// [`AppError::NoDisplay`].
pub fn display() -> Result<(), AppError> {
    let name = std::env::var("DISPLAY").unwrap_or_default();
    if name.is_empty() {
        return Err(AppError::NoDisplay {
            reason: "there is no X display (DISPLAY is not set)".to_owned(),
        });
    }
    match x11rb::connect(None) {
        Ok(_) => Ok(()),
        Err(error) => Err(AppError::NoDisplay {
            reason: format!("the X display `{name}` cannot be reached ({error})"),
        }),
    }
}

/// Finds the driver that will draw.
///
/// # Errors
/// [`AppError::NoAdapter`].
pub fn adapter() -> Result<Adapter, AppError> {
    let instance = Instance::default();
    let adapter = block_on(instance.request_adapter(&Default::default())).map_err(|_no_adapter| AppError::NoAdapter)?;
    let info = adapter.get_info();
    Ok(Adapter {
        name: info.name,
        driver: format!("{} {}", info.driver, info.driver_info),
        // The type of the field has no name here; its word does.
        software: format!("{:?}", info.device_type) == "Cpu",
    })
}
