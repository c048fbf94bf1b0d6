//! The size budget: what a phone has to fetch until the first screen can be used.

use std::{fs, path::Path};

use crate::{Trouble, site::compressed, stamp::files};

/// 350 KB, compressed.
const LIMIT: u64 = 350 * 1024;

/// Adds up the compressed sizes of the page and all styles, scripts and programs, and prints them.
/// The service worker is left out: the browser fetches it after the first screen.
///
/// # Errors
/// When the sum is over the limit, or a file has no compressed form.
pub fn check(folder: &Path) -> Result<(), Trouble> {
    let mut sum = 0;
    for file in files(folder)?.iter().filter(|file| is_for_first_screen(file)) {
        let size = |path: &Path| {
            fs::metadata(path)
                .map(|about| about.len())
                .map_err(|trouble| format!("cannot measure {}: {trouble}", path.display()))
        };
        let (whole, small) = (size(&folder.join(file))?, size(&compressed(&folder.join(file)))?);
        println!("{whole:>9} {small:>8}  {file}");
        sum += small;
    }
    println!("{:>9} {sum:>8}  of {LIMIT} bytes, by brotli -q 11", "sum");
    if sum <= LIMIT { Ok(()) } else { Err(format!("first load is {sum} bytes compressed, {} too many", sum - LIMIT)) }
}

fn is_for_first_screen(file: &str) -> bool {
    file != "sw.js" && [".css", ".html", ".js", ".wasm"].iter().any(|end| file.ends_with(end))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scratch;

    /// A folder with a page of this many bytes once compressed.
    fn folder(name: &str, compressed: usize) -> std::path::PathBuf {
        let folder = scratch::folder(&format!("budget-{name}"));
        fs::write(folder.join("index.html"), vec![0; 2 * compressed]).unwrap();
        fs::write(folder.join("index.html.br"), vec![0; compressed]).unwrap();
        folder
    }

    #[test]
    fn budget_is_kept_at_the_limit_and_broken_one_byte_above() {
        check(&folder("at", 350 * 1024)).unwrap();
        check(&folder("above", 350 * 1024 + 1)).unwrap_err();
    }

    #[test]
    fn file_without_compressed_form_is_not_passed_over() {
        let folder = folder("plain", 10);
        fs::write(folder.join("app.wasm"), "x").unwrap();
        assert!(check(&folder).unwrap_err().contains("app.wasm"));
    }
}
