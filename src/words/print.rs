//! Print said back in plain words, as it is being copied out.

use crate::domain::marking::{Covering, Duty, Family, FlexPrint, FlexType, Rating};

use crate::domain::quantity::Measurand;
use crate::domain::question::Printed;

use super::number;

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
        rating.has_output.then(|| "an output of low voltage, which is not the mains rating".to_owned()),
        unread(&rating.unread),
    ];
    lines.into_iter().flatten().collect()
}

fn flex(flex: &FlexPrint) -> Vec<String> {
    let earth = match flex.has_earth {
        Some(true) => ", one of them green-and-yellow",
        Some(false) => ", none of them green-and-yellow",
        None => "",
    };
    let gauge = flex.gauge.map_or_else(String::new, |gauge| format!(" (American size {gauge})"));
    let lines = [
        flex.kind.as_ref().map(kind),
        flex.voltages.map(|(to_earth, between)| format!("for {to_earth}/{between} V")),
        flex.cores.map(|cores| format!("{cores} cores{earth}")),
        flex.area.map(|area| format!("{} a core{gauge}", number::amount(area.amount()))),
        (!flex.origin_marks.is_empty()).then(|| format!("a licensing mark: {}", flex.origin_marks.join(", "))),
        unread(&flex.unread),
    ];
    lines.into_iter().flatten().collect()
}

fn kind(kind: &FlexType) -> String {
    let duty = match kind.duty {
        Duty::Light => "light flex, for lamps and small things, not for leads",
        Duty::Ordinary => "ordinary household flex",
        Duty::Heavy => "heavy flex",
        Duty::NoFlex => "wire for fixed wiring, no flex",
    };
    let sheath = match kind.sheath {
        Covering::Pvc => "PVC",
        Covering::Rubber => "rubber",
        Covering::Other => "another covering",
    };
    let family = match kind.family {
        Family::Hd361 => "European code",
        Family::Iec60227 | Family::Iec60245 => "international number",
        Family::Chinese => "Chinese code",
        Family::American => "American code",
    };
    let flat = if kind.is_flat { ", flat" } else { "" };
    format!("{}: {duty}, {sheath}{flat} ({family})", kind.code)
}

fn unread(unread: &[String]) -> Option<String> {
    (!unread.is_empty()).then(|| format!("not understood, kept as it is: {}", unread.join(" ")))
}
