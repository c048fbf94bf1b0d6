//! Stories of the file: made without a network, taken back by another person, judged by the native command.

use std::{env, fs, path::Path, process::Command};

use anyhow::{Context as _, Result, ensure};
use e2e::{Build, Phone, Server, host};

use crate::answers::{BARE_PINS, SOUND_BY_EYE};
use crate::walker::{ALL_LOOKED, RUNNING, Walker, verdict};

/// True once the app is kept for use without a network.
const READY: &str = "window.plugwaryShell?.offlineReady === true";

/// What is said when the press did not come.
const NOT_MADE: &str = "The file was not made: the part of the app that makes files could not be loaded.";

#[tokio::test]
async fn examination_and_file_are_made_without_a_network() -> Result<()> {
    let mut host = host()?;
    let phone = Phone::fresh("file-offline").await?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(READY).await?;
    host.stop();
    phone.reload().await?;
    phone.wait_until(RUNNING).await?;
    assert_eq!(phone.eval("fetch('/not-kept').then(() => 'answered', () => 'gone')").await?, "gone");
    phone.screenshot("all-samples").await?;
    let mut buyer = Walker::new(&phone, &[BARE_PINS]);
    buyer.begin(&host.origin(), "eyes").await?;
    buyer.walk().await?;
    phone.wait_for(".verdict[data-verdict=keep-away]").await?;
    phone.tap("#make-file").await?;
    phone.wait_for("#save").await?;
    phone.screenshot("make-file").await?;
    phone.tap("#save").await?;
    let file = phone.wait_for_download(".html").await?;
    let page = fs::read_to_string(file)?;
    assert!(page.contains("<h1>Keep away</h1>"), "{page}");
    assert!(page.contains("The two lower pins have no plastic sleeves."), "{page}");
    for (button, ending) in [("#save-pdf", ".pdf"), ("#save-label", "-label.pdf")] {
        phone.tap(button).await?;
        let made = fs::read(phone.wait_for_download(ending).await?)?;
        assert!(made.starts_with(b"%PDF-") && made.ends_with(b"%%EOF"), "{ending}");
    }
    Ok(())
}

#[tokio::test]
async fn file_taken_back_on_another_phone_says_the_same_as_the_native_command() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("file-made").await?;
    let mut buyer = Walker::new(&phone, &[SOUND_BY_EYE, BARE_PINS]);
    buyer.begin_with(&host.origin(), "eyes", "Garden lead <b>\"four\" & more</b>").await?;
    assert_eq!(buyer.walk().await?, ALL_LOOKED);
    let said = statement(&phone).await?;
    let decided = verdict(&phone).await?;
    assert_eq!(decided, "keep-away");
    phone.tap("#make-file").await?;
    phone.tap("#save").await?;
    let file = phone.wait_for_download(".html").await?;
    phone.tap("#save-json").await?;
    let bare = phone.wait_for_download(".json").await?;

    let other = Phone::fresh("file-taken-back").await?;
    other.goto(&host.origin()).await?;
    other.wait_until(RUNNING).await?;
    other.tap("#take-in").await?;
    other.wait_for_text("h1", "Look at a saved file").await?;
    other.choose_file("#take-back", &file).await?;
    other.wait_for("#seal[data-seal=untouched]").await?;
    other.screenshot("looked-at").await?;
    other.tap("#keep").await?;
    other.wait_for(".verdict").await?;
    assert_eq!(verdict(&other).await?, decided);
    assert_eq!(statement(&other).await?, said);
    other.screenshot("taken-back").await?;
    other.goto(&format!("file://{}", file.display())).await?;
    other.screenshot("the-file").await?;
    other.eval("window.scrollTo(0, 700)").await?;
    other.screenshot("the-file-further-down").await?;
    assert_eq!(other.console_errors().await?, [""; 0]);

    let line = verdict_inside(&fs::read_to_string(&file)?)?;
    assert!(line.contains(r#""verdict":"keep-away""#), "{line}");
    assert_eq!(judge(&file)?, format!("{line}\n"));
    assert_eq!(judge(&bare)?, format!("{line}\n"));
    Ok(())
}

#[tokio::test]
async fn file_that_could_not_be_made_is_made_when_asked_again() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("file-asked-again").await?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(RUNNING).await?;
    phone.tap("a.sample").await?;
    phone.tap("#make-file").await?;
    phone.wait_for("#save").await?;
    phone.eval("(window.Own = Worker, window.Worker = function () { return new Own('/missing.js'); }, 0)").await?;
    phone.tap("#save").await?;
    phone.wait_for_text(".notice", NOT_MADE).await?;
    phone.screenshot("file-not-made").await?;
    phone.eval("(window.Worker = Own, 0)").await?;
    phone.tap("#save").await?;
    let page = fs::read_to_string(phone.wait_for_download(".html").await?)?;
    assert!(page.contains("<h1>Keep away</h1>"), "{page}");
    Ok(())
}

#[tokio::test]
async fn press_that_is_not_there_is_told_and_the_examination_can_be_saved() -> Result<()> {
    let phone = Phone::fresh("file-no-press").await?;
    let build = Build::copy(phone.storage().folder("build")?)?;
    build.change("press-worker.js", "/press_bg.wasm", "/missing.wasm")?;
    build.stamp()?;
    let host = Server::start(build.site(), 0)?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(RUNNING).await?;
    phone.tap("a.sample").await?;
    phone.tap("#make-file").await?;
    phone.tap("#share").await?;
    phone.wait_for_text(".notice", NOT_MADE).await?;
    phone.tap("#save-json").await?;
    phone.wait_for_download(".json").await?;
    Ok(())
}

/// What the screen says of the sample.
async fn statement(phone: &Phone) -> Result<(String, String)> {
    Ok((phone.text(".verdict").await?, phone.text(".statement").await?))
}

/// The line of the verdict that the file carries.
fn verdict_inside(page: &str) -> Result<String> {
    let (_, after) = page.split_once(r#"id="plugwary-verdict">"#).context("the file carries no verdict")?;
    let (line, _) = after.split_once("</script>").context("the verdict does not end")?;
    let plain = [("\\u003c", "<"), ("\\u003e", ">"), ("\\u0026", "&")];
    Ok(plain.iter().fold(line.to_owned(), |line, (escaped, plain)| line.replace(escaped, plain)))
}

/// What the native command prints of a file.
fn judge(file: &Path) -> Result<String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    let cargo = env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let arguments =
        ["run", "--quiet", "--no-default-features", "--features", "schema", "--bin", "plugwary", "--", "judge"];
    let output = Command::new(cargo).args(arguments).arg(file).current_dir(root).output()?;
    ensure!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    Ok(String::from_utf8(output.stdout)?)
}
