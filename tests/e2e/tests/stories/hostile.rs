//! Stories of files that are damaged, foreign, too new, or meant to do harm.

use std::{fs, path::PathBuf};

use anyhow::{Context as _, Result};
use e2e::{Phone, host};
use serde_json::{Value, json};

use crate::answers::BARE_PINS;
use crate::picture;
use crate::walker::{RUNNING, Walker};

/// All that the app has stored: every record of every store, and every setting.
pub const STORED: &str = "(async () => {
    const ask = (request) => new Promise((tell, fail) => {
        request.onsuccess = () => tell(request.result);
        request.onerror = () => fail(request.error);
    });
    const database = await ask(indexedDB.open('plugwary'));
    const all = {};
    for (const name of database.objectStoreNames) {
        const store = database.transaction(name).objectStore(name);
        all[name] = [await ask(store.getAllKeys()), name === 'photos' ? '' : await ask(store.getAll())];
    }
    database.close();
    return JSON.stringify([all, Object.entries(localStorage).sort()]);
})()";
/// Marks a page that script from a file got to run in.
const SCRIPT: &str = "</script><script>window.hasRun = true</script><img src=x onerror=\"window.hasRun = true\">";

#[tokio::test]
async fn bad_files_get_one_sentence_each_and_change_nothing() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("bad-files").await?;
    let mut buyer = Walker::new(&phone, &[BARE_PINS]);
    buyer.begin(&host.origin(), "eyes").await?;
    phone.choose_file(".tool input[type=file]", &picture::with_location(&phone).await?).await?;
    phone.wait_until(&format!("{STORED}.then((all) => all.includes('sha256'))")).await?;
    buyer.walk().await?;
    phone.tap("#make-file").await?;
    phone.tap("#save").await?;
    let page = fs::read_to_string(phone.wait_for_download(".html").await?)?;
    let picture = page.find("base64,").context("the file shows no photo")? + "base64,".len() + 400;
    let (before, after) = page.split_at(picture);
    let changed = after.strip_prefix(|letter: char| letter.is_ascii_alphanumeric()).context("not within a picture")?;
    let changed = format!("{before}{}{changed}", if after.starts_with('A') { 'B' } else { 'A' });
    let good = examination("", "13 A");

    phone.goto(&host.origin()).await?;
    phone.wait_for("a.sample").await?;
    phone.wait_until(&format!("{STORED}.then((all) => all.includes('offline-ready-said'))")).await?;
    close_notices(&phone).await?;
    phone.goto(&format!("{}/study.html#/take-in", host.origin())).await?;
    phone.wait_for_text("h1", "Look at a saved file").await?;
    let stored = phone.eval(STORED).await?;
    for (name, text, sentence) in [
        ("cut.json", good.split_at(good.len() / 2).0.to_owned(), "the file is cut short"),
        (
            "foreign.html",
            "<!doctype html><title>Soup</title><p>Boil it.".to_owned(),
            "this is not a Plugwary examination",
        ),
        ("newer.json", good.replace("\"version\":1", "\"version\":7"), "made by a newer edition (version 7)"),
        (
            "deep.json",
            good.replace("\"answers\":[", &format!("\"answers\":[{}{},", "[".repeat(5000), "]".repeat(5000))),
            "deep in each other",
        ),
        ("changed.html", changed, "photo 1 was changed after the file was made"),
    ] {
        phone.choose_file("#take-back", &file(&phone, name, &text)?).await?;
        let said = phone.wait_for_text(".notice[role=alert]", sentence).await?;
        assert!(said.contains("Nothing was taken back: "), "{said}");
        assert_eq!(phone.texts(".notice").await?.len(), 1, "{name}");
        assert_eq!(phone.eval(STORED).await?, stored, "{name}");
        phone.screenshot(name).await?;
        close_notices(&phone).await?;
    }
    assert_eq!(phone.console_errors().await?, [""; 0]);
    Ok(())
}

#[tokio::test]
async fn markup_in_names_and_print_stays_text() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("markup").await?;
    phone.goto(&format!("{}/study.html#/take-in", host.origin())).await?;
    phone.wait_until(RUNNING).await?;
    let hostile = examination(SCRIPT, &format!("13 A {SCRIPT}"));
    phone.choose_file("#take-back", &file(&phone, "markup.json", &hostile)?).await?;
    phone.wait_for_text(".subject", SCRIPT).await?;
    phone.screenshot("looked-at").await?;
    phone.tap("#keep").await?;
    phone.wait_for_text(".subject", SCRIPT).await?;
    phone.wait_for_text(".sentence", SCRIPT).await?;
    phone.screenshot("on-the-screen").await?;
    phone.tap("#make-file").await?;
    phone.wait_for_text(".subject", SCRIPT).await?;
    phone.tap("#save").await?;
    let made = phone.wait_for_download(".html").await?;
    phone.tap_words("Start").await?;
    phone.wait_for_text(".sample", SCRIPT).await?;
    assert_eq!(phone.eval("window.hasRun === undefined").await?, true);
    assert_eq!(phone.console_errors().await?, [""; 0]);

    phone.goto(&format!("file://{}", made.display())).await?;
    phone.wait_for_text("body", SCRIPT).await?;
    phone.screenshot("in-the-file").await?;
    assert_eq!(phone.eval("window.hasRun === undefined").await?, true);
    let scripts = "Array.from(document.scripts, (script) => script.type)";
    assert_eq!(phone.eval(scripts).await?, json!(["application/json", "application/json", "application/json"]));
    assert_eq!(phone.eval("document.querySelectorAll('img').length").await?, 0);
    assert_eq!(phone.console_errors().await?, [""; 0], "the file's own policy had to stop something");
    Ok(())
}

/// A small examination with this title and this print on the body.
fn examination(title: &str, print: &str) -> String {
    let examination: Value = json!({
        "format": "plugwary-examination",
        "version": 1,
        "sample": { "kind": "extension-lead", "market": "great-britain", "title": title },
        "equipment": "eyes",
        "answers": [
            { "question": "fuse-in-the-holder", "one": "empty" },
            { "question": "rating", "of": "body", "printed": print },
        ],
    });
    examination.to_string()
}

fn file(phone: &Phone, name: &str, text: &str) -> Result<PathBuf> {
    let path = phone.storage().folder("files")?.join(name);
    fs::write(&path, text)?;
    Ok(path)
}

async fn close_notices(phone: &Phone) -> Result<()> {
    phone.eval("document.querySelectorAll('.notice button').forEach((button) => button.click())").await?;
    phone.wait_until("document.querySelector('.notice') === null").await
}
