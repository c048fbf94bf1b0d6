//! The release build: the files that a host serves.

use std::path::{Path, PathBuf};

use crate::{
    Trouble,
    setup::Piece,
    shell::{Shell, run},
    stamp::files,
};

/// What a release build needs.
pub const PIECES: [Piece; 4] = [Piece::Toolchain, Piece::Trunk, Piece::WasmBindgen, Piece::WasmOpt];

/// Builds the app and says in which folder the files are.
///
/// The folder is not Trunk's usual one, which a `trunk serve` may be writing to at the same time.
///
/// # Errors
/// When the app does not build.
pub fn build(shell: &Shell) -> Result<PathBuf, Trouble> {
    let folder = shell.root().join("target/site");
    // Trunk is told to stay offline, as all its tools are there; what the app depends on must be there, too.
    run(shell.program("cargo").args(["fetch", "--quiet"]))?;
    run(shell
        .program("trunk")
        .args(["build", "--release", "--offline", "--dist"])
        .arg(&folder)
        // Trunk takes "1" for a mistake.
        .env_remove("NO_COLOR"))?;
    Ok(folder)
}

/// Puts a compressed form beside every file that gets smaller by it.
///
/// # Errors
/// When a file cannot be compressed.
pub fn compress(shell: &Shell, folder: &Path) -> Result<(), Trouble> {
    let texts = ["css", "html", "js", "json", "svg", "txt", "wasm", "webmanifest"];
    let is_text = |file: &&String| texts.iter().any(|text| file.ends_with(&format!(".{text}")));
    let found = files(folder)?;
    let found = found.iter().filter(is_text).map(|file| folder.join(file));
    run(shell.program("brotli").args(["--quality=11", "--keep", "--force", "--suffix=.br"]).args(found))
}
