//! Nothing is missing: every cell has its cases, every clause a place on the page, and no check a limit of its own.

use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

use plugwary::domain::assess::{RuleBook, assess};
use plugwary::domain::check;
use plugwary::domain::finding::{Bound, Finding};
use plugwary::domain::standard::registry::{self, Range, Value};
use plugwary::domain::standard::{Clause, Provenance};
use plugwary::record;
use plugwary::words::limits as words;

use crate::cases::{Limit, is_about, plain, sheets, tag};
use crate::judged::examination;

/// Limits that no examination can vary: what is asked of them is a look that has them in its words, or a tester's own verdict.
const LOOKED_AT: [&str; 7] =
    ["connector-rating", "fuse-carries", "mark-height", "print-gap", "rcd-trip", "share-of-a-colour", "withstand"];

/// Checks whose limit is made of what the sample claims: there is nothing published to list.
const OF_THE_CLAIM: [&str; 2] = ["length-overstated", "overheats-at-claim"];

/// Checks whose limit is made of published values and of the sample's length.
const OF_THE_LENGTH: [&str; 1] = ["earth-resistance-high"];

/// Clauses that nothing decides by: they stand beside others in their tables, and `facts.rs` holds their values; or they grade what is
/// decided already, and `tests/domain/risk.rs` holds them; or they tell two samples apart, which `tests/many/beside.rs` holds.
const BESIDE_OTHERS: [&str; 15] = [
    "adiabatic::TABLES",
    "bs7671_shock::LOOP_0_4_S",
    "en50678::PROTECTIVE_CONDUCTOR",
    "eu_risk::MATRIX",
    "eu_risk::METHOD",
    "eu_risk::PRISM",
    "eu_risk::SEVERITIES",
    "iec60228::TABLE_1",
    "iec60228::TABLE_2",
    "iec60228::TABLE_4",
    "iec60335_1::SUPPLY_CORD",
    "iec60479::LINE_B",
    "iec60479::LINE_C1",
    "iso13528::NORMALISED_ERROR",
    "marks::CE_DRAWING",
];

fn is_practice(clause: &Clause) -> bool {
    clause.provenance == Provenance::CommonPractice
}

#[test]
fn codes_are_unique_and_kebab_case() {
    let mut codes = BTreeSet::new();
    for published in registry::all() {
        assert!(codes.insert(published.code), "{} stands twice", published.code);
        assert!(published.code.chars().all(|c| c.is_ascii_lowercase() || c == '-'), "{}", published.code);
    }
}

#[test]
fn every_cell_has_a_case_at_inside_and_outside_each_of_its_ends() {
    let sheets = sheets();
    for published in registry::all() {
        for cell in (published.cells)() {
            let given = plain(&words::given(cell.given));
            let of_cell = |limit: &&Limit| limit.code == published.code && limit.given == given;
            let found: Vec<&Limit> = sheets.iter().flat_map(|(_, sheet)| &sheet.limit).filter(of_cell).collect();
            let [limit] = found.as_slice() else { panic!("{} {given}: {} entries", published.code, found.len()) };
            let ends = [cell.range.at_least, cell.range.at_most].iter().flatten().count();
            assert!(ends > 0 && !limit.inside.is_empty(), "{}", limit.name());
            assert!(limit.at.len() >= ends && limit.outside.len() >= ends, "{}", limit.name());
        }
    }
}

#[test]
fn every_sheet_names_its_clause_as_the_fact_sheet_does() {
    for (path, sheet) in sheets() {
        assert!(!sheet.source.is_empty() && !sheet.limit.is_empty(), "{}", path.display());
        for limit in &sheet.limit {
            let (published, cell) = limit.published();
            assert!(is_about(&sheet, &published.clause), "{} stands in {}", limit.name(), path.display());
            assert_eq!(plain(&words::range(cell.range)), limit.allows, "{}", limit.name());
            let known = limit.provenance.as_ref().unwrap_or(&sheet.provenance);
            assert_eq!(tag(cell.provenance(&published.clause)), known, "{}", limit.name());
            let is_looked_at = LOOKED_AT.contains(&published.code);
            assert_eq!(limit.check.is_none(), is_looked_at, "{}", limit.name());
            if let Some(check) = &limit.check {
                assert!(published.decides.contains(&check.as_str()), "{} does not decide {check}", limit.name());
            }
        }
    }
}

#[test]
fn every_limit_and_every_check_name_each_other() {
    for published in registry::all() {
        assert!(!published.decides.is_empty(), "{} decides nothing", published.code);
        for code in published.decides {
            let check = check::by_code(code).unwrap_or_else(|| panic!("{}: no check {code}", published.code));
            let is_cited = check.against.contains(&published.clause) || is_practice(&published.clause);
            assert!(is_cited, "{code} uses {} and does not cite it", published.code);
        }
    }
}

/// A check that cites a clause uses one of its limits, or the clause is listed as a rule, a model or a code.
#[test]
fn every_clause_that_a_check_cites_is_on_the_page() {
    for check in check::all() {
        for clause in check.against.iter().filter(|clause| !is_practice(clause)) {
            let is_limit = registry::all().any(|limit| limit.clause == *clause && limit.decides.contains(&check.code));
            let is_listed = registry::RULES.contains(clause) || registry::MODELS.contains(clause);
            assert!(is_limit || is_listed, "{} cites {clause:?}", check.code);
        }
    }
}

/// A clause that is cited nowhere is a rule that somebody forgot to apply, or one that should not be there.
#[test]
fn every_clause_of_a_fact_sheet_is_cited_or_known_to_stand_beside_others() {
    let source = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/domain");
    let checks = texts(&source.join("check")) + &texts(&source.join("standard/registry"));
    let mut clauses = 0;
    for entry in fs::read_dir(source.join("standard")).expect("the fact sheets are there") {
        let path = entry.expect("an entry can be read").path();
        let Ok(sheet) = fs::read_to_string(&path) else { continue };
        let module = path.file_stem().and_then(|stem| stem.to_str()).expect("a sheet has a name");
        for line in sheet.lines().filter(|line| line.starts_with("pub const ") && line.contains(": Clause")) {
            let name = line.trim_start_matches("pub const ").split(':').next().unwrap_or_default();
            let cited = format!("{module}::{name}");
            let is_beside = BESIDE_OTHERS.contains(&cited.as_str());
            let is_cited =
                checks.split(&cited).skip(1).any(|rest| !rest.starts_with(|c: char| c.is_alphanumeric() || c == '_'));
            assert!(is_cited != is_beside, "{cited}: cited {is_cited}, beside others {is_beside}");
            clauses += 1;
        }
    }
    assert!(clauses > 60, "{clauses} clauses were found");
}

/// All sources of a folder and below, one after the other.
fn texts(folder: &Path) -> String {
    let entries = fs::read_dir(folder).expect("a folder can be read").map(|entry| entry.expect("an entry").path());
    let text = |path: std::path::PathBuf| {
        if path.is_dir() { texts(&path) } else { fs::read_to_string(&path).expect("a source can be read") }
    };
    entries.map(text).collect()
}

#[test]
fn everything_on_the_page_has_words() {
    let listed = || [registry::RULES, registry::MODELS, registry::PRINT].into_iter().flatten();
    for published in registry::all() {
        assert!(!words::what(published.code).is_empty(), "{}", published.code);
    }
    for clause in listed() {
        assert!(!words::says(clause).is_empty(), "{clause:?}");
        assert_eq!(listed().filter(|other| *other == clause).count(), 1, "{clause:?} stands twice");
    }
    assert!(words::worded().all(|code| registry::by_code(code).is_some()), "words for a limit that is none");
    assert!(words::said().all(|said| listed().any(|clause| clause == said)), "words for a rule that is none");
}

/// What a finding shows as its limit is a limit of the registry that says it decides this check.
#[test]
fn every_limit_that_a_finding_shows_is_listed() {
    let mut shown = BTreeSet::new();
    for finding in findings() {
        for evidence in &finding.judgement.evidence {
            let is_made = OF_THE_CLAIM.contains(&finding.code) || OF_THE_LENGTH.contains(&finding.code);
            assert!(is_made || is_listed(finding.code, &evidence.limit), "{} {:?}", finding.code, evidence.limit);
            shown.insert(finding.code);
        }
    }
    assert!(shown.len() > 20, "the cases show the limits of {shown:?} only");
}

fn is_listed(code: &str, bound: &Bound) -> bool {
    let shown = Range::from(*bound);
    registry::all()
        .filter(|published| published.decides.contains(&code))
        .flat_map(|published| (published.cells)())
        .any(|cell| is_same(cell.range, shown) || is_made_wider(code, cell.range, shown))
}

fn is_same(one: Range, other: Range) -> bool {
    words::range(one) == words::range(other)
}

/// A diameter may be held to the widest of light and ordinary duty, where the print names neither: each end is one of the table.
fn is_made_wider(code: &str, cell: Range, shown: Range) -> bool {
    let has = |end: Option<Value>| end.is_some() && (end == cell.at_least || end == cell.at_most);
    code == "diameter-off" && (has(shown.at_least) || has(shown.at_most))
}

/// Every finding of every case here and of every whole examination.
fn findings() -> Vec<Finding> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/examinations/cases");
    let paths = fs::read_dir(folder).expect("the examinations are there").map(|entry| entry.expect("an entry").path());
    let whole = paths.map(|path| {
        let text = fs::read_to_string(&path).expect("an examination can be read");
        record::read(&text).unwrap_or_else(|fault| panic!("{}: {fault}", path.display()))
    });
    let mut records: Vec<record::Record> = whole.collect();
    for (_, sheet) in sheets() {
        for limit in sheet.limit.iter().filter(|limit| limit.check.is_some()) {
            records.extend(limit.cases().map(|(_, case)| examination(limit, case)));
        }
    }
    records.iter().flat_map(|record| assess(&record.examination, &RuleBook::CURRENT).findings).collect()
}
