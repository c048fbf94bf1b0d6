//! What is to be seen on a phone, and waited for.

use std::{fs, path::PathBuf};

use anyhow::{Context as _, Result, bail, ensure};
use serde_json::{Value, json};

use crate::{phone::Phone, processes::largest_tab};

impl Phone {
    /// The value of an expression, or of the promise it gives, in the page.
    ///
    /// # Errors
    /// When the expression throws.
    pub async fn eval(&self, expression: &str) -> Result<Value> {
        let script = format!("return (async () => ({expression}))()");
        Ok(self.browser()?.execute(script, vec![]).await?.json().clone())
    }

    /// Waits until an expression, or the promise it gives, is true in the page.
    ///
    /// # Errors
    /// When it does not become true in time.
    pub async fn wait_until(&self, expression: &str) -> Result<()> {
        self.patiently(async || {
            let value = self.eval(expression).await?;
            ensure!(value == Value::Bool(true), "{expression} is {value}");
            Ok(())
        })
        .await
    }

    /// Waits until an element can be seen.
    ///
    /// # Errors
    /// When it does not come to be seen in time.
    pub async fn wait_for(&self, css: &str) -> Result<()> {
        self.patiently(async || self.place(css, None).await.map(drop)).await
    }

    /// The visible text of the first element, once there is one.
    ///
    /// # Errors
    /// When there is no such element in time.
    pub async fn text(&self, css: &str) -> Result<String> {
        self.wait_for_text(css, "").await
    }

    /// Waits until the visible text of one of the elements contains these words, and gives all of that text.
    ///
    /// # Errors
    /// When none of the elements says so in time; the text then says what they did say.
    pub async fn wait_for_text(&self, css: &str, words: &str) -> Result<String> {
        self.patiently(async || {
            let texts = self.texts(css).await?;
            match texts.iter().find(|text| text.contains(words)) {
                Some(text) => Ok(text.clone()),
                None => bail!("{css} does not say {words:?} but {texts:?}"),
            }
        })
        .await
    }

    /// The visible texts of all elements there are now, in their order in the page.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn texts(&self, css: &str) -> Result<Vec<String>> {
        let script = "return Array.from(document.querySelectorAll(arguments[0]), (element) => element.innerText)";
        Ok(self.browser()?.execute(script, vec![json!(css)]).await?.convert()?)
    }

    /// The first downloaded file whose name ends like this, once it is there as a whole.
    ///
    /// # Errors
    /// When no such file comes in time.
    pub async fn wait_for_download(&self, ending: &str) -> Result<PathBuf> {
        self.patiently(async || {
            let files: Vec<PathBuf> =
                fs::read_dir(self.storage().downloads())?.flatten().map(|file| file.path()).collect();
            let wanted = files.iter().find(|file| file.to_string_lossy().ends_with(ending));
            wanted.cloned().with_context(|| format!("no file that ends with {ending} among {files:?}"))
        })
        .await
    }

    /// The most memory, in bytes, that any one tab has taken so far.
    ///
    /// # Errors
    /// When the system does not tell.
    pub fn largest_tab(&self) -> Result<u64> {
        largest_tab(&self.storage().profile()).context("no tab is found among the processes")
    }

    /// Takes a picture of the screen, named without its `.png`.
    ///
    /// # Errors
    /// When it cannot be written.
    pub async fn screenshot(&self, name: &str) -> Result<()> {
        Ok(self.browser()?.screenshot(&self.storage().shots().join(name).with_extension("png")).await?)
    }

    /// The errors in the browser's console since the last time this was asked.
    ///
    /// # Errors
    /// When the browser does not answer.
    pub async fn console_errors(&self) -> Result<Vec<String>> {
        let entries = self.browser()?.browser_log().await?;
        Ok(entries.into_iter().filter(|entry| entry.level == "SEVERE").map(|entry| entry.message).collect())
    }
}
