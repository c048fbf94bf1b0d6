//! To the marketplace: take the listing down, and why; or ask the seller for what settles a doubt.

use super::body::Body;
use super::evidence::{self, Depth};
use super::{Case, Letter, Matter, letter, traces};
use crate::record::Record;

/// The letter to the marketplace.
pub fn marketplace(record: &Record) -> Letter {
    letter(record, write)
}

fn write(case: &Case, matter: Matter) -> String {
    let mut body = Body::default();
    body.line("[your name and address]")
        .line("[date]")
        .paragraph("To: [name of the marketplace, its contact for product safety]")
        .paragraph("Hello,")
        .paragraph("This product is offered on your pages. I examined one sample of it.")
        .line(matter.in_a_sentence())
        .heading("The listing")
        .line("Address of the listing: [address]")
        .line("Number of the listing or article: [number]")
        .line("Seller: [name on the listing]")
        .heading("The product")
        .table(&traces(case.record));
    match matter {
        Matter::Danger | Matter::Breach => {
            body.heading("Why");
            evidence::breaks(&mut body, case, Depth::InShort);
        }
        Matter::Doubt => {
            body.heading("What could not be told").line("I could not tell whether there is any of these:");
            evidence::doubts(&mut body, case);
        }
    }
    body.heading("What I ask of you").list(asks(matter));
    if matter == Matter::Danger {
        body.line("Nobody should use it. I keep the sample out of use, labelled, and post it to nobody.");
    }
    evidence::reach(&mut body, case);
    evidence::caution(&mut body, case);
    body.paragraph("The numbers with their doubt stand in the file that I can send you.")
        .paragraph("Please tell me by [date] what you did.")
        .paragraph("[your name]");
    body.finish()
}

const fn asks(matter: Matter) -> &'static [&'static str] {
    match matter {
        Matter::Danger => &[
            "Take this listing down now, and look at other listings of the same product.",
            "Tell those who bought one to stop using it.",
            "Keep what you know of the seller and of the deliveries, in case an authority asks.",
        ],
        Matter::Breach => &[
            "Take this listing down until what breaks the rules is put right.",
            "Keep what you know of the seller, in case an authority asks.",
        ],
        Matter::Doubt => &[
            "Ask the seller for the maker’s declaration and test report for this type, and send me what they say.",
            "I do not ask you to take the listing down.",
        ],
    }
}
