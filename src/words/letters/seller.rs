//! To the seller: what was found, and the money back; or what could not be told, and the papers that settle it.

use super::body::Body;
use super::evidence::{self, Depth};
use super::{Case, Letter, Matter, letter, traces};
use crate::record::Record;

/// The letter to the seller.
pub fn seller(record: &Record) -> Letter {
    letter(record, write)
}

fn write(case: &Case, matter: Matter) -> String {
    let mut body = Body::default();
    body.line("[your name and address]")
        .line("[date]")
        .paragraph("To: [name and address of the seller]")
        .paragraph("Hello,")
        .paragraph("I have the product named below from you. I examined this one sample.")
        .line(matter.in_a_sentence())
        .heading("The product")
        .table(&traces(case.record));
    match matter {
        Matter::Danger | Matter::Breach => {
            body.heading("What I found");
            evidence::breaks(&mut body, case, Depth::WithNumbers);
        }
        Matter::Doubt => {
            body.heading("What could not be told").line("I could not tell whether there is any of these:");
            evidence::doubts(&mut body, case);
        }
    }
    body.heading("What I ask of you").list(asks(case, matter));
    for sentence in of_the_sample(matter) {
        body.line(sentence);
    }
    evidence::reach(&mut body, case);
    evidence::caution(&mut body, case);
    body.paragraph("Please answer by [date].").paragraph("[your name]");
    body.finish()
}

fn asks(case: &Case, matter: Matter) -> Vec<String> {
    let who =
        format!("Tell me who made it, who brought it into {}, and which batch it is from.", evidence::market(case));
    let asks: &[&str] = match matter {
        Matter::Danger => &[
            "Give me my money back.",
            "Stop selling it now, until it is shown that others are not like this one, and tell those who bought one to stop using it.",
        ],
        Matter::Breach => &["Give me my money back.", "Do not sell it on as it is."],
        Matter::Doubt => {
            &["Send me what you have that settles these: the maker’s declaration and test report for this type."]
        }
    };
    asks.iter().map(|ask| (*ask).to_owned()).chain([who]).collect()
}

const fn of_the_sample(matter: Matter) -> &'static [&'static str] {
    match matter {
        Matter::Danger => &[
            "Nobody should use it. I keep the sample out of use, labelled, as evidence.",
            "I do not post it back: what is dangerous should be neither posted nor sold again. Please do not ask me to.",
        ],
        Matter::Breach => &["I keep the sample as it is for now, as evidence."],
        Matter::Doubt => &["I do not use it meanwhile."],
    }
}
