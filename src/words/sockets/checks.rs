//! What is looked for on the sockets, their body or the connector, why, and what would settle it.

use crate::words::check::CheckWords;

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords {
        code: "socket-takes-foreign-plugs",
        wrong: "sockets that take foreign plugs",
        why: "Foreign plugs bring no fuse and often no earth, sit loosely, and such holes have no shutters that work.",
        settles: "Look at the shape of the holes, one socket after the other.",
    },
    CheckWords {
        code: "socket-two-pin",
        wrong: "a socket for plugs of two pins",
        why: "What is plugged in there has neither fuse nor earth.",
        settles: "Count the holes of each socket.",
    },
    CheckWords {
        code: "socket-without-earth",
        wrong: "a socket or connector with no hole for an earth",
        why: "A metal appliance plugged in there is live after its first fault.",
        settles: "Look for the third hole of each socket or of the connector.",
    },
    CheckWords {
        code: "earth-contact-absent",
        wrong: "an earth hole with no contact in it",
        why: "The earth pin of every plug ends in plastic, and nothing shows it from outside.",
        settles: "Shine a light into each earth hole.",
    },
    CheckWords {
        code: "shutter-missing",
        wrong: "sockets without shutters",
        why: "A child can push something into the live contacts.",
        settles: "Look into the two lower holes of each socket with a light.",
    },
    CheckWords {
        code: "shutter-opens-to-single-pin",
        wrong: "a shutter that one pin opens",
        why: "A shutter that one thing alone opens, or that stays open, keeps no child from the mains.",
        settles: "Unplugged, press one wooden stick gently into each lower hole alone.",
    },
    CheckWords {
        code: "socket-loose",
        wrong: "a socket that does not hold a plug",
        why: "A loose contact arcs and burns, and a plug that slips out shows live pins.",
        settles: "Unplugged, try a plug that you know to be good in each socket.",
    },
    CheckWords {
        code: "plug-fits-upside-down",
        wrong: "a socket that takes a plug upside down",
        why: "Upside down, line and neutral change places and the appliance has no earth.",
        settles: "Unplugged, try a good plug upside down, find out what opens the shutters, and measure from the lower holes to the edge.",
    },
    CheckWords {
        code: "live-part-touchable",
        wrong: "live metal that a finger can reach",
        why: "Whoever touches it while it is plugged in holds the mains.",
        settles: "Turn the body all around and look at every gap.",
    },
    CheckWords {
        code: "mounting-slot-reaches-inside",
        wrong: "a hanging slot that leads to the inside",
        why: "The screw in the wall, or a finger, reaches live parts through it.",
        settles: "Shine a light into the slots on the back: a proper one is closed behind.",
    },
    CheckWords {
        code: "case-broken",
        wrong: "a broken body",
        why: "Nothing but the body keeps hands from the mains.",
        settles: "Look at every edge and screw hole of the body.",
    },
    CheckWords {
        code: "case-opens-by-hand",
        wrong: "a body that opens by hand",
        why: "It opens when it is dropped, or in a child’s hands.",
        settles: "Twist the body gently with both hands, unplugged.",
    },
    CheckWords {
        code: "socket-scorched",
        wrong: "scorched plastic at the sockets",
        why: "It has been far too hot already and will be again.",
        settles: "Look around the holes for brown, melted or blistered plastic.",
    },
    CheckWords {
        code: "total-rating-unmarked",
        wrong: "a lead that does not say what it carries in all",
        why: "Several appliances add up, and nothing warns when it is too much.",
        settles: "Look on all sides of the body for amperes (A) or watts (W).",
    },
    CheckWords {
        code: "switch-unmarked",
        wrong: "a switch that does not say which way is on",
        why: "It may be taken for off while the sockets are live.",
        settles: "Look for a line and a circle, a word, a red edge or a lamp.",
    },
    CheckWords {
        code: "live-contact-steel",
        wrong: "steel contacts in the sockets",
        why: "Steel carries badly, rusts and loses its spring, so the contact gets hot.",
        settles: "Open it and hold a magnet to the contacts themselves.",
    },
    CheckWords {
        code: "connector-earth-open",
        wrong: "a connector without a working earth",
        why: "The metal of the appliance is live after its first fault.",
        settles: "Unplugged, try a tester from the plug’s long pin to the connector’s earth contact while you bend the flex.",
    },
    CheckWords {
        code: "connector-above-plug",
        wrong: "a 16 A connector on a 13 A plug",
        why: "An appliance made for 16 A overloads the plug and its fuse.",
        settles: "Look which connector it is.",
    },
];
