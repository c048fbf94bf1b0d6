//! A phone with the browser on its screen: 390 by 844 points at three pixels each, touched by a finger.

use std::time::{Duration, Instant};

use anyhow::{Context as _, Result};
use serde_json::{Value, json};
use thirtyfour::WebDriver;

use crate::{driver::Driver, launch::capabilities, processes::kill_browser, storage::Storage};

/// How long a story waits for what it expects to see, unless it says otherwise: far longer than it takes, as machines are shared.
const PATIENCE: Duration = Duration::from_secs(45);
/// How long between two looks.
pub const BLINK: Duration = Duration::from_millis(50);

/// Which of the two looks the phone asks for.
#[derive(Clone, Copy, Debug, Eq, PartialEq)]
pub enum Scheme {
    /// Paper on ink.
    Dark,
    /// Ink on paper.
    Light,
}

/// A phone in somebody's hand. Dropping it kills its browser.
pub struct Phone {
    storage: Storage,
    patience: Duration,
    // The browser is steered through the driver, so that it has to go first.
    browser: Option<WebDriver>,
    _driver: Driver,
}

impl Phone {
    /// A new phone with nothing on it, for the story of this name.
    ///
    /// # Errors
    /// When the browser does not start.
    pub async fn fresh(story: &str) -> Result<Self> {
        Self::again(Storage::fresh(story)?).await
    }

    /// The same phone again, with all that its browser had kept.
    ///
    /// # Errors
    /// When the browser does not start.
    pub async fn again(storage: Storage) -> Result<Self> {
        let driver = Driver::start()?;
        let browser =
            WebDriver::new(driver.address(), capabilities(&storage)?).await.context("the browser does not start")?;
        Ok(Self { storage, patience: PATIENCE, browser: Some(browser), _driver: driver })
    }

    /// Kills the browser, which gets no chance to save or finish anything, and hands back what is left.
    ///
    /// # Errors
    /// When the browser cannot be killed.
    pub fn kill(mut self) -> Result<Storage> {
        self.end_browser()?;
        Ok(self.storage.clone())
    }

    fn end_browser(&mut self) -> Result<()> {
        if let Some(browser) = self.browser.take() {
            kill_browser(&self.storage.profile())?;
            // There is no session left to be closed.
            let _ = browser.leak();
        }
        Ok(())
    }

    pub(crate) fn browser(&self) -> Result<&WebDriver> {
        self.browser.as_ref().context("the browser was killed")
    }

    /// Waits this long from now on for what is expected, before it is told that it does not come.
    pub fn be_patient_for(&mut self, time: Duration) {
        self.patience = time;
    }

    /// Lets what is run in the page take this long from now on.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn allow_scripts(&self, time: Duration) -> Result<()> {
        Ok(self.browser()?.set_script_timeout(time).await?)
    }

    /// What stays when the browser is gone.
    pub fn storage(&self) -> &Storage {
        &self.storage
    }

    /// Goes to an address.
    ///
    /// # Errors
    /// When the page does not load.
    pub async fn goto(&self, address: &str) -> Result<()> {
        Ok(self.browser()?.goto(address).await?)
    }

    /// Loads the page anew.
    ///
    /// # Errors
    /// When the page does not load.
    pub async fn reload(&self) -> Result<()> {
        Ok(self.browser()?.refresh().await?)
    }

    /// Asks pages for one of the two looks.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn prefer(&self, scheme: Scheme) -> Result<()> {
        let value = match scheme {
            Scheme::Dark => "dark",
            Scheme::Light => "light",
        };
        let features = json!({ "features": [{ "name": "prefers-color-scheme", "value": value }] });
        self.develop("Emulation.setEmulatedMedia", features).await
    }

    /// Changes the size of the screen, in points.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn resize(&self, width: u32, height: u32) -> Result<()> {
        let size = json!({ "width": width, "height": height, "deviceScaleFactor": 3, "mobile": true });
        self.develop("Emulation.setDeviceMetricsOverride", size).await
    }

    /// Slows the processor of the page down so many times; once is as it is.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn slow_down(&self, times: u32) -> Result<()> {
        self.develop("Emulation.setCPUThrottlingRate", json!({ "rate": times })).await
    }

    /// Runs this script before anything else on every page from now on.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn run_first(&self, script: &str) -> Result<()> {
        self.develop("Page.addScriptToEvaluateOnNewDocument", json!({ "source": script })).await
    }

    async fn develop(&self, method: &str, parameters: Value) -> Result<()> {
        self.browser()?.cdp().send_raw(method, parameters).await?;
        Ok(())
    }

    /// Tries again until it works or patience is at an end; then the last trouble is told.
    pub(crate) async fn patiently<T>(&self, mut attempt: impl AsyncFnMut() -> Result<T>) -> Result<T> {
        let start = Instant::now();
        loop {
            match attempt().await {
                Err(_) if start.elapsed() < self.patience => tokio::time::sleep(BLINK).await,
                Err(trouble) => {
                    // The screen tells more than the sentence does, if it can still be had.
                    let _ = self.screenshot("trouble").await;
                    return Err(trouble);
                }
                Ok(value) => return Ok(value),
            }
        }
    }
}

impl Drop for Phone {
    fn drop(&mut self) {
        // Whoever drops a phone cannot be told; the next story with this profile would be.
        let _ = self.end_browser();
    }
}
