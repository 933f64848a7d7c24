//! Where things are in the project's folder.

use std::path::{Path, PathBuf};

/// The project's root folder.
#[must_use]
pub fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .parent()
        .expect("xtask lies in the project's root")
}

/// Installed tools; nothing of ours goes into the system's folders.
#[must_use]
pub fn tools() -> PathBuf {
    root().join("target/tools")
}

/// What Cargo compiles for the page. Apart from the native build, whose compiler may be another.
#[must_use]
pub fn page_target() -> PathBuf {
    root().join("target/page")
}

/// The packed nutrient data, as the page fetches it.
#[must_use]
pub fn packed_data() -> PathBuf {
    root().join("target/page-data")
}
