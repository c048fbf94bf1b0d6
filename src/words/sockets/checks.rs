//! What is looked for on the sockets, their body or the connector, why, and what would settle it.

use crate::words::check::CheckWords;

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords { code: "socket-takes-foreign-plugs", wrong: "sockets that take foreign plugs" },
    CheckWords { code: "socket-two-pin", wrong: "a socket for plugs of two pins" },
    CheckWords { code: "socket-without-earth", wrong: "a socket or connector with no hole for an earth" },
    CheckWords { code: "earth-contact-absent", wrong: "an earth hole with no contact in it" },
    CheckWords { code: "shutter-missing", wrong: "sockets without shutters" },
    CheckWords { code: "shutter-opens-to-single-pin", wrong: "a shutter that one pin opens" },
    CheckWords { code: "socket-loose", wrong: "a socket that does not hold a plug" },
    CheckWords { code: "plug-fits-upside-down", wrong: "a socket that takes a plug upside down" },
    CheckWords { code: "live-part-touchable", wrong: "live metal that a finger can reach" },
    CheckWords { code: "mounting-slot-reaches-inside", wrong: "a hanging slot that leads to the inside" },
    CheckWords { code: "case-broken", wrong: "a broken body" },
    CheckWords { code: "case-opens-by-hand", wrong: "a body that opens by hand" },
    CheckWords { code: "socket-scorched", wrong: "scorched plastic at the sockets" },
    CheckWords { code: "total-rating-unmarked", wrong: "a lead that does not say what it carries in all" },
    CheckWords { code: "switch-unmarked", wrong: "a switch that does not say which way is on" },
    CheckWords { code: "live-contact-steel", wrong: "steel contacts in the sockets" },
    CheckWords { code: "connector-earth-open", wrong: "a connector without a working earth" },
    CheckWords { code: "connector-above-plug", wrong: "a 16 A connector on a 13 A plug" },
];
