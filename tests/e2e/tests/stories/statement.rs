//! Stories of changing one's mind: undo, a sentence looked at again, a sample thrown away and brought back; and of photos and search.

use std::fs;

use anyhow::{Context as _, Result};
use e2e::{Phone, host};
use serde_json::{Value, json};

use crate::answers::BARE_PINS;
use crate::hostile::STORED;
use crate::picture::{self, EXIF};
use crate::walker::{Walker, verdict};

/// The sentence of the newest answer.
const NEWEST: &str = ".said[data-newest]";

#[tokio::test]
async fn answers_are_taken_back_and_given_anew() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("second-thoughts").await?;
    let mut buyer = Walker::new(&phone, &[BARE_PINS]);
    buyer.begin(&host.origin(), "eyes").await?;
    buyer.walk().await?;
    assert_eq!(verdict(&phone).await?, "keep-away");
    let said = phone.texts(".sentence").await?;

    phone.tap("#undo").await?;
    phone.wait_for(".asked[data-question=sold-as]").await?;
    phone.tap("#undo").await?;
    phone.wait_for(".asked[data-question=pins-and-sleeves]").await?;
    phone.wait_for(".verdict[data-verdict=do-not-accept]").await?;
    assert_eq!(phone.texts(".sentence").await?.len(), said.len() - 2);
    phone.screenshot("undone").await?;

    let mut buyer = Walker::new(&phone, &[BARE_PINS]);
    buyer.walk().await?;
    assert_eq!(phone.texts(".sentence").await?, said);
    phone.tap(".said[data-question=fuse-in-the-holder] > .sentence").await?;
    phone.wait_for(".asked[data-question=fuse-in-the-holder]").await?;
    phone.wait_for(".asked [data-answer=unmarked][aria-pressed=true]").await?;
    phone.screenshot("looked-at-again").await?;
    phone.tap(".asked [data-answer=marked-bs-1362]").await?;
    phone.wait_for_text(".said[data-question=fuse-in-the-holder]", "The plug has a fuse marked BS 1362.").await?;
    // A fuse without print says no amperes; one with print is asked for them.
    phone.wait_for(".asked[data-question=fuse-rating]").await?;
    assert_eq!(phone.texts(".sentence").await?.len(), said.len());
    Ok(())
}

/// Holds the app's database for some seconds, as a slow phone would, and leaves it as it was.
const SLOW_STORE: &str = "if (location.pathname === '/new') {
    window.storeIsHeld = true;
    const asked = indexedDB.open('plugwary', 1);
    asked.onupgradeneeded = () => {
        const store = asked.result.createObjectStore('held');
        const until = performance.now() + 4000;
        const hold = () => {
            if (performance.now() < until) store.get(0).onsuccess = hold; else asked.transaction.abort();
        };
        hold();
    };
    asked.onerror = (event) => {
        window.storeIsHeld = false;
        event.preventDefault();
    };
}";
/// How many examinations are stored.
const HOW_MANY: &str = "new Promise((tell) => {
    const asked = indexedDB.open('plugwary');
    asked.onsuccess = () => {
        const count = asked.result.transaction('examinations').objectStore('examinations').count();
        count.onsuccess = () => tell(count.result);
        asked.result.close();
    };
})";

#[tokio::test]
async fn sample_that_is_begun_before_the_store_is_open_is_kept() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("quicker-than-the-store").await?;
    phone.run_first(SLOW_STORE).await?;
    phone.goto(&format!("{}/new", host.origin())).await?;
    phone.tap("#begin").await?;
    phone.tap(".asked [data-answer=uk-three-pin]").await?;
    phone.wait_for_text(".sentence", "three flat British pins").await?;
    assert_eq!(phone.eval("window.storeIsHeld").await?, true, "the store was open already");
    phone.wait_until("window.storeIsHeld === false").await?;
    phone.wait_until(&format!("{HOW_MANY}.then((count) => count === 1)")).await?;
    phone.wait_for_text(".sentence", "three flat British pins").await?;
    phone.reload().await?;
    phone.wait_for_text(".sentence", "three flat British pins").await?;
    Ok(())
}

#[tokio::test]
async fn sample_is_found_thrown_away_and_brought_back() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("found-and-deleted").await?;
    for name in ["Green lead of Aunt Wren", "White lead from the attic"] {
        let mut buyer = Walker::new(&phone, &[BARE_PINS]);
        buyer.begin_with(&host.origin(), "eyes", name).await?;
        buyer.walk_to("fuse-rating").await?;
        phone.wait_for_text(".sentence", "no print at all").await?;
    }
    phone.goto(&host.origin()).await?;
    phone.wait_for_text(".sample b", "attic").await?;
    phone.wait_for_text(".sample b", "Aunt Wren").await?;
    phone.screenshot("all-samples").await?;
    phone.type_text(".search", "wren GREEN").await?;
    phone.wait_until("document.querySelectorAll('.sample').length === 1").await?;
    phone.wait_for_text(".sample b", "Aunt Wren").await?;
    phone.type_text(".search", " scorched").await?;
    phone.wait_for_text(".page", "No sample has these words.").await?;
    phone.reload().await?;

    phone.tap(".sample").await?;
    phone.wait_for_text(".subject", "attic").await?;
    let said = phone.text(".statement").await?;
    phone.tap("summary").await?;
    phone.screenshot("more").await?;
    phone.tap("#delete").await?;
    phone.wait_for_text(".notice", "The sample is deleted.").await?;
    let names = phone.texts(".sample b").await?;
    assert!(names.iter().all(|name| !name.contains("attic")), "{names:?}");
    phone.screenshot("deleted").await?;
    phone.tap("#undo-delete").await?;
    phone.wait_for_text(".sample b", "attic").await?;
    phone.wait_until(&format!("{HOW_MANY}.then((count) => count === 2)")).await?;
    phone.reload().await?;
    phone.wait_for_text(".sample b", "attic").await?;
    phone.tap(".sample").await?;
    phone.wait_for_text(".subject", "attic").await?;
    assert_eq!(phone.text(".statement").await?, said);
    Ok(())
}

#[tokio::test]
async fn photo_is_in_the_file_by_its_digest_and_does_not_say_where_it_was_taken() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("photo").await?;
    let mut buyer = Walker::new(&phone, &[BARE_PINS]);
    buyer.begin(&host.origin(), "eyes").await?;
    buyer.walk_to("pins-and-sleeves").await?;
    let taken = picture::with_location(&phone).await?;
    assert!(has_exif(&fs::read(&taken)?), "the camera's picture says nothing");
    assert_eq!(phone.texts(NEWEST).await?.len(), 1);
    phone.choose_file(".tool input[type=file]", &taken).await?;
    phone.wait_until(&format!("{STORED}.then((all) => all.includes('sha256'))")).await?;
    assert_eq!(phone.texts(NEWEST).await?.len(), 1, "a photo is no answer, and the statement stays where it was");
    buyer.walk().await?;
    phone.screenshot("with-a-photo").await?;
    phone.tap("#make-file").await?;
    phone.wait_for_text(".page", "1 photo").await?;
    phone.screenshot("make-file").await?;
    phone.tap("#save-json").await?;
    let record: Value = serde_json::from_str(&fs::read_to_string(phone.wait_for_download(".json").await?)?)?;
    let photo = record.pointer("/photos/0").context("no photo on record")?;
    assert_eq!(photo.get("question"), Some(&json!("pins-and-sleeves")), "{photo}");
    let digest = photo.get("sha256").and_then(Value::as_str).context("no digest")?;

    phone.tap("#save").await?;
    let page = fs::read_to_string(phone.wait_for_download(".html").await?)?;
    assert!(page.contains(&format!("data-sha256=\"{digest}\"")), "the file shows no such photo");
    let base64 = page.split("base64,").nth(1).and_then(|rest| rest.split('"').next()).context("no picture")?;
    let bytes = format!("Uint8Array.from(atob('{base64}'), (letter) => letter.charCodeAt(0))");
    let hash = format!(
        "crypto.subtle.digest('SHA-256', {bytes}).then((hash) =>
            Array.from(new Uint8Array(hash), (byte) => byte.toString(16).padStart(2, '0')).join(''))"
    );
    assert_eq!(phone.eval(&hash).await?, digest);
    let kept = phone.eval(&format!("Array.from({bytes})")).await?;
    let byte = |value: &Value| value.as_u64().and_then(|value| u8::try_from(value).ok());
    let kept: Vec<u8> = kept.as_array().context("no picture")?.iter().filter_map(byte).collect();
    assert!(kept.len() > 500 && !has_exif(&kept), "{} bytes", kept.len());
    Ok(())
}

fn has_exif(bytes: &[u8]) -> bool {
    bytes.windows(EXIF.len()).any(|window| window == EXIF)
}
