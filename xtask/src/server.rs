//! A static file server for the built page.
//!
//! `cargo xtask serve` shows the page with it, and the browser journeys cut the network by stopping
//! it. Each answer closes its connection, so that nothing stays open behind [`Server::stop`].

use std::fs;
use std::io::{self, BufRead, BufReader, Write};
use std::net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream};
use std::path::{Component, Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread::{self, JoinHandle};
use std::time::Duration;

/// How long a connected browser may take to send its request or to accept the answer.
const PATIENCE: Duration = Duration::from_secs(10);

/// Sent with every answer: files are checked again at every load, types are not guessed, and no
/// other page may frame this one (a policy that only a header can state).
const HEADERS: &str = "Cache-Control: no-cache\r\n\
    Content-Security-Policy: frame-ancestors 'none'\r\n\
    X-Content-Type-Options: nosniff\r\n\
    Connection: close\r\n";

/// The media type of a file, by its extension.
///
/// Browsers compile WebAssembly while it arrives only when it is called `application/wasm`.
#[must_use]
pub fn media_type(path: &Path) -> &'static str {
    match path.extension().and_then(|extension| extension.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("wasm") => "application/wasm",
        Some("webmanifest") => "application/manifest+json",
        Some("json") => "application/json",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("csv") => "text/csv; charset=utf-8",
        Some("txt") => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

/// A running server; it stops when dropped.
#[derive(Debug)]
pub struct Server {
    address: SocketAddr,
    stopping: Arc<AtomicBool>,
    listening: Option<JoinHandle<()>>,
}

impl Server {
    /// Serves `folder` on this machine only. Port 0 takes any free port.
    ///
    /// # Errors
    /// When the port is taken, or the folder cannot be read.
    pub fn start(folder: &Path, port: u16) -> io::Result<Self> {
        let folder = folder.canonicalize()?;
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, port))?;
        let address = listener.local_addr()?;
        let stopping = Arc::new(AtomicBool::new(false));
        let asked_to_stop = Arc::clone(&stopping);
        let listening = thread::spawn(move || {
            for connection in listener.incoming() {
                if asked_to_stop.load(Ordering::SeqCst) {
                    break;
                }
                let Ok(connection) = connection else { continue };
                let folder = folder.clone();
                // A browser that hangs up early is no concern of the other connections.
                thread::spawn(move || drop(answer(&connection, &folder)));
            }
        });
        Ok(Self {
            address,
            stopping,
            listening: Some(listening),
        })
    }

    /// The address to open, with a closing slash.
    #[must_use]
    pub fn url(&self) -> String {
        format!("http://localhost:{}/", self.address.port())
    }

    /// The port it listens on.
    #[must_use]
    pub fn port(&self) -> u16 {
        self.address.port()
    }

    /// Stops listening: from here on a browser cannot connect.
    pub fn stop(&mut self) {
        if let Some(listening) = self.listening.take() {
            self.stopping.store(true, Ordering::SeqCst);
            // The listening thread looks at the flag when a connection comes in.
            drop(TcpStream::connect(self.address));
            drop(listening.join());
        }
    }

    /// Waits for as long as the server runs.
    pub fn wait(mut self) {
        if let Some(listening) = self.listening.take() {
            drop(listening.join());
        }
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.stop();
    }
}

/// Reads one request and answers it.
fn answer(connection: &TcpStream, folder: &Path) -> io::Result<()> {
    connection.set_read_timeout(Some(PATIENCE))?;
    connection.set_write_timeout(Some(PATIENCE))?;
    let mut lines = BufReader::new(connection).lines();
    let request = lines.next().transpose()?.unwrap_or_default();
    for line in lines {
        if line?.is_empty() {
            break;
        }
    }

    let mut words = request.split(' ');
    let (method, target) = (words.next(), words.next().unwrap_or_default());
    if !matches!(method, Some("GET" | "HEAD")) {
        return send(
            connection,
            "405 Method Not Allowed",
            "text/plain",
            b"",
            true,
        );
    }
    let with_body = method == Some("GET");
    let found = file_for(folder, target).and_then(|path| Some((fs::read(&path).ok()?, path)));
    match found {
        Some((body, path)) => send(connection, "200 OK", media_type(&path), &body, with_body),
        None => send(
            connection,
            "404 Not Found",
            "text/plain",
            b"There is no such file.\n",
            with_body,
        ),
    }
}

fn send(
    mut connection: &TcpStream,
    status: &str,
    media_type: &str,
    body: &[u8],
    with_body: bool,
) -> io::Result<()> {
    let length = body.len();
    write!(
        connection,
        "HTTP/1.1 {status}\r\nContent-Type: {media_type}\r\nContent-Length: {length}\r\n{HEADERS}\r\n"
    )?;
    if with_body {
        connection.write_all(body)?;
    }
    connection.flush()
}

/// The file that a request's target names, if it stays inside the folder.
///
/// A folder stands for its `index.html`. The names of the built page need no percent-encoding, so
/// none is undone.
fn file_for(folder: &Path, target: &str) -> Option<PathBuf> {
    let path = target.split(['?', '#']).next()?.trim_start_matches('/');
    let inside = Path::new(path)
        .components()
        .all(|part| matches!(part, Component::Normal(_)));
    if !inside {
        return None;
    }
    let file = folder.join(path);
    Some(if file.is_dir() {
        file.join("index.html")
    } else {
        file
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::Read;

    fn get(server: &Server, target: &str) -> io::Result<String> {
        let mut connection = TcpStream::connect((Ipv4Addr::LOCALHOST, server.port()))?;
        write!(
            connection,
            "GET {target} HTTP/1.1\r\nHost: localhost\r\n\r\n"
        )?;
        let mut answer = String::new();
        connection.read_to_string(&mut answer)?;
        Ok(answer)
    }

    #[test]
    fn serves_its_own_files_only_and_stops() {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR"));
        let mut server = Server::start(folder, 0).expect("a free port");

        let found = get(&server, "/src/server.rs?x=1").expect("an answer");
        assert!(found.starts_with("HTTP/1.1 200 OK"), "{found}");
        assert!(found.contains("A static file server"), "{found}");
        for outside in ["/../Cargo.toml", "//etc/hostname/..", "/missing", "/src"] {
            let refused = get(&server, outside).expect("an answer");
            assert!(refused.starts_with("HTTP/1.1 404"), "{outside}: {refused}");
        }

        server.stop();
        assert!(get(&server, "/src/server.rs").is_err(), "still answers");
    }

    /// Media types as registered with IANA (RFC 9239 for JavaScript; the WebAssembly Web API asks
    /// for `application/wasm`; W3C Web Application Manifest for `application/manifest+json`).
    #[test]
    fn names_media_types_as_registered() {
        for (file, expected) in [
            ("a.js", "text/javascript; charset=utf-8"),
            ("a_bg.wasm", "application/wasm"),
            ("a.webmanifest", "application/manifest+json"),
            ("sr28.foods.bin", "application/octet-stream"),
        ] {
            assert_eq!(media_type(Path::new(file)), expected, "{file}");
        }
    }
}
