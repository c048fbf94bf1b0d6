//! What a product and its way can be traced by, as far as the record knows it.

use crate::domain::examination::{Answer, Answered};
use crate::domain::question::Target;
use crate::record::Record;
use crate::words::moment::moment;
use crate::words::statement::sentence;
use crate::words::{reason, verdict, which};

/// Questions of print that say which product it is, and what they are called here.
const PRINT: [(&str, &str); 4] = [
    ("rating", "Print"),
    ("flex-print", "Print on the flex"),
    ("standards-named", "Standards it names"),
    ("barcode", "Number under the barcode"),
];

/// Everything that traces the product, as names and values; what nobody has said stands in square brackets, to be filled in.
///
/// Whatever a record comes to know of who made, brought in, sold, bought and kept the sample belongs here and nowhere else.
pub fn traces(record: &Record) -> Vec<(&'static str, String)> {
    let sample = &record.examination.sample;
    let bought = &record.custody.acquisition;
    let or = |text: &str, placeholder: &str| {
        if text.trim().is_empty() { placeholder.to_owned() } else { text.to_owned() }
    };
    let mut traces = vec![
        ("Product", or(&sample.title, "[what it is called]")),
        ("Kind", verdict::kind(sample.kind).to_owned()),
        ("Sold in", verdict::market(sample.market).to_owned()),
        ("Number of the sample", or(&sample.number, "[the number on the sample or its bag]")),
        ("Where it came from", or(&record.origin, "[where and when it was bought, and from whom]")),
        ("Seller", or(&bought.seller, "[name and address, as far as known]")),
        ("Place", or(&bought.place, "[shop, market or website]")),
        ("Bought", or(&moment(&bought.when), "[when]")),
        ("Price", or(&bought.price, "[price]")),
        ("Order or receipt", or(&bought.order, "[number]")),
        ("Listing", or(&bought.listing, "[address of the listing, if there is one]")),
    ];
    if !bought.parcel.trim().is_empty() {
        traces.push(("Parcel when it came", bought.parcel.clone()));
    }
    traces.extend(PRINT.iter().flat_map(|(question, name)| printed(record, question, name)));
    let answers = record.examination.answers.iter();
    let identity = answers.filter(|answered| answered.question.id == "identity" && answered.answer != Answer::Later);
    traces.extend(identity.map(|answered| ("Named on it or its papers", sentence(answered, sample.kind))));
    traces.extend([
        ("Maker", "[name and address, as printed]".to_owned()),
        ("Importer", "[name and address, as printed]".to_owned()),
        ("Type, batch or serial number", "[as printed]".to_owned()),
    ]);
    if let Some(examined) = examined(record) {
        traces.push(("Examined", examined));
    }
    traces
}

/// What was copied from the product, by question.
fn printed(record: &Record, question: &str, name: &'static str) -> Vec<(&'static str, String)> {
    let kind = record.examination.sample.kind;
    let of = |answered: &Answered| match (&answered.answer, answered.target) {
        (Answer::Printed(print), Target::Claim(place)) => {
            Some((name, format!("“{print}” on {}", which::claim(place, kind))))
        }
        (Answer::Printed(print), Target::Sample | Target::Socket(_) | Target::Core(_)) => {
            Some((name, format!("“{print}”")))
        }
        _ => None,
    };
    record.examination.answers.iter().filter(|answered| answered.question.id == question).filter_map(of).collect()
}

fn examined(record: &Record) -> Option<String> {
    let times = match (record.begun.as_str(), record.changed.as_str()) {
        ("", "") => return None,
        (begun, "") => format!("begun {}", moment(begun)),
        ("", changed) => format!("last changed {}", moment(changed)),
        (begun, changed) => format!("begun {}, last changed {}", moment(begun), moment(changed)),
    };
    Some(reason::capital(&times))
}
