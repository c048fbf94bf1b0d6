//! The driver that steers a browser: a program of our own that never outlives us.

use std::{
    env,
    io::{BufRead as _, BufReader},
    process::{Child, Command, Stdio},
    thread,
};

use anyhow::{Context as _, Result};

/// A running chromedriver; dropping it ends it.
pub struct Driver {
    process: Child,
    address: String,
}

impl Driver {
    /// Starts a driver on a free port.
    ///
    /// # Errors
    /// When it does not start.
    pub fn start() -> Result<Self> {
        let program = env::var_os("CHROMEDRIVER").context("CHROMEDRIVER is not set; run `cargo verify e2e`")?;
        let mut process = Command::new(program)
            .arg("--port=0")
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .context("chromedriver does not start")?;
        let output = process.stdout.take().context("chromedriver has no output")?;
        let mut driver = Self { process, address: String::new() };
        let mut lines = BufReader::new(output).lines();
        let port = lines.by_ref().map_while(Result::ok).find_map(|line| port(&line).map(str::to_owned));
        driver.address = format!("http://localhost:{}", port.context("chromedriver names no port")?);
        // Goes on reading, as a driver whose output nobody reads would come to a halt.
        thread::spawn(move || lines.map_while(Result::ok).for_each(drop));
        Ok(driver)
    }

    /// Where it listens.
    pub fn address(&self) -> &str {
        &self.address
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        let _ = self.process.kill();
        let _ = self.process.wait();
    }
}

fn port(line: &str) -> Option<&str> {
    Some(line.split_once("started successfully on port ")?.1.trim_end_matches('.'))
}
