//! Which built file answers which request, as any host of the app has to do it.

use std::{
    fs,
    path::{Component, Path, PathBuf},
};

/// The folder of built files.
#[derive(Clone, Debug)]
pub struct Site(PathBuf);

/// What goes back to the browser.
#[derive(Debug)]
pub struct Answer {
    /// The status line's number and words.
    pub status: &'static str,
    /// The header lines that depend on the file.
    pub headers: Vec<(&'static str, &'static str)>,
    /// The file itself.
    pub body: Vec<u8>,
}

impl Site {
    /// The files in this folder.
    pub fn new(folder: impl Into<PathBuf>) -> Self {
        Self(folder.into())
    }

    /// The answer to a request for an address; `encodings` is the request's `accept-encoding`.
    ///
    /// An address that looks like no file is a screen of the app: it gets the page.
    pub fn answer(&self, address: &str, encodings: &str) -> Answer {
        let path = address.split(['?', '#']).next().unwrap_or_default().trim_start_matches('/');
        let is_screen = !path.rsplit('/').next().unwrap_or_default().contains('.');
        let file = self.0.join(if is_screen { "index.html" } else { path });
        let is_inside = Path::new(path).components().all(|part| matches!(part, Component::Normal(_)));
        if is_inside && let Some((body, encoding)) = read(&file, encodings) {
            let mut headers = vec![("content-type", kind(&file)), ("cache-control", keeping(&file))];
            headers.extend(encoding.map(|encoding| ("content-encoding", encoding)));
            return Answer { status: "200 OK", headers, body };
        }
        Answer { status: "404 Not Found", headers: vec![("content-type", "text/plain")], body: b"not found".to_vec() }
    }
}

/// The file, in its compressed form where there is one beside it and the browser takes it.
fn read(file: &Path, encodings: &str) -> Option<(Vec<u8>, Option<&'static str>)> {
    let takes_brotli =
        encodings.split(',').any(|encoding| encoding.split(';').next().unwrap_or_default().trim() == "br");
    let compressed = takes_brotli.then(|| fs::read(compressed(file)).ok()).flatten();
    match compressed {
        Some(body) => Some((body, Some("br"))),
        None => fs::read(file).ok().map(|body| (body, None)),
    }
}

/// Where the compressed form of a file lies: beside it.
pub fn compressed(file: &Path) -> PathBuf {
    let mut name = file.as_os_str().to_owned();
    name.push(".br");
    name.into()
}

fn extension(file: &Path) -> &str {
    file.extension().and_then(|extension| extension.to_str()).unwrap_or_default()
}

fn kind(file: &Path) -> &'static str {
    match extension(file) {
        "css" => "text/css; charset=utf-8",
        "html" => "text/html; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "json" => "application/json",
        "png" => "image/png",
        "svg" => "image/svg+xml",
        "txt" => "text/plain; charset=utf-8",
        "wasm" => "application/wasm",
        "webmanifest" => "application/manifest+json",
        "woff2" => "font/woff2",
        _ => "application/octet-stream",
    }
}

/// A file named after its contents may be kept for ever, any other must be asked for again.
fn keeping(file: &Path) -> &'static str {
    let stem = file.file_stem().and_then(|stem| stem.to_str()).unwrap_or_default();
    let stem = stem.strip_suffix("_bg").unwrap_or(stem);
    let is_named_after_contents = stem
        .rsplit_once('-')
        .is_some_and(|(_, hash)| hash.len() >= 15 && hash.chars().all(|digit| digit.is_ascii_hexdigit()));
    if is_named_after_contents { "public, max-age=31536000, immutable" } else { "no-cache" }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::scratch;

    fn header(answer: &Answer, name: &str) -> Option<&'static str> {
        answer.headers.iter().find(|header| header.0 == name).map(|header| header.1)
    }

    fn site(name: &str) -> Site {
        let folder = scratch::folder(&format!("site-{name}"));
        for (file, text) in [
            ("index.html", "page"),
            ("app-0123456789abcdef_bg.wasm", "plain"),
            ("app-0123456789abcdef_bg.wasm.br", "small"),
            ("sw.js", "worker"),
        ] {
            fs::write(folder.join(file), text).unwrap();
        }
        Site::new(folder)
    }

    #[test]
    fn screens_get_the_page_and_missing_files_do_not() {
        let site = site("screens");
        assert_eq!(site.answer("/", "").body, b"page");
        assert_eq!(site.answer("/samples/7?from=here", "").body, b"page");
        assert_eq!(site.answer("/missing.js", "").status, "404 Not Found");
    }

    #[test]
    fn nothing_outside_the_folder_is_answered() {
        let site = site("outside");
        fs::write(site.0.with_file_name("outside.txt"), "secret").unwrap();
        assert_eq!(site.answer("/../outside.txt", "").status, "404 Not Found");
        assert_eq!(site.answer("//etc/hostname.txt", "").status, "404 Not Found");
    }

    #[test]
    fn compressed_form_goes_only_to_browsers_that_take_it() {
        let site = site("compressed");
        let address = "/app-0123456789abcdef_bg.wasm";
        let small = site.answer(address, "gzip, deflate, br;q=0.9");
        assert_eq!((small.body.as_slice(), header(&small, "content-encoding")), (&b"small"[..], Some("br")));
        let plain = site.answer(address, "gzip, brand-new");
        assert_eq!((plain.body.as_slice(), header(&plain, "content-encoding")), (&b"plain"[..], None));
        assert_eq!(header(&small, "content-type"), Some("application/wasm"));
    }

    #[test]
    fn only_files_named_after_their_contents_are_kept() {
        let site = site("kept");
        for address in ["/", "/index.html", "/sw.js"] {
            assert_eq!(header(&site.answer(address, ""), "cache-control"), Some("no-cache"), "{address}");
        }
        let hashed = site.answer("/app-0123456789abcdef_bg.wasm", "");
        assert!(header(&hashed, "cache-control").unwrap().contains("immutable"));
    }
}
