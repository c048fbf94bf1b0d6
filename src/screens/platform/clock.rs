//! The clock on the wall.

use core::time::Duration;

use js_sys::{Date, Promise};
use leptos::prelude::set_timeout;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;

const MILLISECONDS_A_MINUTE: f64 = 60_000.0;

/// Now, by RFC 3339 to the second, with the offset of this device's zone, such as `2026-03-01T09:30:00+00:00`.
pub fn now() -> String {
    let now = Date::new_0();
    rfc_3339(now.get_time(), now.get_timezone_offset())
}

/// A moment in milliseconds since 1970 UTC, as a clock shows it that is so many minutes behind UTC.
pub fn rfc_3339(milliseconds: f64, minutes_behind: f64) -> String {
    // The one formatter of the browser that knows no locale writes UTC: let it write a moment shifted by the offset.
    let shifted = Date::new(&JsValue::from_f64(milliseconds - minutes_behind * MILLISECONDS_A_MINUTE));
    let written = String::from(shifted.to_iso_string());
    let to_the_second = written.split_once('.').map_or(written.as_str(), |(before, _)| before);
    let sign = if minutes_behind > 0.0 { '-' } else { '+' };
    let minutes = minutes_behind.abs();
    format!("{to_the_second}{sign}{:02.0}:{:02.0}", (minutes / 60.0).floor(), minutes % 60.0)
}

/// A moment that somebody picked on this device's clock, such as `2026-03-01T09:30`, by RFC 3339 with the offset of its zone then;
/// `None` where it is none.
pub fn of_local(picked: &str) -> Option<String> {
    let moment = Date::new(&JsValue::from_str(picked));
    let milliseconds = moment.get_time();
    (picked.len() >= "2026-03-01T09:30".len() && milliseconds.is_finite())
        .then(|| rfc_3339(milliseconds, moment.get_timezone_offset()))
}

/// Lets the screen catch up in the middle of long work.
pub async fn breathe() {
    let pause = Promise::new(&mut |done, _| {
        set_timeout(move || drop(done.call0(&JsValue::NULL)), Duration::ZERO);
    });
    // It always ends well.
    drop(JsFuture::from(pause).await);
}
