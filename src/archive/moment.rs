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

/// Whether one moment is later than another, whatever their zones; `None` where one is missing or is none.
pub fn is_later(one: &str, other: &str) -> Option<bool> {
    Some(instant(one)? > instant(other)?)
}

/// Seconds since the first day of March of the year nought, UTC, and the digits after the point without noughts at their end.
fn instant(moment: &str) -> Option<(i64, &str)> {
    let (clock, rest) = moment.split_at_checked("2026-11-24T10:30:00".len())?;
    let number = |from: usize, to: usize| clock.get(from..to)?.parse::<i64>().ok();
    let (year, month, day) = (number(0, 4)?, number(5, 7)?, number(8, 10)?);
    let seconds = 3600 * number(11, 13)? + 60 * number(14, 16)? + number(17, 19)?;
    let zone = rest.trim_start_matches(|c: char| c == '.' || c.is_ascii_digit());
    let fraction = rest.strip_suffix(zone)?.trim_start_matches('.').trim_end_matches('0');
    Some((86_400 * days(year, month, day) + seconds - offset(zone)?, fraction))
}

/// Days since the first day of March of the year nought, by the Gregorian calendar: the year is taken to begin in March, so that the leap
/// day is its last.
fn days(year: i64, month: i64, day: i64) -> i64 {
    let (year, month) = if month > 2 { (year, month - 3) } else { (year - 1, month + 9) };
    365 * year + year.div_euclid(4) - year.div_euclid(100) + year.div_euclid(400) + (153 * month + 2) / 5 + day - 1
}

/// What a zone is before UTC, in seconds.
fn offset(zone: &str) -> Option<i64> {
    if zone == "Z" {
        return Some(0);
    }
    let (hours, minutes) = zone.get(1..)?.split_once(':')?;
    let seconds = 3600 * hours.parse::<i64>().ok()? + 60 * minutes.parse::<i64>().ok()?;
    match zone.get(..1)? {
        "+" => Some(seconds),
        "-" => Some(-seconds),
        _ => None,
    }
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
        // Half past ten is earlier where clocks are ahead of UTC, and a leap day is a day.
        assert_eq!(is_later("2026-11-24T10:30:00+01:00", "2026-11-24T10:30:00Z"), Some(false));
        assert_eq!(is_later("2026-11-24T10:30:00-00:30", "2026-11-24T10:59:59Z"), Some(true));
        assert_eq!(is_later("2026-11-24T10:30:00+00:00", "2026-11-24T10:30:00Z"), Some(false));
        assert_eq!(is_later("2028-03-01T00:00:00+02:00", "2028-02-29T22:00:00Z"), Some(false));
        assert_eq!(is_later("2028-03-01T00:00:00+02:00", "2028-02-29T21:59:59Z"), Some(true));
        assert_eq!(is_later("2027-01-01T00:30:00+01:00", "2026-12-31T23:29:59Z"), Some(true));
        assert_eq!(is_later("", "2026-11-24T10:30:00Z"), None);
    }
}
