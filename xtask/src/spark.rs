//! Spark, which spreads work over a cluster, and the Java it runs on.

use std::env;

use crate::{Trouble, debian::Debian, python, shell::Shell};

/// Spark and all that it needs for what we ask of it.
const LIBRARIES: [&str; 2] = ["py4j==0.10.9.7", "pyspark==3.5.9"];

/// Finds Java, or installs Debian's where there is none, and installs Spark, after saying so.
///
/// # Errors
/// When one of them is neither there nor to be had.
pub fn prepare(shell: &Shell, debian: &Debian) -> Result<(), Trouble> {
    if env::var_os("JAVA_HOME").is_none() && shell.find("java").is_none() {
        let missing = |trouble| format!("no Java on the search path or in JAVA_HOME ({trouble})");
        debian.install(shell, &["default-jre-headless"]).map_err(missing)?;
    }
    // Spark is published in no other form than as sources, with everything compiled in them. A cache would keep it twice more.
    let options = ["--only-binary=py4j", "--no-cache-dir"];
    python::install(shell, &LIBRARIES, "320 MB and a minute or two", &options)
}
