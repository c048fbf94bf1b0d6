//! A store that forgets everything when it is dropped: for tests, and as the plainest example of one.

use std::cell::RefCell;
use std::collections::BTreeMap;

use super::{Fault, Store};

/// A store in memory.
#[derive(Debug, Default)]
pub struct Memory {
    records: RefCell<BTreeMap<String, String>>,
    drafts: RefCell<BTreeMap<String, String>>,
    photos: RefCell<BTreeMap<String, (String, Vec<u8>)>>,
}

impl Store for Memory {
    async fn all(&self) -> Result<Vec<(String, String)>, Fault> {
        Ok(self.records.borrow().clone().into_iter().collect())
    }

    async fn get(&self, id: &str) -> Result<Option<String>, Fault> {
        Ok(self.records.borrow().get(id).cloned())
    }

    async fn put(&self, id: &str, json: &str) -> Result<(), Fault> {
        self.records.borrow_mut().insert(id.to_owned(), json.to_owned());
        Ok(())
    }

    async fn delete(&self, id: &str) -> Result<(), Fault> {
        self.records.borrow_mut().remove(id);
        Ok(())
    }

    async fn put_photo(&self, sha256: &str, media_type: &str, bytes: &[u8]) -> Result<(), Fault> {
        self.photos.borrow_mut().insert(sha256.to_owned(), (media_type.to_owned(), bytes.to_vec()));
        Ok(())
    }

    async fn photo(&self, sha256: &str) -> Result<Option<(String, Vec<u8>)>, Fault> {
        Ok(self.photos.borrow().get(sha256).cloned())
    }

    async fn delete_photo(&self, sha256: &str) -> Result<(), Fault> {
        self.photos.borrow_mut().remove(sha256);
        Ok(())
    }

    async fn drafts(&self) -> Result<Vec<(String, String)>, Fault> {
        Ok(self.drafts.borrow().clone().into_iter().collect())
    }

    async fn put_draft(&self, at: &str, typed: &str) -> Result<(), Fault> {
        self.drafts.borrow_mut().insert(at.to_owned(), typed.to_owned());
        Ok(())
    }

    async fn delete_draft(&self, at: &str) -> Result<(), Fault> {
        self.drafts.borrow_mut().remove(at);
        Ok(())
    }

    async fn put_with_photo(
        &self,
        id: &str,
        json: &str,
        sha256: &str,
        media_type: &str,
        bytes: &[u8],
    ) -> Result<(), Fault> {
        self.put_photo(sha256, media_type, bytes).await?;
        self.put(id, json).await
    }
}
