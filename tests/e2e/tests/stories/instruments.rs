//! The story of one's own instrument: named once in the study, chosen where a value is typed, and carried along in the examination.

use std::fs;

use anyhow::{Context as _, Result};
use e2e::{Phone, host};
use serde_json::{Value, json};

use crate::answers::{SOUND_BY_EYE, SOUND_BY_HAND};
use crate::walker::{RUNNING, Walker};

/// Chooses this instrument, where one's own are offered by their names.
const OWN: &str = ".asked [data-instrument='digital-calliper Bench calliper']";

#[tokio::test]
async fn own_instrument_is_named_once_and_its_doubt_goes_along() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("own-instrument").await?;
    phone.goto(&format!("{}/study.html#/instruments", host.origin())).await?;
    phone.wait_until(RUNNING).await?;
    phone.type_text("#instrument-name", "Bench calliper").await?;
    let choose = "(() => { const field = document.querySelector('main select'); field.value = 'digital-calliper';
        field.dispatchEvent(new Event('change', { bubbles: true })); return field.value; })()";
    assert_eq!(phone.eval(choose).await?, "digital-calliper");
    for (nth, text) in [(2, "0"), (3, "1"), (4, "0,04")] {
        let field = format!("document.querySelectorAll('main .line input')[{}]", nth - 1);
        let fill = format!(
            "(() => {{ const field = {field}; field.value = '{text}'; field.dispatchEvent(new Event('input', {{ bubbles: true }})); return 1; }})()"
        );
        phone.eval(&fill).await?;
    }
    phone.tap("#add-instrument").await?;
    phone.wait_for_text("main li", "Bench calliper").await?;
    phone.screenshot("named").await?;

    let mut inspector = Walker::new(&phone, &[SOUND_BY_EYE, SOUND_BY_HAND]);
    inspector.begin(&host.origin(), "hand-tools").await?;
    assert_eq!(inspector.walk_to("live-pin-width").await?, "live-pin-width");
    phone.tap(OWN).await?;
    phone.screenshot("chosen").await?;
    phone.type_text(".asked input.value", "6.35").await?;
    // A rectangle of 0.04 mm and one digit, 0.05 mm in all, with the last digit's own 0.005 mm: 2 * sqrt(0.05² + 0.005²) / sqrt(3).
    phone.wait_for_text(".said-back", "0.058").await?;
    phone.type_text(".asked input.value", "\n").await?;
    phone.wait_for(".asked[data-question=earth-pin-width]").await?;
    phone.tap_words("more: look next, letters, what nobody looked at, delete").await?;
    phone.tap("#save-json").await?;
    let saved: Value = serde_json::from_str(&fs::read_to_string(phone.wait_for_download(".json").await?)?)?;
    let answers = saved.get("answers").and_then(Value::as_array).context("the file has no answers")?;
    let of = |answer: &&Value| answer.get("question") == Some(&json!("live-pin-width"));
    let reading = answers.iter().find(of).and_then(|answer| answer.get("reading")).context("no reading")?;
    let own = json!({ "name": "Bench calliper", "percent": 0, "digits": 1, "fixed": 0.04, "fixed_unit": "millimetre" });
    assert_eq!(reading.get("own_instrument"), Some(&own));
    assert_eq!(phone.console_errors().await?, [""; 0]);
    Ok(())
}
