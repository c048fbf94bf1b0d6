//! The phone itself is tried on a page made for it: a story is worth no more than the hand that tells it.

use std::{fs, path::Path, time::Duration};

use anyhow::Result;
use e2e::{Phone, Scheme, Server, Site};
use serde_json::json;

const A_MOMENT: Duration = Duration::from_millis(500);

async fn phone_on_its_page(story: &str) -> Result<(Phone, Server)> {
    let page = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/phone");
    let host = Server::start(Site::new(page), 0)?;
    let phone = Phone::fresh(story).await?;
    phone.goto(&host.origin()).await?;
    Ok((phone, host))
}

#[tokio::test]
async fn tap_is_a_touch_on_what_can_be_touched() -> Result<()> {
    let (mut phone, _host) = phone_on_its_page("tap").await?;
    phone.tap("#far").await?;
    let touch = json!(["pointerdown:touch", "touchstart:", "touchend:", "click:touch"]);
    assert_eq!(phone.eval("window.seen").await?, touch);
    phone.tap_words("Far down").await?;
    assert_eq!(phone.eval("window.seen.length").await?, 8);

    phone.be_patient_for(A_MOMENT);
    let trouble = phone.tap("#covered").await.unwrap_err();
    assert!(trouble.to_string().contains("lies under <div id=\\\"cover\\\">"), "{trouble}");
    let trouble = phone.tap("#nowhere").await.unwrap_err();
    assert!(trouble.to_string().contains("is not there"), "{trouble}");
    Ok(())
}

#[tokio::test]
async fn text_is_typed_after_what_is_there_and_enter_sends_it() -> Result<()> {
    let (phone, _host) = phone_on_its_page("type").await?;
    phone.type_text("#field", "37 mΩ").await?;
    assert_eq!(phone.eval("document.getElementById('field').value").await?, "0,37 mΩ");
    phone.type_text("#entered", "12\n").await?;
    assert_eq!(phone.eval("window.sent").await?, "12");
    Ok(())
}

#[tokio::test]
async fn files_go_in_and_come_out() -> Result<()> {
    let (phone, _host) = phone_on_its_page("files").await?;
    phone.tap("#download").await?;
    let note = phone.wait_for_download("note.txt").await?;
    assert_eq!(fs::read_to_string(&note)?, "a note");
    phone.choose_file("#file", &note).await?;
    assert_eq!(phone.eval("document.getElementById('file').files[0].text()").await?, "a note");
    Ok(())
}

#[tokio::test]
async fn look_and_size_can_be_chosen() -> Result<()> {
    let (phone, _host) = phone_on_its_page("look").await?;
    let colour = "getComputedStyle(document.documentElement).color";
    phone.prefer(Scheme::Dark).await?;
    assert_eq!(phone.eval(colour).await?, "rgb(1, 2, 3)");
    phone.prefer(Scheme::Light).await?;
    assert_eq!(phone.eval(colour).await?, "rgb(0, 0, 0)");
    phone.resize(320, 568).await?;
    assert_eq!(phone.eval("[innerWidth, innerHeight, devicePixelRatio]").await?, json!([320, 568, 3]));
    Ok(())
}

#[tokio::test]
async fn words_that_never_come_are_told_with_those_that_did() -> Result<()> {
    let (mut phone, _host) = phone_on_its_page("words").await?;
    assert_eq!(phone.text("p").await?, "A long way down.");
    phone.be_patient_for(A_MOMENT);
    let trouble = phone.wait_for_text("p", "A short way").await.unwrap_err();
    assert!(trouble.to_string().contains("A long way down."), "{trouble}");
    Ok(())
}

#[tokio::test]
async fn killed_phone_keeps_what_it_had_saved_and_nothing_goes_on_running() -> Result<()> {
    let (phone, host) = phone_on_its_page("kill").await?;
    let open = "new Promise((tell, fail) => { const ask = indexedDB.open('kept', 1);
        ask.onupgradeneeded = () => ask.result.createObjectStore('words');
        ask.onsuccess = () => tell(ask.result); ask.onerror = () => fail(ask.error); })";
    let save = format!(
        "{open}.then((kept) => new Promise((tell) => {{ const change = kept.transaction('words', 'readwrite',
            {{ durability: 'strict' }}); change.objectStore('words').put('saved', 1); change.oncomplete = () => tell(true); }}))"
    );
    assert_eq!(phone.eval(&save).await?, true);

    let storage = phone.kill()?;
    let profile = storage.profile();
    let is_running = || {
        fs::read_dir("/proc").unwrap().flatten().any(|process| {
            fs::read_to_string(process.path().join("cmdline"))
                .is_ok_and(|words| words.contains(&*profile.to_string_lossy()))
        })
    };
    assert!(!is_running());
    tokio::time::sleep(Duration::from_millis(300)).await;
    assert!(!is_running(), "the browser came back");

    let phone = Phone::again(storage).await?;
    phone.goto(&host.origin()).await?;
    let load = format!(
        "{open}.then((kept) => new Promise((tell) => {{ const ask = kept.transaction('words').objectStore('words').get(1);
            ask.onsuccess = () => tell(ask.result); }}))"
    );
    assert_eq!(phone.eval(&load).await?, "saved");
    Ok(())
}
