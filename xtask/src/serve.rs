//! `cargo xtask serve`: builds the page and shows it.

use crate::page::{self, Page};
use crate::tools;
use anyhow::{Context, Result};
use std::io::ErrorKind;
use std::path::Path;
use std::time::Instant;
use xtask::server::Server;

/// The port that is tried first.
pub const USUAL_PORT: u16 = 8080;

/// How many ports after a taken one are tried.
const OTHER_PORTS: u16 = 20;

/// Builds the page and serves it until stopped.
///
/// # Errors
/// When a tool cannot be installed, the page does not build, or no port is free.
pub fn run(port: u16) -> Result<()> {
    let started = Instant::now();
    let compiler = tools::set_up(&[])?;
    println!(
        "Building the page: usually {}",
        crate::console::words(Page::Draft.usual())
    );
    let folder = page::build(Page::Draft, compiler)?;
    let server = start(&folder, port)?;
    println!(
        "Ready after {}. Open {}\nCtrl+C stops it; run the command again to see a change.",
        crate::console::words(started.elapsed()),
        server.url()
    );
    server.wait();
    Ok(())
}

/// Starts on the first free port from `port` on.
fn start(folder: &Path, port: u16) -> Result<Server> {
    for candidate in port..=port.saturating_add(OTHER_PORTS) {
        match Server::start(folder, candidate) {
            Err(error) if error.kind() == ErrorKind::AddrInUse => {
                println!("Port {candidate} is taken, trying the next one.");
            }
            outcome => return outcome.with_context(|| format!("cannot serve on port {candidate}")),
        }
    }
    anyhow::bail!(
        "ports {port} to {} are all taken: choose another with --port",
        port + OTHER_PORTS
    )
}
