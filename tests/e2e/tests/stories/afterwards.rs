//! Stories of the study: what one does with a sample once one sits down.

use std::{fs, process::Command};

use anyhow::Result;
use e2e::{Phone, host};
use serde_json::json;

use crate::answers::{BARE_PINS, SOUND_BY_EYE};
use crate::walker::{RUNNING, Walker};

/// Puts a text into a field as typing does, whatever sort of field it is.
fn fill(css: &str, text: &str) -> String {
    let (css, text) = (json!(css), json!(text));
    format!(
        "(() => {{ const field = document.querySelector({css}); field.value = {text};
        field.dispatchEvent(new Event('input', {{ bubbles: true }}));
        field.dispatchEvent(new Event('change', {{ bubbles: true }})); return field.value === {text}; }})()"
    )
}

async fn fills(phone: &Phone, css: &str, text: &str) -> Result<()> {
    phone.wait_for(css).await?;
    assert_eq!(phone.eval(&fill(css, text)).await?, true, "{css}");
    Ok(())
}

#[tokio::test]
async fn origin_risk_and_letters_are_written_without_a_network_and_stay() -> Result<()> {
    let mut host = host()?;
    let phone = Phone::fresh("afterwards").await?;
    phone.goto(&host.origin()).await?;
    phone.wait_until("window.plugwaryShell?.offlineReady === true").await?;
    host.stop();
    let mut buyer = Walker::new(&phone, &[BARE_PINS]);
    buyer.begin_with(&host.origin(), "eyes", "Garden lead").await?;
    buyer.walk().await?;
    phone.tap("#make-file").await?;
    phone.tap("#afterwards").await?;
    phone.wait_for_text("h1", "Afterwards").await?;
    phone.wait_for_text("#device-key", "sealed with its own key").await?;
    phone.screenshot("afterwards").await?;

    phone.tap_words("Where it came from").await?;
    fills(&phone, "#place", "The market behind the mill").await?;
    fills(&phone, "#when", "2026-11-20T10:15").await?;
    fills(&phone, "#seller", "Stall 14").await?;
    fills(&phone, "#who", "A. Examiner").await?;
    fills(&phone, "#done", "put into a bag").await?;
    fills(&phone, "#seal", "B-007").await?;
    phone.tap("#add-entry").await?;
    phone.wait_for_text(".entries", "A. Examiner: put into a bag [seal or bag number: B-007]").await?;
    phone.screenshot("origin").await?;
    phone.reload().await?;
    phone.wait_for_text(".entries", "put into a bag").await?;
    phone.wait_for_text("main", "The chain is unbroken").await?;
    let kept = "['place', 'when', 'seller'].map((id) => document.getElementById(id).value)";
    assert_eq!(phone.eval(kept).await?, json!(["The market behind the mill", "2026-11-20T10:15", "Stall 14"]));

    phone.tap_words("Afterwards").await?;
    phone.tap_words("How grave it is for people").await?;
    phone.wait_for_text("#grade", "Nobody has weighed it yet").await?;
    phone.screenshot("risk-draft").await?;
    let before = phone.text("#grade").await?;
    phone.tap(".weigh").await?;
    fills(&phone, ".own .event .odds input", "1 in 100000000").await?;
    phone.wait_until(&format!("document.querySelector('#grade').innerText !== {}", json!(before))).await?;
    fills(&phone, ".own .event textarea", "Nobody ever does that.").await?;
    fills(&phone, ".own .event .odds input", "often").await?;
    phone.wait_for(".own .problem").await?;
    phone.screenshot("risk-weighed").await?;
    let weighed = phone.text("#grade").await?;
    phone.reload().await?;
    phone.wait_for(".own").await?;
    assert_eq!(phone.text("#grade").await?, weighed, "what was weighed is not kept");

    phone.tap_words("Afterwards").await?;
    phone.tap_words("Letters").await?;
    phone.tap_words("To the seller").await?;
    phone.wait_for("#letter-seller").await?;
    let letter = phone.eval("document.querySelector('#letter-seller').value").await?;
    let letter = letter.as_str().unwrap_or_default().to_owned();
    assert!(letter.contains("Dangerous product: Garden lead"), "{letter}");
    phone.screenshot("letter").await?;
    phone.tap("#save-seller").await?;
    assert_eq!(fs::read_to_string(phone.wait_for_download("-seller.txt").await?)?, letter);
    assert_eq!(phone.console_errors().await?, [""; 0]);
    Ok(())
}

#[tokio::test]
async fn two_samples_stand_beside_each_other_and_together() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("beside").await?;
    for (name, scripts) in [("Lead one", [SOUND_BY_EYE, BARE_PINS].as_slice()), ("lead  ONE", &[SOUND_BY_EYE])] {
        let mut buyer = Walker::new(&phone, scripts);
        buyer.begin_with(&host.origin(), "eyes", name).await?;
        buyer.walk().await?;
    }
    let good = phone.eval("location.pathname.split('/').pop()").await?;
    let good = good.as_str().unwrap_or_default().to_owned();
    phone.goto(&format!("{}/study.html#/sample/{good}/compare", host.origin())).await?;
    phone.wait_until(RUNNING).await?;
    phone.tap("#known-good").await?;
    phone.wait_for("#known-good[aria-pressed=true]").await?;

    phone.goto("about:blank").await?;
    phone.goto(&format!("{}/study.html#/samples", host.origin())).await?;
    phone.wait_for_text("#products", "2 samples called “lead one”").await?;
    phone.wait_for_text("#products", "This speaks of the samples that were looked at.").await?;
    phone.screenshot("together").await?;
    phone.tap_words("Show only").await?;
    fills(&phone, "#by-verdict", "keep-away").await?;
    phone.wait_until("document.querySelectorAll('.samples .sample').length === 1").await?;
    phone.screenshot("sorted-out").await?;
    phone.tap("#csv-findings").await?;
    let table = fs::read_to_string(phone.wait_for_download("findings.csv").await?)?;
    assert!(table.contains(",sleeve-missing,"), "{table}");
    phone.tap(".samples .small").await?;
    phone.wait_for_text("h1", "Afterwards").await?;
    phone.tap_words("Beside a known good").await?;
    fills(&phone, "#compare-with", &good).await?;
    phone.wait_for_text("#compared", "What differs").await?;
    phone.wait_for_text("#compared", "A known good is one sample that somebody trusts").await?;
    phone.screenshot("beside").await?;
    assert_eq!(phone.console_errors().await?, [""; 0]);
    Ok(())
}

/// What spreadsheets run, browsers run, and what turns the reading direction around.
const HOSTILE: &str = "=cmd|'/c calc'!A1 <script>window.hasRun = true</script> \u{202e}gnihton";

#[tokio::test]
async fn hostile_text_is_harmless_in_page_table_and_paper() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("hostile-text").await?;
    phone.goto(&format!("{}/new", host.origin())).await?;
    phone.wait_for("#begin").await?;
    for nth in 1..=3 {
        let css = format!(".line:nth-of-type({nth}) input");
        fills(&phone, &css, HOSTILE).await?;
    }
    phone.tap("#begin").await?;
    phone.wait_for(".asked").await?;
    let id = phone.eval("location.pathname.split('/').pop()").await?;
    let id = id.as_str().unwrap_or_default().to_owned();
    phone.goto(&format!("{}/study.html#/sample/{id}/origin", host.origin())).await?;
    for field in ["#place", "#seller", "#price", "#order", "#listing", "textarea", "#who", "#done", "#seal"] {
        fills(&phone, field, HOSTILE).await?;
    }
    phone.tap("#add-entry").await?;
    phone.wait_for_text(".entries", "gnihton").await?;
    phone.screenshot("origin").await?;
    phone.goto(&format!("{}/study.html#/sample/{id}/file", host.origin())).await?;
    phone.tap("#save").await?;
    let page = phone.wait_for_download(".html").await?;
    phone.tap("#save-pdf").await?;
    let paper = phone.wait_for_download(".pdf").await?;
    let read = Command::new("pdftotext").arg(&paper).arg("-").output()?;
    let read = String::from_utf8(read.stdout)?;
    assert!(read.contains("=cmd|") && read.contains("[U+202E]") && !read.contains('\u{202e}'), "{read}");
    phone.goto(&format!("{}/study.html#/samples", host.origin())).await?;
    phone.wait_for_text(".samples", "gnihton").await?;
    phone.tap("#csv-samples").await?;
    let table = fs::read_to_string(phone.wait_for_download("samples.csv").await?)?;
    let starts_formula = |cell: &str| cell.trim_start_matches('"').starts_with('=');
    assert!(!table.lines().flat_map(|line| line.split(',')).any(starts_formula), "{table}");
    assert!(table.contains("\"'=cmd|") || table.contains(",'=cmd|"), "{table}");
    assert_eq!(phone.eval("window.hasRun === undefined").await?, true);
    phone.goto(&format!("file://{}", page.display())).await?;
    phone.wait_for_text("body", "gnihton").await?;
    phone.screenshot("file").await?;
    assert_eq!(phone.eval("window.hasRun === undefined").await?, true);
    assert_eq!(phone.console_errors().await?, [""; 0]);
    Ok(())
}
