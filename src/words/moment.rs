//! A moment as a person reads it.

/// The names of the months.
const MONTHS: [&str; 12] = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
];

/// "25 November 2026, 02:43 UTC" of a moment in the form of RFC 3339. What names no month stays as it is.
///
/// ```
/// use plugwary::words::moment::moment;
/// assert_eq!(moment("2026-07-01T09:05:00.125+01:00"), "1 July 2026, 09:05 UTC+01:00");
/// ```
pub fn moment(rfc3339: &str) -> String {
    in_words(rfc3339).unwrap_or_else(|| rfc3339.to_owned())
}

fn in_words(rfc3339: &str) -> Option<String> {
    let (date, clock) = rfc3339.split_once(['T', 't', ' '])?;
    let (year, month_and_day) = date.split_once('-')?;
    let (month, day) = month_and_day.split_once('-')?;
    let month = MONTHS.get(month.parse::<usize>().ok()?.checked_sub(1)?)?;
    let day: u8 = day.parse().ok()?;
    let time = clock.get(..5)?;
    let zone = clock.get(8..)?.trim_start_matches(|c: char| c == '.' || c.is_ascii_digit());
    let zone = match zone {
        "Z" | "z" | "+00:00" | "-00:00" => String::new(),
        offset => offset.replace('-', "\u{2212}"),
    };
    Some(format!("{day} {month} {year}, {time} UTC{zone}"))
}
