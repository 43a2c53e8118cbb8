//! What must be there before Bevy is started: a display for a window, a driver for any drawing. Bevy itself ends with
//! a panic where one of them is missing.

use bevy::render::settings::{Backends, WgpuSettings};
use bevy::tasks::block_on;

use super::error::AppError;
use crate::words::say;

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
            reason: say!("display-no-x-display"),
        });
    }
    match x11rb::connect(None) {
        Ok(_) => Ok(()),
        Err(error) => Err(AppError::NoDisplay {
            reason: say!("display-x-display-unreachable", name = name, error = error.to_string(),),
        }),
    }
}

/// Finds the driver that will draw.
///
/// # Errors
/// [`AppError::NoAdapter`].
pub fn adapter() -> Result<Adapter, AppError> {
    // What Bevy will ask for, with what the environment says about it.
    let settings = WgpuSettings::default();
    let instance = wgpu::Instance::new(wgpu::InstanceDescriptor {
        backends: settings.backends.unwrap_or(Backends::all()),
        flags: settings.instance_flags,
        ..wgpu::InstanceDescriptor::new_without_display_handle()
    });
    let options = wgpu::RequestAdapterOptions {
        power_preference: settings.power_preference,
        ..wgpu::RequestAdapterOptions::default()
    };
    let adapter = block_on(instance.request_adapter(&options)).map_err(|_no_adapter| AppError::NoAdapter)?;
    let info = adapter.get_info();
    Ok(Adapter {
        name: info.name,
        driver: format!("{} {}", info.driver, info.driver_info),
        software: info.device_type == wgpu::DeviceType::Cpu,
    })
}
