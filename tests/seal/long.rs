//! Files made to take long: each is walked along once, so that all of them together take seconds even in a test.

use plugwary::seal::{State, check};

const EXAMINATION: &str = "<script type=\"application/json\" id=\"plugwary-examination\">";
const SEAL: &str = "<script type=\"application/json\" id=\"plugwary-seal\">";

#[test]
fn what_is_repeated_without_end_is_walked_along_once() {
    let image = "<img alt=\"\" data-sha256=\"\" src=\"data:image/jpeg;base64,\">";
    for piece in
        ["<img alt=\"", image, EXAMINATION, SEAL, "\" src=\"data:", "</script>\n", "{\"a\":", "[", "\\", "\u{fffd}"]
    {
        let many = piece.repeat(2_000_000 / piece.len());
        for file in
            [many.clone(), format!("{EXAMINATION}{many}"), format!("{many}{SEAL}{many}"), format!("{SEAL}{many}")]
        {
            assert_ne!(check(file.as_bytes()).state, State::Untouched);
        }
    }
}

#[test]
fn a_file_larger_than_any_examination_is_not_read() {
    let checked = check(&vec![b'x'; 64 * 1024 * 1024 + 1]);
    assert_eq!(checked.state, State::NotSealed);
    assert_eq!(checked.record.map_err(|fault| fault.to_string()), Err("the file is larger than 64 MiB".to_owned()));
}
