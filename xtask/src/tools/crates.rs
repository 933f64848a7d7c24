//! Tools compiled from their published crates.

use super::Tool;
use crate::{console, project};
use anyhow::Result;
use std::fs;
use std::path::Path;
use std::process::Command;
use std::time::Duration;

/// Compile quickly: these tools spend their time waiting, so that being compiled well gains them
/// nothing, and costs minutes.
const QUICK_BUILD: [(&str, &str); 4] = [
    ("CARGO_PROFILE_RELEASE_OPT_LEVEL", "0"),
    ("CARGO_PROFILE_RELEASE_LTO", "off"),
    ("CARGO_PROFILE_RELEASE_CODEGEN_UNITS", "16"),
    ("CARGO_PROFILE_RELEASE_DEBUG", "0"),
];

/// What Cargo says when a lock file names a version that is not to be had.
const LOCK_CANNOT_BE_MET: &str = "failed to select a version";

/// A tool published as a crate, with the programs it installs.
#[derive(Debug)]
pub struct CrateTool {
    /// The crate.
    pub name: &'static str,
    /// Its exact version.
    pub version: &'static str,
    /// Further options of `cargo install`.
    pub options: &'static [&'static str],
    /// The programs to expect afterwards.
    pub programs: &'static [&'static str],
    /// How long compiling usually takes.
    pub usual: Duration,
}

impl CrateTool {
    fn compile(&self, locked: bool, log: &Path) -> Result<()> {
        let build = project::tools().join("build").join(self.name);
        let mut command = super::cargo();
        command
            .arg("install")
            .arg(format!("{}@={}", self.name, self.version))
            .args(self.options)
            .arg("--root")
            .arg(project::tools())
            // Kept until it has worked, so that an interrupted build goes on where it stopped.
            .arg("--target-dir")
            .arg(&build)
            .envs(QUICK_BUILD);
        if locked {
            command.arg("--locked");
        }
        console::run_quietly(&mut command, log, self.usual)?;
        fs::remove_dir_all(build)?;
        Ok(())
    }
}

impl Tool for CrateTool {
    fn title(&self) -> String {
        format!("{} {}, compiled from its source", self.name, self.version)
    }

    fn usual(&self) -> Duration {
        self.usual
    }

    fn is_installed(&self) -> bool {
        self.programs.iter().all(|program| {
            Command::new(project::tools().join("bin").join(program))
                .arg("--version")
                .output()
                .is_ok_and(|output| {
                    String::from_utf8_lossy(&output.stdout)
                        .split_whitespace()
                        .any(|word| word == self.version)
                })
        })
    }

    fn install(&self, log: &Path) -> Result<()> {
        let outcome = self.compile(true, log);
        let lock_failed = outcome.is_err()
            && fs::read_to_string(log).is_ok_and(|text| text.contains(LOCK_CANNOT_BE_MET));
        if lock_failed {
            println!("    a version in its lock file is not to be had: taking compatible ones");
            return self.compile(false, log);
        }
        outcome
    }
}
