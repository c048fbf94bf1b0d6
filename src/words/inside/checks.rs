//! What the checks of the open body say.

use crate::words::check::CheckWords;

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords {
        code: "switch-in-neutral",
        wrong: "a switch that leaves line joined",
        why: "What is plugged in looks off, and is live.",
        settles: "With the switch off, see which short pin of the plug still beeps to a socket.",
    },
    CheckWords {
        code: "scorched-inside",
        wrong: "scorched spots inside",
        why: "Something has run hot enough to burn, and will again.",
        settles: "Open the body and look in good light.",
    },
    CheckWords {
        code: "conductor-can-stray",
        wrong: "a loose conductor inside",
        why: "One knock, and line touches earth or neutral.",
        settles: "Open the body and tug gently at each wire.",
    },
    CheckWords {
        code: "insulation-melted",
        wrong: "melted insulation inside",
        why: "What is left may be too thin, and a joint nearby ran hot.",
        settles: "Open the body and look in good light.",
    },
    CheckWords {
        code: "insulation-nicked",
        wrong: "hurt insulation inside",
        why: "Copper shows, or will.",
        settles: "Open the body and look in good light.",
    },
    CheckWords {
        code: "foreign-matter",
        wrong: "things inside that do not belong there",
        why: "It tells of careless work.",
        settles: "Open the body and look in good light.",
    },
    CheckWords {
        code: "earth-not-connected",
        wrong: "an earth that is not joined to every socket",
        why: "The socket looks earthed, and is not.",
        settles: "Open the body and follow the green-and-yellow wire to every socket.",
    },
    CheckWords {
        code: "joint-by-solder-alone",
        wrong: "wires held by solder alone",
        why: "Solder breaks, and in a fault it melts: the wire lets go.",
        settles: "Open the body and see what holds each wire.",
    },
    CheckWords {
        code: "terminal-unsupported",
        wrong: "terminals or contacts that nothing holds",
        why: "Each plugging in pushes them a little further.",
        settles: "Open the body and push gently at each contact.",
    },
    CheckWords {
        code: "contact-flimsy",
        wrong: "flimsy socket contacts",
        why: "A contact that grips loosely runs hot.",
        settles: "Open the body and press the contacts with a wooden stick.",
    },
    CheckWords {
        code: "internal-wire-thin",
        wrong: "wires inside thinner than the flex",
        why: "They carry the same current, shut in where it is warm: they burn first.",
        settles: "Open the body and lay bare copper beside bare copper.",
    },
    CheckWords {
        code: "internal-colour-wrong",
        wrong: "wires inside with misleading colours",
        why: "Whoever mends it trusts the colours.",
        settles: "Open the body and see which colour carries what.",
    },
    CheckWords {
        code: "promised-part-missing",
        wrong: "a promised part that is not there",
        why: "People rely on a protection that does not exist.",
        settles: "Open the body and look for the part that keeps each promise.",
    },
    CheckWords {
        code: "surge-part-unprotected",
        wrong: "a surge part that nothing keeps from burning",
        why: "A worn surge part runs hot and sets fire.",
        settles: "Open the body and look for a thermal fuse that touches the surge part.",
    },
    CheckWords {
        code: "mains-to-touch-path-short",
        wrong: "a wrong part between mains and USB",
        why: "When it fails, whoever holds the telephone holds the mains.",
        settles: "Read the print on the part that bridges the gap under the transformer, or let a laboratory test it.",
    },
    CheckWords {
        code: "creepage-or-clearance-short",
        wrong: "too little distance between mains and USB",
        why: "Damp, dirt or a spark bridges the gap, and the output becomes live.",
        settles: "Measure the narrowest place along the board with a calliper. Through the air let a laboratory confirm it.",
    },
];
