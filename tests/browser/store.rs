//! The store keeps what it is given, all of it or nothing, over a reopening and beside other editions.

use indexed_db_futures::database::Database;
use indexed_db_futures::prelude::*;
use indexed_db_futures::transaction::TransactionMode;
use plugwary::screens::platform::ids;
use plugwary::store::{Fault, IndexedDb, Memory, Store};
use wasm_bindgen::JsValue;
use wasm_bindgen_test::wasm_bindgen_test;

use crate::StandIn;

const SHA256: &str = "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa";

/// Every byte there is, twice over.
fn bytes() -> Vec<u8> {
    (0..=255).chain(0..=255).collect()
}

fn photo() -> (String, Vec<u8>) {
    ("image/jpeg".to_owned(), bytes())
}

fn pair(key: &str, text: &str) -> (String, String) {
    (key.to_owned(), text.to_owned())
}

async fn opened() -> Result<IndexedDb, Fault> {
    IndexedDb::open_named(&ids::fresh(), 1).await
}

async fn check(store: &impl Store) -> Result<(), Fault> {
    assert_eq!(store.all().await?, []);
    assert_eq!(store.get("b").await?, None);
    store.put("b", "{\"n\":1}").await?;
    store.put("a", "{\"n\":2}").await?;
    store.put("b", "{\"n\":3}").await?;
    assert_eq!(store.all().await?, [pair("a", "{\"n\":2}"), pair("b", "{\"n\":3}")]);
    assert_eq!(store.get("b").await?.as_deref(), Some("{\"n\":3}"));
    store.delete("b").await?;
    store.delete("b").await?;
    assert_eq!(store.get("b").await?, None);
    assert_eq!(store.all().await?, [pair("a", "{\"n\":2}")]);

    assert_eq!(store.photo(SHA256).await?, None);
    store.put_photo(SHA256, "image/jpeg", &bytes()).await?;
    assert_eq!(store.photo(SHA256).await?, Some(photo()));
    store.delete_photo(SHA256).await?;
    assert_eq!(store.photo(SHA256).await?, None);

    assert_eq!(store.drafts().await?, []);
    store.put_draft("b length", "0").await?;
    store.put_draft("a length", "1").await?;
    store.put_draft("b length", "0,3").await?;
    assert_eq!(store.drafts().await?, [pair("a length", "1"), pair("b length", "0,3")]);
    store.delete_draft("b length").await?;
    store.delete_draft("b length").await?;
    assert_eq!(store.drafts().await?, [pair("a length", "1")]);
    assert_eq!(store.all().await?, [pair("a", "{\"n\":2}")]);

    store.put_with_photo("c", "{\"n\":4}", SHA256, "image/jpeg", &bytes()).await?;
    assert_eq!(store.get("c").await?.as_deref(), Some("{\"n\":4}"));
    assert_eq!(store.photo(SHA256).await?, Some(photo()));
    store.delete("c").await?;
    assert_eq!(store.photo(SHA256).await?, Some(photo()));
    Ok(())
}

#[wasm_bindgen_test]
async fn database_of_the_browser_keeps_and_gives_back() -> Result<(), Fault> {
    check(&opened().await?).await
}

#[wasm_bindgen_test]
async fn memory_keeps_and_gives_back() -> Result<(), Fault> {
    check(&Memory::default()).await
}

#[wasm_bindgen_test]
async fn what_is_kept_survives_reopening() -> Result<(), Fault> {
    let name = ids::fresh();
    let first = IndexedDb::open_named(&name, 1).await?;
    first.put_with_photo("a", "{}", SHA256, "image/jpeg", &bytes()).await?;
    drop(first);
    let second = IndexedDb::open_named(&name, 1).await?;
    assert_eq!(second.all().await?, [pair("a", "{}")]);
    assert_eq!(second.photo(SHA256).await?, Some(photo()));
    Ok(())
}

#[wasm_bindgen_test]
async fn record_that_is_no_json_is_given_back_as_it_is() -> Result<(), Fault> {
    let store = opened().await?;
    store.put("a", "{\"broken\":").await?;
    store.put("b", "").await?;
    assert_eq!(store.all().await?, [pair("a", "{\"broken\":"), pair("b", "")]);
    Ok(())
}

#[wasm_bindgen_test]
async fn record_that_is_no_text_hides_no_other() -> Result<(), Box<dyn std::error::Error>> {
    let name = ids::fresh();
    let store = IndexedDb::open_named(&name, 1).await?;
    store.put("b", "{}").await?;
    put_strange(&name, "examinations", "a", 7.0).await?;
    assert_eq!(store.all().await?, [pair("a", "7"), pair("b", "{}")]);
    Ok(())
}

#[wasm_bindgen_test]
async fn photo_that_is_no_photo_is_damaged() -> Result<(), Box<dyn std::error::Error>> {
    let name = ids::fresh();
    let store = IndexedDb::open_named(&name, 1).await?;
    put_strange(&name, "photos", SHA256, 7.0).await?;
    assert_eq!(store.photo(SHA256).await, Err(Fault::Damaged));
    Ok(())
}

/// Puts something into a database that the app would never put there.
async fn put_strange(name: &str, store: &str, key: &str, value: f64) -> Result<(), Box<dyn std::error::Error>> {
    let database = Database::open(name).await?;
    let transaction = database.transaction(store).with_mode(TransactionMode::Readwrite).build()?;
    transaction.object_store(store)?.put(JsValue::from_f64(value)).with_key(key).primitive()?.await?;
    transaction.commit().await?;
    database.close();
    Ok(())
}

#[wasm_bindgen_test]
async fn older_edition_gives_way_and_says_that_it_is_old() -> Result<(), Fault> {
    let name = ids::fresh();
    let older = IndexedDb::open_named(&name, 1).await?;
    older.put("a", "{}").await?;
    let newer = IndexedDb::open_named(&name, 2).await?;
    assert_eq!(newer.all().await?, [pair("a", "{}")]);
    assert_eq!(older.put("b", "{}").await, Err(Fault::Newer));
    assert_eq!(older.all().await, Err(Fault::Newer));
    assert_eq!(newer.all().await?, [pair("a", "{}")]);
    assert_eq!(IndexedDb::open_named(&name, 1).await.err(), Some(Fault::Newer));
    Ok(())
}

#[wasm_bindgen_test]
async fn window_that_gives_no_way_is_named_and_later_no_obstacle() -> Result<(), Box<dyn std::error::Error>> {
    let name = ids::fresh();
    let holding = Database::open(name.clone()).with_version(1_u32).await?;
    assert_eq!(IndexedDb::open_named(&name, 2).await.err(), Some(Fault::Blocked));
    holding.close();
    let store = IndexedDb::open_named(&name, 2).await?;
    store.put("a", "{}").await?;
    assert_eq!(store.all().await?, [pair("a", "{}")]);
    Ok(())
}

#[wasm_bindgen_test]
async fn browser_that_gives_no_answer_is_not_waited_for() -> Result<(), Box<dyn std::error::Error>> {
    let name = ids::fresh();
    let holding = Database::open(name.clone()).with_version(1_u32).await?;
    // The deletion waits for the one above, and whoever opens waits for the deletion, without a word from the browser.
    let deletion = Database::delete_by_name(&name)?;
    assert_eq!(IndexedDb::open_named(&name, 1).await.err(), Some(Fault::Blocked));
    holding.close();
    deletion.await?;
    let store = IndexedDb::open_named(&name, 1).await?;
    store.put("a", "{}").await?;
    assert_eq!(store.all().await?, [pair("a", "{}")]);
    Ok(())
}

#[wasm_bindgen_test]
async fn connection_cut_without_a_word_is_made_anew() -> Result<(), Box<dyn std::error::Error>> {
    const CUT_ONCE: &str = "const before = IDBDatabase.prototype.transaction;
        IDBDatabase.prototype.transaction = () => {
            IDBDatabase.prototype.transaction = before;
            throw new DOMException('the connection is closing', 'InvalidStateError');
        };";
    let store = opened().await?;
    js_sys::eval(CUT_ONCE).map_err(|error| format!("{error:?}"))?;
    store.put("a", "{}").await?;
    js_sys::eval(CUT_ONCE).map_err(|error| format!("{error:?}"))?;
    assert_eq!(store.all().await?, [pair("a", "{}")]);
    Ok(())
}

#[wasm_bindgen_test]
async fn forbidden_storage_is_denied() -> Result<(), JsValue> {
    let window = web_sys::window().ok_or(JsValue::NULL)?;
    let stand_in = StandIn::new(&window, "indexedDB", "throw new DOMException('no', 'SecurityError')")?;
    assert_eq!(opened().await.err(), Some(Fault::Denied));
    drop(stand_in);
    assert!(opened().await.is_ok());
    Ok(())
}

/// A store with one record, for faults that a test page cannot bring about.
async fn with_one_record() -> Result<IndexedDb, JsValue> {
    let store = opened().await.map_err(|fault| fault.to_string())?;
    store.put("a", "before").await.map_err(|fault| fault.to_string())?;
    Ok(store)
}

async fn is_as_before(store: &IndexedDb) {
    assert_eq!(store.all().await, Ok(vec![pair("a", "before")]));
    assert_eq!(store.photo(SHA256).await, Ok(None));
}

#[wasm_bindgen_test]
async fn record_without_room_takes_its_photo_back() -> Result<(), JsValue> {
    let store = with_one_record().await?;
    let prototype = js_sys::eval("IDBObjectStore.prototype")?.into();
    let getter = "return function (value, key) {
        if (this.name === 'examinations') throw new DOMException('no room', 'QuotaExceededError');
        return this.add(value, key);
    }";
    let stand_in = StandIn::new(&prototype, "put", getter)?;
    let put = store.put_with_photo("a", "after", SHA256, "image/jpeg", &bytes()).await;
    drop(stand_in);
    assert_eq!(put, Err(Fault::Full));
    is_as_before(&store).await;
    Ok(())
}

#[wasm_bindgen_test]
async fn commit_that_the_browser_gives_up_is_no_success() -> Result<(), JsValue> {
    let store = with_one_record().await?;
    let prototype = js_sys::eval("IDBTransaction.prototype")?.into();
    let navigator = web_sys::window().ok_or(JsValue::NULL)?.navigator();
    for (estimate, is_full) in [("{ quota: 1e10, usage: 0 }", false), ("{ quota: 1e10, usage: 9.99e9 }", true)] {
        let giving_up = StandIn::new(&prototype, "commit", "return function () { this.abort() }")?;
        let getter = format!(
            "const storage = Object.create(StorageManager.prototype);
             storage.estimate = async () => ({estimate});
             return storage"
        );
        let room = StandIn::new(&navigator, "storage", &getter)?;
        let put = store.put_with_photo("a", "after", SHA256, "image/jpeg", &bytes()).await;
        drop((giving_up, room));
        match put {
            Err(Fault::Full) => assert!(is_full, "{estimate}"),
            Err(Fault::Other(_)) => assert!(!is_full, "{estimate}"),
            other => assert_eq!(other, Err(Fault::Full), "{estimate}"),
        }
        is_as_before(&store).await;
    }
    Ok(())
}
