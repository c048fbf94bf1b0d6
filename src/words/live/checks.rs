//! What the checks of the live place say.

use crate::words::check::CheckWords;

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords {
        code: "withstand-broke-down",
        wrong: "insulation that breaks down",
        why: "A surge on the mains breaks through, and metal becomes live.",
        settles: "A competent person tests it at 1250 V between earth and both poles. Never with surge parts, USB or filters.",
    },
    CheckWords {
        code: "leakage-high",
        wrong: "too much current from what is touched",
        why: "It can be felt, and in the wet it can kill.",
        settles: "A competent person measures it through a body network.",
    },
    CheckWords {
        code: "rcd-fails",
        wrong: "a built-in RCD that does not protect",
        why: "It is bought to save a life, and does not.",
        settles: "A competent person tests it with an RCD tester, not with its button alone.",
    },
    CheckWords {
        code: "runs-hot",
        wrong: "parts that run hot in use",
        why: "Plastic softens, contacts age, and the heat feeds itself.",
        settles: "A competent person loads it with its rated current for an hour. Below 60 °C it is cool enough, above 70 °C it is not.",
    },
    CheckWords {
        code: "indicator-misreads",
        wrong: "a lamp or meter that misleads",
        why: "People take a dark lamp for a dead socket.",
        settles: "Compare it with a meter on the supply.",
    },
];
