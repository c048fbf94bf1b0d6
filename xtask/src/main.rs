//! The commands of this repository: `cargo serve`, `cargo verify` and `cargo xtask stamp`.

use std::process::ExitCode;

use xtask::{Trouble, serve, setup::Setup, shell::Shell, stamp, verify};

const USAGE: &str = "\
cargo serve [--port N]    build the app and serve it on this machine
cargo verify [NAME...]    run every test there is, or only the named steps
cargo verify --list       name the steps
cargo xtask setup         install what the two need, and no more
cargo xtask stamp         finish a build (Trunk calls it)";

fn main() -> ExitCode {
    let words: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = words.iter().map(String::as_str).collect();
    match run(&words) {
        Ok(code) => code,
        Err(trouble) => {
            eprintln!("{trouble}");
            ExitCode::FAILURE
        }
    }
}

fn run(words: &[&str]) -> Result<ExitCode, Trouble> {
    match words {
        ["serve", options @ ..] => serve::serve(&mut setup()?, port(options)?),
        ["verify", "--list"] => Ok(verify::list()),
        ["verify", names @ ..] => verify::verify(&mut setup()?, names),
        ["setup"] => setup()?.everything(),
        ["stamp"] => stamp::run_as_hook(),
        _ => Err(USAGE.to_owned()),
    }
}

fn setup() -> Result<Setup, Trouble> {
    Shell::at_root().map(Setup::new)
}

fn port(options: &[&str]) -> Result<u16, Trouble> {
    match options {
        [] => Ok(serve::PORT),
        ["--port", number] => {
            number.parse().map_err(|trouble| format!("port must be a number up to 65535, got {number:?}: {trouble}"))
        }
        _ => Err(USAGE.to_owned()),
    }
}
