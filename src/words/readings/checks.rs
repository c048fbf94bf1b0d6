//! What the checks of dead readings say.

use crate::words::check::CheckWords;

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords {
        code: "earth-open",
        wrong: "a socket whose earth leads nowhere",
        why: "In a fault the metal of what is plugged in stays live, and nothing switches it off.",
        settles: "Unplugged, with nothing connected, read from the plug’s long pin to the earth of every socket.",
    },
    CheckWords {
        code: "earth-resistance-high",
        wrong: "an earth path with too much resistance",
        why: "The current of a fault stays too small to blow the fuse, and metal stays live meanwhile.",
        settles: "Read the earth of every socket with the leads taken off, and measure the length of the flex and the resistance of its cores.",
    },
    CheckWords {
        code: "earth-intermittent",
        wrong: "an earth that comes and goes",
        why: "The earth fails on the day it is needed.",
        settles: "Watch a meter on the earth while the flex is bent at plug and body.",
    },
    CheckWords {
        code: "polarity-reversed",
        wrong: "line and neutral the wrong way round",
        why: "Fuse and switch open the wrong wire: what is plugged in stays live when it is off.",
        settles: "Unplugged, with nothing connected, try each short pin against each hole.",
    },
    CheckWords {
        code: "line-open",
        wrong: "a socket that line does not reach",
        why: "A joint has failed. A joint that half fails runs hot.",
        settles: "Set every switch to on, try the fuse, and listen again. A lead with an RCD, a timer or electronics must be opened for it.",
    },
    CheckWords {
        code: "neutral-open",
        wrong: "a socket that neutral does not reach",
        why: "What is plugged in looks dead, and is live inside.",
        settles: "Set every switch to on, try the fuse, and listen again. A lead with an RCD, a timer or electronics must be opened for it.",
    },
    CheckWords {
        code: "pole-shorted",
        wrong: "line and neutral joined",
        why: "When it is plugged in, the whole current of the wall circuit flows through it.",
        settles: "Set every switch to on, connect nothing, and read from one short pin of the plug to the other.",
    },
    CheckWords {
        code: "neutral-earth-joined",
        wrong: "line or neutral joined to earth",
        why: "The metal of what is plugged in carries the mains, or part of its current.",
        settles: "Set every switch to on, connect nothing, and read from the plug’s long pin to each short one.",
    },
    CheckWords {
        code: "insulation-low",
        wrong: "insulation that leaks to earth",
        why: "Damp, dirt or bruised insulation: the first step to a shock or a fire.",
        settles: "Join the short pins and test to the long one at 500 V d.c., or at 250 V with surge parts. Between 1 MΩ and 5 MΩ let a laboratory confirm it.",
    },
    CheckWords {
        code: "output-not-isolated",
        wrong: "a USB output not kept apart from the mains",
        why: "Whoever holds a telephone on its cable holds the mains.",
        settles: "Join the short pins and test to the USB output at 500 V d.c.",
    },
    CheckWords {
        code: "fuse-not-in-line",
        wrong: "a fuse that does not stand in the line",
        why: "The fuse protects nothing, or leaves everything live when it blows.",
        settles: "With every switch on, see which pin beeps to a socket with the fuse in, and which with the fuse out.",
    },
];
