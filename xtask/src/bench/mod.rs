//! `cargo xtask bench`: the engine side by side with general-purpose engines. The measurements
//! are a workspace of their own, `tests/bench`, outside the checks.

use crate::page::{self, Page};
use crate::tools::wasm_target::{TRIPLE, WasmCompiler};
use crate::tools::{self, pins};
use crate::{console, project};
use anyhow::{Result, bail};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

/// What can be run alone.
const PARTS: [&str; 5] = ["speed", "weeks", "state", "search", "page"];

/// Installs the rivals and runs the parts named; all, when none is. `filter` chooses
/// measurements of `speed` by their names.
///
/// # Errors
/// When something cannot be installed, does not compile, or a comparison fails.
pub fn run(parts: &[&str], filter: &[&str]) -> Result<()> {
    if let Some(unknown) = parts.iter().find(|part| !PARTS.contains(part)) {
        bail!(
            "{unknown} is no part of the measurements; these are: {}",
            PARTS.join(", ")
        );
    }
    let compiler = tools::set_up(&[
        &pins::NODE,
        &pins::RIVALS,
        &pins::BINARYEN,
        &pins::AXE,
        &pins::BROWSER,
    ])?;
    let wanted = |part| parts.is_empty() || parts.contains(&part);
    if wanted("speed") {
        speed(compiler, filter)?;
    }
    if wanted("weeks") {
        weeks()?;
    }
    if wanted("state") {
        state()?;
    }
    if wanted("search") || wanted("page") {
        let page = page::build(Page::Optimised, compiler)?;
        if wanted("search") {
            search(&page)?;
        }
        if wanted("page") {
            first_load(&page)?;
            keystrokes(&page)?;
        }
    }
    Ok(())
}

fn speed(compiler: WasmCompiler, filter: &[&str]) -> Result<()> {
    println!("The nutrient product for WebAssembly");
    product(compiler)?;
    println!("Measuring; on two cores usually 2 min after all is compiled");
    console::run_openly(cargo("bench").args(["--bench", "speed", "--"]).args(filter))?;
    console::run_openly(program("ratios").arg(times()))
}

/// Least-change weeks: the same models for our solver and for one that is native.
fn weeks() -> Result<()> {
    println!("The fewest changes that mend 30 generated weeks, by HiGHS and by ours");
    let models = target().join("weeks");
    if models.exists() {
        fs::remove_dir_all(&models)?;
    }
    console::run_openly(program("week_models").arg(&models))?;
    let mut compare = Command::new(pins::RIVALS.python());
    compare
        .arg(project::root().join("tests/bench/rivals/least_change.py"))
        .arg(&models);
    console::run_openly(&mut compare)
}

fn state() -> Result<()> {
    println!("A state of 600 districts by SQL, digit by digit");
    let mut test = cargo("test");
    test.args(["--profile", "bench", "--test", "scale_out", "--"])
        .arg("--nocapture");
    console::run_openly(&mut test)
}

/// Typed queries, letter by letter, in the page's program and in others, on the same strings.
fn search(page: &Path) -> Result<()> {
    println!("Search on 300 typed queries, ours and others");
    let scripts = project::root().join("tests/bench/search");
    let folder = target().join("search");
    fs::create_dir_all(&folder)?;
    fs::copy(scripts.join("package.json"), folder.join("package.json"))?;
    let mut install = Command::new("npm");
    install
        .args(["install", "--no-audit", "--no-fund", "--no-package-lock"])
        .arg("--silent")
        .current_dir(&folder);
    console::run_openly(&mut install)?;
    let (strings, sqlite) = (folder.join("strings.json"), folder.join("sqlite.json"));
    let mut write = node(&scripts.join("strings.mjs"));
    console::run_openly(write.arg(project::root()).arg(&strings))?;
    console::run_openly(program("search_sqlite").arg(&strings).arg(&sqlite))?;
    let mut measure = node(&scripts.join("measure.mjs"));
    console::run_openly(measure.arg(&strings).arg(page).arg(&folder).arg(&sqlite))
}

/// First load to first analysis, in Chromium.
fn first_load(page: &Path) -> Result<()> {
    println!("First load to first analysis");
    let mut load = node(&project::root().join("tests/bench/page/load.mjs"));
    console::run_openly(load.arg(page))
}

fn node(script: &Path) -> Command {
    let mut command = Command::new("node");
    command.arg(script);
    command
}

/// A program of the measurements, compiled as they are.
fn program(name: &str) -> Command {
    let mut run = cargo("run");
    run.args(["--quiet", "--profile", "bench", "--bin", name, "--"]);
    run
}

/// Where everything of the measurements is compiled.
fn target() -> PathBuf {
    project::root().join("target/bench")
}

/// Where the measured times are kept.
fn times() -> PathBuf {
    target().join("criterion")
}

fn wasm_folder() -> PathBuf {
    target().join("wasm")
}

/// Cargo on the workspace of the measurements, with what they ask for.
fn cargo(what: &str) -> Command {
    let mut command = tools::cargo();
    command
        .args([
            what,
            "--locked",
            "--manifest-path",
            "tests/bench/Cargo.toml",
        ])
        .env("CARGO_TARGET_DIR", target())
        .env("CRITERION_HOME", times())
        .env("GRAMWRIGHT_RIVALS_PYTHON", pins::RIVALS.python())
        .env("GRAMWRIGHT_BENCH_WASM", wasm_folder().join("node"));
    command
}

/// Compiles the product to WebAssembly with vector instructions, which every browser has had for
/// years, and binds it for Node.
fn product(compiler: WasmCompiler) -> Result<()> {
    let mut build = compiler.cargo()?;
    build
        .args([
            "build",
            "--release",
            "--locked",
            "--manifest-path",
            "tests/bench/Cargo.toml",
        ])
        .args(["--package", "gramwright-bench-wasm", "--target", TRIPLE])
        .env("CARGO_TARGET_DIR", wasm_folder())
        .env("RUSTFLAGS", "-C target-feature=+simd128");
    console::run_openly(&mut build)?;
    let program = wasm_folder()
        .join(TRIPLE)
        .join("release/gramwright_bench_wasm.wasm");
    let mut bind = Command::new(project::tools().join("bin/wasm-bindgen"));
    bind.args(["--target", "nodejs", "--out-dir"])
        .arg(wasm_folder().join("node"))
        .arg(program);
    console::run_openly(&mut bind)
}

/// Keystroke to paint, in the page as its users get it.
fn keystrokes(page: &Path) -> Result<()> {
    println!("Keystroke to paint in a book of 5,000 recipes");
    let mut journey = tools::cargo();
    journey
        .args(["test", "--package", "gramwright-tests"])
        .args(["--features", "journeys", "--test", "journeys", "--"])
        .args(["--ignored", "--nocapture", "keystrokes"])
        .env("GRAMWRIGHT_PAGE", page)
        .env("GRAMWRIGHT_AXE", pins::AXE.folder().join("axe.min.js"));
    console::run_openly(&mut journey)
}
