//! Stories of the network: gone for good, and back with a newer build of the app.

use std::fs;

use anyhow::{Context as _, Result};
use e2e::{Phone, Server, Site, copy_of_app, host};

/// True once the app is kept for use without a network.
const READY: &str = "window.plugwaryShell?.offlineReady === true";
/// True once the program runs: it has taken away what stands in its place until then.
const RUNNING: &str =
    "window.plugwaryShell !== undefined && document.getElementById('first-paint') === null";

#[tokio::test]
async fn app_starts_and_deep_links_open_after_the_network_is_gone() -> Result<()> {
    let mut host = host()?;
    let phone = Phone::fresh("offline").await?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(RUNNING).await?;
    phone.wait_for_text("h1", "Plugwary").await?;
    phone.wait_until(READY).await?;
    assert_eq!(
        phone
            .eval("[innerWidth, innerHeight, devicePixelRatio]")
            .await?,
        serde_json::json!([390, 844, 3])
    );
    assert_eq!(phone.console_errors().await?, [""; 0]);
    phone.screenshot("first-visit").await?;

    host.stop();
    assert_eq!(
        phone
            .eval("fetch('/not-kept').then(() => 'answered', () => 'gone')")
            .await?,
        "gone"
    );
    phone.reload().await?;
    phone.wait_until(RUNNING).await?;
    phone.wait_for_text("h1", "Plugwary").await?;
    phone.screenshot("reloaded").await?;

    phone
        .goto(&format!("{}/no/such/screen?from=nowhere", host.origin()))
        .await?;
    phone.wait_until(RUNNING).await?;
    phone.screenshot("deep-link").await?;
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
    let (old, new) = (
        phone.storage().folder("old")?,
        phone.storage().folder("new")?,
    );
    copy_of_app(&old)?;
    copy_of_app(&new)?;
    let worker = fs::read_to_string(old.join("sw.js"))?;
    let version = version(&worker)?;
    fs::write(new.join("sw.js"), worker.replace(version, "newer"))?;

    let mut host = Server::start(Site::new(&old), 0)?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(READY).await?;
    assert_eq!(
        caches(&phone).await?,
        serde_json::json!([format!("plugwary-build-{version}")])
    );

    host = serve_instead(host, Site::new(&new))?;
    phone.reload().await?;
    phone
        .wait_until("window.plugwaryShell.updateWaiting === true")
        .await?;
    phone.wait_until(RUNNING).await?;
    phone.eval("window.isOldPage = true").await?;
    phone.reload().await?;
    phone
        .wait_until("window.plugwaryShell.updateWaiting === true && window.isOldPage === undefined")
        .await?;
    assert!(
        caches(&phone).await?.to_string().contains(version),
        "the old build was given up without consent"
    );

    phone.eval("window.isOldPage = true").await?;
    phone.eval("window.plugwaryApplyUpdate()").await?;
    phone
        .wait_until(
            "window.isOldPage === undefined && window.plugwaryShell?.updateWaiting === false",
        )
        .await?;
    phone.wait_until(RUNNING).await?;
    assert_eq!(
        caches(&phone).await?,
        serde_json::json!(["plugwary-build-newer"])
    );
    host.stop();
    phone.reload().await?;
    phone.wait_until(RUNNING).await
}

#[tokio::test]
async fn half_finished_deploy_leaves_the_old_build_in_place() -> Result<()> {
    let phone = Phone::fresh("half-deploy").await?;
    let (old, new) = (
        phone.storage().folder("old")?,
        phone.storage().folder("new")?,
    );
    copy_of_app(&old)?;
    copy_of_app(&new)?;
    let worker = fs::read_to_string(old.join("sw.js"))?;
    let version = version(&worker)?;
    fs::write(new.join("sw.js"), worker.replace(version, "newer"))?;
    // The list is of the new build, but this file is not yet.
    fs::write(new.join("robots.txt"), "of another build")?;

    let mut host = Server::start(Site::new(&old), 0)?;
    phone.goto(&host.origin()).await?;
    phone.wait_until(READY).await?;

    host = serve_instead(host, Site::new(&new))?;
    let outcome = "navigator.serviceWorker.getRegistration().then((known) => known.update()).then((known) =>
        new Promise((tell) => { const worker = known.installing; worker.onstatechange = () => tell(worker.state); }))";
    assert_eq!(phone.eval(outcome).await?, "redundant");
    assert_eq!(
        caches(&phone).await?,
        serde_json::json!([format!("plugwary-build-{version}")])
    );
    assert_eq!(
        phone.eval("window.plugwaryShell.updateWaiting").await?,
        false
    );

    host.stop();
    phone.reload().await?;
    phone.wait_until(RUNNING).await
}

/// The host goes on at the same address, with another build.
fn serve_instead(mut host: Server, site: Site) -> Result<Server> {
    let port = host.port();
    host.stop();
    Ok(Server::start(site, port)?)
}

fn version(worker: &str) -> Result<&str> {
    let (_, rest) = worker
        .split_once("const BUILD = '")
        .context("the worker has no version")?;
    rest.split('\'')
        .next()
        .context("the worker's version does not end")
}

async fn caches(phone: &Phone) -> Result<serde_json::Value> {
    phone.eval("caches.keys()").await
}
