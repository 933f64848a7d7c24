//! `cargo xtask bench search`: our search beside libraries and a database that search too, on the
//! same strings and typed queries.

use crate::page::{self, Page};
use crate::tools::wasm_target::WasmCompiler;
use crate::{console, project};
use anyhow::Result;
use std::fs;
use std::process::Command;

/// Installs the rivals and prints the table; `sqlite` runs the native program of that name.
///
/// # Errors
/// When something cannot be installed, does not compile, or fails.
pub fn run(compiler: WasmCompiler, mut sqlite: Command) -> Result<()> {
    println!("Search beside rivals, in the optimised page's program");
    let page = page::build(Page::Optimised, compiler)?;
    let scripts = project::root().join("tests/bench/search");
    let folder = project::root().join("target/bench/search");
    fs::create_dir_all(&folder)?;
    fs::copy(scripts.join("package.json"), folder.join("package.json"))?;
    let mut rivals = Command::new("npm");
    rivals
        .args(["install", "--no-audit", "--no-fund", "--no-package-lock"])
        .current_dir(&folder);
    console::run_openly(&mut rivals)?;

    let (strings, times) = (folder.join("strings.json"), folder.join("sqlite.json"));
    let mut gather = Command::new("node");
    gather
        .arg(scripts.join("strings.mjs"))
        .arg(project::root())
        .arg(&strings);
    console::run_openly(&mut gather)?;
    console::run_openly(sqlite.arg(&strings).arg(&times))?;
    let mut measure = Command::new("node");
    measure
        .arg(scripts.join("measure.mjs"))
        .arg(&strings)
        .arg(page)
        .arg(&folder)
        .arg(&times);
    console::run_openly(&mut measure)
}
