//! The size budgets: what a phone has to fetch until the first screen can be used, and what it fetches when asked for.

use std::{fs, path::Path};

use crate::{Trouble, site::compressed, stamp::files};

/// What is fetched at one time, and how many bytes it may have, compressed.
struct Load {
    what: &'static str,
    limit: u64,
    holds: fn(&str) -> bool,
}

const LOADS: [Load; 3] = [
    Load { what: "first load", limit: 350 * 1024, holds: is_for_first_screen },
    Load { what: "loaded when a file is asked for", limit: 400 * 1024, holds: |file| is_for(file, MAKES_FILES) },
    Load { what: "loaded for the study", limit: 450 * 1024, holds: |file| is_for(file, IS_STUDY) },
];

/// Files that are not fetched for the first screen, and why.
const LATER: [(&str, &str); 12] = [
    ("about.txt", "it is fetched with the page about the app"),
    ("checks.txt", "it is fetched once the first screen stands"),
    ("help.txt", "it is fetched when somebody asks for help"),
    ("limits.html", "it is a page of its own that one opens by a link"),
    ("press-worker.js", MAKES_FILES),
    ("press.js", MAKES_FILES),
    ("press_bg.wasm", MAKES_FILES),
    ("study.css", IS_STUDY),
    ("study.html", IS_STUDY),
    ("study.js", IS_STUDY),
    ("study_bg.wasm", IS_STUDY),
    ("sw.js", "the browser fetches it after the first screen"),
];
const IS_STUDY: &str = "it is the study, a page of its own that one goes to after looking";
const MAKES_FILES: &str = "it makes files, and is fetched when one is asked for";

/// Adds up the compressed sizes of all pages, styles, scripts and programs, and prints them.
///
/// # Errors
/// When a sum is over its limit, or a file has no compressed form.
pub fn check(folder: &Path) -> Result<(), Trouble> {
    let files = files(folder)?;
    for (file, reason) in LATER {
        println!("{file} is not in the first load: {reason}");
    }
    let sums = LOADS.iter().map(|load| sum(folder, &files, load)).collect::<Result<Vec<u64>, Trouble>>()?;
    let over = |(load, sum): (&Load, u64)| {
        let much = sum.checked_sub(load.limit).filter(|over| *over > 0)?;
        Some(format!("{} is {sum} bytes compressed, {much} too many", load.what))
    };
    let troubles: Vec<Trouble> = LOADS.iter().zip(sums).filter_map(over).collect();
    if troubles.is_empty() { Ok(()) } else { Err(troubles.join("; ")) }
}

fn sum(folder: &Path, files: &[String], load: &Load) -> Result<u64, Trouble> {
    println!("\n{}", load.what);
    let mut sum = 0;
    for file in files.iter().filter(|file| (load.holds)(file)) {
        let size = |path: &Path| {
            fs::metadata(path)
                .map(|about| about.len())
                .map_err(|trouble| format!("cannot measure {}: {trouble}", path.display()))
        };
        let (whole, small) = (size(&folder.join(file))?, size(&compressed(&folder.join(file)))?);
        println!("{whole:>9} {small:>8}  {file}");
        sum += small;
    }
    println!("{:>9} {sum:>8}  of {} bytes, by brotli -q 11", "sum", load.limit);
    Ok(sum)
}

fn is_for_first_screen(file: &str) -> bool {
    let is_later = LATER.iter().any(|(later, _)| *later == file);
    !is_later && [".css", ".html", ".js", ".wasm"].iter().any(|end| file.ends_with(end))
}

fn is_for(file: &str, wanted: &str) -> bool {
    LATER.iter().any(|(later, reason)| *later == file && *reason == wanted)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scratch;

    /// A folder with a file of this many bytes once compressed.
    fn folder(name: &str, file: &str, compressed: usize) -> std::path::PathBuf {
        let folder = scratch::folder(&format!("budget-{name}"));
        fs::write(folder.join(file), vec![0; 2 * compressed]).unwrap();
        fs::write(folder.join(format!("{file}.br")), vec![0; compressed]).unwrap();
        folder
    }

    #[test]
    fn budget_is_kept_at_the_limit_and_broken_one_byte_above() {
        check(&folder("at", "index.html", 350 * 1024)).unwrap();
        let trouble = check(&folder("above", "index.html", 350 * 1024 + 1)).unwrap_err();
        assert_eq!(trouble, "first load is 358401 bytes compressed, 1 too many");
    }

    #[test]
    fn page_of_limits_is_the_only_page_that_is_not_counted() {
        let folder = folder("limits", "index.html", 350 * 1024);
        fs::write(folder.join("limits.html"), "a page without a compressed form").unwrap();
        check(&folder).unwrap();
        fs::write(folder.join("another.html"), "a page").unwrap();
        fs::write(folder.join("another.html.br"), "a page").unwrap();
        assert!(check(&folder).unwrap_err().contains("first load"));
    }

    #[test]
    fn what_makes_files_has_a_budget_of_its_own() {
        check(&folder("press-at", "press_bg.wasm", 400 * 1024)).unwrap();
        let trouble = check(&folder("press-above", "press_bg.wasm", 400 * 1024 + 1)).unwrap_err();
        assert_eq!(trouble, "loaded when a file is asked for is 409601 bytes compressed, 1 too many");
    }

    #[test]
    fn file_without_compressed_form_is_not_passed_over() {
        let folder = folder("plain", "index.html", 10);
        fs::write(folder.join("app.wasm"), "x").unwrap();
        assert!(check(&folder).unwrap_err().contains("app.wasm"));
    }
}
