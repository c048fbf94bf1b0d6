//! Stories of two windows: one hears that the other has changed what is kept, and loses nothing by it.

use anyhow::Result;
use e2e::{Phone, host};

use crate::answers::SOUND_BY_EYE;
use crate::walker::{RUNNING, Walker};

/// From now on the store takes nothing, as when a phone has no room left; `window.thereIsRoom` ends it.
const NO_ROOM: &str = "(() => { const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = () => { throw new DOMException('no room', 'QuotaExceededError') };
    window.thereIsRoom = () => { IDBObjectStore.prototype.put = put }; return true })()";
/// Whether the page lets somebody leave without asking.
const MAY_LEAVE: &str = "window.dispatchEvent(new Event('beforeunload', { cancelable: true }))";
/// What another window says when it has changed what is kept.
const TELL_CHANGE: &str = "new BroadcastChannel('plugwary').postMessage('changed') === undefined";

#[tokio::test]
async fn answer_that_could_not_be_saved_is_not_overtaken_by_what_is_stored() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("no-room").await?;
    let mut buyer = Walker::new(&phone, &[SOUND_BY_EYE]);
    buyer.begin(&host.origin(), "eyes").await?;
    buyer.walk_to("pins-and-sleeves").await?;
    let stored = phone.texts(".sentence").await?.len();
    assert_eq!(phone.eval(NO_ROOM).await?, true);
    buyer.walk_to("plug-print").await?;
    phone.wait_for_text(".notice", "Not saved: there is no room left").await?;
    let said = phone.texts(".sentence").await?;
    assert!(said.len() > stored);
    phone.screenshot("no-room").await?;
    assert_eq!(phone.eval(MAY_LEAVE).await?, false, "what is unsaved would be lost without a word");

    assert_eq!(phone.eval(TELL_CHANGE).await?, true);
    tokio::time::sleep(std::time::Duration::from_millis(500)).await;
    assert_eq!(phone.texts(".sentence").await?, said, "what is stored has overtaken what was answered");

    phone.eval("window.thereIsRoom() === undefined").await?;
    buyer.walk_to("socket-holes").await?;
    let said = phone.texts(".sentence").await?;
    phone.wait_until(MAY_LEAVE).await?;
    tokio::time::sleep(std::time::Duration::from_millis(500)).await;
    phone.reload().await?;
    phone.wait_until(RUNNING).await?;
    phone.wait_for(".asked[data-question=socket-holes]").await?;
    assert_eq!(phone.texts(".sentence").await?, said, "the next answer saves what was not saved before");
    Ok(())
}
