//! The browser's processes: how much memory its tabs took, and their end the way a phone makes it when it needs the memory, at once and
//! without a word.

use std::{
    collections::BTreeSet,
    fs,
    path::Path,
    thread,
    time::{Duration, Instant},
};

use anyhow::{Result, ensure};
use rustix::process::{Pid, Signal, kill_process};

const PATIENCE: Duration = Duration::from_secs(10);

/// Kills every process of the browser that works with this profile, and waits until all are gone.
///
/// # Errors
/// When some process does not go away.
pub fn kill_browser(profile: &Path) -> Result<()> {
    let start = Instant::now();
    loop {
        let living = processes_with(profile);
        if living.is_empty() {
            return Ok(());
        }
        for process in living {
            // It may have ended in the meantime, which is what is wanted.
            let _ = kill_process(process, Signal::KILL);
        }
        ensure!(start.elapsed() < PATIENCE, "the browser with {} cannot be killed", profile.display());
        thread::sleep(Duration::from_millis(10));
    }
}

/// The most memory, in bytes, that any one tab of the browser with this profile has taken so far.
pub fn largest_tab(profile: &Path) -> Option<u64> {
    let peak = |process: Pid| {
        let folder = Path::new("/proc").join(process.as_raw_nonzero().to_string());
        let words = fs::read_to_string(folder.join("cmdline")).ok()?;
        let state = fs::read_to_string(folder.join("status")).ok()?;
        let peak = state.lines().find_map(|line| line.strip_prefix("VmHWM:"))?;
        let kibibytes: u64 = peak.trim().strip_suffix(" kB")?.parse().ok()?;
        words.contains("--type=renderer").then_some(1024 * kibibytes)
    };
    processes_with(profile).into_iter().filter_map(peak).max()
}

/// The processes that were given this profile on their command line, and all that descend from them.
fn processes_with(profile: &Path) -> Vec<Pid> {
    let profile = profile.to_string_lossy().into_owned();
    let all: Vec<Process> = fs::read_dir("/proc")
        .map(|entries| entries.flatten().filter_map(|entry| Process::read(&entry.path())).collect())
        .unwrap_or_default();
    let mut wanted: BTreeSet<i32> =
        all.iter().filter(|process| process.words.contains(&profile)).map(|process| process.id).collect();
    loop {
        let children: Vec<i32> = all
            .iter()
            .filter(|process| wanted.contains(&process.parent) && !wanted.contains(&process.id))
            .map(|process| process.id)
            .collect();
        if children.is_empty() {
            return wanted.into_iter().filter_map(Pid::from_raw).collect();
        }
        wanted.extend(children);
    }
}

struct Process {
    id: i32,
    parent: i32,
    words: String,
}

impl Process {
    fn read(folder: &Path) -> Option<Self> {
        let id = folder.file_name()?.to_str()?.parse().ok()?;
        // "id (name) state parent ...", where the name may contain anything.
        let state = fs::read_to_string(folder.join("stat")).ok()?;
        let (_, after_name) = state.rsplit_once(") ")?;
        let parent = after_name.split(' ').nth(1)?.parse().ok()?;
        let words = fs::read_to_string(folder.join("cmdline")).ok()?;
        Some(Self { id, parent, words })
    }
}
