//! Finishes a build: tells the service worker which files belong to it, and every file which build it is.
//!
//! Trunk runs this on its staging folder after each build. A release gets a version made from the
//! contents of all its files; `trunk serve` builds stay unversioned, and the page then keeps no copy of itself.

use std::{
    env, fs,
    path::{Path, PathBuf},
    process::ExitCode,
};

use crate::{Trouble, digest::Digest, study};

const WORKER: &str = "sw.js";
const PAGE: &str = "index.html";
/// What stands in the page and the worker for the version, until it is known.
const UNVERSIONED_PAGE: &str = r#"<meta name="plugwary-build" content="development">"#;
const UNVERSIONED_WORKER: &str = "const BUILD = 'development';";
const NO_FILES: &str = "const FILES = [];";
const POLICY: &str = "script-src 'self'";

/// Stamps the build in Trunk's staging folder, as its hook.
///
/// # Errors
/// When Trunk's variables are missing, or the files of the build are not as expected.
pub fn run_as_hook() -> Result<ExitCode, Trouble> {
    let variable = |name: &str| env::var(name).map_err(|trouble| format!("{name}: {trouble}; only Trunk calls this"));
    let folder = PathBuf::from(variable("TRUNK_STAGING_DIR")?);
    if variable("TRUNK_PROFILE")? == "release" {
        stamp(&folder)?;
    } else {
        allow_reloading(&folder)?;
    }
    Ok(ExitCode::SUCCESS)
}

/// Writes the version and the list of files into the build in this folder.
///
/// # Errors
/// When a file cannot be read or written, or lacks the place for its stamp.
pub fn stamp(folder: &Path) -> Result<(), Trouble> {
    strip_scripts(folder)?;
    let version = version(folder)?;
    fill(&folder.join(PAGE), UNVERSIONED_PAGE, &UNVERSIONED_PAGE.replace("development", &version))?;
    study::add(folder)?;
    let mut list = String::new();
    for file in files(folder)?.iter().filter(|file| is_part_of_app(file)) {
        let integrity = Digest::of(&read(&folder.join(file))?).to_integrity();
        list.extend(["\n  ['/", file, "', '", &integrity, "'],"]);
    }
    let worker = folder.join(WORKER);
    fill(&worker, UNVERSIONED_WORKER, &UNVERSIONED_WORKER.replace("development", &version))?;
    fill(&worker, NO_FILES, &NO_FILES.replace("[]", &format!("[{list}\n]")))
}

/// Takes comments and indentation out of the scripts that wasm-bindgen has written: a phone has no use for them.
fn strip_scripts(folder: &Path) -> Result<(), Trouble> {
    let is_written =
        |file: &&String| file.strip_suffix(".js").is_some_and(|name| folder.join(format!("{name}_bg.wasm")).exists());
    for file in files(folder)?.iter().filter(is_written) {
        let path = folder.join(file);
        let script = String::from_utf8(read(&path)?).map_err(|trouble| format!("{}: {trouble}", path.display()))?;
        fs::write(&path, stripped(&script)).map_err(|trouble| format!("cannot write {}: {trouble}", path.display()))?;
    }
    Ok(())
}

/// A script without the lines that are comments and without indentation. It must have no text over several lines; wasm-bindgen writes none.
fn stripped(script: &str) -> String {
    let lines = script.lines().map(str::trim_start);
    let code = lines.filter(|line| !line.is_empty() && !["/*", "*", "//"].iter().any(|mark| line.starts_with(mark)));
    code.flat_map(|line| [line, "\n"]).collect()
}

/// Whether a file is kept for use without a network: not the worker itself, nor what only a programmer reads.
fn is_part_of_app(file: &str) -> bool {
    file != WORKER && !file.ends_with(".schema.json")
}

/// `trunk serve` puts a script into the page that reloads it after each build; the policy must let it run.
fn allow_reloading(folder: &Path) -> Result<(), Trouble> {
    fill(&folder.join(PAGE), POLICY, &format!("{POLICY} 'unsafe-inline'"))?;
    study::add(folder)
}

/// Any change to any file, the worker included, makes another version.
fn version(folder: &Path) -> Result<String, Trouble> {
    let mut everything = Vec::new();
    for file in files(folder)? {
        let digest = Digest::of(&read(&folder.join(&file))?);
        everything.extend(format!("{file} {}\n", digest.to_integrity()).into_bytes());
    }
    Ok(Digest::of(&everything).to_short())
}

/// Replaces the one place where `blank` stands.
fn fill(file: &Path, blank: &str, text: &str) -> Result<(), Trouble> {
    let before = String::from_utf8(read(file)?).map_err(|trouble| format!("{}: {trouble}", file.display()))?;
    match before.matches(blank).count() {
        1 => fs::write(file, before.replace(blank, text))
            .map_err(|trouble| format!("cannot write {}: {trouble}", file.display())),
        count => Err(format!("{}: expected {blank} once, found it {count} times", file.display())),
    }
}

fn read(file: &Path) -> Result<Vec<u8>, Trouble> {
    fs::read(file).map_err(|trouble| format!("cannot read {}: {trouble}", file.display()))
}

/// All files in the folder and below, by their path from there with `/` between, in order.
///
/// # Errors
/// When a folder cannot be read.
pub fn files(folder: &Path) -> Result<Vec<String>, Trouble> {
    let mut found = Vec::new();
    let mut waiting = vec![(folder.to_owned(), String::new())];
    while let Some((folder, prefix)) = waiting.pop() {
        let trouble = |trouble| format!("cannot read {}: {trouble}", folder.display());
        for entry in fs::read_dir(&folder).map_err(trouble)? {
            let path = entry.map_err(trouble)?.path();
            let name = format!("{prefix}{}", path.file_name().unwrap_or_default().to_string_lossy());
            if path.is_dir() {
                waiting.push((path, name + "/"));
            } else {
                found.push(name);
            }
        }
    }
    found.sort();
    Ok(found)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scratch;

    fn build(name: &str, style: &str) -> PathBuf {
        let folder = scratch::folder(&format!("stamp-{name}"));
        fs::create_dir_all(folder.join("icons")).unwrap();
        let script = "<script data-js=\"/app.js\" data-wasm=\"/app.wasm\"></script>";
        let page = format!("<head>{UNVERSIONED_PAGE}<meta content=\"{POLICY}\">{script}</head>");
        for (file, text) in [
            (PAGE, page.as_str()),
            (WORKER, &format!("{UNVERSIONED_WORKER}\n{NO_FILES}\n")),
            ("style.css", style),
            ("icons/mark.svg", "<svg/>"),
        ] {
            fs::write(folder.join(file), text).unwrap();
        }
        folder
    }

    fn text(folder: &Path, file: &str) -> String {
        fs::read_to_string(folder.join(file)).unwrap()
    }

    #[test]
    fn worker_lists_every_file_as_it_is_in_the_end() {
        let folder = build("list", "p {}");
        stamp(&folder).unwrap();
        let worker = text(&folder, WORKER);
        for file in [PAGE, study::PAGE, "style.css", "icons/mark.svg"] {
            let integrity = Digest::of(&fs::read(folder.join(file)).unwrap()).to_integrity();
            assert!(worker.contains(&format!("  ['/{file}', '{integrity}'],\n")), "{worker}");
        }
        assert!(!worker.contains("'/sw.js'"), "{worker}");
    }

    #[test]
    fn comments_of_a_generated_script_are_left_out_and_others_are_kept() {
        let folder = build("strip", "p {}");
        let script = "/**\n * Adds.\n */\nfunction add(a) {\n    // one more\n    return a\n        + 1; // stays\n}\n";
        for (file, text) in [("app.js", script), ("app_bg.wasm", "wasm"), ("own.js", script)] {
            fs::write(folder.join(file), text).unwrap();
        }
        stamp(&folder).unwrap();
        assert_eq!(text(&folder, "app.js"), "function add(a) {\nreturn a\n+ 1; // stays\n}\n");
        assert_eq!(text(&folder, "own.js"), script);
    }

    #[test]
    fn page_and_worker_agree_on_the_version() {
        let folder = build("version", "p {}");
        stamp(&folder).unwrap();
        let worker = text(&folder, WORKER);
        let version = worker.strip_prefix("const BUILD = '").unwrap().split('\'').next().unwrap();
        assert_eq!(version.len(), 16);
        for page in [PAGE, study::PAGE] {
            assert!(text(&folder, page).contains(&format!("content=\"{version}\"")), "{page}");
        }
    }

    #[test]
    fn any_change_makes_another_version() {
        let version = |name, style| version(&build(name, style)).unwrap();
        assert_eq!(version("one", "p {}"), version("two", "p {}"));
        assert_ne!(version("one", "p {}"), version("three", "p { }"));
    }

    #[test]
    fn build_is_not_stamped_twice() {
        let folder = build("twice", "p {}");
        stamp(&folder).unwrap();
        assert!(stamp(&folder).unwrap_err().contains("found it 0 times"));
    }

    #[test]
    fn only_builds_for_developers_may_run_scripts_of_the_page() {
        let folder = build("developer", "p {}");
        allow_reloading(&folder).unwrap();
        for page in [PAGE, study::PAGE] {
            assert!(text(&folder, page).contains("script-src 'self' 'unsafe-inline'"), "{page}");
        }
    }
}
