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

use super::connection::{Connection, DRAFTS, EXAMINATIONS, PHOTOS, fault_of_exception, is_cut};
use super::{Fault, Store};

/// The name of the app's database.
const NAME: &str = "plugwary";
/// The version of its shape.
const VERSION: u32 = 2;
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

    /// Does work that may be done twice: once more on a new connection, where the first turns out to be cut.
    async fn run<T>(&self, work: impl AsyncFn(&Database) -> Result<T, Error>) -> Result<T, Fault> {
        let done = match work(&self.database().await?).await {
            Err(error) if is_cut(&error) => {
                self.connection.borrow().give_up();
                work(&self.database().await?).await
            }
            done => done,
        };
        done.map_err(fault_of)
    }

    async fn read<T>(&self, store: &str, read: impl AsyncFn(&Transaction<'_>) -> Result<T, Error>) -> Result<T, Fault> {
        self.run(async |database: &Database| {
            read(&database.transaction(store).with_mode(TransactionMode::Readonly).build()?).await
        })
        .await
    }

    /// Key and text of everything in an object store, in the order of the keys.
    async fn texts(&self, store: &str) -> Result<Vec<(String, String)>, Fault> {
        self.read(store, async |transaction| {
            let store = transaction.object_store(store)?;
            let keys: Vec<JsValue> = store.get_all_keys::<JsValue>().primitive()?.await?.collect::<Result<_, _>>()?;
            let kept: Vec<JsValue> = store.get_all::<JsValue>().primitive()?.await?.collect::<Result<_, _>>()?;
            Ok(keys.iter().map(text).zip(kept.iter().map(text)).collect())
        })
        .await
    }

    async fn put_in(&self, store: &str, key: &str, value: &JsValue) -> Result<(), Fault> {
        self.write(&[store], async |transaction| put(transaction, store, key, value).await).await
    }

    async fn delete_in(&self, store: &str, key: &str) -> Result<(), Fault> {
        self.write(&[store], async |transaction| transaction.object_store(store)?.delete(key).primitive()?.await).await
    }

    async fn write(
        &self,
        stores: &[&str],
        write: impl AsyncFn(&Transaction<'_>) -> Result<(), Error>,
    ) -> Result<(), Fault> {
        let written = self.run(async |database: &Database| {
            let mut strict = TransactionOptions::new();
            strict.set_durability(TransactionDurability::Strict);
            let transaction =
                database.transaction(stores).with_mode(TransactionMode::Readwrite).with_options(strict).build()?;
            // The commit consumes the transaction, but only the transaction knows why the browser gave it up.
            let witness: web_sys::IdbTransaction = transaction.as_sys().clone().unchecked_into();
            let written = match write(&transaction).await {
                Ok(()) => transaction.commit().await,
                Err(error) => Err(error),
            };
            written.map_err(|error| witness.error().map_or(error, Error::from))
        });
        match written.await {
            Err(Fault::Other(_)) if is_nearly_full().await => Err(Fault::Full),
            result => result,
        }
    }
}

impl Store for IndexedDb {
    async fn all(&self) -> Result<Vec<(String, String)>, Fault> {
        self.texts(EXAMINATIONS).await
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
        self.put_in(EXAMINATIONS, id, &json.into()).await
    }

    async fn delete(&self, id: &str) -> Result<(), Fault> {
        self.delete_in(EXAMINATIONS, id).await
    }

    async fn put_photo(&self, sha256: &str, media_type: &str, bytes: &[u8]) -> Result<(), Fault> {
        self.put_in(PHOTOS, sha256, &photo_to_js(media_type, bytes)).await
    }

    async fn photo(&self, sha256: &str) -> Result<Option<(String, Vec<u8>)>, Fault> {
        let kept: Option<JsValue> = self
            .read(PHOTOS, async |transaction| transaction.object_store(PHOTOS)?.get(sha256).primitive()?.await)
            .await?;
        kept.map(|kept| photo_from_js(&kept).ok_or(Fault::Damaged)).transpose()
    }

    async fn delete_photo(&self, sha256: &str) -> Result<(), Fault> {
        self.delete_in(PHOTOS, sha256).await
    }

    async fn drafts(&self) -> Result<Vec<(String, String)>, Fault> {
        self.texts(DRAFTS).await
    }

    async fn put_draft(&self, at: &str, typed: &str) -> Result<(), Fault> {
        self.put_in(DRAFTS, at, &typed.into()).await
    }

    async fn delete_draft(&self, at: &str) -> Result<(), Fault> {
        self.delete_in(DRAFTS, at).await
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

/// The fault that an error stands for.
fn fault_of(error: Error) -> Fault {
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
