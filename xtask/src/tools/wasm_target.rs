//! A compiler that can build for WebAssembly: rustup's, where its target can be had, else the
//! distribution's with a standard library built here.

use super::distro_std::{self, DistroStd};
use super::{Tool, pins};
use crate::{console, project};
use anyhow::{Context, Result, bail};
use std::fs;
use std::path::PathBuf;
use std::process::{Command, Stdio};
use std::thread;
use std::time::{Duration, Instant};

/// The target's name.
pub const TRIPLE: &str = "wasm32-unknown-unknown";

/// How long rustup may take to bring the target (20 MB) before the distribution is asked.
const RUSTUP_PATIENCE: Duration = Duration::from_secs(60);

/// Which compiler builds the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WasmCompiler {
    /// The compiler that also builds natively.
    Native,
    /// The distribution's, see [`distro_std`].
    Distro,
}

impl WasmCompiler {
    /// Chooses rustup's where it has the target or can bring it, else the distribution's.
    ///
    /// # Errors
    /// When there is no Rust compiler at all.
    pub fn choose() -> Result<Self> {
        if native_has_target()? || rustup_brings_target()? {
            Ok(Self::Native)
        } else {
            Ok(Self::Distro)
        }
    }

    /// What must be installed before it can be used.
    #[must_use]
    pub fn tools(self) -> &'static [&'static dyn Tool] {
        match self {
            Self::Native => &[],
            Self::Distro => &[&pins::DISTRO_RUST, &DistroStd],
        }
    }

    /// Cargo, set up to compile the page apart from the native build.
    ///
    /// # Errors
    /// When the project's folder has a name that cannot be on the `PATH`.
    pub fn cargo(self) -> Result<Command> {
        let mut command = match self {
            Self::Native => super::cargo(),
            Self::Distro => Command::new(distro_std::programs().join("cargo")),
        };
        self.prepare(&mut command)?;
        Ok(command)
    }

    /// Makes a command, and the Cargo that it may start, compile with this compiler.
    ///
    /// # Errors
    /// When the project's folder has a name that cannot be on the `PATH`.
    pub fn prepare(self, command: &mut Command) -> Result<()> {
        let mut folders: Vec<PathBuf> = vec![project::tools().join("bin"), super::npm::programs()];
        if self == Self::Distro {
            folders.insert(0, distro_std::programs());
            command
                .env("RUSTC", distro_std::programs().join("rustc"))
                .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER", "wasm-ld")
                .env_remove("CARGO")
                .env_remove("RUSTUP_TOOLCHAIN");
        }
        command
            .current_dir(project::root())
            .env("PATH", super::path_with(folders)?)
            .env("CARGO_TARGET_DIR", project::page_target());
        Ok(())
    }
}

/// Whether the native compiler has a standard library for the target.
fn native_has_target() -> Result<bool> {
    let output = Command::new("rustc")
        .args(["--print", "target-libdir", "--target", TRIPLE])
        .output()
        .context("there is no rustc: install the Rust toolchain with rustup first")?;
    let folder = PathBuf::from(String::from_utf8_lossy(&output.stdout).trim());
    let has_core = fs::read_dir(folder).is_ok_and(|files| {
        files
            .flatten()
            .any(|file| file.file_name().to_string_lossy().starts_with("libcore-"))
    });
    Ok(has_core)
}

/// Asks rustup for the target, unless the same compiler's rustup has said no before.
fn rustup_brings_target() -> Result<bool> {
    if !super::is_on_path("rustup") {
        return Ok(false);
    }
    let refusal = project::tools().join("rustup-has-no-wasm32");
    let compiler = compiler_version("rustc")?;
    if fs::read_to_string(&refusal).is_ok_and(|text| text == compiler) {
        return Ok(false);
    }
    println!(
        "Asking rustup for {TRIPLE}: usually 5 s, given up after {}",
        console::words(RUSTUP_PATIENCE)
    );
    if add_with_rustup()? && native_has_target()? {
        return Ok(true);
    }
    println!(
        "    not to be had here; taking the distribution's compiler. To ask again, delete {}",
        refusal.display()
    );
    fs::create_dir_all(project::tools())?;
    fs::write(refusal, compiler)?;
    Ok(false)
}

fn add_with_rustup() -> Result<bool> {
    let mut child = Command::new("rustup")
        .args(["target", "add", TRIPLE])
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()?;
    let started = Instant::now();
    while started.elapsed() < RUSTUP_PATIENCE {
        if let Some(status) = child.try_wait()? {
            return Ok(status.success());
        }
        thread::sleep(Duration::from_millis(100));
    }
    child.kill()?;
    child.wait()?;
    Ok(false)
}

/// Everything a compiler says about its version.
///
/// # Errors
/// When it cannot be run.
pub fn compiler_version(rustc: &str) -> Result<String> {
    let output = Command::new(rustc)
        .arg("-vV")
        .output()
        .with_context(|| format!("cannot run {rustc}"))?;
    if !output.status.success() {
        bail!("{rustc} -vV ended with {}", output.status);
    }
    Ok(String::from_utf8_lossy(&output.stdout).into_owned())
}
