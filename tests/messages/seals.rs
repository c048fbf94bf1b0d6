//! What is said of seals, of judging again and of chains, for every state there is.

use std::fmt::Write;

use plugwary::record::{Break, Chain};
use plugwary::seal::{Again, Change, Part, State};
use plugwary::words::{custody, seal};

use crate::accepted;

const KEY: &str = "ABCD-EFGH-IJKL-MNOP-QRST-UVWX";

#[test]
fn all_that_is_said_of_a_seal_reads_as_accepted() {
    let everything = [Part::Examination, Part::Verdict, Part::Photo(2), Part::Text, Part::Key, Part::Behind];
    let states = [
        State::Untouched,
        State::Altered(everything.to_vec()),
        State::Altered(vec![Part::Seal]),
        State::CutOff,
        State::NotSealed,
        State::Newer,
    ];
    let code = || "fuse-missing".to_owned();
    let (conforms, breaks) = (|| "conforms".to_owned(), || "nonconforming".to_owned());
    let changes = vec![
        Change::Verdict { was: "nothing-wrong-seen".to_owned(), now: "keep-away".to_owned() },
        Change::Added { code: code(), now: breaks() },
        Change::Gone { code: "fuse-smells".to_owned(), was: "not-examined".to_owned() },
        Change::Outcome { code: code(), was: conforms(), now: breaks() },
        Change::Numbers { code: code() },
        Change::Rest,
    ];
    let agains = [Again::NoVerdict, Again::Same, Again::Changed { edition: "2026-11".to_owned(), changes }];
    let breaks = vec![
        Break::Unlinked { place: 2 },
        Break::Misplaced { number: 2, after: 3 },
        Break::Missing { first: 3, last: 3 },
        Break::Missing { first: 3, last: 5 },
        Break::Twice { number: 4 },
        Break::Altered { number: 1 },
        Break::Altered { number: 4 },
    ];
    let chains = [Chain::NotChained, Chain::Unbroken(1), Chain::Unbroken(3), Chain::Broken(breaks)];
    let mut told = String::new();
    let mut tell = |said: Vec<String>| {
        for sentence in said {
            writeln!(told, "{sentence}").expect("a text takes any line");
        }
        told.push('\n');
    };
    for state in states {
        tell(seal::state(&state, KEY, "2026-11-24T10:30:00Z"));
    }
    for again in &agains {
        tell(seal::again(again, "2027-02"));
    }
    for chain in &chains {
        tell(custody::chain(chain));
    }
    let own = [seal::HEADING, seal::HOW_TO_CHECK, seal::COMPARE, seal::CLAIMS_NOTHING, custody::CHAIN_CANNOT_SEE];
    tell(own.map(str::to_owned).to_vec());
    let named = [seal::sealed_with(KEY), seal::key(KEY), seal::on_paper(KEY), seal::on_label(KEY)];
    tell(named.into_iter().chain([seal::OTHER_RULES.to_owned()]).collect());
    accepted("seals", told.trim_end());
}
