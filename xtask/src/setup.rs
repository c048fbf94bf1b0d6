//! Sees to it that what a command needs is on this machine, each piece at most once.

use std::{collections::BTreeMap, process::ExitCode};

use crate::{
    Trouble,
    browser::{self, Browser},
    debian::Debian,
    python,
    shell::Shell,
    spark, toolchain, tools,
};

/// Something a command may need.
#[derive(Clone, Copy, Debug, Eq, Ord, PartialEq, PartialOrd)]
pub enum Piece {
    /// A toolchain that can compile for the browser.
    Toolchain,
    /// Programs of others that read PDFs and square codes.
    PaperReaders,
    /// The compressor whose sizes the budget is about.
    Brotli,
    /// A browser with its driver.
    Browser,
    /// Python with the libraries that are asked for a second opinion.
    Python,
    /// Spark with the Java it runs on.
    Spark,
    /// The tool that puts the built files together.
    Trunk,
    /// The bindings between wasm and the browser, and the test runner.
    WasmBindgen,
    /// The optimiser.
    WasmOpt,
}

/// All pieces, in the order in which they are best prepared.
const PIECES: [Piece; 9] = [
    Piece::Toolchain,
    Piece::PaperReaders,
    Piece::Brotli,
    Piece::Browser,
    Piece::Python,
    Piece::Spark,
    Piece::Trunk,
    Piece::WasmBindgen,
    Piece::WasmOpt,
];

/// The machine as far as it has been prepared.
pub struct Setup {
    shell: Shell,
    debian: Debian,
    browser: Option<Browser>,
    done: BTreeMap<Piece, Result<(), Trouble>>,
}

impl Setup {
    /// Nothing is prepared yet.
    pub fn new(shell: Shell) -> Self {
        Self { shell, debian: Debian::default(), browser: None, done: BTreeMap::new() }
    }

    /// Runs programs with the pieces prepared so far.
    pub fn shell(&self) -> &Shell {
        &self.shell
    }

    /// The browser, once it is prepared.
    pub fn browser(&self) -> Option<&Browser> {
        self.browser.as_ref()
    }

    /// Prepares the pieces. One that cannot be had keeps none of the others back, and is not tried again.
    ///
    /// # Errors
    /// The reason why the first of the pieces cannot be had.
    pub fn prepare(&mut self, pieces: &[Piece]) -> Result<(), Trouble> {
        let mut whole = Ok(());
        for piece in PIECES.into_iter().filter(|piece| pieces.contains(piece)) {
            let outcome = match self.done.get(&piece) {
                Some(outcome) => outcome.clone(),
                None => self.prepare_one(piece),
            };
            self.done.insert(piece, outcome.clone());
            whole = whole.and(outcome);
        }
        tools::sweep(&self.shell)?;
        whole
    }

    fn prepare_one(&mut self, piece: Piece) -> Result<(), Trouble> {
        match piece {
            Piece::Toolchain => {
                let toolchain = toolchain::prepare(&self.shell, &self.debian)?;
                self.shell.use_toolchain(toolchain);
                Ok(())
            }
            Piece::PaperReaders => self.programs(&["pdftotext", "zbarimg"], &["poppler-utils", "zbar-tools"]),
            Piece::Brotli => self.programs(&["brotli"], &["brotli"]),
            Piece::Browser => {
                self.browser = Some(browser::prepare(&self.shell, &self.debian)?);
                Ok(())
            }
            Piece::Python => python::prepare(&self.shell),
            Piece::Spark => spark::prepare(&self.shell, &self.debian),
            Piece::Trunk => tools::trunk(&self.shell),
            Piece::WasmBindgen => tools::wasm_bindgen(&self.shell),
            Piece::WasmOpt => tools::wasm_opt(&self.shell),
        }
    }

    /// Sees to it that programs are on the search path, by Debian packages where they are not.
    fn programs(&self, programs: &[&str], packages: &[&str]) -> Result<(), Trouble> {
        if programs.iter().all(|program| self.shell.find(program).is_some()) {
            return Ok(());
        }
        self.debian.install(&self.shell, packages).map_err(|trouble| format!("no {} ({trouble})", programs.join(", ")))
    }

    /// Prepares all there is.
    ///
    /// # Errors
    /// The reason why the first of the pieces cannot be had.
    pub fn everything(mut self) -> Result<ExitCode, Trouble> {
        self.prepare(&PIECES).map(|()| ExitCode::SUCCESS)
    }
}
