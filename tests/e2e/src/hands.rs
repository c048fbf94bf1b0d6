//! What a hand does to a phone.

use std::path::Path;

use anyhow::{Result, bail, ensure};
use serde_json::{Value, json};
use thirtyfour::{
    By,
    common::command::{Actions, Command},
};

use crate::phone::{BLINK, Phone};

impl Phone {
    /// Taps an element with a finger, once it can be seen and keeps still.
    ///
    /// # Errors
    /// When the element is not there in time, or something else lies over it.
    pub async fn tap(&self, css: &str) -> Result<()> {
        self.touch(css, None).await
    }

    /// Taps the button, link or label with exactly these words on it.
    ///
    /// # Errors
    /// As [`Phone::tap`].
    pub async fn tap_words(&self, words: &str) -> Result<()> {
        self.touch("a, button, label, summary, [role=button], [role=radio]", Some(words)).await
    }

    async fn touch(&self, css: &str, words: Option<&str>) -> Result<()> {
        let spot = self
            .patiently(async || {
                let before = self.place(css, words).await?;
                self.let_the_page_settle().await?;
                let now = self.place(css, words).await?;
                ensure!(before == now, "{css} moves");
                Ok(now)
            })
            .await?;
        let finger = json!([{
            "type": "pointer", "id": "finger", "parameters": { "pointerType": "touch" },
            "actions": [
                { "type": "pointerMove", "duration": 0, "x": spot.0, "y": spot.1 },
                { "type": "pointerDown", "button": 0 },
                { "type": "pause", "duration": 30 },
                { "type": "pointerUp", "button": 0 },
            ],
        }]);
        self.browser()?.cmd(Command::PerformActions(Actions::from(finger))).await?;
        Ok(())
    }

    /// Lets the page do what it had put off for a moment, however slow the machine: its timers run in their order.
    async fn let_the_page_settle(&self) -> Result<()> {
        let timer = format!("new Promise((done) => setTimeout(done, {}))", BLINK.as_millis());
        self.eval(&timer).await.map(drop)
    }

    /// Where a finger hits the element, with the page moved so that it can.
    pub(crate) async fn place(&self, css: &str, words: Option<&str>) -> Result<(i64, i64)> {
        let found = self.browser()?.execute(include_str!("place.js"), vec![json!(css), json!(words)]).await?;
        let found = found.json();
        let number = |name| found.get(name).and_then(Value::as_i64);
        match (number("x"), number("y")) {
            (Some(x), Some(y)) => Ok((x, y)),
            _ => bail!("{css} {}: {found}", words.unwrap_or_default()),
        }
    }

    /// Taps a field and types into it after what is there; `\n` is the Enter key.
    ///
    /// # Errors
    /// As [`Phone::tap`].
    pub async fn type_text(&self, css: &str, text: &str) -> Result<()> {
        self.tap(css).await?;
        let field = self.browser()?.find(By::Css(css)).await?;
        Ok(field.send_keys(text).await?)
    }

    /// Gives a file to a file field, as the phone's file picker or camera would.
    ///
    /// # Errors
    /// When there is no such field.
    pub async fn choose_file(&self, css: &str, file: &Path) -> Result<()> {
        let field = self.browser()?.find(By::Css(css)).await?;
        Ok(field.send_keys(file.to_string_lossy()).await?)
    }
}
