//! A small web server for the built files, which can be stopped: then not even a connection
//! that the browser opened beforehand is answered.

use std::{
    collections::BTreeMap,
    io::{self, BufRead as _, BufReader, Write as _},
    net::{Ipv4Addr, Shutdown, SocketAddr, TcpListener, TcpStream},
    sync::{
        Arc, Mutex, PoisonError,
        atomic::{AtomicBool, Ordering},
    },
    thread::{self, JoinHandle},
    time::Duration,
};

use crate::site::{Answer, Site};

/// How long a connection may stay silent; browsers open some that they may never use.
const PATIENCE: Duration = Duration::from_secs(30);

/// A running server; dropping it stops it.
pub struct Server {
    address: SocketAddr,
    shared: Arc<Shared>,
    listening: Option<JoinHandle<()>>,
}

#[derive(Default)]
struct Shared {
    stopped: AtomicBool,
    connections: Mutex<BTreeMap<u64, TcpStream>>,
}

impl Server {
    /// Serves the site on a port of this machine; port 0 takes a free one.
    ///
    /// # Errors
    /// When the port cannot be had.
    pub fn start(site: Site, port: u16) -> io::Result<Self> {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, port))?;
        let address = listener.local_addr()?;
        let shared = Arc::new(Shared::default());
        let listening = thread::spawn({
            let shared = Arc::clone(&shared);
            move || listen(&listener, &site, &shared)
        });
        Ok(Self { address, shared, listening: Some(listening) })
    }

    /// The port it listens on.
    pub fn port(&self) -> u16 {
        self.address.port()
    }

    /// Its address, as a browser wants it, without a slash at the end.
    pub fn origin(&self) -> String {
        format!("http://localhost:{}", self.port())
    }

    /// Waits until it stops, which is for ever unless the program is ended.
    pub fn wait(mut self) {
        if let Some(listening) = self.listening.take() {
            // A thread that died stops the server just the same.
            let _ = listening.join();
        }
    }

    /// Stops it and cuts every connection.
    pub fn stop(&mut self) {
        let Some(listening) = self.listening.take() else {
            return;
        };
        self.shared.stopped.store(true, Ordering::SeqCst);
        // Wakes the listener up, so that it sees the flag.
        let _ = TcpStream::connect(self.address);
        let _ = listening.join();
        for connection in self.shared.connections.lock().unwrap_or_else(PoisonError::into_inner).values() {
            let _ = connection.shutdown(Shutdown::Both);
        }
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.stop();
    }
}

fn listen(listener: &TcpListener, site: &Site, shared: &Arc<Shared>) {
    for (number, connection) in (0..).zip(listener.incoming()) {
        if shared.stopped.load(Ordering::SeqCst) {
            return;
        }
        let Ok(connection) = connection else { continue };
        let Ok(handle) = connection.try_clone() else {
            continue;
        };
        shared.connections.lock().unwrap_or_else(PoisonError::into_inner).insert(number, handle);
        let (site, shared) = (site.clone(), Arc::clone(shared));
        thread::spawn(move || {
            // A browser that goes away in the middle of an answer is no trouble of ours.
            let _ = converse(&connection, &site);
            let _ = connection.shutdown(Shutdown::Both);
            shared.connections.lock().unwrap_or_else(PoisonError::into_inner).remove(&number);
        });
    }
}

/// Answers one request; the connection is then closed.
fn converse(mut connection: &TcpStream, site: &Site) -> io::Result<()> {
    connection.set_read_timeout(Some(PATIENCE))?;
    let mut lines = BufReader::new(connection).lines();
    let request = lines.next().transpose()?.unwrap_or_default();
    let mut encodings = String::new();
    for line in lines {
        let line = line?;
        if line.is_empty() {
            break;
        }
        if let Some((name, value)) = line.split_once(':')
            && name.eq_ignore_ascii_case("accept-encoding")
        {
            value.clone_into(&mut encodings);
        }
    }
    let mut words = request.split(' ');
    let (method, address) = (words.next(), words.next());
    let answer = match (method, address) {
        (Some("GET" | "HEAD"), Some(address)) => site.answer(address, &encodings),
        (Some(""), _) => return Ok(()),
        _ => Answer { status: "405 Method Not Allowed", headers: Vec::new(), body: Vec::new() },
    };
    let mut head = format!(
        "HTTP/1.1 {}\r\ncontent-length: {}\r\nconnection: close\r\nx-content-type-options: nosniff\r\n",
        answer.status,
        answer.body.len()
    );
    for (name, value) in answer.headers {
        head.extend([name, ": ", value, "\r\n"]);
    }
    connection.write_all(format!("{head}\r\n").as_bytes())?;
    if method == Some("HEAD") {
        return Ok(());
    }
    connection.write_all(&answer.body)
}

#[cfg(test)]
mod tests {
    use std::io::Read as _;

    use super::*;

    #[test]
    fn connection_opened_before_the_stop_gets_no_answer() {
        let mut server = Server::start(Site::new("."), 0).unwrap();
        let mut early = TcpStream::connect(server.address).unwrap();
        // One whole exchange makes sure that the earlier connection was taken, too.
        let mut other = TcpStream::connect(server.address).unwrap();
        other.write_all(b"GET /Cargo.toml HTTP/1.1\r\n\r\n").unwrap();
        let mut answer = String::new();
        other.read_to_string(&mut answer).unwrap();
        assert!(answer.starts_with("HTTP/1.1 200 OK\r\n"), "{answer}");

        server.stop();
        let _ = early.write_all(b"GET /Cargo.toml HTTP/1.1\r\n\r\n");
        let mut answer = Vec::new();
        let _ = early.read_to_end(&mut answer);
        assert_eq!(answer, b"");
        // A later connection is not tried: the port is free by then, and another test's server may have taken it.
    }
}
