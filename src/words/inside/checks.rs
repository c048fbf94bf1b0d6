//! What the checks of the open body say.

use crate::words::check::CheckWords;

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords { code: "switch-in-neutral", wrong: "a switch that leaves line joined" },
    CheckWords { code: "scorched-inside", wrong: "scorched spots inside" },
    CheckWords { code: "conductor-can-stray", wrong: "a loose conductor inside" },
    CheckWords { code: "insulation-melted", wrong: "melted insulation inside" },
    CheckWords { code: "insulation-nicked", wrong: "hurt insulation inside" },
    CheckWords { code: "foreign-matter", wrong: "things inside that do not belong there" },
    CheckWords { code: "earth-not-connected", wrong: "an earth that is not joined to every socket" },
    CheckWords { code: "joint-by-solder-alone", wrong: "wires held by solder alone" },
    CheckWords { code: "terminal-unsupported", wrong: "terminals or contacts that nothing holds" },
    CheckWords { code: "contact-flimsy", wrong: "flimsy socket contacts" },
    CheckWords { code: "internal-wire-thin", wrong: "wires inside thinner than the flex" },
    CheckWords { code: "internal-colour-wrong", wrong: "wires inside with misleading colours" },
    CheckWords { code: "promised-part-missing", wrong: "a promised part that is not there" },
    CheckWords { code: "surge-part-unprotected", wrong: "a surge part that nothing keeps from burning" },
    CheckWords { code: "mains-to-touch-path-short", wrong: "a wrong part between mains and USB" },
    CheckWords { code: "creepage-or-clearance-short", wrong: "too little distance between mains and USB" },
];
