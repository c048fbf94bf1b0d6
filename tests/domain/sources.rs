//! What findings are held against: the law of the market where the sample is sold, and of no other.

use plugwary::domain::sample::Equipment::Meters;
use plugwary::domain::sample::{Kind, Market};
use plugwary::words::clause::citation;

use crate::bench::Bench;

/// Everything that any finding on a sample of a market is held against.
fn sources(market: Market) -> Vec<(&'static str, Vec<String>)> {
    let findings = Kind::ALL.into_iter().flat_map(|kind| Bench::sample(kind, market, Meters).assessed().findings);
    findings.map(|finding| (finding.code, finding.against.iter().map(citation).collect())).collect()
}

#[test]
fn a_sample_sold_in_great_britain_is_held_against_no_law_of_the_union() {
    for (code, sources) in sources(Market::GreatBritain) {
        let foreign = |source: &&String| {
            source.contains("(EU)")
                || source.contains("/EU")
                || source.contains("(EC)") && !source.contains("British law")
        };
        assert_eq!(sources.iter().find(foreign), None, "{code}");
    }
}

#[test]
fn a_sample_sold_in_northern_ireland_is_held_against_the_law_that_holds_there() {
    for (code, sources) in sources(Market::NorthernIreland) {
        for elsewhere in ["2016/1101", "2005/1803", "British law"] {
            assert_eq!(sources.iter().find(|source| source.contains(elsewhere)), None, "{code}");
        }
    }
    let of = |wanted: &str| sources(Market::NorthernIreland).into_iter().find(|(code, _)| *code == wanted);
    let maker = of("maker-not-named").expect("the maker is looked for");
    assert!(maker.1.iter().any(|source| source.contains("2023/988")), "{maker:?}");
}

#[test]
fn the_law_on_plugs_holds_in_both_markets() {
    for market in Market::ALL {
        let marked = |(code, sources): &(&str, Vec<String>)| {
            *code == "approval-mark-missing" && sources.iter().any(|source| source.contains("1994/1768"))
        };
        assert!(sources(market).iter().any(marked), "{}", market.code());
    }
}

#[test]
fn every_finding_is_held_against_something_in_every_market() {
    for market in Market::ALL {
        for (code, sources) in sources(market) {
            assert!(!sources.is_empty(), "{code}, {}", market.code());
        }
    }
}
