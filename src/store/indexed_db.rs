//! The store of the browser: `IndexedDB`.
//!
//! Photos are kept as `[media type, ArrayBuffer]`, since some browsers refuse blobs. Everything is made ready before a transaction is
//! opened: a transaction that waits for anything else ends by itself.

use std::cell::RefCell;

use indexed_db_futures::database::Database;
use indexed_db_futures::error::Error;
use indexed_db_futures::internals::SystemRepr;
use indexed_db_futures::prelude::*;
use indexed_db_futures::transaction::{Transaction, TransactionDurability, TransactionMode, TransactionOptions};
use js_sys::{Array, ArrayBuffer, Reflect, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

use super::connection::{Connection, EXAMINATIONS, PHOTOS, fault_of_exception};
use super::{Fault, Store};

/// The name of the app's database.
const NAME: &str = "plugwary";
/// The version of its shape.
const VERSION: u32 = 1;
/// A failed write is put down to lack of room when the browser says that less than this is left, in bytes.
const ROOM_TO_WORK: f64 = 16.0 * 1024.0 * 1024.0;

/// A database of the browser.
#[derive(Debug)]
pub struct IndexedDb {
    name: String,
    version: u32,
    connection: RefCell<Connection>,
}

impl IndexedDb {
    /// Opens the app's database.
    ///
    /// # Errors
    /// [`Fault::Denied`] where the browser forbids it, [`Fault::Newer`] where a newer edition has changed its shape,
    /// [`Fault::Blocked`] where an older one holds it, [`Fault::Damaged`] where the browser cannot open what it kept.
    pub async fn open() -> Result<Self, Fault> {
        Self::open_named(NAME, VERSION).await
    }

    /// Opens a database by name and version of its shape, for tests: each wants one of its own.
    ///
    /// # Errors
    /// Those of [`open`](Self::open).
    pub async fn open_named(name: &str, version: u32) -> Result<Self, Fault> {
        let connection = RefCell::new(Connection::open(name, version).await?);
        Ok(Self { name: name.to_owned(), version, connection })
    }

    /// The database, opened again where the browser or a newer edition has closed it.
    async fn database(&self) -> Result<Database, Fault> {
        if self.connection.borrow().is_closed() {
            let reopened = Connection::open(&self.name, self.version).await?;
            // Another caller may have been quicker, and its transaction must not be cut off.
            if self.connection.borrow().is_closed() {
                self.connection.replace(reopened);
            }
        }
        Ok(self.connection.borrow().database())
    }

    async fn read<T>(
        &self,
        store: &str,
        read: impl AsyncFnOnce(&Transaction<'_>) -> Result<T, Error>,
    ) -> Result<T, Fault> {
        let database = self.database().await?;
        let transaction = database
            .transaction(store)
            .with_mode(TransactionMode::Readonly)
            .build()
            .map_err(|error| fault_of(error, None))?;
        read(&transaction).await.map_err(|error| fault_of(error, None))
    }

    async fn write(
        &self,
        stores: &[&str],
        write: impl AsyncFnOnce(&Transaction<'_>) -> Result<(), Error>,
    ) -> Result<(), Fault> {
        let database = self.database().await?;
        let mut strict = TransactionOptions::new();
        strict.set_durability(TransactionDurability::Strict);
        let transaction = database
            .transaction(stores)
            .with_mode(TransactionMode::Readwrite)
            .with_options(strict)
            .build()
            .map_err(|error| fault_of(error, None))?;
        // The commit consumes the transaction, but only the transaction knows why the browser gave it up.
        let witness: web_sys::IdbTransaction = transaction.as_sys().clone().unchecked_into();
        let written = match write(&transaction).await {
            Ok(()) => transaction.commit().await,
            Err(error) => Err(error),
        };
        match written.map_err(|error| fault_of(error, witness.error())) {
            Err(Fault::Other(_)) if is_nearly_full().await => Err(Fault::Full),
            result => result,
        }
    }
}

impl Store for IndexedDb {
    async fn all(&self) -> Result<Vec<String>, Fault> {
        self.read(EXAMINATIONS, async |transaction| {
            let store = transaction.object_store(EXAMINATIONS)?;
            store.get_all::<JsValue>().primitive()?.await?.map(|kept| Ok(text(&kept?))).collect()
        })
        .await
    }

    async fn get(&self, id: &str) -> Result<Option<String>, Fault> {
        self.read(EXAMINATIONS, async |transaction| {
            let store = transaction.object_store(EXAMINATIONS)?;
            let kept: Option<JsValue> = store.get(id).primitive()?.await?;
            Ok(kept.as_ref().map(text))
        })
        .await
    }

    async fn put(&self, id: &str, json: &str) -> Result<(), Fault> {
        self.write(&[EXAMINATIONS], async |transaction| put(transaction, EXAMINATIONS, id, &json.into()).await).await
    }

    async fn delete(&self, id: &str) -> Result<(), Fault> {
        self.write(&[EXAMINATIONS], async |transaction| {
            transaction.object_store(EXAMINATIONS)?.delete(id).primitive()?.await
        })
        .await
    }

    async fn put_photo(&self, sha256: &str, media_type: &str, bytes: &[u8]) -> Result<(), Fault> {
        let photo = photo_to_js(media_type, bytes);
        self.write(&[PHOTOS], async |transaction| put(transaction, PHOTOS, sha256, &photo).await).await
    }

    async fn photo(&self, sha256: &str) -> Result<Option<(String, Vec<u8>)>, Fault> {
        let kept: Option<JsValue> = self
            .read(PHOTOS, async |transaction| transaction.object_store(PHOTOS)?.get(sha256).primitive()?.await)
            .await?;
        kept.map(|kept| photo_from_js(&kept).ok_or(Fault::Damaged)).transpose()
    }

    async fn delete_photo(&self, sha256: &str) -> Result<(), Fault> {
        self.write(&[PHOTOS], async |transaction| transaction.object_store(PHOTOS)?.delete(sha256).primitive()?.await)
            .await
    }

    async fn put_with_photo(
        &self,
        id: &str,
        json: &str,
        sha256: &str,
        media_type: &str,
        bytes: &[u8],
    ) -> Result<(), Fault> {
        let photo = photo_to_js(media_type, bytes);
        self.write(&[EXAMINATIONS, PHOTOS], async |transaction| {
            put(transaction, PHOTOS, sha256, &photo).await?;
            put(transaction, EXAMINATIONS, id, &json.into()).await
        })
        .await
    }
}

async fn put(transaction: &Transaction<'_>, store: &str, key: &str, value: &JsValue) -> Result<(), Error> {
    transaction.object_store(store)?.put(value).with_key(key).primitive()?.await.map(drop)
}

/// A record's text as it is kept. What is no text is shown as JSON, so that its reader can say that it is damaged.
fn text(kept: &JsValue) -> String {
    kept.as_string()
        .or_else(|| js_sys::JSON::stringify(kept).ok().and_then(|json| json.as_string()))
        .unwrap_or_default()
}

fn photo_to_js(media_type: &str, bytes: &[u8]) -> JsValue {
    Array::of2(&media_type.into(), &Uint8Array::from(bytes).buffer()).into()
}

fn photo_from_js(kept: &JsValue) -> Option<(String, Vec<u8>)> {
    let pair = kept.dyn_ref::<Array>()?;
    let bytes = pair.get(1).dyn_into::<ArrayBuffer>().ok()?;
    Some((pair.get(0).as_string()?, Uint8Array::new(&bytes).to_vec()))
}

/// The fault that an error stands for; the transaction knows better than the error why it was given up.
fn fault_of(error: Error, given_up_for: Option<web_sys::DomException>) -> Fault {
    if let Some(exception) = given_up_for {
        return fault_of_exception(&exception);
    }
    match error {
        Error::DomException(exception) => fault_of_exception(&exception.into()),
        Error::Serialisation(_) => Fault::Damaged,
        other @ (Error::MissingData(_) | Error::Unknown(_)) => Fault::Other(other.to_string()),
    }
}

/// Whether the browser says that hardly any room is left; `false` where it does not say.
async fn is_nearly_full() -> bool {
    let left = async {
        let storage = Reflect::get(&web_sys::window()?.navigator(), &"storage".into()).ok()?;
        let estimate = storage.dyn_into::<web_sys::StorageManager>().ok()?.estimate().ok()?;
        let estimate = JsFuture::from(estimate).await.ok()?;
        let number = |name: &str| Reflect::get(&estimate, &name.into()).ok()?.as_f64();
        Some(number("quota")? - number("usage")?)
    };
    left.await.is_some_and(|left| left < ROOM_TO_WORK)
}
