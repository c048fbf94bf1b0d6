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
    /// A value is typed as it was read with this instrument, and the Enter key.
    Read(&'static str, &'static str),
    /// A number is tapped.
    Count(u8),
    /// Nothing is printed there.
    Nothing,
    /// It cannot be told.
    CannotTell,
}
use Do::{Any, CannotTell, Count, Nothing, One, Read, Type};

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
];

/// The same lead with ruler, calliper, scale, magnet and continuity tester: what is asked beyond [`SOUND_BY_EYE`].
pub const SOUND_BY_HAND: Script = &[
    ("standards-named", Type("BS 1363\n")),
    ("barcode", Nothing),
    ("approval-search", One("fits")),
    ("recall-search", One("nothing-found")),
    ("plug-make", One("moulded")),
    ("fuse-length", Type("25,4\n")),
    ("fuse-diameter", Type("6,35 mm\n")),
    ("fuse-mass", CannotTell),
    ("magnet-on-pins", One("no-pull")),
    ("pin-to-edge", Type("10,21\n")),
    ("live-pin-width", Type("6.35\n")),
    ("earth-pin-width", Type("7.95\n")),
    ("pin-thickness", Type("3.97\n")),
    ("live-pin-length", Type("17.7\n")),
    ("earth-pin-length", Type("22.7\n")),
    ("across-live-pins", Type("28.58\n")),
    ("earth-pin-to-far-side", Type("28.2\n")),
    ("flex-length", Type("2,01\n")),
    ("flex-diameter", Type("8,4\n")),
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

/// The same lead with meters and opened: what is asked beyond [`SOUND_BY_HAND`], up to the live part, which is left alone.
pub const SOUND_BY_METER: Script = &[
    ("earth-colour", One("green-and-yellow")),
    ("line-neutral-colours", One("brown-and-blue")),
    ("sheath-thickness", Type("0,9\n")),
    ("insulation-thickness", Type("0,75\n")),
    ("contact-metal", One("not-pulled")),
    ("earth-resistance", Type("0R03\n")),
    ("earth-resistance", Type("34 mΩ\n")),
    ("earth-resistance", Type("0,035\n")),
    ("earth-while-bent", One("steady")),
    ("pole-resistance", Type("OL\n")),
    ("insulation-test", One("500-v")),
    ("insulation", Read("> 999 MΩ\n", "insulation-tester")),
    ("room-temperature", Type("20\n")),
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
    ("ten-strands-width", Type("2,50\n")),
    ("piece-length", Type("2,00\n")),
    ("core-resistance", Read("25,1 mΩ\n", "four-wire-meter")),
    ("core-mass", CannotTell),
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
    ("earth-resistance", Type("OL\n")),
    ("earth-while-bent", One("open-all-the-while")),
    ("earth-joined-to", One("nothing")),
    ("core-resistance", Read("0,21\n", "four-wire-meter")),
    ("cores-joined", Read("70 mΩ\n", "four-wire-meter")),
    ("reference-wire", One("none")),
    ("strand-count", Type("7\n")),
    ("one-strand-width", Type("0,20\n")),
    ("core-scrape", One("silver-then-red")),
];
