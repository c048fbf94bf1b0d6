//! The browser that tests run in, and the driver that steers it.

use std::{env, path::PathBuf};

use crate::{Trouble, debian::Debian, shell::Shell};

const BROWSERS: [&str; 4] = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

/// A browser and the driver of its version.
#[derive(Clone)]
pub struct Browser {
    /// The browser's program: `$PLUGWARY_CHROMIUM`, or what is found on the search path.
    pub program: PathBuf,
    /// Its driver: `$CHROMEDRIVER`, or what is found on the search path.
    pub driver: PathBuf,
}

/// Finds the browser and its driver, and installs Debian's where there are none.
///
/// # Errors
/// When they are neither there nor to be had.
pub fn prepare(shell: &Shell, debian: &Debian) -> Result<Browser, Trouble> {
    if let Some(browser) = find(shell) {
        return Ok(browser);
    }
    let missing = "no Chromium with its chromedriver on the search path or in PLUGWARY_CHROMIUM and CHROMEDRIVER";
    debian.install(shell, &["chromium", "chromium-driver"]).map_err(|trouble| format!("{missing} ({trouble})"))?;
    find(shell).ok_or_else(|| missing.to_owned())
}

fn find(shell: &Shell) -> Option<Browser> {
    let given = |variable: &str| env::var_os(variable).map(PathBuf::from);
    Some(Browser {
        program: given("PLUGWARY_CHROMIUM").or_else(|| BROWSERS.iter().find_map(|name| shell.find(name)))?,
        driver: given("CHROMEDRIVER").or_else(|| shell.find("chromedriver"))?,
    })
}
