//! Installing what the commands need, once, inside `target/tools`.

pub mod apt;
pub mod crates;
pub mod distro_std;
pub mod npm;
pub mod pins;
pub mod python;
pub mod wasm_target;

use crate::console::{self, Steps};
use crate::project;
use anyhow::{Result, ensure};
use std::env;
use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;
use wasm_target::WasmCompiler;

/// Something the commands need that may have to be installed first.
pub trait Tool {
    /// Name and version, for the developer.
    fn title(&self) -> String;
    /// How long installing usually takes.
    fn usual(&self) -> Duration;
    /// Whether it is there in the pinned version.
    fn is_installed(&self) -> bool;
    /// Installs it; `log` takes the output of what runs.
    ///
    /// # Errors
    /// When it cannot be installed, with the reason and the end of the log.
    fn install(&self, log: &Path) -> Result<()>;
}

/// Installs what building the page needs, and these tools.
///
/// # Errors
/// See [`install_missing`]; also when the pinned versions contradict each other.
pub fn set_up(also: &[&dyn Tool]) -> Result<WasmCompiler> {
    pins::check_wasm_bindgen_agrees()?;
    let compiler = WasmCompiler::choose()?;
    let mut needed: Vec<&dyn Tool> = compiler.tools().to_vec();
    needed.extend([&pins::TRUNK as &dyn Tool, &pins::WASM_BINDGEN]);
    needed.extend(also);
    install_missing(&needed)?;
    Ok(compiler)
}

/// Installs those of the tools that are missing, telling which, and how long it will take.
///
/// # Errors
/// The first tool's that cannot be installed.
fn install_missing(tools: &[&dyn Tool]) -> Result<()> {
    let missing: Vec<&dyn Tool> = tools
        .iter()
        .copied()
        .filter(|tool| !tool.is_installed())
        .collect();
    if missing.is_empty() {
        return Ok(());
    }
    let usual: Vec<Duration> = missing.iter().map(|tool| tool.usual()).collect();
    println!(
        "Setting up, this once: {} of {} tools are missing, about {} on two cores.",
        missing.len(),
        tools.len(),
        console::words(usual.iter().sum())
    );
    let mut steps = Steps::new(usual);
    for tool in missing {
        let title = tool.title();
        let log = log_file(&title);
        steps.run(&title, |_| {
            tool.install(&log)?;
            ensure!(
                tool.is_installed(),
                "it was installed, but is not found; see {}",
                log.display()
            );
            Ok(())
        })?;
    }
    Ok(())
}

/// A tool's log, named after its title.
fn log_file(title: &str) -> PathBuf {
    let name: String = title
        .chars()
        .map(|c| if c.is_ascii_alphanumeric() { c } else { '-' })
        .collect();
    project::tools().join("logs").join(format!("{name}.log"))
}

/// The native Cargo that runs this command.
#[must_use]
pub fn cargo() -> Command {
    let mut command = Command::new(env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    command.current_dir(project::root());
    command
}

/// `PATH` with these folders in front.
///
/// # Errors
/// When a folder's name contains a colon.
pub fn path_with(folders: Vec<PathBuf>) -> Result<OsString> {
    let rest = env::var_os("PATH").unwrap_or_default();
    Ok(env::join_paths(
        folders.into_iter().chain(env::split_paths(&rest)),
    )?)
}

/// Whether a program is on the `PATH`, or a file at its whole path.
#[must_use]
pub fn is_on_path(program: &str) -> bool {
    env::split_paths(&env::var_os("PATH").unwrap_or_default())
        .any(|folder| folder.join(program).is_file())
}
