//! The one table of tools: what is installed, in which version, and how long that usually takes
//! (two cores, measured).

use super::apt::Packages;
use super::crates::CrateTool;
use super::npm::NpmTool;
use super::python::PythonTools;
use crate::project;
use anyhow::{Context, Result, ensure};
use std::fs;
use std::time::Duration;

/// Builds the page: compiles, binds to JavaScript, gathers the files.
pub const TRUNK: CrateTool = CrateTool {
    name: "trunk",
    version: "0.21.14",
    options: &["--no-default-features", "--features", "rustls"],
    programs: &["trunk"],
    usual: Duration::from_secs(150),
};

/// Binds WebAssembly to JavaScript, and runs the page's tests in Node.
pub const WASM_BINDGEN: CrateTool = CrateTool {
    name: "wasm-bindgen-cli",
    version: "0.2.130",
    options: &[],
    programs: &["wasm-bindgen", "wasm-bindgen-test-runner"],
    usual: Duration::from_secs(60),
};

/// Makes WebAssembly smaller; only the optimised page needs it.
pub const BINARYEN: NpmTool = NpmTool {
    package: "binaryen",
    version: "132.0.0",
    usual: Duration::from_secs(5),
};

/// Looks for obstacles in the page; the journeys load it into the browser.
pub const AXE: NpmTool = NpmTool {
    package: "axe-core",
    version: "4.14.1",
    usual: Duration::from_secs(5),
};

/// Runs the page's tests, the optimiser and the size report.
pub const NODE: Packages = Packages {
    names: &["nodejs", "npm"],
    programs: &["node", "npm"],
    usual: Duration::from_secs(40),
};

/// What the measurements compare with.
pub const RIVALS: PythonTools = PythonTools {
    name: "rivals",
    list: "tests/bench/rivals/requirements.txt",
    usual: Duration::from_secs(45),
};

/// The browser of the journeys, and what reads its printouts, in the versions that the distribution
/// serves.
pub const BROWSER: Packages = Packages {
    names: &["chromium", "chromium-driver", "poppler-utils"],
    programs: &["chromium", "chromedriver", "pdftotext"],
    usual: Duration::from_secs(40),
};

/// A compiler with the source of its own standard library, for machines whose rustup has no
/// WebAssembly target to give; in the version that the distribution serves.
pub const DISTRO_RUST: Packages = Packages {
    names: &["rustc-web", "cargo-web", "rust-web-src", "lld"],
    programs: &[
        "/usr/bin/rustc",
        "/usr/bin/cargo",
        "/usr/lib/rustlib/src/rust/library/std/Cargo.toml",
        "wasm-ld",
    ],
    usual: Duration::from_secs(60),
};

/// Refuses to build a page whose `wasm-bindgen` crate and command differ: they speak a private
/// protocol that changes with every version.
///
/// # Errors
/// When the pin in the root `Cargo.toml` is another, or is missing.
pub fn check_wasm_bindgen_agrees() -> Result<()> {
    let manifest = project::root().join("Cargo.toml");
    let text = fs::read_to_string(&manifest)?;
    let pinned = text
        .lines()
        .find_map(|line| line.strip_prefix("wasm-bindgen = "))
        .context("Cargo.toml pins no wasm-bindgen in [workspace.dependencies]")?
        .trim();
    let expected = format!("\"={}\"", WASM_BINDGEN.version);
    ensure!(
        pinned == expected,
        "Cargo.toml pins wasm-bindgen = {pinned}, xtask/src/tools/pins.rs its command at {expected}: \
         make them one version"
    );
    Ok(())
}

#[cfg(test)]
mod tests {
    #[test]
    fn the_crate_and_the_command_are_one_version() {
        super::check_wasm_bindgen_agrees().expect("one version");
    }
}
