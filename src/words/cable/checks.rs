//! What is looked for on the flex, why, and what would settle it.

use crate::words::check::CheckWords;

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords { code: "flex-damaged", wrong: "a damaged flex" },
    CheckWords { code: "joint-in-flex", wrong: "a flex joined from two pieces" },
    CheckWords { code: "sheath-loose", wrong: "a loose outside on the flex" },
    CheckWords { code: "flex-unmarked", wrong: "a flex that does not say what it is" },
    CheckWords { code: "flex-maker-missing", wrong: "a flex that names no maker" },
    CheckWords { code: "flex-unsuitable", wrong: "a flex made for something else" },
    CheckWords { code: "flex-thin-for-rating", wrong: "a flex too thin for what it must carry" },
    CheckWords { code: "flex-thin-for-fuse", wrong: "a flex too thin for its fuse" },
    CheckWords { code: "connector-above-flex", wrong: "a connector that carries more than its flex" },
    CheckWords { code: "cores-too-few", wrong: "a flex without an earth wire" },
    CheckWords { code: "earth-colour-wrong", wrong: "an earth wire of the wrong colour" },
    CheckWords { code: "line-neutral-colour-wrong", wrong: "line and neutral of the wrong colours" },
    CheckWords { code: "sheath-thin", wrong: "an outer layer too thin for the flex’s type" },
    CheckWords { code: "insulation-thin", wrong: "insulation too thin for the flex’s type" },
    CheckWords { code: "diameter-off", wrong: "a flex thicker or thinner than its type" },
    CheckWords { code: "flex-too-long", wrong: "a lead longer than is advised for its size" },
];
