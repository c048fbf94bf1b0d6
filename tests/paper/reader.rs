//! Programs of others that read PDFs and pictures.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// A file in a folder of its own, for programs to read.
pub fn file(folder: &str, name: &str, bytes: &[u8]) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("paper").join(folder);
    fs::create_dir_all(&folder).expect("the target folder takes files");
    let path = folder.join(name);
    fs::write(&path, bytes).expect("the target folder takes files");
    path
}

/// What a program prints; it must neither fail nor complain.
pub fn run(program: &str, arguments: &[&str], file: &Path) -> String {
    let output = Command::new(program).args(arguments).arg(file).args(last(program)).output();
    let output = output.expect("the program is there");
    let complaint = String::from_utf8_lossy(&output.stderr).into_owned();
    assert!(output.status.success() && complaint.is_empty(), "{program} {}: {complaint}", file.display());
    String::from_utf8(output.stdout).expect("the program prints text")
}

/// What has to stand behind the file, so that the result comes to us.
fn last(program: &str) -> &'static [&'static str] {
    if program == "pdftotext" { &["-"] } else { &[] }
}

/// The text of a PDF, line for line.
pub fn text(file: &Path) -> String {
    run("pdftotext", &["-raw"], file)
}

/// What a PDF says of itself, such as the number of its pages.
pub fn about(file: &Path, what: &str) -> String {
    let info = run("pdfinfo", &[], file);
    let line = info.lines().find_map(|line| line.strip_prefix(what)?.strip_prefix(':'));
    line.expect("the PDF says it").trim().to_owned()
}

/// What the square code on the first page says.
pub fn code(pdf: &Path) -> String {
    let picture = pdf.with_extension("png");
    let name = pdf.with_extension("");
    let made =
        Command::new("pdftoppm").args(["-png", "-r", "200", "-singlefile", "-f", "1"]).arg(pdf).arg(name).status();
    assert!(made.expect("pdftoppm runs").success());
    run("zbarimg", &["--nodbus", "--raw", "-q", "-Sdisable", "-Sqrcode.enable"], &picture).trim_end().to_owned()
}
