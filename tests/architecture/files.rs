//! Layers, headers and lengths of the source files.

use std::fs;
use std::path::{Path, PathBuf};

/// The layers, each of which may use only those before it, and what counts as using one.
const LAYERS: [(&str, &str); 10] = [
    ("domain", "crate::domain"),
    ("words", "crate::words"),
    ("record", "crate::record"),
    ("collection", "crate::collection"),
    ("archive", "crate::archive"),
    ("store", "crate::store"),
    ("drawing", "crate::drawing"),
    ("seal", "crate::seal"),
    ("report", "crate::report"),
    ("screens", "crate::screens"),
];

/// Uses that go the other way and why they may.
///
/// `words` names the types of a record, of many, of their faults and of what a check of a seal found to put them into words; it calls
/// nothing there.
const ALLOWED: [(&str, &str); 5] = [
    ("words", "crate::record"),
    ("words", "crate::store"),
    ("words", "crate::collection"),
    ("words", "crate::archive"),
    ("words", "crate::seal"),
];

/// What programs of their own do, loaded when somebody asks for it: the press makes files, the study is for afterwards.
const LATER: [&str; 11] = [
    "crate::report",
    "crate::seal",
    "drawing::found",
    "crate::collection",
    "crate::archive",
    "domain::comparison",
    "words::comparison",
    "words::letters",
    "words::risk",
    "risk::draft",
    "words::study",
];

/// The sources with their paths inside `src`, whatever the folders above it are called.
fn sources() -> Vec<(PathBuf, String)> {
    let source = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut found = Vec::new();
    let mut folders = vec![source.clone()];
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(&folder).expect("the source folder can be read") {
            let path = entry.expect("an entry can be read").path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|ending| ending == "rs") {
                let text = fs::read_to_string(&path).expect("a source file can be read");
                let inside = path.strip_prefix(&source).expect("a source lies in src");
                found.push((inside.to_path_buf(), text));
            }
        }
    }
    assert!(found.len() > 40, "the sources were found");
    found
}

fn layer_of(inside: &Path) -> Option<usize> {
    let first = inside.components().next()?.as_os_str().to_str()?;
    LAYERS.iter().position(|(folder, _)| first.trim_end_matches(".rs") == *folder)
}

#[test]
fn a_layer_uses_only_those_before_it() {
    for (path, text) in sources() {
        let Some(layer) = layer_of(&path) else { continue };
        for (_, later) in &LAYERS[layer + 1..] {
            let allowed = ALLOWED.contains(&(LAYERS[layer].0, later));
            assert!(allowed || !text.contains(later), "{} uses {later}", path.display());
        }
    }
}

#[test]
fn the_first_screens_and_the_record_leave_to_other_programs_what_is_asked_for_later() {
    for (path, text) in sources() {
        let is_early = layer_of(&path).is_some_and(|layer| ["record", "screens", "store"].contains(&LAYERS[layer].0));
        let is_study = path.components().any(|part| part.as_os_str() == "study");
        let later = LATER.iter().find(|later| is_early && !is_study && text.contains(**later));
        assert_eq!(later, None, "{} takes it into the first load", path.display());
    }
}

#[test]
fn the_engine_knows_neither_clock_nor_storage_nor_browser() {
    for (path, text) in sources() {
        if layer_of(&path) == Some(0) {
            for foreign in [
                "std::time",
                "SystemTime",
                "Instant::now",
                "web_sys",
                "js_sys",
                "serde::",
                "leptos",
                "HashMap",
                "std::fs",
                "std::env",
            ] {
                assert!(!text.contains(foreign), "{} names {foreign}", path.display());
            }
        }
    }
}

#[test]
fn every_file_says_what_it_is_on_its_first_line() {
    for (path, text) in sources() {
        let first = text.lines().next().unwrap_or_default();
        assert!(
            first.starts_with("//! ") && first.trim_end().ends_with(['.', ':', ',', ';']) || first.len() > 60,
            "{}",
            path.display()
        );
    }
}

#[test]
fn no_file_is_longer_than_four_hundred_lines() {
    for (path, text) in sources() {
        let lines = text.lines().count();
        assert!(lines <= 400, "{} has {lines} lines", path.display());
    }
}

/// Numbers in checks that are no limits: where a reading is taken for a slip, and what a model cannot go below.
const NO_LIMITS: [&str; 3] = [
    "length.value >= millimetres(1.0)",
    "degrees_celsius(-40.0) <= room.value && room.value <= degrees_celsius(80.0)",
    "diameter.shifted(-2.0).max(millimetres(1.0))",
];

/// A limit that stands in a check is in no fact sheet, has no citation, and no row of cases holds it.
#[test]
fn no_check_has_a_limit_or_a_clause_of_its_own() {
    let units = ["ohms", "ohms_per_kilometre", "metres", "amperes", "volts", "watts", "degrees_celsius"];
    for (path, text) in sources() {
        if !path.components().any(|part| part.as_os_str() == "check") {
            continue;
        }
        let code = text.lines().filter(|line| !line.trim_start().starts_with("//"));
        for line in code.filter(|line| !NO_LIMITS.iter().any(|known| line.contains(known))) {
            let is_number = |rest: &str| rest.starts_with(|c: char| c.is_ascii_digit() || c == '-');
            let makes =
                |maker: &str| line.split(maker).skip(1).any(|rest| rest.strip_prefix('(').is_some_and(is_number));
            assert!(!units.into_iter().any(makes), "{}: {line}", path.display());
            assert!(!line.contains("Clause::new("), "{}: {line}", path.display());
        }
    }
}

/// What stands between quotation marks in a line of code; a line of comment has none.
fn texts(line: &str) -> Vec<String> {
    if line.trim_start().starts_with("//") {
        return Vec::new();
    }
    let line = line.replace("\\\\", "").replace("\\\"", "QUOTE").replace("'\"'", "");
    line.split('"').skip(1).step_by(2).map(str::to_owned).collect()
}

#[test]
fn words_have_the_apostrophes_and_quotation_marks_of_a_printed_page() {
    let shown = ["words", "drawing", "record/fault.rs", "record/entry_fault.rs", "archive/fault.rs", "store/mod.rs"];
    let mut sentences = 0;
    for (path, text) in sources().into_iter().filter(|(path, _)| shown.iter().any(|at| path.starts_with(at))) {
        for sentence in text.lines().flat_map(texts).filter(|text| text.contains(' ') && !text.contains("='")) {
            sentences += 1;
            assert!(!sentence.contains('\''), "{}: {sentence}", path.display());
            let is_markup = sentence.contains("=QUOTE") || sentence.contains('<');
            assert!(is_markup || !sentence.contains("QUOTE"), "{}: {sentence}", path.display());
        }
    }
    assert!(sentences > 1000, "only {sentences} sentences were found");
}
