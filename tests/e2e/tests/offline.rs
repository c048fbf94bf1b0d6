//! Stories of the network: gone for good, and back with a newer build of the app.

use anyhow::Result;
use e2e::{Build, Phone, Server, Site, host};
use serde_json::{Value, json};

/// True once the app is kept for use without a network.
const READY: &str = "window.plugwaryShell?.offlineReady === true";
/// True once the program runs: it has taken away what stands in its place until then.
const RUNNING: &str = "window.plugwaryShell !== undefined && document.getElementById('first-paint') === null";

/// Which build the page is of.
const VERSION: &str = "document.querySelector('meta[name=plugwary-build]').content";

#[tokio::test]
async fn app_starts_and_deep_links_open_after_the_network_is_gone() -> Result<()> {
    let mut host = host()?;
    let phone = Phone::fresh("offline").await?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(RUNNING).await?;
    phone.wait_for_text("h1", "Plugwary").await?;
    phone.wait_until(READY).await?;
    let way = "performance.getEntriesByType('navigation')[0].type";
    assert_eq!(phone.eval(way).await?, "navigate", "the first visit was disturbed");
    assert_eq!(phone.eval("[innerWidth, innerHeight, devicePixelRatio]").await?, json!([390, 844, 3]));
    assert_eq!(phone.console_errors().await?, [""; 0]);
    phone.wait_for_text(".passing", "Ready: from now on this works without a network.").await?;
    assert_eq!(
        phone.eval("document.querySelector('main').getBoundingClientRect().top").await?,
        0,
        "it pushes the page down"
    );
    phone.screenshot("first-visit").await?;

    host.stop();
    assert_eq!(phone.eval("fetch('/not-kept').then(() => 'answered', () => 'gone')").await?, "gone");
    phone.reload().await?;
    phone.wait_until(RUNNING).await?;
    phone.wait_for_text("h1", "Plugwary").await?;
    phone.screenshot("reloaded").await?;

    phone.goto(&format!("{}/no/such/screen?from=nowhere", host.origin())).await?;
    phone.wait_until(RUNNING).await?;
    phone.screenshot("deep-link").await?;

    phone.goto(&format!("{}/limits.html", host.origin())).await?;
    phone.wait_for_text("h1", "Limits and rules").await?;
    phone.screenshot("limits").await?;
    phone.tap("a").await?;
    phone.wait_until(RUNNING).await?;
    phone.wait_for_text("h1", "Plugwary").await?;
    Ok(())
}

#[tokio::test]
async fn script_that_got_into_the_page_does_not_run() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("policy").await?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(RUNNING).await?;
    let smuggle = "(() => { document.body.append(Object.assign(document.createElement('script'),
        { textContent: 'window.hasRun = true' })); return window.hasRun === true; })()";
    assert_eq!(phone.eval(smuggle).await?, false);
    assert_eq!(phone.console_errors().await?.len(), 1);
    Ok(())
}

#[tokio::test]
async fn app_starts_without_a_network_after_the_browser_was_killed() -> Result<()> {
    let mut host = host()?;
    let phone = Phone::fresh("killed").await?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(READY).await?;
    host.stop();

    let phone = Phone::again(phone.kill()?).await?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(RUNNING).await?;
    assert_eq!(phone.eval(READY).await?, true);
    Ok(())
}

#[tokio::test]
async fn newer_build_waits_until_it_is_asked_for() -> Result<()> {
    let phone = Phone::fresh("update").await?;
    let (old, new) = (build(&phone, "old")?, build(&phone, "new")?);
    new.change("robots.txt", "Allow", "# Newer.\nAllow")?;
    let (old_version, new_version) = (old.stamp()?, new.stamp()?);
    let host = Server::start(old.site(), 0)?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(READY).await?;
    assert_eq!(kept(&phone).await?, json!([cache(&old_version)]));

    let mut host = serve_instead(host, new.site())?;
    phone.reload().await?;
    phone.wait_until("window.plugwaryShell.updateWaiting === true").await?;
    phone.reload().await?;
    phone.wait_until("window.plugwaryShell.updateWaiting === true").await?;
    assert_eq!(phone.eval(VERSION).await?, old_version.as_str());
    assert_eq!(kept(&phone).await?, json!([cache(&old_version), cache(&new_version)]));

    phone.eval("window.plugwaryApplyUpdate()").await?;
    phone.wait_until(&format!("{VERSION} === '{new_version}' && window.plugwaryShell !== undefined")).await?;
    phone.wait_until(READY).await?;
    assert_eq!(phone.eval("window.plugwaryShell.updateWaiting").await?, false);
    assert_eq!(kept(&phone).await?, json!([cache(&new_version)]));
    host.stop();
    phone.reload().await?;
    phone.wait_until(RUNNING).await
}

#[tokio::test]
async fn half_finished_deploy_leaves_the_old_build_in_place() -> Result<()> {
    let phone = Phone::fresh("half-deploy").await?;
    let (old, new) = (build(&phone, "old")?, build(&phone, "new")?);
    new.change("robots.txt", "Allow", "# Newer.\nAllow")?;
    let (old_version, _) = (old.stamp()?, new.stamp()?);
    // The list is that of the new build, but this file is not yet.
    new.change("robots.txt", "# Newer.\nAllow", "Allow")?;
    let host = Server::start(old.site(), 0)?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(READY).await?;

    let mut host = serve_instead(host, new.site())?;
    let outcome = "navigator.serviceWorker.getRegistration().then((known) => known.update()).then((known) =>
        new Promise((tell) => { const worker = known.installing; worker.onstatechange = () => tell(worker.state); }))";
    assert_eq!(phone.eval(outcome).await?, "redundant");
    assert_eq!(kept(&phone).await?, json!([cache(&old_version)]));
    assert_eq!(phone.eval("window.plugwaryShell.updateWaiting").await?, false);

    host.stop();
    phone.reload().await?;
    phone.wait_until(RUNNING).await
}

#[tokio::test]
async fn build_that_does_not_start_says_so_and_is_replaced_without_asking() -> Result<()> {
    let phone = Phone::fresh("broken-build").await?;
    let (broken, mended) = (build(&phone, "broken")?, build(&phone, "mended")?);
    broken.change("index.html", "data-wasm=\"", "data-wasm=\"/missing.wasm?")?;
    broken.stamp()?;
    let mended_version = mended.stamp()?;
    let host = Server::start(broken.site(), 0)?;
    phone.goto(&host.origin()).await?;
    phone.wait_for_text("#first-paint", "Plugwary could not start.").await?;
    phone.wait_until(READY).await?;
    phone.screenshot("could-not-start").await?;

    let _host = serve_instead(host, mended.site())?;
    phone.reload().await?;
    phone.wait_until(&format!("{VERSION} === '{mended_version}'")).await?;
    phone.wait_until(RUNNING).await
}

fn build(phone: &Phone, name: &str) -> Result<Build> {
    Build::copy(phone.storage().folder(name)?)
}

/// The host goes on at the same address, with another build.
fn serve_instead(mut host: Server, site: Site) -> Result<Server> {
    let port = host.port();
    host.stop();
    Ok(Server::start(site, port)?)
}

fn cache(version: &str) -> String {
    format!("plugwary-build-{version}")
}

async fn kept(phone: &Phone) -> Result<Value> {
    phone.eval("caches.keys()").await
}
