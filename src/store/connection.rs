//! An open `IndexedDB` database: how it is opened, how it gives way to a newer edition of the app, and what its errors mean.

use std::cell::{Cell, RefCell};
use std::future::poll_fn;
use std::rc::Rc;
use std::task::{Poll, Waker};

use indexed_db_futures::Build;
use indexed_db_futures::database::Database;
use indexed_db_futures::error::{Error, OpenDbError};
use indexed_db_futures::internals::SystemRepr;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use wasm_bindgen_futures::spawn_local;

use super::Fault;

/// The object store of records: JSON text by id.
pub(super) const EXAMINATIONS: &str = "examinations";
/// The object store of what is half typed: text by sample, question and target.
pub(super) const DRAFTS: &str = "drafts";
/// The object store of photos: media type and `ArrayBuffer` by SHA-256.
pub(super) const PHOTOS: &str = "photos";

/// How long the browser may take to open a database, in milliseconds: longer than any phone needs. Some have been stuck for ever.
const PATIENCE: i32 = 5000;

/// A database, and whether it is still open.
#[derive(Debug)]
pub(super) struct Connection {
    database: Database,
    is_closed: Rc<Cell<bool>>,
    _on_version_change: Closure<dyn FnMut()>,
    _on_close: Closure<dyn FnMut()>,
}

impl Connection {
    /// Opens a database, and makes its object stores where they are missing.
    pub(super) async fn open(name: &str, version: u32) -> Result<Self, Fault> {
        Ok(Self::watch(open(name, version).await?))
    }

    /// Closes the database when a newer edition wants to change it, and takes note when the browser closes it.
    fn watch(database: Database) -> Self {
        let is_closed = Rc::new(Cell::new(false));
        let on_version_change = {
            let (database, is_closed) = (database.clone(), is_closed.clone());
            Closure::<dyn FnMut()>::new(move || {
                is_closed.set(true);
                database.clone().close();
            })
        };
        let on_close = {
            let is_closed = is_closed.clone();
            Closure::<dyn FnMut()>::new(move || is_closed.set(true))
        };
        let listening = database.as_sys();
        listening.set_onversionchange(Some(on_version_change.as_ref().unchecked_ref()));
        listening.set_onclose(Some(on_close.as_ref().unchecked_ref()));
        Self { database, is_closed, _on_version_change: on_version_change, _on_close: on_close }
    }

    /// Whether it must be opened again.
    pub(super) fn is_closed(&self) -> bool {
        self.is_closed.get()
    }

    /// Has it opened again the next time.
    pub(super) fn give_up(&self) {
        self.is_closed.set(true);
    }

    /// The database.
    pub(super) fn database(&self) -> Database {
        self.database.clone()
    }
}

impl Drop for Connection {
    fn drop(&mut self) {
        let listening = self.database.as_sys();
        listening.set_onversionchange(None);
        listening.set_onclose(None);
        self.database.clone().close();
    }
}

/// What opening came to, told once.
#[derive(Debug, Default)]
struct Outcome {
    told: Cell<bool>,
    result: RefCell<Option<Result<Database, Fault>>>,
    waiting: RefCell<Option<Waker>>,
}

impl Outcome {
    fn tell(&self, result: Result<Database, Fault>) {
        if self.told.replace(true) {
            // Whoever waited was told that it is blocked: nobody would ever close this one.
            if let Ok(database) = result {
                database.close();
            }
            return;
        }
        self.result.replace(Some(result));
        if let Some(waker) = self.waiting.take() {
            waker.wake();
        }
    }

    async fn wait(&self) -> Result<Database, Fault> {
        poll_fn(|context| {
            self.waiting.replace(Some(context.waker().clone()));
            self.result.take().map_or(Poll::Pending, Poll::Ready)
        })
        .await
    }
}

/// Opens a database. A request that is blocked or gets no answer is given up but not dropped: once it can, the browser goes on with it,
/// and it must find the listener that makes the object stores.
async fn open(name: &str, version: u32) -> Result<Database, Fault> {
    let outcome = Rc::new(Outcome::default());
    let request = Database::open(name.to_owned())
        .with_version(version)
        .with_on_blocked({
            let outcome = outcome.clone();
            move |_| {
                outcome.tell(Err(Fault::Blocked));
                Ok(())
            }
        })
        .with_on_upgrade_needed(|_, database| make_object_stores(&database))
        .build()
        .map_err(fault_of_opening)?;
    spawn_local({
        let outcome = outcome.clone();
        async move { outcome.tell(request.await.map_err(fault_of_opening)) }
    });
    give_up_in_time(&outcome);
    outcome.wait().await
}

/// Tells that it is blocked, should the browser have said nothing until then.
fn give_up_in_time(outcome: &Rc<Outcome>) {
    let outcome = outcome.clone();
    let give_up = Closure::once_into_js(move || outcome.tell(Err(Fault::Blocked)));
    if let Some(window) = web_sys::window() {
        // Without a timer one waits for the browser alone.
        drop(window.set_timeout_with_callback_and_timeout_and_arguments_0(give_up.unchecked_ref(), PATIENCE));
    }
}

fn make_object_stores(database: &Database) -> Result<(), Error> {
    let known: Vec<String> = database.object_store_names().collect();
    for name in [DRAFTS, EXAMINATIONS, PHOTOS] {
        if !known.iter().any(|known| known == name) {
            database.create_object_store(name).build()?;
        }
    }
    Ok(())
}

fn fault_of_opening(error: OpenDbError) -> Fault {
    match error {
        // The crate says so of every exception that `open` throws; with our versions it is the one of forbidden storage.
        OpenDbError::VersionZero | OpenDbError::UnsupportedEnvironment | OpenDbError::NullFactory => Fault::Denied,
        OpenDbError::Base(Error::DomException(exception)) => {
            let exception = web_sys::DomException::from(exception);
            match exception.name().as_str() {
                // Firefox answers so where it forbids storage, the others so where the files cannot be opened.
                "InvalidStateError" => Fault::Denied,
                "UnknownError" => Fault::Damaged,
                _ => fault_of_exception(&exception),
            }
        }
        OpenDbError::Base(other) => Fault::Other(other.to_string()),
    }
}

/// Whether an error says that the connection has been cut, as phones do to a page that sleeps, often without a word to it.
pub(super) fn is_cut(error: &Error) -> bool {
    match error {
        Error::DomException(exception) => {
            let exception = web_sys::DomException::from(exception.clone());
            matches!(exception.name().as_str(), "InvalidStateError" | "UnknownError")
        }
        Error::Serialisation(_) | Error::MissingData(_) | Error::Unknown(_) => false,
    }
}

/// The fault that an exception of the browser's stands for.
pub(super) fn fault_of_exception(exception: &web_sys::DomException) -> Fault {
    match exception.name().as_str() {
        "QuotaExceededError" => Fault::Full,
        "SecurityError" | "NotAllowedError" => Fault::Denied,
        "VersionError" => Fault::Newer,
        "NotReadableError" => Fault::Damaged,
        name => Fault::Other(format!("{name}: {}", exception.message())),
    }
}
