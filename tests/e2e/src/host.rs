//! The host of the app, as far as the stories are concerned.

use std::{
    env, fs,
    path::{Path, PathBuf},
};

use anyhow::{Context as _, Result};
use xtask::{server::Server, site::Site, stamp::files};

/// A host of the built app on a port of its own.
///
/// # Errors
/// When there is no built app, or no port.
pub fn host() -> Result<Server> {
    Ok(Server::start(Site::new(app()?), 0)?)
}

/// A copy of the built app that a story may change, without the compressed forms of the files.
///
/// # Errors
/// When there is no built app, or it cannot be copied.
pub fn copy_of_app(to: &Path) -> Result<()> {
    let app = app()?;
    for file in files(&app)
        .map_err(anyhow::Error::msg)?
        .iter()
        .filter(|file| Path::new(file).extension().is_none_or(|end| end != "br"))
    {
        let target = to.join(file);
        fs::create_dir_all(target.parent().unwrap_or(to))?;
        fs::copy(app.join(file), target)?;
    }
    Ok(())
}

fn app() -> Result<PathBuf> {
    let folder =
        env::var_os("PLUGWARY_DIST").context("PLUGWARY_DIST is not set; run `cargo verify e2e`")?;
    Ok(folder.into())
}
