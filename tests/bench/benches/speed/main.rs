//! All measurements; `cargo xtask bench` runs them and prints their ratios.

mod edit;
mod product;
mod swaps;
mod year;

use criterion::{Criterion, criterion_group, criterion_main};
use engine::reference::Reference;
use gramwright_bench::work::PlainYear;
use gramwright_tests::district::{District, Size};
use std::path::{Path, PathBuf};
use std::sync::OnceLock;
use std::time::Duration;

const SEED: u64 = 2026;

/// The tables, without standard errors.
fn reference() -> &'static Reference {
    static REFERENCE: OnceLock<Reference> = OnceLock::new();
    REFERENCE.get_or_init(|| {
        Reference::committed(&nutrient_data::asset::committed().0).expect("the committed tables")
    })
}

/// A district year.
fn district() -> &'static District {
    static DISTRICT: OnceLock<District> = OnceLock::new();
    DISTRICT.get_or_init(|| District::draw(reference(), Size::YEAR, SEED))
}

/// The same as numbers.
fn plain() -> &'static PlainYear {
    static PLAIN: OnceLock<PlainYear> = OnceLock::new();
    PLAIN.get_or_init(|| PlainYear::of(reference(), district(), Size::YEAR))
}

/// The same as files, for rivals in other languages.
fn folder() -> &'static Path {
    static FOLDER: OnceLock<PathBuf> = OnceLock::new();
    FOLDER.get_or_init(|| {
        let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("year");
        let foods = &nutrient_data::asset::committed().0;
        plain().write(&folder, foods).expect("a folder to write to");
        folder
    })
}

criterion_group! {
    name = all;
    config = Criterion::default()
        .sample_size(20)
        .warm_up_time(Duration::from_secs(1))
        .measurement_time(Duration::from_secs(4));
    targets = year::run, product::run, edit::run, swaps::run
}
criterion_main!(all);
