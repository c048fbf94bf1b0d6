//! How near is near: found values against published ones, by amount or by part.

/// `found` lies within `by` of `expected`.
#[track_caller]
pub fn near(what: &str, found: f64, expected: f64, by: f64) {
    assert!((found - expected).abs() <= by, "{what}: expected {expected} ± {by}, found {found}");
}

/// `found` lies within the part `part` of `expected`.
#[track_caller]
pub fn near_part(what: &str, found: f64, expected: f64, part: f64) {
    near(what, found, expected, part * expected.abs());
}

/// `found`, cut to `digits` behind the point, is what is printed.
#[track_caller]
pub fn prints(what: &str, found: f64, digits: usize, printed: &str) {
    assert_eq!(format!("{found:.digits$}"), printed, "{what}");
}
