//! `cargo xtask bench load`: first load to first analysis, beside fetching and compiling the same
//! bytes, in the browser.

use crate::page::{self, Page};
use crate::tools::wasm_target::WasmCompiler;
use crate::{console, project};
use anyhow::Result;
use std::process::Command;

/// Builds the page as its users get it, prints its sizes, and loads it in fresh browsers.
///
/// # Errors
/// When the page does not build or the browser fails.
pub fn run(compiler: WasmCompiler) -> Result<()> {
    println!("First load to first analysis: usually 1 min after the page is built");
    let page = page::build(Page::Optimised, compiler)?;
    page::sizes::print(&page)?;
    let mut load = Command::new("node");
    load.arg(project::root().join("tests/bench/page/load.mjs"))
        .arg(page);
    console::run_openly(&mut load)
}
