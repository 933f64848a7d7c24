//! The nutrient data as the page fetches it, packed anew when a table or the packer has changed.

use crate::{console, project, tools};
use anyhow::{Context, Result};
use std::fs;
use std::path::{Path, PathBuf};
use std::time::SystemTime;

/// What the first analysis needs, and what may come a moment later.
const FILES: [&str; 2] = ["sr28.foods.bin", "sr28.provenance.bin"];

/// Packs the data, unless nothing has changed since, and returns the packed files.
///
/// # Errors
/// When the packer does not compile or refuses a table.
pub fn pack() -> Result<Vec<PathBuf>> {
    let files: Vec<PathBuf> = FILES
        .iter()
        .map(|name| project::packed_data().join(name))
        .collect();
    let tables = project::root().join("nutrient-data");
    let changed = newest(&tables)?.context("nutrient-data is empty")?;
    let packed = files
        .iter()
        .map(|file| modified(file).ok())
        .collect::<Option<Vec<_>>>();
    let up_to_date = packed.is_some_and(|times| times.iter().all(|time| *time > changed));
    if !up_to_date {
        println!("Packing the nutrient data: usually 20 s the first time, then 5 s");
        fs::create_dir_all(project::packed_data())?;
        let mut command = tools::cargo();
        command
            .args([
                "run",
                "--quiet",
                "--package",
                "nutrient-data",
                "--",
                "asset",
            ])
            .arg(project::packed_data());
        console::run_openly(&mut command)?;
    }
    Ok(files)
}

fn modified(path: &Path) -> Result<SystemTime> {
    Ok(fs::metadata(path)?.modified()?)
}

/// When the newest file in a folder, or in one of its folders, was changed.
fn newest(folder: &Path) -> Result<Option<SystemTime>> {
    let mut newest = None;
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        let time = if path.is_dir() {
            self::newest(&path)?
        } else {
            Some(modified(&path)?)
        };
        newest = newest.max(time);
    }
    Ok(newest)
}
