//! Where records, photos and what is half typed are kept on this device.
//!
//! A store holds the JSON of a record as it was given: it reads no field of it, and it throws nothing away that it cannot read.

#[cfg(feature = "app")]
mod connection;
mod draft;
#[cfg(feature = "app")]
mod indexed_db;
mod memory;
#[cfg(feature = "app")]
pub mod settings;

pub use draft::Draft;
#[cfg(feature = "app")]
pub use indexed_db::IndexedDb;
pub use memory::Memory;

/// What keeps records by id and photos by the SHA-256 of their bytes.
///
/// A write that returns `Ok` is on the device: the browser has finished its transaction.
#[expect(async_fn_in_trait, reason = "a browser has one thread: no caller needs the futures to be Send")]
pub trait Store {
    /// Id and JSON of every record, in the order of the ids.
    ///
    /// # Errors
    /// When the store cannot be read.
    async fn all(&self) -> Result<Vec<(String, String)>, Fault>;

    /// The JSON of one record, or `None` where there is none.
    ///
    /// # Errors
    /// When the store cannot be read.
    async fn get(&self, id: &str) -> Result<Option<String>, Fault>;

    /// Keeps a record, in the place of the one with its id.
    ///
    /// # Errors
    /// When it could not be kept; the one before is still there.
    async fn put(&self, id: &str, json: &str) -> Result<(), Fault>;

    /// Takes a record away; photos stay. It is no fault if there is none.
    ///
    /// # Errors
    /// When it could not be taken away; it is still there.
    async fn delete(&self, id: &str) -> Result<(), Fault>;

    /// Keeps the bytes of a photo.
    ///
    /// # Errors
    /// When they could not be kept.
    async fn put_photo(&self, sha256: &str, media_type: &str, bytes: &[u8]) -> Result<(), Fault>;

    /// The media type and the bytes of a photo, or `None` where there is none.
    ///
    /// # Errors
    /// When the store cannot be read, or [`Fault::Damaged`] when what is kept is no photo.
    async fn photo(&self, sha256: &str) -> Result<Option<(String, Vec<u8>)>, Fault>;

    /// Takes a photo away. It is no fault if there is none.
    ///
    /// # Errors
    /// When it could not be taken away; it is still there.
    async fn delete_photo(&self, sha256: &str) -> Result<(), Fault>;

    /// What was typed and not put down yet: where it was typed, and what.
    ///
    /// # Errors
    /// When the store cannot be read.
    async fn drafts(&self) -> Result<Vec<(String, String)>, Fault>;

    /// Keeps what is being typed somewhere, in the place of what was typed there before.
    ///
    /// # Errors
    /// When it could not be kept.
    async fn put_draft(&self, at: &str, typed: &str) -> Result<(), Fault>;

    /// Forgets what was typed somewhere. It is no fault if there is nothing.
    ///
    /// # Errors
    /// When it could not be taken away.
    async fn delete_draft(&self, at: &str) -> Result<(), Fault>;

    /// Keeps a record and a photo of it: both, or neither.
    ///
    /// # Errors
    /// When they could not be kept; the store is as it was before.
    async fn put_with_photo(
        &self,
        id: &str,
        json: &str,
        sha256: &str,
        media_type: &str,
        bytes: &[u8],
    ) -> Result<(), Fault>;
}

/// Why the store could not do what it was asked.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum Fault {
    /// The browser forbids storage, as some private windows do.
    #[error("the browser allows no storage here")]
    Denied,
    /// There is no room left on the device.
    #[error("there is no room left for the app on this device")]
    Full,
    /// The browser cannot read back what it kept.
    #[error("what is kept on this device cannot be read")]
    Damaged,
    /// A newer edition of the app has changed how records are kept.
    #[error("what is kept on this device belongs to a newer edition of the app")]
    Newer,
    /// The store does not open: an older edition of the app in another window holds it, or the browser gives no answer.
    #[error("another window of the app holds what is kept on this device, or the browser is stuck")]
    Blocked,
    /// Anything else, in the browser's words.
    #[error("the browser’s storage failed: {0}")]
    Other(String),
}
