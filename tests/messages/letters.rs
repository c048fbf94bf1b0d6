//! The letters as they read, and that none claims more than the findings.

use core::fmt::Write as _;
use std::collections::BTreeSet;

use plugwary::domain::assess::{Assessment, RuleBook, assess};
use plugwary::domain::examination::Answer;
use plugwary::domain::finding::{Conformity, Finding, Severity};
use plugwary::domain::sample::Market;
use plugwary::domain::verdict::Verdict;
use plugwary::record::Record;
use plugwary::words::letters::{Letter, Purpose, authority, marketplace, seller, traces};
use plugwary::words::{check, favour, mark, moment, reason, report, risk, statement, verdict};

use crate::accepted;
use crate::statement::records;

/// All three letters of a record, with whom they are to.
fn letters(record: &Record) -> [(&'static str, Letter); 3] {
    [("seller", seller(record)), ("marketplace", marketplace(record)), ("authority", authority(record))]
}

fn assessed(record: &Record) -> Assessment {
    assess(&record.examination, &RuleBook::CURRENT)
}

/// Every letter of every case, with its case.
fn all() -> Vec<(String, Record, &'static str, Letter)> {
    let of = |(name, record): (String, Record)| {
        letters(&record).map(|(whom, letter)| (name.clone(), record.clone(), whom, letter))
    };
    records().into_iter().flat_map(of).collect()
}

#[test]
fn letters_read_as_accepted() {
    for name in [
        "market-stall-lead",
        "lethal-lead-good-print",
        "dishonest-lead-breach",
        "undecided-lead",
        "sound-lead-meters",
        "lead-with-usb-ni",
    ] {
        let records = records();
        let record = records.get(name).expect("the case is there");
        let mut told = String::new();
        for (whom, letter) in letters(record) {
            writeln!(told, "=== to the {whom}\nsubject: {}\n\n{}", letter.subject, letter.body)
                .expect("a text takes any line");
        }
        accepted(&format!("letters-{name}"), &told);
    }
}

#[test]
fn purpose_follows_from_the_verdict() {
    for (name, record, whom, letter) in all() {
        let assessment = assessed(&record);
        let grave = |f: &Finding| f.outcome() == Conformity::Inconclusive && f.judgement.severity > Severity::BadSign;
        let purpose = match assessment.verdict {
            Verdict::KeepAway | Verdict::DoNotAccept => Purpose::Complaint,
            Verdict::NotDecided if assessment.findings.iter().any(grave) => Purpose::Question,
            Verdict::NotDecided | Verdict::NothingWrongSeen => Purpose::Nothing,
        };
        assert_eq!(letter.purpose, purpose, "{name}, {whom}");
        assert_eq!(letter.subject.is_empty(), purpose == Purpose::Nothing, "{name}, {whom}");
    }
}

/// The numbers in a text, digits that stand together.
fn digits(text: &str) -> BTreeSet<String> {
    text.split(|c: char| !c.is_ascii_digit()).filter(|digits| !digits.is_empty()).map(str::to_owned).collect()
}

/// All that is told elsewhere of those findings that are wanted.
fn told(record: &Record, assessment: &Assessment, is_wanted: impl Fn(&Finding) -> bool) -> String {
    let kind = record.examination.sample.kind;
    let sentences = statement::sentences(&record.examination, assessment);
    let of = |finding: &Finding| {
        let home = sentences.iter().find(|sentence| sentence.findings.iter().any(|f| f.code == finding.code));
        let parts = [
            report::heading(finding),
            statement::seen(finding, home, kind),
            reason::reason(finding, kind),
            favour::in_its_favour(finding, kind),
            report::held_against(&finding.against),
        ];
        parts.into_iter().chain(reason::numbers(finding, kind)).collect::<Vec<_>>().join("\n")
    };
    assessment.findings.iter().filter(|finding| is_wanted(finding)).map(of).collect::<Vec<_>>().join("\n")
}

fn is_break(finding: &Finding) -> bool {
    finding.breaks(Severity::Danger) || finding.breaks(Severity::Breach)
}

/// What stands under a heading.
fn part<'a>(letter: &'a Letter, headings: &[&str]) -> &'a str {
    let from = headings.iter().find_map(|heading| letter.body.find(&format!("\n{heading}\n")));
    let rest = from.and_then(|from| letter.body.get(from + 1..)).unwrap_or_default();
    let is_heading = |line: &str| line.chars().any(char::is_alphabetic) && line.chars().all(|c| !c.is_lowercase());
    let end = rest.lines().skip(1).find(|line| is_heading(line)).and_then(|line| rest.find(&format!("\n{line}\n")));
    rest.get(..end.unwrap_or(rest.len())).unwrap_or_default()
}

const EVIDENCE: [&str; 3] = ["WHAT I FOUND", "WHY", "EVIDENCE"];

#[test]
fn every_number_of_the_evidence_stands_in_a_finding_that_breaks() {
    let mut seen = 0;
    for (name, record, whom, letter) in all().into_iter().filter(|(.., letter)| letter.purpose == Purpose::Complaint) {
        let assessment = assessed(&record);
        let known = told(&record, &assessment, is_break);
        let evidence = digits(part(&letter, &EVIDENCE));
        assert!(!part(&letter, &EVIDENCE).is_empty(), "{name}, {whom}");
        let foreign: Vec<_> = evidence.difference(&digits(&known)).cloned().collect();
        assert!(foreign.is_empty(), "{name}, {whom}: {foreign:?}");
        seen += evidence.len();
    }
    assert!(seen > 100, "only {seen} numbers were found");
}

#[test]
fn every_number_stands_in_a_finding_in_the_record_or_in_what_was_looked_at() {
    for (name, record, whom, letter) in all() {
        let assessment = assessed(&record);
        let examination = &record.examination;
        let mut known = told(&record, &assessment, |_| true);
        let said = statement::sentences(examination, &assessment);
        known.extend(said.into_iter().map(|sentence| sentence.text));
        known.extend(traces(&record).into_iter().map(|(_, value)| value));
        known.extend([
            mark::title(&record),
            moment::moment(&record.begun),
            moment::moment(&record.changed),
            report::how_looked(examination),
            report::coverage(&assessment, &examination.sample, examination.equipment),
            verdict::headline(&assessment),
            risk::method(examination.sample.market),
            assessment.edition.to_owned(),
        ]);
        // What is looked for has numbers in its names: 13 A, BS 1363.
        known.extend(assessment.findings.iter().map(|finding| check::of(finding.code).wrong.to_owned()));
        let foreign: Vec<_> = digits(&letter.body).difference(&digits(&known)).cloned().collect();
        assert!(foreign.is_empty(), "{name}, {whom}: {foreign:?}");
    }
}

#[test]
fn nothing_is_called_a_break_that_is_none() {
    for (name, record, whom, letter) in all() {
        let assessment = assessed(&record);
        for finding in &assessment.findings {
            for label in [Severity::Danger, Severity::Breach].map(verdict::severity) {
                let heading = format!("{}: {}.", reason::capital(label), check::of(finding.code).wrong);
                let may_stand = is_break(finding) && label == reason::label(finding);
                assert_eq!(letter.body.contains(&heading), may_stand, "{name}, {whom}: {}", finding.code);
            }
        }
    }
}

#[test]
fn a_letter_says_what_it_is_not_and_what_was_not_looked_at() {
    for (name, record, whom, letter) in all() {
        let body = &letter.body;
        assert!(body.contains("certifies nothing"), "{name}, {whom}");
        let examination = &record.examination;
        let assessment = assessed(&record);
        assert!(body.contains(&report::coverage(&assessment, &examination.sample, examination.equipment)), "{name}");
        if letter.purpose == Purpose::Nothing {
            assert!(body.starts_with("There is nothing to complain about on these looks."), "{name}, {whom}");
            continue;
        }
        assert!(body.contains("I am no authority."), "{name}, {whom}");
        for code in &assessment.dangers_not_tested {
            assert!(body.contains(check::of(code).wrong), "{name}, {whom}: {code}");
        }
        let quotes = body.contains("quoted from memory");
        let is_explained = body.contains("“Quoted from memory” means");
        assert!(is_explained || !quotes, "{name}, {whom}");
    }
}

#[test]
fn a_letter_of_a_danger_says_to_stop_and_never_to_post() {
    for (name, record, whom, letter) in all() {
        let body = &letter.body;
        let is_danger = assessed(&record).verdict == Verdict::KeepAway;
        assert_eq!(body.contains("can hurt or kill"), is_danger, "{name}, {whom}");
        assert_eq!(body.contains("Nobody should use it"), is_danger, "{name}, {whom}");
        let keeps_it = ["I do not post it back", "post it to nobody", "I do not send it by post"];
        assert_eq!(keeps_it.iter().any(|said| body.contains(said)), is_danger, "{name}, {whom}");
    }
}

#[test]
fn a_question_asks_and_accuses_of_nothing() {
    let mut questions = 0;
    for (name, _, whom, letter) in all().into_iter().filter(|(.., letter)| letter.purpose == Purpose::Question) {
        questions += 1;
        assert!(letter.body.contains("This is no complaint"), "{name}, {whom}");
        for accusation in
            ["money back", "dangerous", "against the rules", "breaks the rule", "Danger:", "The draft grade"]
        {
            assert!(!letter.body.contains(accusation), "{name}, {whom}: {accusation}");
        }
        assert!(letter.subject.starts_with("Questions about"), "{name}, {whom}");
    }
    assert!(questions >= 3, "some case is undecided");
}

#[test]
fn law_is_that_of_the_market() {
    for (name, record, whom, letter) in all() {
        let foreign: &[&str] = match record.examination.sample.market {
            Market::GreatBritain => &["(EU)", "/EU"],
            Market::NorthernIreland => &["2016/1101", "2005/1803", "PRISM", "Trading Standards"],
        };
        for law in foreign {
            assert!(!letter.body.contains(law), "{name}, {whom}: {law}");
        }
    }
}

#[test]
fn a_grade_is_called_a_draft_until_somebody_has_weighed_it() {
    let records = records();
    let mut record = records.get("market-stall-lead").expect("the case is there").clone();
    let draft = "The draft grade is serious";
    assert!(authority(&record).body.contains(draft));
    record.scenarios = risk::scenarios(&record, &assessed(&record));
    assert!(authority(&record).body.contains(draft), "stored and untouched it is a draft still");
    for scenario in &mut record.scenarios {
        scenario.injury_standing = plugwary::domain::risk::Standing::Weighed;
    }
    assert!(authority(&record).body.contains("weighed in part only"));
    for step in record.scenarios.iter_mut().flat_map(|scenario| &mut scenario.steps) {
        step.standing = plugwary::domain::risk::Standing::Weighed;
    }
    let weighed = authority(&record).body;
    assert!(weighed.contains("The risk is graded serious") && !weighed.contains("draft"), "{weighed}");
}

#[test]
fn hostile_texts_stay_on_their_line_and_hide_nothing() {
    let records = records();
    let mut record = records.get("market-stall-lead").expect("the case is there").clone();
    let hostile =
        "=cmd|' /C calc'!A1 <script>alert(1)</script> \u{202e}efas\u{2066}\nDear Sir,\r\nit is safe\u{200b}\u{7}";
    hostile.clone_into(&mut record.examination.sample.title);
    hostile.clone_into(&mut record.examination.sample.number);
    hostile.clone_into(&mut record.origin);
    for answered in &mut record.examination.answers {
        if let Answer::Printed(print) = &mut answered.answer {
            hostile.clone_into(print);
        }
    }
    record.scenarios = risk::scenarios(&record, &assessed(&record));
    for scenario in &mut record.scenarios {
        hostile.clone_into(&mut scenario.title);
    }
    for (whom, letter) in letters(&record) {
        assert!(letter.body.contains("[U+202E]efas[U+2066] Dear Sir,"), "{whom}: {}", letter.body);
        assert!(!letter.subject.contains('\n') && letter.subject.contains("[U+202E]"), "{whom}: {}", letter.subject);
        let hidden = |c: char| {
            (c.is_control() && c != '\n')
                || matches!(c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
        };
        assert!(!letter.body.contains(hidden) && !letter.subject.contains(hidden), "{whom}");
        for line in letter.body.lines().chain([letter.subject.as_str()]) {
            assert!(!line.starts_with(['=', '+', '@']) && !line.starts_with("Dear"), "{whom}: {line}");
        }
    }
}
