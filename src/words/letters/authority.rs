//! To the authority: product, traces, risk, evidence, and what was done and is asked.

use super::body::Body;
use super::evidence::{self, Depth};
use super::{Case, Letter, Matter, letter, traces};
use crate::domain::sample::Market;
use crate::record::Record;
use crate::words::risk;

/// The letter to the authority that watches over the safety of products.
pub fn authority(record: &Record) -> Letter {
    letter(record, write)
}

fn write(case: &Case, matter: Matter) -> String {
    let mut body = Body::default();
    body.line("[your name and address]")
        .line("[date]")
        .paragraph(to(case.record.examination.sample.market))
        .paragraph("Hello,")
        .paragraph("I examined one sample of a mains product.")
        .line(matter.in_a_sentence())
        .heading("The product and where it came from")
        .table(&traces(case.record));
    grade(&mut body, case, matter);
    if matter != Matter::Doubt {
        body.heading("Evidence");
        evidence::breaks(&mut body, case, Depth::Whole);
    }
    if case.doubts().next().is_some() {
        body.heading("What could not be told").line("I could not tell whether there is any of these:");
        evidence::doubts(&mut body, case);
    }
    evidence::bad_signs(&mut body, case);
    evidence::reach(&mut body, case);
    body.heading("What was done, and what I ask").list(done(matter)).list(asks(matter));
    evidence::caution(&mut body, case);
    body.paragraph("The file with all that was seen, its photos and the whole working can be had from me.")
        .paragraph("[your name]");
    body.finish()
}

const fn to(market: Market) -> &'static str {
    match market {
        Market::GreatBritain => "To: Trading Standards [of the place where it was sold]",
        Market::NorthernIreland => "To: [the authority that watches over product safety in Northern Ireland]",
    }
}

/// The level of risk, and whether anybody has weighed it.
fn grade(body: &mut Body, case: &Case, matter: Matter) {
    if matter == Matter::Doubt {
        return;
    }
    let scenarios = risk::scenarios(case.record, case.assessment);
    let Some(counting) = risk::counting(&scenarios, &case.assessment.findings) else { return };
    body.heading("Risk").line(&risk::whole(counting)).line(&risk::follows_from(counting, &case.assessment.findings));
    if counting.guesses() > 0 {
        body.line(risk::DRAFTS_MEAN);
    }
    body.line("It rests on judgements and not on measurements; what follows from it is for you to decide.")
        .line(&risk::method(case.record.examination.sample.market));
}

const fn done(matter: Matter) -> &'static [&'static str] {
    match matter {
        Matter::Danger => &[
            "Done: [the sample is out of use, labelled and kept; it was not posted]",
            "Done: [the seller and the marketplace were told on what day]",
        ],
        Matter::Breach => &["Done: [the sample is kept; the seller was told on what day]"],
        Matter::Doubt => &["Done: [the sample is kept and not used meanwhile]"],
    }
}

const fn asks(matter: Matter) -> &'static [&'static str] {
    match matter {
        Matter::Danger => &[
            "Asked: look into this product, and have its sale and use stopped if you find the same.",
            "Asked: tell me where to bring the sample. Nobody should use it, and I do not send it by post.",
        ],
        Matter::Breach => &["Asked: look into this product and its seller."],
        Matter::Doubt => &["Asked: tell me whether you know this product, and who could test it."],
    }
}
