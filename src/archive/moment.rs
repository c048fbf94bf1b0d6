//! Moments as an archive and its taking back need them: as a date of a zip file, and which of two is later.

/// The first day that a zip file can name, 1 January 1980.
const FIRST: (u16, u16) = (0, 0x21);

/// Time and date of a zip file (APPNOTE 4.4.6: MS-DOS format) of a moment in the form of RFC 3339, the clock as it is written there. What
/// is none becomes the first day that there is.
pub fn dos(rfc3339: &str) -> (u16, u16) {
    parts(rfc3339).unwrap_or(FIRST)
}

fn parts(rfc3339: &str) -> Option<(u16, u16)> {
    let number = |from: usize, to: usize| rfc3339.get(from..to)?.parse::<u16>().ok();
    let (year, month, day) = (number(0, 4)?, number(5, 7)?, number(8, 10)?);
    let (hour, minute, second) = (number(11, 13)?, number(14, 16)?, number(17, 19)?);
    let fits = (1980..=2107).contains(&year)
        && (1..=12).contains(&month)
        && (1..=31).contains(&day)
        && hour < 24
        && minute < 60
        && second < 60;
    fits.then(|| ((hour << 11) | (minute << 5) | (second / 2), ((year - 1980) << 9) | (month << 5) | day))
}

/// Whether one moment is later than another; `None` where they cannot be told apart without a calendar, because one is missing or has
/// another zone than UTC.
pub fn is_later(one: &str, other: &str) -> Option<bool> {
    let clock = |moment: &str| {
        let plain = moment.strip_suffix('Z')?;
        let (whole, fraction) = plain.split_once('.').unwrap_or((plain, ""));
        Some((whole.to_owned(), fraction.trim_end_matches('0').to_owned()))
    };
    Some(clock(one)? > clock(other)?)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_moment_becomes_the_date_of_a_zip_file() {
        // 2026 is 46 years after 1980: 46 * 512 + 11 * 32 + 24; 10:30:08 is 10 * 2048 + 30 * 32 + 4.
        assert_eq!(dos("2026-11-24T10:30:08.5Z"), (21_444, 23_928));
        for none in ["", "yesterday", "1970-01-01T00:00:00Z", "2026-13-01T00:00:00Z", "2026-11-24"] {
            assert_eq!(dos(none), FIRST, "{none}");
        }
    }

    #[test]
    fn of_two_moments_one_is_later_or_it_cannot_be_told() {
        assert_eq!(is_later("2026-11-24T10:30:00.5Z", "2026-11-24T10:30:00Z"), Some(true));
        assert_eq!(is_later("2026-11-24T10:30:00Z", "2026-11-24T10:30:00.000Z"), Some(false));
        assert_eq!(is_later("2026-11-24T10:30:00.50Z", "2026-11-24T10:30:00.500Z"), Some(false));
        assert_eq!(is_later("2026-11-24T10:30:00+01:00", "2026-11-24T10:30:00Z"), None);
        assert_eq!(is_later("", "2026-11-24T10:30:00Z"), None);
    }
}
