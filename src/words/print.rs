//! Print said back in plain words, as it is being copied out.

use crate::domain::marking::{FlexPrint, Rating};

use crate::domain::question::Printed;

use super::{flex_print, number};

/// What such print may look like.
pub const fn example(sort: Printed) -> &'static str {
    match sort {
        Printed::Rating => "such as 13A 250V~",
        Printed::Flex => "such as H05VV-F 3G1.25",
        Printed::Barcode => "the digits under the bars",
        Printed::Words => "",
    }
}

/// A line for each thing that was understood, and one for what was not.
pub fn understood(sort: Printed, print: &str) -> Vec<String> {
    if print.trim().is_empty() {
        return Vec::new();
    }
    match sort {
        Printed::Rating => rating(&Rating::parse(print)),
        Printed::Flex => flex(&FlexPrint::parse(print)),
        Printed::Barcode | Printed::Words => Vec::new(),
    }
}

fn rating(rating: &Rating) -> Vec<String> {
    let volts = rating.voltage.map(|(low, high)| {
        let (low, high) = (number::amount(low.amount()), number::amount(high.amount()));
        if low == high { format!("{low} mains voltage") } else { format!("{low} to {high} mains voltage") }
    });
    let most = if rating.power_is_maximum { ", the most it allows" } else { "" };
    let cores = rating.cores.map(|(cores, earth)| {
        let earth = if earth == Some(true) { ", one of them earth" } else { "" };
        format!("{cores} cores{earth}")
    });
    let lines = [
        volts,
        rating.current.map(|current| format!("{} for the whole product", number::amount(current.amount()))),
        rating.power.map(|power| format!("{}{most}", number::amount(power.amount()))),
        rating.fuse.map(|fuse| format!("a fuse of {}", number::amount(fuse.amount()))),
        rating.length.map(|length| format!("{} of flex", number::amount(length.amount()))),
        cores,
        rating.area.map(|area| format!("{} a core", number::amount(area.amount()))),
        (!rating.outputs.is_empty()).then(|| "an output of low voltage, which is not the mains rating".to_owned()),
        unread(&rating.unread),
    ];
    lines.into_iter().flatten().collect()
}

fn flex(flex: &FlexPrint) -> Vec<String> {
    let pieces = flex.pieces.iter().map(flex_print::explained);
    let oddities = flex.oddities().into_iter().map(|oddity| flex_print::oddity(&oddity));
    pieces.chain(oddities).chain(unread(&flex.unread)).collect()
}

fn unread(unread: &[String]) -> Option<String> {
    (!unread.is_empty()).then(|| format!("not understood, kept as it is: {}", unread.join(" ")))
}
