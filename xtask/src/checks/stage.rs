//! The stages of the checks.

use super::counts::Counts;
use crate::page::{self, Page};
use crate::tools::wasm_target::{TRIPLE, WasmCompiler};
use crate::tools::{self, pins};
use crate::{console, project};
use anyhow::{Context, Result, bail};
use std::fs;
use std::io::{BufRead, BufReader};
use std::path::PathBuf;
use std::process::{Command, Stdio};
use std::time::Duration;

/// The profile in which the page's libraries are compiled for the journeys anyway.
const DRAFT: &str = Page::Draft.profile();

/// One stage; cheap ones come first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stage {
    /// The formatting of the source.
    Format,
    /// The linter, on every target of every member.
    Lint,
    /// Tests that run natively.
    Native,
    /// The page's tests, as WebAssembly in Node.
    Wasm,
    /// Journeys through the built page in a browser.
    Journeys,
}

impl Stage {
    /// In the order they run.
    pub const ALL: [Self; 5] = [
        Self::Format,
        Self::Lint,
        Self::Native,
        Self::Wasm,
        Self::Journeys,
    ];

    /// Its name on the command line.
    #[must_use]
    pub fn name(self) -> &'static str {
        match self {
            Self::Format => "format",
            Self::Lint => "lint",
            Self::Native => "native",
            Self::Wasm => "wasm",
            Self::Journeys => "journeys",
        }
    }

    /// What it checks, for the developer.
    #[must_use]
    pub fn title(self) -> &'static str {
        match self {
            Self::Format => "Formatting",
            Self::Lint => "Linting",
            Self::Native => "Native tests",
            Self::Wasm => "The page's tests in Node",
            Self::Journeys => "Journeys in the browser",
        }
    }

    /// How long it usually takes: much longer until its libraries have been compiled once.
    #[must_use]
    pub fn usual(self) -> Duration {
        let (first, later) = match self {
            Self::Format => (2, 2),
            Self::Lint => (90, 30),
            Self::Native => (240, 60),
            Self::Wasm => (60, 20),
            Self::Journeys => (150, 60),
        };
        let seconds = if self.passed_before() { later } else { first };
        Duration::from_secs(seconds)
    }

    /// Beside the compiled libraries, so that both go together.
    fn mark(self) -> PathBuf {
        project::root()
            .join("target/passed-stages")
            .join(self.name())
    }

    fn passed_before(self) -> bool {
        self.mark().exists()
    }

    /// Notes that everything it needs has been compiled once.
    ///
    /// # Errors
    /// When `target` cannot be written.
    pub fn note_passed(self) -> Result<()> {
        let mark = self.mark();
        fs::create_dir_all(mark.parent().context("the mark lies in a folder")?)?;
        Ok(fs::write(mark, "")?)
    }

    /// Runs it; `filter` goes to the test runners, whose results are added to `counts`.
    ///
    /// # Errors
    /// When anything in it fails.
    pub fn run(self, compiler: WasmCompiler, filter: &[&str], counts: &mut Counts) -> Result<()> {
        match self {
            Self::Format => console::run_openly(tools::cargo().args(["fmt", "--all", "--check"])),
            Self::Lint => lint(compiler),
            Self::Native => {
                let mut tests = tools::cargo();
                tests.args(["test", "--workspace", "--no-fail-fast", "--"]);
                count(tests.args(filter), counts)
            }
            Self::Wasm => {
                page::pack_data()?;
                let mut tests = compiler.cargo()?;
                tests
                    .args(["test", "--package", "gramwright-web", "--tests", "--target"])
                    .args([TRIPLE, "--profile", DRAFT, "--no-fail-fast", "--"])
                    .env(
                        "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER",
                        "wasm-bindgen-test-runner",
                    );
                count(tests.args(filter), counts)
            }
            Self::Journeys => {
                let folder = page::build(Page::Draft, compiler)?;
                let mut tests = tools::cargo();
                tests
                    .args(["test", "--package", "gramwright-tests", "--features"])
                    .args(["journeys", "--test", "journeys", "--"])
                    .env("GRAMWRIGHT_PAGE", folder)
                    .env("GRAMWRIGHT_AXE", pins::AXE.folder().join("axe.min.js"));
                count(tests.args(filter), counts)
            }
        }
    }
}

fn lint(compiler: WasmCompiler) -> Result<()> {
    let mut native = tools::cargo();
    native
        .args(["clippy", "--workspace", "--all-targets"])
        .args(["--features", "gramwright-tests/journeys"])
        .args(["--", "-D", "warnings"]);
    console::run_openly(&mut native)?;
    if compiler == WasmCompiler::Distro {
        println!(
            "    the distribution's compiler has no linter: code for the browser alone is not linted here"
        );
        return Ok(());
    }
    let mut page = compiler.cargo()?;
    page.args(["clippy", "--package", "gramwright-web", "--all-targets"])
        .args(["--target", TRIPLE, "--profile", DRAFT])
        .args(["--", "-D", "warnings"]);
    console::run_openly(&mut page)
}

/// Runs tests, passing their output on and adding up the closing lines of their runners.
fn count(command: &mut Command, counts: &mut Counts) -> Result<()> {
    let mut child = command
        .stdout(Stdio::piped())
        .spawn()
        .with_context(|| format!("cannot start {command:?}"))?;
    let output = child.stdout.take().context("it was piped")?;
    for line in BufReader::new(output).lines() {
        let line = line?;
        println!("{line}");
        if let Some(closing) = Counts::from_line(&line) {
            *counts += closing;
        }
    }
    let status = child.wait()?;
    if !status.success() {
        bail!("{command:?} ended with {status}");
    }
    Ok(())
}
