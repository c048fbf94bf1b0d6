//! The host of the app, as far as the stories are concerned.

use std::{
    env, fs,
    path::{Path, PathBuf},
};

use anyhow::{Context as _, Error, Result, ensure};
use xtask::{
    server::Server,
    site::Site,
    stamp::{files, stamp},
};

/// A host of the built app on a port of its own.
///
/// # Errors
/// When there is no built app, or no port.
pub fn host() -> Result<Server> {
    Ok(Server::start(Site::new(app()?), 0)?)
}

/// A copy of the built app, to be changed by a story into another build of it.
pub struct Build(PathBuf);

impl Build {
    /// Copies the built app into this folder, as it was before it was stamped.
    ///
    /// # Errors
    /// When there is no built app, or it cannot be copied.
    pub fn copy(folder: PathBuf) -> Result<Self> {
        let app = app()?;
        for file in files(&app).map_err(Error::msg)? {
            let target = folder.join(&file);
            // The compressed forms would not follow a change.
            if target.extension().is_none_or(|end| end != "br") {
                fs::create_dir_all(target.parent().unwrap_or(&folder))?;
                fs::copy(app.join(&file), target)?;
            }
        }
        let build = Self(folder);
        build.change("index.html", &meta(&build.version()?), &meta("development"))?;
        fs::copy(Path::new(env!("CARGO_MANIFEST_DIR")).join("../../public/sw.js"), build.0.join("sw.js"))?;
        Ok(build)
    }

    /// Replaces text in a file.
    ///
    /// # Errors
    /// When the file does not contain it.
    pub fn change(&self, file: &str, from: &str, to: &str) -> Result<()> {
        let path = self.0.join(file);
        let text = fs::read_to_string(&path)?;
        ensure!(text.contains(from), "{file} does not contain {from}");
        Ok(fs::write(path, text.replace(from, to))?)
    }

    /// Finishes the build, and gives its version.
    ///
    /// # Errors
    /// When it cannot be stamped.
    pub fn stamp(&self) -> Result<String> {
        stamp(&self.0).map_err(Error::msg)?;
        self.version()
    }

    fn version(&self) -> Result<String> {
        let worker = fs::read_to_string(self.0.join("sw.js"))?;
        let version = worker.split("const BUILD = '").nth(1).and_then(|rest| rest.split('\'').next());
        version.map(str::to_owned).context("the worker has no version")
    }

    /// The build, ready to be hosted.
    pub fn site(&self) -> Site {
        Site::new(&self.0)
    }
}

fn meta(version: &str) -> String {
    format!(r#"<meta name="plugwary-build" content="{version}">"#)
}

fn app() -> Result<PathBuf> {
    let folder = env::var_os("PLUGWARY_DIST").context("PLUGWARY_DIST is not set; run `cargo verify e2e`")?;
    Ok(folder.into())
}
