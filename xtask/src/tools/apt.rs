//! Programs from the distribution's packages: the only thing installed outside the project.

use super::{Tool, is_on_path};
use crate::console;
use anyhow::{Context, Result};
use std::path::Path;
use std::process::Command;
use std::time::Duration;

/// Packages of the distribution, installed together.
#[derive(Debug)]
pub struct Packages {
    /// Their names.
    pub names: &'static [&'static str],
    /// The programs, and files by their whole path, to expect afterwards.
    pub programs: &'static [&'static str],
    /// How long installing usually takes.
    pub usual: Duration,
}

impl Tool for Packages {
    fn title(&self) -> String {
        format!("the distribution's {}", self.names.join(", "))
    }

    fn usual(&self) -> Duration {
        self.usual
    }

    fn is_installed(&self) -> bool {
        self.programs.iter().all(|program| is_on_path(program))
    }

    fn install(&self, log: &Path) -> Result<()> {
        let by_hand = || {
            format!(
                "needs {}. On Debian, as root: apt-get install {}",
                self.programs.join(", "),
                self.names.join(" ")
            )
        };
        let mut update = Command::new("apt-get");
        update.arg("update");
        console::run_quietly(&mut update, log, self.usual).with_context(by_hand)?;
        let mut install = Command::new("apt-get");
        install
            .args(["install", "--yes", "--no-install-recommends"])
            .args(self.names)
            .env("DEBIAN_FRONTEND", "noninteractive");
        console::run_quietly(&mut install, log, self.usual).with_context(by_hand)
    }
}
