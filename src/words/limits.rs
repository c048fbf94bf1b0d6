//! The page of limits and rules in words. Only the native command makes it: the app has no need of these.

use uom::si::ratio::{percent, ratio};
use uom::si::time::second;

use super::{clause, number};
use crate::domain::quantity::Unit;
use crate::domain::standard::en50525::Duty;
use crate::domain::standard::registry::{Given, Range, Value};
use crate::domain::standard::{
    Clause, Provenance, adiabatic, astm_b566, astm_b869, awg, bs1362, bs1363_1, bs1363_2, bs7671_flex, bs7671_shock,
    cord_type, en50525, gtin, hd308, hd361, iec60227_1, iec60228, iec60287, iec60384_14, iec60799, iet_code, law_gb,
    law_ni, marks,
};

/// Title of the page.
pub const TITLE: &str = "Limits and rules";
/// Leads back to the app.
pub const BACK: &str = "Back to Plugwary";
/// Said first.
pub const INTRODUCTION: &[&str] = &[
    "Everything that decides a finding in Plugwary: each limit, each rule, where it is printed, how sure we are of it, and which faults it decides.",
    "No standard was open on the desk: they are sold, and most of what stands here was read in public second-hand copies: national editions, official pages, catalogues, tables in textbooks. Where a value is only recalled, that stands beside it. If you have the standard and it says otherwise, the standard is right.",
    "A measured value is inside a limit if the chance that its true value keeps it is at least 95 %, and outside if it is at most 5 % (JCGM 106). Between the two nothing is decided: “can’t tell”. A printed value that is exactly a limit keeps it.",
];
/// Heading.
pub const LIMITS: &str = "Limits";
/// Heading.
pub const RULES: &str = "Rules without a number";
/// Heading.
pub const PRACTICE: &str = "Usual practice, without a source";
/// Said under it.
pub const PRACTICE_MEANS: &str =
    "No publication that we know of stands behind these. They are facts of the trade, or lines that we drew ourselves.";
/// Heading of the faults that rest on it.
pub const PRACTICE_FAULTS: &str = "Faults that rest on usual practice, in whole or in part";
/// Heading.
pub const MODELS: &str = "Numbers inside models";
/// Said under it.
pub const MODELS_MEANS: &str = "These decide nothing by themselves: a limit or a reckoning is made of them.";
/// Heading.
pub const PRINT: &str = "How print is read";
/// Heading.
pub const LEFT_OUT: &str = "What is left out";

/// What the app does not know or does not do.
pub const OMISSIONS: &[&str] = &[
    "Editions later than those named here were not compared: that of BS 1363 of 2023, for one.",
    "The spacing of pins has no tolerance of its own: the standard has a gauge (Figure 5). The limit here only screens.",
    "Tests that need a laboratory: the gauge, pulls and twists of the cord and the pins, temperature rise, electric strength of type tests, breaking capacity of fuses, resistance to heat, fire and blows, switches by the thousand.",
    "The length of the sleeves on the pins: it is recalled too weakly to ask for.",
    "Adaptors (BS 1363-3), cable reels (IEC 61242), chargers and plugs of other countries. A foreign plug is named and no more.",
    "Two-core cords and flat cords: their sizes are others, and no two-core flex is right on an earthed product. Rubber cords are held to no sizes.",
    "1.25 mm² is no size of IEC 60228. Its resistance is recalled and agrees with its neighbours.",
    "The earth limits of the Continent (EN 50678: 0.3 Ω up to 5 m) and of Australia (1 Ω): samples for the United Kingdom are held to 0.1 Ω beyond the flex, which is tighter for usual leads.",
    "The leakage limit of 5 mA of the Code of Practice, 5th edition: it is no line for a current through a person.",
    "Coiled, bunched or covered flex: no model here reckons how hot it gets.",
];

/// Begins the list of faults that something decides.
pub const DECIDES: &str = "Decides: ";

/// What each limit is.
const WHAT: &[(&str, &str)] = &[
    ("plug-rating", "Rating of a plug, and the most that a product may claim"),
    ("pin-to-edge", "From line or neutral pin to the edge of the plug"),
    ("pin-far-from-fingers", "From line or neutral pin to the edge of the plug, below which it is a danger"),
    ("live-pin-width", "Width of the line and neutral pins"),
    ("earth-pin-width", "Width of the earth pin"),
    ("pin-thickness", "Thickness of each pin"),
    ("live-pin-length", "Length of the line and neutral pins"),
    ("earth-pin-length", "Length of the earth pin"),
    ("pin-spacing", "From line to neutral, and from the earth pin to their line, centre to centre"),
    ("pin-grace", "What a recalled size of a pin is granted beyond the doubt of the reading"),
    ("fuse-rating", "Rating of a plug fuse"),
    ("fuse-length", "Length of a plug fuse over both caps"),
    ("fuse-cap-diameter", "Thickness of its caps; told, never decides"),
    ("fuse-mass", "What a plug fuse weighs; told, never decides"),
    ("fuse-carries", "What a plug fuse carries for half an hour"),
    ("fuse-for-flex", "Largest fuse before a flex"),
    ("fuse-for-inrush", "Largest fuse before a thin flex, where some equipment needs it to start"),
    ("current-for-flex", "Current of a product whose flex names no size, and the size that it is held to"),
    ("thickest-flex", "Thickest flex that a plug takes"),
    ("flex-rating", "What a flex carries all the time"),
    ("thinnest-flex", "Thinnest flex for mains"),
    ("cord-set-size", "Flex of a cord set, by the current of its connector"),
    ("short-cord-set-size", "Flex of a short cord set, by the current of its connector"),
    ("short-cord-set", "Length of a short cord set"),
    ("connector-rating", "What a connector carries"),
    ("lead-length", "Length of a lead without an RCD; advice, not law"),
    ("print-gap", "Gap between one print on the flex and the next"),
    ("share-of-a-colour", "Share of green, and of yellow, on any 15 mm of the earth core"),
    ("sheath-thickness", "Sheath of a flex at its thinnest point"),
    ("insulation-thickness", "Insulation of a core at its thinnest point"),
    ("flex-diameter", "Outer diameter of a flex, mean"),
    ("core-resistance", "Resistance of a core at 20 °C, whether tinned or not"),
    ("core-resistance-danger", "Resistance of a core at 20 °C, above which it is a danger"),
    ("earth-core-resistance", "Resistance of a core at 20 °C, as it counts in the earth path (bare copper)"),
    ("copper-needed", "Pure copper that a core needs to keep its resistance"),
    ("thickest-core", "Thickest core; one that reads as thicker was read wrongly"),
    ("volt-drop", "Voltage lost along the flex; a hint"),
    ("conductor-temperature", "Conductor in ordinary PVC, in use"),
    ("conductor-temperature-of-ratings", "Conductor at the current that a flex is rated for"),
    ("mark-height", "Height of a CE or UKCA mark"),
    ("one-supply", "The higher of two stated voltages, as against the lower"),
    ("watts-without-volts", "Voltage at which watts count where no volts are printed"),
    ("aperture-to-edge", "From a line or neutral hole to the edge, where these two open the shutter"),
    ("earth-path-beyond-flex", "Earth path from pin to socket, beyond the flex’s own earth core"),
    ("hand-meter-leads", "What the leads of a hand meter may add to a reading"),
    ("earth-loop", "Fault loop behind which not even a 3 A fuse opens within 5 s"),
    ("short-circuit", "Path from line to neutral"),
    ("nothing-conducts", "Path between poles with nothing between them, and from either to earth"),
    ("insulation-in-service", "Insulation from line and neutral to earth, at 500 V d.c."),
    ("insulation-when-new", "Insulation of a new product, at 500 V d.c."),
    ("insulation-of-a-new-plug", "Insulation of a new plug with its flex, at 500 V d.c."),
    ("output-insulation", "Insulation from the mains to a USB output, at 500 V d.c."),
    ("creepage", "From the mains to a USB output along surfaces"),
    ("clearance", "From the mains to a USB output through air; told, never decides"),
    ("withstand", "Voltage that the insulation holds"),
    ("touch-current", "Current from what one touches to earth"),
    ("touch-current-of-output", "Current from what one touches to earth, on a lead with a USB output"),
    ("rcd-trip", "How soon an RCD of 30 mA opens"),
];

/// What each rule, model and code says, in our words.
const SAYS: &[(Clause, &str)] = &[
    (
        law_gb::PLUGS,
        "Plugs and fuses are to their British Standards, plugs are approved by a body, line and neutral pins are sleeved, and a foreign plug needs a conversion plug.",
    ),
    (
        law_gb::EQUIPMENT_MARK,
        "Electrical equipment bears CE or UKCA in Great Britain: on itself, its package or its papers.",
    ),
    (law_gb::EQUIPMENT_SCOPE, "A domestic plug, socket or plain lead bears neither CE nor UKCA."),
    (
        law_gb::EQUIPMENT_IDENTITY,
        "Maker and importer with a postal address, type or batch, and instructions are there.",
    ),
    (law_gb::GENERAL_SAFETY, "What is sold is safe, its producer can be found, and recalled goods are not sold."),
    (law_gb::TRUE_CLAIMS, "What is said of goods is true."),
    (law_ni::EQUIPMENT_MARK, "In Northern Ireland electrical equipment bears CE; UKCA alone does not do."),
    (law_ni::EQUIPMENT_SCOPE, "In Northern Ireland a domestic plug or socket does not bear CE."),
    (
        law_ni::EQUIPMENT_IDENTITY,
        "In Northern Ireland electrical equipment names maker and importer with a postal address, a type or batch, and comes with instructions.",
    ),
    (
        law_ni::GENERAL_SAFETY,
        "In Northern Ireland goods name a maker with postal and electronic address, a type or batch, and somebody responsible in the market.",
    ),
    (marks::CE_AND_UKCA_SIZE, "In Great Britain CE and UKCA are drawn in their proportions and at least 5 mm high."),
    (marks::DOUBLE_SQUARE, "The double square says that no earth is needed."),
    (marks::WHEELED_BIN, "The crossed-out bin says that the goods are collected apart."),
    (marks::MANAGEMENT_SYSTEM, "A certificate of how an office is run is never a mark of a product."),
    (marks::RATING_PLATE, "Volts and amperes are stated on the product."),
    (gtin::CHECK_DIGIT, "The last digit of the number under a barcode follows from the others."),
    (
        bs1363_1::MARKING,
        "A plug bears its maker’s name or mark, BS 1363, the word or sign of its fuse and the rating; terminals for L, N and earth are marked.",
    ),
    (bs1363_1::FUSE, "A plug has a fuse, and it is in the line pole."),
    (bs1363_1::TEST_PIN, "No live part can be reached by a steel pin 1 mm thick and 20 mm long."),
    (bs1363_1::PIN_MAKE, "Pins are of solid brass."),
    (bs1363_1::SHUTTER_OPENER, "A plastic earth pin is allowed only on a plug for a two-core cord of class II."),
    (bs1363_1::SLEEVES, "Line and neutral pins are sleeved, the earth pin never is."),
    (bs1363_1::GAUGE, "The plug enters the gauge of Figure 5 with a push of 20 N at the most."),
    (bs1363_1::PIN_TWIST, "Pins twisted with 1 N·m for 60 s each way still enter the gauge."),
    (
        bs1363_1::CORD_ANCHORAGE,
        "25 pulls of 60 N and a twist move the cord by 2 mm at the most; here it is only pulled by hand.",
    ),
    (bs1362::MARKING, "A fuse bears its maker’s mark, its rating, BS 1362 and an approval mark."),
    (bs1362::BODY, "A plug fuse is of ceramic, filled with sand, between two caps."),
    (hd308::COLOURS, "Three cores are green-and-yellow, blue and brown."),
    (iec60227_1::MAKER, "A name, a mark, or a thread among the cores says who made the flex."),
    (
        bs1363_2::SHUTTERS,
        "Line and neutral holes have shutters; the earth pin opens them, or both lower pins together, never one.",
    ),
    (bs1363_2::APERTURES, "A socket has an earth contact and takes 13 A plugs and no others."),
    (bs1363_2::TOUCH, "Live parts cannot be touched, and the body holds together."),
    (bs1363_2::MARKING, "A lead says what it carries in all."),
    (
        bs1363_2::EXTENSION_SETS_ARE_EARTHED,
        "Extension leads of the United Kingdom have an earth; there are no two-core ones.",
    ),
    (iec60799::PLUG_AND_CONNECTOR, "A plug is rated for no less than the connector at the other end."),
    (iec60228::COPPER_ONLY, "Flexible cores in the sizes of flex are of copper; there are none of aluminium."),
    (iet_code::SURGE_LEADS, "Leads with surge parts are tested at 250 V d.c., not 500 V."),
    (bs7671_shock::SWITCH_IN_LINE, "A switch of one pole is in line."),
    (
        iec60384_14::ACROSS_THE_BARRIER,
        "From the mains to an output there is one capacitor of class Y1, or two of Y2 in a row, and no other.",
    ),
    (
        en50525::SIZES,
        "Specified thickness of sheath and insulation of PVC cords, and their diameter where nobody measured it.",
    ),
    (iec60228::ANNEX_A, "Resistance at another temperature is brought to 20 °C by 1 / (1 + 0.004 (t − 20 °C))."),
    (
        bs7671_flex::TABLE_4F3B,
        "Volt drop of each ampere and metre, out and back: 0.5 mm² 93 mV, 0.75 mm² 62 mV, 1.0 mm² 46 mV, 1.25 mm² 37 mV, 1.5 mm² 32 mV, 2.5 mm² 19 mV, 4 mm² 12 mV.",
    ),
    (
        bs7671_flex::TABLE_4C1,
        "Four cables in a bunch carry 0.65 of their current each: stands for four turns of a flex.",
    ),
    (
        bs1362::GATES,
        "A 13 A fuse opens at 30 A after 1 s to 400 s, at 50 A after 0.1 s to 20 s, at 100 A after 0.01 s to 0.2 s.",
    ),
    (adiabatic::LAW, "Heat that stays in a core for the moments of a fault: when it melts."),
    (iec60287::METALS, "Copper: 0.017241 Ω·mm²/m at 20 °C, 0.00393 more per kelvin."),
    (
        iec60287::FREE_AIR,
        "Heat that a straight cable gives to still air. A size too small is a danger where 1.3 times the rise reaches 70 °C at its load.",
    ),
    (iec60287::THERMAL_RESISTIVITIES, "PVC up to 3 kV: 5.0 K·m/W."),
    (astm_b566::CLASSES, "Copper-clad aluminium: resistivity and density of 10 % and 15 % copper."),
    (astm_b869::CLASSES, "Copper-clad steel: 21 %, 30 % and 40 % of copper’s conductivity."),
    (hd361::DESIGNATION, "What the letters and figures of a print such as H05VV-F 3G1.5 mean."),
    (
        hd361::SANITY,
        "A green-and-yellow core needs three cores or more; H03VV-F ends and H05VV-F begins with 0.75 mm².",
    ),
    (cord_type::IEC_60227, "Types of PVC cord by number, such as 60227 IEC 53."),
    (cord_type::IEC_60245, "Types of rubber cord by number, such as 60245 IEC 57."),
    (cord_type::CHINESE, "Chinese names, such as RVV."),
    (cord_type::AMERICAN, "American names, such as SJT."),
    (cord_type::JAPANESE, "Japanese names, such as VCTF."),
    (awg::DIAMETERS, "Wire gauges: 18 AWG is 0.823 mm²."),
];

/// What a limit is; empty where nobody wrote it, which a test proves that never happens.
pub fn what(code: &str) -> &'static str {
    WHAT.iter().find(|(known, _)| *known == code).map_or("", |(_, what)| what)
}

/// What a rule says; empty where nobody wrote it, which a test proves that never happens.
pub fn says(clause: &Clause) -> &'static str {
    SAYS.iter().find(|(known, _)| known == clause).map_or("", |(_, says)| says)
}

/// Every limit that there are words for.
pub fn worded() -> impl Iterator<Item = &'static str> {
    WHAT.iter().map(|(code, _)| *code)
}

/// Every rule, model and code that there are words for.
pub fn said() -> impl Iterator<Item = &'static Clause> {
    SAYS.iter().map(|(clause, _)| clause)
}

/// How sure we are of a value.
pub const fn sureness(provenance: Provenance) -> &'static str {
    match provenance {
        Provenance::Read => "read in a public copy",
        Provenance::ReadNominal
        | Provenance::Derived
        | Provenance::MemoryHigh
        | Provenance::MemoryMedium
        | Provenance::MemoryLow
        | Provenance::CommonPractice => clause::provenance(provenance),
    }
}

/// Publication and edition, as a heading.
pub fn publication(clause: &Clause) -> String {
    clause::citation(&Clause { clause: "", provenance: Provenance::Read, ..*clause })
}

/// The place in it, as it begins a line; the whole where no clause is named.
pub fn place(clause: &Clause) -> String {
    match clause.clause {
        "" => "The whole".to_owned(),
        place if place.starts_with(|c: char| c.is_ascii_digit()) => format!("Clause {place}"),
        place => super::reason::capital(place),
    }
}

/// Which row of a table a value stands in; empty where there is only one.
pub fn given(given: Given) -> String {
    match given {
        Given::Nothing => String::new(),
        Given::Amount(amount) => number::amount(amount),
        Given::Connector(sheet) => format!("C{sheet}"),
        Given::Cord(duty, cores, area) => {
            let name = match duty {
                Duty::Light => "H03VV-F",
                Duty::Ordinary => "H05VV-F",
            };
            format!("{name}, {cores} cores of {}", number::amount(crate::domain::quantity::Measurand::amount(area)))
        }
    }
}

/// A limit as it is said: "at least 9.5 mm".
pub fn range(range: Range) -> String {
    match (range.at_least, range.at_most) {
        (Some(low), Some(high)) => format!("{} to {}", value(low), value(high)),
        (Some(low), None) => format!("at least {}", value(low)),
        (None, Some(high)) => format!("at most {}", value(high)),
        (None, None) => String::new(),
    }
}

fn value(value: Value) -> String {
    match value {
        Value::Amount(amount) if amount.in_unit(Unit::Ohm).is_some_and(|ohms| ohms < 1.0) => {
            number::in_unit(amount, Unit::Ohm)
        }
        Value::Amount(amount) => number::amount(amount),
        Value::Ratio(part) if part.get::<ratio>() < 1.0 => format!("{} %", number::number(part.get::<percent>())),
        Value::Ratio(times) => format!("{} times", number::number(times.get::<ratio>())),
        Value::Time(time) => format!("{} s", number::number(time.get::<second>())),
    }
}
