//! Folders for tests to write in.

use std::{
    fs,
    path::{Path, PathBuf},
};

/// An empty folder of this name, below the folder for built things.
pub fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../target/xtask-tests").join(name);
    if folder.exists() {
        fs::remove_dir_all(&folder).unwrap();
    }
    fs::create_dir_all(&folder).unwrap();
    folder
}
