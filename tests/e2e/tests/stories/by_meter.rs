//! Stories of somebody with tools and meters, who types what they read.

use anyhow::{Context as _, Result};
use e2e::{Phone, host};

use crate::answers::{Do, LETHAL_WITH_GOOD_PRINT, SOUND_BY_EYE, SOUND_BY_HAND, SOUND_BY_METER};
use crate::walker::{ALL_LOOKED, RUNNING, Walker, verdict};

const FIELD: &str = ".asked[data-question=earth-resistance] input.value";

#[tokio::test]
async fn examination_goes_on_where_the_browser_was_killed() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("killed-while-typing").await?;
    let mut inspector = Walker::new(&phone, &[SOUND_BY_EYE, SOUND_BY_HAND, SOUND_BY_METER]);
    inspector.begin(&host.origin(), "hand-tools").await?;
    assert_eq!(inspector.walk_to("flex-length").await?, "flex-length");
    phone.screenshot("a-value-to-type").await?;
    assert_eq!(inspector.walk().await?, ALL_LOOKED);
    phone.wait_for_text(".verdict", "Nothing wrong seen from outside").await?;
    phone.screenshot("all-looked-by-hand").await?;
    phone.tap_words("I have more with me: Meter and screwdriver").await?;
    phone.wait_until("document.querySelector('.asked').dataset.question !== 'all-looked'").await?;
    assert_eq!(verdict(&phone).await?, "not-decided", "with meters more is essential");

    assert_eq!(inspector.walk_to("earth-resistance").await?, "earth-resistance");
    phone.tap_words("mΩ").await?;
    phone.type_text(FIELD, "3").await?;
    phone.screenshot("half-typed").await?;
    let said = phone.texts(".sentence").await?;
    assert!(said.len() > 40, "{said:?}");
    let walked = inspector.progress();
    let phone = Phone::again(phone.kill()?).await?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(RUNNING).await?;
    phone.tap("a.sample").await?;
    phone.wait_for(FIELD).await?;
    assert_eq!(phone.texts(".sentence").await?, said);
    phone.screenshot("after-the-restart").await?;
    assert_eq!(
        phone.eval(&format!("document.querySelector('{FIELD}').value")).await?,
        "3",
        "what was half typed is lost"
    );

    let mut inspector = Walker::resume(&phone, walked);
    // Nothing is put down while nobody has said what it was read with; the unit that was tapped is still the milliohm.
    phone.type_text(FIELD, "7\n").await?;
    phone.wait_for_text(".asked .problem", "Say what you read it with").await?;
    inspector.answer(Do::Read("\n", "earth-path-tester")).await?;
    phone.wait_for_text(".sentence", "37\u{a0}mΩ").await?;
    assert_eq!(inspector.walk().await?, ALL_LOOKED);
    assert_eq!(verdict(&phone).await?, "nothing-wrong-seen");
    Ok(())
}

#[tokio::test]
async fn sound_lead_is_said_to_be_so_in_how_many_of_how_many() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("sound-by-meter").await?;
    let mut inspector = Walker::new(&phone, &[SOUND_BY_EYE, SOUND_BY_HAND, SOUND_BY_METER]);
    inspector.begin(&host.origin(), "meters").await?;
    assert_eq!(inspector.walk_to("core-resistance").await?, "core-resistance");
    phone.screenshot("core-resistance").await?;
    assert_eq!(inspector.walk_to("strand-count").await?, "strand-count");
    phone.screenshot("strand-count").await?;
    assert_eq!(inspector.walk().await?, ALL_LOOKED);
    assert_eq!((inspector.asked("earth-resistance"), inspector.asked("core-resistance")), (4, 3));
    let headline = phone.text(".verdict h1").await?;
    let counts = headline.strip_prefix("Nothing wrong seen in ").context(headline.clone())?;
    let (made, of) = counts.split_once(" of ").context(headline.clone())?;
    let (made, of): (u32, u32) = (made.parse()?, of.parse()?);
    assert!(made > 100 && made < of, "{headline}");
    phone.screenshot("nothing-wrong-seen").await?;
    assert_eq!(phone.console_errors().await?, [""; 0]);
    Ok(())
}

#[tokio::test]
async fn double_square_and_good_print_do_not_hide_a_lethal_lead() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("lethal-with-good-print").await?;
    let scripts = [SOUND_BY_EYE, SOUND_BY_HAND, SOUND_BY_METER, LETHAL_WITH_GOOD_PRINT];
    let mut inspector = Walker::new(&phone, &scripts);
    inspector.begin(&host.origin(), "meters").await?;
    assert_eq!(inspector.walk_to("earth-resistance").await?, "earth-resistance");
    phone.screenshot("double-square-seen").await?;
    assert_eq!(inspector.walk().await?, ALL_LOOKED);
    assert_eq!((inspector.asked("earth-resistance"), inspector.asked("live-competent")), (4, 0));
    phone.wait_for(".verdict[data-verdict=keep-away]").await?;
    phone.tap("[data-place=live]").await?;
    phone.wait_for_text(".asked", "The live part is withdrawn.").await?;
    phone.screenshot("keep-away").await?;
    phone.wait_for("[data-code=class-mark-contradicted]").await?;
    let with_the_mark = earth_and_copper(&phone).await?;

    phone.tap(".said[data-question=marks] > .sentence").await?;
    phone.wait_for(".asked[data-question=marks]").await?;
    phone.screenshot("reopened").await?;
    phone.tap(".asked [data-answer=double-square]").await?;
    phone.tap(".asked [data-answer=put-down]").await?;
    phone.wait_until("document.querySelector('[data-code=class-mark-contradicted]') === null").await?;
    assert_eq!(earth_and_copper(&phone).await?, with_the_mark);
    assert_eq!(verdict(&phone).await?, "keep-away");
    Ok(())
}

/// What is found of earth and copper, in words.
async fn earth_and_copper(phone: &Phone) -> Result<Vec<String>> {
    let mut found = Vec::new();
    for code in ["earth-open", "earth-resistance-high", "earth-not-connected", "core-resistance-high"] {
        found.push(phone.text(&format!("[data-code={code}]")).await?);
    }
    Ok(found)
}
