//! Stories of a buyer at a stall, with nothing but eyes.

use anyhow::Result;
use e2e::{Phone, host};

use crate::answers::{BARE_PINS, SOUND_BY_EYE};
use crate::walker::{ALL_LOOKED, Walker, verdict};

/// Whether the sentence of the newest answer begins inside the part of the screen that shows the statement.
const NEWEST_IS_IN_SIGHT: &str = "(() => { const [part, said] = ['.scroll', '.said[data-newest]']
    .map((css) => document.querySelector(css)?.getBoundingClientRect());
    return said !== undefined && part.top - 1 <= said.top && said.top < part.bottom - 20; })()";

#[tokio::test]
async fn bad_lead_is_to_be_kept_away_from_within_twelve_taps() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("bad-by-eye").await?;
    let mut buyer = Walker::new(&phone, &[BARE_PINS]);
    buyer.begin(&host.origin(), "eyes").await?;
    phone.screenshot("first-question").await?;
    buyer.walk_to("pins-and-sleeves").await?;
    assert_eq!(
        verdict(&phone).await?,
        "do-not-accept",
        "a fuse with no print is against the rules, and bare pins are not told yet"
    );
    phone.wait_until(NEWEST_IS_IN_SIGHT).await?;
    phone.screenshot("before-it-is-decided").await?;
    buyer.walk_to("sold-as").await?;
    phone.wait_for_text(".said[data-newest]", "The two lower pins have no plastic sleeves.").await?;
    phone.wait_until(NEWEST_IS_IN_SIGHT).await?;
    phone.screenshot("what-is-new").await?;
    buyer.walk().await?;
    phone.wait_for(".verdict[data-verdict=keep-away]").await?;
    phone.wait_for_text(".verdict", "Keep away").await?;
    phone.wait_for_text(".enough", "That is enough: leave it.").await?;
    phone.screenshot("keep-away").await?;
    assert!(buyer.taps <= 12, "it took {} taps", buyer.taps);
    assert_eq!(phone.console_errors().await?, [""; 0]);
    Ok(())
}

#[tokio::test]
async fn sound_lead_is_only_said_to_be_so_from_outside() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("sound-by-eye").await?;
    let mut buyer = Walker::new(&phone, &[SOUND_BY_EYE]);
    buyer.begin(&host.origin(), "eyes").await?;
    assert_eq!(buyer.walk().await?, ALL_LOOKED);
    assert_eq!(buyer.asked("print-faults"), 0, "what decides nothing waits");
    phone.wait_for(".verdict[data-verdict=nothing-wrong-seen]").await?;
    let said = phone.text(".verdict").await?;
    assert!(said.contains("Nothing wrong seen from outside, in "), "{said}");
    assert!(said.contains("Earth, polarity and copper not tested."), "{said}");
    assert_eq!(phone.texts(".enough").await?, [""; 0]);
    phone.screenshot("nothing-wrong-seen").await?;
    phone.tap("#lesser").await?;
    phone.wait_for(".asked[data-question=print-faults]").await?;
    assert_eq!(buyer.walk().await?, ALL_LOOKED);
    assert_eq!([buyer.asked("print-faults"), buyer.asked("barcode")], [1, 1]);
    phone.wait_for(".verdict[data-verdict=nothing-wrong-seen]").await?;
    Ok(())
}
