//! What stays of a phone when its browser is gone.

use std::{
    fs, io,
    path::{Path, PathBuf},
};

use anyhow::{Context as _, Result};

/// The folders of one phone: what its browser keeps, and what was downloaded.
#[derive(Clone, Debug)]
pub struct Storage {
    story: String,
    folder: PathBuf,
}

impl Storage {
    /// The storage of a new phone, all empty, for the story of this name.
    ///
    /// # Errors
    /// When the folders cannot be made.
    pub fn fresh(story: &str) -> Result<Self> {
        let storage = Self { story: story.to_owned(), folder: root().join("phones").join(story) };
        for folder in [&storage.folder, &storage.shots()] {
            if folder.exists() {
                fs::remove_dir_all(folder).context("an earlier phone cannot be cleared away")?;
            }
            fs::create_dir_all(folder)?;
        }
        fs::create_dir_all(storage.profile())?;
        fs::create_dir_all(storage.downloads())?;
        Ok(storage)
    }

    /// Where the browser keeps what it knows.
    pub fn profile(&self) -> PathBuf {
        self.folder.join("profile")
    }

    /// Where downloaded files end up.
    pub fn downloads(&self) -> PathBuf {
        self.folder.join("downloads")
    }

    /// A folder of this name for the story's own use.
    ///
    /// # Errors
    /// When it cannot be made.
    pub fn folder(&self, name: &str) -> io::Result<PathBuf> {
        let folder = self.folder.join(name);
        fs::create_dir_all(&folder)?;
        Ok(folder)
    }

    /// Where pictures of the screen end up.
    pub fn shots(&self) -> PathBuf {
        root().join("shots").join(&self.story)
    }
}

/// The stories' part of the folder for built things, without `..` in it, as the browser wants it.
fn root() -> PathBuf {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).ancestors().nth(2).unwrap_or(Path::new("."));
    root.join("target/e2e")
}
