//! What the checks of dead readings say.

use crate::words::check::CheckWords;

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords { code: "earth-open", wrong: "a socket whose earth leads nowhere" },
    CheckWords { code: "earth-resistance-high", wrong: "an earth path with too much resistance" },
    CheckWords { code: "earth-intermittent", wrong: "an earth that comes and goes" },
    CheckWords { code: "polarity-reversed", wrong: "line and neutral the wrong way round" },
    CheckWords { code: "line-open", wrong: "a socket that line does not reach" },
    CheckWords { code: "neutral-open", wrong: "a socket that neutral does not reach" },
    CheckWords { code: "pole-shorted", wrong: "line and neutral joined" },
    CheckWords { code: "neutral-earth-joined", wrong: "line or neutral joined to earth" },
    CheckWords { code: "insulation-low", wrong: "insulation that leaks to earth" },
    CheckWords { code: "output-not-isolated", wrong: "a USB output not kept apart from the mains" },
    CheckWords { code: "fuse-not-in-line", wrong: "a fuse that does not stand in the line" },
];
