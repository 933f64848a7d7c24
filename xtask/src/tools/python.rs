//! Packages for Python, in an environment of their own.

use super::Tool;
use crate::{console, project};
use anyhow::{Context, Result};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;

/// Packages that a list names in exact versions.
#[derive(Debug)]
pub struct PythonTools {
    /// Name of the environment.
    pub name: &'static str,
    /// The list, below the project's folder.
    pub list: &'static str,
    /// How long installing usually takes.
    pub usual: Duration,
}

impl PythonTools {
    fn folder(&self) -> PathBuf {
        project::tools().join(self.name)
    }

    /// The Python that has them.
    #[must_use]
    pub fn python(&self) -> PathBuf {
        self.folder().join("bin/python")
    }

    fn list(&self) -> PathBuf {
        project::root().join(self.list)
    }

    /// The list as it was when all of it was installed.
    fn installed(&self) -> PathBuf {
        self.folder().join("installed.txt")
    }
}

impl Tool for PythonTools {
    fn title(&self) -> String {
        format!("{} for Python", self.name)
    }

    fn usual(&self) -> Duration {
        self.usual
    }

    fn is_installed(&self) -> bool {
        let wanted = fs::read_to_string(self.list()).ok();
        wanted.is_some() && fs::read_to_string(self.installed()).ok() == wanted
    }

    fn install(&self, log: &Path) -> Result<()> {
        let mut environment = Command::new("python3");
        environment
            .args(["-m", "venv", "--clear"])
            .arg(self.folder());
        console::run_quietly(&mut environment, log, self.usual)
            .context("needs python3 with venv. On Debian, as root: apt-get install python3-venv")?;
        let mut install = Command::new(self.python());
        install
            .args(["-m", "pip", "install", "--disable-pip-version-check", "-r"])
            .arg(self.list());
        console::run_quietly(&mut install, log, self.usual)?;
        fs::copy(self.list(), self.installed())?;
        Ok(())
    }
}
