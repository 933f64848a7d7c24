//! What the page looks like on paper.

use std::path::PathBuf;
use std::process::Command;
use thirtyfour::common::print::{PrintPage, PrintParameters};

/// A size of paper.
#[derive(Debug, Clone, Copy)]
pub enum Paper {
    /// 8 1/2 by 11 inches.
    Letter,
    /// 210 by 297 millimetres (ISO 216).
    A4,
}

impl Paper {
    /// Upright, with the browser's own margins.
    pub fn parameters(self) -> PrintParameters {
        let (width, height) = match self {
            Self::Letter => (21.59, 27.94),
            Self::A4 => (21.0, 29.7),
        };
        PrintParameters {
            page: PrintPage { width, height },
            ..PrintParameters::default()
        }
    }

    /// Whether a page of so many points of 1/72 inch has this size; browsers round to a pixel.
    pub fn has_size(self, (width, height): (u32, u32)) -> bool {
        let (of_width, of_height) = match self {
            Self::Letter => (612, 792),
            Self::A4 => (595, 842),
        };
        width.abs_diff(of_width) <= 1 && height.abs_diff(of_height) <= 1
    }
}

/// A printed document. The browser writes its page objects as plain text.
#[derive(Debug)]
pub struct Pdf {
    path: PathBuf,
    objects: String,
}

impl Pdf {
    /// Takes the bytes of the file at `path`.
    pub fn new(path: PathBuf, bytes: &[u8]) -> Self {
        Self {
            path,
            objects: String::from_utf8_lossy(bytes).into_owned(),
        }
    }

    /// What is written on it, as `pdftotext` reads it; white space counts as one space.
    ///
    /// # Panics
    /// When there is no `pdftotext`, which `cargo xtask test` installs, or it cannot read the file.
    pub fn text(&self) -> String {
        self.page_texts().join(" ")
    }

    /// The same, page by page.
    ///
    /// # Panics
    /// As [`Self::text`].
    pub fn page_texts(&self) -> Vec<String> {
        let output = Command::new("pdftotext")
            .args(["-layout".as_ref(), self.path.as_os_str(), "-".as_ref()])
            .output()
            .expect("pdftotext, which `cargo xtask test` installs");
        let told = String::from_utf8_lossy(&output.stderr);
        assert!(output.status.success(), "{}: {told}", self.path.display());
        let text = String::from_utf8_lossy(&output.stdout);
        // Each page ends with a form feed.
        let pages = text.trim_end_matches('\u{c}').split('\u{c}');
        pages
            .map(|page| page.split_whitespace().collect::<Vec<_>>().join(" "))
            .collect()
    }

    /// The size of each page in whole points.
    pub fn pages(&self) -> Vec<(u32, u32)> {
        let objects = self.objects.split("/Type /Page\n").skip(1);
        objects.map(media_box).collect()
    }

    /// Whether anything is written on it.
    pub fn has_text(&self) -> bool {
        self.objects.contains("/Type /Font")
    }
}

/// The upper right corner of `/MediaBox [0 0 612 792]`.
fn media_box(page: &str) -> (u32, u32) {
    let (_, corners) = page.split_once("/MediaBox [").expect("a page has a size");
    let (corners, _) = corners.split_once(']').expect("four numbers");
    let corners: Vec<f64> = corners
        .split_whitespace()
        .map(|number| number.parse().expect("a number"))
        .collect();
    (corners[2].round() as u32, corners[3].round() as u32)
}
