//! What can be wrong with the files of the release.

use std::fmt;
use std::path::PathBuf;

use crate::tables::TableError;

/// So many problems are listed; more of them only say the same again.
const LISTED: usize = 20;

/// Why nothing was imported.
#[derive(Debug)]
pub enum ImportError {
    /// A file of the release cannot be opened.
    Unreadable {
        /// The file.
        path: PathBuf,
        /// What the system says.
        reason: std::io::Error,
    },
    /// The list of nutrients to keep cannot be used.
    Kept(TableError),
    /// Files were read, and they are not release 28 as published; all problems together.
    Problems(Vec<Problem>),
    /// A table cannot be written.
    Unwritable {
        /// The file or folder.
        path: PathBuf,
        /// What the system says.
        reason: std::io::Error,
    },
}

/// One thing that is wrong with a file of the release.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// Name of the file.
    pub file: &'static str,
    /// Line in it, counted from 1; `None` where the whole file is meant.
    pub line: Option<usize>,
    /// What is wrong.
    pub what: String,
    /// What to do about it.
    pub remedy: &'static str,
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.file)?;
        if let Some(line) = self.line {
            write!(f, ", line {line}")?;
        }
        write!(f, ": {}. {}", self.what, self.remedy)
    }
}

impl fmt::Display for ImportError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Unreadable { path, reason } => write!(
                f,
                "{} cannot be read: {reason}. Name the folder that holds the unpacked text files of \
                 SR28 (FOOD_DES.txt, NUT_DATA.txt, WEIGHT.txt and the rest).",
                path.display()
            ),
            Self::Kept(error) => error.fmt(f),
            Self::Problems(problems) => {
                write!(f, "Nothing was imported; {} problems:", problems.len())?;
                for problem in problems.iter().take(LISTED) {
                    write!(f, "\n  {problem}")?;
                }
                if problems.len() > LISTED {
                    write!(f, "\n  … and {} more", problems.len() - LISTED)?;
                }
                Ok(())
            }
            Self::Unwritable { path, reason } => write!(
                f,
                "{} cannot be written: {reason}. Check the space on the disk and the permissions \
                 of the folder, then import again; the tables may be incomplete until then.",
                path.display()
            ),
        }
    }
}

impl std::error::Error for ImportError {}
