//! Python and libraries for it, such as are asked for a second opinion, inside the repository's own folder.

use std::process::Command;

use crate::{
    Trouble,
    shell::{Shell, TOOLS, answer, run},
};

/// What is asked, and all that these need themselves.
const LIBRARIES: [&str; 9] = [
    "GTC==1.5.1",
    "cffi==2.1.1",
    "cryptography==50.0.2",
    "fluids==1.3.1",
    "ht==1.2.0",
    "numpy==2.4.6",
    "pycparser==3.12",
    "python-stdnum==2.2",
    "scipy==1.17.1",
];
/// Prints those of the libraries that are there, in the versions that are there.
const WHAT_IS_THERE: &str = "\
import sys
from importlib.metadata import version
print(*(f'{name}=={version(name)}' for name in (wish.split('==')[0] for wish in sys.argv[1:])))";

/// Installs the libraries, after saying so, unless they are there in these versions.
///
/// # Errors
/// When there is no Python or it cannot install them.
pub fn prepare(shell: &Shell) -> Result<(), Trouble> {
    // Nothing is compiled here.
    install(shell, &LIBRARIES, "55 MB", &["--only-binary=:all:"])
}

/// Installs libraries of which not all are there in these versions, after saying so with the size of what is downloaded.
///
/// # Errors
/// When there is no Python or it cannot install them.
pub fn install(shell: &Shell, libraries: &[&str], size: &str, options: &[&str]) -> Result<(), Trouble> {
    let there = answer(python(shell)?.args(["-c", WHAT_IS_THERE]).args(libraries));
    if there.as_deref() == Some(&libraries.join(" ")) {
        return Ok(());
    }
    eprintln!("installing Python libraries into {TOOLS} ({size}, once): {}", libraries.join(" "));
    // All that they need is named, so that nothing else comes along.
    run(python(shell)?
        .args(["-m", "pip", "install", "--quiet", "--upgrade", "--no-deps", "--target"])
        .arg(shell.tools().join("python"))
        .args(options)
        .args(libraries)
        // In a folder of its own nothing can be broken, whoever installs it.
        .env("PIP_ROOT_USER_ACTION", "ignore"))
    .map_err(|trouble| format!("no Python libraries ({trouble})"))
}

/// Python with the libraries, ready to be given arguments.
///
/// # Errors
/// When there is no Python.
pub fn python(shell: &Shell) -> Result<Command, Trouble> {
    let found = ["python3", "python"].into_iter().find_map(|name| shell.find(name));
    let mut command = shell.program(found.ok_or("no Python on the search path")?);
    command.env("PYTHONPATH", shell.tools().join("python")).env("PYTHONDONTWRITEBYTECODE", "1");
    Ok(command)
}
