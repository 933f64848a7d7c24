//! Tells the service worker which files the page consists of.
//!
//! Names say nothing about contents, so each name goes with the hash of its file. The version is the
//! hash of the list: it changes when, and only when, a file does.

use anyhow::{Context, Result, ensure};
use sha2::{Digest, Sha256};
use std::fmt::Write;
use std::fs;
use std::path::Path;

/// The worker's file in the built page; its own text is no part of the list.
const WORKER: &str = "worker.js";
const VERSION_SLOT: &str = "const VERSION = \"\";";
const FILES_SLOT: &str = "const FILES = [];";

/// Writes version and files into the worker of a built page.
///
/// # Errors
/// When the worker is missing, or lacks the two lines to fill.
pub fn list_files(folder: &Path) -> Result<()> {
    let mut names = Vec::new();
    collect(folder, folder, &mut names)?;
    names.retain(|name| name != WORKER);
    names.sort();

    let mut list = String::from("const FILES = [\n");
    for name in &names {
        // Debug quoting is JavaScript quoting for the plain names that `collect` lets through.
        let hash = hash_of(&fs::read(folder.join(name))?);
        writeln!(list, "  [{name:?}, \"{hash}\"],")?;
    }
    list.push_str("];");
    let version = &hash_of(list.as_bytes())[..16];

    let worker = folder.join(WORKER);
    let text = fs::read_to_string(&worker).context("the page has no worker.js")?;
    for slot in [VERSION_SLOT, FILES_SLOT] {
        ensure!(
            text.matches(slot).count() == 1,
            "web/shell/worker.js must have the line {slot} once"
        );
    }
    let text = text
        .replace(VERSION_SLOT, &format!("const VERSION = \"{version}\";"))
        .replace(FILES_SLOT, &list);
    fs::write(worker, text)?;
    Ok(())
}

/// Gathers the names of all files, relative to `root`, with forward slashes.
fn collect(root: &Path, folder: &Path, names: &mut Vec<String>) -> Result<()> {
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        if path.is_dir() {
            collect(root, &path, names)?;
            continue;
        }
        let name = path
            .strip_prefix(root)?
            .to_str()
            .context("a file name that is not text")?
            .to_owned();
        let plain = |c: char| c.is_ascii_alphanumeric() || "/._-".contains(c);
        ensure!(
            name.chars().all(plain),
            "{name}: files of the page are named with letters, digits, dots and hyphens only"
        );
        names.push(name);
    }
    Ok(())
}

/// SHA-256 in hexadecimal.
fn hash_of(bytes: &[u8]) -> String {
    let mut text = String::new();
    for byte in Sha256::digest(bytes) {
        write!(text, "{byte:02x}").expect("writing to a string");
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The one-block message of FIPS 180-4's published examples ("abc").
    #[test]
    fn hashes_as_the_standard_says() {
        assert_eq!(
            hash_of(b"abc"),
            "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
        );
    }

    #[test]
    fn the_version_changes_with_any_file() {
        let folder = std::env::temp_dir().join(format!("xtask-offline-{}", std::process::id()));
        let worker = format!("{VERSION_SLOT}\n{FILES_SLOT}\n");
        let built = |style: &str| {
            fs::create_dir_all(folder.join("style")).expect("a folder");
            fs::write(folder.join("style/main.css"), style).expect("a file");
            fs::write(folder.join(WORKER), &worker).expect("a file");
            list_files(&folder).expect("a list");
            fs::read_to_string(folder.join(WORKER)).expect("a worker")
        };
        let (first, again, changed) = (built("a{}"), built("a{}"), built("b{}"));
        fs::remove_dir_all(&folder).expect("its own folder");

        assert!(first.contains("[\"style/main.css\", \""), "{first}");
        assert_eq!(first, again);
        assert_ne!(first.lines().next(), changed.lines().next());
    }
}
