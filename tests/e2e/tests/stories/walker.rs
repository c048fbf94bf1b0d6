//! Somebody who walks through an examination on a phone, and answers what is asked as the scripts say.

use std::collections::BTreeMap;

use anyhow::{Context as _, Result, bail};
use e2e::Phone;

use crate::answers::{Do, Script};

/// True once the program runs: it has taken away what stands in its place until then.
pub const RUNNING: &str = "window.plugwaryShell !== undefined && document.getElementById('first-paint') === null";
/// What is asked, in words that say of which socket, core or place; `null` while the screen changes.
const ASKED: &str = "(() => { const asked = document.querySelector('.asked');
    return asked && asked.dataset.question + ': ' + asked.querySelector('.asks').textContent; })()";
/// What the dock asks where nothing is left to be asked.
pub const ALL_LOOKED: &str = "all-looked";

/// Somebody with a phone, a sample and scripts. A later script goes before an earlier one.
pub struct Walker<'a> {
    phone: &'a Phone,
    scripts: Vec<Script>,
    used: BTreeMap<&'static str, usize>,
    /// How often the screen was tapped so far.
    pub taps: usize,
}

/// How far somebody came.
pub struct Progress {
    scripts: Vec<Script>,
    used: BTreeMap<&'static str, usize>,
}

impl<'a> Walker<'a> {
    /// Somebody who will answer as these scripts say.
    pub fn new(phone: &'a Phone, scripts: &[Script]) -> Self {
        Self { phone, scripts: scripts.to_vec(), used: BTreeMap::new(), taps: 0 }
    }

    /// How far this person came, whatever happens to the phone.
    pub fn progress(&self) -> Progress {
        Progress { scripts: self.scripts.clone(), used: self.used.clone() }
    }

    /// The same person with a phone that started again.
    pub fn resume(phone: &'a Phone, Progress { scripts, used }: Progress) -> Self {
        Self { phone, scripts, used, taps: 0 }
    }

    /// Opens the app and begins to look at a lead sold in Great Britain, with this at hand.
    pub async fn begin(&mut self, origin: &str, equipment: &str) -> Result<()> {
        self.begin_with(origin, equipment, "").await
    }

    /// The same, and the lead gets a name.
    pub async fn begin_with(&mut self, origin: &str, equipment: &str, name: &str) -> Result<()> {
        self.phone.goto(origin).await?;
        self.phone.wait_until(RUNNING).await?;
        self.tap("#start").await?;
        self.phone.wait_for("#begin").await?;
        let chosen = format!("[data-choice='{equipment}']");
        let pressed = format!("document.querySelector(\"{chosen}\").getAttribute('aria-pressed')");
        if self.phone.eval(&pressed).await? != "true" {
            self.tap(&chosen).await?;
        }
        if !name.is_empty() {
            self.taps += 1;
            self.phone.type_text(".line input", name).await?;
        }
        self.tap("#begin").await?;
        self.phone.wait_for(".asked").await
    }

    /// Answers question after question, until the scripts have no answer or all was looked at; says which question is left.
    pub async fn walk(&mut self) -> Result<String> {
        self.walk_to(ALL_LOOKED).await
    }

    /// As [`Walker::walk`], but stops before this question.
    pub async fn walk_to(&mut self, stop: &str) -> Result<String> {
        loop {
            let question = self.question().await?;
            if question == stop || question == ALL_LOOKED {
                return Ok(question);
            }
            let Some(what) = self.next_line(&question) else { return Ok(question) };
            self.answer(what).await.with_context(|| format!("{question}: {what:?}"))?;
        }
    }

    /// Does this about the question that is asked now, and waits for the next one.
    pub async fn answer(&mut self, what: Do) -> Result<()> {
        let before = self.phone.eval(ASKED).await?;
        match what {
            Do::One(code) => self.tap_answer(code).await?,
            Do::Any(codes) => {
                for code in codes {
                    self.tap_answer(code).await?;
                }
                self.tap_answer("put-down").await?;
            }
            Do::Type(text) => self.type_value(text).await?,
            Do::Read(text, instrument) => {
                self.tap(&format!(".asked [data-instrument='{instrument}']")).await?;
                self.type_value(text).await?;
            }
            Do::Count(n) => self.tap_answer(&n.to_string()).await?,
            Do::Nothing => self.tap_answer("nothing").await?,
            Do::NoTool => self.tap("#no-tool").await?,
        }
        self.phone.wait_until(&format!("![null, {before}].includes({ASKED})")).await
    }

    /// How many times a question was answered so far.
    pub fn asked(&self, question: &str) -> usize {
        self.used.get(question).copied().unwrap_or_default()
    }

    /// The id of the question that is asked now.
    pub async fn question(&self) -> Result<String> {
        self.phone.wait_for(".asked").await?;
        let asked = self.phone.eval("document.querySelector('.asked').dataset.question").await?;
        asked.as_str().map(str::to_owned).context("nothing is asked")
    }

    async fn tap(&mut self, css: &str) -> Result<()> {
        self.taps += 1;
        self.phone.tap(css).await
    }

    async fn tap_answer(&mut self, code: &str) -> Result<()> {
        self.tap(&format!(".asked [data-answer='{code}']")).await
    }

    async fn type_value(&mut self, text: &str) -> Result<()> {
        if !text.ends_with('\n') {
            bail!("{text:?} lacks the Enter key");
        }
        self.taps += 1;
        self.phone.type_text(".asked input.value", text).await
    }

    fn next_line(&mut self, question: &str) -> Option<Do> {
        let of_question =
            |script: &Script| script.iter().copied().filter(|(id, _)| *id == question).collect::<Vec<_>>();
        let lines = self.scripts.iter().rev().map(of_question).find(|lines| !lines.is_empty())?;
        let (id, last) = *lines.last()?;
        let used = self.used.entry(id).or_default();
        let line = lines.get(*used).map_or(last, |(_, line)| *line);
        *used += 1;
        Some(line)
    }
}

/// The code of the verdict so far.
pub async fn verdict(phone: &Phone) -> Result<String> {
    let code = phone.eval("document.querySelector('.verdict').dataset.verdict").await?;
    code.as_str().map(str::to_owned).context("there is no verdict")
}
