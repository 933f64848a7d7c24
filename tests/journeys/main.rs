//! Journeys through the built page in a real browser.
//!
//! `cargo xtask test` builds the page and passes its folder; `cargo xtask test journeys NAME` runs
//! those whose name contains NAME. Each journey has a server, a driver and an empty browser of its
//! own, and fails if the browser's console shows an error, or if the page asks anything but its own
//! server for anything. Screenshots are in `target/screenshots/`. To run them again on a page that is
//! already built: `GRAMWRIGHT_PAGE=$PWD/target/page-draft
//! GRAMWRIGHT_AXE=$PWD/target/tools/npm/node_modules/axe-core/axe.min.js cargo test
//! -p gramwright-tests --features journeys --test journeys NAME`.

mod access;
mod card;
mod cook;
mod dietitian;
mod elsewhere;
mod files;
mod kitchen;
mod large_book;
mod main_job;
mod mend;
mod month;
mod office;
mod offline;
mod parents;
mod reckon;
mod review;
mod swaps;
mod tongue;
mod visit;
mod week;
