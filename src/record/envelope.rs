//! The outermost look at a text: is it small enough, is it ours, and which version.

use serde::Deserialize;

use super::fault::{RecordFault, Said};
use super::number::Number;

/// What `format` says in every examination.
pub const FORMAT: &str = "plugwary-examination";

/// The newest version that is read, and the one that is written.
pub const VERSION: u64 = 1;

/// The largest file that is read, in bytes.
pub const LARGEST: usize = 64 * 1024 * 1024;

/// How deep lists and objects may stand in each other; an examination needs four.
pub const DEEPEST: usize = 32;

/// The two fields that every version keeps; all else is another version's business.
#[derive(Deserialize)]
struct Envelope {
    format: Option<serde_json::Value>,
    version: Option<Number>,
}

/// Lets through what claims to be an examination of a version that can be read.
pub fn open(text: &str) -> Result<(), RecordFault> {
    if text.len() > LARGEST {
        return Err(RecordFault::TooLarge);
    }
    if !text.trim_start().starts_with('{') {
        return Err(RecordFault::Foreign);
    }
    if is_too_deep(text) {
        return Err(RecordFault::TooDeep);
    }
    let envelope: Envelope = serde_json::from_str(text).map_err(|error| RecordFault::from_json(&error))?;
    if envelope.format.as_ref().and_then(serde_json::Value::as_str) != Some(FORMAT) {
        return Err(RecordFault::Foreign);
    }
    supported(envelope.version.as_ref().map(Number::text))
}

fn supported(version: Option<&str>) -> Result<(), RecordFault> {
    let takes = "a whole number from 1";
    let Some(version) = version else {
        return Err(RecordFault::Field { field: "version", takes, got: Said::NOTHING });
    };
    let is_whole = version.bytes().all(|byte| byte.is_ascii_digit());
    match version.parse::<u64>() {
        Ok(VERSION) => Ok(()),
        // A number that no u64 holds is a newer one too.
        Ok(1..) | Err(_) if is_whole => Err(RecordFault::Newer { version: Said::from(version) }),
        _ => Err(RecordFault::Field { field: "version", takes, got: Said::from(version) }),
    }
}

/// Counts brackets outside strings, before anything is built that recursion would have to take down again.
fn is_too_deep(text: &str) -> bool {
    let (mut depth, mut in_string, mut is_escaped) = (0_usize, false, false);
    for byte in text.bytes() {
        match byte {
            _ if is_escaped => is_escaped = false,
            b'\\' if in_string => is_escaped = true,
            b'"' => in_string = !in_string,
            b'{' | b'[' if !in_string => depth += 1,
            b'}' | b']' if !in_string => depth = depth.saturating_sub(1),
            _ => {}
        }
        if depth > DEEPEST {
            return true;
        }
    }
    false
}
