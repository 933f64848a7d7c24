//! Programs that are measured beside the engine: each is told how often to do
//! its work and answers with the nanoseconds that it took, so that starting it
//! and talking to it cost nothing.

use anyhow::{Context, Result, ensure};
use std::env;
use std::io::{BufRead, BufReader, Write};
use std::path::{Path, PathBuf};
use std::process::{Child, ChildStdin, ChildStdout, Command, Stdio};
use std::time::Duration;

/// The Python that has the rivals' packages.
pub const PYTHON: &str = "GRAMWRIGHT_RIVALS_PYTHON";

/// A program that waits for work.
#[derive(Debug)]
pub struct Rival {
    child: Child,
    input: ChildStdin,
    output: BufReader<ChildStdout>,
    answer: String,
}

impl Rival {
    /// A script of `rivals`, run by Python on the work in `folder`.
    ///
    /// # Errors
    /// When it cannot be started or does not get ready.
    pub fn python(script: &str, folder: &Path) -> Result<Self> {
        let python = env::var_os(PYTHON).with_context(|| {
            format!("{PYTHON} names no Python with the rivals' packages: run cargo xtask bench")
        })?;
        Self::start(Command::new(python).arg(rivals().join(script)).arg(folder))
    }

    /// A script of `rivals`, run by Node.
    ///
    /// # Errors
    /// When it cannot be started or does not get ready.
    pub fn node(script: &str, folder: &Path) -> Result<Self> {
        Self::start(Command::new("node").arg(rivals().join(script)).arg(folder))
    }

    fn start(command: &mut Command) -> Result<Self> {
        let mut child = command
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .spawn()
            .with_context(|| format!("cannot start {command:?}"))?;
        let input = child.stdin.take().context("it was piped")?;
        let output = BufReader::new(child.stdout.take().context("it was piped")?);
        let mut rival = Self {
            child,
            input,
            output,
            answer: String::new(),
        };
        let ready = rival.line()?;
        ensure!(ready.starts_with("ready"), "{command:?} says {ready:?}");
        rival.answer = ready["ready".len()..].trim().to_owned();
        Ok(rival)
    }

    fn line(&mut self) -> Result<String> {
        let mut line = String::new();
        self.output.read_line(&mut line)?;
        Ok(line.trim().to_owned())
    }

    /// What it said when it was ready: what its work came to.
    pub fn answer(&self) -> &str {
        &self.answer
    }

    /// Lets it do its work so many times.
    ///
    /// # Errors
    /// When it ends or says anything but a time.
    pub fn time(&mut self, times: u64) -> Result<Duration> {
        writeln!(self.input, "{times}")?;
        self.input.flush()?;
        let line = self.line()?;
        let nanoseconds = line.parse().with_context(|| format!("no time: {line:?}"))?;
        Ok(Duration::from_nanos(nanoseconds))
    }
}

impl Drop for Rival {
    fn drop(&mut self) {
        // It may have ended already; then there is nothing to end.
        drop(self.child.kill());
        drop(self.child.wait());
    }
}

fn rivals() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("rivals")
}
