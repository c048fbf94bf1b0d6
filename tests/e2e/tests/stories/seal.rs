//! Stories of the seal: whole on another phone and on a desk, and broken by one byte.

use std::{env, fs, path::Path, process::Command};

use anyhow::{Context as _, Result};
use e2e::{Phone, host};
use serde_json::{Value, json};

use crate::walker::RUNNING;

#[tokio::test]
async fn file_is_sealed_and_one_changed_byte_is_told() -> Result<()> {
    let mut host = host()?;
    let phone = Phone::fresh("seal").await?;
    phone.goto(&host.origin()).await?;
    phone.wait_until("window.plugwaryShell?.offlineReady === true").await?;
    host.stop();
    let first = made(&phone).await?;
    phone.goto(&format!("{}/study.html#/take-in", host.origin())).await?;
    phone.wait_until(RUNNING).await?;
    phone.choose_file("#take-back", &first).await?;
    phone.wait_for("#seal[data-seal=untouched]").await?;
    phone.wait_for_text("#seal", "Judged again with edition").await?;
    phone.screenshot("untouched").await?;

    let (said, is_sound) = checked(&first)?;
    assert!(is_sound, "{said}");
    assert_eq!(said.get("state"), Some(&json!("untouched")));
    assert_eq!(said.get("judged_again"), Some(&json!("same")));

    let page = fs::read_to_string(&first)?;
    let at = page.find("Keep away").context("the file has no verdict")?;
    let changed = phone.storage().folder("files")?.join("changed.html");
    fs::write(
        &changed,
        format!("{}Kept away{}", page.get(..at).unwrap_or_default(), page.get(at + 9..).unwrap_or_default()),
    )?;
    phone.choose_file("#take-back", &changed).await?;
    phone.wait_for("#seal[data-seal=altered]").await?;
    phone.wait_for_text("#seal", "Changed: the text of the page, or how it looks.").await?;
    phone.screenshot("altered").await?;
    let (said, is_sound) = checked(&changed)?;
    assert!(!is_sound, "{said}");
    assert_eq!(said.get("altered"), Some(&json!(["text"])));

    let block = page.find("<script type=\"application/json\" id=\"plugwary-seal\">").context("the file has no seal")?;
    let cut = phone.storage().folder("files")?.join("cut.html");
    fs::write(&cut, page.get(..block).unwrap_or_default())?;
    phone.choose_file("#take-back", &cut).await?;
    phone.wait_for("#seal[data-seal=seal-missing]").await?;
    phone.screenshot("cut-off").await?;
    assert_eq!(phone.console_errors().await?, [""; 0]);
    Ok(())
}

#[tokio::test]
async fn device_keeps_its_key_and_another_one_has_another() -> Result<()> {
    let host = host()?;
    let mut keys = Vec::new();
    for story in ["seal-one", "seal-another"] {
        let phone = Phone::fresh(story).await?;
        phone.goto(&host.origin()).await?;
        phone.wait_until(RUNNING).await?;
        for _ in 0..2 {
            let file = made(&phone).await?;
            let (said, is_sound) = checked(&file)?;
            assert!(is_sound, "{said}");
            keys.push(said.get("key").cloned().context("the seal names no key")?);
            fs::remove_file(file)?;
            phone.goto(&host.origin()).await?;
        }
        let kept = "(async () => { const opening = indexedDB.open('plugwary-key');
            const database = await new Promise((done) => { opening.onsuccess = () => done(opening.result) });
            const asking = database.transaction('keys').objectStore('keys').get('device');
            const { signing } = await new Promise((done) => { asking.onsuccess = () => done(asking.result) });
            database.close();
            return await crypto.subtle.exportKey('pkcs8', signing).then(() => 'read out', () => 'refused'); })()";
        assert_eq!(phone.eval(kept).await?, "refused", "a script can read the key out");
    }
    let [one, same, another, again] = keys.as_slice() else { unreachable!("two phones with two files each") };
    assert_eq!(one, same);
    assert_eq!(another, again);
    assert_ne!(one, another);
    Ok(())
}

/// Makes the file of the example.
async fn made(phone: &Phone) -> Result<std::path::PathBuf> {
    phone.tap("a.sample").await?;
    phone.tap("#make-file").await?;
    phone.tap("#save").await?;
    phone.wait_for_download(".html").await
}

/// What the native command finds of a file, and whether it calls it sound.
fn checked(file: &Path) -> Result<(Value, bool)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let cargo = env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let words = [
        "run",
        "--quiet",
        "--no-default-features",
        "--features",
        "schema",
        "--bin",
        "plugwary",
        "--",
        "judge",
        "--check",
    ];
    let output = Command::new(cargo).args(words).arg(file).current_dir(root).output()?;
    let line = String::from_utf8(output.stdout)?;
    let said = serde_json::from_str(&line).with_context(|| String::from_utf8_lossy(&output.stderr).into_owned())?;
    Ok((said, output.status.success()))
}
