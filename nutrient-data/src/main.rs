//! Imports SR28 into the committed tables, and builds the asset files from them.

use std::error::Error;
use std::fs;
use std::path::Path;
use std::process::ExitCode;

use nutrient_data::{asset, import, tables};

const USAGE: &str = "Usage:
  nutrient-data import FOLDER   reads the unpacked text files of SR28 in FOLDER into the tables
  nutrient-data asset FOLDER    writes the two data files of the page into FOLDER";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let words: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let done = match words[..] {
        ["import", folder] => run_import(Path::new(folder)),
        ["asset", folder] => run_asset(Path::new(folder)),
        _ => Err(USAGE.into()),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("{error}");
            ExitCode::FAILURE
        }
    }
}

fn run_import(source: &Path) -> Result<(), Box<dyn Error>> {
    let folder = tables::committed_folder();
    let files = import::read_release(source, &folder)?;
    import::write_tables(&files, &folder)?;
    println!("{} tables written below {}", files.len(), folder.display());
    Ok(())
}

fn run_asset(folder: &Path) -> Result<(), Box<dyn Error>> {
    let (foods, provenance) = asset::build(&tables::committed_folder())?;
    fs::create_dir_all(folder)
        .map_err(|error| format!("{} cannot be made: {error}", folder.display()))?;
    for (name, bytes) in [
        (asset::FOODS_FILE, foods),
        (asset::PROVENANCE_FILE, provenance),
    ] {
        let path = folder.join(name);
        fs::write(&path, &bytes)
            .map_err(|error| format!("{} cannot be written: {error}", path.display()))?;
        println!("{}: {} bytes", path.display(), bytes.len());
    }
    Ok(())
}
