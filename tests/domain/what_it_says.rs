//! Checks of print, package and listing.

mod doubts;

use plugwary::domain::check;
use plugwary::domain::check::plug::{fuse, print as plug_print};
use plugwary::domain::check::sockets::connector;
use plugwary::domain::check::what_it_says::print::misquoted;
use plugwary::domain::check::what_it_says::{identity, looked_up, marks, print, promises};
use plugwary::domain::examination::Answer;
use plugwary::domain::facts;
use plugwary::domain::finding::Conformity::{Conforms, Inconclusive, Nonconforming, NotApplicable, NotExamined};
use plugwary::domain::finding::Severity::{BadSign, Breach, Danger};
use plugwary::domain::finding::{Basis, ClaimPlace, Conformity, Reason};
use plugwary::domain::instrument::Instrument;
use plugwary::domain::quantity::Unit;
use plugwary::domain::question::{Ask, Target};
use plugwary::domain::sample::Equipment::{Eyes, HandTools, Meters};
use plugwary::domain::sample::{Kind, Market, Place};
use plugwary::domain::standard::gtin;
use plugwary::domain::view::View;
use plugwary::domain::walk;
use plugwary::words;

use crate::bench::Bench;

const BODY: Target = Target::Claim(ClaimPlace::Body);
const PACKAGE: Target = Target::Claim(ClaimPlace::Package);
const PLUG: Target = Target::Claim(ClaimPlace::Plug);

/// A lead of which everything that eyes are asked to copy was copied: this on the body, nothing on the package.
fn on_body(rating: &str) -> Bench {
    Bench::lead(Eyes).printed(facts::RATING, BODY, rating).answer(facts::RATING, PACKAGE, Answer::Nothing)
}

fn in_ni(bench: Bench) -> Bench {
    let mut bench = bench;
    bench.0.sample.market = Market::NorthernIreland;
    bench
}

#[test]
fn a_buyer_types_two_ratings_body_first_and_taps_four_times() {
    let asked = |bench: &Bench| {
        let view = View::new(&bench.0);
        let here = walk::asked(&view).into_iter().filter(|(question, _)| question.place == Place::WhatItSays);
        here.map(|(question, target)| (question.id, target)).collect::<Vec<_>>()
    };
    let of_buyer = asked(&Bench::lead(Eyes));
    assert_eq!(of_buyer.first(), Some(&("rating", BODY)));
    assert_eq!(of_buyer.get(1), Some(&("rating", PACKAGE)));
    assert_eq!(of_buyer.len(), 8, "those that inform bad signs only come at the end");
    let last: Vec<&str> = of_buyer.iter().rev().take(3).rev().map(|(id, _)| *id).collect();
    assert_eq!(last, ["print-faults", "standards-named", "barcode"]);
    let ratings = asked(&Bench::lead(HandTools)).into_iter().filter(|(id, _)| *id == "rating").count();
    assert_eq!(ratings, 4, "body, plug, package and listing; the flex has a question of its own");
}

/// BS 1363-1 (read): a 13 A plug, 3250 W at 250 V.
#[test]
fn a_total_claim_above_13_amperes_breaks() {
    on_body("13A 250V~").expect("rating-above-plug", Conforms);
    on_body("13A 250V~ 3250W MAX").expect("rating-above-plug", Conforms);
    on_body("16A 250V~").expect_break("rating-above-plug", Breach);
    on_body("MAX 4000W 250V~").expect_break("rating-above-plug", Breach);
    on_body("MAX 4000W").expect_break("rating-above-plug", Breach);
    on_body("220-240V~ MAX 3120W").expect("rating-above-plug", Conforms);
    on_body("BS 1363").expect("rating-above-plug", NotApplicable);
    let package = Bench::lead(Eyes).printed(facts::RATING, BODY, "13A 250V~");
    package.expect("rating-above-plug", NotExamined);
    package.clone().answer(facts::RATING, PACKAGE, Answer::Refused).expect("rating-above-plug", Inconclusive);
    package.printed(facts::RATING, PACKAGE, "MAX 16A").expect_break("rating-above-plug", Breach);
}

#[test]
fn a_claim_above_the_plug_is_a_danger_where_no_fuse_stops_it() {
    let claim = on_body("16A 250V~");
    claim.clone().one(fuse::IN_THE_HOLDER, "bridged").expect_break("rating-above-plug", Danger);
    claim.clone().one(fuse::IN_THE_HOLDER, "empty").expect_break("rating-above-plug", Danger);
    claim.clone().one(facts::FUSE_RATING, "above-13").expect_break("rating-above-plug", Danger);
    let thin = claim.clone().printed(facts::FLEX_PRINT, Target::Sample, "H03VV-F 3G0.5");
    thin.one(facts::FUSE_RATING, "13").expect_break("rating-above-plug", Danger);
    claim.clone().one(facts::FUSE_RATING, "13").expect_break("rating-above-plug", Breach);
    // 0.75 mm² behind 13 A is too hot a flex on a lead, though a plug may have it.
    for (size, severity) in [("0.75", Danger), ("1.5", Breach)] {
        let lead = claim.clone().printed(facts::FLEX_PRINT, Target::Sample, &format!("H05VV-F 3G{size}"));
        lead.one(facts::FUSE_RATING, "13").expect_break("rating-above-plug", severity);
    }
}

#[test]
fn print_that_nobody_understands_closes_nothing() {
    let finding = on_body("strong quality").finding("rating-above-plug").map(|finding| finding.judgement);
    let judged = finding.map(|judgement| (judgement.outcome, judgement.reason));
    assert_eq!(judged, Some((Inconclusive, Reason::PrintNotUnderstood { place: ClaimPlace::Body })));
}

#[test]
fn the_product_itself_states_what_it_carries() {
    on_body("13A 250V~").expect("rating-missing", Conforms);
    let bare = Bench::lead(Eyes).answer(facts::RATING, BODY, Answer::Nothing);
    bare.expect("rating-missing", NotExamined);
    bare.clone().any(plug_print::PLUG_PRINT, &["rating"]).expect("rating-missing", Conforms);
    bare.clone().any(plug_print::PLUG_PRINT, &["maker"]).expect_break("rating-missing", Breach);
    bare.clone().printed(facts::RATING, PLUG, "FUSED").expect_break("rating-missing", Breach);
    let boxed = bare.any(plug_print::PLUG_PRINT, &[]).printed(facts::RATING, PACKAGE, "13A 250V~");
    boxed.expect_break("rating-missing", Breach);
    Bench::lead(Eyes).expect("rating-missing", NotExamined);
}

/// 10 A at 250 V are 2500 W; half a step of each digit is granted.
#[test]
fn watts_beyond_volts_times_amperes_break() {
    on_body("10A 250V~ 2500W MAX").expect("rating-impossible", Conforms);
    on_body("10A 250V~ 4000W MAX").expect_break("rating-impossible", Breach);
    on_body("13A 250V~ 3680W MAX").expect_break("rating-impossible", Breach);
    on_body("13A 250V~").expect("rating-impossible", NotApplicable);
    Bench::lead(Eyes).expect("rating-impossible", NotExamined);
}

#[test]
fn the_weaker_word_that_says_more_is_a_breach() {
    let package =
        |rating| Bench::lead(Eyes).printed(facts::RATING, BODY, "10A 250V~").printed(facts::RATING, PACKAGE, rating);
    package("13A 250V~").expect_break("ratings-disagree", Breach);
    package("5A 250V~").expect_break("ratings-disagree", BadSign);
    package("10A 250V~").expect("ratings-disagree", Conforms);
    package("10A 110V~").expect_break("ratings-disagree", BadSign);
    let boast = Bench::lead(Eyes).printed(facts::RATING, PACKAGE, "3x1.5mm2");
    let boast = boast.printed(facts::FLEX_PRINT, Target::Sample, "H05VV-F 3G0.75");
    boast.expect_break("ratings-disagree", Breach);
    on_body("10A 250V~").expect("ratings-disagree", Conforms);
    Bench::lead(Eyes).expect("ratings-disagree", NotExamined);
}

#[test]
fn a_flex_shorter_than_promised_breaks_beyond_the_tapes_doubt() {
    let long = |metres| {
        let promised = Bench::lead(HandTools).printed(facts::RATING, PACKAGE, "2m 13A 250V~");
        promised.reads(facts::FLEX_LENGTH, Target::Sample, (metres, 0.001, Unit::Metre), Instrument::Tape)
    };
    // A tape to 0.2 % and 5 mm has a standard uncertainty of about 5 mm at 2 m.
    long(2.02).expect("length-overstated", Conforms);
    long(2.00).expect("length-overstated", Inconclusive);
    long(1.98).expect_break("length-overstated", Breach);
    let unpromised =
        Bench::lead(HandTools).reads(facts::FLEX_LENGTH, Target::Sample, (1.2, 0.001, Unit::Metre), Instrument::Tape);
    unpromised.expect("length-overstated", NotExamined);
    Bench::lead(HandTools).printed(facts::RATING, PACKAGE, "2m").expect("length-overstated", NotExamined);
}

#[test]
fn a_double_square_is_a_danger_and_closes_no_earth_check() {
    let marked = |bench: Bench| bench.any(marks::SEEN, &["double-square"]);
    marked(Bench::lead(Eyes)).expect_break("class-mark-contradicted", Danger);
    marked(Bench::cord_set(Eyes)).expect_break("class-mark-contradicted", Danger);
    Bench::lead(Eyes).any(marks::SEEN, &[]).expect("class-mark-contradicted", Conforms);
    let two_holes = Bench::cord_set(Eyes).one(connector::PATTERN, "two-holes");
    marked(two_holes).expect("class-mark-contradicted", Inconclusive);
    for code in ["earth-pin-plastic", "socket-without-earth", "earth-contact-absent", "cores-too-few"] {
        marked(Bench::lead(Meters)).expect(code, NotExamined);
    }
}

/// SI 2016/1101 (read): CE or UKCA in Great Britain; Directive 2014/35/EU (memory-high): CE in Northern Ireland.
#[test]
fn goods_with_usb_bear_ce_or_in_great_britain_ukca() {
    let usb = |seen: &[&str]| Bench::lead(Eyes).any(facts::EXTRAS, &["usb"]).any(marks::SEEN, seen);
    usb(&["ce"]).expect("conformity-mark-missing", Conforms);
    usb(&["ukca"]).expect("conformity-mark-missing", Conforms);
    usb(&[]).expect_break("conformity-mark-missing", Breach);
    in_ni(usb(&["ce"])).expect("conformity-mark-missing", Conforms);
    in_ni(usb(&["ukca"])).expect_break("conformity-mark-missing", Breach);
    usb(&[]).any(identity::STATED, &["package-gone"]).expect("conformity-mark-missing", Inconclusive);
    Bench::lead(Eyes).any(marks::SEEN, &[]).expect("conformity-mark-missing", NotExamined);
    Bench::lead(Eyes).any(facts::EXTRAS, &["switch"]).expect("conformity-mark-missing", NotApplicable);
}

#[test]
fn a_plain_lead_and_a_plug_bear_neither_mark() {
    let lead = |extras: &[&str], seen: &[&str]| Bench::lead(Eyes).any(facts::EXTRAS, extras).any(marks::SEEN, seen);
    lead(&[], &["ce"]).expect_break("mark-not-applicable", BadSign);
    lead(&["switch"], &["ukca"]).expect_break("mark-not-applicable", BadSign);
    lead(&["usb"], &["ce"]).expect("mark-not-applicable", Conforms);
    lead(&[], &[]).expect("mark-not-applicable", Conforms);
    Bench::lead(Eyes).any(marks::SEEN, &["ce"]).expect("mark-not-applicable", Inconclusive);
    let on_plug = lead(&["usb"], &["ce"]).any(plug_print::PLUG_PRINT, &["ce-or-ukca"]);
    on_plug.expect_break("mark-not-applicable", BadSign);
}

#[test]
fn poor_marks_and_print_are_bad_signs() {
    let seen = |mark| Bench::lead(Eyes).any(marks::SEEN, &[mark]);
    seen("mark-malformed").expect_break("conformity-mark-malformed", BadSign);
    seen("iso-9001").expect_break("management-mark-as-product-mark", BadSign);
    seen("iso-9001").expect_break("waste-mark-missing", BadSign);
    seen("iso-9001").any(identity::STATED, &["package-gone"]).expect("waste-mark-missing", Inconclusive);
    seen("wheeled-bin").expect("waste-mark-missing", Conforms);
    seen("wheeled-bin").expect("conformity-mark-malformed", Conforms);
    seen("wheeled-bin").expect("management-mark-as-product-mark", Conforms);
    Bench::lead(Eyes).any(print::FAULTS, &["misspelt"]).expect_break("print-misspelt", BadSign);
    Bench::lead(Eyes).any(print::FAULTS, &["sharp"]).expect_break("packaging-sharp", BadSign);
    Bench::lead(Eyes).any(print::FAULTS, &["sharp"]).expect("print-misspelt", Conforms);
    Bench::lead(Eyes).any(print::FAULTS, &["misspelt"]).expect("packaging-sharp", Conforms);
    Bench::lead(Eyes).any(identity::STATED, &["maker"]).expect_break("seller-untraceable", BadSign);
    Bench::lead(Eyes).any(identity::STATED, &["seller"]).expect("seller-untraceable", Conforms);
}

#[test]
fn a_name_that_is_missing_weighs_as_the_market_and_the_goods_have_it() {
    let checks = [
        ("maker-not-named", "maker"),
        ("importer-not-named", "local-address"),
        ("type-or-batch-missing", "type-or-batch"),
        ("instructions-missing", "instructions"),
    ];
    for (code, what) in checks {
        let stated = |codes: &[&str]| Bench::lead(Eyes).any(facts::EXTRAS, &[]).any(identity::STATED, codes);
        stated(&[what]).expect(code, Conforms);
        stated(&["seller"]).expect_break(code, BadSign);
        stated(&[]).expect_break(code, Breach);
        stated(&["seller"]).any(facts::EXTRAS, &["usb"]).expect_break(code, Breach);
        stated(&["seller"]).any(facts::EXTRAS, &["electronics"]).expect_break(code, Breach);
        in_ni(stated(&["seller"])).expect_break(code, Breach);
        stated(&["seller", "package-gone"]).expect(code, Inconclusive);
        Bench::lead(Eyes).expect(code, NotExamined);
    }
}

/// Regulation (EU) 2023/988, 9 (memory-high): postal and electronic address. It is not the law of Great Britain.
#[test]
fn an_electronic_address_is_wanted_in_northern_ireland_alone() {
    let stated = |codes: &[&str]| Bench::lead(Eyes).any(identity::STATED, codes);
    let code = "electronic-address-missing";
    in_ni(stated(&["maker", "local-address"])).expect_break(code, Breach);
    in_ni(stated(&["electronic-address"])).expect(code, Conforms);
    in_ni(stated(&["maker", "package-gone"])).expect(code, Inconclusive);
    in_ni(Bench::lead(Eyes)).expect(code, NotExamined);
    stated(&["maker"]).expect(code, NotApplicable);
}

#[test]
fn a_promise_for_outdoors_needs_splash_proof_and_rubber() {
    let promised = Bench::lead(Eyes).any(facts::PROMISES, &["outdoor"]);
    let flex = |bench: &Bench, print| bench.clone().printed(facts::FLEX_PRINT, Target::Sample, print);
    promised.expect("outdoor-promise-unmet", NotExamined);
    promised.clone().any(promises::OUTDOORS, &[]).expect_break("outdoor-promise-unmet", Breach);
    promised.clone().any(promises::OUTDOORS, &["used-wet"]).expect_break("outdoor-promise-unmet", Danger);
    let proof = promised.clone().any(promises::OUTDOORS, &["ipx4-or-more"]);
    proof.expect("outdoor-promise-unmet", NotExamined);
    flex(&proof, "H05VV-F 3G1.5").expect_break("outdoor-promise-unmet", Breach);
    flex(&proof, "H07RN-F 3G1.5").expect("outdoor-promise-unmet", Conforms);
    flex(&proof, "unknown").expect("outdoor-promise-unmet", Inconclusive);
    let wet = promised.any(promises::OUTDOORS, &["ipx4-or-more", "used-wet"]);
    flex(&wet, "H05VV-F 3G1.5").expect_break("outdoor-promise-unmet", Danger);
    Bench::lead(Eyes).any(facts::PROMISES, &["surge"]).expect("outdoor-promise-unmet", NotApplicable);
}

#[test]
fn what_nobody_looked_up_was_not_looked_at_and_finding_nothing_proves_nothing() {
    Bench::lead(HandTools).expect("recalled-product", NotExamined);
    Bench::lead(HandTools).one(looked_up::RECALL, "recalled").expect_break("recalled-product", Danger);
    let nothing_found = Bench::lead(HandTools).one(looked_up::RECALL, "nothing-found");
    assert!(nothing_found.assessed().dangers_not_tested.contains(&"recalled-product"));
    nothing_found.expect("recalled-product", Conforms);
    let approval = |answer| Bench::lead(HandTools).one(looked_up::APPROVAL, answer);
    approval("another-product").expect_break("approval-number-false", Breach);
    approval("no-such-number").expect_break("approval-number-false", Breach);
    approval("no-number-printed").expect("approval-number-false", NotApplicable);
    let fits = approval("fits").finding("approval-number-false").map(|f| (f.outcome(), f.judgement.basis));
    assert_eq!(fits, Some((Conforms, Basis::Print)));
}

#[test]
fn standards_for_other_things_are_named() {
    assert!(misquoted("BS 1363-2, BS1363/A, BS EN 60320-1, IEC 60884-2-7 and EN50525-2-11:2011").is_empty());
    assert!(misquoted("13A 250V 50Hz, ISO 9001:2015").is_empty());
    assert_eq!(misquoted("GB 2099.3 and BS EN 99999-1"), ["GB 2099.3", "BS EN 99999-1"]);
    assert_eq!(misquoted("BS1363 UL817"), ["UL817"]);
    let named = |print| Bench::lead(HandTools).printed(print::STANDARDS, Target::Sample, print);
    named("BS 1363-2").expect("standard-misquoted", Conforms);
    named("GB 2099.3").expect_break("standard-misquoted", BadSign);
    Bench::lead(HandTools)
        .answer(print::STANDARDS, Target::Sample, Answer::Nothing)
        .expect("standard-misquoted", NotApplicable);
}

/// Worked check digits of GS1 (629104150021 gives 3) and of published examples: 890400021003 and 730001100001 and 03600024145 give 7.
#[test]
fn the_last_digit_of_a_barcode_follows_from_the_others() {
    for number in ["6291041500213", "8904000210037", "7300011000017", "036000241457"] {
        assert_eq!(gtin::is_valid(number), Some(true), "{number}");
    }
    let barcode = |print| Bench::lead(HandTools).printed(print::BARCODE, Target::Sample, print);
    let cases: [(&str, Conformity); 5] = [
        ("6291041500213", Conforms),
        ("6 291041 500213", Conforms),
        ("6291041500214", Nonconforming),
        ("629104150021", Nonconforming),
        ("62910415002", Inconclusive),
    ];
    for (print, outcome) in cases {
        barcode(print).expect("barcode-invalid", outcome);
    }
    barcode("6291041500214").expect_break("barcode-invalid", BadSign);
    Bench::lead(HandTools)
        .answer(print::BARCODE, Target::Sample, Answer::Nothing)
        .expect("barcode-invalid", NotApplicable);
}

#[test]
fn a_cord_set_is_asked_the_same_and_its_mark_is_left_open() {
    let set = Bench::sample(Kind::CordSet, Market::GreatBritain, Eyes).any(facts::EXTRAS, &[]);
    set.any(marks::SEEN, &["ce"]).expect("mark-not-applicable", Inconclusive);
}

#[test]
fn every_question_check_and_answer_of_what_it_says_has_words() {
    for question in check::what_it_says::QUESTIONS {
        let found = words::question::of(question);
        let codes: Vec<_> = found.answers.iter().map(|answer| answer.code).collect();
        let of_print: &[&str] = if matches!(question.ask, Ask::Printed(_)) { &["nothing"] } else { &[] };
        assert_eq!((found.id, codes), (question.id, [question.answers(), of_print].concat()));
        let needs_sentence = !matches!(question.ask, Ask::One(_));
        assert_eq!(needs_sentence, !found.says.is_empty(), "sentence of {}", question.id);
        assert!(found.asks.chars().count() < 60, "{}", question.id);
        assert!(found.answers.iter().all(|answer| answer.answer.chars().count() < 45), "answers of {}", question.id);
    }
    for check in check::what_it_says::CHECKS {
        assert_eq!(words::check::of(check.code).code, check.code);
    }
}
