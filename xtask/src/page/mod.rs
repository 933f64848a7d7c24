//! Building the page: the nutrient data, the program, and the list of files that works offline.

mod data;
pub mod sizes;

use crate::console;
use crate::project;
use crate::tools::wasm_target::{TRIPLE, WasmCompiler};
use anyhow::{Context, Result};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;
use xtask::offline;

/// For whom the page is built.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Page {
    /// For the developer: quick to rebuild.
    Draft,
    /// For its users: as small as it gets.
    Optimised,
}

impl Page {
    /// The folder with the finished page.
    #[must_use]
    pub fn folder(self) -> PathBuf {
        project::root().join(match self {
            Self::Draft => "target/page-draft",
            Self::Optimised => "dist",
        })
    }

    /// Cargo's profile, see the root `Cargo.toml`.
    #[must_use]
    pub const fn profile(self) -> &'static str {
        match self {
            Self::Draft => "page-draft",
            Self::Optimised => "page",
        }
    }

    /// How long building it usually takes, by whether its libraries are already compiled.
    #[must_use]
    pub fn usual(self) -> Duration {
        let compiled = project::page_target().join(TRIPLE).join(self.profile());
        Duration::from_secs(match (self, compiled.exists()) {
            (Self::Draft, false) => 80,
            (Self::Draft, true) => 12,
            (Self::Optimised, false) => 90,
            (Self::Optimised, true) => 40,
        })
    }
}

/// Packs the nutrient data, unless nothing has changed since.
///
/// # Errors
/// When the packer does not compile or refuses a table.
pub fn pack_data() -> Result<()> {
    data::pack().map(drop)
}

/// Builds the page and returns its folder, which is replaced as a whole once all of it is there.
///
/// # Errors
/// When the data cannot be packed or the program does not compile.
pub fn build(page: Page, compiler: WasmCompiler) -> Result<PathBuf> {
    let packed = data::pack()?;
    let stage = project::page_target().join("stage");
    // Trunk carries over whatever an earlier build left in either folder.
    remove_folder(&stage)?;
    remove_folder(&project::page_target().join("wasm-bindgen"))?;
    fs::create_dir_all(&stage)?;

    let mut trunk = Command::new(project::tools().join("bin/trunk"));
    compiler.prepare(&mut trunk)?;
    trunk
        .args([
            "build",
            "--skip-version-check",
            "--log",
            "warn",
            "--cargo-profile",
        ])
        .arg(page.profile())
        .arg("--dist")
        .arg(&stage)
        // A compile error says what is wrong; Trunk's own call stack adds nothing.
        .env("RUST_BACKTRACE", "0");
    if page == Page::Optimised {
        // Not Cargo's profile of that name: it makes Trunk call the optimiser.
        trunk.arg("--release");
    }
    console::run_openly(&mut trunk)?;

    let data_folder = stage.join("data");
    fs::create_dir_all(&data_folder)?;
    for file in packed {
        let name = file.file_name().context("a packed file without a name")?;
        fs::copy(&file, data_folder.join(name))?;
    }
    offline::list_files(&stage)?;

    let folder = page.folder();
    remove_folder(&folder)?;
    fs::rename(&stage, &folder)?;
    Ok(folder)
}

fn remove_folder(folder: &Path) -> Result<()> {
    if folder.exists() {
        fs::remove_dir_all(folder).with_context(|| format!("cannot clear {}", folder.display()))?;
    }
    Ok(())
}
