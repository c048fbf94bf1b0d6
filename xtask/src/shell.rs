//! Runs programs in the repository, with an environment of our own making.

use std::{
    env,
    ffi::{OsStr, OsString},
    io,
    path::{Path, PathBuf},
    process::{Command, ExitStatus, Stdio},
};

use crate::Trouble;

/// The folder for tools that belong to this repository alone, below its root.
pub const TOOLS: &str = ".tools";

/// Variables that `cargo run` and rustup set for us and that would mislead the programs we start:
/// with them a second compiler would be mixed into a build, or a build script run again.
const LEAKS: [&str; 7] = [
    "CARGO",
    "CARGO_MANIFEST_DIR",
    "CARGO_MANIFEST_PATH",
    "RUSTC",
    "RUSTC_WORKSPACE_WRAPPER",
    "RUSTDOC",
    "RUSTUP_TOOLCHAIN",
];

/// Where and how programs are run.
pub struct Shell {
    root: PathBuf,
    path: OsString,
    toolchain: Option<&'static str>,
}

impl Shell {
    /// A shell in the root of the repository, with its own tools first on the search path.
    ///
    /// # Errors
    /// When the search path cannot be extended by our folder.
    pub fn at_root() -> Result<Self, Trouble> {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).parent().unwrap_or(Path::new(".")).to_owned();
        let ours = [root.join(TOOLS).join("bin"), root.join(TOOLS).join("node_modules/.bin")];
        let theirs = env::var_os("PATH").unwrap_or_default();
        let path = env::join_paths(ours.into_iter().chain(env::split_paths(&theirs)))
            .map_err(|trouble| format!("cannot put {TOOLS} on the search path: {trouble}"))?;
        Ok(Self { root, path, toolchain: None })
    }

    /// The root of the repository.
    pub fn root(&self) -> &Path {
        &self.root
    }

    /// The folder for tools that belong to this repository alone.
    pub fn tools(&self) -> PathBuf {
        self.root.join(TOOLS)
    }

    /// From now on every cargo and rustc is that of the given rustup toolchain, so that all
    /// commands share what they built.
    pub fn use_toolchain(&mut self, toolchain: Option<&'static str>) {
        self.toolchain = toolchain;
    }

    /// A program, ready to be given arguments.
    pub fn program(&self, name: impl AsRef<OsStr>) -> Command {
        let mut command = Command::new(name);
        command.current_dir(&self.root).env("PATH", &self.path);
        for name in env::vars_os().map(|(name, _)| name) {
            let text = name.to_string_lossy();
            if LEAKS.contains(&&*text) || text.starts_with("CARGO_PKG_") {
                command.env_remove(&name);
            }
        }
        if let Some(toolchain) = self.toolchain {
            command.env("RUSTUP_TOOLCHAIN", toolchain);
        }
        command
    }

    /// Where a program is found on the search path.
    pub fn find(&self, name: &str) -> Option<PathBuf> {
        let file = format!("{name}{}", env::consts::EXE_SUFFIX);
        env::split_paths(&self.path).map(|folder| folder.join(&file)).find(|path| path.is_file())
    }
}

/// What a program printed, without the white space around it; nothing if it failed or is not there.
pub fn answer(command: &mut Command) -> Option<String> {
    let output = command.stdin(Stdio::null()).stderr(Stdio::null()).output().ok()?;
    output.status.success().then(|| String::from_utf8_lossy(&output.stdout).trim().to_owned())
}

/// Runs two programs, the second with what the first prints as its input.
///
/// # Errors
/// When either cannot be started or reports failure.
pub fn pipe(from: &mut Command, into: &mut Command) -> Result<(), Trouble> {
    let [first, second] = [&*from, &*into].map(name);
    let cannot = |name: &str, trouble: io::Error| format!("cannot run {name}: {trouble}");
    let mut writing =
        from.stdin(Stdio::null()).stdout(Stdio::piped()).spawn().map_err(|trouble| cannot(&first, trouble))?;
    let printed = writing.stdout.take().map_or_else(Stdio::null, Stdio::from);
    let read = into.stdin(printed).status();
    // The reader's end of the pipe is closed before the writer is waited for: one that has more to say must not wait for ever.
    into.stdin(Stdio::null());
    let written = writing.wait().map_err(|trouble| cannot(&first, trouble))?;
    succeeded(&second, read.map_err(|trouble| cannot(&second, trouble))?)?;
    succeeded(&first, written)
}

/// Runs a program to its end, with its output on our terminal.
///
/// # Errors
/// When the program cannot be started or reports failure.
pub fn run(command: &mut Command) -> Result<(), Trouble> {
    let name = name(command);
    let status = command.stdin(Stdio::null()).status().map_err(|trouble| format!("cannot run {name}: {trouble}"))?;
    succeeded(&name, status)
}

fn name(command: &Command) -> String {
    command.get_program().to_string_lossy().into_owned()
}

fn succeeded(name: &str, status: ExitStatus) -> Result<(), Trouble> {
    if status.success() { Ok(()) } else { Err(format!("{name}: {status}")) }
}

#[cfg(all(test, unix))]
mod tests {
    use super::*;

    fn say(text: &str) -> Command {
        let mut command = Command::new("sh");
        command.args(["-c", text]);
        command
    }

    #[test]
    fn either_end_of_a_pipe_can_fail() {
        assert_eq!(pipe(&mut say("echo word"), &mut say("read word && test $word = word")), Ok(()));
        assert!(pipe(&mut say("echo word; exit 3"), &mut say("cat >&2")).is_err_and(|trouble| trouble.contains('3')));
        assert!(pipe(&mut say("echo word"), &mut say("exit 4")).is_err_and(|trouble| trouble.contains('4')));
    }

    #[test]
    fn a_writer_whose_reader_is_gone_ends_too() {
        assert!(pipe(&mut say("while echo word; do :; done"), &mut say("exit 0")).is_err());
    }
}
