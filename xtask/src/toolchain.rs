//! Finds or makes a Rust toolchain that can compile for the browser.
//!
//! An ordinary developer's toolchain has the wasm32 standard library, and nothing is done. A Debian
//! machine that reaches package registries only cannot download it; there Debian's own compiler
//! builds its standard library once, from Debian's source package. Nothing here downloads a toolchain.

use std::{env, fs, io, path::Path};

use crate::{
    Trouble,
    debian::Debian,
    shell::{Shell, answer, run},
};

const TARGET: &str = "wasm32-unknown-unknown";
/// The name under which rustup knows Debian's compiler.
const LINKED: &str = "debian-web";
const PACKAGES: [&str; 7] =
    ["rustc-web", "cargo-web", "rust-web-src", "rust-web-llvm", "lld-22", "rust-web-clippy", "rustfmt-web"];
const DEBIAN_ROOT: &str = "/usr";

/// The rustup toolchain to use for everything; nothing means the active one.
///
/// # Errors
/// When this machine cannot compile for the browser; the text says what to run.
pub fn prepare(shell: &Shell, debian: &Debian) -> Result<Option<&'static str>, Trouble> {
    let active = answer(shell.program("rustc").args(["--print", "sysroot"]));
    let active = active.as_deref().map(Path::new);
    if active.is_some_and(|root| root != Path::new(DEBIAN_ROOT) && has_target(root)) {
        return Ok(None);
    }
    prepare_debian(shell, debian).map_err(|trouble| {
        format!(
            "this toolchain cannot compile for the browser: it has no {TARGET} standard library ({trouble}).\n\
             On an ordinary machine run: rustup target add {TARGET}"
        )
    })?;
    Ok((active != Some(Path::new(DEBIAN_ROOT))).then_some(LINKED))
}

fn prepare_debian(shell: &Shell, debian: &Debian) -> Result<(), Trouble> {
    debian.install(shell, &PACKAGES)?;
    let compiler = answer(shell.program("/usr/bin/rustc").arg("--version"))
        .ok_or_else(|| "/usr/bin/rustc does not answer".to_owned())?;
    let target = Path::new(DEBIAN_ROOT).join("lib/rustlib").join(TARGET);
    // The standard library fits the one compiler that made it; Debian may have brought a newer one since.
    let label = target.join("built-by");
    if !has_target(Path::new(DEBIAN_ROOT))
        || fs::read_to_string(&label).ok().as_deref().map(str::trim) != Some(&compiler)
    {
        eprintln!("building the {TARGET} standard library with {compiler} (about half a minute, once)");
        build_std(shell, &target.join("lib"))?;
        fs::write(&label, &compiler).map_err(|trouble| format!("cannot write {}: {trouble}", label.display()))?;
    }
    let is_linked = answer(shell.program("rustc").arg("--version").env("RUSTUP_TOOLCHAIN", LINKED)).is_some();
    if !is_linked && shell.find("rustup").is_some() {
        eprintln!("making Debian's compiler known to rustup as {LINKED}");
        run(shell.program("rustup").args(["toolchain", "link", LINKED, DEBIAN_ROOT]))?;
    }
    Ok(())
}

fn has_target(root: &Path) -> bool {
    fs::read_dir(root.join("lib/rustlib").join(TARGET).join("lib"))
        .is_ok_and(|files| files.flatten().any(|file| file.file_name().to_string_lossy().starts_with("libcore-")))
}

fn build_std(shell: &Shell, destination: &Path) -> Result<(), Trouble> {
    // Outside the repository, so that neither its settings nor its toolchain file have a say.
    let work = env::temp_dir().join(format!("plugwary-std-{}", std::process::id()));
    let outcome = build_std_in(shell, &work, destination);
    fs::remove_dir_all(&work).map_err(|trouble| format!("cannot remove {}: {trouble}", work.display()))?;
    outcome
}

fn build_std_in(shell: &Shell, work: &Path, destination: &Path) -> Result<(), Trouble> {
    let manifest = "[package]\nname = \"nothing\"\nversion = \"0.0.0\"\nedition = \"2021\"\n[lib]\npath = \"nothing.rs\"\n[workspace]\n";
    fs::create_dir_all(work)
        .and_then(|()| fs::write(work.join("Cargo.toml"), manifest))
        .and_then(|()| fs::write(work.join("nothing.rs"), ""))
        .map_err(|trouble| format!("cannot write {}: {trouble}", work.display()))?;
    run(shell
        .program("/usr/bin/cargo")
        // `test` is for tests in the browser, the embedded bitcode for link-time optimisation.
        .args([
            "build",
            "--quiet",
            "--release",
            "-Zbuild-std=std,panic_abort,panic_unwind,proc_macro,test",
            "--target",
            TARGET,
        ])
        .current_dir(work)
        .env("RUSTC", "/usr/bin/rustc")
        .env("RUSTC_BOOTSTRAP", "1")
        .env("RUSTFLAGS", "-Cembed-bitcode=yes")
        .env("CARGO_TARGET_DIR", work.join("target")))?;
    copy_libraries(&work.join("target").join(TARGET).join("release/deps"), destination)
        .map_err(|trouble| format!("cannot copy the standard library to {}: {trouble}", destination.display()))
}

fn copy_libraries(from: &Path, to: &Path) -> io::Result<()> {
    if to.exists() {
        fs::remove_dir_all(to)?;
    }
    fs::create_dir_all(to)?;
    for file in fs::read_dir(from)? {
        let file = file?;
        let name = file.file_name();
        let is_library = Path::new(&name).extension().is_some_and(|end| end == "rlib");
        if is_library && !name.to_string_lossy().starts_with("libnothing-") {
            fs::copy(file.path(), to.join(name))?;
        }
    }
    Ok(())
}
