//! Journeys through the built page in a real browser.
//!
//! `cargo xtask test` builds the page and passes its folder; `cargo xtask test journeys NAME` runs
//! those whose name contains NAME. Each journey has a server, a driver and an empty browser of its
//! own, and fails if the browser's console shows an error. Screenshots are in `target/screenshots/`.

mod offline;
mod visit;
