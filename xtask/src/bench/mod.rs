//! `cargo xtask bench`: the engine side by side with general-purpose engines. The measurements
//! are a workspace of their own, `tests/bench`, outside the checks.

use crate::page::{self, Page};
use crate::tools::wasm_target::{TRIPLE, WasmCompiler};
use crate::tools::{self, pins};
use crate::{console, project};
use anyhow::{Result, bail};
use std::path::PathBuf;
use std::process::Command;

/// What can be run alone.
const PARTS: [&str; 3] = ["speed", "state", "page"];

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
    if wanted("state") {
        println!("A state of 600 districts by SQL, digit by digit");
        let mut test = cargo("test");
        test.args([
            "--profile",
            "bench",
            "--test",
            "scale_out",
            "--",
            "--nocapture",
        ]);
        console::run_openly(&mut test)?;
    }
    if wanted("page") {
        keystrokes(compiler)?;
    }
    Ok(())
}

fn speed(compiler: WasmCompiler, filter: &[&str]) -> Result<()> {
    println!("The nutrient product for WebAssembly");
    product(compiler)?;
    println!("Measuring; on two cores usually 4 min after all is compiled");
    console::run_openly(cargo("bench").args(["--bench", "speed", "--"]).args(filter))?;
    let mut ratios = cargo("run");
    ratios
        .args(["--quiet", "--bin", "ratios", "--"])
        .arg(times());
    console::run_openly(&mut ratios)
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
fn keystrokes(compiler: WasmCompiler) -> Result<()> {
    println!("Keystroke to paint in a book of 5,000 recipes");
    let folder = page::build(Page::Optimised, compiler)?;
    let mut journey = tools::cargo();
    journey
        .args([
            "test",
            "--package",
            "gramwright-tests",
            "--features",
            "journeys",
        ])
        .args([
            "--test",
            "journeys",
            "--",
            "--ignored",
            "--nocapture",
            "keystrokes",
        ])
        .env("GRAMWRIGHT_PAGE", folder)
        .env("GRAMWRIGHT_AXE", pins::AXE.folder().join("axe.min.js"));
    console::run_openly(&mut journey)
}
