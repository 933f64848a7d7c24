//! Tools published for Node.

use super::Tool;
use crate::{console, project};
use anyhow::Result;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;

/// A tool published as an npm package.
#[derive(Debug)]
pub struct NpmTool {
    /// The package.
    pub package: &'static str,
    /// Its exact version.
    pub version: &'static str,
    /// How long installing usually takes.
    pub usual: Duration,
}

/// Where npm packages are installed.
fn prefix() -> PathBuf {
    project::tools().join("npm")
}

/// Where their programs are.
#[must_use]
pub fn programs() -> PathBuf {
    prefix().join("node_modules/.bin")
}

impl NpmTool {
    /// Where the package is.
    #[must_use]
    pub fn folder(&self) -> PathBuf {
        prefix().join("node_modules").join(self.package)
    }
}

impl Tool for NpmTool {
    fn title(&self) -> String {
        format!("{} {} for Node", self.package, self.version)
    }

    fn usual(&self) -> Duration {
        self.usual
    }

    fn is_installed(&self) -> bool {
        fs::read_to_string(self.folder().join("package.json"))
            .is_ok_and(|text| text.contains(&format!("\"version\": \"{}\"", self.version)))
    }

    fn install(&self, log: &Path) -> Result<()> {
        let mut command = Command::new("npm");
        command
            .args(["install", "--no-audit", "--no-fund", "--prefix"])
            .arg(prefix())
            .arg(format!("{}@{}", self.package, self.version));
        console::run_quietly(&mut command, log, self.usual)
    }
}
