//! Stories of other screens: a small phone, a desk, and the dark.

use anyhow::Result;
use e2e::{Phone, Scheme, host};
use serde_json::{Value, json};

use crate::answers::{BARE_PINS, SOUND_BY_HAND};
use crate::walker::Walker;

/// What reaches over the right side of the screen.
const TOO_WIDE: &str =
    "document.documentElement.scrollWidth <= innerWidth ? [] : Array.from(document.querySelectorAll('body *'))
    .filter((element) => element.getBoundingClientRect().right > innerWidth + 1)
    .map((element) => element.tagName + '.' + element.className)";
/// How far the screen of a sample can be moved away, and the verdict with it.
const MOVES: &str =
    "document.querySelector('.looking') === null || document.documentElement.scrollHeight <= innerHeight
    ? [] : [document.documentElement.scrollHeight]";
/// What a thumb in the dock would miss: less than 44 points high.
const TOO_LOW: &str = "Array.from(document.querySelectorAll('.dock :is(button, a, label, input, select)'))
    .map((element) => [element.innerText || element.className, element.getBoundingClientRect().height])
    .filter(([name, height]) => height > 0 && height < 44 && name !== 'unseen')";

#[tokio::test]
async fn every_screen_fits_a_small_phone_a_desk_and_the_dark() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("sizes").await?;
    let mut buyer = Walker::new(&phone, &[BARE_PINS]);
    buyer.begin_with(&host.origin(), "eyes", "A lead with a name that is rather long for a small phone").await?;
    buyer.walk().await?;
    let sample = phone.eval("location.pathname").await?;
    let sample = sample.as_str().unwrap_or_default();
    let mut inspector = Walker::new(&phone, &[SOUND_BY_HAND]);
    inspector.begin(&host.origin(), "hand-tools").await?;
    phone.tap("[data-place=cable]").await?;
    phone.wait_for(".asked[data-question=flex-condition]").await?;
    phone.tap(".asked [data-answer=put-down]").await?;
    phone.wait_for(".asked[data-question=flex-print]").await?;
    let printing = phone.eval("location.pathname").await?;
    let printing = printing.as_str().unwrap_or_default();

    let mut amiss: Vec<Value> = Vec::new();
    for (size, width, height) in [("phone", 390, 844), ("small", 320, 640), ("desk", 1280, 800)] {
        for (scheme, look) in [(Scheme::Light, "light"), (Scheme::Dark, "dark")] {
            phone.prefer(scheme).await?;
            let screens = [
                ("all-samples", "/"),
                ("new-sample", "/new"),
                ("about", "/about"),
                ("limits", "/limits.html"),
                ("this-sample", sample),
                ("asking-for-print", printing),
                ("make-file", &format!("/study.html#{sample}/file")),
                ("take-in", "/study.html#/take-in"),
                ("collection", "/study.html#/samples"),
                ("instruments", "/study.html#/instruments"),
                ("afterwards", &format!("/study.html#{sample}")),
                ("drawn", &format!("/study.html#{sample}/drawn")),
                ("origin", &format!("/study.html#{sample}/origin")),
                ("risk", &format!("/study.html#{sample}/risk")),
                ("letters", &format!("/study.html#{sample}/letters")),
                ("compare", &format!("/study.html#{sample}/compare")),
            ];
            for (screen, path) in screens {
                // An address that differs behind the # only would load nothing.
                phone.goto("about:blank").await?;
                phone.goto(&format!("{}{path}", host.origin())).await?;
                // A page that is gone to has the phone's own size again.
                phone.resize(width, height).await?;
                phone.wait_for("main").await?;
                phone
                    .wait_until("!document.querySelector('main').innerText.includes('Reading what is stored')")
                    .await?;
                let size_now = phone.eval("[innerWidth, innerHeight]").await?;
                if size_now != json!([width, height]) {
                    amiss.push(json!(["zoomed out", size, screen, size_now]));
                }
                for (what, look_for) in [("too wide", TOO_WIDE), ("moves", MOVES), ("too low", TOO_LOW)] {
                    let found = phone.eval(look_for).await?;
                    if found != json!([]) {
                        amiss.push(json!([what, size, screen, found]));
                    }
                }
                phone.screenshot(&format!("{screen}-{size}-{look}")).await?;
            }
            let paper = phone.eval("getComputedStyle(document.body).backgroundColor").await?;
            let is_dark = paper.as_str().and_then(|rgb| rgb.split(['(', ',']).nth(1)?.trim().parse::<u8>().ok());
            assert_eq!(is_dark.is_some_and(|red| red < 0x60), scheme == Scheme::Dark, "{paper}");
        }
    }
    assert_eq!(amiss, [json!(null); 0]);
    Ok(())
}
