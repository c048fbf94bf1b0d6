//! Debian packages: which are missing, and their installation.

use std::cell::Cell;

use crate::{
    Trouble,
    shell::{Shell, answer, run},
};

/// Debian's package manager on this machine, if there is one that we may use.
#[derive(Default)]
pub struct Debian {
    lists_are_fresh: Cell<bool>,
}

impl Debian {
    /// Installs those of the packages that are not there yet, after saying so.
    ///
    /// # Errors
    /// When this is no Debian machine, we are not its administrator, or the installation fails.
    pub fn install(&self, shell: &Shell, packages: &[&str]) -> Result<(), Trouble> {
        let missing = missing(shell, packages)?;
        if missing.is_empty() {
            return Ok(());
        }
        let wish = missing.join(" ");
        if answer(shell.program("id").arg("-u")).as_deref() != Some("0") {
            return Err(format!("not the administrator; run as root: apt-get install --no-install-recommends {wish}"));
        }
        eprintln!("installing Debian packages: {wish}");
        if !self.lists_are_fresh.get() {
            run(shell.program("apt-get").args(["-qq", "update"]))?;
            self.lists_are_fresh.set(true);
        }
        run(shell
            .program("apt-get")
            .args(["-qq", "install", "--yes", "--no-install-recommends"])
            .args(missing)
            .env("DEBIAN_FRONTEND", "noninteractive"))
    }
}

fn missing<'a>(shell: &Shell, packages: &[&'a str]) -> Result<Vec<&'a str>, Trouble> {
    // dpkg-query reports failure when it knows none of the packages, yet prints those it does know.
    let output = shell
        .program("dpkg-query")
        .args(["--show", "--showformat=${db:Status-Status} ${Package}\\n"])
        .args(packages)
        .output()
        .map_err(|trouble| format!("no Debian packages on this machine: dpkg-query: {trouble}"))?;
    let known = String::from_utf8_lossy(&output.stdout).into_owned();
    let is_there = |package: &str| known.lines().any(|line| line.strip_prefix("installed ") == Some(package));
    Ok(packages.iter().copied().filter(|package| !is_there(package)).collect())
}
