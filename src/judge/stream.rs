//! Judges a stream of examinations on every core and answers in their order.
//!
//! One thread reads, one for each core judges, and whoever asks writes. They need two bounded queues and nothing else, so they are
//! plain threads with the standard library's channels. None is waited for when the answers are no longer wanted: the one that
//! reads may be waiting for input that never comes.

use std::io::{self, Read};
use std::num::NonZero;
use std::sync::mpsc::{Receiver, SyncSender, sync_channel};
use std::sync::{Arc, Mutex, PoisonError};
use std::thread::{self, JoinHandle};

use super::answers::{Answers, Unread};
use super::texts::{Text, Texts};

/// How many batches for each core are read ahead of the answer that is written next.
const AHEAD: usize = 4;

/// A batch of more bytes than this is judged where it was read, so that no two of them are in memory at once.
const LARGE: usize = 1024 * 1024;

/// A batch to judge, and where its answers go.
struct Job {
    texts: Vec<Text>,
    reply: SyncSender<Answers>,
}

/// Where the answers to a batch will be, or why there are no more batches.
type Promise = io::Result<Receiver<Answers>>;

/// The answers to all examinations of a stream, in their order, a batch at a time.
pub struct Stream {
    promises: Receiver<Promise>,
    reader: Option<JoinHandle<()>>,
}

impl Stream {
    /// Begins to read and judge the stream that is opened with this.
    ///
    /// # Errors
    ///
    /// When there are no threads to be had.
    pub fn of<R: Read>(open: impl FnOnce() -> R + Send + 'static, unread: Unread) -> io::Result<Self> {
        let cores = thread::available_parallelism().map_or(1, NonZero::get);
        let (hand_out, jobs) = sync_channel(AHEAD * cores);
        let jobs = Arc::new(Mutex::new(jobs));
        for _ in 0..cores {
            let jobs = Arc::clone(&jobs);
            thread::Builder::new().spawn(move || work(&jobs, unread))?;
        }
        let (promise, promises) = sync_channel(AHEAD * cores);
        let reader = thread::Builder::new().spawn(move || {
            if let Err(error) = read(Texts::of(open()), unread, &hand_out, &promise) {
                // Nobody is told where nobody listens any more.
                let _ = promise.send(Err(error));
            }
        })?;
        Ok(Self { promises, reader: Some(reader) })
    }
}

impl Iterator for Stream {
    type Item = io::Result<Answers>;

    fn next(&mut self) -> Option<Self::Item> {
        let broken_off = || io::Error::other("judging broke off");
        match self.promises.recv() {
            Ok(Ok(answers)) => Some(answers.recv().ok().ok_or_else(broken_off)),
            Ok(Err(error)) => Some(Err(error)),
            // The end, unless the thread that reads came to grief.
            Err(_) => self.reader.take()?.join().is_err().then(|| Err(broken_off())),
        }
    }
}

/// Hands out what is read, until there is no more of it or nobody wants the answers.
fn read<R: Read>(
    mut texts: Texts<R>,
    unread: Unread,
    hand_out: &SyncSender<Job>,
    promise: &SyncSender<Promise>,
) -> io::Result<()> {
    loop {
        let batch = texts.batch()?;
        let (reply, answers) = sync_channel(1);
        if batch.is_empty() || promise.send(Ok(answers)).is_err() {
            return Ok(());
        }
        let size: usize = batch.iter().map(|text| text.bytes.len()).sum();
        let job = Job { texts: batch, reply };
        if size > LARGE {
            job.answer(unread);
        } else if hand_out.send(job).is_err() {
            return Ok(());
        }
    }
}

fn work(jobs: &Mutex<Receiver<Job>>, unread: Unread) {
    while let Some(job) = next(jobs) {
        job.answer(unread);
    }
}

/// The next job; the others wait for theirs meanwhile, and not while it is done.
fn next(jobs: &Mutex<Receiver<Job>>) -> Option<Job> {
    jobs.lock().unwrap_or_else(PoisonError::into_inner).recv().ok()
}

impl Job {
    fn answer(self, unread: Unread) {
        let mut answers = Answers::new(unread);
        for text in self.texts {
            answers.add_line(text);
        }
        // Nobody is answered where nobody listens any more.
        let _ = self.reply.send(answers);
    }
}
