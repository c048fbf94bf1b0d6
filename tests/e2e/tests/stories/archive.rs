//! The story of everything at once: a thousand examinations with two thousand photos, out of one phone and into another.

use std::{fs, path::Path, time::Duration};

use anyhow::Result;
use e2e::{Phone, host};
use serde_json::{Value, json};

use crate::walker::RUNNING;

const SAMPLES: usize = 1000;
/// The most that a tab may take.
const MOST: u64 = 500 * 1024 * 1024;

/// How many things a store of the app has.
fn count(store: &str) -> String {
    format!(
        "(async () => {{ const opening = indexedDB.open('plugwary');
        const database = await new Promise((done) => {{ opening.onsuccess = () => done(opening.result) }});
        const asking = database.transaction('{store}').objectStore('{store}').count();
        const count = await new Promise((done) => {{ asking.onsuccess = () => done(asking.result) }});
        database.close(); return count; }})()"
    )
}

/// Puts examinations into the store, each with two photos of 150,000 bytes of chance, ten at a time.
fn fill(examination: &Value) -> String {
    format!(
        "(async () => {{
        const opening = indexedDB.open('plugwary');
        const database = await new Promise((done) => {{ opening.onsuccess = () => done(opening.result) }});
        const hexadecimal = (bytes) => Array.from(new Uint8Array(bytes), (b) => b.toString(16).padStart(2, '0')).join('');
        const bytes = new Uint8Array(150000);
        for (let n = 0; n < {SAMPLES}; n += 10) {{
            const records = [], photos = [];
            for (let k = n; k < n + 10; k++) {{
                const record = {examination};
                record.id = k.toString(16).padStart(32, '0');
                record.sample.number = 'B-' + k;
                for (let p = 0; p < 2; p++) {{
                    for (let at = 0; at < bytes.length; at += 50000) crypto.getRandomValues(bytes.subarray(at, at + 50000));
                    const sha256 = hexadecimal(await crypto.subtle.digest('SHA-256', bytes));
                    record.photos.push({{ sha256, media_type: 'image/jpeg', width: 1600, height: 1200,
                        taken: '2026-11-20T10:00:00Z', question: 'fuse-in-the-holder' }});
                    photos.push([['image/jpeg', bytes.slice().buffer], sha256]);
                }}
                records.push(record);
            }}
            const writing = database.transaction(['examinations', 'photos'], 'readwrite');
            for (const [photo, sha256] of photos) writing.objectStore('photos').put(photo, sha256);
            for (const record of records) writing.objectStore('examinations').put(JSON.stringify(record), record.id);
            await new Promise((done) => {{ writing.oncomplete = done }});
        }}
        database.close();
        return true; }})()"
    )
}

/// The examination that all of them are copies of.
fn without_photos() -> Result<Value> {
    let case = Path::new(env!("CARGO_MANIFEST_DIR")).join("../examinations/cases/market-stall-lead.json");
    let mut examination: Value = serde_json::from_str(&fs::read_to_string(case)?)?;
    if let Some(fields) = examination.as_object_mut() {
        fields.remove("example");
        fields.insert("photos".to_owned(), json!([]));
        fields.insert("changed".to_owned(), json!("2026-11-20T10:00:00Z"));
    }
    Ok(examination)
}

#[tokio::test]
async fn thousand_examinations_go_out_and_come_in_without_doubles() -> Result<()> {
    let host = host()?;
    let mut phone = Phone::fresh("archive-out").await?;
    phone.be_patient_for(Duration::from_secs(400));
    phone.allow_scripts(Duration::from_secs(300)).await?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(RUNNING).await?;
    let examination = without_photos()?;
    assert_eq!(phone.eval(&fill(&examination)).await?, true);
    assert_eq!(phone.eval(&count("examinations")).await?, SAMPLES);

    phone.goto(&format!("{}/study.html#/samples", host.origin())).await?;
    phone.wait_for_text("main", "All 1000 samples.").await?;
    phone.wait_for_text("#reminder", "1000 samples are new").await?;
    phone.tap("#make-archive").await?;
    phone.wait_for("progress").await?;
    phone.screenshot("making").await?;
    let archive = phone.wait_for_download(".zip").await?;
    phone.wait_for_text("#archive-said", "The archive is with your downloads.").await?;
    phone.wait_until("document.querySelector('#reminder') === null").await?;
    phone.screenshot("made").await?;
    assert!(fs::metadata(&archive)?.len() > 300_000_000);
    let out = phone.largest_tab()?;
    assert!(out < MOST, "the tab took {out} bytes");

    let mut other = Phone::fresh("archive-in").await?;
    other.be_patient_for(Duration::from_secs(400));
    other.goto(&format!("{}/study.html#/samples", host.origin())).await?;
    other.wait_until(RUNNING).await?;
    other.choose_file("#take-archive", &archive).await?;
    other.wait_for_text("#archive-said", "New here: 1000 samples.").await?;
    other.wait_for_text("#archive-said", "Photos taken: 2000.").await?;
    other.screenshot("taken-back").await?;
    for (store, expected) in [("examinations", SAMPLES), ("photos", 2 * SAMPLES)] {
        assert_eq!(other.eval(&count(store)).await?, expected, "{store}");
    }
    other.choose_file("#take-archive", &archive).await?;
    other.wait_for_text("#archive-said", "Here already, letter for letter: 1000 samples.").await?;
    let back = other.largest_tab()?;
    assert!(back < MOST, "the tab took {back} bytes");
    assert_eq!(other.console_errors().await?, [""; 0]);
    // Three times 300 MB are left behind otherwise.
    fs::remove_file(archive)?;
    Ok(())
}

#[tokio::test]
async fn making_an_archive_can_be_stopped() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("archive-stopped").await?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(RUNNING).await?;
    let examination = without_photos()?;
    let few = fill(&examination).replace(&format!("n < {SAMPLES}"), "n < 100");
    assert_eq!(phone.eval(&few).await?, true);
    phone.goto(&format!("{}/study.html#/samples", host.origin())).await?;
    phone.wait_for_text("main", "All 100 samples.").await?;
    phone
        .eval(
            "(document.querySelector('#make-archive').click(), requestAnimationFrame(function stop() {
        const button = document.querySelector('#stop');
        button ? button.click() : requestAnimationFrame(stop); }), true)",
        )
        .await?;
    phone.wait_for_text("#archive-said", "Stopped. Nothing was changed.").await?;
    assert_eq!(phone.eval("document.querySelector('progress') === null").await?, true);
    Ok(())
}
