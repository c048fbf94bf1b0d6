//! What goes out of the store into files and archives, and what comes in by them. The app's first program has no part in it.

use leptos::prelude::*;

use super::Samples;
use crate::record::{self, Photo, Record};
use crate::screens::platform::tabs;
use crate::store::{self, Store};

impl Samples {
    /// Every sample as it is now.
    pub fn all_untracked(self) -> Vec<Record> {
        self.records.get_untracked()
    }

    /// Keeps what a file carried: the photos first, so that no record is kept without them.
    ///
    /// # Errors
    /// When it could not be kept; what was kept of its photos harms nothing.
    pub async fn keep_carried(self, carried: record::Carried) -> Result<(), store::Fault> {
        let record::Carried { record, photos } = carried;
        for photo in &photos {
            self.keep_photo(photo).await?;
        }
        self.keep_record(&record).await?;
        self.show(&record);
        tabs::tell_change();
        Ok(())
    }

    /// Keeps a photo that came in.
    ///
    /// # Errors
    /// When it could not be kept.
    pub async fn keep_photo(self, photo: &record::CarriedPhoto) -> Result<(), store::Fault> {
        self.database().await?.put_photo(&photo.sha256, &photo.media_type, &photo.bytes).await
    }

    /// Keeps a record that came in. No window shows it before it [reads again](Self::read_again).
    ///
    /// # Errors
    /// When it could not be kept.
    pub async fn keep_record(self, record: &Record) -> Result<(), store::Fault> {
        self.database().await?.put(&record.id, &record::write(record)).await
    }

    /// Reads everything again after much came in, in all windows.
    pub async fn read_again(self) {
        self.load().await;
        tabs::tell_change();
    }

    /// The bytes of a record's photos, for the file. One whose bytes are not those that were taken is told and left out.
    pub async fn photo_bytes(self, record: &Record) -> Vec<(String, Vec<u8>)> {
        let mut photos = Vec::new();
        for photo in &record.photos {
            match self.photo(photo).await {
                Ok(Some(bytes)) => photos.push((photo.sha256.clone(), bytes)),
                Ok(None) => {}
                Err(fault) => self.tell_fault(&fault),
            }
        }
        photos
    }

    /// The bytes of one photo; one that is gone or damaged is told.
    pub async fn photo_or_tell(self, photo: &Photo) -> Option<Vec<u8>> {
        match self.photo(photo).await {
            Ok(bytes) => bytes,
            Err(fault) => {
                self.tell_fault(&fault);
                None
            }
        }
    }

    async fn photo(self, photo: &Photo) -> Result<Option<Vec<u8>>, store::Fault> {
        match self.database().await?.photo(&photo.sha256).await? {
            Some((_, bytes)) if !photo.is_of(&bytes) => Err(store::Fault::Damaged),
            kept => Ok(kept.map(|(_, bytes)| bytes)),
        }
    }
}
