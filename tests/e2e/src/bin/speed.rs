//! How long a browser takes to judge a whole examination, with its processor slowed down to a quarter: printed, never judged.
//!
//! The program asked is the press, in a page of its own; the app is built of the same engine for the same size. The aim is 5 ms.

#![expect(clippy::print_stdout, reason = "what it prints is for the person at the terminal")]

use std::fs;
use std::path::Path;

use anyhow::{Context as _, Result};
use e2e::{Phone, host};
use serde_json::json;

/// The largest sound lead, and the smallest one; each is judged anew so many times.
const CASES: [&str; 2] = ["sound-lead-live", "sound-lead-eyes"];
const TIMES: u32 = 200;
const SLOWED_DOWN: u32 = 4;

/// Loads the press into the page itself: only there a browser can be slowed down.
const LOAD: &str = "new Promise((done, failed) => {
    const script = document.createElement('script');
    script.src = '/press.js';
    script.onload = () => wasm_bindgen({ module_or_path: '/press_bg.wasm' }).then(() => done(true), failed);
    script.onerror = failed;
    document.head.append(script);
})";

#[tokio::main(flavor = "current_thread")]
async fn main() -> Result<()> {
    let host = host()?;
    let phone = Phone::fresh("speed").await?;
    phone.goto(&host.origin()).await?;
    phone.eval(LOAD).await?;
    for slowed_down in [1, SLOWED_DOWN] {
        phone.slow_down(slowed_down).await?;
        for case in CASES {
            let file = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("../examinations/cases/{case}.json"));
            let record = json!(fs::read_to_string(file)?);
            // Once for nothing: the browser compiles what it runs.
            let judge = |times: u32| {
                format!(
                    "(() => {{ wasm_bindgen.judge({record}, 20); const start = performance.now(); \
                     wasm_bindgen.judge({record}, {times}); return performance.now() - start; }})()"
                )
            };
            let whole = phone.eval(&judge(TIMES)).await?.as_f64().context("no time")?;
            let each = whole / f64::from(TIMES);
            println!("{case}, processor slowed down {slowed_down} times: {each:.2} ms to judge");
        }
    }
    Ok(())
}
