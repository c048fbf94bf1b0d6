//! Trunk, wasm-bindgen and wasm-opt in the versions this repository wants, inside its own folder.

use std::{fs, path::Path, process::Command};

use crate::{
    Trouble,
    shell::{Shell, TOOLS, answer, run},
};

const TRUNK: &str = "0.21.14";
/// Older ones do not know all instructions that today's compiler writes.
const OLDEST_WASM_OPT: u32 = 132;
const BINARYEN: &str = "binaryen@132.0.0";

/// Trunk, which puts the built files together.
///
/// # Errors
/// When it cannot be installed.
pub fn trunk(shell: &Shell) -> Result<(), Trouble> {
    if answer(shell.program("trunk").arg("--version")) == Some(format!("trunk {TRUNK}")) {
        return Ok(());
    }
    eprintln!("installing trunk {TRUNK} into {TOOLS} (a few minutes, once)");
    // Only the versions it was released with fit together, so --locked.
    run(cargo_install(shell, "trunk", TRUNK).arg("--locked"))
}

/// wasm-bindgen, in the version that the lock file names, with its runner for tests in a browser.
///
/// # Errors
/// When it cannot be installed.
pub fn wasm_bindgen(shell: &Shell) -> Result<(), Trouble> {
    let version = locked_version(&shell.root().join("Cargo.lock"), "wasm-bindgen")?;
    let is_right = |program: &str| {
        answer(shell.program(program).arg("--version")).is_some_and(|line| line.split(' ').nth(1) == Some(&version))
    };
    if is_right("wasm-bindgen") && is_right("wasm-bindgen-test-runner") {
        return Ok(());
    }
    eprintln!("installing wasm-bindgen {version} into {TOOLS} (a minute or two, once)");
    run(&mut cargo_install(shell, "wasm-bindgen-cli", &version))
}

/// wasm-opt, which makes the program small.
///
/// # Errors
/// When it cannot be installed.
pub fn wasm_opt(shell: &Shell) -> Result<(), Trouble> {
    let line = answer(shell.program("wasm-opt").arg("--version"));
    if line.as_deref().and_then(wasm_opt_version).is_some_and(|version| version >= OLDEST_WASM_OPT) {
        return Ok(());
    }
    let npm = if cfg!(windows) { "npm.cmd" } else { "npm" };
    eprintln!("installing wasm-opt ({BINARYEN}) into {TOOLS}");
    run(shell
        .program(npm)
        .args(["install", "--silent", "--no-save", "--no-audit", "--no-fund", "--ignore-scripts", BINARYEN, "--prefix"])
        .arg(shell.tools()))
}

/// A quick build of a tool: these work for a second or two at a time, so optimising them does not pay.
fn cargo_install(shell: &Shell, name: &str, version: &str) -> Command {
    let mut command = shell.program("cargo");
    command
        .args(["install", "--quiet", "--debug", "--no-default-features", name, "--version", version, "--root"])
        .arg(shell.tools())
        .env("CARGO_TARGET_DIR", shell.tools().join("build"))
        .env("CARGO_PROFILE_DEV_DEBUG", "0");
    command
}

/// Removes what building the tools left behind.
///
/// # Errors
/// When the folder cannot be removed.
pub fn sweep(shell: &Shell) -> Result<(), Trouble> {
    let build = shell.tools().join("build");
    if build.exists() {
        fs::remove_dir_all(&build).map_err(|trouble| format!("cannot remove {}: {trouble}", build.display()))?;
    }
    Ok(())
}

fn wasm_opt_version(line: &str) -> Option<u32> {
    line.strip_prefix("wasm-opt version ")?.split(' ').next()?.parse().ok()
}

fn locked_version(lock: &Path, package: &str) -> Result<String, Trouble> {
    let text = fs::read_to_string(lock).map_err(|trouble| format!("cannot read {}: {trouble}", lock.display()))?;
    version_in_lock(&text, package).ok_or_else(|| format!("no {package} in {}", lock.display()))
}

fn version_in_lock(lock: &str, package: &str) -> Option<String> {
    let name = format!("name = \"{package}\"");
    let mut lines = lock.lines().skip_while(|line| *line != name);
    Some(lines.nth(1)?.strip_prefix("version = \"")?.strip_suffix('"')?.to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn version_is_that_of_the_named_package() {
        let lock = "[[package]]\nname = \"wasm-bindgen-macro\"\nversion = \"1.0.0\"\n\n[[package]]\nname = \"wasm-bindgen\"\nversion = \"0.2.130\"\n";
        assert_eq!(version_in_lock(lock, "wasm-bindgen").as_deref(), Some("0.2.130"));
        assert_eq!(version_in_lock(lock, "bindgen"), None);
    }

    #[test]
    fn wasm_opt_says_its_version_with_or_without_a_tail() {
        assert_eq!(wasm_opt_version("wasm-opt version 132 (version_132)"), Some(132));
        assert_eq!(wasm_opt_version("wasm-opt version 108"), Some(108));
        assert_eq!(wasm_opt_version("something else"), None);
    }
}
