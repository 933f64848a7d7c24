//! The standard library for WebAssembly, built with the distribution's compiler.
//!
//! The distribution ships the compiler and the source of its standard library, but nothing compiled
//! for a browser. It is compiled here in a scratch crate, into a sysroot of the project's own. That
//! sysroot belongs to one compiler version: when the distribution moves on, it is built again.

use super::Tool;
use super::wasm_target::{TRIPLE, compiler_version};
use crate::{console, project};
use anyhow::{Context, Result};
use std::fs;
use std::os::unix::fs::{PermissionsExt, symlink};
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;

const RUSTC: &str = "/usr/bin/rustc";
const CARGO: &str = "/usr/bin/cargo";

/// What the page needs of the standard library, and `test`, which its tests need.
const LIBRARY: &str = "std,panic_abort,panic_unwind,test";

/// The scratch crate; building it builds the standard library.
const MANIFEST: &str = "[package]\nname = \"scratch\"\nedition = \"2024\"\n\n[workspace]\n";

/// A sysroot with the standard library for WebAssembly.
#[derive(Debug)]
pub struct DistroStd;

fn home() -> PathBuf {
    project::tools().join("distro-rust")
}

/// The folder of its `cargo` and of a `rustc` that uses the sysroot.
#[must_use]
pub fn programs() -> PathBuf {
    home().join("bin")
}

fn sysroot() -> PathBuf {
    home().join("sysroot")
}

/// Written last; holds what the sysroot was made of.
fn seal() -> PathBuf {
    home().join("made-of.txt")
}

/// The parts of the library, and the compiler that the sysroot belongs to.
fn made_of() -> Result<String> {
    Ok(format!("{LIBRARY}\n{}", compiler_version(RUSTC)?))
}

impl Tool for DistroStd {
    fn title(&self) -> String {
        "Rust's standard library for WebAssembly".to_owned()
    }

    fn usual(&self) -> Duration {
        Duration::from_secs(35)
    }

    fn is_installed(&self) -> bool {
        made_of().is_ok_and(|now| fs::read_to_string(seal()).is_ok_and(|then| then == now))
    }

    fn install(&self, log: &Path) -> Result<()> {
        if home().exists() {
            fs::remove_dir_all(home())?;
        }
        let built = build(log, self.usual())?;
        lay_out(&built)?;
        write_programs()?;
        fs::remove_dir_all(scratch())?;
        // What was compiled against an earlier standard library cannot be linked with this one.
        let compiled = project::page_target().join(TRIPLE);
        if compiled.exists() {
            fs::remove_dir_all(compiled)?;
        }
        fs::write(seal(), made_of()?)?;
        Ok(())
    }
}

fn scratch() -> PathBuf {
    home().join("scratch")
}

/// Compiles the standard library; returns the folder of its compiled crates.
fn build(log: &Path, usual: Duration) -> Result<PathBuf> {
    fs::create_dir_all(scratch().join("src"))?;
    fs::write(scratch().join("Cargo.toml"), MANIFEST)?;
    fs::write(scratch().join("src/lib.rs"), "")?;
    let mut command = Command::new(CARGO);
    command
        .current_dir(scratch())
        .args(["build", "--release", "--target", TRIPLE])
        .arg(format!("-Zbuild-std={LIBRARY}"))
        .env("CARGO_TARGET_DIR", scratch().join("target"))
        .env("RUSTC", RUSTC)
        // A released compiler builds its own standard library only under this name.
        .env("RUSTC_BOOTSTRAP", "1")
        // Without it the optimised page cannot be linked as one piece.
        .env("RUSTFLAGS", "-C embed-bitcode=yes")
        .env_remove("RUSTUP_TOOLCHAIN");
    console::run_quietly(&mut command, log, usual)?;
    Ok(scratch().join("target").join(TRIPLE).join("release/deps"))
}

/// Lays the compiled crates out as a sysroot, beside a link to the compiler's own host libraries.
fn lay_out(built: &Path) -> Result<()> {
    let rustlib = sysroot().join("lib/rustlib");
    let target = rustlib.join(TRIPLE).join("lib");
    fs::create_dir_all(&target)?;
    for file in fs::read_dir(built)? {
        let file = file?;
        let name = file.file_name();
        let name = name.to_string_lossy();
        if name.ends_with(".rlib") && !name.starts_with("libscratch-") {
            fs::copy(file.path(), target.join(&*name))?;
        }
    }
    let output = Command::new(RUSTC)
        .args(["--print", "target-libdir"])
        .output()?;
    let host_library = PathBuf::from(String::from_utf8_lossy(&output.stdout).trim());
    let host = host_library
        .parent()
        .context("rustc names no folder of host libraries")?;
    let triple = host.file_name().context("rustc names no host")?;
    symlink(host, rustlib.join(triple))?;
    Ok(())
}

fn write_programs() -> Result<()> {
    fs::create_dir_all(programs())?;
    symlink(CARGO, programs().join("cargo"))?;
    let rustc = programs().join("rustc");
    let script = format!(
        "#!/bin/sh\nexec {RUSTC} --sysroot '{}' \"$@\"\n",
        sysroot().display()
    );
    fs::write(&rustc, script)?;
    fs::set_permissions(&rustc, fs::Permissions::from_mode(0o755))?;
    Ok(())
}
