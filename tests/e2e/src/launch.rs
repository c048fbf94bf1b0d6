//! How the browser is asked to start.

use std::env;

use anyhow::{Context as _, Result};
use serde_json::{Map, json};
use thirtyfour::Capabilities;

use crate::storage::Storage;

/// Quiet, without a window, and allowed to run as administrator, as it does in CI.
const ARGUMENTS: [&str; 9] = [
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--window-size=500,1000",
];

/// A phone-sized screen, with the storage of this phone.
pub fn capabilities(storage: &Storage) -> Result<Capabilities> {
    let program = env::var_os("PLUGWARY_CHROMIUM").context("PLUGWARY_CHROMIUM is not set; run `cargo verify e2e`")?;
    let profile = format!("--user-data-dir={}", storage.profile().display());
    let arguments: Vec<&str> = ARGUMENTS.into_iter().chain([profile.as_str()]).collect();
    let options = json!({
        "binary": program.to_string_lossy(),
        "args": arguments,
        "mobileEmulation": {
            "deviceMetrics": { "width": 390, "height": 844, "pixelRatio": 3.0, "touch": true, "mobile": true },
        },
        "prefs": {
            "download.default_directory": storage.downloads().to_string_lossy(),
            "download.prompt_for_download": false,
        },
    });
    Ok(Capabilities::from(Map::from_iter([
        ("browserName".to_owned(), json!("chrome")),
        ("goog:loggingPrefs".to_owned(), json!({ "browser": "ALL" })),
        ("goog:chromeOptions".to_owned(), options),
    ])))
}
