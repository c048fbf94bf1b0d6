//! What the checks of the live place say.

use crate::words::check::CheckWords;

/// Words of the checks.
pub const CHECKS: &[CheckWords] = &[
    CheckWords { code: "withstand-broke-down", wrong: "insulation that breaks down" },
    CheckWords { code: "leakage-high", wrong: "too much current from what is touched" },
    CheckWords { code: "rcd-fails", wrong: "a built-in RCD that does not protect" },
    CheckWords { code: "runs-hot", wrong: "parts that run hot in use" },
    CheckWords { code: "indicator-misreads", wrong: "a lamp or meter that misleads" },
];
