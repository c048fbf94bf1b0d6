//! What the people of the stories see, read and type: question by question.

/// What is done about one question.
#[derive(Clone, Copy, Debug)]
pub enum Do {
    /// One answer is tapped.
    One(&'static str),
    /// Those that fit are tapped, and that this is all.
    Any(&'static [&'static str]),
    /// A value or a print is typed, and the Enter key.
    Type(&'static str),
    /// What it was read with is named, unless it is named already, and a value is typed, and the Enter key.
    Read(&'static str, &'static str),
    /// A number is tapped.
    Count(u8),
    /// Nothing is printed there.
    Nothing,
    /// The tool for it is not at hand.
    NoTool,
}
use Do::{Any, Count, NoTool, Nothing, One, Read, Type};

/// Questions and what is done about them. Where a question comes several times, as for each socket, its lines are taken in turn, and the
/// last one again from then on.
pub type Script = &'static [(&'static str, Do)];

/// A sound four-way lead of two metres, as eyes see it.
pub const SOUND_BY_EYE: Script = &[
    ("plug-pattern", One("uk-three-pin")),
    ("fuse-in-the-holder", One("marked-bs-1362")),
    ("fuse-rating", One("13")),
    ("pins-and-sleeves", Any(&[])),
    ("plug-and-flex", Any(&[])),
    ("plug-print", Any(&["maker", "bs-1363", "fuse-sign", "rating", "approval-mark"])),
    ("socket-holes", Any(&[])),
    ("shutters", One("all-closed")),
    ("earth-holes", One("metal-in-all")),
    ("body-condition", Any(&[])),
    ("socket-count", Count(4)),
    ("extras", Any(&[])),
    ("total-rating", One("marked")),
    ("flex-condition", Any(&[])),
    ("flex-print", Type("HALDER & WREN H05VV-F 3G1.5 mm²\n")),
    ("flex-maker", One("name-or-mark")),
    ("rating", Type("MAX 13 A 250 V~ 3250 W\n")),
    ("promises", Any(&[])),
    ("marks", Any(&["wheeled-bin"])),
    ("identity", Any(&["maker", "local-address", "seller", "type-or-batch", "instructions"])),
    ("print-faults", Any(&[])),
    ("standards-named", Type("BS 1363\n")),
    ("barcode", Nothing),
];

/// The same lead with ruler, calliper, scale, magnet and continuity tester: what is asked beyond [`SOUND_BY_EYE`].
pub const SOUND_BY_HAND: Script = &[
    ("approval-search", One("fits")),
    ("recall-search", One("nothing-found")),
    ("plug-make", One("moulded")),
    ("fuse-length", Read("25,4\n", "digital-calliper")),
    ("fuse-diameter", Read("6,35 mm\n", "digital-calliper")),
    ("fuse-mass", NoTool),
    ("magnet-on-pins", One("no-pull")),
    ("pin-to-edge", Read("10,21\n", "digital-calliper")),
    ("live-pin-width", Read("6.35\n", "digital-calliper")),
    ("earth-pin-width", Read("7.95\n", "digital-calliper")),
    ("pin-thickness", Read("3.97\n", "digital-calliper")),
    ("live-pin-length", Read("17.7\n", "digital-calliper")),
    ("earth-pin-length", Read("22.7\n", "digital-calliper")),
    ("across-live-pins", Read("28.58\n", "digital-calliper")),
    ("earth-pin-to-far-side", Read("28.2\n", "digital-calliper")),
    ("flex-length", Read("2,01\n", "tape")),
    ("flex-diameter", Read("8,4\n", "digital-calliper")),
    ("shutter-opened-by", One("all-three")),
    ("plug-upside-down", One("does-not-enter")),
    ("socket-grip", One("firm")),
    ("readings-prepared", Any(&["unplugged", "nothing-connected", "switches-on", "fuse-good"])),
    ("earth-path", One("beeps")),
    ("pole-path", One("both-beep")),
    ("poles-together", One("silent")),
    ("earth-to-poles", One("neither")),
    ("fuse-taken-out", One("only-neutral-beeps")),
];

/// The same lead with meters, opened and cut up at last: what is asked beyond [`SOUND_BY_HAND`]. Nobody energises it.
pub const SOUND_BY_METER: Script = &[
    ("earth-colour", One("green-and-yellow")),
    ("line-neutral-colours", One("brown-and-blue")),
    ("sheath-thickness", Read("0,9\n", "digital-calliper")),
    ("insulation-thickness", Read("0,75\n", "digital-calliper")),
    ("contact-metal", One("not-pulled")),
    ("earth-resistance", Read("0R03\n", "earth-path-tester")),
    ("earth-resistance", Type("34 mΩ\n")),
    ("earth-resistance", Type("0,035\n")),
    ("earth-while-bent", One("steady")),
    ("pole-resistance", Read("OL\n", "hand-meter")),
    ("insulation-test", One("500-v")),
    ("insulation", Read("> 999 MΩ\n", "insulation-tester")),
    ("room-temperature", Type("20\n")),
    ("live-competent", Any(&[])),
    ("may-cut", One("yes")),
    ("opened", One("opened")),
    ("seen-inside", Any(&[])),
    ("earth-joined-to", One("every-socket")),
    ("joints", Any(&[])),
    ("wires-inside", One("metal-bars")),
    ("colours-inside", One("right-or-bars")),
    ("parts-inside", Any(&[])),
    ("core-count", One("three")),
    ("core-magnet", One("none")),
    ("core-scrape", One("red")),
    ("strand-count", Type("30\n")),
    ("ten-strands-width", Read("2,50\n", "digital-calliper")),
    ("piece-length", Read("2,00\n", "tape")),
    ("core-resistance", Read("25,1 mΩ\n", "four-wire-meter")),
    ("core-mass", NoTool),
    ("cores-joined", Read("8,4 mΩ\n", "four-wire-meter")),
];

/// A lead whose plug has bare pins and a fuse with no print, offered as new.
pub const BARE_PINS: Script = &[
    ("plug-pattern", One("uk-three-pin")),
    ("fuse-in-the-holder", One("unmarked")),
    ("fuse-rating", One("not-printed")),
    ("pins-and-sleeves", Any(&["no-sleeves"])),
    ("sold-as", One("new")),
];

/// What is different about a lead whose fine print hides cores like hairs, and an earth that is joined to nothing; a double square says that
/// it needs none.
pub const LETHAL_WITH_GOOD_PRINT: Script = &[
    ("marks", Any(&["double-square", "wheeled-bin"])),
    ("earth-resistance", Read("OL\n", "earth-path-tester")),
    ("earth-while-bent", One("open-all-the-while")),
    ("earth-joined-to", One("nothing")),
    ("core-resistance", Read("0,21\n", "four-wire-meter")),
    ("cores-joined", Read("70 mΩ\n", "four-wire-meter")),
    ("reference-wire", One("none")),
    ("strand-count", Type("7\n")),
    ("one-strand-width", Read("0,20\n", "digital-calliper")),
    ("core-scrape", One("silver-then-red")),
];
