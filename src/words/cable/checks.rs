//! What is looked for on the flex, why, and what would settle it.

use crate::words::check::CheckWords;

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords {
        code: "flex-damaged",
        wrong: "a damaged flex",
        why: "Where the outside is gone, one thin layer or none is left between a hand and the mains.",
        settles: "Let the whole flex run through your fingers, unplugged, and look under tape if it is yours.",
    },
    CheckWords {
        code: "joint-in-flex",
        wrong: "a flex joined from two pieces",
        why: "A joint outside a closed box comes apart under a pull, and then its live ends lie open.",
        settles: "Look along the whole flex; tape may hide a joint.",
    },
    CheckWords {
        code: "sheath-loose",
        wrong: "a loose outside on the flex",
        why: "The grips in plug and body hold the outside. If it slides, every pull reaches the wires.",
        settles: "Twist the flex gently where it enters the plug and the body.",
    },
    CheckWords {
        code: "flex-unmarked",
        wrong: "a flex that does not say what it is",
        why: "Nobody can know what such a flex may carry. Honest makers print it.",
        settles: "Look at 55 cm of flex or more, on all sides and in slanting light, and copy the print exactly.",
    },
    CheckWords {
        code: "flex-maker-missing",
        wrong: "a flex that names no maker",
        why: "Nobody answers for what is printed on it.",
        settles: "Cut the flex open and look for a thin coloured thread among the wires.",
    },
    CheckWords {
        code: "flex-unsuitable",
        wrong: "a flex made for something else",
        why: "A flex with two wires has no earth, and one too thick for the plug is not held in it.",
        settles: "Copy the whole print of the flex: type, number of wires and size.",
    },
    CheckWords {
        code: "flex-thin-for-rating",
        wrong: "a flex too thin for what it must carry",
        why: "A 13 A fuse lets more than 20 A flow for half an hour. Under a carpet or coiled up, a thin flex burns first.",
        settles: "Read the size on the flex and the rating on the fuse; on a cord set also its length and connector.",
    },
    CheckWords {
        code: "flex-thin-for-fuse",
        wrong: "a flex too thin for its fuse",
        why: "The fuse is there for the flex. One that is too large lets the flex burn.",
        settles: "Read the size on the flex and the rating on the fuse.",
    },
    CheckWords {
        code: "connector-above-flex",
        wrong: "a connector that carries more than its flex",
        why: "An appliance draws what its connector lets it draw, and the flex gets hot.",
        settles: "Read the size on the flex, look which connector it is, and measure the flex.",
    },
    CheckWords {
        code: "cores-too-few",
        wrong: "a flex without an earth wire",
        why: "Without an earth wire a fault makes metal live, and nothing cuts it off.",
        settles: "Open it, or cut the flex of a sample that nobody will use again, and count the wires.",
    },
    CheckWords {
        code: "earth-colour-wrong",
        wrong: "an earth wire of the wrong colour",
        why: "Whoever repairs it trusts green-and-yellow. If that wire is live, metal becomes live.",
        settles: "Open it and see which colour goes to the long pin of the plug.",
    },
    CheckWords {
        code: "line-neutral-colour-wrong",
        wrong: "line and neutral of the wrong colours",
        why: "The next person to wire it goes by brown and blue.",
        settles: "Open it and see which colour goes to the fuse.",
    },
    CheckWords {
        code: "sheath-thin",
        wrong: "an outer layer too thin for the flex’s type",
        why: "The outer layer takes the wear. When it is through, one layer is left.",
        settles: "Measure the outer layer of a cut end at its thinnest point.",
    },
    CheckWords {
        code: "insulation-thin",
        wrong: "insulation too thin for the flex’s type",
        why: "It is all that is between the wires; heat and bending press them through.",
        settles: "Measure the coloured plastic of each wire at its thinnest point.",
    },
    CheckWords {
        code: "diameter-off",
        wrong: "a flex thicker or thinner than its type",
        why: "If the outside does not fit the print, the print may be borrowed from another flex.",
        settles: "Measure the flex across with a calliper, twice, at right angles.",
    },
    CheckWords {
        code: "flex-too-long",
        wrong: "a lead longer than is advised for its size",
        why: "Far from the wall a fault draws less current, and the fuse takes longer to blow.",
        settles: "Measure the flex, and read its size.",
    },
];
