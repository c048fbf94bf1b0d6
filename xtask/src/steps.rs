//! The steps of `cargo verify`: what each runs and needs.

use std::{cell::OnceCell, path::PathBuf, process::Command};

use crate::{
    Trouble, budget, python, release,
    setup::{Piece, Setup},
    shell::{Shell, pipe, run},
};

/// One kind of test.
pub struct Step {
    /// What it is called on the command line.
    pub name: &'static str,
    /// What it is about, for the list.
    pub about: &'static str,
    /// The pieces without which it is left out, beside the toolchain.
    pub needs: &'static [Piece],
    /// Runs it.
    pub run: fn(&Bench) -> Result<(), Trouble>,
}

const ENGINE: [&str; 3] = ["--no-default-features", "--features", "schema"];
const APP: [&str; 2] = ["--target", "wasm32-unknown-unknown"];
const DENY: [&str; 3] = ["--", "-D", "warnings"];

/// All steps, the quick ones first.
pub const STEPS: [Step; 16] = [
    Step { name: "lock", about: "the lock file is up to date", needs: &[], run: lock },
    Step { name: "fmt", about: "the code is laid out as rustfmt does it", needs: &[], run: fmt },
    Step { name: "lint-engine", about: "clippy on the engine and its tests", needs: &[], run: lint_engine },
    Step { name: "test-engine", about: "tests and examples of the engine", needs: &[], run: test_engine },
    Step {
        name: "second-opinion",
        about: "the engine's arithmetic agrees with other people's libraries",
        needs: &[Piece::Python],
        run: second_opinion,
    },
    Step {
        name: "paper",
        about: "programs of others read what is made for printing",
        needs: &[Piece::PaperReaders],
        run: test_paper,
    },
    Step {
        name: "spark",
        about: "judging many examinations on a cluster gives the answers that one command gives",
        needs: &[Piece::Spark],
        run: spark,
    },
    Step { name: "doc", about: "the engine's documentation has no gaps or dead links", needs: &[], run: doc },
    Step {
        name: "lint-tools",
        about: "clippy on these commands and the end-to-end stories",
        needs: &[],
        run: lint_tools,
    },
    Step { name: "test-tools", about: "tests of these commands", needs: &[], run: test_tools },
    Step {
        name: "lint-app",
        about: "clippy on the app, the study and the press, as compiled for the browser",
        needs: &[Piece::Toolchain],
        run: lint_app,
    },
    Step {
        name: "browser",
        about: "tests of the store inside a browser",
        needs: &[Piece::Toolchain, Piece::Browser, Piece::WasmBindgen],
        run: test_browser,
    },
    Step { name: "release", about: "the app builds for release", needs: &release::PIECES, run: build },
    Step {
        name: "size",
        about: "the first load and what is loaded later are within their budgets",
        needs: &[Piece::Toolchain, Piece::Brotli, Piece::Trunk, Piece::WasmBindgen, Piece::WasmOpt],
        run: size,
    },
    Step {
        name: "e2e",
        about: "stories with the built app on a phone-sized screen",
        needs: &[
            Piece::PaperReaders,
            Piece::Toolchain,
            Piece::Browser,
            Piece::Trunk,
            Piece::WasmBindgen,
            Piece::WasmOpt,
        ],
        run: stories,
    },
    Step {
        name: "speed",
        about: "how long a slowed-down browser takes to judge a whole examination; printed, not judged",
        needs: &[Piece::Toolchain, Piece::Browser, Piece::Trunk, Piece::WasmBindgen, Piece::WasmOpt],
        run: speed,
    },
];

/// The prepared machine, and the release build that some steps share.
pub struct Bench<'a> {
    setup: &'a Setup,
    site: OnceCell<Result<PathBuf, Trouble>>,
}

impl<'a> Bench<'a> {
    /// Nothing is built yet.
    pub fn new(setup: &'a Setup) -> Self {
        Self { setup, site: OnceCell::new() }
    }

    fn shell(&self) -> &Shell {
        self.setup.shell()
    }

    fn cargo(&self, words: &[&[&str]]) -> Command {
        let mut command = self.shell().program("cargo");
        command.args(words.concat());
        command
    }

    /// How to ask cargo for the tests that run inside a browser, if there are any.
    fn browser_tests(&self) -> &'static [&'static str] {
        let are_there = self.shell().root().join("tests/browser").exists();
        if are_there { &["--test", "browser"] } else { &[] }
    }

    /// The folder of the release build, made by the first step that asks for it.
    fn site(&self) -> Result<PathBuf, Trouble> {
        self.site.get_or_init(|| release::build(self.shell())).clone()
    }
}

fn lock(bench: &Bench) -> Result<(), Trouble> {
    run(&mut bench.cargo(&[&["fetch", "--locked"]]))
}

fn fmt(bench: &Bench) -> Result<(), Trouble> {
    run(&mut bench.cargo(&[&["fmt", "--all", "--check"]]))
}

fn lint_engine(bench: &Bench) -> Result<(), Trouble> {
    run(&mut bench.cargo(&[&["clippy", "--all-targets", "--features", "readers"], &ENGINE, &DENY]))
}

fn test_engine(bench: &Bench) -> Result<(), Trouble> {
    // The same generated cases each time, so that a red run can be repeated; a plain `cargo test` draws new ones.
    run(bench.cargo(&[&["test"], &ENGINE]).env("PROPTEST_RNG_SEED", "2026"))
}

fn second_opinion(bench: &Bench) -> Result<(), Trouble> {
    let mut answers = bench.cargo(&[&["run", "--quiet", "--example", "second-opinion"], &ENGINE]);
    pipe(&mut answers, python::python(bench.shell())?.arg("tests/second_opinion/compare.py"))
}

fn test_paper(bench: &Bench) -> Result<(), Trouble> {
    run(&mut bench.cargo(&[&["test", "--test", "paper", "--features", "readers"], &ENGINE]))
}

fn spark(bench: &Bench) -> Result<(), Trouble> {
    let python = python::python(bench.shell())?;
    // Cargo tells a runner where the program is.
    let runner = format!("target.'cfg(all())'.runner=['{}','tests/judge/spark.py']", python.get_program().display());
    let variables = python.get_envs().filter_map(|(name, value)| Some((name, value?)));
    run(bench.cargo(&[&["run", "--quiet", "--config", &runner], &ENGINE]).envs(variables))
}

fn doc(bench: &Bench) -> Result<(), Trouble> {
    run(bench.cargo(&[&["doc", "--no-deps"], &ENGINE]).env("RUSTDOCFLAGS", "-D warnings"))
}

fn lint_tools(bench: &Bench) -> Result<(), Trouble> {
    run(&mut bench.cargo(&[&["clippy", "--all-targets", "--package", "xtask", "--package", "e2e"], &DENY]))
}

fn test_tools(bench: &Bench) -> Result<(), Trouble> {
    run(&mut bench.cargo(&[&["test", "--package", "xtask"]]))
}

fn lint_app(bench: &Bench) -> Result<(), Trouble> {
    run(&mut bench.cargo(&[
        &["clippy", "--lib", "--bins", "--features", "press"],
        bench.browser_tests(),
        &APP,
        &DENY,
    ]))?;
    run(&mut bench.cargo(&[&["clippy", "--lib", "--bin", "plugwary", "--features", "first"], &APP, &DENY]))
}

fn test_browser(bench: &Bench) -> Result<(), Trouble> {
    let browser = bench.setup.browser().ok_or("no browser")?;
    let tests = bench.browser_tests();
    if tests.is_empty() {
        println!("there is no folder tests/browser");
        return Ok(());
    }
    run(bench
        .cargo(&[&["test"], tests, &APP])
        .env("CHROMEDRIVER", &browser.driver)
        // Seconds; the default of 20 is short for a busy machine.
        .env("WASM_BINDGEN_TEST_TIMEOUT", "120"))
}

fn build(bench: &Bench) -> Result<(), Trouble> {
    bench.site().map(drop)
}

fn size(bench: &Bench) -> Result<(), Trouble> {
    let site = bench.site()?;
    release::compress(bench.shell(), &site)?;
    budget::check(&site)
}

fn stories(bench: &Bench) -> Result<(), Trouble> {
    run(&mut with_app(bench, &["test", "--package", "e2e"])?)
}

fn speed(bench: &Bench) -> Result<(), Trouble> {
    run(&mut with_app(bench, &["run", "--quiet", "--package", "e2e", "--bin", "speed"])?)
}

/// Cargo, told where the built app and the browser are.
fn with_app(bench: &Bench, words: &[&str]) -> Result<Command, Trouble> {
    let browser = bench.setup.browser().ok_or("no browser")?;
    let mut command = bench.cargo(&[words]);
    command
        .env("PLUGWARY_DIST", bench.site()?)
        .env("PLUGWARY_CHROMIUM", &browser.program)
        .env("CHROMEDRIVER", &browser.driver);
    Ok(command)
}
