//! Prints the table of ratios from the times that were measured last.
//!
//! `cargo run --manifest-path tests/bench/Cargo.toml --bin ratios -- FOLDER`

use anyhow::{Context, Result};
use std::{env, path::Path};

fn main() -> Result<()> {
    let folder = env::args()
        .nth(1)
        .context("name the folder of the measured times")?;
    print!("{}", gramwright_bench::ratios::table(Path::new(&folder))?);
    Ok(())
}
