//! Photos stand in a PDF byte for byte, and what cannot stand there is told.

use std::fs;
use std::process::Command;

use plugwary::record::{Attached, Photo, Record};
use plugwary::report::pdf;

use crate::reader::{file, run, text};
use crate::record;

/// A record with one photo of this name, of a question that it answers.
fn with_photo(sha256: &str, media_type: &str) -> Record {
    let mut record = record("market-stall-lead");
    let answered = record.examination.answers.first().expect("it has answers").clone();
    record.photos = vec![Photo {
        sha256: sha256.to_owned(),
        media_type: media_type.to_owned(),
        width: 1600,
        height: 1200,
        taken: "2026-03-14T10:06:00+00:00".to_owned(),
        attached: Attached::Answer { question: answered.question.id, target: answered.target },
    }];
    record
}

#[test]
fn photo_comes_out_of_the_pdf_as_it_went_in() {
    // Any JPEG does: a picture of a sheet is one that somebody else has made.
    let sheet = file("photo", "sheet.pdf", &pdf(&record("market-stall-lead"), &[]));
    let name = sheet.with_extension("");
    for arguments in [&["-jpeg", "-r", "60"][..], &["-jpeg", "-gray", "-r", "60"]] {
        let made =
            Command::new("pdftoppm").args(["-singlefile", "-f", "1"]).args(arguments).arg(&sheet).arg(&name).status();
        assert!(made.expect("pdftoppm runs").success());
        let photo = fs::read(sheet.with_extension("jpg")).expect("the picture is there");
        let record = with_photo(&"7".repeat(64), "image/jpeg");
        let bound = file("photo", "bound.pdf", &pdf(&record, &[("7".repeat(64), photo.clone())]));
        assert!(text(&bound).contains(&"7".repeat(64)));
        let root = bound.with_file_name("out");
        let taken_out = Command::new("pdfimages").arg("-all").arg(&bound).arg(&root).status();
        assert!(taken_out.expect("pdfimages runs").success());
        let out = fs::read(bound.with_file_name("out-000.jpg")).expect("there is one photo");
        assert!(out == photo, "{} bytes became {}", photo.len(), out.len());
        let list = run("pdfimages", &["-list"], &bound);
        assert_eq!(list.lines().count(), 3, "{list}");
    }
}

#[test]
fn photo_that_no_pdf_can_show_is_told() {
    for bytes in [&b"RIFF....WEBP"[..], b"", b"\xFF\xD8", b"\xFF\xD8\xFF\xC0\x00\x0B\x08\x00\x00\x00\x00\x03"] {
        let record = with_photo(&"8".repeat(64), "image/webp");
        let bound = file("webp", "bound.pdf", &pdf(&record, &[("8".repeat(64), bytes.to_vec())]));
        assert!(text(&bound).contains("A photo belongs here that cannot be shown on paper"));
    }
}
